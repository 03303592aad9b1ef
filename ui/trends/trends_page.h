#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/trends/trend_data.h"

#include <QWidget>

#include <memory>
#include <set>
#include <vector>

class QLabel;
class QPushButton;
class QScrollArea;

namespace tierloam::ui {
class FlowLayout;
class PageHead;
class Settings;
}

namespace tierloam::trends {

class MeasureSection;

/// The trends page: processing rate, drainage and colony of the chosen stacks over 30 days to all, with bands, entries as marks and
/// the forecast; side by side or together, as charts or as tables. It works from the values that the household hands out and is
/// rebuilt when it is shown after a change.
class TrendsPage : public QWidget {
    Q_OBJECT

public:
    TrendsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);

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

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void refreshStacks(const QStringList& names);
    void buildControls();
    void syncControls();
    void shareHeight();
    QPushButton* toggle(ui::ActionId id);

    household::Household& household_;
    const ui::Theme& theme_;
    ui::Settings& settings_;
    Range range_ = Range::twoYears;
    bool together_ = false;
    bool table_ = false;
    bool stale_ = true;
    std::set<QString> hidden_;       ///< stacks that were taken out; a new stack is shown
    QStringList known_;

    ui::PageHead* head_;
    QWidget* controls_;
    std::vector<QPushButton*> ranges_;
    QPushButton* togetherButton_ = nullptr;
    QPushButton* tableButton_ = nullptr;
    QWidget* chips_;
    QScrollArea* scroll_;
    QWidget* key_ = nullptr;
    std::vector<MeasureSection*> sections_;
};

}
