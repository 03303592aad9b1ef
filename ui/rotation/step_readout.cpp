#include "ui/rotation/step_readout.h"

#include "ui/common/actions.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr int mostShare = 5;          ///< a fifth of the page's height …
constexpr int leastLines = 2;         ///< … but so many lines, however low it is

}

StepReadout::StepReadout(QWidget* parent)
    : Card{parent}, text_{ui::makeLabel({}, ui::TextRole::body, nullptr, true)}, pin_{ui::makeButton(tr("Keep this day"), ui::Tone::plain, this)},
      unpin_{ui::makeButton(ui::actionName(ui::ActionId::unpinHarvest), ui::Tone::plain, this)}, scroll_{new QScrollArea{this}}, row_{new QHBoxLayout}
{
    setObjectName(QStringLiteral("stepReadout"));
    ui::setAccess(this, tr("The chosen step"));
    text_->setObjectName(QStringLiteral("chosenStep"));
    text_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    pin_->setObjectName(QStringLiteral("pin"));
    unpin_->setObjectName(QStringLiteral("unpin"));
    ui::setAccess(pin_, tr("Keep the chosen harvest on its day"), tr("Enter does the same in the lanes"));
    ui::setAct(unpin_, ui::ActionId::unpinHarvest);
    unpin_->setToolTip(ui::withKeys(ui::actionName(ui::ActionId::unpinHarvest), unpin_));
    scroll_->setWidget(text_);
    for (QWidget* each : {static_cast<QWidget*>(text_), scroll_->viewport()}) each->setAutoFillBackground(false); // the card's own ground
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    ui::setAccess(scroll_, tr("The chosen step"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    row_->addWidget(scroll_, 1);
    row_->addWidget(pin_, 0, Qt::AlignTop);
    row_->addWidget(unpin_, 0, Qt::AlignTop);
    column()->addLayout(row_);
}

void StepReadout::setText(const QString& text)
{
    if (text_->text() == text) return;
    text_->setText(text);
    scroll_->ensureVisible(0, 0);
    fit(pageHeight_);
}

void StepReadout::fit(int pageHeight)
{
    pageHeight_ = pageHeight;
    row_->activate(); // buttons may have come or gone
    const int wide = std::max(scroll_->width(), 1);
    const int whole = text_->heightForWidth(wide);
    const int most = std::max(pageHeight / mostShare, leastLines * fontMetrics().lineSpacing());
    const bool scrolls = whole > most;
    scroll_->setVerticalScrollBarPolicy(scrolls ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(scrolls ? Qt::StrongFocus : Qt::NoFocus); // with the arrow keys
    scroll_->setFixedHeight(std::min(whole, most));
}

void StepReadout::resizeEvent(QResizeEvent* event)
{
    Card::resizeEvent(event);
    fit(pageHeight_);
}

/// A button beside the text came or went, or the letters are of another size.
bool StepReadout::event(QEvent* event)
{
    const bool answered = Card::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::FontChange) fit(pageHeight_);
    return answered;
}

}
