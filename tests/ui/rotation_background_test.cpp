// Questions beside the window: one after the other, and none of them can end the program.
#include "ui/rotation/background.h"

#include <gtest/gtest.h>

#include <QTest>

#include <new>
#include <semaphore>

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

TEST(Background, TakesUpWhatIsFirstAndThenAsItWasAsked)
{
    Background background;
    std::binary_semaphore go{0};
    QStringList order; // of that thread until all are answered
    const auto note = [&](const QString& name, Background::Turn turn = Background::Turn::asAsked) {
        background.ask(name, [&order, name](std::stop_token) -> Background::Use {
            order << name;
            return {};
        }, turn);
    };
    background.ask(QStringLiteral("running"), [&](std::stop_token) -> Background::Use {
        go.acquire();
        return {};
    });
    note(QStringLiteral("track"));
    note(QStringLiteral("diary"));
    note(QStringLiteral("clock"));
    note(QStringLiteral("plan"), Background::Turn::first);
    note(QStringLiteral("change"));
    note(QStringLiteral("track")); // anew: behind those that wait
    go.release();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !background.busy(); }, patience));
    EXPECT_EQ(order, (QStringList{QStringLiteral("plan"), QStringLiteral("diary"), QStringLiteral("clock"), QStringLiteral("change"), QStringLiteral("track")}));
}

}
}
