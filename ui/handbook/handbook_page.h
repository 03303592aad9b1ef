#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/handbook/handbook_html.h"

#include <QWidget>

class QAction;
class QBoxLayout;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace tierloam::ui {
class FieldEdit;
class PageHead;
class Settings;
}

namespace tierloam::handbook {

class HandbookView;
class HarvestView;
class SymptomView;

/// The handbook: its pages in a list that narrows to what is searched, and the page that is read. Nothing of it needs a network.
class HandbookPage : public QWidget {
    Q_OBJECT

public:
    HandbookPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);

    /// Unknown ids are left alone.
    void open(const QString& id);
    QString openId() const;
    void goBack();
    void goOn();
    void refreshNow();
    /// The page of symptoms, for that stack.
    void openSymptoms(const QString& stack);
    /// The guided harvest, for that stack.
    void openHarvest(const QString& stack);
    HarvestView* harvest() const { return harvest_; }
    SymptomView* symptoms() const { return symptoms_; }
    HandbookView* view() const { return view_; }
    QListWidget* list() const { return list_; }

Q_SIGNALS:
    /// A form is to be opened in the stack, filled in so.
    void entryWanted(const QString& stack, const tierloam::journal::Action& action, std::optional<int> slot);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void buildActions();
    void fillList();
    /// Draws only while it can be seen, unless `now`: the window must not wait for a page that nobody looks at.
    void display(const QString& id, bool now = false);
    void draw(const Page& page);
    void fit();
    void tellLine();
    PageFacts facts() const;

    household::Household& household_;
    const ui::Theme& theme_;
    ui::PageHead* head_;
    ui::FieldEdit* words_;
    QListWidget* list_;
    HandbookView* view_;
    SymptomView* symptoms_;
    HarvestView* harvest_;
    QStackedWidget* shown_;
    QBoxLayout* sides_;
    QPushButton* back_ = nullptr;
    QPushButton* on_ = nullptr;
    QStringList visited_;
    qsizetype place_ = -1;
    bool stale_ = true;
    bool filling_ = false;
    int found_ = 0;  ///< pages that hold the words searched for
};

}
