// Amounts of leachate that cannot have stood in the sump are said to be looked at again, and never become the usual ones.
#include "tests/ui/forms_fixture.h"

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

}
}
