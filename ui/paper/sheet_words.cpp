#include "ui/paper/sheet_words.h"

#include "core/advice/food_limit.h"
#include "ui/common/formats.h"
#include "ui/forms/cautions.h"
#include "ui/forms/tray_lift.h"
#include "ui/journal/entry_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::paper {

namespace {

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

using exchange::ReportTone;

ReportTone toneOf(ui::Tone tone)
{
    switch (tone) {
    case ui::Tone::moss: return ReportTone::go;
    case ui::Tone::amber: return ReportTone::soon;
    case ui::Tone::brick: return ReportTone::danger;
    case ui::Tone::water:
    case ui::Tone::plain: break;
    }
    return ReportTone::plain;
}

ReportTone toneOf(advice::Severity severity)
{
    switch (severity) {
    case advice::Severity::hint: return ReportTone::plain;
    case advice::Severity::due: return ReportTone::go;
    case advice::Severity::concern: return ReportTone::soon;
    case advice::Severity::urgent: break;
    }
    return ReportTone::danger;
}

/// A word beside the colour of the bar.
QString wordOf(advice::Severity severity)
{
    switch (severity) {
    case advice::Severity::hint: return SheetWords::tr("Good to know");
    case advice::Severity::due: return SheetWords::tr("Due");
    case advice::Severity::concern: return SheetWords::tr("Soon");
    case advice::Severity::urgent: break;
    }
    return SheetWords::tr("Urgent");
}

QString taken(double kg, double litres)
{
    QStringList parts;
    if (kg > 0) parts << ui::massText(kg);
    if (litres > 0) parts << ui::volumeText(litres);
    return parts.isEmpty() ? QStringLiteral("–") : parts.join(QStringLiteral(" + "));
}

QString dayOr(const std::optional<Day>& day) { return day ? ui::fullDay(*day) : QStringLiteral("–"); }

}

QString held(const QString& text, qsizetype most)
{
    if (text.size() <= most) return text;
    const qsizetype cut = text[most - 1].isHighSurrogate() ? most - 1 : most;
    return text.left(cut) % QChar{0x2026};
}

exchange::ReportBox verdictBox(const shelf::Verdict& verdict)
{
    QStringList lines;
    for (const QString& line : {verdict.reason, verdict.normal})
        if (!line.isEmpty()) lines << line;
    return {toneOf(verdict.tone), verdict.state, lines, {}};
}

QList<exchange::ReportBlock> dueBlocks(const std::vector<advice::Advice>& advice, Day today)
{
    QList<exchange::ReportBlock> blocks{exchange::ReportHeading{SheetWords::tr("What is due")}};
    if (advice.empty()) blocks << exchange::ReportParagraph{SheetWords::tr("Nothing is due.")};
    for (const advice::Advice& one : advice) {
        const QString urgency = wordOf(one.severity), what = QString::fromStdString(one.text);
        const QString title = one.severity == advice::Severity::hint ? SheetWords::tr("%1: %2", "urgency, what").arg(urgency, what)
                                                                     : SheetWords::tr("%1 (%2): %3", "urgency, when, what").arg(urgency, ui::dueDay(one.on, today), what);
        blocks << exchange::ReportBox{toneOf(one.severity), title, {QString::fromStdString(one.because)}, {}};
    }
    return blocks;
}

exchange::ReportTable factTable(const QString& title, const shelf::Facts& facts)
{
    exchange::ReportTable table{title, {}, {}, {}};
    for (const auto& [name, value] : facts) table.rows << QStringList{name, value};
    return table;
}

exchange::ReportTable estimateTable(const reckoning::StackReckoning& stack)
{
    const reckoning::StackEstimate& now = stack.now;
    exchange::ReportTable table{SheetWords::tr("Estimates of the whole stack, with the range that holds nine times in ten"), {SheetWords::tr("What"), SheetWords::tr("Estimate")}, {}, {}};
    const auto row = [&](const QString& what, const QString& value) {
        if (!value.isEmpty()) table.rows << QStringList{what, value};
    };
    const auto counts = [](const reckoning::Band& band) { return ui::withRange(ui::countText(band.p50, true), ui::countText(band.p05, true), ui::countText(band.p95, true)); };
    row(SheetWords::tr("Colony"), ui::massBand(now.colonyKg));
    row(SheetWords::tr("Worms"), counts(now.worms));
    row(SheetWords::tr("Adults among them"), counts(now.adults));
    row(SheetWords::tr("Processing, dry matter"), ui::rateBand(now.processingGDryPerDay));
    row(SheetWords::tr("Food taken up over what keeps them (above 1 the colony grows)"),
        ui::withRange(ui::numberText(now.ration.p50, 1), ui::numberText(now.ration.p05, 1), ui::numberText(now.ration.p95, 1)));
    row(SheetWords::tr("Bed temperature"), ui::temperatureBand(now.binTempC));
    const reckoning::Forecast& ahead = stack.forecast;
    const double most = advice::foodLimit(stack).kg;
    // The limit is rounded downwards, so what lies between it and its print would be printed above it.
    const auto atMost = [most](double kg) { return kg < ui::mostOf(most).value * inBaseUnit(ui::mostOf(most).unit) ? ui::massText(kg) : ui::mostText(most); };
    row(SheetWords::tr("Fresh food next week: least, usual, most"),
        SheetWords::tr("%1, %2, %3").arg(atMost(ahead.feedLowKg), atMost(ahead.feedUsualKg), ui::mostText(most)));
    row(SheetWords::tr("Runs into the sump next week"), ui::flowBand(ahead.drainedExpectedLPerWeek));
    row(SheetWords::tr("Top tray filled"), ui::datesText(ahead.turnOn, stack.asOf));
    if (stack.record.spigotShut) row(SheetWords::tr("Sump full, if nobody drains"), ui::datesText(ahead.sumpFullOn, stack.asOf));
    return table;
}

exchange::ReportTable batchTable(const std::vector<household::BatchStory>& stories, Day today)
{
    exchange::ReportTable table{SheetWords::tr("All batches"),
                                {SheetWords::tr("Batch"), SheetWords::tr("Tray"), SheetWords::tr("Bedded"), SheetWords::tr("Fed, fresh"), SheetWords::tr("Looks"), SheetWords::tr("Lifted"),
                                 SheetWords::tr("Ended"), SheetWords::tr("Days"), SheetWords::tr("Taken")},
                                {}, {0, 1, 4, 7}};
    const auto end = [](const household::BatchStory& story) {
        if (story.ended) return ui::fullDay(*story.ended);
        return story.retired ? SheetWords::tr("with the stack, %1").arg(ui::fullDay(*story.retired)) : SheetWords::tr("stands");
    };
    for (const household::BatchStory& story : stories) {
        const QString fed = story.feedings == 0 ? QStringLiteral("–") : SheetWords::tr("%1 in %n feeding(s)", nullptr, story.feedings).arg(ui::massText(story.fedKg));
        table.rows << QStringList{QString::number(story.batch), QString::number(story.tray), ui::fullDay(story.bedded), fed, QString::number(story.looks), dayOr(story.lifted),
                                  end(story), QString::number(story.daysUntil(today)), taken(story.takenKg, story.takenL)};
    }
    return table;
}

exchange::ReportTable storyTable(const household::BatchStory& story, const journal::Entries& entries, Day today, std::size_t most)
{
    const QString title = (story.retired ? SheetWords::tr("Batch %1, in tray %2, %3 old when the stack ended") : SheetWords::tr("Batch %1, in tray %2, %3 old")).arg(story.batch).arg(story.tray).arg(ui::daysLong(story.daysUntil(today)));
    exchange::ReportTable table{title, {SheetWords::tr("Day"), SheetWords::tr("Done or seen"), SheetWords::tr("Note")}, {}, {}};
    const bool anyNote = std::ranges::any_of(story.told, [&](std::size_t told) { return !entries[told].note.empty(); });
    if (!anyNote) table.head.removeLast();
    const std::size_t from = story.told.size() > most ? story.told.size() - most : 0;
    for (std::size_t i = from; i < story.told.size(); ++i) {
        const journal::Entry& entry = entries[story.told[i]];
        const QString detail = journal_page::detailWords(entry);
        const QString word = journal_page::actionWord(entry.action);
        QStringList row{ui::fullDay(entry.date.day), detail.isEmpty() ? word : SheetWords::tr("%1: %2").arg(word, held(detail))};
        if (anyNote) row << held(QString::fromStdString(entry.note));
        table.rows << row;
    }
    return table;
}

exchange::ReportTable harvestTable(const reckoning::StackReckoning& stack)
{
    exchange::ReportTable table{SheetWords::tr("Whole harvests by mass, beside what was expected of them"),
                                {SheetWords::tr("Day"), SheetWords::tr("Batch"), SheetWords::tr("Taken"), SheetWords::tr("Expected"), SheetWords::tr("Within the range")}, {}, {1}};
    for (const reckoning::HarvestCheck& harvest : stack.harvests)
        table.rows << QStringList{ui::fullDay(harvest.day), QString::number(harvest.batch), ui::massText(harvest.takenKg), ui::massBand(harvest.expectedKg),
                                  harvest.within() ? SheetWords::tr("yes") : SheetWords::tr("no")};
    return table;
}

QList<exchange::ReportBlock> cautionBlocks(const journal::Standing* standing, const reckoning::StackReckoning* stack)
{
    forms::CautionFacts lift;
    lift.kind = forms::FormKind::rotate;
    if (standing && stack && !stack->now.slots.empty()) {
        const reckoning::TrayEstimate& bottom = stack->now.slots.front();
        lift.weight = {bottom.weightKg.p05, bottom.weightKg.p50, bottom.weightKg.p95};
        lift.tray = bottom.tray;
        if (standing->has(1)) lift.liftWords = forms::trayLift(*standing, 1, bottom.weightKg.p95).words;
    }
    forms::CautionFacts drain;
    drain.kind = forms::FormKind::drain;
    QList<exchange::ReportBlock> blocks{exchange::ReportHeading{SheetWords::tr("Cautions")}};
    QStringList said;
    for (const QList<forms::Caution>& list : {forms::cautionsFor(lift), forms::cautionsFor(drain), forms::firstRunCautions()}) {
        for (const forms::Caution& one : list) {
            if (said.contains(one.text)) continue;
            said << one.text;
            const QString words = one.normal ? one.text : SheetWords::tr("Caution: %1").arg(one.text);
            blocks << exchange::ReportBox{one.normal ? ReportTone::plain : ReportTone::soon, {}, {words}, SheetWords::tr("Source: %1").arg(one.source)};
        }
    }
    return blocks;
}

QString setupLine(const journal::Standing& standing)
{
    const journal::StackSettings& s = standing.settings;
    journal::Entry entry;
    entry.action = journal::Setup{s.area, s.height, s.trays, s.sump, standing.spigot, s.place, s.temp, s.stand, std::nullopt};
    return journal_page::detailWords(entry);
}

}
