// The usual temperature of a bed is the mean of the year: forms say so, and take what a thermometer shows today instead.
#include "tests/ui/forms_fixture.h"

#include "core/household/seasons.h"
#include "core/reckoning/bed_year.h"
#include "core/store/setting_names.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/forms/new_stack.h"

namespace tierloam::forms {
namespace {

using journal::Place;

class BedFieldsTest : public FormsTest {
protected:
    double shown(const char* name) { return static_cast<ui::NumberField*>(field(name))->value().value.value_or(-99); }
    QString hint() { return field("Usual bed temperature")->hint(); }
};

TEST_F(BedFieldsTest, WhatAThermometerShowsTodayBecomesTheMeanOfTheYear)
{
    open(FormKind::setup);
    choose("Place", "garage");
    type("Bed temperature now", "8");
    const double mean = std::round(reckoning::yearMeanFrom(8, Place::garage, today, false) * 10) / 10;
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), mean);
    EXPECT_NE(mean, 8.0);
    const auto setup = recordOne<journal::Setup>();
    EXPECT_EQ(setup.place, Place::garage);
    ASSERT_TRUE(setup.temp);
    EXPECT_NEAR(reckoning::bedOn(setup.temp->base(), Place::garage, today, false), 8.0, 0.06);
}

TEST_F(BedFieldsTest, TheMeanSaysWhatBedItGivesNowAndInTheColdestAndWarmestMonth)
{
    show(new NewStack{household()}, 520);
    choose("Place", "outdoors");
    type("Usual bed temperature", "10");
    EXPECT_NEAR(shown("Bed temperature now"), reckoning::bedOn(10, Place::outdoors, today, false), 0.051);
    const reckoning::BedYear year = reckoning::bedYear(10, Place::outdoors, false);
    EXPECT_TRUE(hint().contains(QStringLiteral("January"))) << hint().toStdString();
    EXPECT_TRUE(hint().contains(QStringLiteral("July")));
    EXPECT_TRUE(hint().contains(ui::temperatureText(year.coldestC)));
    EXPECT_TRUE(hint().contains(ui::temperatureText(year.warmestC)));
    EXPECT_TRUE(hint().contains(QStringLiteral("worms die"))) << "1 °C in January";
    type("Usual bed temperature", "12");
    EXPECT_FALSE(hint().contains(QStringLiteral("worms die")));
    type("Usual bed temperature", "24");
    EXPECT_TRUE(hint().contains(QStringLiteral("above"))) << "33 °C in July";
}

TEST_F(BedFieldsTest, WhatIsProposedFollowsThePlaceUntilItIsTyped)
{
    show(new NewStack{household()}, 520);
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), 20.0);
    choose("Place", "outdoors");
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), reckoning::proposedYearMean(Place::outdoors)) << "else July would be 29 °C";
    choose("Place", "garage");
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), reckoning::proposedYearMean(Place::garage));
    type("Usual bed temperature", "17");
    choose("Place", "outdoors");
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), 17.0);
    type("Bed temperature now", "13");
    const double outdoors = shown("Usual bed temperature");
    choose("Place", "indoors");
    EXPECT_NE(shown("Usual bed temperature"), outdoors) << "what was read today stays, and the mean follows";
    EXPECT_DOUBLE_EQ(shown("Bed temperature now"), 13.0);
}

TEST_F(BedFieldsTest, AStackThatComesBackHasItsOwnTemperatureAgain)
{
    open(FormKind::setup);
    const double before = shown("Usual bed temperature");
    choose("Place", "outdoors");
    EXPECT_NE(shown("Usual bed temperature"), before);
    choose("Place", "indoors");
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), before);
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty()) << "nothing is changed";
}

TEST_F(BedFieldsTest, SouthOfTheEquatorJanuaryIsTheWarmMonth)
{
    household().keep(store::settingHemisphere, QString{store::hemisphereSouth}, QStringLiteral("south"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return household::livesSouth(household()); }, patience));
    open(FormKind::setup);
    choose("Place", "garage");
    type("Bed temperature now", "15");
    EXPECT_DOUBLE_EQ(shown("Usual bed temperature"), std::round(reckoning::yearMeanFrom(15, Place::garage, today, true) * 10) / 10);
    EXPECT_LT(hint().indexOf(QStringLiteral("July")), hint().indexOf(QStringLiteral("January"))) << "the coldest is named first: " << hint().toStdString();
}

// Only what an entry names is shown of it; the place in force makes the season of its temperature.
TEST_F(BedFieldsTest, AnEntryOfTheTemperatureAloneIsOfThePlaceInForce)
{
    open(FormKind::setup);
    choose("Place", "outdoors");
    recordOne<journal::Setup>();
    open(FormKind::setup);
    type("Usual bed temperature", "11");
    recordOne<journal::Setup>();
    edit(last_.id);
    EXPECT_NEAR(shown("Bed temperature now"), reckoning::bedOn(11, Place::outdoors, today, false), 0.051);
    type("Bed temperature now", "14");
    const auto changed = recordOne<journal::Setup>();
    EXPECT_FALSE(changed.place.has_value());
    ASSERT_TRUE(changed.temp);
    EXPECT_NEAR(reckoning::bedOn(changed.temp->base(), Place::outdoors, today, false), 14.0, 0.06);
}

}
}
