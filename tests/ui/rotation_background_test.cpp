// Questions beside the window: one after the other, and none of them can end the program.
#include "ui/rotation/background.h"

#include <gtest/gtest.h>

#include <QTest>

#include <new>

namespace tierloam::rotation {
namespace {

constexpr int patience = 20000;

TEST(Background, WhatThrowsIsNotAnsweredAndTheNextIs)
{
    Background background;
    bool answered = false;
    background.ask(QStringLiteral("plan"), [](std::stop_token) -> Background::Use { throw std::bad_alloc{}; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return !background.busy(); }, patience));
    background.ask(QStringLiteral("plan"), [&](std::stop_token) -> Background::Use { return [&] { answered = true; }; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return answered; }, patience));
    EXPECT_FALSE(background.busy());
}

}
}
