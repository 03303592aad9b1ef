#include "ui/handbook/lists.h"

#include "core/guide/figures.h"
#include "core/materials/table.h"
#include "core/model/parameters.h"
#include "ui/common/dates.h"
#include "ui/common/figure_words.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/material_words.h"
#include "ui/common/source_words.h"
#include "ui/common/volumes.h"
#include "ui/forms/cautions.h"
#include "ui/handbook/symptom_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::handbook {

namespace {

struct Lists {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

QString plain(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// Four figures at most.
QString short4(double value)
{
    if (value == 0.0) return ui::numberText(0, 0);
    const int whole = static_cast<int>(std::floor(std::log10(std::fabs(value)))) + 1;
    QString text = ui::numberText(value, std::clamp(3 - whole, 0, 6));
    return text;
}

MadeList parameters()
{
    MadeList list;
    list.head = QStringList{Lists::tr("Parameter"), Lists::tr("Centre"), Lists::tr("90 % range"), Lists::tr("Unit"), Lists::tr("Rests on")};
    for (const model::ParameterRow& row : model::parameterTable()) {
        list.rows.append(QStringList{parameterName(row.name), short4(row.centre), Lists::tr("%1 to %2").arg(short4(row.lower), short4(row.upper)), plain(row.unit), ui::sourceWords(row.basis)});
    }
    return list;
}

MadeList figures()
{
    MadeList list;
    list.head = QStringList{Lists::tr("What"), Lists::tr("Figure"), Lists::tr("Basis"), Lists::tr("Source")};
    for (const guide::FigureRow& row : guide::figureTable()) list.rows.append(QStringList{figureName(row.figure), ui::figureText(row), ui::basisText(row.basis), ui::sourceText(row)});
    return list;
}

MadeList cautions()
{
    MadeList list;
    list.head = QStringList{Lists::tr("Caution"), Lists::tr("Source")};
    for (const forms::Caution& caution : forms::allCautions()) {
        if (!caution.normal) list.rows.append(QStringList{caution.text, caution.source});
    }
    return list;
}

MadeList keptOut()
{
    MadeList list;
    list.head = QStringList{Lists::tr("Material"), Lists::tr("Welcome"), Lists::tr("Why")};
    for (const auto welcome : {materials::Welcome::no, materials::Welcome::aLittle}) {
        for (const materials::Material& row : materials::Table::builtIn().rows()) {
            if (row.welcome == welcome)
                list.rows.append(QStringList{ui::materialText(row.name), QString{ui::welcomeMark(welcome) % u' ' % ui::welcomeText(welcome)}, ui::doubtText(row.doubt)});
        }
    }
    return list;
}

/// What usually brings each symptom about, before anything is known of a stack.
MadeList symptoms()
{
    MadeList list;
    list.head = QStringList{Lists::tr("Noticed"), Lists::tr("Causes, the usual ones first")};
    for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
        const auto symptom = static_cast<guide::Symptom>(s);
        std::vector<std::pair<double, QString>> causes;
        for (int c = 0; c < static_cast<int>(guide::Cause::count); ++c) {
            const auto cause = static_cast<guide::Cause>(c);
            if (const double prior = guide::priorOf(symptom, cause); prior > 0) causes.emplace_back(-prior, causeText(cause));
        }
        std::ranges::stable_sort(causes, {}, &std::pair<double, QString>::first);
        QStringList words;
        for (const auto& [prior, text] : causes) words << text;
        list.rows.append(QStringList{symptomText(symptom), words.join(QStringLiteral("; "))});
    }
    return list;
}

/// When a tray that was lifted later was first said to be ready, and how sure that was on the day of its lifting.
void readyDates(MadeList& list, const QString& name, const reckoning::StackReckoning& stack)
{
    int lifted = 0, asReady = 0;
    QString last;
    for (const reckoning::HarvestCheck& harvest : stack.harvests) {
        if (!harvest.liftedOn) continue;
        ++lifted;
        const bool ready = harvest.readyWhenLifted >= guide::lowOf(guide::Figure::alertWithdrawn) / 100.0;
        if (ready) ++asReady;
        const auto said = std::ranges::find_if(stack.history, [&](const reckoning::StackEstimate& on) {
            return on.day <= *harvest.liftedOn && std::ranges::any_of(on.slots, [&](const reckoning::TrayEstimate& tray) {
                return tray.batch == harvest.batch && 100.0 * tray.readyProbability >= guide::lowOf(guide::Figure::alertRaised);
            });
        });
        const QString when = ui::fullDay(*harvest.liftedOn);
        last = said == stack.history.end() ? Lists::tr("lifted %1, before it was said to be ready (%2)").arg(when, ui::percentText(harvest.readyWhenLifted))
                                           : Lists::tr("said to be ready from %1, lifted %2 (%3)").arg(ui::fullDay(said->day), when, ui::percentText(harvest.readyWhenLifted));
    }
    if (lifted > 0) list.rows.append(QStringList{name, Lists::tr("ready dates"), Lists::tr("%1 of %2 lifted when ready").arg(QString::number(asReady), QString::number(lifted)), last});
}

/// What was expected at the moment of a draining or a harvest, beside what came.
MadeList trackRecord(const PageFacts& facts)
{
    MadeList list;
    list.head = QStringList{Lists::tr("Stack"), Lists::tr("What"), Lists::tr("Within its 90 % range"), Lists::tr("The latest: came, expected")};
    list.instead = Lists::tr("Once there are drainings and harvests in the journal, what came stands here beside what was expected.");
    if (!facts.reckoning) return list;
    for (const reckoning::StackReckoning& stack : facts.reckoning->stacks) {
        const QString name = QString::fromStdString(stack.name);
        if (!stack.drains.empty()) {
            const auto within = std::ranges::count_if(stack.drains, [](const reckoning::DrainCheck& each) { return each.litres >= each.expected.p05 && each.litres <= each.expected.p95; });
            const auto& last = stack.drains.back();
            const ui::OneVolumeUnit alike{std::max(last.litres, last.expected.p95)};
            list.rows.append(QStringList{name, Lists::tr("drainings"), Lists::tr("%1 of %2").arg(QString::number(within), QString::number(stack.drains.size())),
                                         Lists::tr("%1, %2").arg(ui::volumeText(last.litres), ui::volumeBand(last.expected))});
        }
        if (!stack.harvests.empty()) {
            const auto within = std::ranges::count_if(stack.harvests, &reckoning::HarvestCheck::within);
            const auto& last = stack.harvests.back();
            list.rows.append(QStringList{name, Lists::tr("harvests, by weight"), Lists::tr("%1 of %2").arg(QString::number(within), QString::number(stack.harvests.size())),
                                         Lists::tr("%1, %2").arg(ui::massText(last.takenKg), ui::massBand(last.expectedKg))});
            readyDates(list, name, stack);
        }
    }
    return list;
}

}

std::optional<MadeList> madeList(std::string_view name, const PageFacts& facts)
{
    if (name == "parameters") return parameters();
    if (name == "figures") return figures();
    if (name == "cautions") return cautions();
    if (name == "materials-out") return keptOut();
    if (name == "symptoms") return symptoms();
    if (name == "track-record") return trackRecord(facts);
    return std::nullopt;
}

}
