#pragma once

#include "core/advice/advice.h"
#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"

#include <QWidget>

#include <functional>

class QAction;
class QHBoxLayout;
class QStackedWidget;

namespace tierloam::ui {
class Settings;
}
namespace tierloam::shelf {
class ShelfPage;
}
namespace tierloam::trends {
class TrendsPage;
}
namespace tierloam::journal_page {
class JournalPage;
}
namespace tierloam::handbook {
class HandbookPage;
}
namespace tierloam::rotation {
class RotationPage;
}
namespace tierloam::materials_page {
class MaterialsPage;
}

namespace tierloam::window {

class DueList;
struct DueAct;
class Notices;
class Rail;

/// Everything that shows one household: rail, pages, due list. Lives as long as the household is open.
class Desk : public QWidget {
    Q_OBJECT

public:
    enum class Page { shelf, trends, journal, materials, handbook, rotation, due };

    /// What the desk borrows from the window, which outlives it.
    struct Lent {
        const ui::Theme& theme;
        ui::Settings& settings;
        Notices& notices;
        std::function<QAction*(ui::ActionId)> action; ///< the window's action
        std::function<int()> minuteOfDay;
    };

    Desk(household::Household& household, Lent lent, QWidget* parent = nullptr);

    Page page() const { return page_; }
    void showPage(Page page);
    shelf::ShelfPage* shelf() const { return shelf_; }
    /// These three are made when they are first asked for, or once the window has come to rest: a start must not wait for them.
    trends::TrendsPage* trends();
    rotation::RotationPage* rotation();
    handbook::HandbookPage* handbook();
    journal_page::JournalPage* journal() const { return journal_; }
    materials_page::MaterialsPage* materials() const { return materials_; }
    DueList* due() const { return due_; }
    bool dueBeside() const { return beside_; }
    QString savedText() const;

    /// Focus to the due list, wherever it is.
    void goDue();
    void doFirstDue();
    void newStack();
    void recordOther();
    /// Causes of what is noticed, for the stack chosen on the shelf.
    void showSymptoms();
    /// The guided harvest of that stack.
    void showHarvest();
    /// Something typed in a form or editor would be lost.
    bool anythingTyped() const;
    /// A form stands on the page that is shown.
    bool isFormOpen() const;

Q_SIGNALS:
    /// What is seen on the trends is to be saved, or printed.
    void trendsSaveAsked(const QString& kind);
    void trendsPrintAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void act(const advice::Advice& advice);
    void write(const DueAct& act);
    void openFormFor(const advice::Advice& advice);
    void tellCaution(bool leachate);
    void writeUnwritten(const QString& stack, const advice::UnwrittenFeeding& feeding);
    void checkEntry(journal::EntryId id);
    void placeDue();
    void tellState();
    void holdStill();
    void makeNextPage();

    household::Household& household_;
    Lent lent_;
    Page page_ = Page::shelf;
    bool beside_ = true;
    int savedAt_ = -1;               ///< minute of the day of the last write
    QString savedWhat_;              ///< the step, with its stack; empty after an undo
    int steps_ = 0;                  ///< on the undo stack after it
    Rail* rail_;
    QStackedWidget* pages_;
    shelf::ShelfPage* shelf_;
    trends::TrendsPage* trends_ = nullptr;
    journal_page::JournalPage* journal_;
    materials_page::MaterialsPage* materials_;
    rotation::RotationPage* rotation_ = nullptr;
    handbook::HandbookPage* handbook_ = nullptr;
    DueList* due_;
    QWidget* duePage_;
    QHBoxLayout* row_;
    QAction* dueAction_;             ///< in the rail while there is no room beside the page
};

}
