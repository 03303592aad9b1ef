#pragma once

#include "core/exchange/table_answers.h"
#include "core/household/household.h"
#include "ui/common/seams.h"
#include "ui/common/view.h"
#include "ui/exchange/sheet_preview.h"

#include <QPointer>

#include <functional>
#include <set>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace tierloam::forms {
class FitArea;
}

namespace tierloam::exchange_view {

class Aside;
class MissingBox;
class QuestionsBox;
class SheetTable;
class WordsBox;

/// Somebody's table, read into the journal: its first rows as they stand, which column holds what, what the file leaves open, what becomes
/// of each row and why. Of a large file the first rows stand there and are asked about while the others are read. Nothing is written before the one button is pressed; then it is one step that can be undone. Rows at fault can be
/// saved, put right and imported again. What was answered is kept (kept_answers.h). Not modal; Esc closes it.
class JournalSheetView : public ui::View {
    Q_OBJECT

public:
    /// `household`: none while none is open; the window makes one when entries are wanted.
    /// `today`: rows of later days are at fault, since what a journal holds has been done.
    JournalSheetView(QString path, household::Household* household, std::function<Day()> today, ui::Dialogs& dialogs, ui::Settings& settings, QWidget* parent = nullptr);
    ~JournalSheetView() override;

    const exchange::SheetPlan* plan() const { return plan_.get(); }
    /// The window has one open now: the rows are compared with it before they can go into it, unless it was made for them; it keeps what was answered. Nothing where
    /// there was one before.
    void meet(household::Household& household);
    /// Answers from the window: the entries are durable, or why not.
    void written();
    void refused(const QString& why);

Q_SIGNALS:
    void importWanted(const tierloam::journal::Entries& entries, const QStringList& warnings);
    /// The file looks like what an instrument wrote.
    void readingsWanted();

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void makeButtons(QBoxLayout* rows);
    void load(std::optional<char> separator);
    void loadWhole(std::optional<char> separator);
    void followHousehold();
    /// A file that was read, and what there is to ask of it: a long one is gone through beside the window.
    struct Loaded {
        std::variant<exchange::Sheet, QString> read;
        std::vector<exchange::SheetColumn> columns;
        exchange::SheetQuestions questions;
    };
    static std::shared_ptr<Loaded> lookedAt(std::variant<exchange::Sheet, QString> read);
    void take(Loaded loaded);
    void takeColumns(Loaded loaded);
    void chooseColumn(std::size_t at, std::optional<exchange::SheetField> field);
    void askWords(const exchange::OpenWords& words);
    exchange::TableAnswers said() const;
    void ask();
    void replan();
    struct Looked {
        exchange::OpenWords words;
        exchange::SheetQuestions questions;
        std::shared_ptr<const exchange::SheetPlan> plan;
    };
    void takeLooked(const std::shared_ptr<const exchange::Sheet>& sheet, const exchange::SheetAnswers& answers, const std::shared_ptr<const Looked>& looked);
    void showPlan(std::shared_ptr<const exchange::SheetPlan> plan);
    void say();
    void sayShown();
    void begin();
    bool unanswered() const;
    void import();
    void saveFaults();
    QStringList stackNames(bool retiredToo) const;
    exchange::SheetAnswers answers() const;

    QString path_;
    QPointer<household::Household> household_;
    bool hadHousehold_;
    std::function<Day()> today_;
    ui::Dialogs& dialogs_;
    ui::Settings& settings_;
    std::shared_ptr<const exchange::Sheet> sheet_;
    std::shared_ptr<const exchange::SheetPlan> plan_;
    std::vector<exchange::SheetColumn> columns_;
    std::set<std::size_t> chosen_;   ///< columns that people have said the content of
    exchange::SheetQuestions questions_;
    exchange::TableAnswers kept_;    ///< what was answered for such a table before
    bool loading_ = false;           ///< the file is being read, perhaps once more
    bool imported_ = false;
    bool wanting_ = false;           ///< the window is taking the entries, into a household that it makes for them
    bool begun_ = false;
    QString refusal_;

    Aside *reader_, *aside_;
    QLabel* file_;
    QLabel* ignored_;
    QLabel* summary_;
    QComboBox* separator_;
    QuestionsBox* box_;
    WordsBox* words_;
    forms::FitArea* middle_;
    QWidget* asked_;
    MissingBox* missing_;
    SheetTable* table_;
    QComboBox* shown_;
    QCheckBox *leaveThere_, *leaveTwice_;
    QPushButton *import_, *saveFaults_, *readings_;
};

}
