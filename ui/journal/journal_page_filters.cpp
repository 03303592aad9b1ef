#include "ui/journal/journal_page.h"

#include "ui/common/actions.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/journal/entry_words.h"
#include "ui/journal/journal_filter.h"

#include <QAction>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

/// What is looked for: words, stack, action and period above the table, and the buttons and keys beside them.
namespace tierloam::journal_page {

namespace {

/// Fills a combo box anew and keeps what was chosen in it.
void refill(QComboBox* box, const QList<std::pair<QString, QVariant>>& items)
{
    const QVariant chosen = box->currentData();
    const QSignalBlocker quiet{box};
    box->clear();
    for (const auto& [text, value] : items) box->addItem(text, value);
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

}

void JournalPage::buildFilters(QVBoxLayout* rows)
{
    QAction* find = ui::makeAction(ui::ActionId::find, this);
    QAction* edit = ui::makeAction(ui::ActionId::editEntry, this);
    QAction* remove = ui::makeAction(ui::ActionId::deleteEntry, this);
    QAction* all = ui::makeAction(ui::ActionId::clearFilters, this);
    addAction(find);
    // Return, Del and Esc mean something else in the editor below the table, so they work in the table and the filters only.
    QAction* together = ui::makeAction(ui::ActionId::editTogether, this);
    QAction* photos = ui::makeAction(ui::ActionId::photos, this);
    QAction* duplicate = ui::makeAction(ui::ActionId::duplicateEntry, this);
    QAction* inRow = ui::makeAction(ui::ActionId::recordInRow, this);
    QAction* columns = ui::makeAction(ui::ActionId::chooseColumns, this);
    table_->addActions({edit, duplicate, together, photos, remove, all});
    addActions({inRow, columns});
    connect(duplicate, &QAction::triggered, this, &JournalPage::duplicateChosen);
    connect(inRow, &QAction::triggered, this, &JournalPage::recordInRow);
    connect(columns, &QAction::triggered, this, &JournalPage::chooseColumns);
    connect(photos, &QAction::triggered, this, &JournalPage::askForPhotos);
    connect(together, &QAction::triggered, this, &JournalPage::changeTogether);
    connect(find, &QAction::triggered, this, &JournalPage::find);
    connect(all, &QAction::triggered, this, &JournalPage::showAll);
    connect(edit, &QAction::triggered, this, &JournalPage::editChosen);
    connect(remove, &QAction::triggered, this, &JournalPage::deleteChosen);

    filters_ = new QWidget{this};
    auto* flow = new ui::FlowLayout{filters_, 8};
    filters_->addAction(all);
    words_ = new ui::FieldEdit{filters_};
    words_->setObjectName(QStringLiteral("findField"));
    words_->setPlaceholderText(tr("Find (%1)").arg(ui::keysText(ui::ActionId::find)));
    words_->setClearButtonEnabled(true);
    words_->setMinimumWidth(190);
    words_->installEventFilter(this);
    ui::setAccess(words_, tr("Find in the journal"), tr("All words must be in the row"));
    flow->addWidget(words_);
    const auto combo = [&](const QString& name, const QString& object) {
        auto* box = new ui::FieldCombo{filters_};
        box->setObjectName(object);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        const auto narrow = [this, box] { box->setMaximumWidth(theme_.px(180)); }; // two in a line of a small window in large letters
        narrow();
        connect(&theme_, &ui::Theme::changed, box, narrow);
        ui::setAccess(box, name);
        flow->addWidget(box);
        return box;
    };
    stack_ = combo(tr("Stack"), QStringLiteral("stackFilter"));
    action_ = combo(tr("What was done"), QStringLiteral("actionFilter"));
    period_ = combo(tr("Period"), QStringLiteral("periodFilter"));
    showAll_ = ui::makeButton(ui::actionName(ui::ActionId::clearFilters), ui::Tone::plain, filters_);
    showAll_->setToolTip(all->toolTip());
    showAll_->setObjectName(QStringLiteral("showAll"));
    flow->addWidget(showAll_);
    columnsButton_ = ui::makeButton(ui::actionText(ui::ActionId::chooseColumns), ui::Tone::plain, filters_);
    columnsButton_->setToolTip(columns->toolTip());
    columnsButton_->setObjectName(QStringLiteral("columnsButton"));
    connect(columnsButton_, &QPushButton::clicked, this, &JournalPage::chooseColumns);
    flow->addWidget(columnsButton_);
    more_ = ui::makeButton(ui::actionText(ui::ActionId::recordInRow), ui::Tone::plain, filters_);
    more_->setObjectName(QStringLiteral("recordInRowButton"));
    more_->setToolTip(inRow->toolTip());
    ui::setAccess(more_, tr("Record several entries one after the other"));
    connect(more_, &QPushButton::clicked, this, &JournalPage::recordInRow);
    flow->addWidget(more_); // here it wraps; the head would widen the window
    rows->addWidget(filters_);

    edit_ = ui::makeButton(ui::actionText(ui::ActionId::editEntry), ui::Tone::moss, this);
    edit_->setObjectName(QStringLiteral("editButton"));
    edit_->setToolTip(edit->toolTip());
    ui::setAccess(edit_, tr("Edit the chosen entry"));
    delete_ = ui::makeButton(ui::actionText(ui::ActionId::deleteEntry), ui::Tone::plain, this);
    delete_->setObjectName(QStringLiteral("deleteButton"));
    delete_->setToolTip(remove->toolTip());
    ui::setAccess(delete_, tr("Take the chosen entries out of the journal"));
    together_ = ui::makeButton(ui::actionText(ui::ActionId::editTogether), ui::Tone::plain, this);
    together_->setObjectName(QStringLiteral("togetherButton"));
    together_->setToolTip(together->toolTip());
    ui::setAccess(together_, tr("Change the chosen entries together"));
    connect(together_, &QPushButton::clicked, this, &JournalPage::changeTogether);
    photos_ = ui::makeButton(ui::actionText(ui::ActionId::photos), ui::Tone::plain, this);
    photos_->setObjectName(QStringLiteral("photosButton"));
    photos_->setToolTip(photos->toolTip());
    ui::setAccess(photos_, tr("Pictures of the chosen entry"));
    connect(photos_, &QPushButton::clicked, this, &JournalPage::askForPhotos);
    head_->addButton(edit_);
    head_->addButton(together_);
    head_->addButton(photos_);
    head_->addButton(delete_);

    connect(words_, &QLineEdit::textChanged, this, [this](const QString& text) { filter_->setWords(text); tellCount(); });
    connect(stack_, &QComboBox::currentIndexChanged, this, [this] { filter_->setStack(stack_->currentData().toString()); tellCount(); });
    connect(action_, &QComboBox::currentIndexChanged, this, [this] {
        const QVariant chosen = action_->currentData();
        filter_->setAction(chosen.isValid() ? std::optional{static_cast<std::size_t>(chosen.toULongLong())} : std::nullopt);
        tellCount();
    });
    connect(period_, &QComboBox::currentIndexChanged, this, [this] { applyPeriod(); });
    connect(showAll_, &QPushButton::clicked, this, &JournalPage::showAll);
    connect(edit_, &QPushButton::clicked, this, &JournalPage::editChosen);
    connect(delete_, &QPushButton::clicked, this, &JournalPage::deleteChosen);

    refill(period_, {{tr("All days"), {}}, {tr("Last 30 days"), 30}, {tr("Last 90 days"), 90}, {tr("Last year"), 365}, {tr("Last 2 years"), 730}});
    QList<std::pair<QString, QVariant>> actions{{tr("All actions"), {}}};
    for (std::size_t i = 0; i < std::variant_size_v<journal::Action>; ++i) actions.append({actionWord(i), QVariant::fromValue(static_cast<qulonglong>(i))});
    refill(action_, actions);
}

void JournalPage::fillStacks()
{
    QList<std::pair<QString, QVariant>> items{{tr("All stacks"), {}}};
    for (const journal::StackHistory& stack : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder())) {
        const QString name = QString::fromStdString(stack.name);
        items.append({name, name});
    }
    refill(stack_, items);
}

void JournalPage::applyPeriod()
{
    const int days = period_->currentData().toInt();
    filter_->setSince(days > 0 ? std::optional{household_.today() - std::chrono::days{days}} : std::nullopt);
    tellCount();
}

void JournalPage::find()
{
    words_->setFocus(Qt::ShortcutFocusReason);
    words_->selectAll();
}

void JournalPage::showAll()
{
    if (!editing()) closeEditor();
    words_->clear();
    for (QComboBox* box : {stack_, action_, period_}) box->setCurrentIndex(0);
    if (table_->isVisible()) table_->setFocus();
}

/// With Ctrl the table moves its cursor alone and leaves what is chosen where it was: what then is deleted or edited stands elsewhere, perhaps out of sight.
/// Of one row cursor and choice stay together; among several the cursor goes alone, so that more can be chosen with Ctrl and Space.
bool JournalPage::moveWithCtrl(const QKeyEvent& key)
{
    if (key.modifiers() != Qt::ControlModifier || filter_->rowCount() == 0 || table_->selectionModel()->selectedRows().size() > 1) return false;
    const auto choose = [this](int row) { table_->selectionModel()->setCurrentIndex(filter_->index(row, std::max(0, table_->currentIndex().column())), QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows); };
    switch (key.key()) {
    case Qt::Key_Home: choose(0); return true;
    case Qt::Key_End: choose(filter_->rowCount() - 1); return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown: {
        QKeyEvent plain{key.type(), key.key(), Qt::NoModifier};
        QCoreApplication::sendEvent(table_, &plain);
        return true;
    }
    default: return false;
    }
}

bool JournalPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == table_ && event->type() == QEvent::KeyPress && moveWithCtrl(static_cast<QKeyEvent&>(*event))) return true;
    if (watched == words_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool down = key->key() == Qt::Key_Down || key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (down && table_->isVisible()) {
            table_->setFocus();
            if (!table_->selectionModel()->hasSelection() && filter_->rowCount() > 0) table_->selectRow(0);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}
