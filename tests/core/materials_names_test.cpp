// What may have been meant by a name that is not in the table.
#include "core/materials/names.h"
#include "core/materials/table.h"

#include <gmock/gmock.h>

#include <random>

using namespace tierloam::materials;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

struct Distance {
    const char* a;
    const char* b;
    int steps;
};
class EditDistance : public testing::TestWithParam<Distance> {};
// kitten/sitting is the textbook case of Levenshtein's distance (memory); the rest counted by hand.
INSTANTIATE_TEST_SUITE_P(Table, EditDistance,
    testing::Values(Distance{"", "", 0}, Distance{"", "coir", 4}, Distance{"coir", "coir", 0}, Distance{"kitten", "sitting", 3}, Distance{"cior", "coir", 1},
                    Distance{"coffe", "coffee", 1}, Distance{"ca", "abc", 3}, Distance{"Müll", "Mull", 1}, Distance{"päpier", "papier", 1}, Distance{"ü", "", 1}));
TEST_P(EditDistance, CountsSlips)
{
    EXPECT_EQ(editDistance(GetParam().a, GetParam().b), GetParam().steps);
    EXPECT_EQ(editDistance(GetParam().b, GetParam().a), GetParam().steps);
}

TEST(Folded, MakesLettersSmallInTheAlphabetsItKnows)
{
    EXPECT_EQ(folded("Kitchen MIX 2"), "kitchen mix 2");
    EXPECT_EQ(folded("KÜCHENRESTE ÀÞ×"), "küchenreste àþ×");
    EXPECT_EQ(folded("ŁÓDŹ ŻABA ŠĆ Ÿ"), "łódź żaba šć ÿ");
    EXPECT_EQ(folded("ΑΩ ЖЁЯ"), "αω жёя");
    EXPECT_EQ(folded("食 🪱"), "食 🪱");
}

TEST(Folded, KeepsEveryByteThatIsNoText)
{
    std::mt19937 random{3};
    for (int i = 0; i < 2000; ++i) {
        std::string bytes;
        for (auto n = random() % 12; n > 0; --n) bytes += static_cast<char>(0x80 + random() % 0x40); // lone continuation bytes
        ASSERT_EQ(folded(bytes), bytes);
    }
    EXPECT_EQ(folded("\xC3"), "\xC3");
    EXPECT_EQ(folded("A\xF0\x9F"), "a\xF0\x9F");
}

struct Guess {
    const char* typed;
    const char* meant;
};
class Nearest : public testing::TestWithParam<Guess> {};
INSTANTIATE_TEST_SUITE_P(Table, Nearest,
    testing::Values(Guess{"kichen mix", "kitchen mix"}, Guess{"kitchen mx", "kitchen mix"}, Guess{"Kitchen", "kitchen mix"}, Guess{"coffe grounds", "coffee grounds"},
                    Guess{"grounds", "coffee grounds"}, Guess{"newspaper", "newspaper shredded"}, Guess{"newpaper", "newspaper shredded"}, Guess{"coir", "coconut coir (from a dry brick)"},
                    Guess{"cardboard", "corrugated cardboard shredded"}, Guess{"egg shell", "eggshell crushed"}, Guess{"bannana peel", "banana peel"}, Guess{"carots", "carrot"},
                    Guess{"apples", "apple, with skin"}, Guess{"lettuce", "lettuce, green leaf"}, Guess{"peatt", "peat"}, Guess{"onions", "onion"}));
TEST_P(Nearest, IsNamedFirst)
{
    const auto names = Table::builtIn().nearest(GetParam().typed);
    ASSERT_FALSE(names.empty());
    EXPECT_LE(names.size(), 3u);
    EXPECT_EQ(names.front(), GetParam().meant);
}

TEST(Nearest, FindsEachRowAfterOneSlip)
{
    std::mt19937 random{5};
    for (const Material& row : Table::builtIn().rows()) {
        std::string typed = row.name;
        const std::size_t at = 1 + random() % (typed.size() - 1);
        typed.erase(at, 1);
        EXPECT_THAT(Table::builtIn().nearest(typed), testing::Contains(row.name)) << typed;
    }
}

TEST(Nearest, NamesSomethingHoweverFarAndNothingOnlyOfNothing)
{
    EXPECT_EQ(Table::builtIn().nearest("zzzzzzzzzzzzzzzzz").size(), 1u);
    EXPECT_FALSE(Table::builtIn().nearest("").empty());
    EXPECT_THAT(nearestNames("x", {}, 3), IsEmpty());
    const std::vector<std::string> names{"one", "two", "toe"};
    EXPECT_THAT(nearestNames("tow", names, 2), ElementsAre("two", "toe"));
    EXPECT_THAT(nearestNames("tow", names, 0), IsEmpty());
}

}
