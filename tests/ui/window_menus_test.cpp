#include "tests/ui/window_fixture.h"
#include "ui/common/actions.h"
#include "ui/shelf/form_host.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

/// Menus by keys: what is underlined in an open menu belongs to it, and the page below hears nothing of it.
namespace tierloam::window {

namespace {

QChar letterOf(const QString& text)
{
    const auto at = QString{text}.replace(QStringLiteral("&&"), QStringLiteral("  ")).indexOf(u'&');
    return at < 0 ? QChar{} : text[at + 1].toLower();
}

class WindowMenus : public WindowTest {
protected:
    QMenu* menuNamed(ui::ActionId holding)
    {
        for (QAction* each : window_->menuBar()->actions())
            if (each->menu() && each->menu()->actions().contains(window_->findChild<QAction*>(QString::fromLatin1(ui::actionRow(holding).name)))) return each->menu();
        return nullptr;
    }
    QMenu* open(ui::ActionId holding)
    {
        QMenu* menu = menuNamed(holding);
        if (!menu) return nullptr;
        QTest::keyClick(window_.get(), static_cast<Qt::Key>(letterOf(menu->title()).toUpper().unicode()), Qt::AltModifier);
        return QApplication::activePopupWidget() == menu ? menu : nullptr;
    }
    /// By keys, as people do; the bar itself lets go of the keys with the second Esc. The stack has the focus again.
    void closeMenus()
    {
        for (int most = 5; most > 0 && QApplication::activePopupWidget(); --most) QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Escape);
        EXPECT_FALSE(QApplication::activePopupWidget());
        if (qobject_cast<QMenuBar*>(QApplication::focusWidget())) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        settle();
        QApplication::setActiveWindow(window_.get());
        desk().shelf()->board()->columns()[0]->canvas()->setFocus(Qt::TabFocusReason);
    }
};

}

TEST_F(WindowMenus, LettersOfAnOpenMenuRecordNothing)
{
    openSample();
    press("Ctrl+1");
    desk().shelf()->board()->columns()[0]->canvas()->setFocus(Qt::TabFocusReason);
    const std::size_t before = entries();
    for (const Qt::Key key : {Qt::Key_F, Qt::Key_W, Qt::Key_D, Qt::Key_C, Qt::Key_X, Qt::Key_E, Qt::Key_O}) {
        QMenu* menu = open(ui::ActionId::fullScreen);
        ASSERT_TRUE(menu) << "the menu opens by its letter";
        bool has = false;
        for (QAction* each : menu->actions()) has = has || letterOf(each->text()) == QChar{key}.toLower();
        if (has) { // the entry itself is tried below
            closeMenus();
            continue;
        }
        QTest::keyClick(QApplication::activePopupWidget(), key);
        closeMenus();
        settle();
        EXPECT_FALSE(desk().shelf()->host()->content()) << "a form was opened by " << static_cast<char>(key);
    }
    settle();
    EXPECT_FALSE(household().stepUnderWay());
    EXPECT_EQ(entries(), before);
}

TEST_F(WindowMenus, TheLetterOfAnEntryFiresItAndNothingOfThePage)
{
    openSample();
    press("Ctrl+1");
    desk().shelf()->board()->columns()[0]->canvas()->setFocus(Qt::TabFocusReason);
    const std::size_t before = entries();
    int fired = 0, tried = 0;
    const QList<QAction*> entriesOfMenu = menuNamed(ui::ActionId::fullScreen)->actions();
    for (QAction* each : entriesOfMenu) {
        if (each == window_->action(ui::ActionId::doDue) || each == window_->action(ui::ActionId::notifyDue)) continue; // which record, and ask the desktop
        if (each->isSeparator() || each->menu() || !each->isEnabled() || each->text().isEmpty() || each->isChecked()) continue;
        ASSERT_TRUE(open(ui::ActionId::fullScreen));
        const QChar letter = letterOf(each->text());
        ASSERT_FALSE(letter.isNull());
        const auto heard = QObject::connect(each, &QAction::triggered, each, [&] { ++fired; });
        const bool full = window_->isFullScreen();
        QTest::keyClick(QApplication::activePopupWidget(), static_cast<Qt::Key>(letter.toUpper().unicode()));
        ++tried;
        QObject::disconnect(heard);
        EXPECT_EQ(fired, tried) << each->text().toStdString();
        closeMenus();
        settle();
        if (window_->isFullScreen() != full) press("F11");
        press("Ctrl+1");
    }
    EXPECT_GT(tried, 3);
    EXPECT_EQ(entries(), before) << "and nothing was recorded beside";
}

TEST_F(WindowMenus, LettersOfThePageWorkAgainOnceTheMenuIsClosed)
{
    openSample();
    press("Ctrl+1");
    desk().shelf()->board()->columns()[0]->canvas()->setFocus(Qt::TabFocusReason);
    const std::size_t before = entries();
    ASSERT_TRUE(open(ui::ActionId::fullScreen));
    closeMenus();
    press("F");
    EXPECT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
}

// What went well is told calmly and goes; what went wrong, or should be known, stays.
TEST_F(WindowMenus, WhatWentWellGoesByItself)
{
    openSample();
    window_->notices()->show(Notices::Kind::done, QStringLiteral("written"));
    window_->notices()->show(Notices::Kind::notice, QStringLiteral("to be known"));
    window_->notices()->show(Notices::Kind::failure, QStringLiteral("not done"));
    auto* calm = window_->notices()->findChild<QFrame*>(QStringLiteral("done"));
    auto* loud = window_->notices()->findChild<QFrame*>(QStringLiteral("notice"));
    ASSERT_TRUE(calm && loud);
    settled();
    EXPECT_NE(calm->grab().toImage().pixelColor(calm->width() / 2, 3), loud->grab().toImage().pixelColor(loud->width() / 2, 3)) << "the colour of warnings is theirs";
    EXPECT_TRUE(QTest::qWaitFor([this] { return !notices().contains(QStringLiteral("written")); }, 15000));
    EXPECT_TRUE(notices().contains(QStringLiteral("to be known")));
    EXPECT_TRUE(notices().contains(QStringLiteral("not done")));
}

TEST_F(WindowMenus, TheFirstPageLeavesAltToTheMenus)
{
    show();
    int buttons = 0;
    for (const auto* each : window_->findChildren<QPushButton*>()) {
        if (!each->isVisible()) continue;
        ++buttons;
        EXPECT_TRUE(letterOf(each->text()).isNull()) << each->text().toStdString();
    }
    EXPECT_GE(buttons, 4);
}

}
