#include "ui/trends/trends_page.h"

#include "ui/common/flow_layout.h"
#include "ui/common/menu_letters.h"
#include "ui/common/panels.h"
#include "ui/common/toggle.h"
#include "ui/trends/line_key.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/stack_chips.h"
#include "ui/trends/trend_words.h"

#include <QAction>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

/// The buttons above the charts: what they do, which of them are lit, and where they stand.
namespace tierloam::trends {

namespace {

constexpr Range allRanges[] = {Range::days30, Range::days90, Range::year, Range::twoYears, Range::all};
constexpr ui::ActionId rangeActions[] = {ui::ActionId::range30, ui::ActionId::range90, ui::ActionId::rangeYear, ui::ActionId::range2Years,
                                         ui::ActionId::rangeAll};

constexpr double mostControls = 0.3; ///< of the page's height
constexpr double notch = 0.8;        ///< of a key or button that zooms
constexpr double stride = 0.2;       ///< of the days shown, of a key that moves along
constexpr int keyAbove = 5;           ///< at most one part of so many of what is seen

}

QPushButton* TrendsPage::toggle(ui::ActionId id) { return ui::addToggle(id, this, controls_); }

QPushButton* TrendsPage::press(ui::ActionId id)
{
    QPushButton* button = toggle(id);
    button->setCheckable(false);
    return button;
}

void TrendsPage::buildControls()
{
    new ui::FlowLayout{controls_, 8};
    for (std::size_t i = 0; i < std::size(allRanges); ++i) {
        QPushButton* button = toggle(rangeActions[i]);
        ui::setAccess(button, tr("Show %1").arg(rangeName(allRanges[i])));
        connect(button, &QPushButton::clicked, this, [this, i] { setRange(allRanges[i]); });
        ranges_.push_back(button);
    }
    togetherButton_ = toggle(ui::ActionId::chartsTogether);
    connect(togetherButton_, &QPushButton::clicked, this, [this](bool on) { setTogether(on); });
    tableButton_ = toggle(ui::ActionId::showTable);
    connect(tableButton_, &QPushButton::clicked, this, [this](bool on) { setTable(on); });
    sumButton_ = toggle(ui::ActionId::sumDrainage);
    connect(sumButton_, &QPushButton::clicked, this, [this](bool on) { setSums({on, sums_.yieldByYear}); });
    yearButton_ = toggle(ui::ActionId::yieldByYear);
    connect(yearButton_, &QPushButton::clicked, this, [this](bool on) { setSums({sums_.drainageAddedUp, on}); });
    changeButton_ = toggle(ui::ActionId::tryChange);
    connect(changeButton_, &QPushButton::clicked, this, [this](bool on) { openChange(on); });
    const auto about = [this] { return cursor_.value_or(view().from + std::chrono::days{daysBetween(view().from, view().until) / 2}); };
    connect(press(ui::ActionId::zoomIn), &QPushButton::clicked, this, [this, about] { zoom(notch, about()); });
    connect(press(ui::ActionId::zoomOut), &QPushButton::clicked, this, [this, about] { zoom(1 / notch, about()); });
    wholeButton_ = press(ui::ActionId::zoomWhole);
    connect(wholeButton_, &QPushButton::clicked, this, &TrendsPage::showWhole);
    for (const auto& [id, share] : {std::pair{ui::ActionId::moveEarlier, -stride}, std::pair{ui::ActionId::moveLater, stride}}) {
        QAction* action = ui::makeAction(id, this);
        addAction(action);
        connect(action, &QAction::triggered, this, [this, by = share] { move(by); });
    }
    buildMenu();
    syncControls();
}

void TrendsPage::buildMenu()
{
    saveButton_ = ui::makeButton(tr("Save or print"), ui::Tone::plain, head_);
    saveButton_->setObjectName(QStringLiteral("saveTrends"));
    ui::setAccess(saveButton_, tr("Save or print"), tr("What the charts show now, as a picture, a drawing, pages or figures"));
    auto* menu = new QMenu{saveButton_};
    for (const auto& [id, kind] : {std::pair{ui::ActionId::savePng, "png"}, std::pair{ui::ActionId::saveSvg, "svg"}, std::pair{ui::ActionId::savePdf, "pdf"},
                                   std::pair{ui::ActionId::saveFigures, "csv"}}) {
        QAction* action = ui::makeAction(id, this);
        addAction(action);
        menu->addAction(action);
        connect(action, &QAction::triggered, this, [this, what = QString::fromLatin1(kind)] { if (!chips_->stacks().isEmpty()) Q_EMIT saveAsked(what); });
    }
    QAction* print = ui::makeAction(ui::ActionId::printCharts, this);
    addAction(print);
    menu->addAction(print);
    connect(print, &QAction::triggered, this, [this] { if (!chips_->stacks().isEmpty()) Q_EMIT printAsked(); });
    ui::keepLettersApart(menu);
    saveButton_->setMenu(menu);
    head_->addButton(saveButton_);
}

void TrendsPage::syncControls()
{
    syncZoom();
    togetherButton_->setChecked(together_);
    tableButton_->setChecked(table_);
    sumButton_->setChecked(sums_.drainageAddedUp);
    yearButton_->setChecked(sums_.yieldByYear);
}

/// A range is lit while all of it is shown.
void TrendsPage::syncZoom()
{
    for (std::size_t i = 0; i < ranges_.size(); ++i) ranges_[i]->setChecked(allRanges[i] == range_ && !days_.zoomed());
    wholeButton_->setEnabled(days_.zoomed());
}

/// Where large letters or a small window leave little room below them, the buttons scroll with the charts.
void TrendsPage::placeControls()
{
    const int room = width() - rows_->contentsMargins().left() - rows_->contentsMargins().right();
    const int taken = controls_->layout()->heightForWidth(room) + (chips_->isHidden() ? 0 : chips_->layout()->heightForWidth(room));
    const bool scroll = taken > height() * mostControls;
    if (scroll == controlsScroll_) return;
    controlsScroll_ = scroll;
    QWidget* const both[] = {controls_, chips_};
    for (int place = 0; place < 2; ++place) {
        (scroll ? rows_ : column_)->removeWidget(both[place]);
        const bool hidden = both[place]->isHidden();
        if (scroll) column_->insertWidget(place, both[place]);
        else rows_->insertWidget(1 + place, both[place]); // beneath the head
        both[place]->setHidden(hidden);
    }
}

/// What the signs mean is told before the first chart; beneath the last one where that would push the charts out of sight. Returns the height it takes above them.
int TrendsPage::placeKey()
{
    if (key_->isHidden()) return 0;
    const int height = key_->layout()->heightForWidth(std::max(1, scroll_->viewport()->width() - column_->contentsMargins().right()));
    const bool above = height <= scroll_->viewport()->height() / keyAbove;
    const int first = column_->indexOf(sections_.front()), at = column_->indexOf(key_);
    if (above != (at < first)) {
        column_->removeWidget(key_);
        column_->insertWidget(above ? column_->indexOf(sections_.front()) : column_->indexOf(sections_.back()) + 1, key_);
    }
    return above ? height + column_->spacing() : 0;
}

}
