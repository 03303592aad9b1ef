// The due list: put off, brought back, and why.
#include "tests/ui/window_fixture.h"

namespace tierloam::window {
namespace {

class Due : public WindowTest {
protected:
    bool shows(int lines)
    {
        return QTest::qWaitFor([&] { return desk().due()->count() == lines; }, patience);
    }
    QPushButton* lineButton(const char* name) { return button(name, desk().due()); }
};

TEST_F(Due, ALineIsPutOffByOneClickAndBroughtBackByUndo)
{
    openSample();
    const int before = desk().due()->count();
    ASSERT_GE(before, 1);
    QPushButton* later = nullptr;
    for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueLater")))
        if (each->isVisible() && each->isEnabled() && later == nullptr) later = each;
    ASSERT_NE(later, nullptr);
    EXPECT_FALSE(later->accessibleName().isEmpty());
    click(later);
    EXPECT_TRUE(shows(before - 1));
    EXPECT_TRUE(button("dueAgain", desk().due())->text().contains(u'1'));
    household().finishWrites();
    household().undoStack()->undo();
    EXPECT_TRUE(shows(before));
}

TEST_F(Due, WhatWasPutOffIsShownAgainOnDemand)
{
    openSample();
    const int before = desk().due()->count();
    for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueLater")))
        if (each->isVisible() && each->isEnabled()) {
            click(each);
            break;
        }
    ASSERT_TRUE(shows(before - 1));
    click(button("dueAgain", desk().due()));
    EXPECT_TRUE(shows(before));
}

TEST_F(Due, WhySaysTheRuleAndWhatFollows)
{
    openSample();
    click(lineButton("dueWhy"));
    settle();
    auto* reasons = desk().due()->findChild<QLabel*>(QStringLiteral("dueReasons"));
    ASSERT_NE(reasons, nullptr);
    const auto code = desk().due()->lines().front().code;
    EXPECT_TRUE(reasons->text().contains(QString::fromStdString(advice::ruleOf(code))));
    EXPECT_TRUE(reasons->text().contains(QString::fromStdString(advice::ifLeft(code))));
}

TEST_F(Due, TheCalendarIsWrittenFromTheWindow)
{
    openSample();
    const QString ics = path(QStringLiteral("year.ics"));
    ASSERT_TRUE(window_->exportCalendar(ics));
    QFile file{ics};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_GE(bytes.count("BEGIN:VEVENT"), 1);
    EXPECT_FALSE(window_->exportCalendar(path(QStringLiteral("no/such/folder.ics"))));
}

}
}
