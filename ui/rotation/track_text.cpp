#include "ui/rotation/track_text.h"

#include "core/store/setting_names.h"
#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/rotation/asked_stacks.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr std::size_t shown = 12;
constexpr int fedInTime = 3;           ///< days

struct Line { Day day; QString text; };

QString turnText(const reckoning::StackReckoning& stack, const reckoning::TurnNote& turn, Day today)
{
    const QString name = QString::fromStdString(stack.name);
    const QString what = turn.what == reckoning::TurnNote::What::addTray ? TrackCard::tr("add a tray") : TrackCard::tr("lift the bottom tray");
    const QString from = ui::shortDay(turn.from, today);
    if (!turn.to) return TrackCard::tr("%1, %2: advised to %3; still due").arg(from, name, what);
    const int days = daysBetween(turn.from, *turn.to);
    return turn.done ? TrackCard::tr("%1, %2: advised to %3; done %4 later").arg(from, name, what, ui::daysLong(days))
                     : TrackCard::tr("%1, %2: advised to %3; taken back after %4").arg(from, name, what, ui::daysLong(days));
}

QString harvestText(const reckoning::StackReckoning& stack, const reckoning::HarvestCheck& harvest, Day today)
{
    const QString day = ui::shortDay(harvest.day, today), name = QString::fromStdString(stack.name);
    const QString weighed = ui::massText(harvest.takenKg), foreseen = ui::massBand(harvest.expectedKg);
    return harvest.liftedOn ? TrackCard::tr("%1, %2: %3 weighed, %4 foreseen, ready %5 when lifted").arg(day, name, weighed, foreseen, ui::percentText(harvest.readyWhenLifted))
                            : TrackCard::tr("%1, %2: %3 weighed, %4 foreseen").arg(day, name, weighed, foreseen);
}

QString careText(const std::string& stack, const advice::DiaryLine& line, Day today)
{
    const QString from = ui::shortDay(line.from, today);
    const QString name = QString::fromStdString(stack);
    const QString what = ui::unbroken(QString::fromStdString(line.advice.text));
    if (line.doneOn) {
        const int days = daysBetween(line.from, *line.doneOn);
        return days == 0 ? TrackCard::tr("%1, %2: “%3”; done the same day", "day, stack, what was advised").arg(from, name, what)
                         : TrackCard::tr("%1, %2: “%3”; done %4 later", "day, stack, what was advised, days").arg(from, name, what, ui::daysLong(days));
    }
    if (!line.to) return TrackCard::tr("%1, %2: “%3”; still due", "day, stack, what was advised").arg(from, name, what);
    return TrackCard::tr("%1, %2: “%3”; not done, taken back after %4", "day, stack, what was advised, days").arg(from, name, what, ui::daysLong(daysBetween(line.from, *line.to)));
}

}

TrackCard::TrackCard(household::Household& household, Background& background, QWidget* parent)
    : Card{parent}, household_{household}, background_{background}, record_{ui::makeLabel({}, ui::TextRole::body, this, true)}, diary_{ui::makeLabel({}, ui::TextRole::small, this, true)}
{
    setObjectName(QStringLiteral("trackCard"));
    ui::setAccess(this, tr("Diary of advice"));
    column()->addWidget(ui::makeLabel(tr("Diary of advice"), ui::TextRole::section, this));
    column()->addWidget(record_);
    column()->addWidget(diary_);
}

QString TrackCard::recordText() const { return record_->text(); }

TrackCard::Care TrackCard::careOf(const reckoning::Reckoning& reckoning, const household::StackOrder& order, const household::JournalView& journal, const std::vector<advice::PutOff>& kept, std::stop_token stop)
{
    Care care;
    for (const reckoning::StackReckoning* stack : askedStacks(reckoning, order).stacks) {
        if (stop.stop_requested()) break;
        if (const auto* history = journal.replay.stack(stack->name)) care[history->name] = advice::diaryOf(*stack, journal.entries, *history, journal.materials, kept);
    }
    advice::oneLookAtATime(care);
    return care;
}

std::vector<advice::PutOff> TrackCard::kept() const { return advice::putOffFrom(household_.kept(store::settingPutOff).toStdString()); }

void TrackCard::refresh()
{
    tell(); // turns and harvests stand at once
    const auto reckoning = household_.reckoning();
    if (!reckoning) return;
    background_.ask(QStringLiteral("diary"), [this, reckoning, order = household_.stackOrder(), journal = household_.journal(), kept = kept()](std::stop_token stop) -> Background::Use {
        auto care = careOf(*reckoning, order, *journal, kept, stop);
        if (stop.stop_requested()) return {};
        return [this, care = std::move(care)] { tell(care); };
    });
}

void TrackCard::refreshNow()
{
    const auto reckoning = household_.reckoning();
    tell(reckoning ? careOf(*reckoning, household_.stackOrder(), *household_.journal(), kept(), {}) : Care{});
}

void TrackCard::tell(Care care)
{
    care_ = std::move(care);
    tell();
}

void TrackCard::tell()
{
    const auto reckoning = household_.reckoning();
    const Day today = household_.today();
    std::vector<Line> lines;
    int weighed = 0, within = 0, lifted = 0, right = 0, advised = 0, followed = 0;
    if (reckoning)
        for (const reckoning::StackReckoning& stack : reckoning->stacks) {
            for (const reckoning::HarvestCheck& harvest : stack.harvests) {
                ++weighed;
                within += harvest.within() ? 1 : 0;
                const bool asReady = harvest.liftedOn && harvest.readyWhenLifted >= 0.8;
                lifted += asReady ? 1 : 0;
                right += asReady && harvest.within() ? 1 : 0;
                lines.push_back({harvest.day, harvestText(stack, harvest, today)});
            }
            for (const reckoning::TurnNote& turn : stack.turns) {
                ++advised;
                followed += turn.done ? 1 : 0;
                lines.push_back({turn.from, turnText(stack, turn, today)});
            }
        }
    int told = 0, done = 0, due = 0, fed = 0;
    for (const auto& [stack, all] : care_)
        for (const advice::DiaryLine& line : all) {
            if (line.advice.code == advice::Code::feedDue) { // week by week: counted alone
                if (!line.doneOn && !line.to) continue;
                ++due;
                fed += line.doneOn && daysBetween(line.from, *line.doneOn) <= fedInTime ? 1 : 0;
                continue;
            }
            lines.push_back({line.from, careText(stack, line, today)});
            if (!line.to && !line.doneOn) continue; // still due: neither followed nor not
            ++told;
            done += line.doneOn ? 1 : 0;
        }
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.day > b.day; });
    QStringList text;
    for (std::size_t i = 0; i < lines.size() && i < shown; ++i) text << lines[i].text;
    diary_->setText(text.join(QStringLiteral("\n")));
    diary_->setVisible(!text.isEmpty());
    if (weighed == 0 && advised == 0 && told == 0 && due == 0) {
        record_->setText(tr("What was advised, what was done and how right it was stands here once a step was due."));
        return;
    }
    QStringList said;
    if (weighed > 0) said << tr("harvests weighed: %1, within what was foreseen: %2 (9 in 10 should be); lifted as ready: %3, of these within: %4").arg(weighed).arg(within).arg(lifted).arg(right);
    if (advised > 0) said << tr("steps advised: %1, followed: %2").arg(advised).arg(followed);
    if (due > 0) said << tr("feedings due in the last 90 days: %1, given within 3 days: %2").arg(due).arg(fed);
    if (told > 0) said << tr("other advice in that time: %1, followed: %2").arg(told).arg(done);
    QString record = said.join(QStringLiteral("; ")) % QStringLiteral(".");
    record[0] = record[0].toUpper();
    if (const AskedStacks asked = reckoning ? askedStacks(*reckoning, household_.stackOrder()) : AskedStacks{}; asked.leavesOut() && due + told > 0)
        record = QStringList{record, tr("Feedings and other advice are counted of the first %1 of %n stack(s) on the shelf.", nullptr, static_cast<int>(asked.standing)).arg(AskedStacks::most)}.join(u' ');
    record_->setText(record);
}

}
