#include "ui/window/desk.h"

#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/common/seams.h"
#include "ui/forms/typed_form.h"
#include "ui/handbook/handbook_page.h"
#include "ui/journal/journal_page.h"
#include "ui/materials/materials_page.h"
#include "ui/rotation/rotation_page.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/shelf_page.h"
#include "ui/trends/trends_page.h"
#include "ui/window/due_list.h"
#include "ui/window/notices.h"
#include "ui/window/rail.h"

#include <QAction>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QTimer>
#include <QUndoStack>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::window {

namespace {

/// A page narrower than this at 100 % font is not squeezed further by the due list.
constexpr int pageAtLeast = 760;
/// By then the shelf has been painted with the estimates that were kept.
constexpr int restAfterMs = 250;
constexpr int betweenPagesMs = 30;

bool isToldOn(const QWidget* page, const QString& why)
{
    const auto labels = page->findChildren<QLabel*>();
    return std::ranges::any_of(labels, [&](const QLabel* label) { return label->isVisible() && label->text().contains(why); });
}

QPushButton* headButton(QAction* action, QWidget* parent)
{
    auto* button = ui::makeButton(action->text(), ui::Tone::plain, parent);
    const auto sync = [button, action] {
        button->setEnabled(action->isEnabled());
        button->setToolTip(action->toolTip());
    };
    sync();
    QObject::connect(action, &QAction::changed, button, sync);
    QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
    return button;
}

}

Desk::Desk(household::Household& household, Lent lent, QWidget* parent)
    : QWidget{parent}, household_{household}, lent_{std::move(lent)}, rail_{new Rail{lent_.theme, this}}, pages_{new QStackedWidget{this}},
      shelf_{new shelf::ShelfPage{household_, lent_.theme, pages_}},
      journal_{new journal_page::JournalPage{household_, lent_.theme, lent_.settings, pages_}},
      materials_{new materials_page::MaterialsPage{household_, lent_.theme, lent_.settings, pages_}},
      due_{new DueList{household_, lent_.theme, this}}, duePage_{new QWidget{pages_}},
      row_{new QHBoxLayout{this}}, dueAction_{lent_.action(ui::ActionId::goDue)}
{
    setObjectName(QStringLiteral("desk"));
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(0);
    row_->addWidget(rail_);
    row_->addWidget(pages_, 1);
    row_->addWidget(due_);
    pages_->addWidget(shelf_);
    pages_->addWidget(journal_);
    pages_->addWidget(materials_);
    pages_->addWidget(duePage_);
    auto* dueRows = new QVBoxLayout{duePage_};
    dueRows->setContentsMargins(0, 0, 0, 0);

    rail_->addPage(lent_.action(ui::ActionId::pageShelf));
    rail_->addPage(lent_.action(ui::ActionId::pageTrends));
    rail_->addPage(lent_.action(ui::ActionId::pageRotation));
    rail_->addPage(lent_.action(ui::ActionId::pageJournal));
    rail_->addPage(lent_.action(ui::ActionId::pageMaterials));
    rail_->addPage(lent_.action(ui::ActionId::pageHandbook));
    rail_->addPage(dueAction_);

    for (const ui::ActionId id : {ui::ActionId::undo, ui::ActionId::whatIsWrong, ui::ActionId::recordOther, ui::ActionId::newStack}) {
        QPushButton* button = headButton(lent_.action(id), shelf_);
        button->setObjectName(QString::fromLatin1(ui::actionRow(id).name) % QStringLiteral("Button"));
        ui::setAct(button, id);
        // Undo names its deed in the tool tip and the menu; on the button that would push the others about.
        button->setText(id == ui::ActionId::whatIsWrong ? tr("Wrong?") : ui::actionText(id).remove(u'&')); // short: four stand in a row in large letters; Alt and a letter belong to the menus
        if (id == ui::ActionId::whatIsWrong) ui::setAccess(button, ui::actionName(id));
        shelf_->head()->addButton(button);
    }

    connect(due_, &DueList::act, this, &Desk::act);
    connect(due_, &DueList::other, this, &Desk::openFormFor);
    connect(due_, &DueList::write, this, &Desk::write);
    connect(due_, &DueList::counted, this, [this] { tellState(); });
    connect(journal_, &journal_page::JournalPage::refused, this,
            [this](const QString& why) { lent_.notices.show(Notices::Kind::failure, why, QStringLiteral("journal")); });
    connect(materials_, &materials_page::MaterialsPage::trayWanted, this, [this](const QString& stack, const journal::Bed& bed) {
        showPage(Page::shelf);
        shelf_->openProposed(stack, bed);
    });
    connect(&household_, &household::Household::recorded, this, [this](household::Ticket, const std::vector<journal::EntryId>&) {
        savedAt_ = lent_.minuteOfDay();
        const QUndoStack* steps = household_.undoStack();
        savedWhat_ = steps->index() > std::exchange(steps_, steps->index()) ? steps->undoText() : QString{};
        for (const char* told : {"journal", "leaving", "choose"}) lent_.notices.settle(QString::fromLatin1(told));
        tellState();
    });
    connect(shelf_, &shelf::ShelfPage::formShown, this, &Desk::holdStill);
    connect(journal_, &journal_page::JournalPage::formShown, this, &Desk::holdStill);
    connect(shelf_, &shelf::ShelfPage::stackNeeded, this, [this](const QString& why) { lent_.notices.show(Notices::Kind::done, why, QStringLiteral("choose")); });
    connect(shelf_, &shelf::ShelfPage::usualRecorded, this, [this](forms::FormKind kind) { tellCaution(kind == forms::FormKind::drain); });
    // Queued: a form or the shelf that asked for the write tells its failure itself, and once is enough.
    connect(&household_, &household::Household::failed, this, [this](household::Ticket, const QString& why) {
        if (!isToldOn(pages_->currentWidget(), why)) lent_.notices.show(Notices::Kind::failure, why);
        tellState();
    }, Qt::QueuedConnection);
    connect(&household_, &household::Household::notice, this, [this](const QString& text) {
        lent_.notices.show(Notices::Kind::notice, text);
        tellState();
    });
    connect(&household_, &household::Household::changed, this, [this] { tellState(); });
    connect(&household_, &household::Household::reckoningProgressed, this, [this] { tellState(); });
    connect(&household_, &household::Household::reckoned, this, [this] { tellState(); });
    connect(&lent_.theme, &ui::Theme::changed, this, [this] { placeDue(); });
    placeDue();
    showPage(Page::shelf);
    tellState();
    QTimer::singleShot(restAfterMs, this, &Desk::makeNextPage);
}

trends::TrendsPage* Desk::trends()
{
    if (trends_) return trends_;
    trends_ = new trends::TrendsPage{household_, lent_.theme, lent_.settings, pages_};
    pages_->addWidget(trends_);
    connect(trends_, &trends::TrendsPage::saveAsked, this, &Desk::trendsSaveAsked);
    connect(trends_, &trends::TrendsPage::printAsked, this, &Desk::trendsPrintAsked);
    return trends_;
}

rotation::RotationPage* Desk::rotation()
{
    if (rotation_) return rotation_;
    rotation_ = new rotation::RotationPage{household_, lent_.theme, pages_};
    pages_->addWidget(rotation_);
    return rotation_;
}

handbook::HandbookPage* Desk::handbook()
{
    if (handbook_) return handbook_;
    handbook_ = new handbook::HandbookPage{household_, lent_.theme, lent_.settings, pages_};
    pages_->addWidget(handbook_);
    connect(handbook_, &handbook::HandbookPage::entryWanted, this, [this](const QString& stack, const journal::Action& action, std::optional<int> slot) {
        showPage(Page::shelf);
        shelf_->chooseStack(stack);
        shelf_->openProposed(stack, action, slot);
    });
    return handbook_;
}

/// One at a time, with room for a click or a frame in between.
void Desk::makeNextPage()
{
    if (!household_.reckoningIsCurrent()) { // its threads need both cores, and a page made beside them would take twice as long
        QTimer::singleShot(restAfterMs, this, &Desk::makeNextPage);
        return;
    }
    if (!trends_) (void)trends();
    else if (!rotation_) (void)rotation();
    else if (!handbook_) (void)handbook();
    else return;
    QTimer::singleShot(betweenPagesMs, this, &Desk::makeNextPage);
}

void Desk::showPage(Page page)
{
    if (page == Page::due && beside_) {
        due_->enter();
        return;
    }
    page_ = page;
    switch (page) {
    case Page::shelf: pages_->setCurrentWidget(shelf_); break;
    case Page::trends: pages_->setCurrentWidget(trends()); break;
    case Page::journal: pages_->setCurrentWidget(journal_); break;
    case Page::materials: pages_->setCurrentWidget(materials_); break;
    case Page::rotation: pages_->setCurrentWidget(rotation()); break;
    case Page::handbook: pages_->setCurrentWidget(handbook()); break;
    case Page::due: pages_->setCurrentWidget(duePage_); break;
    }
    holdStill();
    lent_.action(ui::ActionId::pageShelf)->setChecked(page == Page::shelf);
    lent_.action(ui::ActionId::pageTrends)->setChecked(page == Page::trends);
    lent_.action(ui::ActionId::pageJournal)->setChecked(page == Page::journal);
    lent_.action(ui::ActionId::pageMaterials)->setChecked(page == Page::materials);
    lent_.action(ui::ActionId::pageRotation)->setChecked(page == Page::rotation);
    lent_.action(ui::ActionId::pageHandbook)->setChecked(page == Page::handbook);
    dueAction_->setChecked(page == Page::due);
    if (page == Page::due) {
        due_->enter();
        return;
    }
    // Back to where one was on this page; a form that has just come up has taken the focus already.
    QWidget* shown = pages_->currentWidget();
    QWidget* place = shown->focusWidget();
    (place && place->isVisible() && place->isEnabled() ? place : shown)->setFocus(Qt::OtherFocusReason);
}

QString Desk::savedText() const
{
    return rail_->savedText();
}

void Desk::goDue()
{
    showPage(Page::due);
}

void Desk::doFirstDue()
{
    due_->doFirst();
}

void Desk::newStack()
{
    showPage(Page::shelf);
    shelf_->openNewStack();
}

void Desk::recordOther()
{
    showPage(Page::shelf);
    if (const QString stack = shelf_->currentStack(); !stack.isEmpty()) shelf_->openPanel(stack, std::nullopt);
}

void Desk::showSymptoms()
{
    const QString stack = shelf_->currentStack();
    showPage(Page::handbook);
    handbook()->openSymptoms(stack);
}

void Desk::showHarvest()
{
    const QString stack = shelf_->currentStack();
    showPage(Page::handbook);
    handbook()->openHarvest(stack);
}

bool Desk::anythingTyped() const
{
    const auto* form = qobject_cast<const forms::TypedForm*>(shelf_->host()->content());
    return (form && form->touched()) || journal_->editing() || materials_->editing();
}

bool Desk::isFormOpen() const
{
    if (pages_->currentWidget() == shelf_) return shelf_->isFormOpen();
    return pages_->currentWidget() == journal_ && journal_->isFormOpen();
}

/// Messages that come or go leave the fields of a form where they are.
void Desk::holdStill() { lent_.notices.setFloating(isFormOpen()); }

void Desk::placeDue()
{
    const int room = width() - rail_->wantedWidth() - due_->wantedWidth();
    const bool beside = room >= lent_.theme.px(pageAtLeast);
    due_->setFixedWidth(beside ? due_->wantedWidth() : QWIDGETSIZE_MAX);
    due_->setMinimumWidth(beside ? due_->wantedWidth() : 0);
    rail_->setPageShown(dueAction_, !beside);
    if (beside == beside_ && due_->parentWidget() != nullptr && (beside ? row_->indexOf(due_) >= 0 : duePage_->layout()->indexOf(due_) >= 0)) return;
    beside_ = beside;
    if (beside) {
        if (page_ == Page::due) showPage(Page::shelf);
        row_->addWidget(due_);
    } else {
        duePage_->layout()->addWidget(due_);
    }
    due_->show();
}

void Desk::tellState()
{
    const auto journal = household_.journal();
    QString saved;
    if (household_.readOnly()) saved = tr("Read only");
    else if (!journal->pending.empty()) saved = tr("Saving…");
    else if (savedAt_ >= 0 && !savedWhat_.isEmpty()) saved = tr("Saved %1: %2", "time of day, what was done and to which stack").arg(ui::timeOfDay(savedAt_), savedWhat_);
    else if (savedAt_ >= 0) saved = tr("Saved %1").arg(ui::timeOfDay(savedAt_));
    else saved = tr("All saved");
    int stacks = 0;
    for (const auto& history : journal->replay.stacks) {
        const auto* standing = history.on(household_.today());
        if (standing && !standing->retired) ++stacks;
    }
    const auto progress = household_.reckoningProgress();
    rail_->setState(saved, progress.all > 0 ? tr("Estimates: %1 of %2").arg(progress.made).arg(progress.all) : tr("%n stack(s)", nullptr, stacks), tr("Kept in %1").arg(QDir::toNativeSeparators(household_.path())));
    rail_->setPageText(dueAction_, due_->count() > 0 ? tr("Due (%1)").arg(due_->count()) : tr("Due"));
}

void Desk::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeDue();
}

}
