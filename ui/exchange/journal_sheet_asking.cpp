#include "ui/exchange/journal_sheet_view.h"

#include "core/exchange/logger_csv.h"
#include "core/journal/names.h"
#include "ui/exchange/aside.h"
#include "ui/exchange/kept_answers.h"
#include "ui/exchange/missing_box.h"
#include "ui/exchange/questions_box.h"
#include "ui/exchange/sheet_table.h"
#include "ui/exchange/words_box.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <type_traits>
#include <utility>

/// What is asked of a table and answered, and what its rows then become.
namespace tierloam::exchange_view {

namespace {

/// A table with the time and readings in columns, and nothing that says what was done.
bool looksLikeReadings(const exchange::Sheet& sheet, const exchange::SheetQuestions& questions)
{
    const auto guess = exchange::guessMapping(sheet.header);
    const auto holds = [&](auto... roles) { return std::ranges::any_of(guess.columns, [&](const auto& column) { return ((column.role == roles) || ...); }); };
    using enum exchange::LoggerRole;
    return questions.action && holds(moment) && holds(bin, air, moisture);
}

}

/// Of a table that was not there before, or not in these columns.
void JournalSheetView::takeColumns(Loaded loaded)
{
    const QSignalBlocker quiet{separator_};
    separator_->setCurrentIndex(separator_->findData(static_cast<int>(sheet_->separator)));
    columns_ = std::move(loaded.columns);
    questions_ = std::move(loaded.questions);
    kept_ = keptFor(*sheet_, settings_, household_);
    chosen_.clear();
    if (kept_.columns.size() == columns_.size()) {
        for (std::size_t at = 0; at < columns_.size(); ++at) {
            if (columns_[at].field == kept_.columns[at]) continue;
            columns_[at].field = kept_.columns[at];
            chosen_.insert(at);
        }
    }
    table_->setSheet(sheet_, columns_);
}

void JournalSheetView::chooseColumn(std::size_t at, std::optional<exchange::SheetField> field)
{
    // Each thing is held by one column: the one that had it lets go.
    for (std::size_t other = 0; other < columns_.size() && field; ++other) {
        if (other == at || columns_[other].field != field) continue;
        columns_[other] = {};
    }
    columns_[at].field = field;
    // What this column held before may be what another one's name says.
    chosen_.insert(at);
    exchange::recogniseMore(sheet_->header, columns_, chosen_);
    table_->showColumns(columns_);
    replan();
}

/// The stacks as people put them, those that have ended behind them: an old diary may be of one.
QStringList JournalSheetView::stackNames(bool retiredToo) const
{
    QStringList standing, retired;
    if (household_)
        for (const journal::StackHistory& stack : household::inOrder(household_->journal()->replay.stacks, household_->stackOrder()))
            (stack.steps.back().after.retired ? retired : standing) << QString::fromStdString(stack.name);
    return retiredToo ? standing + retired : standing;
}

void JournalSheetView::askWords(const exchange::OpenWords& words)
{
    words_->ask(words, stackNames(true), household_ ? household_->journal()->materials : materials::Table::builtIn(), kept_.words);
}

/// All that people have answered so far, for the next table like this one.
exchange::TableAnswers JournalSheetView::said() const
{
    exchange::TableAnswers said;
    said.words = words_->answers();
    said.words.newStacks.clear();
    if (!chosen_.empty())
        for (const exchange::SheetColumn& column : columns_) said.columns.push_back(column.field);
    said.decimal = box_->decimal();
    said.order = box_->order();
    said.century = box_->century();
    if (questions_.unit) said.unit = missing_->unit();
    if (questions_.action) said.action = missing_->action();
    return said;
}

void JournalSheetView::ask()
{
    box_->ask(questions_.decimal, questions_.order, questions_.century);
    // Once: what people then choose instead stays.
    const auto once = [](bool asked, auto& kept) { return asked ? std::exchange(kept, {}) : std::decay_t<decltype(kept)>{}; };
    box_->answer(once(questions_.decimal.mustBeAsked() && !box_->decimal(), kept_.decimal), once(questions_.order.mustBeAsked() && !box_->order(), kept_.order),
                 once(questions_.century && !box_->century(), kept_.century));
    const QString fresh = QFileInfo{path_}.completeBaseName();
    missing_->ask(questions_, stackNames(false), journal::isStackName(fresh.toStdString()) && !stackNames(true).contains(fresh) ? fresh : QString{});
    missing_->answer(once(questions_.unit, kept_.unit), once(questions_.action, kept_.action));
    words_->setVisible(words_->anything());
    asked_->setVisible(missing_->anything() || box_->anything() || words_->anything());
    QStringList ignored;
    for (const std::string& name : questions_.ignored) ignored << QStringLiteral("«%1»").arg(QString::fromStdString(name));
    ignored_->setText(ignored.isEmpty() ? QString{} : tr("Left out, since they are no columns of the journal: %1").arg(ignored.join(QStringLiteral(", "))));
    readings_->setVisible(looksLikeReadings(*sheet_, questions_));
}

exchange::SheetAnswers JournalSheetView::answers() const
{
    exchange::SheetAnswers answers;
    answers.columns = columns_;
    answers.today = today_();
    answers.decimal = box_->decimal();
    answers.order = box_->order();
    answers.century = box_->century();
    answers.words = words_->answers();
    answers.stack = missing_->stack();
    if (missing_->stackIsNew()) answers.words.newStacks.insert(answers.stack);
    answers.action = missing_->action();
    answers.unit = missing_->unit();
    answers.leaveOutThere = leaveThere_->isChecked();
    answers.leaveOutTwice = leaveTwice_->isChecked();
    return answers;
}

void JournalSheetView::replan()
{
    if (!sheet_) return;
    refusal_.clear();
    aside_->run([this, sheet = sheet_, answers = answers(), journal = household_ ? household_->journal() : nullptr](const std::stop_token& stop) -> Aside::Answer {
        const journal::Entries none;
        const journal::Entries& existing = journal ? journal->entries : none;
        auto looked = std::make_shared<Looked>();
        looked->words = exchange::openWordsOf(*sheet, answers.columns, answers.words, answers.action, existing);
        if (stop.stop_requested()) return {};
        looked->questions = exchange::questionsOf(*sheet, answers.columns, answers.words);
        if (stop.stop_requested()) return {};
        looked->plan = std::make_shared<const exchange::SheetPlan>(exchange::planImport(*sheet, answers, existing, stop));
        return [this, sheet, answers, looked] { takeLooked(sheet, answers, looked); };
    });
    say();
}

void JournalSheetView::takeLooked(const std::shared_ptr<const exchange::Sheet>& sheet, const exchange::SheetAnswers& answers, const std::shared_ptr<const Looked>& looked)
{
    if (sheet != sheet_) return;
    askWords(looked->words);
    questions_ = looked->questions;
    ask();
    if (this->answers() != answers) return replan(); // what was kept is an answer too
    showPlan(looked->plan);
}

bool JournalSheetView::unanswered() const { return questions_.noDate || box_->open() || words_->open() || missing_->open(); }

}
