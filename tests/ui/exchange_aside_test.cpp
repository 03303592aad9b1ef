#include "ui/exchange/aside.h"

#include <gtest/gtest.h>

#include <QTest>

#include <new>

namespace tierloam::exchange_view {
namespace {

constexpr int patience = 20000;

TEST(Aside, WhatThrowsIsNotAnsweredAndTheNextIs)
{
    Aside aside;
    bool answered = false;
    aside.run([&](const std::stop_token&) -> Aside::Answer { throw std::bad_alloc{}; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return !aside.busy(); }, patience));
    aside.run([&](const std::stop_token&) -> Aside::Answer { return [&] { answered = true; }; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return answered; }, patience));
    EXPECT_FALSE(aside.busy());
}

}
}
