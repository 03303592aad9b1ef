#include "ui/rotation/track_text.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr std::size_t shown = 10;

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
    const QString lifted = harvest.liftedOn ? TrackCard::tr(", ready %1 when lifted").arg(ui::percentText(harvest.readyWhenLifted)) : QString{};
    return TrackCard::tr("%1, %2: %3 weighed, %4 foreseen%5")
        .arg(ui::shortDay(harvest.day, today), QString::fromStdString(stack.name), ui::massText(harvest.takenKg), ui::massBand(harvest.expectedKg), lifted);
}

}

TrackCard::TrackCard(household::Household& household, QWidget* parent)
    : Card{parent}, household_{household}, record_{ui::makeLabel({}, ui::TextRole::body, this, true)}, diary_{ui::makeLabel({}, ui::TextRole::small, this, true)}
{
    setObjectName(QStringLiteral("trackCard"));
    ui::setAccess(this, tr("Diary of advice"));
    column()->addWidget(ui::makeLabel(tr("Diary of advice"), ui::TextRole::section, this));
    column()->addWidget(record_);
    column()->addWidget(diary_);
}

QString TrackCard::recordText() const { return record_->text(); }

void TrackCard::refresh()
{
    const auto reckoning = household_.reckoning();
    const Day today = household_.today();
    std::vector<Line> lines;
    int weighed = 0, within = 0, lifted = 0, advised = 0, followed = 0;
    if (reckoning)
        for (const reckoning::StackReckoning& stack : reckoning->stacks) {
            for (const reckoning::HarvestCheck& harvest : stack.harvests) {
                ++weighed;
                within += harvest.within() ? 1 : 0;
                lifted += harvest.liftedOn && harvest.readyWhenLifted >= 0.8 ? 1 : 0;
                lines.push_back({harvest.day, harvestText(stack, harvest, today)});
            }
            for (const reckoning::TurnNote& turn : stack.turns) {
                ++advised;
                followed += turn.done ? 1 : 0;
                lines.push_back({turn.from, turnText(stack, turn, today)});
            }
        }
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.day > b.day; });
    QStringList text;
    for (std::size_t i = 0; i < lines.size() && i < shown; ++i) text << lines[i].text;
    diary_->setText(text.join(QStringLiteral("\n")));
    diary_->setVisible(!text.isEmpty());
    if (weighed == 0 && advised == 0) {
        record_->setText(tr("What was advised, what was done and how right it was stands here once a turn has come."));
        return;
    }
    QStringList said;
    if (weighed > 0) said << tr("Of %1 harvests that were weighed, %2 lay within what was foreseen (9 in 10 should); %3 were lifted as ready").arg(weighed).arg(within).arg(lifted);
    if (advised > 0) said << tr("of %1 turns advised, %2 were followed").arg(advised).arg(followed);
    record_->setText(said.join(QStringLiteral("; ")) % QStringLiteral("."));
}

}
