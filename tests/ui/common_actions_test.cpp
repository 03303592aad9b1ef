#include "ui/common/actions.h"

#include <gtest/gtest.h>

#include <QAction>

#include <set>

namespace tierloam::ui {

TEST(Actions, EveryActionHasTextKeyNameAndPlace)
{
    std::set<QString> names;
    for (const ActionRow& row : actionTable()) {
        SCOPED_TRACE(row.name);
        EXPECT_FALSE(actionText(row.id).isEmpty());
        EXPECT_FALSE(actionName(row.id).contains(u'&'));
        ASSERT_FALSE(actionKeys(row.id).isEmpty());
        for (const QKeySequence& key : actionKeys(row.id)) {
            EXPECT_FALSE(key.isEmpty()) << row.keys;
            for (int i = 0; i < key.count(); ++i) EXPECT_NE(key[static_cast<uint>(i)].key(), Qt::Key_unknown) << row.keys;
        }
        EXPECT_FALSE(whereText(row.where).isEmpty());
        EXPECT_TRUE(names.insert(QString::fromLatin1(row.name)).second) << "twice";
    }
}

TEST(Actions, TableIsInTheOrderOfTheIds)
{
    int next = 0;
    for (const ActionRow& row : actionTable()) EXPECT_EQ(static_cast<int>(row.id), next++) << row.name;
}

TEST(Actions, NoTwoAnswerOneKeyInOnePlace)
{
    for (const auto& [a, b] : keyConflicts(actionTable())) ADD_FAILURE() << actionRow(a).name << " and " << actionRow(b).name;
}

TEST(Actions, PlantedConflictIsFound)
{
    const auto table = actionTable();
    std::vector<ActionRow> rows{table.begin(), table.end()};
    rows[static_cast<std::size_t>(ActionId::find)].keys = "Ctrl+4"; // a page's key against one of the window
    const auto found = keyConflicts(rows);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found.front(), (std::pair{ActionId::pageJournal, ActionId::find}));
}

TEST(Actions, TwoPagesMayUseTheSameKey)
{
    const ActionRow rows[] = {{ActionId::feed, Where::shelf, "a", "a", "F"}, {ActionId::find, Where::journal, "b", "b", "F"}};
    EXPECT_TRUE(keyConflicts(rows).empty());
}

TEST(Actions, MadeActionCarriesTheRow)
{
    QObject parent;
    const QAction* action = makeAction(ActionId::redo, &parent);
    EXPECT_EQ(action->objectName(), QStringLiteral("redo"));
    EXPECT_EQ(action->shortcuts(), (QList<QKeySequence>{QKeySequence{QStringLiteral("Ctrl+Shift+Z")}, QKeySequence{QStringLiteral("Ctrl+Y")}}));
    EXPECT_TRUE(action->toolTip().contains(QStringLiteral("Ctrl+Shift+Z")));
}

}
