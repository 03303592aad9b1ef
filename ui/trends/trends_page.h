#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/rotation/background.h"
#include "ui/trends/shown_days.h"
#include "ui/trends/trend_seen.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QLabel;
class QPushButton;
class QScrollArea;
class QTimer;
class QVBoxLayout;

namespace tierloam::ui {
class FlowLayout;
class PageHead;
class Settings;
}

namespace tierloam::rotation {
class ChangeCard;
}

namespace tierloam::trends {

class MeasureSection;
class SignKey;
class StackChips;

/// The trends page: every measure of the chosen stacks over 30 days to all, with bands, entries as marks and the forecast; side by side or
/// together, as charts or as tables. All charts show the same days: those of the range, or fewer when one has zoomed. A change that is tried
/// stands beside the base case. It works from the values that the household hands out and is rebuilt when it is shown after a change.
class TrendsPage : public QWidget {
    Q_OBJECT

public:
    TrendsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);
    ~TrendsPage() override;

    Range range() const { return range_; }
    void setRange(Range range);
    bool together() const { return together_; }
    void setTogether(bool together);
    bool asTable() const { return table_; }
    void setTable(bool table);
    void setStackShown(const QString& stack, bool shown);
    QStringList shownStacks() const;
    /// Draws now what would be drawn when the page is next shown; for portraits and tests.
    void refreshNow();

    /// The days that the charts show, and those of the range.
    const Period& view() const { return days_.view(); }
    const Period& period() const { return days_.whole(); }
    /// Held within the range and to a week at least.
    void setView(Day from, Day until);
    void showWhole();
    const Sums& sums() const { return sums_; }
    void setSums(const Sums& sums);
    bool changeOpen() const;
    void openChange(bool open);
    /// All of them, scrolled away or not.
    SeenTrends seen();

Q_SIGNALS:
    /// What is seen is to be kept in a file of that kind: "png", "svg", "pdf", "csv".
    void saveAsked(const QString& kind);
    void printAsked();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    /// Fills the next of the sections that were out of sight when the page was first shown; all of them when `all`.
    void fillRest(bool all);
    /// The card in which a change is tried; made when it is first opened.
    rotation::ChangeCard& changeCard();
    void buildControls();
    void syncControls();
    void syncZoom();
    void shareHeight();
    void placeControls();
    int placeKey();
    void buildMenu();
    void zoom(double factor, Day about);
    void move(double share);
    void setCursor(std::optional<Day> day);
    void showView();
    void showChange();
    QPushButton* toggle(ui::ActionId id);
    QPushButton* press(ui::ActionId id);

    household::Household& household_;
    const ui::Theme& theme_;
    ui::Settings& settings_;
    Range range_ = Range::twoYears;
    bool together_ = false;
    bool table_ = false;
    bool stale_ = true;
    ShownDays days_;
    Sums sums_;
    std::optional<Day> cursor_;
    QTimer* frame_;                  ///< the view is drawn once for all that was asked since
    QTimer* telling_;                ///< words and tables follow when the view has come to rest
    QTimer* scrolling_;              ///< runs while the page scrolls by the wheel
    QTimer* filling_;                ///< runs until all sections are filled
    std::function<void(std::size_t)> fill_; ///< a section, with the values of the last refresh
    std::size_t filled_ = 0;         ///< sections, from the top
    std::shared_ptr<const reckoning::Reckoning> basis_; ///< of the change that is tried

    ui::PageHead* head_;
    QWidget* controls_;
    QVBoxLayout* rows_;              ///< of the page
    QVBoxLayout* column_;            ///< of what scrolls
    bool controlsScroll_ = false;
    std::vector<QPushButton*> ranges_;
    QPushButton* togetherButton_ = nullptr;
    QPushButton* tableButton_ = nullptr;
    QPushButton* sumButton_ = nullptr;
    QPushButton* yearButton_ = nullptr;
    QPushButton* changeButton_ = nullptr;
    QPushButton* wholeButton_ = nullptr;
    QPushButton* saveButton_ = nullptr;
    rotation::Background background_;
    rotation::ChangeCard* change_ = nullptr; ///< none until it is first opened
    StackChips* chips_;
    QScrollArea* scroll_;
    SignKey* key_ = nullptr;
    std::vector<MeasureSection*> sections_;
};

}
