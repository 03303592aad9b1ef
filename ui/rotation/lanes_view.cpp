#include "ui/rotation/lanes_view.h"

#include "ui/common/dates.h"
#include "ui/common/panels.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr int left = 6, above = 4, right = 4, beneath = 2; ///< px around the lanes

}

LanesView::LanesView(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    setObjectName(QStringLiteral("lanes"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&theme_, &ui::Theme::changed, this, [this] { updateGeometry(); update(); });
    tell();
}

void LanesView::setYear(YearLanes year, Day today)
{
    // The step that was chosen stays chosen, wherever it has moved to.
    std::optional<PlanStep> before;
    if (const PlanStep* step = chosen()) before = *step;
    year_ = std::move(year);
    today_ = today;
    year_.lanes.focused = hasFocus();
    if (before) {
        for (int lane = 0; lane < static_cast<int>(year_.steps.size()); ++lane)
            for (int mark = 0; mark < static_cast<int>(year_.steps[static_cast<std::size_t>(lane)].size()); ++mark) {
                const PlanStep& one = year_.steps[static_cast<std::size_t>(lane)][static_cast<std::size_t>(mark)];
                if (one.stack == before->stack && one.kind == before->kind && one.batch == before->batch) year_.lanes.chosen = {lane, mark};
            }
    }
    const PlanStep* still = chosen();
    if (!still || !canMove(*still)) dragging_ = false; // what was being dragged is not in this plan
    updateGeometry();
    update();
    tell();
    Q_EMIT chosenChanged();
}

const PlanStep* LanesView::chosen() const
{
    const auto& at = year_.lanes.chosen;
    if (!at || at->first >= static_cast<int>(year_.steps.size())) return nullptr;
    const auto& steps = year_.steps[static_cast<std::size_t>(at->first)];
    return at->second < static_cast<int>(steps.size()) ? &steps[static_cast<std::size_t>(at->second)] : nullptr;
}

void LanesView::choose(std::optional<std::pair<int, int>> mark)
{
    if (year_.lanes.chosen == mark) return;
    year_.lanes.chosen = mark;
    update();
    tell();
    Q_EMIT chosenChanged();
}

/// What a screen reader says: the page in a sentence, and the chosen step as its value.
void LanesView::tell()
{
    const PlanStep* step = chosen();
    QString what = step ? stepText(*step, today_) : tr("no step chosen");
    if (step && step->ready.isEmpty())
        if (const auto& ready = year_.lanes.lanes[static_cast<std::size_t>(year_.lanes.chosen->first)].ready) what = QStringList{what, ready->words}.join(QStringLiteral("; "));
    if (const QString away = step ? awayText(year_.lanes.chosen->first) : QString{}; !away.isEmpty()) what = QStringList{what, away}.join(QStringLiteral("; "));
    ui::setAccess(this, tr("Year of %n stack(s): %1", nullptr, static_cast<int>(year_.lanes.lanes.size())).arg(what),
                  tr("Arrow keys choose a step or another stack; Shift with Left or Right moves a harvest by a day, Ctrl and Shift by a week; Enter keeps it on its day"));
    if (QAccessible::isActive()) {
        QAccessibleEvent changed{this, QAccessible::NameChanged};
        QAccessible::updateAccessibility(&changed);
    }
}

QString LanesView::readyText(int lane) const
{
    const drawing::Lane& one = year_.lanes.lanes[static_cast<std::size_t>(lane)];
    return one.ready ? tr("%1: %2", "stack, when its bottom tray is ready").arg(one.name, one.ready->words) : QString{};
}

QString LanesView::awayText(int lane) const
{
    const auto spans = [this](const std::vector<std::pair<Day, Day>>& away) {
        QStringList days;
        for (const auto& [from, to] : away)
            if (to >= year_.lanes.today && from <= year_.lanes.axis.to) days << ui::dayRange(from, to, today_);
        return days.join(tr(", "));
    };
    QStringList parts;
    if (const QString all = spans(year_.lanes.away); !all.isEmpty()) parts << tr("nobody is there: %1").arg(all);
    if (const QString own = spans(year_.lanes.lanes[static_cast<std::size_t>(lane)].away); !own.isEmpty()) parts << tr("nobody is there for this stack: %1").arg(own);
    return parts.join(QStringLiteral("; "));
}

QString LanesView::awayTextAt(QPointF at) const
{
    const auto layout = layoutNow();
    const auto lane = layout.laneAt(at);
    if (!lane) return {};
    const drawing::Lane& one = year_.lanes.lanes[static_cast<std::size_t>(*lane)];
    for (const auto& away : one.away)
        if (layout.awayRoom(year_.lanes, away, *lane).contains(at)) return tr("%1: nobody is there for it, %2", "stack, days").arg(one.name, ui::dayRange(away.first, away.second, today_));
    for (const auto& away : year_.lanes.away)
        if (layout.awayRoom(year_.lanes, away).contains(at)) return tr("nobody is there: %1").arg(ui::dayRange(away.first, away.second, today_));
    return {};
}

drawing::LanesLayout LanesView::layoutNow() const
{
    return drawing::layOutLanes(year_.lanes, QRectF{rect()}.adjusted(left, above, -right, -beneath), drawing::Type::from(theme_.font(ui::TextSize::body)));
}

QPoint LanesView::markCentre(int lane, int mark) const { return layoutNow().markRoom(year_.lanes, lane, mark).center().toPoint(); }

int LanesView::heightForWidth(int width) const
{
    return static_cast<int>(drawing::lanesHeight(year_.lanes, width - left - right, drawing::Type::from(theme_.font(ui::TextSize::body)))) + above + beneath + 4;
}

QSize LanesView::sizeHint() const { return {theme_.px(720), heightForWidth(theme_.px(720))}; }
QSize LanesView::minimumSizeHint() const { return {theme_.px(320), heightForWidth(std::max(width(), theme_.px(320)))}; }

bool LanesView::canMove(const PlanStep& step) const { return step.isHarvest; }

void LanesView::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    const auto type = drawing::Type::from(theme_.font(ui::TextSize::body));
    drawing::drawLanes(painter, year_.lanes, layoutNow(), theme_.palette(), type);
    if (hasFocus()) {
        painter.setPen(QPen{theme_.palette().moss, 2});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void LanesView::step(int by)
{
    if (year_.steps.empty()) return;
    auto at = year_.lanes.chosen.value_or(std::pair{0, by > 0 ? -1 : 1});
    const int steps = static_cast<int>(year_.steps[static_cast<std::size_t>(at.first)].size());
    if (steps == 0) return changeLane(1); // a stack of which nothing comes within a year
    at.second = std::clamp(at.second + by, 0, steps - 1);
    choose(at);
}

/// To the step of the other stack that is nearest in time.
void LanesView::changeLane(int by)
{
    if (year_.steps.empty()) return;
    const auto at = year_.lanes.chosen.value_or(std::pair{by > 0 ? -1 : static_cast<int>(year_.steps.size()), 0});
    const PlanStep* now = chosen();
    for (int lane = at.first + by; lane >= 0 && lane < static_cast<int>(year_.steps.size()); lane += by) {
        const auto& steps = year_.steps[static_cast<std::size_t>(lane)];
        if (steps.empty()) continue;
        const Day near = now ? now->on : year_.lanes.today;
        const auto nearest = std::min_element(steps.begin(), steps.end(), [near](const PlanStep& a, const PlanStep& b) {
            return std::abs(daysBetween(near, a.on)) < std::abs(daysBetween(near, b.on));
        });
        choose(std::pair{lane, static_cast<int>(nearest - steps.begin())});
        return;
    }
}

void LanesView::moveChosen(int days)
{
    const PlanStep* step = chosen();
    if (!step || !canMove(*step)) return;
    const Day on = std::clamp(step->on + std::chrono::days{days}, year_.lanes.today, year_.lanes.axis.to);
    if (on != step->on) moveTo(on);
}

void LanesView::moveTo(Day on)
{
    const PlanStep before = *chosen();
    moveStep(year_, *year_.lanes.chosen, on);
    update();
    tell();
    Q_EMIT chosenChanged();
    Q_EMIT moved(before, on);
}

void LanesView::keepChosen()
{
    const PlanStep* step = chosen();
    if (step && canMove(*step)) Q_EMIT moved(PlanStep{*step}, std::max(step->on, year_.lanes.today));
}

void LanesView::keyPressEvent(QKeyEvent* event)
{
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    const int days = event->modifiers() & Qt::ControlModifier ? 7 : 1;
    switch (event->key()) {
    case Qt::Key_Left: shift ? moveChosen(-days) : step(-1); return; // time runs to the right in every language
    case Qt::Key_Right: shift ? moveChosen(days) : step(1); return;
    case Qt::Key_Up: changeLane(-1); return;
    case Qt::Key_Down: changeLane(1); return;
    case Qt::Key_Home: step(-1000); return;
    case Qt::Key_End: step(1000); return;
    case Qt::Key_Return:
    case Qt::Key_Enter: keepChosen(); return;
    case Qt::Key_Escape:
        if (dragging_) {
            dragging_ = false;
            year_.lanes.dragged.reset();
            update();
            return;
        }
        break;
    default: break;
    }
    QWidget::keyPressEvent(event);
}

void LanesView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    choose(layoutNow().markAt(year_.lanes, event->position()));
    const PlanStep* step = chosen();
    dragging_ = step && canMove(*step);
}

void LanesView::mouseMoveEvent(QMouseEvent* event)
{
    const auto layout = layoutNow();
    if (dragging_ && event->buttons() & Qt::LeftButton) {
        const Day on = std::clamp(layout.dayAt(year_.lanes, event->position().x()), year_.lanes.today, year_.lanes.axis.to);
        if (year_.lanes.dragged != on && on != chosen()->on) {
            year_.lanes.dragged = on;
            QToolTip::showText(event->globalPosition().toPoint(), ui::longDay(on, today_), this);
            update();
        }
        return;
    }
    const auto under = layout.markAt(year_.lanes, event->position());
    setCursor(under ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void LanesView::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return; // the one that drags is still held
    const auto to = year_.lanes.dragged;
    dragging_ = false;
    year_.lanes.dragged.reset();
    update();
    const PlanStep* step = chosen();
    if (to && step && *to != step->on) moveTo(*to);
}

void LanesView::focusInEvent(QFocusEvent* event)
{
    year_.lanes.focused = true;
    QWidget::focusInEvent(event);
    if (!chosen()) step(1);
    update();
}

void LanesView::focusOutEvent(QFocusEvent* event)
{
    year_.lanes.focused = false;
    QWidget::focusOutEvent(event);
    update();
}

bool LanesView::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto under = layoutNow().markAt(year_.lanes, help->pos());
        if (under) QToolTip::showText(help->globalPos(), stepText(year_.steps[static_cast<std::size_t>(under->first)][static_cast<std::size_t>(under->second)], today_), this);
        else if (const auto lane = layoutNow().readyAt(year_.lanes, help->pos())) QToolTip::showText(help->globalPos(), readyText(*lane), this);
        else if (const QString away = awayTextAt(help->pos()); !away.isEmpty()) QToolTip::showText(help->globalPos(), away, this);
        else QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

}
