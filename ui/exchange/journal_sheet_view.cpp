#include "ui/exchange/journal_sheet_view.h"

#include "core/exchange/refusal_text.h"
#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/exchange/aside.h"
#include "ui/exchange/kept_answers.h"
#include "ui/exchange/missing_box.h"
#include "ui/exchange/questions_box.h"
#include "ui/exchange/rows_at_fault.h"
#include "ui/exchange/sheet_sentence.h"
#include "ui/exchange/sheet_table.h"
#include "ui/exchange/words_box.h"
#include "ui/forms/fit_area.h"

#include <QApplication>
#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QSignalBlocker>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::exchange_view {

namespace {

using exchange::RowFate;

}

JournalSheetView::JournalSheetView(QString path, household::Household* household, std::function<Day()> today, ui::Dialogs& dialogs, ui::Settings& settings, QWidget* parent)
    : ui::View{parent}, path_{std::move(path)}, household_{household}, hadHousehold_{household != nullptr}, today_{std::move(today)}, dialogs_{dialogs}, settings_{settings},
      reader_{new Aside{this, Aside::AtTheEnd::leave}}, aside_{new Aside{this, Aside::AtTheEnd::leave}}
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
    words_ = new WordsBox{asked_};
    missing_ = new MissingBox{asked_};
    for (QWidget* each : std::initializer_list<QWidget*>{box_, words_, missing_}) askedRows->addWidget(each);
    middleRows->addWidget(asked_);
    auto* showRow = new QHBoxLayout;
    shown_ = new ui::FieldCombo{middle};
    shown_->setObjectName(QStringLiteral("sheetShown"));
    ui::setAccess(shown_, tr("Rows that are shown"));
    ignored_ = ui::makeLabel({}, ui::TextRole::muted, middle, true);
    ignored_->setObjectName(QStringLiteral("sheetIgnored"));
    showRow->addWidget(shown_);
    showRow->addWidget(ignored_, 1);
    middleRows->addLayout(showRow);
    table_ = new SheetTable{middle};
    table_->setObjectName(QStringLiteral("sheetTable"));
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
    makeButtons(rows);

    connect(separator_, &QComboBox::activated, this, [this] { load(static_cast<char>(separator_->currentData().toInt())); });
    connect(box_, &QuestionsBox::answered, this, &JournalSheetView::replan);
    connect(words_, &WordsBox::answered, this, &JournalSheetView::replan);
    connect(missing_, &MissingBox::answered, this, &JournalSheetView::replan);
    connect(table_, &SheetTable::columnChosen, this, &JournalSheetView::chooseColumn);
    connect(shown_, &QComboBox::activated, this, [this] { table_->showRows(static_cast<SheetPreview::Shown>(shown_->currentData().toInt())); });
    connect(leaveThere_, &QCheckBox::toggled, this, &JournalSheetView::replan);
    connect(leaveTwice_, &QCheckBox::toggled, this, &JournalSheetView::replan);
    followHousehold();
    resize(QSize{std::max(980, fontMetrics().averageCharWidth() * 120), std::max(640, fontMetrics().height() * 34)}.boundedTo(screen()->availableSize()));
    load(std::nullopt);
}

void JournalSheetView::makeButtons(QBoxLayout* rows)
{
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
    connect(import_, &QPushButton::clicked, this, &JournalSheetView::import);
    connect(saveFaults_, &QPushButton::clicked, this, &JournalSheetView::saveFaults);
    connect(readings_, &QPushButton::clicked, this, [this] {
        Q_EMIT readingsWanted();
        this->close(); // the other view goes on with the same file
    });
    connect(close, &QPushButton::clicked, this, &QDialog::close);
}

/// Its threads answer to this object, so they end first, or go on alone; what was read takes a while to be given back.
JournalSheetView::~JournalSheetView()
{
    delete reader_;
    delete aside_;
    table_->setSheet(nullptr, {});
    Aside::letGo(std::exchange(plan_, nullptr));
    Aside::letGo(std::exchange(sheet_, nullptr));
}

void JournalSheetView::closeEvent(QCloseEvent* event)
{
    // What was imported is the household's by now.
    if (sheet_ && !imported_ && said() != exchange::TableAnswers{}) keepAside(*sheet_, settings_, said());
    ui::View::closeEvent(event);
}

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
    if (hadHousehold_ || imported_) return;
    household_ = &household;
    hadHousehold_ = true;
    followHousehold();
    if (!sheet_) return;
    if (wanting_) return keepIn(household, *sheet_, settings_, said(), tr("Remember the words of %1").arg(QFileInfo{path_}.fileName()));
    plan_.reset(); // it was made against nothing
    kept_ = keptFor(*sheet_, settings_, household_);
    ask();
    replan();
}

std::shared_ptr<JournalSheetView::Loaded> JournalSheetView::lookedAt(std::variant<exchange::Sheet, QString> read)
{
    auto loaded = std::make_shared<Loaded>(std::move(read));
    if (const auto* sheet = std::get_if<exchange::Sheet>(&loaded->read)) {
        loaded->columns = exchange::recogniseColumns(*sheet);
        loaded->questions = exchange::questionsOf(*sheet, loaded->columns);
    }
    return loaded;
}

void JournalSheetView::load(std::optional<char> separator)
{
    loading_ = true;
    reader_->run([this, path = path_, separator](const std::stop_token&) -> Aside::Answer {
        if (auto start = exchange::readSheetStart(path, separator)) {
            return [this, separator, loaded = lookedAt(std::move(*start))] {
                take(std::move(*loaded));
                loadWhole(separator);
            };
        }
        return [this, loaded = lookedAt(exchange::readSheetFile(path, separator))] { take(std::move(*loaded)); };
    });
    say(); // that it is being read, not that it failed
}

void JournalSheetView::loadWhole(std::optional<char> separator)
{
    reader_->run([this, path = path_, separator](const std::stop_token&) -> Aside::Answer {
        return [this, loaded = lookedAt(exchange::readSheetFile(path, separator))] { take(std::move(*loaded)); };
    });
}

void JournalSheetView::take(Loaded loaded)
{
    if (QApplication::activePopupWidget()) { // nobody loses the list that he has just opened
        QTimer::singleShot(100, this, [this, kept = std::make_shared<Loaded>(std::move(loaded))] { take(std::move(*kept)); });
        return;
    }
    const auto* read = std::get_if<exchange::Sheet>(&loaded.read);
    loading_ = read && !read->whole;
    Aside::letGo(std::exchange(plan_, nullptr));
    const auto before = std::exchange(sheet_, nullptr);
    if (!read) {
        file_->setText(std::get<QString>(loaded.read));
        table_->setSheet(nullptr, {});
        readings_->hide();
        say();
    } else {
        const bool goesOn = before && !before->whole && before->header == read->header && before->separator == read->separator;
        sheet_ = std::make_shared<const exchange::Sheet>(std::move(std::get<exchange::Sheet>(loaded.read)));
        file_->setText(readSentence(*sheet_));
        if (goesOn) table_->goOn(sheet_);
        else takeColumns(std::move(loaded));
        ask();
        replan();
    }
    Aside::letGo(before);
}

void JournalSheetView::showPlan(std::shared_ptr<const exchange::SheetPlan> plan)
{
    const auto before = std::exchange(plan_, std::move(plan));
    table_->setPlan(plan_, unanswered());
    Aside::letGo(before);
    say();
    begin();
}

void JournalSheetView::say()
{
    const auto count = [this](RowFate fate) { return plan_ ? static_cast<int>(plan_->count(fate)) : 0; };
    const int faults = count(RowFate::fault), there = count(RowFate::there), twice = count(RowFate::twice);
    const int added = plan_ ? static_cast<int>(plan_->entries.size()) : 0;
    leaveThere_->setText(there > 0 ? tr("Leave out what the journal holds already (%1)").arg(there) : tr("Leave out what the journal holds already"));
    leaveTwice_->setText(twice > 0 ? tr("Leave out what an earlier row of the file says too (%1)").arg(twice) : tr("Leave out what an earlier row of the file says too"));
    leaveTwice_->setVisible(plan_ && !unanswered() && !imported_);
    leaveThere_->setVisible(hadHousehold_ && !imported_ && (there > 0 || !leaveThere_->isChecked()));
    for (QWidget* each : std::initializer_list<QWidget*>{middle_, separator_}) each->setVisible(sheet_ != nullptr); // a file that is no table asks for nothing
    ui::setTone(file_, sheet_ || loading_ ? ui::Tone::plain : ui::Tone::brick);
    sayShown();
    saveFaults_->setEnabled(faults > 0 && !unanswered() && !loading_);
    if (imported_) {
        import_->setEnabled(false);
        import_->setText(tr("Imported"));
        return;
    }
    const bool ready = plan_ && !aside_->busy() && !loading_ && added > 0 && !unanswered();
    import_->setEnabled(ready && (!household_ || !household_->readOnly()));
    import_->setText(added > 0 && !unanswered() && !loading_ ? tr("&Import %n entry(ies)", nullptr, added) : tr("&Import"));
    if (!refusal_.isEmpty()) summary_->setText(refusal_);
    else if (household_ && household_->readOnly()) summary_->setText(tr("This household is open for reading only: nothing can be imported into it."));
    else summary_->setText(sheet_ ? fateSentence(*sheet_, plan_.get(), questions_.noDate, unanswered(), !household_) : QString{});
}

/// Which rows can be shown, and how many they are.
void JournalSheetView::sayShown()
{
    const QSignalBlocker quiet{shown_};
    const int before = shown_->currentData().toInt();
    const auto add = [this](SheetPreview::Shown shown, const QString& words) { shown_->addItem(words, static_cast<int>(shown)); };
    const auto some = [this](RowFate fate) { return plan_ ? plan_->count(fate) : 0; };
    shown_->clear();
    add(SheetPreview::Shown::first, tr("The first rows"));
    if (const auto count = some(RowFate::fault)) add(SheetPreview::Shown::faults, tr("Rows at fault (%1)").arg(count));
    if (const auto count = some(RowFate::there)) add(SheetPreview::Shown::there, tr("Rows that are there already (%1)").arg(count));
    if (const auto count = some(RowFate::twice)) add(SheetPreview::Shown::twice, tr("Rows said before (%1)").arg(count));
    if (const auto count = some(RowFate::unwanted)) add(SheetPreview::Shown::unwanted, tr("Rows left out as answered (%1)").arg(count));
    const int kept = shown_->findData(before);
    shown_->setCurrentIndex(std::max(0, kept));
    if (kept < 0 && sheet_) table_->showRows(SheetPreview::Shown::first);
}

/// Once the rows have been looked at the focus is where people go on: at the columns where none is known, at the first question that is open, else at the button that imports.
void JournalSheetView::begin()
{
    if (std::exchange(begun_, true)) return;
    const auto lists = middle_->findChildren<QComboBox*>();
    const auto open = std::ranges::find_if(lists, [this](const QComboBox* list) { return list->isVisibleTo(this) && !table_->isAncestorOf(list) && !list->currentData().isValid(); });
    const auto columns = table_->findChildren<QComboBox*>();
    QWidget* at = questions_.noDate && !columns.empty() ? static_cast<QWidget*>(columns.front()) : open != lists.end() ? static_cast<QWidget*>(*open) : import_->isEnabled() ? static_cast<QWidget*>(import_) : table_;
    at->setFocus(Qt::OtherFocusReason);
}

void JournalSheetView::import()
{
    if (!plan_ || aside_->busy() || loading_ || plan_->entries.empty() || unanswered() || (hadHousehold_ && !household_)) return;
    import_->setEnabled(false); // until it is answered
    QStringList warnings;
    for (const journal::Warning& warning : plan_->warnings) warnings << exchange::warningText(warning, plan_->after);
    // Before the entries are: so that the import is the step that one undo takes back. A household that is made for them keeps it when it is met.
    if (household_ && said() != exchange::TableAnswers{}) keepIn(*household_, *sheet_, settings_, said(), tr("Remember the words of %1").arg(QFileInfo{path_}.fileName()));
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
    table_->showRows(SheetPreview::Shown::faults);
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
