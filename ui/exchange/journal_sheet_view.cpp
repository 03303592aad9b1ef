#include "ui/exchange/journal_sheet_view.h"

#include "core/exchange/logger_csv.h"
#include "core/exchange/refusal_text.h"
#include "core/journal/names.h"
#include "core/quantity/units.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/exchange/aside.h"
#include "ui/exchange/questions_box.h"
#include "ui/exchange/rows_at_fault.h"
#include "ui/exchange/words_box.h"
#include "ui/forms/fit_area.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::exchange_view {

namespace {

using exchange::RowFate;
using exchange::SheetField;

constexpr int leastTable = 11; ///< lines: the head, the lists that name the columns, three rows and the bar beneath
constexpr int leastFate = 34; ///< letters for what becomes of a row
constexpr int isNewRole = Qt::UserRole + 1; ///< of a stack that is not there yet

QString plainText(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// A table with the time and readings in columns, and nothing that says what was done.
bool looksLikeReadings(const exchange::Sheet& sheet, const exchange::SheetQuestions& questions)
{
    const auto guess = exchange::guessMapping(sheet.header);
    const auto holds = [&](auto... roles) { return std::ranges::any_of(guess.columns, [&](const auto& column) { return ((column.role == roles) || ...); }); };
    using enum exchange::LoggerRole;
    return questions.action && holds(moment) && holds(bin, air, moisture);
}

}

JournalSheetView::JournalSheetView(QString path, household::Household* household, std::function<Day()> today, ui::Dialogs& dialogs, QWidget* parent)
    : ui::View{parent}, path_{std::move(path)}, household_{household}, hadHousehold_{household != nullptr}, today_{std::move(today)}, dialogs_{dialogs}, aside_{new Aside{this}}, model_{new SheetPreview{this}}
{
    setObjectName(QStringLiteral("journalSheetView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Import into the journal"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(8);
    rows->addWidget(ui::makeLabel(tr("Import %1").arg(QFileInfo{path_}.fileName()), ui::TextRole::title, this, true));
    auto* fileRow = new QHBoxLayout;
    file_ = ui::makeLabel(tr("Reading…"), ui::TextRole::muted, this, true);
    file_->setObjectName(QStringLiteral("sheetFile"));
    separator_ = new ui::FieldCombo{this};
    separator_->setObjectName(QStringLiteral("sheetSeparator"));
    for (const char separator : {',', ';', '\t'}) separator_->addItem(tr("Cells parted by %1").arg(exchange::separatorText(separator)), static_cast<int>(separator));
    ui::setAccess(separator_, tr("What parts the cells"));
    fileRow->addWidget(file_, 1);
    fileRow->addWidget(separator_);
    rows->addLayout(fileRow);

    // What is asked and the rows scroll together when there is little room, so that neither is squeezed to nothing.
    auto* middle = new QWidget;
    auto* middleRows = new QVBoxLayout{middle};
    middleRows->setContentsMargins(0, 0, 0, 0);
    middleRows->setSpacing(rows->spacing());
    middle_ = new forms::FitArea{this};
    middle_->setObjectName(QStringLiteral("sheetMiddle"));
    asked_ = new QWidget{middle};
    auto* askedRows = new QVBoxLayout{asked_};
    askedRows->setContentsMargins(0, 0, 0, 0);
    box_ = new QuestionsBox{asked_};
    askedRows->addWidget(box_);
    words_ = new WordsBox{asked_};
    askedRows->addWidget(words_);
    missing_ = new QWidget{asked_};
    auto* form = new QVBoxLayout{missing_};
    form->setContentsMargins(0, 0, 0, 0);
    form->setSpacing(6);
    const auto question = [&](const QString& text, const char* name, QLabel*& words) {
        auto* list = new ui::FieldCombo{missing_};
        list->setObjectName(QString::fromLatin1(name));
        words = ui::makeLabel(text, ui::TextRole::strong, missing_, true);
        words->setBuddy(list);
        ui::setAccess(list, text);
        form->addWidget(words);
        form->addWidget(list, 0, Qt::AlignLeading);
        connect(list, &QComboBox::currentIndexChanged, this, &JournalSheetView::replan);
        return list;
    };
    action_ = question(tr("What was done, where a row does not say it:"), "askAction", actionWords_);
    stack_ = question(tr("The stack, where a row names none:"), "askStack", stackWords_);
    unit_ = question(tr("The unit of amounts without one:"), "askUnit", unitWords_);
    askedRows->addWidget(missing_);
    middleRows->addWidget(asked_);
    {
        const QSignalBlocker quietAction{action_}, quietUnit{unit_};
        action_->addItem(tr("Please choose"));
        for (const std::string_view name : {"feed", "water", "drain", "cover", "check", "reading", "weigh", "harvest", "note"}) action_->addItem(tr("Each is: %1").arg(plainText(name)), plainText(name));
        unit_->addItem(tr("Please choose"));
        for (const Unit unit : allUnits)
            if (unit != Unit::count) unit_->addItem(ui::unitText(unit), static_cast<int>(unit));
    }

    auto* showRow = new QHBoxLayout;
    shown_ = new ui::FieldCombo{middle};
    shown_->setObjectName(QStringLiteral("sheetShown"));
    ui::setAccess(shown_, tr("Rows that are shown"));
    ignored_ = ui::makeLabel({}, ui::TextRole::muted, middle, true);
    ignored_->setObjectName(QStringLiteral("sheetIgnored"));
    showRow->addWidget(shown_);
    showRow->addWidget(ignored_, 1);
    middleRows->addLayout(showRow);
    table_ = new QTableView{middle};
    table_->setObjectName(QStringLiteral("sheetTable"));
    table_->setModel(model_);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setTabKeyNavigation(false);
    table_->setMinimumHeight(fontMetrics().height() * leastTable);
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 9 / 5);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    ui::setAccess(table_, tr("Rows of the file"), tr("In the first row the content of each column is chosen"));
    middleRows->addWidget(table_, 1);

    leaveThere_ = new QCheckBox{middle};
    leaveThere_->setObjectName(QStringLiteral("leaveOutThere"));
    leaveThere_->setChecked(true);
    leaveTwice_ = new QCheckBox{middle};
    leaveTwice_->setObjectName(QStringLiteral("leaveOutTwice"));
    middleRows->addWidget(leaveThere_);
    middleRows->addWidget(leaveTwice_);
    middle_->setWidget(middle);
    rows->addWidget(middle_, 1);
    rows->addStretch(0); // takes the room while there is nothing to ask and to show
    summary_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    summary_->setObjectName(QStringLiteral("sheetSummary"));
    rows->addWidget(summary_);
    auto* buttons = new QDialogButtonBox{this};
    import_ = ui::makeButton(tr("&Import"), ui::Tone::moss, this);
    import_->setObjectName(QStringLiteral("sheetImport"));
    saveFaults_ = ui::makeButton(tr("&Save the rows at fault…"), ui::Tone::plain, this);
    saveFaults_->setObjectName(QStringLiteral("saveFaults"));
    readings_ = ui::makeButton(tr("These are &readings of a logger…"), ui::Tone::plain, this);
    readings_->setObjectName(QStringLiteral("toReadings"));
    auto* close = ui::makeButton(tr("Close"), ui::Tone::plain, this);
    buttons->addButton(import_, QDialogButtonBox::ActionRole);
    buttons->addButton(saveFaults_, QDialogButtonBox::ActionRole);
    buttons->addButton(readings_, QDialogButtonBox::ActionRole);
    buttons->addButton(close, QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);
    readings_->hide(); // the box shows what is put into it

    connect(separator_, &QComboBox::activated, this, [this] { load(static_cast<char>(separator_->currentData().toInt())); });
    connect(box_, &QuestionsBox::answered, this, &JournalSheetView::replan);
    connect(words_, &WordsBox::answered, this, &JournalSheetView::replan);
    connect(shown_, &QComboBox::activated, this, [this] { showRows(static_cast<SheetPreview::Shown>(shown_->currentData().toInt())); });
    connect(leaveThere_, &QCheckBox::toggled, this, &JournalSheetView::replan);
    connect(leaveTwice_, &QCheckBox::toggled, this, &JournalSheetView::replan);
    connect(import_, &QPushButton::clicked, this, &JournalSheetView::import);
    connect(saveFaults_, &QPushButton::clicked, this, &JournalSheetView::saveFaults);
    connect(readings_, &QPushButton::clicked, this, [this] {
        Q_EMIT readingsWanted();
        this->close(); // the other view goes on with the same file
    });
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    followHousehold();
    resize(QSize{std::max(980, fontMetrics().averageCharWidth() * 120), std::max(640, fontMetrics().height() * 34)}.boundedTo(screen()->availableSize()));
    load(std::nullopt);
}

/// Its thread answers to this object, so it ends first.
JournalSheetView::~JournalSheetView() { delete aside_; }

void JournalSheetView::followHousehold()
{
    if (!household_) return;
    connect(household_, &QObject::destroyed, this, &QDialog::close);
    connect(household_, &household::Household::changed, this, [this](const household::Changes& changes) {
        if (!changes.ids.empty() && !imported_) replan(); // what is there already may be other rows now
    });
}

void JournalSheetView::meet(household::Household& household)
{
    if (hadHousehold_ || wanting_ || imported_) return;
    household_ = &household;
    hadHousehold_ = true;
    followHousehold();
    if (!sheet_ || loading_) return;
    plan_.reset(); // it was made against nothing
    remembered_ = false;
    ask();
    replan();
}

void JournalSheetView::load(std::optional<char> separator)
{
    loading_ = true;
    aside_->run([this, path = path_, separator](const std::stop_token&) -> Aside::Answer {
        auto loaded = std::make_shared<Loaded>(exchange::readSheetFile(path, separator));
        if (const auto* sheet = std::get_if<exchange::Sheet>(&loaded->read)) {
            loaded->columns = exchange::recogniseColumns(*sheet);
            loaded->questions = exchange::questionsOf(*sheet, loaded->columns);
        }
        return [this, loaded] { take(std::move(*loaded)); };
    });
    say(); // that it is being read, not that it failed
}

void JournalSheetView::take(Loaded loaded)
{
    loading_ = false;
    if (const auto* why = std::get_if<QString>(&loaded.read)) {
        file_->setText(*why);
        sheet_.reset();
        plan_.reset();
        model_->setSheet(nullptr);
        readings_->hide();
        say();
        return;
    }
    sheet_ = std::make_shared<const exchange::Sheet>(std::move(std::get<exchange::Sheet>(loaded.read)));
    const QSignalBlocker quiet{separator_};
    separator_->setCurrentIndex(separator_->findData(static_cast<int>(sheet_->separator)));
    QString line = tr("%n row(s), %1.", nullptr, static_cast<int>(sheet_->rows.size())).arg(exchange::encodingText(sheet_->encoding));
    if (!sheet_->separatorIsSure) line = tr("%1 What parts the cells is not certain: look at the columns below.").arg(line);
    file_->setText(line);
    columns_ = std::move(loaded.columns);
    questions_ = std::move(loaded.questions);
    chosen_.clear();
    plan_.reset();
    model_->setSheet(sheet_);
    placeColumnLists();
    ask();
    replan();
    table_->resizeColumnsToContents();
    const int letter = fontMetrics().averageCharWidth();
    table_->setColumnWidth(0, letter * leastFate);
    for (int column = 1; column < model_->columnCount(); ++column) table_->setColumnWidth(column, std::clamp(table_->columnWidth(column) + letter * 2, letter * 18, letter * 40));
}

/// One list above each column, in which people say what it holds.
void JournalSheetView::placeColumnLists()
{
    for (std::size_t at = 0; at < columns_.size(); ++at) {
        auto* list = new ui::FieldCombo{table_};
        list->setObjectName(QStringLiteral("column%1").arg(at));
        list->addItem(tr("nothing, left out"));
        for (const SheetField field : exchange::allSheetFields) list->addItem(exchange::fieldText(field), static_cast<int>(field));
        ui::setAccess(list, tr("Column «%1» holds").arg(QString::fromStdString(sheet_->header[at])));
        connect(list, &QComboBox::activated, this, [this, at, list] {
            const QVariant value = list->currentData();
            const auto field = value.isValid() ? std::optional{static_cast<SheetField>(value.toInt())} : std::nullopt;
            // Each thing is held by one column: the one that had it lets go.
            for (std::size_t other = 0; other < columns_.size() && field; ++other) {
                if (other == at || columns_[other].field != field) continue;
                columns_[other] = {};
            }
            columns_[at].field = field;
            // What this column held before may be what another one's name says.
            chosen_.insert(at);
            exchange::recogniseMore(sheet_->header, columns_, chosen_);
            showColumns();
            columnsChanged();
        });
        table_->setIndexWidget(model_->index(0, static_cast<int>(at) + SheetPreview::ownColumns), list);
    }
    showColumns();
    table_->setRowHeight(0, fontMetrics().height() * 2 + 4);
}

void JournalSheetView::showColumns()
{
    for (std::size_t at = 0; at < columns_.size(); ++at)
        if (auto* list = table_->findChild<QComboBox*>(QStringLiteral("column%1").arg(at))) list->setCurrentIndex(columns_[at].field ? list->findData(static_cast<int>(*columns_[at].field)) : 0);
}

void JournalSheetView::columnsChanged()
{
    questions_ = exchange::questionsOf(*sheet_, columns_, words_->answers());
    ask();
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
    words_->ask(words, stackNames(true), household_ ? household_->journal()->materials : materials::Table::builtIn());
    if (household_ && !std::exchange(remembered_, true)) words_->answer(exchange::wordsFrom(household_->remembered(exchange::wordsName(sheet_->header))));
}

/// Before the entries are: so that the import is the step that one undo takes back.
void JournalSheetView::rememberWords()
{
    if (!household_ || !words_->anything()) return;
    const QString name = exchange::wordsName(sheet_->header);
    exchange::WordAnswers all = exchange::wordsFrom(household_->remembered(name)), now = words_->answers();
    // What an earlier file with these columns asked besides stays answered.
    now.stacks.merge(all.stacks);
    now.actions.merge(all.actions);
    now.materials.merge(all.materials);
    const QString text = exchange::wordsText(now);
    if (text != household_->remembered(name)) household_->remember(name, text, tr("Remember the words of %1").arg(QFileInfo{path_}.fileName()));
}

void JournalSheetView::ask()
{
    box_->ask(questions_.decimal, questions_.order, questions_.century);
    {
        const QSignalBlocker quiet{stack_};
        const QString before = stack_->currentData().toString();
        stack_->clear();
        stack_->addItem(tr("Please choose"));
        const QStringList names = stackNames(false);
        if (names.size() == 1) stack_->clear(); // no question with one answer
        for (const QString& name : names) stack_->addItem(name, name);
        const QString fresh = QFileInfo{path_}.completeBaseName();
        if (journal::isStackName(fresh.toStdString()) && !stackNames(true).contains(fresh)) {
            stack_->addItem(tr("A new stack, «%1»").arg(fresh), fresh);
            stack_->setItemData(stack_->count() - 1, true, isNewRole);
        }
        if (const int kept = stack_->findData(before); kept > 0) stack_->setCurrentIndex(kept);
    }
    for (const auto& [needed, words, list] : {std::tuple{questions_.action, actionWords_, action_}, std::tuple{questions_.stack, stackWords_, stack_}, std::tuple{questions_.unit, unitWords_, unit_}}) {
        words->setVisible(needed);
        list->setVisible(needed);
    }
    missing_->setVisible(questions_.action || questions_.stack || questions_.unit);
    words_->setVisible(words_->anything());
    asked_->setVisible(questions_.action || questions_.stack || questions_.unit || box_->anything() || words_->anything());
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
    answers.stack = stack_->currentData().toString().toStdString();
    if (questions_.stack && stack_->currentData(isNewRole).toBool()) answers.words.newStacks.insert(answers.stack);
    answers.action = action_->currentData().toString().toStdString();
    if (unit_->currentData().isValid()) answers.unit = static_cast<Unit>(unit_->currentData().toInt());
    answers.leaveOutThere = leaveThere_->isChecked();
    answers.leaveOutTwice = leaveTwice_->isChecked();
    return answers;
}

void JournalSheetView::replan()
{
    if (!sheet_ || loading_) return; // a plan of the old rows would take the place of the new ones; take() plans those
    refusal_.clear();
    const journal::Entries existing = household_ ? household_->journal()->entries : journal::Entries{};
    struct Looked {
        exchange::OpenWords words;
        exchange::SheetQuestions questions;
        std::shared_ptr<const exchange::SheetPlan> plan;
    };
    aside_->run([this, sheet = sheet_, answers = answers(), existing](const std::stop_token& stop) -> Aside::Answer {
        auto looked = std::make_shared<Looked>();
        looked->words = exchange::openWordsOf(*sheet, answers.columns, answers.words, answers.action, existing);
        looked->questions = exchange::questionsOf(*sheet, answers.columns, answers.words);
        looked->plan = std::make_shared<const exchange::SheetPlan>(exchange::planImport(*sheet, answers, existing, stop));
        return [this, sheet, answers, looked] {
            if (sheet != sheet_) return;
            askWords(looked->words);
            questions_ = looked->questions;
            ask();
            if (this->answers() != answers) return replan(); // what was remembered is an answer too
            showPlan(looked->plan);
        };
    });
    say();
}

void JournalSheetView::showPlan(std::shared_ptr<const exchange::SheetPlan> plan)
{
    plan_ = std::move(plan);
    const Place place = placeOfTable();
    model_->setWaiting(unanswered());
    model_->setPlan(plan_);
    fitRows();
    say();
    goBackTo(place);
    begin();
}

void JournalSheetView::say()
{
    const auto count = [this](RowFate fate) { return plan_ ? static_cast<int>(plan_->count(fate)) : 0; };
    const int faults = count(RowFate::fault), there = count(RowFate::there), twice = count(RowFate::twice), unwanted = count(RowFate::unwanted);
    const int added = plan_ ? static_cast<int>(plan_->entries.size()) : 0;
    leaveThere_->setText(there > 0 ? tr("Leave out what the journal holds already (%1)").arg(there) : tr("Leave out what the journal holds already"));
    leaveTwice_->setText(twice > 0 ? tr("Leave out what an earlier row of the file says too (%1)").arg(twice) : tr("Leave out what an earlier row of the file says too"));
    leaveTwice_->setVisible(plan_ && !unanswered() && !imported_);
    leaveThere_->setVisible(hadHousehold_ && !imported_ && (there > 0 || !leaveThere_->isChecked()));
    for (QWidget* each : std::initializer_list<QWidget*>{middle_, separator_}) each->setVisible(sheet_ != nullptr); // a file that is no table asks for nothing
    ui::setTone(file_, sheet_ || aside_->busy() ? ui::Tone::plain : ui::Tone::brick);
    {
        const QSignalBlocker quiet{shown_};
        const int before = shown_->currentData().toInt();
        shown_->clear();
        shown_->addItem(tr("The first rows"), static_cast<int>(SheetPreview::Shown::first));
        if (faults > 0) shown_->addItem(tr("Rows at fault (%1)").arg(faults), static_cast<int>(SheetPreview::Shown::faults));
        if (there > 0) shown_->addItem(tr("Rows that are there already (%1)").arg(there), static_cast<int>(SheetPreview::Shown::there));
        if (twice > 0) shown_->addItem(tr("Rows said before (%1)").arg(twice), static_cast<int>(SheetPreview::Shown::twice));
        if (unwanted > 0) shown_->addItem(tr("Rows left out as answered (%1)").arg(unwanted), static_cast<int>(SheetPreview::Shown::unwanted));
        const int kept = shown_->findData(before);
        shown_->setCurrentIndex(std::max(0, kept));
        if (kept < 0 && sheet_) showRows(SheetPreview::Shown::first);
    }
    saveFaults_->setEnabled(faults > 0 && !unanswered());
    if (imported_) {
        import_->setEnabled(false);
        import_->setText(tr("Imported"));
        return;
    }
    const bool ready = plan_ && !aside_->busy();
    import_->setEnabled(ready && added > 0 && !unanswered() && (!household_ || !household_->readOnly()));
    import_->setText(added > 0 && !unanswered() ? tr("&Import %n entry(ies)", nullptr, added) : tr("&Import"));
    if (!refusal_.isEmpty()) {
        summary_->setText(refusal_);
    } else if (!sheet_) {
        summary_->clear();
    } else if (questions_.noDate) {
        summary_->setText(tr("No column holds the date. Choose the one that does in the first row of the table."));
    } else if (!plan_) {
        summary_->setText(tr("Looking at the rows…"));
    } else {
        QStringList parts;
        if (sheet_->rows.empty()) parts << tr("There are no rows beneath the names of the columns: nothing to import.");
        else if (added > 0) parts << tr("%n entry(ies) will be added, as one step that can be undone.", nullptr, added);
        else parts << tr("Nothing will be added.");
        if (plan_->begun > 0) parts << tr("%n of them begin(s) what is a new stack.", nullptr, static_cast<int>(plan_->begun));
        if (faults > 0) parts << tr("%n row(s) at fault: not added.", nullptr, faults);
        if (unwanted > 0) parts << tr("%n row(s) left out as answered.", nullptr, unwanted);
        if (there > 0) parts << tr("%n row(s) already there: left out.", nullptr, there);
        if (twice > 0) parts << tr("%n row(s) said before: left out.", nullptr, twice);
        // Rows that wait for an answer are not at fault.
        if (unanswered()) parts = {tr("Please answer what is asked above; then you see what becomes of each row.")};
        summary_->setText(parts.join(QLatin1Char{' '}));
    }
}

void JournalSheetView::showRows(SheetPreview::Shown shown)
{
    model_->show(shown);
    fitRows();
}

void JournalSheetView::resizeEvent(QResizeEvent* event)
{
    ui::View::resizeEvent(event);
    QTimer::singleShot(0, this, &JournalSheetView::fitRows); // when the table has its new width
}

/// Where people are in the rows: what comes back after these were made anew. By rows of the file, since those that are shown may be others.
JournalSheetView::Place JournalSheetView::placeOfTable() const
{
    Place place;
    const auto rowAt = [this](int row) { return row > 0 ? model_->rowOfSheet(row) : std::nullopt; };
    const QModelIndex current = table_->currentIndex();
    if (current.isValid()) place.current = std::pair{rowAt(current.row()), current.column()};
    for (const QModelIndex& each : table_->selectionModel()->selectedRows())
        if (const auto row = rowAt(each.row())) place.selected.push_back(*row);
    // The bar counts rows.
    place.down = table_->verticalScrollBar()->value();
    place.top = rowAt(place.down);
    place.across = table_->horizontalScrollBar()->value();
    return place;
}

void JournalSheetView::goBackTo(const Place& place)
{
    QItemSelection selected;
    for (const std::size_t row : place.selected)
        if (const auto at = model_->shownAt(row)) selected.select(model_->index(*at, 0), model_->index(*at, model_->columnCount() - 1));
    table_->selectionModel()->select(selected, QItemSelectionModel::ClearAndSelect);
    if (place.current && place.current->first)
        if (const auto at = model_->shownAt(*place.current->first)) table_->selectionModel()->setCurrentIndex(model_->index(*at, place.current->second), QItemSelectionModel::NoUpdate);
    const auto top = place.top ? model_->shownAt(*place.top) : std::nullopt;
    table_->verticalScrollBar()->setValue(top.value_or(place.down));
    table_->horizontalScrollBar()->setValue(place.across);
}

/// Once the rows have been looked at the focus is where people go on: at the first question that is open, else at the button that imports.
void JournalSheetView::begin()
{
    if (std::exchange(begun_, true)) return;
    const auto lists = middle_->findChildren<QComboBox*>();
    const auto open = std::ranges::find_if(lists, [this](const QComboBox* list) { return list->isVisibleTo(this) && !table_->isAncestorOf(list) && !list->currentData().isValid(); });
    QWidget* at = open != lists.end() ? static_cast<QWidget*>(*open) : import_->isEnabled() ? static_cast<QWidget*>(import_) : table_;
    at->setFocus(Qt::OtherFocusReason);
}

/// What becomes of a row is read whole: its column takes up to three fifths of the table, and what is longer goes on in more lines.
void JournalSheetView::fitRows()
{
    const int letter = fontMetrics().averageCharWidth();
    const int most = std::max(letter * leastFate, table_->viewport()->width() * 3 / 5);
    const int margin = letter * 4, usual = table_->verticalHeader()->defaultSectionSize();
    const auto room = [&](int row) { return fontMetrics().boundingRect(QRect{0, 0, most - margin, QWIDGETSIZE_MAX}, Qt::TextWordWrap, model_->index(row, 0).data().toString()).size(); };
    int widest = 0;
    for (int row = 1; row < model_->rowCount(); ++row) {
        const QSize wanted = room(row);
        widest = std::max(widest, wanted.width());
        const int height = usual + wanted.height() - std::min(wanted.height(), fontMetrics().height());
        if (table_->rowHeight(row) != height) table_->setRowHeight(row, height);
    }
    // It grows and does not shrink again, or all columns would jump sideways with every answer.
    table_->setColumnWidth(0, std::min(std::max(table_->columnWidth(0), widest + margin), most));
}

bool JournalSheetView::unanswered() const
{
    if (box_->open() || words_->open()) return true;
    const auto lacks = [](bool needed, const QComboBox* list) { return needed && !list->currentData().isValid(); };
    return lacks(questions_.action, action_) || lacks(questions_.stack, stack_) || lacks(questions_.unit, unit_);
}

void JournalSheetView::import()
{
    if (!plan_ || aside_->busy() || plan_->entries.empty() || unanswered() || (hadHousehold_ && !household_)) return;
    import_->setEnabled(false); // until it is answered
    QStringList warnings;
    for (const journal::Warning& warning : plan_->warnings) warnings << exchange::warningText(warning, plan_->after);
    rememberWords();
    wanting_ = true;
    Q_EMIT importWanted(plan_->entries, warnings);
    wanting_ = false;
}

void JournalSheetView::written()
{
    imported_ = true;
    const int faults = plan_ ? static_cast<int>(plan_->count(RowFate::fault)) : 0;
    if (faults == 0) {
        close();
        return;
    }
    // What could not be read stays in sight until it has been looked at or saved.
    summary_->setText(tr("The other rows have been imported. %n row(s) at fault: save them, put them right and import them again.", nullptr, faults));
    say();
    shown_->setCurrentIndex(std::max(0, shown_->findData(static_cast<int>(SheetPreview::Shown::faults))));
    showRows(SheetPreview::Shown::faults);
}

void JournalSheetView::refused(const QString& why)
{
    refusal_ = why;
    say();
}

void JournalSheetView::saveFaults()
{
    if (!plan_ || !sheet_) return;
    const QString told = saveRowsAtFault(this, dialogs_, path_, exchange::faultyRows(*sheet_, *plan_));
    if (!told.isEmpty()) summary_->setText(told);
}

}
