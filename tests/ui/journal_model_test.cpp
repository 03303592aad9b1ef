#include "tests/support/sample_reckoning.h"
#include "ui/common/formats.h"
#include "ui/journal/entry_words.h"
#include "ui/journal/journal_filter.h"
#include "ui/journal/journal_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFont>
#include <QTest>

namespace tierloam::journal_page {

namespace {

std::shared_ptr<household::JournalView> viewOf(journal::Entries entries)
{
    auto view = std::make_shared<household::JournalView>();
    view->entries = std::move(entries);
    view->replay = journal::replay(view->entries);
    return view;
}

std::string plain(QString text)
{
    return text.replace(QChar{0xA0}, u' ').toStdString();
}

journal::Entry entryOf(journal::Action action)
{
    journal::Entry entry;
    entry.action = std::move(action);
    return entry;
}

}

TEST(JournalModel, KeepsTheRulesOfModelsWhileItsJournalChanges)
{
    JournalModel model;
    JournalFilter filter{&model};
    const QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
    const QAbstractItemModelTester proxyTester{&filter, QAbstractItemModelTester::FailureReportingMode::Fatal};
    EXPECT_EQ(model.rowCount(), 0);
    model.setJournal(viewOf(tests::sampleJournal()));
    EXPECT_EQ(model.rowCount(), static_cast<int>(tests::sampleJournal().size()));
    filter.setWords(QStringLiteral("fed"));
    filter.sort(JournalModel::stack, Qt::DescendingOrder);
    EXPECT_GT(filter.rowCount(), 0);
    model.setJournal(viewOf({}));
    EXPECT_EQ(filter.rowCount(), 0);
    model.setJournal(nullptr);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(JournalModel, RowsSayWhichTrayAndBatchTheEntryFellTo)
{
    const auto view = viewOf(tests::sampleJournal());
    JournalModel model;
    model.setJournal(view);
    int resolved = 0;
    for (const journal::StackHistory& stack : view->replay.stacks) {
        for (const journal::Step& step : stack.steps) {
            if (!step.slot || !step.batch || step.incoming) continue;
            const QString text = model.index(static_cast<int>(step.entry), JournalModel::tray).data().toString();
            EXPECT_EQ(text.toStdString(), "slot " + std::to_string(*step.slot) + " · tray " + std::to_string(stack.batch(*step.batch).tray) + " · batch " + std::to_string(*step.batch));
            ++resolved;
        }
    }
    EXPECT_GT(resolved, 50);
}

TEST(JournalModel, PendingRowsAreMarkedInWordsAndInType)
{
    const auto view = viewOf(tests::sampleJournal());
    view->pending = {view->entries.back().id};
    JournalModel model;
    model.setJournal(view);
    const int last = model.rowCount() - 1;
    EXPECT_TRUE(model.pendingAt(last));
    EXPECT_FALSE(model.pendingAt(last - 1));
    EXPECT_TRUE(model.index(last, JournalModel::when).data().toString().contains(QStringLiteral("being saved")));
    EXPECT_TRUE(model.index(last, 0).data(Qt::FontRole).value<QFont>().italic());
    EXPECT_FALSE(model.index(last - 1, 0).data(Qt::FontRole).isValid());
}

TEST(JournalFilter, EachConditionAloneAndAllTogether)
{
    journal::Entries entries = tests::sampleJournal();
    entries[entries.size() / 2].note = "smells of forest";
    const auto view = viewOf(entries);
    JournalModel model;
    model.setJournal(view);
    JournalFilter filter{&model};
    filter.setWords(QStringLiteral("Forest"));
    EXPECT_EQ(filter.rowCount(), 1) << "notes are searched too";
    filter.setWords({});
    const auto count = [&](auto matches) { return static_cast<int>(std::ranges::count_if(view->entries, matches)); };
    EXPECT_EQ(filter.rowCount(), model.rowCount());
    EXPECT_FALSE(filter.anySet());

    filter.setStack(QStringLiteral("Cellar"));
    EXPECT_EQ(filter.rowCount(), count([](const journal::Entry& entry) {
        const auto* move = std::get_if<journal::Move>(&entry.action);
        return entry.stack == "Cellar" || (move && move->to == "Cellar");
    }));
    filter.setAction(journal::Action{journal::Feed{}}.index());
    EXPECT_EQ(filter.rowCount(), count([](const journal::Entry& entry) { return entry.stack == "Cellar" && std::holds_alternative<journal::Feed>(entry.action); }));
    const Day since = tests::sampleToday() - std::chrono::days{30};
    filter.setSince(since);
    EXPECT_EQ(filter.rowCount(), count([&](const journal::Entry& entry) {
        return entry.stack == "Cellar" && std::holds_alternative<journal::Feed>(entry.action) && entry.date.day >= since;
    }));
    filter.setStack({});
    filter.setAction({});
    const Day first = view->entries[view->entries.size() - 5].date.day;
    filter.setSince(first);
    EXPECT_EQ(filter.rowCount(), count([&](const journal::Entry& entry) { return entry.date.day >= first; })) << "the first day is of the period";
    filter.setStack(QStringLiteral("Cellar"));
    filter.setAction(journal::Action{journal::Feed{}}.index());
    filter.setSince(since);
    EXPECT_TRUE(filter.anySet());
    filter.setWords(QStringLiteral("KITCHEN  cellar"));
    EXPECT_GT(filter.rowCount(), 0) << "words in any order and case";
    filter.setWords(QStringLiteral("kitchen scullery"));
    EXPECT_EQ(filter.rowCount(), 0) << "all words must be there";
}

TEST(JournalFilter, NewestFirstKeepsTheOrderOfTheDay)
{
    journal::Entries entries = tests::sampleJournal();
    JournalModel model;
    model.setJournal(viewOf(entries));
    JournalFilter filter{&model};
    filter.sort(JournalModel::when, Qt::DescendingOrder);
    for (int row = 0; row < filter.rowCount(); ++row) EXPECT_EQ(filter.mapToSource(filter.index(row, 0)).row(), model.rowCount() - 1 - row);
    filter.sort(JournalModel::stack, Qt::AscendingOrder);
    for (int row = 1; row < filter.rowCount(); ++row) {
        const QModelIndex above = filter.index(row - 1, JournalModel::stack), here = filter.index(row, JournalModel::stack);
        const int order = QString::localeAwareCompare(above.data().toString(), here.data().toString());
        EXPECT_LE(order, 0);
        EXPECT_TRUE(order < 0 || filter.mapToSource(above).row() < filter.mapToSource(here).row());
    }
}

TEST(EntryWords, EveryActionHasAWordOfItsOwn)
{
    QStringList words;
    for (std::size_t i = 0; i < std::variant_size_v<journal::Action>; ++i) {
        EXPECT_FALSE(actionWord(i).isEmpty()) << i;
        EXPECT_FALSE(words.contains(actionWord(i))) << actionWord(i).toStdString();
        words << actionWord(i);
    }
    EXPECT_TRUE(actionWord(std::variant_size_v<journal::Action>).isEmpty());
}

TEST(EntryWords, DetailsSayAllThatWasTypedAndNothingElse)
{
    journal::Feed feed;
    feed.food = {450, Unit::g};
    EXPECT_EQ(plain(detailWords(entryOf(feed))), "450 g kitchen mix");
    feed.side = journal::Side::left;
    feed.material = "coffee grounds";
    EXPECT_EQ(plain(detailWords(entryOf(feed))), "450 g coffee grounds, on the left");
    EXPECT_EQ(plain(detailWords(entryOf(journal::Cover{}))), "newspaper shredded, amount not noted");
    EXPECT_EQ(plain(detailWords(entryOf(journal::Cover{Amount{30, Unit::g}, "office paper shredded"}))), "30 g office paper shredded");
    ui::setMeasures(ui::Measures::us);
    EXPECT_EQ(plain(detailWords(entryOf(journal::Cover{}))), "newspaper shredded, amount not noted");
    ui::setMeasures(ui::Measures::metric);

    journal::Drain drain;
    EXPECT_EQ(plain(detailWords(entryOf(drain))), "");
    drain.volume = Amount{1.5, Unit::L};
    drain.emptied = false;
    drain.ecMilliSiemensPerCm = 2.1;
    drain.spigot = journal::Spigot::shut;
    EXPECT_EQ(plain(detailWords(entryOf(drain))), "1.5 L, not emptied, strength 2.10 mS/cm, spigot shut");

    journal::Check check;
    check.depth = centimetres(3);
    check.bits = Share::fromPercent(20);
    check.worms = journal::WormsSeen::many;
    EXPECT_EQ(plain(detailWords(entryOf(check))), "castings 3.0 cm deep, 20 % still recognisable, many worms");

    journal::Routine routine;
    routine.each = {0, Unit::L};
    EXPECT_EQ(plain(detailWords(entryOf(routine))), "water: no longer");

    journal::Harvest harvest;
    harvest.taken = {7, Unit::L};
    harvest.share = Share::fromPercent(60);
    EXPECT_EQ(plain(detailWords(entryOf(harvest))), "7 L, 60 % of the tray");

    journal::Move move;
    move.worms = {200, Unit::g};
    move.to = "Lean-to";
    EXPECT_EQ(plain(detailWords(entryOf(move))), "200 g to Lean-to");
}

}
