#include "ui/window/due_line.h"

#include "ui/common/actions.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/drawing/tray_icon.h"
#include "ui/shelf/verdict_box.h"
#include "ui/window/due_list.h"

#include <QAction>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

/// One line of the due list: what, why, when, its answers and its buttons.
namespace tierloam::window {

namespace {

constexpr int delays[] = {1, 2, 3, 7, 14, 30}; ///< days by which a line can be put off

ui::Tone toneOf(advice::Code code, advice::Severity severity)
{
    if (severity == advice::Severity::urgent) return ui::Tone::brick;
    switch (code) {
    case advice::Code::sumpFull:
    case advice::Code::tooWet:
    case advice::Code::tooDry:
    case advice::Code::drainageHigh:
    case advice::Code::drainageLow: return ui::Tone::water;
    case advice::Code::harvestOverdue:
    case advice::Code::harvestSoon:
    case advice::Code::trayFull:
    case advice::Code::overfed:
    case advice::Code::heat:
    case advice::Code::cold:
    case advice::Code::dryingDone:
    case advice::Code::dryingLong:
    case advice::Code::staleRecord: return ui::Tone::amber;
    default: return ui::Tone::moss;
    }
}

/// A small button for what is done less often than the act itself.
QPushButton* makeQuiet(const QString& text, const QString& key, ui::ActionId act, QWidget* parent, int which = 0)
{
    auto* button = ui::makeButton(text, ui::Tone::plain, parent);
    ui::setAct(button, act, which);
    button->setProperty("line", key);
    button->setProperty("compact", true);
    return button;
}

/// The small stack beside a line.
class TrayMark final : public QWidget {
public:
    TrayMark(const ui::Theme& theme, int trays, std::optional<int> slot, ui::Tone tone, QWidget* parent)
        : QWidget{parent}, theme_{theme}, trays_{trays}, slot_{slot}, tone_{tone}
    {
        setObjectName(QStringLiteral("dueMark"));
        setFixedSize(theme.px(24), theme.px(44));
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter{this};
        painter.setRenderHint(QPainter::Antialiasing);
        drawing::TrayIcon icon;
        icon.trays = std::clamp(trays_, 1, 5);
        icon.slot = slot_;
        icon.colour = shelf::toneColour(tone_, theme_.palette());
        drawing::drawTrayIcon(painter, rect(), icon, theme_.palette());
        if (tone_ == ui::Tone::brick) drawUrgent(painter);
    }

private:
    /// What cannot wait has a sign of its own, not a colour alone.
    void drawUrgent(QPainter& painter)
    {
        const double size = theme_.px(14);
        const QRectF box{width() - size, 0.5, size - 1, size - 1};
        painter.setPen(QPen{theme_.palette().panel, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter.setBrush(theme_.palette().brick);
        const QPolygonF sign{{{box.center().x(), box.top()}, box.bottomRight(), box.bottomLeft()}};
        painter.drawPolygon(sign);
        painter.setPen(Qt::NoPen);
        painter.drawPolygon(sign);
        painter.setPen(QPen{theme_.palette().panel, 1.5 * theme_.scale(), Qt::SolidLine, Qt::FlatCap});
        painter.drawLine(QPointF{box.center().x(), box.top() + size * 0.35}, QPointF{box.center().x(), box.top() + size * 0.65});
        painter.drawLine(QPointF{box.center().x(), box.top() + size * 0.74}, QPointF{box.center().x(), box.top() + size * 0.86});
    }

    const ui::Theme& theme_;
    int trays_;
    std::optional<int> slot_;
    ui::Tone tone_;
};

}

QString lineKey(const advice::Advice& advice)
{
    QString key = QString::fromStdString(advice.stack) % u'/' % QString::number(static_cast<int>(advice.code));
    if (advice.slot) key += QStringLiteral("/tray%1").arg(*advice.slot);
    if (advice.entry) key += QStringLiteral("/entry%1").arg(*advice.entry);
    if (advice.look) key += QStringLiteral("/look%1").arg(static_cast<int>(*advice.look));
    if (advice.unwritten) key += QStringLiteral("/unwritten");
    if (advice.wormsMissing) key += QStringLiteral("/worms");
    return key;
}

QString DueList::actName(const advice::Advice& advice, bool drying)
{
    if (advice.look) return tr("Look");
    switch (advice.code) {
    case advice::Code::harvestReady:
    case advice::Code::readyNoHurry:
    case advice::Code::harvestOverdue: return drying || advice.slot.value_or(1) > 1 ? tr("Take") : tr("Lift");
    case advice::Code::harvestSoon:
    case advice::Code::lookNext: return tr("Look");
    case advice::Code::addTray: return tr("Add");
    case advice::Code::tooEarly: return drying ? tr("Cover") : tr("Feed");
    case advice::Code::feedDue:
    case advice::Code::hungry: return tr("Feed");
    case advice::Code::trayFull:
    case advice::Code::overfed:
    case advice::Code::staleRecord: return tr("Look");
    case advice::Code::lowCarbon:
    case advice::Code::tooWet: return tr("Paper", "shredded, to be put in");
    case advice::Code::tooDry: return tr("Water");
    case advice::Code::sumpFull:
    case advice::Code::drainageLow: return tr("Drain");
    case advice::Code::drainageHigh: return tr("Write", "what was poured into the journal");
    case advice::Code::heat:
    case advice::Code::cold: return tr("Read", "a thermometer");
    case advice::Code::dryingDone:
    case advice::Code::dryingLong: return tr("Take");
    case advice::Code::recordDisagrees:
        if (advice.wormsMissing) return tr("Stock", "worms, to be put in");
        if (advice.ofTheSetUp) return tr("Correct", "the set-up of a stack");
        return advice.unwritten ? tr("Write", "a feeding into the journal") : tr("Check");
    }
    return {};
}

QWidget* DueList::makeLine(const advice::Advice& advice, int trays, bool drying)
{
    const Day today = household_.today();
    const ui::Tone tone = toneOf(advice.code, advice.severity);
    auto* line = new QWidget;
    auto* grid = new QGridLayout{line};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(9);
    grid->setVerticalSpacing(1);
    grid->setColumnStretch(1, 1);
    const bool sump = advice.code == advice::Code::sumpFull || advice.code == advice::Code::drainageLow || advice.code == advice::Code::drainageHigh;
    grid->addWidget(new TrayMark{theme_, trays, sump ? std::optional{0} : advice.slot, tone, line}, 0, 0, 4, 1, Qt::AlignTop);
    const QString what = ui::unbroken(QString::fromStdString(advice.text));
    const QString why = ui::unbroken(QString::fromStdString(advice.because));
    const QString when = ui::dueDay(advice.on, today);
    // The button stands beside the first line, so that the reasons have the whole width.
    grid->addWidget(ui::makeLabel(what, ui::TextRole::strong, line, true), 0, 1);
    grid->addWidget(ui::makeLabel(why, ui::TextRole::smallMuted, line, true), 1, 1, 1, 2);
    auto* foot = new QWidget{line};
    auto* footRow = new ui::FlowLayout{foot, 6}; // longer words go on below
    auto* date = ui::makeLabel(when, ui::TextRole::small, foot);
    ui::setTone(date, tone);
    footRow->addWidget(date);
    const auto oneClick = dueAct(household_, advice);
    const QString key = lineKey(advice);
    const QString whole = tr("%1: %2").arg(QString::fromStdString(advice.stack), what);
    const QString atRest = whyAtRest(advice);
    const bool open = !household_.readOnly() && atRest.isEmpty();
    auto* explain = makeQuiet(tr("Why"), key, ui::ActionId::dueWhy, foot);
    explain->setObjectName(QStringLiteral("dueWhy"));
    explain->setCheckable(true);
    explain->setChecked(explained_ == key);
    explain->setToolTip(ui::withKeys(ui::actionName(ui::ActionId::dueWhy), explain));
    ui::setAccess(explain, tr("Why %1").arg(whole), explain->toolTip());
    connect(explain, &QPushButton::clicked, this, [this, key](bool on) {
        explained_ = on ? key : QString{};
        rebuild();
    });
    footRow->addWidget(explain);
    const int usually = advice::usualDelay(advice.code);
    auto* later = makeQuiet(tr("In %n day(s)", "put off by so many", usually), key, ui::ActionId::dueLater, foot);
    later->setObjectName(QStringLiteral("dueLater"));
    later->setEnabled(open && advice.severity != advice::Severity::urgent);
    later->setToolTip(ui::withKeys(tr("Not told again for %n day(s); for another time: right click, or the menu key", nullptr, usually), later));
    ui::setAccess(later, tr("Put off %1").arg(whole), later->toolTip());
    connect(later, &QPushButton::clicked, this, [this, advice, usually] { putOff(advice, usually); });
    later->setContextMenuPolicy(Qt::ActionsContextMenu);
    for (const int days : delays) {
        auto* action = new QAction{tr("Put off by %n day(s)", nullptr, days), later};
        connect(action, &QAction::triggered, this, [this, advice, days] { putOff(advice, days); });
        later->addAction(action);
    }
    footRow->addWidget(later);
    if (oneClick) {
        auto* form = makeQuiet(tr("…", "opens the form of what is due"), key, ui::ActionId::dueOther, foot);
        form->setObjectName(QStringLiteral("dueOther"));
        form->setEnabled(open);
        form->setToolTip(ui::withKeys(tr("Another amount or day: opens the form"), form));
        ui::setAccess(form, tr("Other amount or day for %1").arg(whole), form->toolTip());
        connect(form, &QPushButton::clicked, this, [this, advice] { Q_EMIT other(advice); });
        footRow->addWidget(form);
    }
    if (const auto done = dueDone(household_, advice)) {
        auto* noted = makeQuiet(tr("Done"), key, ui::ActionId::dueDone, foot);
        noted->setObjectName(QStringLiteral("dueDone"));
        noted->setEnabled(open);
        noted->setToolTip(ui::withKeys(tr("Writes a note that it is done, at one click"), noted));
        ui::setAccess(noted, tr("Done: %1").arg(whole), noted->toolTip());
        connect(noted, &QPushButton::clicked, this, [this, advice, done = *done] { noteDone(advice, done); });
        footRow->addWidget(noted);
    }
    grid->addWidget(foot, 3, 1, 1, 2);
    if (!atRest.isEmpty()) {
        auto* resting = ui::makeLabel(atRest, ui::TextRole::small, line, true);
        resting->setObjectName(QStringLiteral("dueAtRest"));
        grid->addWidget(resting, 2, 1, 1, 2);
    } else if (oneClick && !oneClick->caution.isEmpty()) {
        auto* caution = ui::makeLabel(oneClick->caution, ui::TextRole::small, line, true);
        caution->setObjectName(QStringLiteral("dueCaution"));
        grid->addWidget(caution, 2, 1, 1, 2);
    } else if (QWidget* answers = makeAnswers(advice, whole, line)) {
        grid->addWidget(answers, 2, 1, 1, 2);
    }
    if (explained_ == key) {
        auto* reasons = ui::makeLabel(ui::unbroken(tr("%1 If it is left: %2").arg(QString::fromStdString(advice::ruleOf(advice.code)), QString::fromStdString(advice::ifLeft(advice.code)))),
                                      ui::TextRole::smallMuted, line, true);
        reasons->setObjectName(QStringLiteral("dueReasons"));
        grid->addWidget(reasons, 4, 1, 1, 2);
    }
    const QString name = actName(advice, drying);
    auto* button = ui::makeButton(name, tone, line);
    button->setObjectName(QStringLiteral("dueButton"));
    button->setProperty("line", lineKey(advice));
    ui::setAct(button, ui::ActionId::dueAct);
    const QString told = oneClick ? tr("%1 %2. Writes down at one click: %3").arg(why, when, oneClick->label) : tr("%1 %2").arg(why, when);
    ui::setAccess(button, tr("%1: %2").arg(QString::fromStdString(advice.stack), what), advice.severity == advice::Severity::urgent ? tr("Urgent. %1").arg(told) : told);
    button->setToolTip(ui::withKeys(oneClick ? tr("Writes down at one click: %1").arg(oneClick->label) : tr("%1: %2").arg(QString::fromStdString(advice.stack), what), button));
    button->setMinimumWidth(theme_.px(56));
    button->setEnabled(open);
    connect(button, &QPushButton::clicked, this, [this, advice] { doIt(advice); });
    grid->addWidget(button, 0, 2, Qt::AlignTop);
    for (QPushButton* each : line->findChildren<QPushButton*>()) each->installEventFilter(this);
    lines_.push_back(line);
    return line;
}

QWidget* DueList::makeAnswers(const advice::Advice& advice, const QString& whole, QWidget* line)
{
    const std::vector<DueAnswer> answers = dueAnswers(household_, advice);
    if (answers.empty()) return nullptr;
    auto* row = new QWidget{line};
    auto* flow = new ui::FlowLayout{row, 6};
    int which = 0;
    for (const DueAnswer& answer : answers) {
        auto* button = makeQuiet(answer.text, lineKey(advice), ui::ActionId::dueAnswer, row, which++);
        button->setObjectName(QStringLiteral("dueAnswer"));
        button->setEnabled(!household_.readOnly()); // a line at rest asks nothing
        button->setToolTip(ui::withKeys(tr("Writes down at one click: %1").arg(answer.act.label), button));
        ui::setAccess(button, tr("%1: %2", "what is asked, an answer").arg(whole, answer.text), button->toolTip());
        connect(button, &QPushButton::clicked, this, [this, key = lineKey(advice), act = answer.act] { ask(key, [&] { Q_EMIT write(act); }); });
        flow->addWidget(button);
    }
    return row;
}

}
