// The journal in the real window, by keys alone where a person would use them.
#include "tests/ui/window_fixture.h"

#include "ui/forms/action_form.h"
#include "ui/journal/entry_series.h"
#include "ui/journal/journal_model.h"
#include "ui/journal/picture_strip.h"
#include "ui/window/photos_view.h"

#include <QComboBox>
#include <QComboBox>
#include <QCompleter>
#include <QImage>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>

#include <algorithm>

namespace tierloam::window {

namespace {

class WindowJournal : public WindowTest {
protected:
    void openJournal()
    {
        openSample();
        press("Ctrl+4");
        settle();
        ASSERT_TRUE(table()->hasFocus());
    }
    QTableView* table() { return desk().journal()->table(); }
    int rows() { return table()->model()->rowCount(); }
    QString cell(int row, int column) { return table()->model()->index(row, column).data().toString(); }
    const journal::Entry& entry(journal::EntryId id)
    {
        const auto& all = household().journal()->entries;
        return *std::ranges::find(all, id, &journal::Entry::id);
    }
    QWidget* focus() { return QApplication::focusWidget(); }
    /// From field to field until the one of that name has the focus.
    void tabTo(const char* name)
    {
        for (int steps = 0; steps < 80 && focus()->objectName() != QLatin1StringView{name}; ++steps) QTest::keyClick(focus(), Qt::Key_Tab);
        ASSERT_EQ(focus()->objectName(), QString::fromLatin1(name));
    }
    /// Chooses the item with that text in a list that has the focus, as one types its beginning.
    void chooseByTyping(const QString& text)
    {
        auto* box = qobject_cast<QComboBox*>(focus());
        ASSERT_NE(box, nullptr);
        const int wanted = box->findText(text);
        ASSERT_GE(wanted, 0) << text.toStdString();
        while (box->currentIndex() != wanted) QTest::keyClick(box, box->currentIndex() < wanted ? Qt::Key_Down : Qt::Key_Up);
    }
    journal_page::EntrySeries* series()
    {
        for (auto* each : window_->findChildren<journal_page::EntrySeries*>())
            if (each->isVisible()) return each;
        return nullptr;
    }
};

}

TEST_F(WindowJournal, FiltersByStackActionAndPeriodAreSetByKeysAndClearedByOne)
{
    openJournal();
    const int all = rows();
    press("Ctrl+F");
    tabTo("stackFilter");
    chooseByTyping(QStringLiteral("Cellar"));
    const int ofStack = rows();
    ASSERT_GT(ofStack, 0);
    EXPECT_EQ(ofStack, static_cast<int>(std::ranges::count(household().journal()->entries, std::string{"Cellar"}, &journal::Entry::stack)));
    tabTo("actionFilter");
    chooseByTyping(QStringLiteral("Fed"));
    const int feeds = rows();
    EXPECT_EQ(feeds, static_cast<int>(std::ranges::count_if(household().journal()->entries, [](const journal::Entry& each) { return each.stack == "Cellar" && std::holds_alternative<journal::Feed>(each.action); })));
    EXPECT_LT(feeds, ofStack);
    tabTo("periodFilter");
    chooseByTyping(QStringLiteral("Last 30 days"));
    const Day since = tests::sampleToday() - std::chrono::days{30};
    EXPECT_EQ(rows(), static_cast<int>(std::ranges::count_if(household().journal()->entries, [&](const journal::Entry& each) {
        return each.stack == "Cellar" && std::holds_alternative<journal::Feed>(each.action) && each.date.day >= since;
    })));
    EXPECT_LT(rows(), feeds);
    press("Esc");
    EXPECT_EQ(rows(), all);
    EXPECT_TRUE(table()->hasFocus());
}

TEST_F(WindowJournal, SeveralAreChangedTogetherAndOneUndoTakesAllBack)
{
    openJournal();
    press("Ctrl+F");
    QTest::keyClicks(focus(), QStringLiteral("cellar fed"));
    press("Return");
    ASSERT_TRUE(table()->hasFocus());
    QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
    QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
    const auto ids = desk().journal()->chosen();
    ASSERT_EQ(ids.size(), 3u);
    std::vector<journal::Entry> before;
    for (const auto id : ids) before.push_back(entry(id));
    press("Shift+F2");
    auto* view = window_->findChild<QDialog*>(QStringLiteral("bulkView"));
    ASSERT_NE(view, nullptr);
    QApplication::setActiveWindow(view);
    ASSERT_TRUE(QTest::qWaitForWindowActive(view));
    tabTo("bulkField");
    chooseByTyping(QStringLiteral("Note"));
    tabTo("bulkAfter");
    QTest::keySequence(focus(), QKeySequence::SelectAll);
    QTest::keyClicks(focus(), QStringLiteral("from the garden"));
    auto* change = view->findChild<QPushButton*>(QStringLiteral("bulkChange"));
    ASSERT_TRUE(change->isEnabled());
    const QString listed = view->findChild<QPlainTextEdit*>()->toPlainText();
    EXPECT_EQ(listed.count(QStringLiteral("→ from the garden")), 3) << "what will change is shown before: " << listed.toStdString();
    tabTo("bulkChange");
    QTest::keyClick(focus(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().journal()->pending.empty() && std::ranges::all_of(ids, [&](journal::EntryId id) { return entry(id).note == "from the garden"; }); }, patience));
    for (std::size_t i = 0; i < ids.size(); ++i) EXPECT_EQ(entry(ids[i]).action, before[i].action) << "nothing else was changed";
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().undoStack()->canUndo() && !window_->findChild<QDialog*>(QStringLiteral("bulkView")); }, patience));
    QApplication::setActiveWindow(window_.get());
    press("Ctrl+Z");
    EXPECT_TRUE(QTest::qWaitFor([&] { return std::ranges::equal(ids, before, [&](journal::EntryId id, const journal::Entry& was) { return entry(id).note == was.note; }); }, patience));
}

TEST_F(WindowJournal, OneMoreLikeItAndSeveralInARowFromTheKeyboardAlone)
{
    openJournal();
    press("Ctrl+F");
    QTest::keyClicks(focus(), QStringLiteral("scullery fed"));
    press("Return");
    const journal::Entry like = entry(desk().journal()->chosen().front());
    const std::size_t before = entries();
    press("Ctrl+J");
    settle();
    ASSERT_TRUE(series() && series()->isAncestorOf(focus()));
    press("Return");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty() && table()->hasFocus(); }, patience));
    const auto& now = household().journal()->entries;
    EXPECT_TRUE(std::any_of(now.begin() + static_cast<std::ptrdiff_t>(before), now.end(), [&](const journal::Entry& each) {
        return each.action == like.action && each.stack == like.stack && each.date.day == tests::sampleToday() && each.id != like.id;
    }));
    const std::size_t after = entries();
    press("Ins");
    settle();
    for (int round = 1; round <= 2; ++round) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return series() && focus() && series()->isAncestorOf(focus()); }, patience));
        QTest::keySequence(focus(), QKeySequence::SelectAll);
        QTest::keyClicks(focus(), QString::number(200 + round));
        press("Return");
        ASSERT_TRUE(QTest::qWaitFor([&] { return series() && series()->recordedSoFar() == round && household().journal()->pending.empty(); }, patience));
        settle();
    }
    press("Esc");
    EXPECT_TRUE(QTest::qWaitFor([&] { return table()->hasFocus(); }, patience));
    EXPECT_GE(entries(), after + 2);
    for (const double amount : {201.0, 202.0})
        EXPECT_TRUE(std::ranges::any_of(household().journal()->entries, [&](const journal::Entry& each) {
            const auto* feed = std::get_if<journal::Feed>(&each.action);
            return feed && feed->food.value == amount;
        })) << amount;
}

TEST_F(WindowJournal, NotesOfBeforeAreOfferedWhileOneTypes)
{
    openJournal();
    journal::Entry noted;
    noted.date.day = tests::sampleToday();
    noted.stack = "Scullery";
    noted.action = journal::Note{};
    noted.note = "Coffee grounds from next door";
    const std::size_t before = entries();
    household().record(noted, QStringLiteral("note"));
    ASSERT_TRUE(written(before + 1));
    press("Ctrl+1");
    desk().shelf()->chooseStack(QStringLiteral("Scullery"));
    desk().shelf()->board()->columns()[0]->canvas()->setFocus();
    press("N");
    settle();
    auto* line = qobject_cast<QLineEdit*>(focus());
    ASSERT_NE(line, nullptr) << "the note is what the form is for";
    ASSERT_NE(line->completer(), nullptr);
    QTest::keyClicks(line, QStringLiteral("coffee gr"));
    QWidget* list = line->completer()->popup();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->isVisible(); }, patience));
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(line->text(), QStringLiteral("Coffee grounds from next door"));
    EXPECT_EQ(entries(), before + 1) << "taking what is offered records nothing yet";
    press("Return");
    ASSERT_TRUE(written(before + 2));
    EXPECT_EQ(household().journal()->entries.back().note, "Coffee grounds from next door");
}

TEST_F(WindowJournal, PicturesStandBelowTheTableAndOpenByEnter)
{
    openJournal();
    QImage image{800, 500, QImage::Format_RGB32};
    image.fill(Qt::darkGreen);
    ASSERT_TRUE(image.save(path(QStringLiteral("tray.png"))));
    press("Home");
    QTest::keyClick(table(), Qt::Key_Down);
    ASSERT_EQ(desk().journal()->chosen().size(), 1u);
    auto* strip = window_->findChild<journal_page::PictureStrip*>();
    ASSERT_FALSE(strip->isVisible());
    press("F3");
    auto* view = window_->findChild<PhotosView*>();
    ASSERT_NE(view, nullptr);
    answers_.files = {path(QStringLiteral("tray.png"))};
    click(button("photoAdd", view));
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip->isVisible() && strip->count() == 1; }, patience));
    view->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::setActiveWindow(window_.get());
    table()->setFocus();
    tabTo("pictureStrip");
    QTest::keyClick(focus(), Qt::Key_Right);
    QTest::keyClick(focus(), Qt::Key_Return);
    EXPECT_NE(window_->findChild<PhotosView*>(), nullptr);
}

TEST_F(WindowJournal, ColumnsAreChosenByKeysAndKept)
{
    openJournal();
    ASSERT_FALSE(table()->isColumnHidden(journal_page::JournalModel::stack));
    press("Alt+C");
    QMenu* menu = desk().journal()->columnsMenu();
    ASSERT_TRUE(menu->isVisible());
    while (!menu->activeAction() || menu->activeAction()->objectName() != QLatin1StringView{"stack"}) QTest::keyClick(menu, Qt::Key_Down);
    QTest::keyClick(menu, Qt::Key_Return);
    EXPECT_TRUE(table()->isColumnHidden(journal_page::JournalModel::stack));
    const QString file = household().path();
    make();
    ASSERT_TRUE(window_->openFile(file));
    show();
    press("Ctrl+4");
    EXPECT_TRUE(table()->isColumnHidden(journal_page::JournalModel::stack)) << "kept for another day";
}

}
