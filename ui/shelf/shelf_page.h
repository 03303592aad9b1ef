#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/forms/form_kind.h"
#include "ui/forms/typed_form.h"
#include "ui/shelf/part_story.h"
#include "ui/shelf/shelf_model.h"

#include <QWidget>

#include <map>
#include <memory>
#include <optional>
#include <set>

class QAction;
class QLabel;
class QScrollArea;
class QTimer;

namespace tierloam::ui {
class PageHead;
}

namespace tierloam::shelf {

class DateBar;
class FormHost;
class LegendBar;
class ShelfBoard;
class StackColumn;

/// The main page: every stack drawn at one scale as it stands, or stood on a chosen day, what to do with it next, and the daily things
/// at one click. Clicking a tray, the sump or "…" opens what can be done there in place; forms open in the same place.
/// It works from the values that the household hands out and is made anew after each change; nothing of it is kept.
class ShelfPage : public QWidget {
    Q_OBJECT

public:
    ShelfPage(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);
    ~ShelfPage() override;

    /// Room for the window's buttons (undo, record, new stack).
    ui::PageHead* head() const { return head_; }
    /// Actions of the chosen stack and of the day shown, as in the table; they live in the page and work while it has the focus.
    QAction* action(ui::ActionId id) const;
    QList<QAction*> stackActions() const;
    /// The stack that has or last had the focus; empty when none stands.
    QString currentStack() const;
    Day shownDay() const { return shown_; }
    const ShelfModel& model() const { return *model_; }
    ShelfBoard* board() const { return board_; }
    DateBar* dateBar() const { return dates_; }
    FormHost* host() const { return host_; }

    /// Writes the usual amount down for today: feed (with its usual cover), water or drain. Other kinds open their form.
    /// With `onlyWhatIsBorne` a feeding is cut to what the stack bears this week.
    void recordUsual(const QString& stack, forms::FormKind kind, bool onlyWhatIsBorne = false);
    /// Opens a form in place; false when a form that was begun is open and stays: whoever began it is asked.
    bool openForm(const QString& stack, forms::FormKind kind, std::optional<int> slot = std::nullopt);
    /// The feed form with that feeding and day filled in; false as above.
    bool openFeeding(const QString& stack, Day day, const journal::Feed& feed);
    /// The form of that action's kind with it filled in, for today; false as above.
    bool openProposed(const QString& stack, const journal::Action& action, std::optional<int> slot = std::nullopt);
    /// What a tray (a slot), the sump (0) or the whole stack (nullopt) is and what can be done to it; false when a form that was begun is open: a click on
    /// the drawing asks nothing.
    bool openPanel(const QString& stack, std::optional<int> part);
    bool openNewStack();
    bool isFormOpen() const;
    /// Asked before a form that was begun is given up; unset: it stays where another would open, and goes by its own Cancel and Esc.
    void setMayThrowAway(forms::MayThrowAway ask) { mayThrowAway_ = std::move(ask); }
    /// Puts a stack where `place` others stand before it; the order is kept with the household.
    void moveStack(const QString& stack, int place);
    /// Closes the panel or form; one that was begun stays unless `force`.
    bool closePanel(bool force = false);
    void showDay(Day day);
    void chooseStack(const QString& stack);
    /// Puts the focus on the drawing of the chosen stack, or the first; on what is open in place, where its form or panel has it.
    void focusStack();
    /// Draws now what would be drawn when the page is next shown; for portraits and tests.
    void refreshNow();

Q_SIGNALS:
    /// An act of the usual amount was recorded at one click, without a form and what it says.
    void usualRecorded(tierloam::forms::FormKind kind);
    void currentStackChanged(const QString& stack);
    /// A form has come up in place, or is gone; a panel is none.
    void formShown(bool shown);
    /// Nothing was written down, since no stack had been chosen; in words.
    void stackNeeded(const QString& why);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void refreshPanel();
    QRect seenPart() const; ///< of the board
    void tellSeen();
    void tellShownFirst();
    PartStory storyOf(const QString& stack, const journal::Standing& standing, std::optional<int> part) const;
    void makeActions();
    void enableActions();
    void act(ui::ActionId id);
    forms::TypedForm* form() const; ///< that is open; nullptr: none, or a panel
    bool asksForStack();
    void followFocus(const QWidget* from, const QWidget* to);
    bool formBegun() const;
    bool makesWay();
    void showForm(forms::TypedForm* form);
    int aroundHeight() const;
    void giveRoom(const QWidget* content);
    int roomFor(const QWidget* content) const;
    void bringIntoView(const StackColumn& column);
    void keepSelectedInView();
    void recorded(household::Ticket ticket);
    void failed(household::Ticket ticket, const QString& why);
    int placeOf(const QString& stack) const;   ///< in the row; −1 when it does not stand
    const journal::Standing* standingOf(const QString& stack) const;

    household::Household& household_;
    const ui::Theme& theme_;
    std::shared_ptr<const ShelfModel> model_;
    Day shown_{};
    bool followsToday_ = true;      ///< the slider is at its end
    bool stale_ = true;
    forms::MayThrowAway mayThrowAway_;
    bool focusTaken_ = false;       ///< from the form that is open, when its fields were disabled for the write
    std::map<ui::ActionId, QAction*> actions_;
    std::map<household::Ticket, QString> asked_; ///< one-click records on their way, by what they are called

    ui::PageHead* head_;
    QWidget* failure_;
    QLabel* failureText_;
    QScrollArea* scroll_;
    ShelfBoard* board_;
    LegendBar* legend_;
    FormHost* host_;
    DateBar* dates_;
    QTimer* seen_; ///< one for all that comes into view until the event loop is back
};

}
