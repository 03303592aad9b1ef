// A newcomer never sees an empty chart without a sentence that says what will appear there.
#include "tests/support/colour_science.h"
#include "tests/ui/window_fixture.h"

#include "ui/drawing/strip.h"
#include "ui/forms/new_stack.h"
#include "ui/forms/welcome.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/stack_column.h"
#include "ui/shelf/story_charts.h"
#include "ui/shelf/strips_view.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trend_sentence.h"
#include "ui/trends/trend_words.h"

#include <QImage>
#include <QLineEdit>

#include <vector>

namespace tierloam::window {
namespace {

/// Least share of a plot's columns that lines, bars or words take, or an eye sees nothing in it.
constexpr double leastShare = 0.1;

/// Or so many pixels: one bar of a long time.
constexpr int leastPixels = 150;

/// Share of the columns in which something stands off by 2 to 1 (bands, hatching and grid lines do not), rows that run from edge to edge left out;
/// 1 where there are enough of them.
double inkShare(const QImage& picture, const QRect& plot, const QColor& ground)
{
    const QRect seen = plot.intersected(picture.rect());
    int pixels = 0;
    std::vector<bool> inked(static_cast<std::size_t>(std::max(seen.width(), 1)));
    for (int y = seen.top(); y <= seen.bottom(); ++y) {
        std::vector<int> at;
        for (int x = seen.left(); x <= seen.right(); ++x)
            if (test::contrast(picture.pixelColor(x, y), ground) >= 2.0) at.push_back(x - seen.left());
        const int edge = seen.width() / 10;
        if (!at.empty() && at.front() < edge && at.back() > seen.width() - edge && 4 * static_cast<int>(at.size()) > seen.width()) continue;
        for (const int x : at) inked[static_cast<std::size_t>(x)] = true;
        pixels += static_cast<int>(at.size());
    }
    if (pixels >= leastPixels) return 1.0;
    return static_cast<double>(std::ranges::count(inked, true)) / static_cast<double>(inked.size());
}

class EmptyCharts : public WindowTest {
protected:
    const drawing::Palette& palette() const { return theme_->palette(); }

    /// Plots of small charts that stand below each other from the top of the widget, each as high as `height` with `gap` between.
    QStringList bareIn(QWidget* widget, int count, double height, double gap)
    {
        QStringList faults;
        const QImage picture = widget->grab().toImage();
        const drawing::Type type = drawing::Type::from(widget->font());
        for (int each = 0; each < count; ++each) {
            const QRectF room{1, each * (height + gap), widget->width() - 2.0, height};
            const double share = inkShare(picture, drawing::plotOf(room, type).toAlignedRect().adjusted(0, 0, 0, -3), palette().ground);
            if (share < leastShare) faults << QStringLiteral("%1, chart %2: ink in %3 of its columns").arg(widget->accessibleName()).arg(each + 1).arg(share);
        }
        return faults;
    }
    QStringList bareIn(shelf::StripsView* strips)
    {
        const drawing::Type type = drawing::Type::from(strips->font());
        return bareIn(strips, 3, std::floor((strips->height() - drawing::axisHeight(type)) / 3 - 4), 4);
    }
    QStringList bareIn(shelf::StoryCharts* story)
    {
        return bareIn(story, static_cast<int>(story->story().strips.size()) + 1, drawing::stripHeight(drawing::Type::from(story->font()), 1), 5);
    }

    static bool says(const QWidget* root, const QString& sentence)
    {
        return std::ranges::any_of(root->findChildren<QLabel*>(), [&](const QLabel* label) { return label->isVisible() && label->text().contains(sentence); });
    }

    /// Each measure has its chart with something in it and a sentence below, or the sentence of what will stand there.
    QStringList bareOnTrends()
    {
        QStringList faults;
        int measures = 0;
        for (auto* section : desk().trends()->findChildren<trends::MeasureSection*>()) {
            ++measures;
            const QString name = trends::measureName(section->measure());
            const bool reckoned = section->contents().reckoned;
            const QString willStand = trends::sentenceOf(section->measure(), {}, section->contents().period, reckoned);
            if (willStand.size() < 20) faults << name + QStringLiteral(": no sentence of what will stand there");
            bool any = false;
            for (auto* chart : section->findChildren<trends::TrendChart*>()) {
                if (!chart->isVisible()) continue;
                any = true;
                const auto drawn = [](const trends::Series& series) { return series.past.size() + series.ahead.size() > 2 || !series.bars.empty() || !series.yields.empty(); };
                if (std::ranges::none_of(chart->contents(), drawn)) faults << QStringLiteral("%1: a chart with nothing in it").arg(chart->accessibleName());
                const QString told = chart->accessibleDescription();
                if (told.size() < 20 || !says(section, told)) faults << QStringLiteral("%1: nothing is said below it").arg(chart->accessibleName());
            }
            for (auto* table : section->findChildren<QTableView*>())
                any = any || (table->isVisible() && table->model()->rowCount() > 0);
            if (!any && !says(section, willStand)) faults << name + QStringLiteral(": neither a chart nor a sentence");
        }
        if (measures != static_cast<int>(std::size(trends::allMeasures))) faults << QStringLiteral("%1 measures").arg(measures);
        return faults;
    }

    /// All pages, all kinds of charts and all ways in which they are put.
    QStringList walk()
    {
        QStringList faults;
        const auto at = [&](const QString& where, const QStringList& found) {
            for (const QString& each : found) faults << where % QStringLiteral(": ") % each;
        };
        desk().showPage(Desk::Page::shelf);
        settled();
        int charts = 0;
        for (auto* strips : desk().shelf()->findChildren<shelf::StripsView*>()) {
            if (!strips->isVisible()) continue;
            ++charts;
            at(QStringLiteral("shelf"), bareIn(strips));
        }
        for (const shelf::StackColumn* column : desk().shelf()->board()->columns()) {
            if (column->key().empty()) continue;
            for (const int part : {0, 1}) {
                if (!desk().shelf()->openPanel(QString::fromStdString(column->key()), part)) faults << QStringLiteral("part %1 does not open").arg(part);
                settled();
                auto* story = desk().shelf()->findChild<shelf::StoryCharts*>();
                if (!story) faults << QStringLiteral("part %1 has no charts").arg(part);
                else at(QStringLiteral("part %1").arg(part), bareIn(story));
                ++charts;
            }
            desk().shelf()->closePanel(true);
        }
        desk().showPage(Desk::Page::trends);
        for (const auto& [together, table, sums] : {std::tuple{false, false, trends::Sums{}}, {true, false, trends::Sums{}}, {false, true, trends::Sums{}}, {false, false, trends::Sums{true, true}}}) {
            desk().trends()->setTogether(together);
            desk().trends()->setTable(table);
            desk().trends()->setSums(sums);
            desk().trends()->refreshNow();
            settled();
            at(QStringLiteral("trends %1 %2 %3").arg(together).arg(table).arg(sums.drainageAddedUp), bareOnTrends());
        }
        desk().trends()->setSums({});
        desk().trends()->refreshNow();
        desk().showPage(Desk::Page::rotation);
        desk().rotation()->refreshNow();
        settled();
        const auto* lanes = desk().rotation()->lanes();
        if (lanes->isVisible()) {
            ++charts;
            const double share = inkShare(desk().rotation()->lanes()->grab().toImage(), lanes->rect().adjusted(lanes->width() / 5, 0, 0, 0), palette().panel);
            if (share < leastShare) faults << QStringLiteral("the year of trays is empty");
        } else if (!says(desk().rotation(), QStringLiteral("Once a stack stands"))) {
            faults << QStringLiteral("rotation says nothing");
        }
        charts_ = charts;
        return faults;
    }

    int charts_ = 0;                 ///< met in the last walk, those of trends left out
};

TEST_F(EmptyCharts, WordsStandAboveTheAxisWhereAFormLeavesLittleRoom)
{
    estimates_ = nullptr;
    make();
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("first.tierloam"))));
    show({1000, 640});
    journal::Entries entries;
    for (journal::Entry entry : tests::sampleJournal()) {
        if (!std::holds_alternative<journal::Setup>(entry.action) && !std::holds_alternative<journal::Bed>(entry.action) && !std::holds_alternative<journal::Stock>(entry.action)) continue;
        if (entry.stack != "Scullery" || (!entries.empty() && entries.size() > 2)) continue;
        entry.id = journal::EntryId::none;
        entry.date.day = today_;
        entries.push_back(entry);
    }
    ASSERT_GE(entries.size(), 2U);
    household().recordAll(entries, QStringLiteral("first day"));
    ASSERT_TRUE(written(static_cast<int>(entries.size())));
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoningIsCurrent() && household().reckoning(); }, patience));
    desk().showPage(Desk::Page::shelf);
    for (const bool open : {false, true}) {
        if (open) {
            ASSERT_TRUE(desk().shelf()->openForm(QStringLiteral("Scullery"), forms::FormKind::feed));
        }
        settled();
        auto* strips = desk().shelf()->board()->columns().front()->strips();
        ASSERT_FALSE(desk().shelf()->model().stacks.front().processing.nothing.isEmpty());
        const QImage picture = strips->grab().toImage();
        const drawing::Type type = drawing::Type::from(strips->font());
        const double height = std::floor((strips->height() - drawing::axisHeight(type)) / 3 - 4);
        EXPECT_TRUE(strips->labelsFit());
        for (int each = 0; each < 3; ++each) {
            const QRectF plot = drawing::plotOf({1, each * (height + 4), strips->width() - 2.0, height}, type);
            int above = 0, below = 0;
            for (int x = 3; x < strips->width() - 3; ++x) {
                for (int y = static_cast<int>(plot.top()) + 1; y < static_cast<int>(plot.bottom()) - 1; ++y) above += test::contrast(picture.pixelColor(x, y), palette().ground) >= 2.0;
                for (int y = static_cast<int>(plot.bottom()) + 2; y <= static_cast<int>(plot.bottom()) + 3; ++y) below += test::contrast(picture.pixelColor(x, y), palette().ground) >= 2.0;
            }
            EXPECT_GT(above, 100) << each << ": the words";
            EXPECT_LE(below, each < 2 ? 0 : 10) << each << (open ? ": words cross the axis with the form open" : ": words cross the axis"); // the ticks of the time axis
        }
    }
}

TEST_F(EmptyCharts, AHouseholdWithNothingSaysOnEachPageWhatWillStandThere)
{
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("none.tierloam"))));
    show();
    EXPECT_EQ(walk().join(u'\n').toStdString(), "");
    EXPECT_EQ(charts_, 0);
    desk().showPage(Desk::Page::shelf);
    settled();
    EXPECT_TRUE(says(desk().shelf(), QStringLiteral("Once a stack is started, it is drawn here")));
    EXPECT_TRUE(says(desk().due(), QStringLiteral("What is to be done stands here")));
    desk().showPage(Desk::Page::journal);
    settled();
    EXPECT_TRUE(says(desk().journal(), QStringLiteral("Here stands every feeding")));
    // What must be found: a sentence that is taken away.
    desk().showPage(Desk::Page::trends);
    settled();
    for (auto* section : desk().trends()->findChildren<trends::MeasureSection*>()) {
        for (auto* label : section->findChildren<QLabel*>()) label->setText({});
    }
    EXPECT_EQ(bareOnTrends().size(), static_cast<qsizetype>(std::size(trends::allMeasures)));
}

TEST_F(EmptyCharts, ANewStackWithItsFirstFeedingHasNoEmptyChartWithoutItsSentence)
{
    estimates_ = nullptr; // as the model makes them
    make();
    show();
    click(button("startFirstStack"));
    auto* form = qobject_cast<forms::NewStack*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Porch"));
    for (const auto& [name, text] : {std::pair{"Worms put in", "250"}, {"First feeding", "80"}}) {
        QLineEdit* field = nullptr;
        for (auto* each : form->findChildren<QLineEdit*>())
            if (each->isVisible() && each->accessibleName() == QLatin1StringView{name}) field = each;
        ASSERT_NE(field, nullptr) << name;
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_TRUE(written(4));
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoningIsCurrent(); }, patience));
    for (const QSize size : {QSize{1440, 900}, QSize{1000, 640}}) {
        window_->resize(size);
        settled();
        EXPECT_EQ(walk().join(u'\n').toStdString(), "") << size.width();
        EXPECT_EQ(charts_, 4) << "strips, sump, tray, year";
    }
    // What must be found: the same charts without what they say.
    desk().showPage(Desk::Page::shelf);
    settled();
    shelf::StackColumn* column = desk().shelf()->board()->columns().front();
    EXPECT_TRUE(bareIn(column->strips()).isEmpty());
    auto silent = std::make_shared<shelf::ShelfModel>();
    silent->axis = drawing::TimeAxis{today_ - std::chrono::days{shelf::stripDays}, today_, {}, {}};
    silent->stacks.push_back(column->canvas()->stack());
    silent->stacks.front().processing.nothing.clear();
    silent->stacks.front().drained.nothing.clear();
    silent->stacks.front().colony.nothing.clear();
    column->strips()->setStack(silent, 0);
    EXPECT_EQ(bareIn(column->strips()).size(), 3);
    ASSERT_TRUE(desk().shelf()->openPanel(QStringLiteral("Porch"), 0));
    settled();
    auto* story = desk().shelf()->findChild<shelf::StoryCharts*>();
    ASSERT_NE(story, nullptr);
    EXPECT_TRUE(bareIn(story).isEmpty());
    shelf::PartStory without = story->story();
    without.bars.nothing.clear();
    shelf::StoryCharts bare{*theme_, without};
    bare.resize(story->size());
    EXPECT_FALSE(bareIn(&bare).isEmpty());
}

}
}
