// The journal's columns in the real window: what they hold is read whole wherever there is room for it, and the notes take the rest.
#include "tests/ui/language_fixture.h"

#include "ui/journal/column_room.h"
#include "ui/journal/journal_model.h"

#include <QMenu>
#include <QStyle>
#include <QStyleOptionViewItem>

namespace tierloam::window {

namespace {

using journal_page::JournalModel;

/// What the style leaves of a cell for its words, when it paints them.
int roomForWords(const QTableView& table, const QModelIndex& index)
{
    QStyleOptionViewItem cell;
    cell.initFrom(&table);
    cell.widget = &table;
    cell.font = table.font();
    cell.index = index;
    cell.text = index.data().toString();
    cell.features = QStyleOptionViewItem::HasDisplay;
    cell.rect = QRect{0, 0, table.columnWidth(index.column()), table.rowHeight(index.row())};
    const int margin = table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, &cell, &table) + 1;
    return table.style()->subElementRect(QStyle::SE_ItemViewItemText, &cell, &table).width() - 2 * margin;
}

/// Texts of rows that are painted cut; notes apart, which may be long.
QStringList cutCells(const QTableView& table)
{
    QStringList cut;
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        for (int column = 0; column < JournalModel::note; ++column) {
            const QModelIndex index = table.model()->index(row, column);
            const QString text = index.data().toString();
            if (!table.isColumnHidden(column) && table.fontMetrics().horizontalAdvance(text) > roomForWords(table, index)) cut << text;
        }
    }
    cut.removeDuplicates();
    return cut;
}

class WindowColumns : public LanguageTest {
protected:
    void open(const char* language, int scale, QSize size)
    {
        ASSERT_NO_FATAL_FAILURE(speak(language, scale));
        openSample(size);
        press("Ctrl+4");
        settled();
    }
    QTableView& table() { return *desk().journal()->table(); }
    /// From the left edge of the table to the right end of that column.
    int endOf(int column) { return table().columnViewportPosition(column) + table().columnWidth(column); }
};

struct Case {
    const char* language;
    int scale, width, height;
    bool roomForAll; ///< else the words of "How much" may be cut; never day, stack, act and tray
};

class WindowColumnsOf : public WindowColumns, public testing::WithParamInterface<Case> {};

}

TEST_P(WindowColumnsOf, AreAsWideAsWhatTheyHold)
{
    const Case& at = GetParam();
    open(at.language, at.scale, {at.width, at.height});
    ASSERT_GT(table().model()->rowCount(), 5);
    QStringList cut = cutCells(table());
    if (!at.roomForAll) {
        for (int row = 0; row < table().model()->rowCount(); ++row) cut.removeAll(table().model()->index(row, JournalModel::details).data().toString());
    }
    EXPECT_TRUE(cut.isEmpty()) << cut.join(u'\n').toStdString();
    EXPECT_LE(endOf(JournalModel::tray), table().viewport()->width()) << "the tray is in sight without scrolling";
    EXPECT_GE(endOf(JournalModel::note), table().viewport()->width()) << "the notes take the rest";
    if (at.roomForAll) {
        EXPECT_EQ(endOf(JournalModel::note), table().viewport()->width());
    }
}

INSTANTIATE_TEST_SUITE_P(Windows, WindowColumnsOf,
    testing::Values(Case{"en", 100, 1000, 640, false}, Case{"de", 100, 1000, 640, false}, Case{"en", 100, 1440, 900, true}, Case{"de", 100, 1440, 900, false},
                    Case{"en", 100, 2560, 1440, true}, Case{"de", 100, 2560, 1440, true}, Case{"en", 150, 1440, 900, false}, Case{"de", 150, 1440, 900, false},
                    Case{"en", 150, 2560, 1440, true}, Case{"de", 150, 2560, 1440, true}, Case{"de", 200, 2560, 1440, false}),
    [](const auto& each) { return std::string{each.param.language} + std::to_string(each.param.scale) + "at" + std::to_string(each.param.width); });

TEST_F(WindowColumns, ACutCellIsFound)
{
    open("en", 100, {2560, 1440});
    ASSERT_TRUE(cutCells(table()).isEmpty());
    table().setColumnWidth(JournalModel::tray, 60);
    EXPECT_FALSE(cutCells(table()).isEmpty());
}

TEST_F(WindowColumns, FollowTheWindowUntilPeopleDrawOneThemselves)
{
    open("de", 150, {2560, 1440});
    const int wide = table().columnWidth(JournalModel::details);
    window_->resize(1000, 640);
    settled();
    EXPECT_LT(table().columnWidth(JournalModel::details), wide);
    window_->resize(2560, 1440);
    settled();
    EXPECT_EQ(table().columnWidth(JournalModel::details), wide);
    table().setColumnWidth(JournalModel::details, wide + 111);
    window_->resize(1440, 900);
    settled();
    EXPECT_EQ(table().columnWidth(JournalModel::details), wide + 111);
    window_->resize(2560, 1440);
    settled();
    EXPECT_EQ(endOf(JournalModel::note), table().viewport()->width());
    table().setColumnHidden(JournalModel::note, true);
    desk().journal()->columnsMenu()->actions().at(JournalModel::stack)->toggle(); // people hide one: the last that is left takes the rest
    settled();
    EXPECT_EQ(endOf(JournalModel::tray), table().viewport()->width());
}

TEST(SharedRoom, GoesToWhereWordsAreCut)
{
    using journal_page::shareOut;
    const std::vector<journal_page::ColumnNeed> needs{{50, 50}, {40, 140}, {30, 80}};
    EXPECT_EQ(shareOut(needs, 500), (std::vector{50, 140, 80})) << "no wider than their words";
    EXPECT_EQ(shareOut(needs, 195), (std::vector{50, 90, 55})) << "half of what each lacks";
    EXPECT_EQ(shareOut(needs, 60), (std::vector{50, 40, 30})) << "never below the least";
    EXPECT_TRUE(shareOut({}, 60).empty());
}

}
