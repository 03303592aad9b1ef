// The built-in table, own materials, and amounts as they come to hand.
#include "core/materials/read_table.h"
#include "core/materials/table.h"

#include <gmock/gmock.h>

#include <fstream>
#include <iterator>
#include <set>
#include <stdexcept>

using namespace tierloam;
using namespace tierloam::materials;
using testing::HasSubstr;

namespace {

TEST(MaterialsTable, IsTheFileOfResources)
{
    std::ifstream file{TIERLOAM_SOURCE_DIR "/resources/materials.csv", std::ios::binary};
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    ASSERT_FALSE(text.empty());
    EXPECT_EQ(compiledTable, text);
    EXPECT_EQ(Table::builtIn().rows().size(), 80u);
}

TEST(MaterialsTable, HasASourceForEachRow)
{
    for (const Material& row : Table::builtIn().rows()) {
        EXPECT_FALSE(row.source.empty()) << row.name;
        EXPECT_FALSE(row.own) << row.name;
    }
}

// Plant matter is 35 to 60 % carbon by dry weight; outside that a nitrogen and a C:N do not belong together. Bound: our judgement.
bool carbonIsPlausible(const Material& row) { return row.carbonShare() >= 0.35 && row.carbonShare() <= 0.60; }

TEST(MaterialsTable, HoldsCarbonAsPlantMatterDoesInEveryOrganicRow)
{
    int organic = 0;
    for (const Material& row : Table::builtIn().rows()) {
        if (row.softening == SofteningClass::mineral) {
            EXPECT_EQ(row.carbonShare(), 0.0) << row.name;
            continue;
        }
        ++organic;
        EXPECT_TRUE(carbonIsPlausible(row)) << row.name << " " << row.carbonShare();
    }
    EXPECT_EQ(organic, 76);

    Material exchanged = *Table::builtIn().find("sawdust"); // nitrogen of one row beside the C:N of another must be noticed
    exchanged.nitrogenPercent = Table::builtIn().find("tea leaves spent")->nitrogenPercent;
    EXPECT_FALSE(carbonIsPlausible(exchanged));
}

// What people ask about and what New York City Sanitation, Oregon Metro and Virginia Master Gardeners keep out; cat and dog waste: Dubey et al. 2011.
TEST(MaterialsTable, KeepsOutWhatThePublishedListsKeepOut)
{
    const struct { const char* name; Doubt doubt; } kept[] = {{"meat", Doubt::animal}, {"fish", Doubt::animal}, {"cheese", Doubt::dairy}, {"milk and yogurt", Doubt::dairy},
        {"oily food", Doubt::oily}, {"cat or dog droppings", Doubt::droppings}, {"glossy paper", Doubt::coated}, {"treated or painted wood", Doubt::treated},
        {"manure of animals wormed lately", Doubt::dewormer}, {"slaked or quick lime", Doubt::caustic}};
    for (const auto& [name, doubt] : kept) {
        const Material* row = Table::builtIn().find(name);
        ASSERT_NE(row, nullptr) << name;
        EXPECT_EQ(row->welcome, Welcome::no) << name;
        EXPECT_EQ(row->doubt, doubt) << name;
    }
    for (const char* little : {"orange peel", "lemon peel", "onion", "garlic", "salty leftovers", "bread, white", "horse manure aged"})
        EXPECT_EQ(Table::builtIn().find(little)->welcome, Welcome::aLittle) << little;
    EXPECT_EQ(Table::builtIn().find("garden lime (calcium carbonate)")->welcome, Welcome::yes);
}

TEST(MaterialsTable, NamesADoubtForWhatIsNotWelcomeAndForNothingElse)
{
    std::set<Doubt> seen;
    for (const Material& row : Table::builtIn().rows()) {
        EXPECT_EQ(row.doubt == Doubt::none, row.welcome == Welcome::yes) << row.name;
        seen.insert(row.doubt);
    }
    EXPECT_EQ(seen.size(), static_cast<std::size_t>(Doubt::count)) << "a doubt that no row has";
    for (int i = 0; i < static_cast<int>(Doubt::count); ++i) EXPECT_EQ(doubtNamed(doubtName(static_cast<Doubt>(i))), static_cast<Doubt>(i));
    EXPECT_EQ(doubtNamed("Oily"), std::nullopt);
}

// USDA National Nutrient Database for Standard Reference, NDB 11352: water 79.34, protein 2.02, ash 1.08 %; N by 6.25, C by (100−ash)/1.8
// (Cornell Waste Management Institute; Adams et al. 1951), recomputed.
TEST(MaterialsTable, ReckonsNitrogenAndCarbonOfAFoodFromProteinAndAsh)
{
    const Material* potato = Table::builtIn().find("potato, flesh+skin");
    ASSERT_NE(potato, nullptr);
    EXPECT_NEAR(potato->nitrogenPercent, 1.564, 0.0005);
    EXPECT_NEAR(100 * potato->carbonShare(), 52.65, 0.005);
    EXPECT_NEAR(*potato->carbonToNitrogen, 33.7, 0.05);
    EXPECT_NEAR(potato->dryShare(), 0.2066, 1e-12);
}

TEST(MaterialsTable, FindsWithoutRegardToCase)
{
    EXPECT_EQ(Table::builtIn().find("Kitchen Mix"), Table::builtIn().find("kitchen mix"));
    ASSERT_NE(Table::builtIn().find("BREAD, WHITE"), nullptr);
    EXPECT_EQ(Table::builtIn().find("bread, white")->welcome, Welcome::aLittle);
    EXPECT_EQ(Table::builtIn().find("egg (contents)")->welcome, Welcome::no);
    EXPECT_EQ(Table::builtIn().find("peat")->welcome, Welcome::aLittle);
    EXPECT_EQ(Table::builtIn().find("eggshell crushed")->carbonToNitrogen, std::nullopt);
    for (const char* unknown : {"", "kitchen", "kitchen mix ", "bread"}) EXPECT_EQ(Table::builtIn().find(unknown), nullptr) << unknown;
}

TEST(MaterialsTable, HoldsWhatTheJournalFallsBackTo)
{
    ASSERT_NE(Table::builtIn().find(journal::defaultFood), nullptr);
    EXPECT_EQ(Table::builtIn().find(journal::defaultFood)->softening, SofteningClass::mix);
    ASSERT_NE(Table::builtIn().find(journal::defaultCover), nullptr);
    EXPECT_EQ(Table::builtIn().find(journal::defaultCover)->softening, SofteningClass::paper);
}

struct BadTable {
    const char* row;
    const char* reason;
};
class Refused : public testing::TestWithParam<BadTable> {};
INSTANTIATE_TEST_SUITE_P(Table, Refused,
    testing::Values(BadTable{"", "not 13 fields"}, BadTable{"a,food,mix,80,,,1,20,400,3,yes", "not 13 fields"},
                    BadTable{"a,food,mix,80,,,1,20,400,3,yes,,us,more", "not 13 fields"}, BadTable{",food,mix,80,,,1,20,400,3,yes,,us", "no name"},
                    BadTable{"a,meal,mix,80,,,1,20,400,3,yes,,us", "no kind «meal»"}, BadTable{"a,food,hard,80,,,1,20,400,3,yes,,us", "no softening class «hard»"},
                    BadTable{"a,food,mix,100,,,1,20,400,3,yes,,us", "found «100»"}, BadTable{"a,food,mix,8o,,,1,20,400,3,yes,,us", "found «8o»"},
                    BadTable{"a,food,mix,80,1,,,,400,3,yes,,us", "found «»"}, BadTable{"a,food,mix,80,1,2,1,20,400,3,yes,,us", "either protein or nitrogen"},
                    BadTable{"a,food,mix,80,,,,,400,3,yes,,us", "either protein or nitrogen"}, BadTable{"a,food,mix,80,,,1,20,0,3,yes,,us", "found «0»"},
                    BadTable{"a,food,mix,80,,,1,20,400,3,maybe,,us", "no welcome «maybe»"}, BadTable{"a,food,mix,80,,,1,20,400,3,yes,,", "no source"}, BadTable{"a,food,mix,80,,,1,20,400,3,no,,us", "a doubt belongs"},
                    BadTable{"a,food,mix,80,,,1,20,400,3,yes,oily,us", "a doubt belongs"}, BadTable{"a,food,mix,80,,,1,20,400,3,no,odd,us", "no doubt «odd»"},
                    BadTable{"\"a,food,mix,80,,,1,20,400,3,yes,,us", "a quote is left open"}, BadTable{"B,food,mix,80,,,1,20,400,3,yes,,us", "twice"}));
TEST_P(Refused, WithItsLine)
{
    const std::string_view whole = compiledTable;
    const std::string header{whole.substr(0, whole.find('\n') + 1)};
    const std::string good = "b,food,mix,80,,,1,20,400,3,yes,,\"says \"\"us\"\"\"\n";
    ASSERT_EQ(readTable(header + good).front().source, "says \"us\"");
    try {
        readTable(header + good + GetParam().row + "\n");
        FAIL() << "was read";
    } catch (const std::runtime_error& error) {
        EXPECT_THAT(error.what(), HasSubstr("materials.csv:3: "));
        EXPECT_THAT(error.what(), HasSubstr(GetParam().reason));
    }
    EXPECT_THROW(readTable(good), std::runtime_error) << "without its header";
    EXPECT_THROW(readTable(header), std::runtime_error) << "without a row";
}

journal::Entry entryOf(journal::OwnMaterial own)
{
    journal::Entry entry;
    entry.action = std::move(own);
    return entry;
}

TEST(OwnMaterial, TakesWhatItLeavesOutFromTheKitchenMix)
{
    const Table table = Table::withOwn(std::vector{entryOf({.name = "Gran's scraps", .moisture = Share::fromPercent(70)})});
    ASSERT_EQ(table.rows().size(), Table::builtIn().rows().size() + 1);
    const Material* own = table.find("gran's SCRAPS");
    const Material* usual = table.find("kitchen mix");
    ASSERT_NE(own, nullptr);
    EXPECT_TRUE(own->own);
    EXPECT_EQ(own->moisturePercent, 70);
    EXPECT_EQ(own->softening, usual->softening);
    EXPECT_EQ(own->kind, Kind::food);
    EXPECT_EQ(own->nitrogenPercent, usual->nitrogenPercent);
    EXPECT_EQ(own->carbonToNitrogen, usual->carbonToNitrogen);
    EXPECT_EQ(own->bulkKgPerM3, usual->bulkKgPerM3);
    EXPECT_EQ(own->waterHeldKgPerKg, usual->waterHeldKgPerKg);
}

TEST(OwnMaterial, KeepsEveryDetailThatIsGiven)
{
    const Table table = Table::withOwn(std::vector{entryOf({"bark", SofteningClass::wood, Share::fromPercent(30), 0.3, 150.0, 220.0, 2.25})});
    const Material* bark = table.find("bark");
    ASSERT_NE(bark, nullptr);
    EXPECT_EQ(bark->kind, Kind::bedding);
    EXPECT_EQ(bark->softening, SofteningClass::wood);
    EXPECT_EQ(bark->moisturePercent, 30);
    EXPECT_EQ(bark->nitrogenPercent, 0.3);
    EXPECT_EQ(bark->carbonToNitrogen, 150);
    EXPECT_EQ(bark->bulkKgPerM3, 220);
    EXPECT_EQ(bark->waterHeldKgPerKg, 2.25);
}

TEST(OwnMaterial, IsAsWelcomeAsItsOwnerSays)
{
    const auto of = [](std::optional<Welcome> welcome, std::optional<Doubt> doubt) { return materialOf({.name = "x", .welcome = welcome, .doubt = doubt}); };
    EXPECT_EQ(of({}, {}).welcome, Welcome::yes);
    EXPECT_EQ(of({}, Doubt::salty).welcome, Welcome::aLittle) << "a doubt alone is a little";
    EXPECT_EQ(of({}, Doubt::salty).doubt, Doubt::salty);
    EXPECT_EQ(of(Welcome::no, {}).welcome, Welcome::no);
    EXPECT_EQ(of(Welcome::no, Doubt::dewormer).doubt, Doubt::dewormer);
    EXPECT_EQ(of(Welcome::yes, Doubt::salty).doubt, Doubt::none) << "what is welcome has no reason against it";
    EXPECT_EQ(of({}, Doubt::none).welcome, Welcome::yes);
}

TEST(OwnMaterial, TakesThePlaceOfABuiltInRowAndTheLaterOneRules)
{
    const Table table = Table::withOwn(std::vector{entryOf({.name = "Coffee Grounds", .moisture = Share::fromPercent(50)}),
                                                   entryOf({.name = "coffee grounds", .moisture = Share::fromPercent(55)}),
                                                   entryOf({.name = "kitchen mix", .moisture = Share::fromPercent(10)}),
                                                   entryOf({.name = "later"})});
    EXPECT_EQ(table.rows().size(), Table::builtIn().rows().size() + 1);
    EXPECT_EQ(table.find("coffee grounds")->moisturePercent, 55);
    EXPECT_TRUE(table.find("coffee grounds")->own);
    EXPECT_EQ(table.find("later")->moisturePercent, Table::builtIn().find("kitchen mix")->moisturePercent) << "defaults are those of the table";
}

TEST(OwnMaterial, HasTheNoteOfItsEntryForItsSource)
{
    journal::Entry entry = entryOf({.name = "bokashi"});
    entry.note = "weighed and dried at home";
    EXPECT_EQ(Table::withOwn(std::vector{entry}).find("bokashi")->source, "weighed and dried at home");
}

TEST(OwnMaterial, OfMineralHoldsNoCarbonUnlessSaid)
{
    const Table table = Table::withOwn(std::vector{entryOf({.name = "oyster shell", .softening = SofteningClass::mineral})});
    EXPECT_EQ(table.find("oyster shell")->carbonShare(), 0.0);
    EXPECT_EQ(table.find("oyster shell")->nitrogenPercent, 0.0);
    EXPECT_EQ(table.find("oyster shell")->kind, Kind::mineral);
}

TEST(OwnMaterial, IsTheOnlyActionThatCounts)
{
    journal::Entry feed;
    feed.action = journal::Feed{{100, Unit::g}, "sand", {}};
    EXPECT_EQ(Table::withOwn(std::vector{feed}).rows().size(), Table::builtIn().rows().size());
}

TEST(FreshMass, IsTheMassOrTheVolumeByItsBulk)
{
    const Material& mix = *Table::builtIn().find("kitchen mix"); // 450 kg/m³
    EXPECT_DOUBLE_EQ(freshMass({300, Unit::g}, mix)->base(), 0.3);
    EXPECT_DOUBLE_EQ(freshMass({2, Unit::L}, mix)->base(), 0.9);
    EXPECT_DOUBLE_EQ(freshMass({1, Unit::cup}, mix)->base(), 0.236588 * 0.45);
    EXPECT_EQ(freshMass({5, Unit::count}, mix), std::nullopt);
}

TEST(Softening, GoesBothWaysByName)
{
    constexpr std::array names{"soft", "mix", "coffee", "paper", "cardboard", "wood", "coir", "mineral"};
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(softeningName(static_cast<SofteningClass>(i)), names[i]);
        EXPECT_EQ(softeningNamed(names[i]), static_cast<SofteningClass>(i));
    }
    for (const char* bad : {"", "Soft", "food", "mix "}) EXPECT_EQ(softeningNamed(bad), std::nullopt) << bad;
}

TEST(SpeciesTable, KnowsFourAndNoOther)
{
    ASSERT_EQ(species().size(), 4u);
    EXPECT_EQ(speciesNamed("")->name, "Eisenia fetida");
    EXPECT_EQ(speciesNamed("EISENIA ANDREI")->name, "Eisenia andrei");
    EXPECT_FALSE(speciesNamed("eisenia fetida")->weak);
    EXPECT_TRUE(speciesNamed("Eudrilus eugeniae")->weak);
    EXPECT_TRUE(speciesNamed("perionyx excavatus")->weak);
    for (const char* bad : {"Lumbricus terrestris", "Eisenia", "red wiggler", " "}) EXPECT_EQ(speciesNamed(bad), nullptr) << bad;
}

}
