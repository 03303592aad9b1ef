#include "core/reckoning/deeds.h"

#include "core/model/elementary.h"
#include "core/model/measures.h"
#include "core/model/random.h"
#include "core/reckoning/crowding.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr double dryShareNoise = 0.25;  ///< sd of the logit of a feeding's dry share
constexpr double volumeNoise = 0.25;    ///< log-sd more of an amount given by volume

PerMember same(const Ensemble& stack, double value) { return PerMember(static_cast<std::size_t>(stack.members()), value); }

/// True fresh mass of each member: the household's scale has a bias, a volume is a looser measure.
PerMember trueFresh(const Ensemble& stack, const Deeds::Portion& portion, int day, int number)
{
    PerMember fresh = same(stack, portion.kg);
    if (!stack.noisy) return fresh;
    const std::uint64_t stream = streamOf(stack.key, day, Use::volumeTyped, number);
    for (int i = 0; i < stack.members(); ++i) {
        double& kg = fresh[static_cast<std::size_t>(i)];
        kg *= stack.parameter(Parameter::scaleBias, i); // of the household's measuring, whatever it measures with
        if (portion.byVolume) kg *= exponential(volumeNoise * standardNormal(stream, i));
    }
    return fresh;
}

PerMember trueDryShare(const Ensemble& stack, double dryShare, int day, int number)
{
    PerMember share = same(stack, dryShare);
    if (!stack.noisy || dryShare <= 0.0 || dryShare >= 1.0) return share;
    const std::uint64_t stream = streamOf(stack.key, day, Use::dryShare, number);
    const double centre = naturalLog(dryShare / (1.0 - dryShare));
    for (int i = 0; i < stack.members(); ++i)
        share[static_cast<std::size_t>(i)] = 1.0 / (1.0 + exponential(-(centre + dryShareNoise * standardNormal(stream, i))));
    return share;
}

double massOf(const Amount& amount) { return amount.mass().value_or(Mass{}).base(); }
double volumeOf(const Amount& amount) { return amount.volume().value_or(Volume{}).base(); }

std::string nameOr(const std::string& name, std::string_view otherwise) { return name.empty() ? std::string{otherwise} : name; }

double underTheRim(const Ensemble& stack) { return 100.0 * stack.height - 1.0; } // cm

/// cm that the tray is filled to, median.
double filledTo(const Ensemble& stack, int slot)
{
    std::vector<double> over(static_cast<std::size_t>(stack.members())); // m³
    for (int i = 0; i < stack.members(); ++i) over[static_cast<std::size_t>(i)] = -room(MemberOf{stack, i}, slot);
    const auto middle = over.begin() + static_cast<std::ptrdiff_t>(over.size() / 2);
    std::nth_element(over.begin(), middle, over.end());
    return underTheRim(stack) + 100.0 * *middle / stack.area;
}

std::optional<Oversized> beyondRoom(const Ensemble& stack, int slot, double before)
{
    const double most = underTheRim(stack), comesTo = filledTo(stack, slot);
    return comesTo > most ? std::optional{Oversized{Oversized::What::matter, 0, {}, slot + 1, comesTo, most, comesTo - before}} : std::nullopt;
}

std::optional<Oversized> tooManyWorms(const Ensemble& stack, double kg)
{
    const double most = mostWorms(squareMetres(stack.area * std::max(stack.trays(), 1))).base();
    return kg > most ? std::optional{Oversized{Oversized::What::worms, 0, {}, 0, kg, most, kg}} : std::nullopt;
}

}

std::optional<Deeds::Portion> Deeds::portion(const std::string& material, const Amount& amount) const
{
    const materials::Material* found = materials_.find(material);
    if (found == nullptr) return std::nullopt;
    const std::optional<Mass> fresh = materials::freshMass(amount, *found);
    if (!fresh) return std::nullopt;
    return Portion{Substance::of(*found), fresh->base(), kindOf(amount.unit) == UnitKind::volume};
}

std::optional<Oversized> Deeds::perform(Ensemble& stack, const journal::Step& step, const journal::StackHistory& history, int day, int number) const
{
    const journal::Entry& entry = entries_[step.entry];
    const int slot = step.slot ? *step.slot - 1 : -1;
    std::optional<Oversized> over;
    const auto put = [&](const std::optional<Portion>& given, bool isFeeding) {
        if (!given || slot < 0) return;
        const double before = filledTo(stack, slot);
        addMatter(stack, slot, given->what, trueFresh(stack, *given, day, number),
                  isFeeding ? trueDryShare(stack, given->what.dryShare, day, number) : same(stack, given->what.dryShare), std::nullopt, isFeeding);
        over = beyondRoom(stack, slot, before);
    };

    if (const auto* setup = std::get_if<journal::Setup>(&entry.action); setup != nullptr) {
        const journal::StackSettings& now = step.after.settings;
        stack.area = now.area.base();
        stack.height = now.height.base() / 100.0;
        stack.sumpCapacity = now.sump.base();
    } else if (const auto* stocked = std::get_if<journal::Stock>(&entry.action)) {
        const int into = slot >= 0 ? slot : stack.topToFeed();
        if (into >= 0) {
            stock(stack, into, massOf(stocked->worms), stocked->count, true);
            over = tooManyWorms(stack, massOf(stocked->worms));
        }
    } else if (const auto* bed = std::get_if<journal::Bed>(&entry.action)) {
        if (slot >= stack.trays() && step.batch) addTray(stack, *step.batch, history.batch(*step.batch).tray, day);
        const std::optional<Portion> given = portion(bed->material, bed->bedding);
        if (given && slot >= 0) {
            const double before = filledTo(stack, slot);
            const double water = bed->moisture ? bed->moisture->fraction() / std::max(1.0 - bed->moisture->fraction(), 0.01) : laidWetness * given->what.held;
            addMatter(stack, slot, given->what, trueFresh(stack, *given, day, number), same(stack, given->what.dryShare), water, false);
            over = beyondRoom(stack, slot, before);
        }
    } else if (const auto* feed = std::get_if<journal::Feed>(&entry.action)) {
        put(portion(nameOr(feed->material, journal::defaultFood), feed->food), true);
    } else if (const auto* cover = std::get_if<journal::Cover>(&entry.action)) {
        put(portion(nameOr(cover->material, journal::defaultCover), cover->paper.value_or(journal::defaultCoverAmount)), false);
    } else if (const auto* water = std::get_if<journal::Water>(&entry.action)) {
        if (slot >= 0) pour(stack, slot, volumeOf(water->poured));
    } else if (const auto* drained = std::get_if<journal::Drain>(&entry.action)) {
        if (drained->volume) drain(stack, drained->emptied.value_or(true) ? std::nullopt : std::optional{volumeOf(*drained->volume)});
    } else if (const auto* flush = std::get_if<journal::Flush>(&entry.action)) {
        if (stack.topToFeed() >= 0) pour(stack, stack.topToFeed(), volumeOf(flush->poured));
        drain(stack, std::nullopt);
    } else if (std::holds_alternative<journal::Rotate>(entry.action)) {
        if (stack.trays() > 1) rotate(stack);
    } else if (const auto* taken = std::get_if<journal::Harvest>(&entry.action)) {
        if (slot >= 0) harvest(stack, slot, taken->whole() ? 1.0 : taken->share->fraction());
    } else if (const auto* removed = std::get_if<journal::Remove>(&entry.action)) {
        takeWorms(stack, massOf(removed->worms));
    } else if (const auto* moved = std::get_if<journal::Move>(&entry.action)) {
        if (!step.incoming) {
            takeWorms(stack, massOf(moved->worms));
        } else if (stack.topToFeed() >= 0) {
            stock(stack, stack.topToFeed(), massOf(moved->worms), std::nullopt, false);
            over = tooManyWorms(stack, massOf(moved->worms));
        }
    }
    for (TrayShape& shape : stack.shapes) shape.drying = step.after.drying == shape.batch;
    return over;
}

std::vector<char> Deeds::giveWithinRoom(Ensemble& stack, int slot, const Substance& what, double kg, bool isFeeding)
{
    return addWithinRoom(stack, slot, what, same(stack, kg), isFeeding);
}

std::vector<char> Deeds::addWithinRoom(Ensemble& stack, int slot, const Substance& what, PerMember fresh, bool isFeeding)
{
    std::vector<char> cut(static_cast<std::size_t>(stack.members()), 0);
    const double volume = volumeOfDry(what.softening, what.bulk * what.dryShare) * what.dryShare; // m³ per kg fresh
    for (int i = 0; i < stack.members(); ++i) {
        double& kg = fresh[static_cast<std::size_t>(i)];
        if (kg <= 0.0) continue;
        const double fits = volume > 0.0 ? std::max(room(MemberOf{stack, i}, slot), 0.0) / volume : kg;
        if (fits >= kg) continue;
        kg = fits;
        cut[static_cast<std::size_t>(i)] = 1;
    }
    addMatter(stack, slot, what, fresh, same(stack, what.dryShare), std::nullopt, isFeeding);
    return cut;
}

}
