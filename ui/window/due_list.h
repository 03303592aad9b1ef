#pragma once

#include "core/advice/advice.h"
#include "core/advice/put_off.h"
#include "core/household/household.h"
#include "ui/common/theme.h"
#include "ui/window/due_acts.h"

#include <QFrame>
#include <QPointer>
#include <QSet>

#include <deque>
#include <functional>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace tierloam::ui {
enum class ActionId;
}

namespace tierloam::window {

/// What is to be done over all stacks, grouped by stack: what, why in numbers, when, and a button that names the act. Rebuilt when a
/// reckoning comes in; the focus stays on the line it was on. What was done at one click rests until the estimates know of it. Of very many lines those further down are made when one scrolls or tabs towards them.
class DueList : public QFrame {
    Q_OBJECT

public:
    DueList(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    int count() const { return static_cast<int>(shown_.size()); }
    const std::vector<advice::Advice>& lines() const { return shown_; }
    /// Puts the focus on the first button.
    void enter();
    /// As a click on the first button.
    void doFirst();
    /// What the button of that advice is called.
    static QString actName(const advice::Advice& advice, bool drying);
    int wantedWidth() const;

    /// Up and Down go to the line before and after, making it where need be, Home and End to the first and the last.
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void act(const tierloam::advice::Advice& advice);
    /// The same with its form, for another amount or day.
    void other(const tierloam::advice::Advice& advice);
    /// An answer given in the line, or what was done: to be written down.
    void write(const tierloam::window::DueAct& act);
    void counted(int lines);

private:
    void makeKeys();
    void press(ui::ActionId act, int which);
    void rebuild();
    /// What had the focus before a rebuild.
    struct Place {
        QString line, button;        ///< key of the line, name of the button
        std::size_t at = 0;          ///< how many lines were above
    };
    std::optional<Place> focusedPlace() const;
    void focusAgain(const Place& place);
    QPushButton* buttonOf(std::size_t line, const QString& name) const;
    /// Asks for what a click on the line writes down; the line rests from then on, if anything was written.
    void ask(const QString& line, const std::function<void()>& asking);
    void doIt(const advice::Advice& advice);
    /// Why what the line advises cannot be done at a click now; empty when it can.
    QString whyAtRest(const advice::Advice& advice) const;
    void putOff(const advice::Advice& advice, int days);
    /// The household's setting with that line put off by so many days.
    QString withPutOff(const advice::Advice& advice, int days) const;
    /// Notes it as done and tells it no more for the usual while.
    void noteDone(const advice::Advice& advice, const DueAct& act);
    QWidget* makeAnswers(const advice::Advice& advice, const QString& whole, QWidget* line);
    void tellAll();
    std::vector<advice::PutOff> putOffs() const;
    struct OfStack {
        std::string name;
        std::vector<advice::Advice> lines;
        int trays = 0;
        bool drying = false;
    };
    void addStack(const OfStack& stack);
    void makeMore();
    void makeMoreIfNear();
    void goToLine(std::size_t line);
    void keepInSight();
    QWidget* makeLine(const advice::Advice& advice, int trays, bool drying);

    household::Household& household_;
    const ui::Theme& theme_;
    std::vector<advice::Advice> shown_;
    QLabel* title_;
    QLabel* summary_;
    QLabel* nothing_;
    QPushButton* again_;
    QString explained_;              ///< key of the line whose reasons are open
    QSet<QString> done_;             ///< keys of lines acted upon that the estimates do not know of yet
    std::deque<OfStack> waiting_;    ///< whose lines are not made yet
    std::size_t made_ = 0;           ///< lines
    QPointer<QWidget> sought_;       ///< the line that a key went to last
    std::vector<QWidget*> lines_;    ///< those that are made, from above
    QWidget* list_;
    QScrollArea* scroll_;
    QVBoxLayout* rows_;
};

}
