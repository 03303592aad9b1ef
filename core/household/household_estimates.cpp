#include "core/household/household_private.h"

#include "core/household/kept_ensembles.h"
#include "core/household/kept_estimates.h"
#include "core/household/text.h"
#include "core/household/this_build.h"
#include "core/log/log.h"
#include "core/store/setting_names.h"

#include <set>

namespace tierloam::household {

namespace {

/// The reckoner wants a legal journal. A file may hold one that is not (an older release was laxer): what the replay leaves out is left out.
journal::Entries legalOf(const journal::Entries& entries)
{
    const auto replayed = journal::replay(entries);
    if (replayed.refusals.empty()) return entries;
    std::set<std::size_t> refused;
    for (const auto& refusal : replayed.refusals) refused.insert(refusal.entry);
    journal::Entries legal;
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (!refused.contains(i)) legal.push_back(entries[i]);
    return legal;
}

/// Kept estimates rest on the journal as it was up to their day: entries since then may be missing in them, none may have changed.
bool holdsFor(const reckoning::Reckoning& kept, const Reckoner::Request& request)
{
    if (kept.asOf > request.options.asOf) return false;
    journal::Entries before;
    for (const journal::Entry& entry : request.entries)
        if (entry.date.day <= kept.asOf) before.push_back(entry);
    return journal::digest(before) == kept.journalDigest;
}

}

void Household::Private::startReckoner()
{
    ReckonFunction reckon = settings.reckon;
    if (!reckon)
        reckon = [](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
            const log::Since since;
            auto made = reckoning::reckon(entries, options, stop);
            log::note(log::What::reckoned, {{"entries", static_cast<qint64>(entries.size())}, {"stacks", made ? static_cast<qint64>(made->stacks.size()) : -1},
                                            {"members", options.members}, {"stopped", stop.stop_requested()}, {"ms", since.milliseconds()}});
            return made;
        };
    const std::string program = settings.program + ' ' + thisBuild();
    const KeptEstimates kept{settings.estimatesFolder, writer->path(), program};
    Reckoner::Memory memory;
    const auto ensembles = std::make_shared<KeptEnsembles>(settings.estimatesFolder, writer->path(), program);
    memory.keep = [kept, ensembles](const Reckoner::Request& request, const reckoning::Reckoning& made, const std::stop_token& stop) {
        kept.write(made, request.options.southern);
        ensembles->write(made, request.options.southern, stop);
    };
    memory.fill = [ensembles](const Reckoner::Request& request, std::shared_ptr<const reckoning::Reckoning> before) {
        return ensembles->with(std::move(before), request.options.southern);
    };
    memory.known = [kept](const Reckoner::Request& request) -> std::shared_ptr<const reckoning::Reckoning> {
        auto before = kept.read(request.options.southern);
        return before && before->members <= request.options.members && holdsFor(*before, request) ? before : nullptr;
    };
    reckoner_ = std::make_unique<Reckoner>(std::move(reckon), [this](std::uint64_t number, std::shared_ptr<const reckoning::Reckoning> made, bool whole) {
        post([this, number, whole, made = std::move(made)] {
            if (number != asked_) return; // a newer one is under way
            reckoning = made;
            if (whole) stacksMade = stacksAsked = 0;
            if (whole && made->asOf == wanted_->asOf) have_ = wanted_; // kept ones may be of a day before
            Q_EMIT q_->reckoned();
        });
    }, std::move(memory), [this](std::uint64_t number, std::size_t made, std::size_t all) {
        if (all <= reckoning::manyStacks) return; // over before anybody could read it
        post([this, number, made, all] {
            if (number != asked_ || made < stacksMade) return;
            stacksMade = made == all ? 0 : made;
            stacksAsked = made == all ? 0 : all;
            Q_EMIT q_->reckoningProgressed();
        });
    }, [this](std::uint64_t number) {
        log::note(log::What::reckonFailed);
        post([this, number] {
            if (number != asked_) return;
            stacksMade = stacksAsked = 0;
            Q_EMIT q_->reckoningProgressed();
            Q_EMIT q_->notice(HouseholdText::tr("The estimates could not be made this time. What you record is kept all the same; they are tried again after the next change."));
        });
    });
}

Household::Private::Basis Household::Private::basisNow() const
{
    return {journal.recordedDigest(), clock->today(), keptSettings.value(store::settingHemisphere) == store::hemisphereSouth};
}

/// Asks for estimates unless those that are there, or under way, rest on the same: a note or a new name changes none.
void Household::Private::reckonIfNeeded()
{
    const Basis basis = basisNow();
    if (wanted_ == basis) return;
    wanted_ = basis;
    Reckoner::Request request;
    request.number = ++asked_;
    stacksMade = stacksAsked = 0;
    request.entries = legalOf(journal.recorded());
    request.options.asOf = basis.asOf;
    request.options.members = settings.members;
    request.options.threads = settings.threads;
    request.options.southern = basis.southern;
    request.options.shownFirst = shownFirst;
    request.options.previous = reckoning;
    reckoner_->ask(std::move(request));
}

bool Household::Private::estimatesCurrent() const { return have_ && have_ == wanted_ && !journal.anythingPending(); }

}
