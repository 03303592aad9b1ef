#include "ui/common/file_dialog.h"

#include <QAbstractFileIconProvider>
#include <QApplication>
#include <QDir>
#include <QHeaderView>
#include <QMimeDatabase>
#include <QScreen>
#include <QSplitter>
#include <QStyle>
#include <QTreeView>

namespace tierloam::ui {

namespace {

constexpr int wide = 104, high = 26, places = 20, name = 32; ///< letters, lines, letters for the places beside the list, letters for names

/// Asked from a thread of Qt's, so everything that belongs to the window is made before.
class KindsByName final : public QAbstractFileIconProvider {
public:
    KindsByName() : folder_{QApplication::style()->standardIcon(QStyle::SP_DirIcon)}, file_{QApplication::style()->standardIcon(QStyle::SP_FileIcon)} {}
    QIcon icon(IconType type) const override { return type == Folder ? folder_ : QAbstractFileIconProvider::icon(type); }
    QIcon icon(const QFileInfo& info) const override { return info.isDir() ? folder_ : file_; }
    QString type(const QFileInfo& info) const override { return QMimeDatabase{}.mimeTypeForFile(info, QMimeDatabase::MatchExtension).comment(); }

private:
    QIcon folder_, file_;
};

}

FileDialog::FileDialog(QWidget* parent, const QString& title, const QString& folder, const QString& filter)
    : QFileDialog{parent, title, QDir::rootPath(), filter} // not yet there where the files are: it begins to look before it can be told how
{
    static KindsByName kinds;
    setIconProvider(&kinds);
    const QFileInfo begin{folder.isEmpty() ? QDir::currentPath() : folder};
    setDirectory(begin.isDir() ? begin.absoluteFilePath() : begin.absolutePath());
}

void fitFileDialog(QFileDialog& dialog)
{
    auto* list = dialog.findChild<QTreeView*>(QStringLiteral("treeView"));
    if (list == nullptr) return;
    const int letter = dialog.fontMetrics().averageCharWidth();
    dialog.resize(dialog.size().expandedTo(QSize{letter * wide, dialog.fontMetrics().height() * high}).boundedTo(dialog.screen()->availableSize()));
    if (auto* splitter = dialog.findChild<QSplitter*>(QStringLiteral("splitter"))) splitter->setSizes({letter * places, dialog.width() - letter * places});
    QHeaderView* columns = list->header();
    columns->setStretchLastSection(false);
    for (int column = 1; column < columns->count(); ++column) columns->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    columns->resizeSection(0, letter * name); // names first; for the rest it is scrolled where there is no room
}

}
