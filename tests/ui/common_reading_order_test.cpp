#include "ui/common/reading_order.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QRadioButton>
#include <QTest>

/// Where Tab goes next, from where things stand.
namespace tierloam::ui {

namespace {

struct Window final : QWidget {
    bool focusNextPrevChild(bool next) override { return focusInReadingOrder(this, next); }

    QPushButton* add(const char* name, QRect place, QWidget* parent = nullptr)
    {
        auto* button = new QPushButton{parent ? parent : this};
        button->setObjectName(QString::fromLatin1(name));
        button->setGeometry(place);
        return button;
    }
};

QString names(const QList<QWidget*>& widgets)
{
    QStringList all;
    for (const QWidget* each : widgets) all << each->objectName();
    return all.join(u' ');
}

}

TEST(ReadingOrder, GoesDownThePageAndAlongTheLineWhateverWasMadeFirst)
{
    Window window;
    window.resize(400, 300);
    auto* right = new QWidget{&window};
    right->setGeometry(200, 40, 200, 200);
    window.add("r2", {0, 100, 90, 30}, right);
    window.add("r1", {0, 0, 90, 30}, right);
    window.add("l2", {0, 190, 90, 30});
    window.add("l1", {0, 50, 90, 30});
    window.add("foot", {0, 260, 400, 30});
    window.add("tall", {150, 0, 30, 35});
    window.add("head", {0, 5, 100, 20});
    window.show();
    EXPECT_EQ(names(readingOrder(&window)), QStringLiteral("head tall l1 l2 r1 r2 foot"));
    window.setLayoutDirection(Qt::RightToLeft);
    EXPECT_EQ(names(readingOrder(&window)), QStringLiteral("tall head r1 r2 l1 l2 foot"));
}

TEST(ReadingOrder, LeavesOutWhatCannotBeWorkedAndOtherChoices)
{
    Window window;
    window.add("off", {0, 0, 90, 30})->setEnabled(false);
    window.add("hidden", {0, 40, 90, 30})->hide();
    window.add("on", {0, 80, 90, 30});
    auto* choices = new QWidget{&window};
    choices->setGeometry(0, 120, 90, 80);
    for (const auto& [name, y] : {std::pair{"one", 0}, {"two", 40}}) {
        auto* choice = new QRadioButton{choices};
        choice->setObjectName(QString::fromLatin1(name));
        choice->setGeometry(0, y, 90, 30);
        choice->setChecked(y > 0);
    }
    window.show();
    EXPECT_EQ(names(readingOrder(&window)), QStringLiteral("on two"));
}

TEST(ReadingOrder, WhatHidesHandsTheFocusToTheNext)
{
    Window window;
    window.add("one", {0, 0, 90, 30});
    QPushButton* two = window.add("two", {0, 40, 90, 30});
    window.add("three", {0, 80, 90, 30});
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    two->setFocus();
    two->hide();
    ASSERT_NE(window.focusWidget(), nullptr);
    EXPECT_EQ(window.focusWidget()->objectName(), QStringLiteral("three"));
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(window.focusWidget()->objectName(), QStringLiteral("one")) << "round its end";
    QTest::keyClick(window.focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(window.focusWidget()->objectName(), QStringLiteral("three"));
}

}
