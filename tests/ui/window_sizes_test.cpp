// Every page of the demo household in its least and in a large window, with letters of 100 to 200 %, in English and in the longer words of German: no word
// has less room than it needs, and nothing ends beyond an edge that cannot be scrolled to.
#include "tests/ui/cut_words.h"
#include "tests/ui/language_fixture.h"

#include "tests/support/pictures.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"
#include "ui/window/demo.h"

namespace tierloam::window {

namespace {

struct Look {
    const char* language;
    int scale;
    QSize size;
};

class WindowSizes : public LanguageTest, public testing::WithParamInterface<Look> {
protected:
    void openDemo(const Look& look)
    {
        estimates_ = nullptr;
        today_ = *parseDay("2031-05-04");
        ASSERT_NO_FATAL_FAILURE(speak(look.language, look.scale));
        const Demo demo = freshDemo(today_);
        ASSERT_TRUE(window_->openFile(demo.path)) << demo.why.toStdString();
        show(look.size);
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
        settled();
    }
    QStringList cut() const { return tests::cutWords(*window_) + tests::cutContents(*window_) + cutNames(); }
    /// Of the lanes of the year, which are painted: names and notes with less room than they need.
    QStringList cutNames() const
    {
        QStringList cut;
        const auto* lanes = window_->findChild<rotation::LanesView*>();
        if (!lanes || !lanes->isVisible()) return cut;
        const auto type = drawing::Type::from(theme_->font(ui::TextSize::body));
        const drawing::LanesLayout layout = lanes->layoutNow();
        for (std::size_t i = 0; i < layout.heads.size(); ++i) {
            const drawing::Lane& lane = lanes->year().lanes.lanes[i];
            const QRectF& head = layout.heads[i];
            const double needed = drawing::wrappedHeight(type.strong, lane.name, head.width()) + drawing::wrappedHeight(type.small, lane.note, head.width());
            if (needed > head.height() || head.bottom() > lanes->height()) cut << QStringLiteral("beside a lane: ") + lane.name;
        }
        return cut;
    }
};

}

TEST_P(WindowSizes, CutNothingOnAnyPage)
{
    const Look& look = GetParam();
    ASSERT_NO_FATAL_FAILURE(openDemo(look));
    ASSERT_EQ(window_->size(), look.size) << "something in the window needs more room";
    using Page = Desk::Page;
    for (const auto& [page, name] : {std::pair{Page::shelf, "shelf"}, {Page::trends, "trends"}, {Page::rotation, "rotation"}, {Page::journal, "journal"}, {Page::materials, "materials"},
                                     {Page::handbook, "handbook"}, {Page::due, "due"}}) {
        if (page == Page::due && desk().dueBeside()) continue;
        desk().showPage(page);
        settled();
        QStringList found;
        (void)QTest::qWaitFor([&] { return (found = cut()).isEmpty(); }, 2000); // layouts settle in posted events
        tests::keepPicture(window_->grab().toImage(), QStringLiteral("sizes-%1-%2-%3-%4").arg(QString::fromLatin1(look.language)).arg(look.scale).arg(look.size.width()).arg(QString::fromLatin1(name)));
        EXPECT_TRUE(found.isEmpty()) << name << ": " << found.join(u'\n').toStdString();
        EXPECT_EQ(window_->size(), look.size) << name;
    }
}

INSTANTIATE_TEST_SUITE_P(Windows, WindowSizes,
    testing::Values(Look{"de", 100, {1000, 640}}, Look{"de", 150, {1000, 640}}, Look{"de", 200, {1000, 640}}, Look{"de", 100, {2560, 1440}}, Look{"de", 150, {2560, 1440}}, Look{"de", 200, {2560, 1440}},
                    Look{"en", 150, {1000, 640}}, Look{"en", 200, {1000, 640}}, Look{"fr", 200, {1000, 640}}, Look{"es", 200, {1000, 640}}),
    [](const auto& each) { return std::string{each.param.language} + std::to_string(each.param.scale) + "at" + std::to_string(each.param.size.width()); });

TEST_F(WindowSizes, PlantedWidthIsFound)
{
    ASSERT_NO_FATAL_FAILURE(openDemo({"en", 100, {1440, 900}}));
    desk().showPage(Desk::Page::rotation);
    settled();
    ASSERT_TRUE(cut().isEmpty()) << cut().join(u'\n').toStdString();
    desk().rotation()->findChild<QWidget*>(QStringLiteral("changeCard"))->setMinimumWidth(3000);
    settled();
    EXPECT_FALSE(tests::cutContents(*window_).isEmpty());
}

TEST_F(WindowSizes, PlantedCutNameIsFound)
{
    ASSERT_NO_FATAL_FAILURE(openDemo({"en", 200, {1000, 640}}));
    desk().showPage(Desk::Page::rotation);
    auto* lanes = desk().rotation()->findChild<rotation::LanesView*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return lanes->isVisible() && lanes->layoutNow().heads.size() == 3; }, patience));
    settled();
    ASSERT_TRUE(cutNames().isEmpty()) << cutNames().join(u'\n').toStdString();
    lanes->setFixedHeight(lanes->height() * 2 / 3);
    settled();
    EXPECT_FALSE(cutNames().isEmpty());
}

// The windows beside it, in the longest words and largest letters.
TEST_F(WindowSizes, WindowsBesideItCutNothing)
{
    for (const int scale : {100, 200}) {
        ASSERT_NO_FATAL_FAILURE(openDemo({"de", scale, {1000, 640}}));
        for (const auto& [keys, name] : {std::pair{"Ctrl+K", "shortcutsView"}, std::pair{"Shift+F1", "aboutView"}, std::pair{"Ctrl+P", "sheetView"}, std::pair{"Ctrl+Shift+P", "labelsView"}}) {
            press(keys);
            auto* view = window_->findChild<QWidget*>(QString::fromLatin1(name));
            ASSERT_NE(view, nullptr) << name;
            settled();
            tests::keepPicture(view->grab().toImage(), QStringLiteral("beside-%1-%2").arg(QString::fromLatin1(name)).arg(scale));
            const QStringList found = tests::cutWords(*view) + tests::cutContents(*view);
            EXPECT_TRUE(found.isEmpty()) << name << ' ' << scale << ": " << found.join(u'\n').toStdString();
            view->close();
            settled();
            QApplication::setActiveWindow(window_.get());
        }
    }
}

}
