#include "ui/common/file_dialog.h"

#include <QFileDialog>
#include <QHeaderView>
#include <QScreen>
#include <QSplitter>
#include <QTreeView>

namespace tierloam::ui {

namespace {

constexpr int wide = 104, high = 26, places = 20, name = 32; ///< letters, lines, letters for the places beside the list, letters for names

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
