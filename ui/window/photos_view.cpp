#include "ui/window/photos_view.h"

#include "core/household/photo_file.h"
#include "ui/common/dates.h"
#include "ui/common/panels.h"
#include "ui/common/picture_within.h"
#include "ui/journal/entry_words.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::window {

PhotosView::PhotosView(household::Household& household, journal::EntryId entry, ui::Dialogs& dialogs, QWidget* parent)
    : ui::View{parent}, household_{household}, entry_{entry}, dialogs_{dialogs}
{
    setObjectName(QStringLiteral("photosView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Pictures"));
    const auto journal = household_.journal();
    const auto found = std::ranges::find(journal->entries, entry_, &journal::Entry::id);
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    const QString what = found == journal->entries.end()
        ? QString{}
        : tr("%1, %2: %3 %4").arg(ui::fullDay(found->date.day), QString::fromStdString(found->stack), journal_page::actionWord(found->action), journal_page::detailWords(*found));
    rows->addWidget(ui::makeLabel(what, ui::TextRole::title, this, true));
    line_ = ui::makeLabel(tr("Looking…"), ui::TextRole::body, this, true);
    line_->setObjectName(QStringLiteral("photosLine"));
    rows->addWidget(line_);
    auto* middle = new QHBoxLayout;
    thumbs_ = new QListWidget{this};
    thumbs_->setObjectName(QStringLiteral("photosList"));
    thumbs_->setIconSize({120, 120});
    thumbs_->setMaximumWidth(240);
    ui::setAccess(thumbs_, tr("Pictures of this entry"));
    picture_ = new QLabel{this};
    picture_->setAlignment(Qt::AlignCenter);
    picture_->setMinimumSize(320, 240);
    ui::setAccess(picture_, tr("The chosen picture"));
    middle->addWidget(thumbs_);
    middle->addWidget(picture_, 1);
    rows->addLayout(middle, 1);
    auto* buttons = new QDialogButtonBox{this};
    add_ = buttons->addButton(tr("&Add…"), QDialogButtonBox::ActionRole);
    add_->setObjectName(QStringLiteral("photoAdd"));
    remove_ = buttons->addButton(tr("&Take out"), QDialogButtonBox::ActionRole);
    remove_->setObjectName(QStringLiteral("photoRemove"));
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);
    connect(add_, &QPushButton::clicked, this, &PhotosView::add);
    connect(remove_, &QPushButton::clicked, this, &PhotosView::remove);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(thumbs_, &QListWidget::currentRowChanged, this, &PhotosView::showChosen);
    connect(&household_, &QObject::destroyed, this, &QDialog::close);
    connect(&household_, &household::Household::changed, this, [this](const household::Changes& changes) {
        if (changes.photos || changes.fromOutside) list();
    });
    connect(&household_, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (ticket == ticket_) line_->setText(why);
    });
    resize(760, 520);
    showChosen();
    list();
}

void PhotosView::list()
{
    household_.listPhotos(entry_, [view = QPointer{this}](const std::vector<store::Photo>& photos) {
        if (view) view->fill(photos);
    });
}

void PhotosView::fill(const std::vector<store::Photo>& photos)
{
    photos_ = photos;
    thumbs_->clear();
    int number = 1;
    for (const auto& photo : photos_) thumbs_->addItem(new QListWidgetItem{QIcon{ui::pictureWithin(photo.bytes, thumbs_->iconSize(), devicePixelRatioF())}, tr("Picture %1").arg(number++)});
    line_->setText(photos_.empty() ? tr("No pictures yet. One that is added is kept at most 1600 pixels wide or high, without the place where it was taken.")
                                   : tr("%n picture(s), kept in the household file.", nullptr, static_cast<int>(photos_.size())));
    if (!photos_.empty()) thumbs_->setCurrentRow(static_cast<int>(photos_.size()) - 1);
    showChosen();
}

void PhotosView::showChosen()
{
    const int row = thumbs_->currentRow();
    const bool any = row >= 0 && row < static_cast<int>(photos_.size());
    add_->setEnabled(!household_.readOnly());
    remove_->setEnabled(any && !household_.readOnly());
    picture_->setPixmap(any ? ui::pictureWithin(photos_[static_cast<std::size_t>(row)].bytes, {480, 400}, devicePixelRatioF()) : QPixmap{});
}

void PhotosView::add()
{
    const QString pictures = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
    const QString path = dialogs_.fileToOpen(this, tr("Add a picture"), pictures.isEmpty() ? QDir::homePath() : pictures, tr("Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)"));
    if (path.isEmpty()) return;
    auto read = household::readPhoto(path);
    if (const auto* why = std::get_if<QString>(&read)) {
        line_->setText(*why);
        return;
    }
    ticket_ = household_.addPhoto(entry_, std::get<store::Photo>(std::move(read)), tr("Add a picture"));
}

void PhotosView::remove()
{
    const int row = thumbs_->currentRow();
    if (row < 0 || row >= static_cast<int>(photos_.size())) return;
    ticket_ = household_.removePhoto(photos_[static_cast<std::size_t>(row)], tr("Take out a picture"));
}

}
