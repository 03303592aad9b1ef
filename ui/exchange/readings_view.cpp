#include "ui/exchange/readings_view.h"

#include "core/exchange/sheet_import.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/exchange/aside.h"
#include "ui/exchange/logger_columns.h"
#include "ui/exchange/questions_box.h"
#include "ui/exchange/rows_at_fault.h"

#include <QCloseEvent>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::exchange_view {

namespace {

constexpr int thousandths = 1000;

QString number(std::size_t count) { return QLocale{}.toString(static_cast<qulonglong>(count)); }

}

ReadingsView::ReadingsView(QString path, household::Household& household, ui::Dialogs& dialogs, QWidget* parent)
    : ui::View{parent}, path_{std::move(path)}, household_{household}, dialogs_{dialogs}, aside_{new Aside{this}}
{
    setObjectName(QStringLiteral("readingsView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Import readings of a logger"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(8);
    rows->addWidget(ui::makeLabel(tr("Readings in %1").arg(QFileInfo{path_}.fileName()), ui::TextRole::title, this, true));
    file_ = ui::makeLabel(tr("Reading…"), ui::TextRole::muted, this, true);
    file_->setObjectName(QStringLiteral("readingsFile"));
    rows->addWidget(file_);
    auto* stackRow = new QHBoxLayout;
    stack_ = new ui::FieldCombo{this};
    stack_->setObjectName(QStringLiteral("readingsStack"));
    auto* stackWords = ui::makeLabel(tr("The logger lies in or beside"), ui::TextRole::strong, this);
    stackWords->setBuddy(stack_);
    ui::setAccess(stack_, tr("Stack in or beside which the logger lies"));
    stackRow->addWidget(stackWords);
    stackRow->addWidget(stack_);
    stackRow->addStretch(1);
    rows->addLayout(stackRow);
    box_ = new QuestionsBox{this};
    rows->addWidget(box_);
    columns_ = new LoggerColumns{this};
    rows->addWidget(columns_, 1);
    summary_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    summary_->setObjectName(QStringLiteral("readingsSummary"));
    rows->addWidget(summary_);
    progress_ = new QProgressBar{this};
    progress_->setRange(0, thousandths);
    ui::setAccess(progress_, tr("How far it is"));
    rows->addWidget(progress_);
    auto* buttons = new QDialogButtonBox{this};
    import_ = ui::makeButton(tr("&Import"), ui::Tone::moss, this);
    import_->setObjectName(QStringLiteral("readingsImport"));
    callOff_ = ui::makeButton(tr("Call &off"), ui::Tone::plain, this);
    callOff_->setObjectName(QStringLiteral("readingsCallOff"));
    saveFaults_ = ui::makeButton(tr("&Save the rows at fault…"), ui::Tone::plain, this);
    saveFaults_->setObjectName(QStringLiteral("readingsFaults"));
    close_ = ui::makeButton(tr("Close"), ui::Tone::plain, this);
    buttons->addButton(import_, QDialogButtonBox::ActionRole);
    buttons->addButton(callOff_, QDialogButtonBox::ActionRole);
    buttons->addButton(saveFaults_, QDialogButtonBox::ActionRole);
    buttons->addButton(close_, QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);

    for (const journal::StackHistory& stack : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder()))
        if (!stack.steps.back().after.retired) stack_->addItem(QString::fromStdString(stack.name), QString::fromStdString(stack.name));
    if (stack_->count() > 1) stack_->insertItem(0, tr("Please choose"));
    stack_->setCurrentIndex(0);

    connect(stack_, &QComboBox::activated, this, [this] { compare(); });
    connect(box_, &QuestionsBox::answered, this, &ReadingsView::readAll);
    connect(columns_, &LoggerColumns::chosen, this, [this](std::size_t at, const exchange::LoggerColumn& column) {
        mapping_.columns[at] = column;
        ask();
        readAll();
    });
    connect(import_, &QPushButton::clicked, this, &ReadingsView::import);
    connect(callOff_, &QPushButton::clicked, this, &ReadingsView::callOff);
    connect(saveFaults_, &QPushButton::clicked, this, &ReadingsView::saveFaults);
    connect(close_, &QPushButton::clicked, this, &QDialog::close);
    connect(&household_, &QObject::destroyed, this, [this] {
        stage_ = Stage::ready; // nothing is under way any more
        close();
    });
    connect(&household_, &household::Household::recorded, this, [this](household::Ticket ticket) {
        if (stage_ != Stage::writing || ticket != ticket_) return;
        stage_ = Stage::ready;
        Q_EMIT imported(tr("%Ln reading(s) imported from %1.", nullptr, static_cast<int>(plan_->fresh)).arg(QFileInfo{path_}.fileName()) % QLatin1Char{' '}
                        % tr("The journal has their mean of %Ln day(s).", nullptr, static_cast<int>(plan_->days)));
        close();
    });
    connect(&household_, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (stage_ != Stage::writing || ticket != ticket_) return;
        stage_ = Stage::ready;
        refusal_ = why;
        say();
    });
    resize(QSize{std::max(900, fontMetrics().averageCharWidth() * 110), std::max(600, fontMetrics().height() * 32)}.boundedTo(screen()->availableSize()));
    say();
    load();
}

/// Its thread posts to this object, so it ends first.
ReadingsView::~ReadingsView()
{
    stopWriting_.request_stop();
    delete aside_;
}

void ReadingsView::load()
{
    aside_->run([this, path = path_](const std::stop_token&) -> Aside::Answer {
        auto read = std::make_shared<std::variant<exchange::Sheet, QString>>(exchange::readSheetFile(path));
        return [this, read] { take(std::move(*read)); };
    });
}

void ReadingsView::take(std::variant<exchange::Sheet, QString> read)
{
    stage_ = Stage::asking;
    if (const auto* why = std::get_if<QString>(&read)) {
        file_->setText(*why);
        say();
        return;
    }
    sheet_ = std::make_shared<const exchange::Sheet>(std::move(std::get<exchange::Sheet>(read)));
    mapping_ = exchange::guessMapping(sheet_->header);
    const QString kept = household_.remembered(exchange::mappingName(sheet_->header));
    if (const auto known = kept.isEmpty() ? std::nullopt : exchange::mappingFrom(kept, sheet_->header.size())) {
        mapping_ = *known;
        remembered_ = true;
        if (const int at = stack_->findData(QString::fromStdString(known->stack)); at >= 0) stack_->setCurrentIndex(at);
    }
    const QString rows = tr("%Ln row(s), %1, cells parted by %2.", nullptr, static_cast<int>(sheet_->rows.size())).arg(exchange::encodingText(sheet_->encoding), exchange::separatorText(sheet_->separator));
    file_->setText(remembered_ ? tr("%1 Columns as you chose them for the last file with these columns.").arg(rows) : rows);
    columns_->place(*sheet_, mapping_);
    const auto decimal = mapping_.decimal;
    const auto order = mapping_.order;
    const auto century = mapping_.century;
    ask();
    box_->answer(decimal, order, century);
    readAll();
}

void ReadingsView::ask()
{
    questions_ = exchange::questionsOf(*sheet_, mapping_);
    box_->ask(questions_.decimal, questions_.order, questions_.century);
}

void ReadingsView::readAll()
{
    if (!sheet_ || stage_ == Stage::writing) return;
    refusal_.clear();
    mapping_.decimal = box_->decimal();
    mapping_.order = box_->order();
    mapping_.century = box_->century();
    read_.reset();
    plan_.reset();
    ++asked_;
    if (questions_.any() || box_->open()) {
        aside_->callOff();
        stage_ = Stage::asking;
        say();
        return;
    }
    stage_ = Stage::planning;
    const QPointer<ReadingsView> view{this};
    aside_->run([this, view, sheet = sheet_, mapping = mapping_, today = household_.today()](const std::stop_token& stop) -> Aside::Answer {
        const auto progress = [this, stop](double share) {
            // The view outlives its Aside, and with it this call.
            QMetaObject::invokeMethod(this, [this, share, stop] { if (!stop.stop_requested() && stage_ == Stage::planning) showProgress(share, tr("Reading the file…")); }, Qt::QueuedConnection);
        };
        auto made = std::make_shared<const exchange::LoggerRead>(exchange::readLogger(*sheet, mapping, today, progress, stop));
        return [this, made] {
            read_ = made;
            compare();
        };
    });
    say();
}

/// What is there already is asked of the file, then compared beside the window.
void ReadingsView::compare()
{
    refusal_.clear();
    plan_.reset();
    const quint64 number = ++asked_;
    const std::string stack = stack_->currentData().toString().toStdString();
    if (!read_ || read_->count() == 0 || stack.empty()) {
        stage_ = Stage::asking;
        say();
        return;
    }
    stage_ = Stage::planning;
    say();
    household_.listLogged(stack, read_->first, read_->last, [view = QPointer{this}, number, stack](const std::variant<store::LoggedBefore, store::WriteFailure>& listed) {
        if (!view || view->asked_ != number) return;
        if (const auto* failure = std::get_if<store::WriteFailure>(&listed)) {
            view->stage_ = Stage::asking;
            view->refusal_ = tr("%1 Choose the stack again to try once more.").arg(failure->why);
            view->say();
            return;
        }
        const auto& before = std::get<store::LoggedBefore>(listed);
        const auto entries = view->household_.journal();
        view->aside_->run([self = view.data(), number, stack, before, entries, read = view->read_](const std::stop_token&) -> Aside::Answer {
            auto made = std::make_shared<exchange::ReadingsPlan>(exchange::planReadings(*read, stack, before, entries->entries));
            return [self, number, made] {
                if (self->asked_ != number) return;
                self->plan_ = made;
                self->stage_ = Stage::ready;
                self->say();
            };
        });
    });
}

void ReadingsView::import()
{
    if (stage_ != Stage::ready || !plan_ || plan_->fresh == 0) return;
    if (const QString why = household_.refusalOf(plan_->edit); !why.isEmpty()) {
        refusal_ = why;
        say();
        return;
    }
    mapping_.stack = stack_->currentData().toString().toStdString();
    stage_ = Stage::writing;
    stopWriting_ = std::stop_source{};
    store::LoggedJob job;
    job.add = plan_->add;
    job.stop = stopWriting_.get_token();
    job.progress = [view = QPointer{this}, household = &household_, stop = job.stop](int done, int of) {
        // By way of the household, which outlives its writer; the view may be gone.
        QMetaObject::invokeMethod(household, [view, done, of] {
            if (view && view->stage_ == Stage::writing) view->showProgress(static_cast<double>(done) / of, tr("Writing the readings…"));
        }, Qt::QueuedConnection);
    };
    const QString file = QFileInfo{path_}.fileName();
    // First what the columns hold: so that the import is the step that one undo takes back.
    household_.remember(exchange::mappingName(sheet_->header), exchange::mappingText(mapping_), tr("Remember the columns of %1").arg(file));
    ticket_ = household_.importReadings(plan_->edit, std::move(job), file, tr("Import readings of a logger"));
    say();
}

void ReadingsView::callOff()
{
    if (stage_ == Stage::writing) {
        stopWriting_.request_stop(); // the answer comes as a failure that says so
        callOff_->setEnabled(false);
        return;
    }
    aside_->callOff();
    ++asked_;
    stage_ = Stage::asking;
    refusal_ = tr("Called off. Nothing was written.");
    say();
}

void ReadingsView::closeEvent(QCloseEvent* event)
{
    if (stage_ == Stage::writing) stopWriting_.request_stop();
    QDialog::closeEvent(event);
}

void ReadingsView::showProgress(double share, const QString& words)
{
    progress_->setValue(static_cast<int>(share * thousandths));
    progress_->setFormat(words + QStringLiteral(" %p %"));
}

void ReadingsView::say()
{
    const bool busy = stage_ == Stage::reading || stage_ == Stage::planning || stage_ == Stage::writing;
    progress_->setVisible(busy);
    if (!busy) progress_->setValue(0);
    callOff_->setVisible(stage_ == Stage::planning || stage_ == Stage::writing);
    callOff_->setEnabled(true);
    columns_->setEnabled(stage_ != Stage::writing);
    box_->setEnabled(stage_ != Stage::writing);
    stack_->setEnabled(stage_ != Stage::writing);
    const int faults = read_ ? static_cast<int>(read_->faultyRows) : 0;
    saveFaults_->setEnabled(faults > 0);
    import_->setEnabled(stage_ == Stage::ready && plan_ && plan_->fresh > 0 && !household_.readOnly());
    QStringList parts;
    if (!refusal_.isEmpty()) parts << refusal_;
    else if (stage_ == Stage::writing) parts << tr("Writing; until the end nothing is kept.");
    else if (stack_->count() == 0) parts << tr("There is no stack that the readings could belong to. Start one first.");
    else if (sheet_ && questions_.noTime) parts << tr("No column holds the date and time. Choose the one that does.");
    else if (sheet_ && questions_.noValue) parts << tr("No column holds a temperature or moisture. Choose the ones that do.");
    else if (sheet_ && questions_.degrees) parts << tr("Choose whether the temperature is in °C or °F.");
    else if (sheet_ && box_->open()) parts << tr("Answer the question above.");
    else if (read_ && read_->count() == 0) parts << tr("No row holds a reading.");
    else if (read_ && !stack_->currentData().isValid()) parts << tr("Choose the stack that the logger belongs to.");
    else if (plan_) {
        parts << tr("%Ln reading(s) from %1 to %2 will be kept in full.", nullptr, static_cast<int>(plan_->fresh)).arg(ui::fullDay(read_->first), ui::fullDay(read_->last))
              << tr("The journal gets the mean of %Ln day(s), an entry each. One undo takes all of it back.", nullptr, static_cast<int>(plan_->days));
        if (plan_->there > 0) parts << tr("%1 are there already and left out.").arg(number(plan_->there));
        if (plan_->outside > 0) parts << tr("%1 are of days on which the stack did not stand, and left out.").arg(number(plan_->outside));
    }
    if (faults > 0) {
        const auto& first = read_->faults.begin()->second;
        parts << tr("%Ln row(s) at fault, the first in line %1: %2", nullptr, faults).arg(QString::number(first.line), exchange::reasonText(first));
    }
    summary_->setText(parts.join(QLatin1Char{' '}));
}

void ReadingsView::saveFaults()
{
    if (!read_ || !sheet_) return;
    const QString told = saveRowsAtFault(this, dialogs_, path_, exchange::faultyRows(*sheet_, *read_));
    if (told.isEmpty()) return;
    refusal_ = read_->faultyRows > read_->faults.size() ? tr("%1 There are more; the first %2 are in it.").arg(told, number(read_->faults.size())) : told;
    say();
    refusal_.clear();
}

}
