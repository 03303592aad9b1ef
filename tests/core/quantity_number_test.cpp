// Numbers as text, both ways: what is written reads back as exactly the same value, and only plain decimals are read.
#include "core/quantity/number_text.h"

#include <gmock/gmock.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <random>

using namespace tierloam;

namespace {

struct TextCase {
    double value;
    const char* text;
};

class Written : public testing::TestWithParam<TextCase> {};
INSTANTIATE_TEST_SUITE_P(Table, Written,
    testing::Values(TextCase{0, "0"}, TextCase{-0.0, "0"}, TextCase{1, "1"}, TextCase{-1.5, "-1.5"}, TextCase{0.1, "0.1"},
                    TextCase{0.16, "0.16"}, TextCase{1000, "1000"}, TextCase{236.588, "236.588"}, TextCase{1e21, "1000000000000000000000"},
                    TextCase{1e-7, "0.0000001"}, TextCase{0.1 + 0.2, "0.30000000000000004"}, TextCase{1.0 / 3.0, "0.3333333333333333"},
                    TextCase{123456789.125, "123456789.125"}));

TEST_P(Written, AsTheShortestPlainDecimal) { EXPECT_EQ(numberText(GetParam().value), GetParam().text); }
TEST_P(Written, ReadsBack) { EXPECT_EQ(parseNumber(GetParam().text), GetParam().value == 0 ? 0.0 : GetParam().value); }

class Read : public testing::TestWithParam<TextCase> {};
INSTANTIATE_TEST_SUITE_P(Table, Read,
    testing::Values(TextCase{7, "007"}, TextCase{2.5, "2.50"}, TextCase{0, "-0"}, TextCase{0, "0.000"}, TextCase{-0.25, "-0.250"},
                    TextCase{0.45359237, "0.45359237"}, TextCase{1, "1.00000000000000000000000000000000000"}));
TEST_P(Read, GivesTheValue)
{
    const auto value = parseNumber(GetParam().text);
    ASSERT_TRUE(value);
    EXPECT_EQ(*value, GetParam().value);
    EXPECT_FALSE(std::signbit(*value) && *value == 0.0) << "a zero has no sign";
}

class Refused : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Table, Refused,
    testing::Values("", " ", "-", ".", "-.", ".5", "5.", "-.5", "+1", "1e3", "1E3", "1.5e-2", "1,5", "1,000", "1 000", "1'000", " 1", "1 ", "1\n",
                    "0x10", "inf", "-inf", "nan", "NaN", "1.2.3", "--1", "1-", "1/2", "½", "١", "１", "1k", "12kg", "−1"));
TEST_P(Refused, IsNoNumber) { EXPECT_EQ(parseNumber(GetParam()), std::nullopt); }

TEST(Refused, WhenItCannotBeHeld)
{
    EXPECT_EQ(parseNumber(std::string(400, '9')), std::nullopt);
    EXPECT_EQ(parseNumber(std::string{"0."}.append(400, '0').append("1")), std::nullopt);
    EXPECT_EQ(parseNumber(std::string_view{"1\0", 2}), std::nullopt) << "a text with a zero byte";
}

TEST(NumberText, ReadsBackBitForBitWhateverTheValue)
{
    std::mt19937_64 random{20310501};
    int tried = 0;
    for (int i = 0; i < 200000; ++i) {
        const double value = std::bit_cast<double>(random());
        if (!std::isfinite(value)) continue;
        const std::string text = numberText(value);
        ASSERT_EQ(text.find_first_not_of("-0123456789."), std::string::npos) << text;
        const auto back = parseNumber(text);
        ASSERT_TRUE(back) << text;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(*back), std::bit_cast<std::uint64_t>(value == 0.0 ? 0.0 : value)) << text;
        ++tried;
    }
    EXPECT_GT(tried, 190000);
}

TEST(NumberText, OfTheLimitsReadsBack)
{
    using Limits = std::numeric_limits<double>;
    for (const double value : {Limits::max(), Limits::lowest(), Limits::min(), Limits::denorm_min(), Limits::epsilon()})
        EXPECT_EQ(parseNumber(numberText(value)), value);
}

TEST(NumberText, GivesBackAnyDecimalOfUpToFifteenDigitsAsTyped)
{
    std::mt19937_64 random{7};
    for (int i = 0; i < 100000; ++i) {
        const auto whole = std::uniform_int_distribution<std::int64_t>{0, 99'999'999}(random);
        const auto places = std::uniform_int_distribution<int>{0, 7}(random);
        std::string text = std::to_string(whole);
        if (places > 0) {
            std::string fraction;
            for (int p = 0; p < places; ++p) fraction += static_cast<char>('0' + std::uniform_int_distribution<int>{0, 9}(random));
            fraction.back() = static_cast<char>('1' + std::uniform_int_distribution<int>{0, 8}(random));
            text += '.' + fraction;
        }
        const auto value = parseNumber(text);
        ASSERT_TRUE(value) << text;
        ASSERT_EQ(numberText(*value), text);
    }
}

struct SignificantCase {
    double value;
    int digits;
    const char* text;
};
class Significant : public testing::TestWithParam<SignificantCase> {};
INSTANTIATE_TEST_SUITE_P(Table, Significant,
    testing::Values(SignificantCase{0, 6, "0"}, SignificantCase{-0.0, 6, "0"}, SignificantCase{1.0 / 3.0, 6, "0.333333"},
                    SignificantCase{2.0 / 3.0, 6, "0.666667"}, SignificantCase{123456.7, 6, "123457"}, SignificantCase{1234567.8, 6, "1234570"},
                    SignificantCase{9.9999996, 6, "10"}, SignificantCase{0.99999996, 6, "1"}, SignificantCase{999999.5, 6, "1000000"},
                    SignificantCase{0.000123456789, 6, "0.000123457"}, SignificantCase{1e-9, 6, "0.000000001"}, SignificantCase{999, 6, "999"},
                    SignificantCase{-2.5, 6, "-2.5"}, SignificantCase{-1234.5678, 6, "-1234.57"}, SignificantCase{100, 1, "100"},
                    SignificantCase{149, 1, "100"}, SignificantCase{0.25, 1, "0.2"}, SignificantCase{1e14, 6, "100000000000000"},
                    SignificantCase{36.73241, 4, "36.73"}));
TEST_P(Significant, HasTheDigitsAndNoMore) { EXPECT_EQ(significantText(GetParam().value, GetParam().digits), GetParam().text); }

TEST(SignificantText, IsWithinHalfAUnitOfItsLastDigit)
{
    std::mt19937_64 random{11};
    for (int i = 0; i < 50000; ++i) {
        const double size = std::exp(std::uniform_real_distribution<>{std::log(1e-8), std::log(1e12)}(random));
        const double value = random() % 2 == 0 ? size : -size;
        const std::string text = significantText(value);
        const auto back = parseNumber(text);
        ASSERT_TRUE(back) << text;
        ASSERT_NEAR(*back, value, 0.5000001e-5 * size) << text;
        ASSERT_EQ(significantText(*back), text) << "printing again changes nothing";
    }
}

TEST(SignificantText, OfTheVerySmallAndGreatIsStillANumberInJson)
{
    EXPECT_EQ(significantText(1.5e-12), "1.5e-12");
    EXPECT_EQ(significantText(2e15), "2e+15");
}

}
