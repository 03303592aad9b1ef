// Names of materials in the real window: each is read whole, on one line or on several.
#include "tests/ui/language_fixture.h"

#include "tests/support/pictures.h"
#include "ui/common/field_edit.h"
#include "ui/common/material_field.h"
#include "ui/materials/materials_model.h"
#include "ui/materials/materials_page.h"
#include "ui/materials/mix_bench.h"

#include <QAbstractItemView>
#include <QLineEdit>
#include <QStyle>
#include <QStyleOptionViewItem>
#include <QTextLayout>

namespace tierloam::window {

namespace {

using materials_page::MaterialsModel;

/// What the style leaves of a cell for its words, when it paints them.
QSize roomForWords(const QTableView& table, const QModelIndex& index)
{
    QStyleOptionViewItem cell;
    cell.initFrom(&table);
    cell.widget = &table;
    cell.font = table.font();
    cell.index = index;
    cell.text = index.data().toString();
    cell.features = QStyleOptionViewItem::HasDisplay | QStyleOptionViewItem::WrapText;
    cell.showDecorationSelected = true; // all the room, not what the words take of it
    cell.rect = QRect{0, 0, table.columnWidth(index.column()), table.rowHeight(index.row())};
    const int margin = table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, &cell, &table) + 1;
    return table.style()->subElementRect(QStyle::SE_ItemViewItemText, &cell, &table).adjusted(margin, 0, -margin, 0).size();
}

QStringList cutNames(const QTableView& table)
{
    QStringList cut;
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        const QModelIndex index = table.model()->index(row, MaterialsModel::name);
        const QSize room = roomForWords(table, index);
        QTextLayout text{index.data().toString(), table.font()};
        QTextOption breaks;
        breaks.setWrapMode(QTextOption::WordWrap);
        text.setTextOption(breaks);
        text.beginLayout();
        double height = 0, width = 0;
        for (QTextLine line = text.createLine(); line.isValid(); line = text.createLine()) {
            line.setLineWidth(room.width());
            height += line.height();
            width = std::max(width, line.naturalTextWidth());
        }
        text.endLayout();
        if (height > room.height() + 0.5 || width > room.width() + 0.5)
            cut << QStringLiteral("%1: %2 x %3 in %4 x %5").arg(index.data().toString()).arg(width).arg(height).arg(room.width()).arg(room.height());
    }
    return cut;
}

struct Case {
    const char* language;
    int scale, width, height;
};

class WindowNames : public LanguageTest, public testing::WithParamInterface<Case> {
protected:
    QTableView& table() { return *desk().materials()->table(); }
    void open(const Case& at)
    {
        ASSERT_NO_FATAL_FAILURE(speak(at.language, at.scale));
        openSample({at.width, at.height});
        desk().showPage(Desk::Page::materials);
        settled();
    }
};

}

TEST_P(WindowNames, AreReadWhole)
{
    const Case& at = GetParam();
    ASSERT_NO_FATAL_FAILURE(open(at));
    ASSERT_GT(table().model()->rowCount(), 50);
    tests::keepPicture(window_->grab().toImage(), QStringLiteral("names-%1-%2-%3").arg(QString::fromLatin1(at.language)).arg(at.scale).arg(at.width));
    EXPECT_TRUE(cutNames(table()).isEmpty()) << cutNames(table()).join(u'\n').toStdString();
    const int moisture = table().columnViewportPosition(MaterialsModel::moisture) + table().columnWidth(MaterialsModel::moisture);
    if (at.scale == 100) {
        EXPECT_LE(moisture, table().viewport()->width()) << "welcome, C:N and moisture are in sight beside them";
    }
    for (int row = 0; row < table().model()->rowCount(); ++row) {
        const QModelIndex index = table().model()->index(row, MaterialsModel::name);
        ASSERT_EQ(index.data(Qt::ToolTipRole).toString(), index.data().toString());
    }
    const auto* field = desk().materials()->mix()->findChildren<ui::MaterialField*>().front();
    ASSERT_FALSE(field->edit()->text().isEmpty());
    EXPECT_LE(field->edit()->fontMetrics().horizontalAdvance(field->edit()->text()) + 8, field->edit()->width()) << "and in the mix";
    // A list that is narrow in its form opens as wide as its names.
    auto* choices = field->findChild<ui::FieldCombo*>();
    ASSERT_NE(choices, nullptr);
    choices->showPopup();
    EXPECT_TRUE(QTest::qWaitFor([&] { return choices->view()->viewport()->width() >= choices->view()->sizeHintForColumn(0); }, 2000)) << choices->view()->viewport()->width() << " of " << choices->view()->sizeHintForColumn(0);
    choices->hidePopup();
    // In another order each row has the height of its own name; and so when some are found.
    table().sortByColumn(MaterialsModel::name, Qt::DescendingOrder);
    settled();
    EXPECT_TRUE(cutNames(table()).isEmpty()) << cutNames(table()).join(u'\n').toStdString();
    auto* find = desk().materials()->findChild<QLineEdit*>(QStringLiteral("findMaterial"));
    find->setText(QStringLiteral("("));
    settled();
    EXPECT_TRUE(cutNames(table()).isEmpty()) << cutNames(table()).join(u'\n').toStdString();
    find->clear();
    settled();
    // What must be found.
    table().setColumnWidth(MaterialsModel::name, 60);
    EXPECT_FALSE(cutNames(table()).isEmpty());
    table().setColumnWidth(MaterialsModel::name, 600);
    for (int row = 0; row < table().model()->rowCount(); ++row) table().setRowHeight(row, 40);
    EXPECT_TRUE(cutNames(table()).isEmpty() || at.scale > 100);
    table().setRowHeight(0, 12);
    EXPECT_FALSE(cutNames(table()).isEmpty());
}

INSTANTIATE_TEST_SUITE_P(Windows, WindowNames,
    testing::Values(Case{"en", 100, 1280, 800}, Case{"de", 100, 1280, 800}, Case{"es", 100, 1280, 800}, Case{"fr", 100, 1280, 800}, Case{"en", 100, 1024, 700},
                    Case{"de", 100, 1024, 700}, Case{"de", 200, 1280, 800}, Case{"fr", 200, 1280, 800}, Case{"es", 200, 1280, 800}, Case{"de", 200, 1024, 700}),
    [](const auto& each) { return std::string{each.param.language} + std::to_string(each.param.scale) + "at" + std::to_string(each.param.width); });

}
