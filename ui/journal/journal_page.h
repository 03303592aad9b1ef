#pragma once

#include "core/household/household.h"
#include "ui/common/theme.h"
#include "ui/forms/typed_form.h"

#include <QItemSelection>
#include <QWidget>

#include <vector>

class QAction;
class QComboBox;
class QKeyEvent;
class QLabel;
class QLineEdit;
class QMenu;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace tierloam::forms {
class EntryEditor;
}

namespace tierloam::ui {
class PageHead;
class Settings;
}

namespace tierloam::journal_page {

class ColumnRoom;
class EntrySeries;
class JournalFilter;
class JournalModel;
class PictureStrip;

/// The journal page: all entries as a table, newest first, filtered by words, stack, action and period. Enter edits the chosen entry in
/// place below the table, its pictures stand there as thumbnails, Ins records several in a row there, Ctrl+J one more like the chosen one, Del takes the chosen ones out (undo
/// brings them back), Ctrl+F finds as one types, Esc shows all again. Which columns are shown is kept on this machine.
class JournalPage : public QWidget {
    Q_OBJECT

public:
    JournalPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);

    QTableView* table() const { return table_; }
    QMenu* columnsMenu() const { return columns_; }
    std::vector<journal::EntryId> chosen() const;
    void choose(journal::EntryId id);
    /// Something was typed into the editor that has not been saved.
    bool editing() const;
    bool isFormOpen() const { return editor_ != nullptr || series_ != nullptr; }
    /// Asked before what was typed into a form is thrown away; unset: it goes unasked.
    void setMayThrowAway(forms::MayThrowAway ask) { mayThrowAway_ = std::move(ask); }

public Q_SLOTS:
    void find();
    void editChosen();
    void deleteChosen();
    void changeTogether();
    void duplicateChosen();
    void recordInRow();
    void chooseColumns();
    void askForPhotos();
    void showAll();

Q_SIGNALS:
    /// The pictures of an entry are to be shown.
    void photosWanted(qint64 entryId);
    /// What stands in the way of a deletion, in words; stays until it is dismissed.
    void refused(const QString& why);
    /// A form below the table has come up, or is gone.
    void formShown(bool shown);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void giveRoom();
    void buildFilters(QVBoxLayout* rows);
    void buildTable();
    void buildColumns();
    void showSeries(EntrySeries* series);
    bool makesWay();
    bool moveWithCtrl(const QKeyEvent& key);
    void takeJournal();
    QItemSelection rowsOf(const std::vector<journal::EntryId>& ids) const;
    void fillStacks();
    void applyPeriod();
    void tellCount();
    void closeEditor();

    household::Household& household_;
    const ui::Theme& theme_;
    ui::Settings& settings_;
    JournalModel* model_;
    JournalFilter* filter_;
    ui::PageHead* head_;
    QWidget* filters_ = nullptr;
    QLineEdit* words_ = nullptr;
    QComboBox* stack_ = nullptr;
    QComboBox* action_ = nullptr;
    QComboBox* period_ = nullptr;
    QPushButton* showAll_ = nullptr;
    QPushButton* edit_ = nullptr;
    QPushButton* together_ = nullptr;
    QPushButton* photos_ = nullptr;
    QPushButton* delete_ = nullptr;
    QPushButton* more_ = nullptr;
    QPushButton* columnsButton_ = nullptr;
    QMenu* columns_ = nullptr;
    PictureStrip* strip_ = nullptr;
    QTableView* table_ = nullptr;
    ColumnRoom* room_ = nullptr;
    QLabel* nothing_ = nullptr;
    QWidget* editorBox_ = nullptr;
    forms::EntryEditor* editor_ = nullptr;
    EntrySeries* series_ = nullptr;
    forms::MayThrowAway mayThrowAway_;
    bool stale_ = true;
    bool taking_ = false;            ///< while the table is filled anew
};

}
