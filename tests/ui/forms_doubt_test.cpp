// Amounts of leachate that cannot have stood in the sump are said to be looked at again, and never become the usual ones; food beyond what the stack takes
// is said where it cannot be missed, with the amount that would be right.
#include "tests/ui/forms_fixture.h"

#include "core/advice/food_limit.h"
#include "ui/common/amount_field.h"

namespace tierloam::forms {
namespace {

class DrainDoubt : public FormsTest {
protected:
    QString doubt() { return shell().doubt(); }
    void sump(double litresHeld, journal::Spigot spigot)
    {
        journal::Setup setup;
        setup.sump = litres(litresHeld);
        setup.spigot = spigot;
        journal::Entry entry;
        entry.date.day = today;
        entry.stack = "Scullery";
        entry.action = setup;
        const auto before = recorded_.size();
        household().record(entry, QStringLiteral("set up"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return recorded_.size() > before; }, patience)) << failures_.join(u' ').toStdString();
    }
    bool comes(bool doubted)
    {
        return QTest::qWaitFor([&] { return doubt().isEmpty() != doubted; }, 2000);
    }
};

TEST_F(DrainDoubt, MoreThanAShutSumpHoldsIsToBeLookedAtAgain)
{
    sump(4, journal::Spigot::shut);
    open(FormKind::drain);
    type("Drained", "4.5");
    EXPECT_FALSE(comes(true)) << "drains are measured to 15 % and a tenth of a litre: " << doubt().toStdString();
    type("Drained", "5");
    EXPECT_TRUE(comes(true));
    EXPECT_TRUE(doubt().contains(QStringLiteral("4.0"))) << doubt().toStdString();
    type("Drained", "0.5");
    EXPECT_TRUE(comes(false));
    type("Drained", "500");
    EXPECT_TRUE(comes(true));
    EXPECT_EQ(recordOne<journal::Drain>().volume, (Amount{500, Unit::L})) << "it stands in nobody's way";
}

TEST_F(DrainDoubt, AnOpenSpigotFillsAJarThatHoldsMoreThanTheSump)
{
    sump(4, journal::Spigot::open);
    open(FormKind::drain);
    type("Drained", "12");
    EXPECT_FALSE(comes(true)) << doubt().toStdString();
    type("Drained", "500");
    EXPECT_TRUE(comes(true));
}

TEST_F(DrainDoubt, WhatWasPouredThroughComesOutOfAFlushToo)
{
    sump(4, journal::Spigot::shut);
    open(FormKind::flush);
    type("Water poured", "6");
    type("Drained", "9");
    EXPECT_FALSE(comes(true)) << doubt().toStdString();
    type("Drained", "90");
    EXPECT_TRUE(comes(true));
}

TEST_F(DrainDoubt, TheUsualDrainIsNoMoreThanTheSump)
{
    sump(4, journal::Spigot::shut);
    journal::Entry entry;
    entry.date.day = today;
    entry.stack = "Scullery";
    for (int i = 0; i < 5; ++i) {
        entry.action = journal::Drain{Amount{500, Unit::L}, {}, {}, {}, {}};
        const auto before = recorded_.size();
        household().record(entry, QStringLiteral("drain"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return recorded_.size() > before; }, patience));
    }
    EXPECT_EQ(household().usual("Scullery").drain, (Amount{4, Unit::L}));
}

class FoodDoubts : public FormsTest {
protected:
    double limit() { return advice::foodLimit(*household().reckoning()->stack("Scullery")).kg; }
    bool comes(bool doubted)
    {
        return QTest::qWaitFor([&] { return shell().doubt().isEmpty() != doubted; }, 2000);
    }
    QPushButton* instead() { return window().findChild<QPushButton*>(QStringLiteral("formInstead")); }
};

TEST_F(FoodDoubts, BeyondTheWeeksLimitTheAmountThatFitsIsOneClickAway)
{
    ASSERT_GT(limit(), 0.1);
    open(FormKind::feed);
    type("Amount", QByteArray::number(1000.0 * limit()).constData());
    EXPECT_TRUE(comes(false)) << shell().doubt().toStdString();
    EXPECT_FALSE(instead()->isVisible());
    type("Amount", QByteArray::number(1000.0 * limit() * 1.2).constData());
    ASSERT_TRUE(comes(true)) << "beyond it by a fifth";
    EXPECT_TRUE(shell().doubt().contains(QStringLiteral("at most"))) << shell().doubt().toStdString();
    ASSERT_TRUE(instead()->isVisible());
    EXPECT_TRUE(instead()->isEnabled());
    click("formInstead");
    EXPECT_TRUE(comes(false)) << shell().doubt().toStdString();
    EXPECT_FALSE(instead()->isVisible());
    EXPECT_TRUE(recorded_.empty()) << "it is not recorded by that";
    const auto made = record();
    ASSERT_FALSE(made.empty());
    const Amount fed = std::get<journal::Feed>(made.front().action).food;
    ASSERT_TRUE(fed.mass().has_value());
    EXPECT_LE(fed.mass()->base(), limit() * 1.0001);
    EXPECT_GE(fed.mass()->base(), limit() * 0.8);
}

TEST_F(FoodDoubts, ItStandsInNobodysWay)
{
    open(FormKind::feed);
    type("Amount", QByteArray::number(1000.0 * limit() * 1.5).constData());
    ASSERT_TRUE(comes(true));
    const auto made = record();
    ASSERT_FALSE(made.empty());
    EXPECT_NEAR(std::get<journal::Feed>(made.front().action).food.mass()->base(), 1.5 * limit(), 0.001);
}

TEST_F(FoodDoubts, OfAPastDayNothingIsSaidByTheLimitOfToday)
{
    open(FormKind::feed);
    type("Amount", QByteArray::number(1000.0 * limit() * 1.5).constData());
    ASSERT_TRUE(comes(true));
    type("Date", "2031-04-20");
    EXPECT_TRUE(comes(false)) << shell().doubt().toStdString();
}

}
}
