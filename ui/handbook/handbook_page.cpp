#include "ui/handbook/handbook_page.h"

#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/handbook/handbook_view.h"
#include "ui/handbook/harvest_view.h"
#include "ui/handbook/symptom_view.h"

#include <QAction>
#include <QEvent>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace tierloam::handbook {

namespace {

constexpr int besideAtLeast = 700;   ///< px at 100 %: below it the list stands above the page
constexpr auto symptomsId = "symptoms", harvestId = "harvest-now"; ///< shown by views of their own, since they answer
constexpr int idRole = Qt::UserRole;

}

HandbookPage::HandbookPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, head_{new ui::PageHead{this}}, words_{new ui::FieldEdit{this}}, list_{new QListWidget{this}},
      view_{new HandbookView{theme, this}}, symptoms_{new SymptomView{household, theme, this}},
      harvest_{new HarvestView{household, theme, settings, this}}, shown_{new QStackedWidget{this}}, sides_{new QBoxLayout{QBoxLayout::LeftToRight}}
{
    setObjectName(QStringLiteral("handbookPage"));
    setProperty("page", true);
    ui::setAccess(this, tr("Handbook"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(18, 14, 18, 14);
    rows->setSpacing(10);
    head_->setTitle(tr("Handbook"));
    rows->addWidget(head_);
    words_->setObjectName(QStringLiteral("findInHandbook"));
    words_->setPlaceholderText(tr("Find (%1)").arg(ui::keysText(ui::ActionId::findInHandbook)));
    words_->setClearButtonEnabled(true);
    ui::setAccess(words_, tr("Find in the handbook"), tr("All words must be on the page"));
    list_->setObjectName(QStringLiteral("handbookList"));
    list_->setProperty("pageList", true);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setWordWrap(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    ui::setAccess(list_, tr("Pages of the handbook"));
    auto* side = new QWidget{this};
    auto* column = new QVBoxLayout{side};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(words_);
    column->addWidget(list_, 1);
    side->setObjectName(QStringLiteral("handbookSide"));
    sides_->setSpacing(14);
    sides_->addWidget(side);
    shown_->addWidget(view_);
    shown_->addWidget(symptoms_);
    shown_->addWidget(harvest_);
    sides_->addWidget(shown_, 1);
    rows->addLayout(sides_, 1);
    buildActions();
    connect(words_, &QLineEdit::textChanged, this, [this] { fillList(); });
    connect(words_, &QLineEdit::returnPressed, this, [this] { if (list_->count() > 0) list_->setCurrentRow(0); });
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item && !filling_) open(item->data(idRole).toString());
    });
    connect(view_, &HandbookView::pageWanted, this, &HandbookPage::open);
    connect(symptoms_, &SymptomView::entryWanted, this, &HandbookPage::entryWanted);
    connect(harvest_, &HarvestView::entryWanted, this, &HandbookPage::entryWanted);
    const auto changed = [this] {
        stale_ = true;
        if (isVisible()) display(openId());
    };
    connect(&household_, &household::Household::changed, this, changed);
    connect(&household_, &household::Household::reckoned, this, changed);
    connect(&theme_, &ui::Theme::changed, this, [this] { fit(); });
    setFocusProxy(list_);
    fillList();
    open(QStringLiteral("first"));
}

void HandbookPage::buildActions()
{
    const auto on = [this](ui::ActionId id, auto act) {
        QAction* action = ui::makeAction(id, this);
        addAction(action);
        connect(action, &QAction::triggered, this, act);
        return action;
    };
    on(ui::ActionId::findInHandbook, [this] { words_->setFocus(); words_->selectAll(); });
    on(ui::ActionId::handbookStart, [this] { open(QStringLiteral("first")); });
    const auto button = [this](QAction* action) {
        auto* made = ui::makeButton(action->text(), ui::Tone::plain, this);
        made->setObjectName(action->objectName() % QStringLiteral("Button"));
        made->setToolTip(action->toolTip());
        connect(made, &QPushButton::clicked, action, &QAction::trigger);
        head_->addButton(made);
        return made;
    };
    back_ = button(on(ui::ActionId::handbookBack, [this] { goBack(); }));
    on_ = button(on(ui::ActionId::handbookOn, [this] { goOn(); }));
}

PageFacts HandbookPage::facts() const { return {household_.reckoning(), household_.today()}; }

void HandbookPage::fillList()
{
    filling_ = true;
    list_->clear();
    const QString words = words_->text();
    const QList<Hit> hits = findPages(words, facts());
    for (const Hit& hit : hits) {
        const QString title = pageTitle(*hit.page);
        auto* item = new QListWidgetItem{hit.around.isEmpty() ? title : QString{title % u'\n' % hit.around}, list_};
        item->setData(idRole, QString::fromLatin1(hit.page->id));
        if (openId() == QLatin1StringView{hit.page->id}) list_->setCurrentItem(item);
    }
    found_ = static_cast<int>(hits.size());
    tellLine();
    filling_ = false;
}

void HandbookPage::tellLine()
{
    const QString usual = shown_->currentWidget() == view_ || width() >= theme_.px(besideAtLeast) ? tr("How each step is done, why, and the usual cautions. Everything is on this machine.") : QString{};
    head_->setLine(words_->text().trimmed().isEmpty() ? usual : found_ == 0 ? tr("No page holds all of these words.") : tr("%n page(s) found", nullptr, found_));
}

void HandbookPage::open(const QString& id)
{
    if (!pageWithId(id.toStdString()) || id == openId()) return;
    visited_.resize(place_ + 1);
    visited_.append(id);
    ++place_;
    display(id);
}

QString HandbookPage::openId() const { return place_ < 0 ? QString{} : visited_[place_]; }

void HandbookPage::goBack()
{
    if (place_ <= 0) return;
    --place_;
    display(openId());
}

void HandbookPage::goOn()
{
    if (place_ + 1 >= visited_.size()) return;
    ++place_;
    display(openId());
}

void HandbookPage::draw(const Page& page)
{
    const std::string_view id = page.id;
    if (stale_) {
        symptoms_->follow();
        harvest_->follow();
    }
    stale_ = false;
    const bool asked = id == symptomsId || id == harvestId;
    shown_->setCurrentWidget(id == symptomsId ? static_cast<QWidget*>(symptoms_) : asked ? static_cast<QWidget*>(harvest_) : view_);
    fit();
    if (!asked) view_->showPage(page, facts());
    const QStringList wanted = words_->text().simplified().split(u' ', Qt::SkipEmptyParts);
    if (!asked && !wanted.isEmpty()) view_->showWord(wanted.front());
}

void HandbookPage::display(const QString& id, bool now)
{
    const Page* page = pageWithId(id.toStdString());
    if (!page) return;
    if (isVisible() || now) draw(*page);
    else stale_ = true;
    back_->setEnabled(place_ > 0);
    on_->setEnabled(place_ + 1 < visited_.size());
    filling_ = true;
    for (int i = 0; i < list_->count(); ++i) {
        if (list_->item(i)->data(idRole).toString() == id) list_->setCurrentRow(i);
    }
    filling_ = false;
}

void HandbookPage::openSymptoms(const QString& stack)
{
    open(QString::fromLatin1(symptomsId));
    if (!stack.isEmpty()) symptoms_->chooseStack(stack);
    symptoms_->setFocus();
    symptoms_->showChoice();
}

void HandbookPage::openHarvest(const QString& stack)
{
    open(QString::fromLatin1(harvestId));
    if (!stack.isEmpty()) harvest_->chooseStack(stack);
    harvest_->setFocus();
}

void HandbookPage::refreshNow() { display(openId(), true); }

void HandbookPage::fit()
{
    const bool beside = width() >= theme_.px(besideAtLeast);
    auto* side = findChild<QWidget*>(QStringLiteral("handbookSide"));
    sides_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    side->setFixedWidth(beside ? theme_.px(230) : QWIDGETSIZE_MAX);
    side->setMinimumWidth(beside ? theme_.px(230) : 0);
    // What answers needs the room for its questions: of the list above it one row is left.
    const int above = shown_->currentWidget() == view_ ? std::max(theme_.px(110), height() / 4) : words_->sizeHint().height() + theme_.px(44);
    side->setMaximumHeight(beside ? QWIDGETSIZE_MAX : above);
    tellLine();
}

void HandbookPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fit();
    if (stale_) display(openId());
}

void HandbookPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void HandbookPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LocaleChange && event->type() != QEvent::LanguageChange) return;
    fillList();
    display(openId());
}

}
