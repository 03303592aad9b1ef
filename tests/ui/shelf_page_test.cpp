#include "tests/support/pictures.h"
#include "tests/support/sample_shelf.h"
#include "ui/common/fact_list.h"
#include "ui/forms/action_form.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/new_stack.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/shelf_page.h"
#include "ui/shelf/story_charts.h"
#include "ui/shelf/usual_acts.h"

#include <QAccessible>
#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSlider>
#include <QTemporaryDir>
#include <QUndoStack>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <mutex>
#include <thread>

using namespace tierloam;
using namespace tierloam::shelf;
using forms::FormKind;

namespace {

constexpr int patience = 20000;

/// The page on a real household file that holds the sample's journal, with the sample's estimates.
class ShelfPageTest : public testing::Test {
protected:
    void start(bool withJournal = true, bool withEstimates = true)
    {
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.reckon = [this, withJournal, withEstimates](const journal::Entries&, const reckoning::Options& options, std::stop_token stop) {
            {
                const std::lock_guard lock{askedLock_};
                askedFirst_ = options.shownFirst;
            }
            while (!withEstimates && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds{5});
            if (stop.stop_requested()) return std::shared_ptr<const reckoning::Reckoning>{};
            if (withJournal) return tests::sampleReckoning();
            auto nothing = std::make_shared<reckoning::Reckoning>();
            nothing->asOf = options.asOf;
            return std::shared_ptr<const reckoning::Reckoning>{std::move(nothing)};
        };
        auto opened = household::Household::open(folder_.filePath(QStringLiteral("mill.tierloam")), clock_, settings);
        ASSERT_TRUE(std::holds_alternative<std::unique_ptr<household::Household>>(opened));
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        if (withJournal) {
            journal::Entries entries = tests::sampleJournal();
            for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
            household_->recordAll(entries, QStringLiteral("Sample"));
            household_->finishWrites();
            EXPECT_TRUE(QTest::qWaitFor([&] { return household_->journal()->pending.empty(); }, patience));
        }
        if (withEstimates) {
            EXPECT_TRUE(QTest::qWaitFor([&] { return household_->reckoning() && household_->reckoningIsCurrent(); }, patience));
        }
        theme_.setMode(ui::ThemeMode::light);
        theme_.apply();
        page_ = std::make_unique<ShelfPage>(*household_, theme_);
        page_->resize(1000, 860);
        page_->show();
        page_->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(page_.get()));
    }
    void TearDown() override
    {
        page_.reset();
        household_.reset();
    }

    StackColumn* column(const char* name) const { return page_->board()->column(name); }
    std::size_t entries() const { return household_->journal()->entries.size(); }
    bool settled() const
    {
        return QTest::qWaitFor([&] { return household_->journal()->pending.empty() && household_->reckoningIsCurrent(); }, patience);
    }
    const journal::Entry& last(std::size_t back = 0) const
    {
        const journal::Entries& all = household_->journal()->entries;
        return all[all.size() - 1 - back];
    }
    void keep(const char* name) const
    {
        QApplication::processEvents(); // what was asked to lay itself out does so
        tests::keepPicture(page_->grab().toImage(), QString::fromLatin1(name));
    }
    template <class Content> Content* open() const { return qobject_cast<Content*>(page_->host()->content()); }
    void clickPart(const char* name, int part)
    {
        StackCanvas* canvas = column(name)->canvas();
        const auto& layout = canvas->layoutShown();
        const QPointF at = part == 0 ? layout.sump.center() : layout.trays[static_cast<std::size_t>(part) - 1].box.center();
        QTest::mouseClick(canvas, Qt::LeftButton, {}, at.toPoint());
    }

    /// Stacks that the last reckoning was asked to begin with.
    std::vector<std::string> askedFirst()
    {
        const std::lock_guard lock{askedLock_};
        return askedFirst_;
    }

    std::mutex askedLock_;
    std::vector<std::string> askedFirst_;
    QTemporaryDir folder_;
    std::shared_ptr<household::FixedClock> clock_ = std::make_shared<household::FixedClock>(tests::sampleToday());
    ui::Theme theme_;
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<ShelfPage> page_;
};

}

/// Menu, list of keys and panel of what can be recorded name each act alike.
TEST_F(ShelfPageTest, AnActHasOneNameInMenuAndPanel)
{
    int named = 0;
    for (const ui::ActionRow& row : ui::actionTable()) {
        const auto kind = formOf(row.id);
        if (row.where != ui::Where::shelf || !kind || isUsual(row.id)) continue;
        EXPECT_EQ(ui::actionName(row.id).toStdString(), forms::formName(*kind).toStdString()) << row.name;
        ++named;
    }
    EXPECT_GT(named, 20);
}

/// To the place that was clicked, not a week towards it; a press on the handle moves nothing.
TEST_F(ShelfPageTest, AClickOnTheDaySliderShowsTheDayUnderIt)
{
    start();
    QSlider* slider = page_->dateBar()->slider();
    const int span = slider->maximum();
    ASSERT_GT(span, 100);
    for (const double share : {0.25, 0.5, 0.9}) {
        QTest::mouseClick(slider, Qt::LeftButton, {}, {static_cast<int>(slider->width() * share), slider->height() / 2});
        EXPECT_NEAR(slider->value(), span * share, span * 0.03) << share;
        EXPECT_EQ(page_->shownDay(), page_->dateBar()->shown());
        const int value = slider->value();
        QTest::mouseClick(slider, Qt::LeftButton, {}, {static_cast<int>(slider->width() * share), slider->height() / 2});
        EXPECT_EQ(slider->value(), value);
    }
}

TEST_F(ShelfPageTest, ShowsTheHousehold)
{
    start();
    ASSERT_EQ(page_->board()->columns().size(), 3U);
    EXPECT_EQ(page_->findChild<QLabel*>(QStringLiteral("pageTitle"))->text(), household_->name());
    EXPECT_EQ(page_->currentStack(), QStringLiteral("Scullery"));
    EXPECT_TRUE(page_->model().stacks[0].picture.trays[0].strata);
    keep("page");
}

TEST_F(ShelfPageTest, IsUsableInTheSmallestWindowAndAtTheLargestText)
{
    start();
    for (const int percent : {100, 150, 200}) {
        theme_.setFontScale(percent);
        for (const QSize size : {QSize{880, 600}, QSize{1000, 860}, QSize{2300, 1340}}) {
            page_->resize(size);
            clickPart("Scullery", 1);
            keep(QStringLiteral("page-%1-%2").arg(percent).arg(size.width()).toLatin1().constData());
            const QWidget* inner = page_->host()->findChild<QScrollArea*>();
            EXPECT_GE(inner->height(), page_->host()->height() - 30) << percent << " " << size.width();
            ASSERT_TRUE(page_->openForm(QStringLiteral("Scullery"), FormKind::rotate, 1));
            const StackCanvas* canvas = column("Scullery")->canvas();
            EXPECT_EQ(canvas->selectedPart(), 1);
            const QWidget* view = page_->board()->parentWidget();
            EXPECT_TRUE(QTest::qWaitFor([&] { return view->rect().contains(canvas->mapTo(view, canvas->partRect(1).center())); }, 2000)) << "the tray it is about is seen, " << percent << " " << size.width();
            keep(QStringLiteral("page-form-%1-%2").arg(percent).arg(size.width()).toLatin1().constData());
            const auto* accept = page_->host()->findChild<QPushButton*>(QStringLiteral("accept"));
            ASSERT_TRUE(accept);
            if (percent == 100) {
                EXPECT_TRUE(page_->rect().contains(QRect{accept->mapTo(page_.get(), QPoint{}), accept->size()})) << size.width();
            }
            EXPECT_EQ(page_->size(), size) << "nothing forces it to be larger, " << percent << ": head " << page_->head()->minimumSizeHint().height() << " host " << page_->host()->height() << " dates " << page_->dateBar()->minimumSizeHint().height();
            // With large letters in a small window the days make room for the form's cautions.
            EXPECT_TRUE(page_->dateBar()->isVisible() || percent > 100) << percent << " " << size.width();
            EXPECT_EQ(page_->dateBar()->isVisible(), page_->head()->isVisible());
            if (page_->dateBar()->isVisible()) { EXPECT_GE(page_->dateBar()->geometry().top(), page_->host()->geometry().bottom()) << percent; }
            for (const QWidget* part : {static_cast<QWidget*>(page_->host()), static_cast<QWidget*>(page_->dateBar())})
                EXPECT_TRUE(!part->isVisible() || page_->rect().contains(part->geometry())) << percent << " " << size.width();
            EXPECT_GE(page_->board()->parentWidget()->height(), size.height() / 5) << "the shelf is still seen beside a form";
            page_->closePanel(true);
            EXPECT_TRUE(page_->dateBar()->isVisible() && page_->head()->isVisible()) << "back when the form is gone";
        }
    }
    theme_.setFontScale(100);
}

TEST_F(ShelfPageTest, OneClickFeedsWithItsCoverAndIsUndone)
{
    start();
    const std::size_t before = entries();
    QTest::mouseClick(column("Scullery")->feedButton(), Qt::LeftButton);
    ASSERT_EQ(entries(), before + 2) << "drawn at once";
    EXPECT_TRUE(page_->model().stacks[0].lastLine.contains(QStringLiteral("today"))) << page_->model().stacks[0].lastLine.toStdString();
    EXPECT_EQ(page_->model().stacks[0].flag, QStringLiteral("saving…"));
    ASSERT_TRUE(settled());
    EXPECT_TRUE(page_->model().stacks[0].flag.isEmpty()) << page_->model().stacks[0].flag.toStdString();
    EXPECT_TRUE(std::holds_alternative<journal::Feed>(last(1).action));
    EXPECT_EQ(std::get<journal::Feed>(last(1).action).food, household_->usual("Scullery").feed);
    EXPECT_TRUE(std::holds_alternative<journal::Cover>(last().action));
    EXPECT_EQ(last().date.day, tests::sampleToday());
    EXPECT_TRUE(household_->undoStack()->undoText().contains(QStringLiteral("Scullery")));
    household_->undoStack()->undo();
    EXPECT_TRUE(settled());
    EXPECT_EQ(entries(), before);
    EXPECT_FALSE(page_->model().stacks[0].lastLine.contains(QStringLiteral("today")));
}

TEST_F(ShelfPageTest, OneClickOrOneKeyCoversAndTheFormIsReached)
{
    start();
    const std::size_t before = entries();
    QTest::mouseClick(column("Scullery")->coverButton(), Qt::LeftButton);
    ASSERT_EQ(entries(), before + 1);
    ASSERT_TRUE(std::holds_alternative<journal::Cover>(last().action));
    EXPECT_EQ(last().stack, "Scullery");
    EXPECT_EQ(std::get<journal::Cover>(last().action).paper, household_->usual("Scullery").coverWithFeed) << "all of its covers come with feedings";
    EXPECT_TRUE(settled());
    EXPECT_TRUE(household_->undoStack()->undoText().contains(QStringLiteral("Scullery"))) << household_->undoStack()->undoText().toStdString();
    column("Cellar")->canvas()->setFocus();
    QTest::keyClick(column("Cellar")->canvas(), Qt::Key_C);
    ASSERT_EQ(entries(), before + 2);
    EXPECT_TRUE(std::holds_alternative<journal::Cover>(last().action));
    EXPECT_EQ(last().stack, "Cellar");
    QTest::keyClick(column("Cellar")->canvas(), Qt::Key_C, Qt::ShiftModifier);
    ASSERT_TRUE(open<forms::ActionForm>());
    EXPECT_EQ(open<forms::ActionForm>()->kind(), FormKind::cover);
    EXPECT_EQ(entries(), before + 2);
}

TEST_F(ShelfPageTest, OneClickWatersAndDrains)
{
    start();
    QTest::mouseClick(column("Lean-to")->waterButton(), Qt::LeftButton);
    EXPECT_TRUE(settled());
    EXPECT_TRUE(std::holds_alternative<journal::Water>(last().action));
    EXPECT_EQ(last().stack, "Lean-to");
    QTest::mouseClick(column("Cellar")->drainButton(), Qt::LeftButton);
    EXPECT_TRUE(settled());
    EXPECT_EQ(std::get<journal::Drain>(last().action).volume, household_->usual("Cellar").drain);
}

TEST_F(ShelfPageTest, KeysOfTheTableActOnTheChosenStack)
{
    start();
    const std::size_t before = entries();
    column("Cellar")->canvas()->setFocus();
    EXPECT_EQ(page_->currentStack(), QStringLiteral("Cellar"));
    QTest::keyClick(column("Cellar")->canvas(), Qt::Key_W);
    EXPECT_EQ(entries(), before + 1);
    EXPECT_EQ(last().stack, "Cellar");
    QTest::keyClick(column("Cellar")->canvas(), Qt::Key_F, Qt::ShiftModifier);
    ASSERT_TRUE(open<forms::ActionForm>());
    EXPECT_EQ(open<forms::ActionForm>()->kind(), FormKind::feed);
    EXPECT_EQ(open<forms::ActionForm>()->stack(), QStringLiteral("Cellar"));
    EXPECT_EQ(entries(), before + 1);
    EXPECT_TRUE(page_->action(ui::ActionId::loosen)->isEnabled());
    page_->chooseStack(QStringLiteral("Scullery"));
    EXPECT_FALSE(page_->action(ui::ActionId::loosen)->isEnabled()); // nothing is drying there
    EXPECT_FALSE(page_->action(ui::ActionId::addTray)->isEnabled()); // no spare tray
}

TEST_F(ShelfPageTest, AClickOpensWhatCanBeDoneThere)
{
    start();
    clickPart("Scullery", 1);
    ASSERT_TRUE(open<PartPanel>());
    EXPECT_EQ(open<PartPanel>()->part(), 1);
    EXPECT_EQ(column("Scullery")->canvas()->selectedPart(), 1);
    EXPECT_FALSE(column("Cellar")->canvas()->selectedPart());
    keep("page-tray");
    QPushButton* lift = nullptr;
    for (QPushButton* button : open<PartPanel>()->findChildren<QPushButton*>())
        if (button->property("kind") == static_cast<int>(FormKind::rotate)) lift = button;
    ASSERT_TRUE(lift);
    QTest::mouseClick(lift, Qt::LeftButton);
    ASSERT_TRUE(open<forms::ActionForm>());
    EXPECT_EQ(open<forms::ActionForm>()->kind(), FormKind::rotate);
    keep("page-form");
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : page_.get(), Qt::Key_Escape);
    EXPECT_FALSE(page_->host()->content());
    clickPart("Scullery", 0);
    ASSERT_TRUE(open<PartPanel>());
    QString said;
    for (const QLabel* label : open<PartPanel>()->findChildren<QLabel*>()) said += label->text();
    EXPECT_TRUE(said.contains(QStringLiteral("worms in the sump are normal"))) << said.toStdString();
    QTest::keyClick(open<PartPanel>(), Qt::Key_Escape);
    EXPECT_FALSE(page_->host()->isVisible());
    QTest::mouseClick(column("Lean-to")->moreButton(), Qt::LeftButton);
    ASSERT_TRUE(open<PartPanel>());
    EXPECT_FALSE(open<PartPanel>()->part());
}

TEST_F(ShelfPageTest, ATrayOpensWithItsStoryAndClosesBackToItself)
{
    start();
    StackCanvas* canvas = column("Scullery")->canvas();
    canvas->setFocus();
    canvas->setCurrentPart(1);
    QTest::keyClick(canvas, Qt::Key_Return);
    auto* panel = open<PartPanel>();
    ASSERT_TRUE(panel && panel->charts());
    EXPECT_FALSE(panel->isWindow()) << "in place";
    EXPECT_TRUE(panel->isAncestorOf(QApplication::focusWidget())) << "acts are at hand";
    const auto* facts = panel->findChild<ui::FactList*>(QStringLiteral("panelFacts"));
    ASSERT_TRUE(facts);
    for (const char* name : {"Bedded", "Feed-to-cast", "Ready", "Castings", "Worms in it", "Cocoons", "Weight, tray and all", "Put in, as it came"})
        EXPECT_FALSE(facts->value(QString::fromLatin1(name)).isEmpty()) << name;
    QApplication::processEvents();
    panel->grab();
    EXPECT_TRUE(panel->charts()->labelsFit());
    EXPECT_FALSE(QAccessible::queryAccessibleInterface(panel->charts())->text(QAccessible::Description).isEmpty());
    // What is seldom done comes up at a key, and the focus goes to it.
    auto* more = panel->findChild<QPushButton*>(QStringLiteral("moreActsButton"));
    ASSERT_TRUE(more && more->isVisible());
    more->setFocus();
    QTest::keyClick(more, Qt::Key_Space);
    EXPECT_FALSE(more->isVisible());
    const QWidget* rarer = QApplication::focusWidget();
    ASSERT_TRUE(rarer && rarer->property("kind").isValid());
    // New estimates make the panel anew; the focus stays with the act.
    const QVariant kind = rarer->property("kind");
    page_->refreshNow();
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_EQ(QApplication::focusWidget()->property("kind"), kind);
    EXPECT_TRUE(QApplication::focusWidget()->isVisible());
    keep("page-story");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(page_->host()->content());
    EXPECT_TRUE(canvas->hasFocus());
    EXPECT_EQ(canvas->currentPart(), 1);
    EXPECT_FALSE(canvas->selectedPart());
}

TEST_F(ShelfPageTest, TheSumpOpensWithItsDrainsAndTheCautionInSight)
{
    start();
    clickPart("Lean-to", 0);
    auto* panel = open<PartPanel>();
    ASSERT_TRUE(panel && panel->charts());
    QStringList acts;
    for (const QPushButton* button : panel->findChildren<QPushButton*>())
        if (button->property("kind").isValid() && button->isVisible()) acts << button->text();
    EXPECT_EQ(acts, (QStringList{QStringLiteral("Drain…"), QStringLiteral("Flush…")}));
    QApplication::processEvents();
    const auto* cautions = panel->findChild<forms::CautionCard*>();
    ASSERT_TRUE(cautions && cautions->isVisible());
    const QRect seen{cautions->mapTo(page_->host(), QPoint{}), cautions->size()};
    EXPECT_TRUE(page_->host()->rect().contains(seen)) << "without scrolling";
    keep("page-sump");
}

TEST_F(ShelfPageTest, PanelFollowsTheJournal)
{
    start();
    clickPart("Scullery", 3);
    ASSERT_TRUE(open<PartPanel>());
    page_->showDay(tests::sampleToday() - std::chrono::days{100}); // two trays stood
    EXPECT_FALSE(open<PartPanel>());
}

TEST_F(ShelfPageTest, AFormThatWasBegunStays)
{
    start();
    ASSERT_TRUE(page_->openForm(QStringLiteral("Scullery"), FormKind::note));
    auto* form = open<forms::ActionForm>();
    EXPECT_FALSE(form->touched());
    EXPECT_TRUE(form->isAncestorOf(QApplication::focusWidget())) << "typing can start at once";
    for (QWidget* field : form->findChildren<QWidget*>()) {
        if (form->touched() || !field->isVisible() || !(field->inherits("QLineEdit") || field->inherits("QPlainTextEdit") || field->inherits("QTextEdit"))) continue;
        QTest::keyClicks(field, QStringLiteral("seen"));
    }
    ASSERT_TRUE(form->touched());
    clickPart("Cellar", 1);
    EXPECT_EQ(open<forms::ActionForm>(), form);
    EXPECT_FALSE(page_->openForm(QStringLiteral("Cellar"), FormKind::feed));
    EXPECT_FALSE(page_->closePanel());
    EXPECT_TRUE(page_->closePanel(true));
}

TEST_F(ShelfPageTest, ThePastIsShownAndRecordsOnItsDay)
{
    start();
    QSlider* slider = page_->dateBar()->slider();
    EXPECT_TRUE(page_->dateBar()->isVisible());
    EXPECT_EQ(slider->value(), slider->maximum());
    EXPECT_FALSE(page_->dateBar()->todayButton()->isEnabled());
    slider->setFocus();
    QTest::keyClick(slider, Qt::Key_PageDown);
    EXPECT_EQ(page_->shownDay(), tests::sampleToday() - std::chrono::days{7});
    EXPECT_TRUE(page_->model().past());
    EXPECT_FALSE(column("Scullery")->feedButton()->isEnabled());
    keep("page-past");
    column("Scullery")->canvas()->setFocus();
    const std::size_t before = entries();
    QTest::keyClick(column("Scullery")->canvas(), Qt::Key_F); // asks first: it is not today
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(open<forms::ActionForm>());
    page_->closePanel(true);
    QTest::mouseClick(page_->dateBar()->todayButton(), Qt::LeftButton);
    EXPECT_EQ(page_->shownDay(), tests::sampleToday());
    EXPECT_FALSE(page_->model().past());
    page_->action(ui::ActionId::dayBack)->trigger();
    EXPECT_EQ(page_->shownDay(), tests::sampleToday() - std::chrono::days{1});
    page_->action(ui::ActionId::backToToday)->trigger();
    EXPECT_TRUE(page_->action(ui::ActionId::dayBack)->isEnabled());
    EXPECT_FALSE(page_->action(ui::ActionId::dayForward)->isEnabled());
}

TEST_F(ShelfPageTest, StacksAreMovedByKeysAndTheOrderIsKeptAndUndone)
{
    start();
    const auto order = [&] {
        QStringList names;
        for (const StackColumn* each : page_->board()->columns()) names << QString::fromStdString(each->key());
        return names;
    };
    ASSERT_EQ(order(), (QStringList{QStringLiteral("Scullery"), QStringLiteral("Lean-to"), QStringLiteral("Cellar")}));
    column("Scullery")->canvas()->setFocus();
    column("Scullery")->canvas()->setCurrentPart(2);
    EXPECT_FALSE(page_->action(ui::ActionId::moveStackLeft)->isEnabled()) << "it is the first";
    QTest::keyClick(column("Scullery")->canvas(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(order(), (QStringList{QStringLiteral("Lean-to"), QStringLiteral("Scullery"), QStringLiteral("Cellar")}));
    EXPECT_TRUE(column("Scullery")->canvas()->hasFocus()) << "the focus goes along";
    EXPECT_EQ(column("Scullery")->canvas()->currentPart(), 2);
    QTest::keyClick(column("Scullery")->canvas(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(order().last(), QStringLiteral("Scullery"));
    EXPECT_FALSE(page_->action(ui::ActionId::moveStackRight)->isEnabled());
    household_->finishWrites();
    ASSERT_TRUE(QTest::qWaitFor([&] { return household_->undoStack()->count() >= 2; }, patience));
    EXPECT_TRUE(household_->undoStack()->undoText().contains(QStringLiteral("Scullery")));
    household_->undoStack()->undo();
    EXPECT_TRUE(settled());
    EXPECT_EQ(order(), (QStringList{QStringLiteral("Lean-to"), QStringLiteral("Scullery"), QStringLiteral("Cellar")}));
    // It is kept in the file: a page made anew shows it.
    household_->finishWrites();
    ShelfPage again{*household_, theme_};
    again.refreshNow();
    EXPECT_EQ(again.board()->columns()[1]->key(), "Scullery");
}

TEST_F(ShelfPageTest, StacksAreDraggedToAnotherPlace)
{
    start();
    StackCanvas* canvas = column("Cellar")->canvas();
    const QRect first = column("Scullery")->geometry();
    const QPoint to = canvas->mapFrom(page_->board(), first.topLeft() + QPoint{8, 40});
    clickPart("Cellar", 1);
    ASSERT_TRUE(open<PartPanel>());
    canvas = column("Cellar")->canvas();
    QTest::mousePress(canvas, Qt::LeftButton, {}, QPoint{30, 20});
    QTest::mouseMove(canvas, QPoint{0, 20});
    QTest::mouseMove(canvas, to);
    QTest::mouseRelease(canvas, Qt::LeftButton, {}, to);
    EXPECT_EQ(page_->board()->columns()[0]->key(), "Cellar");
    EXPECT_EQ(column("Cellar")->canvas()->selectedPart(), 1) << "the mark of what is open goes along";
    EXPECT_FALSE(column("Scullery")->canvas()->selectedPart());
    keep("page-moved");
}

TEST_F(ShelfPageTest, TodayMovesOnWithTheClock)
{
    start();
    clock_->set(tests::sampleToday() + std::chrono::days{1});
    page_->refreshNow();
    EXPECT_EQ(page_->shownDay(), tests::sampleToday() + std::chrono::days{1});
    EXPECT_FALSE(page_->model().past());
}

TEST_F(ShelfPageTest, DrawsTheJournalBeforeTheEstimatesAreThere)
{
    start(true, false);
    ASSERT_EQ(page_->board()->columns().size(), 3U);
    EXPECT_TRUE(page_->model().estimating);
    const std::size_t before = entries();
    QTest::mouseClick(column("Scullery")->feedButton(), Qt::LeftButton);
    EXPECT_EQ(entries(), before + 2);
    keep("page-estimating");
}

/// What is in view is reckoned first: as first shown, after another size, and after scrolling.
TEST_F(ShelfPageTest, StacksInViewAreReckonedFirst)
{
    start();
    const auto inView = [&] {
        std::vector<std::string> keys;
        for (const StackColumn* each : page_->board()->columns())
            if (!each->visibleRegion().isEmpty()) keys.push_back(each->key());
        return keys;
    };
    const auto askedAfterFeeding = [&] {
        QApplication::processEvents();
        page_->hide(); // so that the entry itself does not make it look anew
        page_->recordUsual(QStringLiteral("Scullery"), FormKind::feed);
        EXPECT_TRUE(settled());
        const std::vector<std::string> asked = askedFirst();
        page_->show();
        QApplication::processEvents();
        return asked;
    };
    ASSERT_EQ(page_->board()->columns().size(), 3U);
    const std::vector<std::string> all = inView();
    EXPECT_EQ(all.size(), 3U);
    EXPECT_EQ(askedAfterFeeding(), all);

    page_->resize(page_->minimumSizeHint().width(), 860);
    QApplication::processEvents();
    const std::vector<std::string> narrow = inView();
    ASSERT_LT(narrow.size(), 3U);
    EXPECT_EQ(askedAfterFeeding(), narrow);

    const auto* area = qobject_cast<QScrollArea*>(page_->board()->parentWidget()->parentWidget());
    ASSERT_TRUE(area);
    QScrollBar* bar = area->horizontalScrollBar();
    bar->setValue(bar->maximum());
    QApplication::processEvents();
    const std::vector<std::string> scrolled = inView();
    ASSERT_NE(scrolled, narrow);
    EXPECT_EQ(askedAfterFeeding(), scrolled);
}

TEST_F(ShelfPageTest, AnEmptyHouseholdStartsWithItsFirstStack)
{
    start(false);
    EXPECT_TRUE(page_->board()->columns().empty());
    EXPECT_FALSE(page_->dateBar()->isVisible());
    EXPECT_TRUE(page_->currentStack().isEmpty());
    keep("page-empty");
    QTest::mouseClick(page_->board()->findChild<QPushButton*>(QStringLiteral("startStackButton")), Qt::LeftButton);
    EXPECT_TRUE(open<forms::NewStack>());
    QApplication::processEvents();
    EXPECT_EQ(page_->size(), (QSize{1000, 860}));
    keep("page-new");
}

TEST_F(ShelfPageTest, AWriteThatFailsIsTold)
{
    start();
    household_->recordAll({}, {}); // nothing to do: no ticket of ours may be confused by it
    ASSERT_TRUE(QFile::remove(household_->path()));
    household_->lookForForeignWrites();
    QTest::mouseClick(column("Scullery")->feedButton(), Qt::LeftButton);
    const auto told = [&] {
        const auto labels = page_->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) { return label->isVisible() && label->text().contains(QStringLiteral("not written down")); });
    };
    EXPECT_TRUE(QTest::qWaitFor(told, patience));
}
