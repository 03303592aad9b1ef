#include "ui/journal/picture_strip.h"

#include "ui/common/panels.h"
#include "ui/common/picture_within.h"

#include <QPointer>

namespace tierloam::journal_page {

namespace {

constexpr int side = 72; ///< px of a thumbnail

}

PictureStrip::PictureStrip(household::Household& household, QWidget* parent) : QListWidget{parent}, household_{household}
{
    setObjectName(QStringLiteral("pictureStrip"));
    setViewMode(QListView::IconMode);
    setFlow(QListView::LeftToRight);
    setWrapping(false);
    setMovement(QListView::Static);
    setIconSize({side, side});
    setFixedHeight(side + fontMetrics().height() + 34);
    setFrameShape(QFrame::NoFrame);
    ui::setAccess(this, tr("Pictures of the chosen entry"), tr("Enter shows them in full"));
    hide();
    connect(this, &QListWidget::itemActivated, this, [this] { Q_EMIT wanted(static_cast<qint64>(entry_)); });
    connect(this, &QListWidget::itemClicked, this, [this] { Q_EMIT wanted(static_cast<qint64>(entry_)); });
    connect(&household_, &household::Household::changed, this, [this](const household::Changes& changes) {
        if (changes.photos || changes.fromOutside) look();
    });
}

void PictureStrip::follow(journal::EntryId entry)
{
    if (entry == entry_) return;
    entry_ = entry;
    clear();
    hide();
    look();
}

void PictureStrip::look()
{
    if (entry_ <= journal::EntryId::none) return;
    household_.listPhotos(entry_, [strip = QPointer{this}, asked = entry_](const std::vector<store::Photo>& photos) {
        if (!strip || strip->entry_ != asked) return;
        strip->clear();
        int number = 1;
        for (const store::Photo& photo : photos) strip->addItem(new QListWidgetItem{QIcon{ui::pictureWithin(photo.bytes, {side, side}, strip->devicePixelRatioF())}, tr("Picture %1").arg(number++)});
        strip->setVisible(!photos.empty());
    });
}

}
