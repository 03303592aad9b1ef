#include "ui/common/field_edit.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/drawing/type.h"

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QEvent>
#include <QProxyStyle>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>

#include <set>

namespace tierloam::ui {

namespace {

class ThemeTest : public testing::Test {
protected:
    void TearDown() override
    {
        Theme plain;
        plain.setMode(ThemeMode::light);
        plain.apply();
        qApp->setStyleSheet({});
        QApplication::setFont(font_);
    }

private:
    QFont font_ = QApplication::font();
};

}

TEST_F(ThemeTest, AppliesPaletteAndTextSizeToTheApplication)
{
    Theme theme;
    QSignalSpy changed{&theme, &Theme::changed};
    const double body = QApplication::font().pointSizeF();
    theme.setMode(ThemeMode::dark);
    theme.setFontScale(150);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::dark().ground);
    EXPECT_EQ(QApplication::palette().color(QPalette::WindowText), drawing::Palette::dark().ink);
    EXPECT_NEAR(QApplication::font().pointSizeF(), body * 1.5, 0.01);
    EXPECT_EQ(theme.px(10), 15);
}

TEST_F(ThemeTest, WhatIsPaintedAndWhatIsSetHaveTheSameThreeSizes)
{
    Theme theme;
    theme.setMode(ThemeMode::light);
    for (const int scale : {100, 150}) {
        theme.setFontScale(scale);
        const drawing::Type painted = drawing::Type::from(theme.font(TextSize::body));
        EXPECT_NEAR(painted.title.pointSizeF(), theme.font(TextSize::title).pointSizeF(), 0.01);
        EXPECT_NEAR(painted.small.pointSizeF(), theme.font(TextSize::small).pointSizeF(), 0.01);
        std::set<QString> sizes;
        for (auto at = QRegularExpression{QStringLiteral("font-size: ([0-9.]+pt)")}.globalMatch(qApp->styleSheet()); at.hasNext();) sizes.insert(at.next().captured(1));
        EXPECT_EQ(sizes.size(), 2U) << "beside the body's";
    }
}

/// The paddings of the style sheet stand around the lines of a list: what could all be in sight is.
TEST_F(ThemeTest, AListThatOpensShowsAllItsLines)
{
    Theme theme;
    theme.setMode(ThemeMode::light);
    for (const int scale : {100, 150}) {
        theme.setFontScale(scale);
        theme.apply();
        QWidget window;
        window.resize(500, 300);
        FieldCombo list{&window};
        for (int i = 0; i < 10; ++i) list.addItem(QStringLiteral("one of ten ways, %1").arg(i));
        list.setMaxVisibleItems(16);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        list.showPopup();
        QCoreApplication::processEvents();
        const QRect first = list.view()->visualRect(list.model()->index(0, 0)), last = list.view()->visualRect(list.model()->index(9, 0));
        EXPECT_GE(first.top(), 0) << scale;
        EXPECT_LT(last.bottom(), list.view()->viewport()->height()) << scale;
        list.hidePopup();
    }
}

TEST_F(ThemeTest, FollowsTheSystemWhileItIsAskedFor)
{
    bool dark = false;
    Theme theme;
    theme.setSystemReader([&dark] { return dark; });
    theme.apply();
    QSignalSpy changed{&theme, &Theme::changed};
    const auto systemChanges = [&](bool to, QEvent::Type how) {
        dark = to;
        QEvent event{how};
        QCoreApplication::sendEvent(qApp, &event);
        QCoreApplication::processEvents();
    };
    systemChanges(true, QEvent::ApplicationPaletteChange);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::dark().ground);
    systemChanges(false, QEvent::ThemeChange);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::light().ground);
    systemChanges(false, QEvent::ThemeChange);
    EXPECT_EQ(changed.count(), 2) << "nothing new was said";
    theme.setMode(ThemeMode::light);
    systemChanges(true, QEvent::ApplicationPaletteChange);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::light().ground) << "light was asked for";
    theme.setMode(ThemeMode::system);
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::dark().ground) << "what was said meanwhile is known";
}

TEST_F(ThemeTest, WhatThePlatformPutsInItsPlaceDoesNotStay)
{
    Theme theme;
    theme.setMode(ThemeMode::light);
    QPalette strange;
    strange.setColor(QPalette::Window, Qt::magenta);
    QApplication::setPalette(strange);
    QCoreApplication::processEvents();
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::light().ground);
}

/// A desktop on which less motion was asked for.
class Still final : public QProxyStyle {
public:
    Still() : QProxyStyle{QStringLiteral("Fusion")} {}
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* returned) const override
    {
        return hint == SH_Widget_Animation_Duration ? 0 : QProxyStyle::styleHint(hint, option, widget, returned);
    }
};

TEST_F(ThemeTest, NothingMovesWhereTheDesktopAsksForLessMotion)
{
    Theme theme;
    theme.apply();
    ASSERT_TRUE(theme.moves());
    QApplication::setStyle(new Still);
    EXPECT_FALSE(theme.moves());
    theme.apply();
    EXPECT_TRUE(theme.moves());
    theme.setLessMotion(true);
    EXPECT_FALSE(theme.moves()) << "nor where it is asked for here";
}

TEST_F(ThemeTest, ScaleIsHeldToItsRange)
{
    Theme theme;
    theme.setFontScale(500);
    EXPECT_EQ(theme.fontScale(), 200);
    theme.setFontScale(10);
    EXPECT_EQ(theme.fontScale(), 100);
}

TEST_F(ThemeTest, IsRememberedAndNonsenseIsNot)
{
    const auto settings = passingSettings();
    Theme theme;
    theme.setMode(ThemeMode::dark);
    theme.setFontScale(175);
    theme.remember(*settings);
    Theme later;
    later.restore(*settings);
    EXPECT_EQ(later.mode(), ThemeMode::dark);
    EXPECT_EQ(later.fontScale(), 175);
    settings->setValue(QStringLiteral("window/theme"), QStringLiteral("plaid"));
    settings->setValue(QStringLiteral("window/fontScale"), 9000);
    Theme last;
    last.restore(*settings);
    EXPECT_EQ(last.mode(), ThemeMode::system);
    EXPECT_EQ(last.fontScale(), 100);
}

TEST_F(ThemeTest, SheetHasNoUnknownNamesAndGrowsButItsHairlinesDoNot)
{
    const QString small = styleSheetFor(drawing::Palette::light(), 10, 1.0);
    const QString large = styleSheetFor(drawing::Palette::light(), 20, 2.0);
    EXPECT_FALSE(small.contains(u'@')) << small.mid(small.indexOf(u'@'), 40).toStdString();
    EXPECT_FALSE(QRegularExpression{QStringLiteral("[0-9]hair")}.match(small).hasMatch());
    EXPECT_TRUE(small.contains(QStringLiteral("border-radius: 8px")));
    EXPECT_TRUE(large.contains(QStringLiteral("border-radius: 16px")));
    EXPECT_TRUE(large.contains(QStringLiteral("border: 1px solid")));
    // No colour was cut by a shorter name that it begins with: "@mossSoft" is not "#466630Soft".
    EXPECT_FALSE(QRegularExpression{QStringLiteral("#[0-9a-f]{6}[A-Za-z0-9]")}.match(small).hasMatch());
}

}
