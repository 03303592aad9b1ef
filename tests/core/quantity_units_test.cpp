// Every unit of the journal: name, kind and size, and amounts that never cross from one dimension into another.
#include "core/quantity/units.h"

#include <gmock/gmock.h>

#include <limits>

using namespace tierloam;

namespace {

struct UnitCase {
    Unit unit;
    const char* name;
    UnitKind kind;
    double base;
};

class EachUnit : public testing::TestWithParam<UnitCase> {};

// kg, lb, gal: NIST Handbook 44, appendix C (exact definitions), from memory. oz, cup and floz as the journal format rounds them;
// below they are held against the exact sixteenth of a pound, sixteenth and 128th of a gallon.
INSTANTIATE_TEST_SUITE_P(Journal, EachUnit,
    testing::Values(UnitCase{Unit::g, "g", UnitKind::mass, 0.001}, UnitCase{Unit::kg, "kg", UnitKind::mass, 1.0},
                    UnitCase{Unit::oz, "oz", UnitKind::mass, 0.028349523}, UnitCase{Unit::lb, "lb", UnitKind::mass, 0.45359237},
                    UnitCase{Unit::mL, "mL", UnitKind::volume, 0.001}, UnitCase{Unit::L, "L", UnitKind::volume, 1.0},
                    UnitCase{Unit::cup, "cup", UnitKind::volume, 0.236588}, UnitCase{Unit::gal, "gal", UnitKind::volume, 3.785411784},
                    UnitCase{Unit::floz, "floz", UnitKind::volume, 0.0295735}, UnitCase{Unit::count, "count", UnitKind::count, 1.0}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST_P(EachUnit, GoesBothWaysByName)
{
    EXPECT_EQ(nameOf(GetParam().unit), GetParam().name);
    EXPECT_EQ(unitNamed(GetParam().name), GetParam().unit);
}

TEST_P(EachUnit, HasItsKindAndSize)
{
    EXPECT_EQ(kindOf(GetParam().unit), GetParam().kind);
    EXPECT_DOUBLE_EQ(inBaseUnit(GetParam().unit), GetParam().base);
}

TEST_P(EachUnit, GivesAnAmountInItsOwnDimensionOnly)
{
    const Amount amount{2.5, GetParam().unit};
    EXPECT_EQ(amount.mass().has_value(), GetParam().kind == UnitKind::mass);
    EXPECT_EQ(amount.volume().has_value(), GetParam().kind == UnitKind::volume);
    EXPECT_DOUBLE_EQ(amount.mass().value_or(kilograms(2.5 * GetParam().base)).base(), 2.5 * GetParam().base);
    EXPECT_DOUBLE_EQ(amount.volume().value_or(litres(2.5 * GetParam().base)).base(), 2.5 * GetParam().base);
}

TEST(Units, AreAllInTheTable)
{
    int seen = 0;
    for (const Unit unit : allUnits) {
        EXPECT_EQ(unitNamed(nameOf(unit)), unit);
        EXPECT_EQ(static_cast<int>(unit), seen++);
    }
    EXPECT_EQ(seen, 10);
}

TEST(Units, OfUsMeasureAgreeWithTheirPoundAndGallon)
{
    EXPECT_NEAR(16 * inBaseUnit(Unit::oz), inBaseUnit(Unit::lb), 1e-8);
    EXPECT_NEAR(16 * inBaseUnit(Unit::cup), inBaseUnit(Unit::gal), 1e-5);
    EXPECT_NEAR(128 * inBaseUnit(Unit::floz), inBaseUnit(Unit::gal), 1e-5);
}

TEST(Units, RefuseEveryOtherText)
{
    for (const char* text : {"", "G", "KG", "Kg", "l", "ml", "ML", "gram", "lbs", "cups", " g", "g ", "fl oz", "gal\n", "0", "count "})
        EXPECT_EQ(unitNamed(text), std::nullopt) << "«" << text << "»";
}

TEST(Share, IsMadeOnlyWhole)
{
    EXPECT_EQ(Share::fromPercent(0)->fraction(), 0.0);
    EXPECT_EQ(Share::fromPercent(100)->fraction(), 1.0);
    EXPECT_DOUBLE_EQ(Share::fromPercent(25)->of(8), 2.0);
    EXPECT_EQ(Share::fromPercent(33.3)->percent(), 33.3);
    for (const double bad : {-0.001, 100.001, -1e300, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
        EXPECT_EQ(Share::fromPercent(bad), std::nullopt) << bad;
}

// A sum of masses is a mass, a ratio of masses a number; nothing else compiles.
template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };
template <class A, class B>
concept Multipliable = requires(A a, B b) { a * b; };
template <class A, class B>
concept Divisible = requires(A a, B b) { a / b; };
static_assert(Addable<Mass, Mass> && !Addable<Mass, Volume> && !Addable<Mass, double>);
static_assert(Multipliable<Mass, double> && !Multipliable<Mass, Mass>);
static_assert(Divisible<Mass, Mass> && Divisible<Mass, double> && !Divisible<Mass, Volume>);
static_assert(std::is_same_v<decltype(Mass{} / Mass{}), double>);
static_assert(!std::is_convertible_v<double, Mass> && !std::is_convertible_v<Mass, double>);

TEST(Measure, KeepsItsBaseUnit)
{
    EXPECT_EQ(grams(250).base(), 0.25);
    EXPECT_EQ((kilograms(1.5) - grams(500)).base(), 1.0);
    EXPECT_EQ(kilograms(3) / kilograms(2), 1.5);
    EXPECT_LT(centimetres(2), centimetres(2.5));
}

}
