#include "tests/core/store_samples.h"

#include "core/store/schema.h"

namespace tierloam::store {

namespace {

using namespace samples;

/// A file of each released schema lies in tests/samples as it was written then; it is never written anew. It holds everyAction() as of that
/// schema: a word, a column or a step that is changed afterwards is found out here.
void expectEveryAction(int schema, const journal::Entries& after = {})
{
    const Place place;
    const QString stored = QStringLiteral(TIERLOAM_SOURCE_DIR "/tests/samples/household_schema_%1.tierloam").arg(schema);
    ASSERT_TRUE(QFile::copy(stored, place.path())) << stored.toStdString();
    ASSERT_TRUE(QFile::setPermissions(place.path(), QFile::ReadOwner | QFile::WriteOwner));
    auto expected = everyAction();
    expected.insert(expected.end(), after.begin(), after.end());
    for (const auto mode : {HouseholdFile::Mode::readOnly, HouseholdFile::Mode::mustExist}) {
        const auto file = opened(place.path(), mode);
        ASSERT_TRUE(file);
        EXPECT_EQ(file->setting(QStringLiteral("name")), QStringLiteral("Mühle"));
        const auto found = journalOf(*file);
        ASSERT_EQ(found.size(), expected.size());
        for (std::size_t i = 0; i < expected.size(); ++i) {
            auto one = expected[i];
            one.id = journal::EntryId{static_cast<std::int64_t>(i) + 1};
            one.positionInDay = found[i].positionInDay;
            EXPECT_EQ(found[i], one) << i << ' ' << journal::actionName(one.action);
        }
    }
}

TEST(StoreStoredSample, TheSchemaOfTheFirstRelease) { expectEveryAction(3); }

TEST(StoreStoredSample, TheSchemaWithLoggedReadings)
{
    expectEveryAction(4);
    const Place place;
    ASSERT_TRUE(QFile::copy(QStringLiteral(TIERLOAM_SOURCE_DIR "/tests/samples/household_schema_4.tierloam"), place.path()));
    const auto logged = opened(place.path(), HouseholdFile::Mode::readOnly)->loggedDays();
    const Day on = day(2031, 5, 2);
    const LoggedDays expected{{"Scullery", {{on, LoggedKind::bin, 3, 20.25, 21.5, 22.75}, {on, LoggedKind::moisture, 1, 71.5, 71.5, 71.5}}}}; // that of the air was taken back
    EXPECT_EQ(std::get<LoggedDays>(logged), expected);
}

TEST(StoreStoredSample, TheSchemaWithWelcomeOfOwnMaterials)
{
    using namespace journal;
    const Day last = day(2199, 12, 31);
    expectEveryAction(5, {entry(OwnMaterial{"goat manure", SofteningClass::mix, Share::fromPercent(70), {}, {}, {}, {}, Welcome::no, Doubt::dewormer}, last),
                          entry(OwnMaterial{"hulls", {}, {}, {}, {}, {}, {}, Welcome::aLittle, {}}, last)});
}

// Schemas 1 and 2 were never released by themselves; their samples are that of schema 3 without the later tables.
TEST(StoreStoredSample, EarlierSchemasAreBroughtUpToDate)
{
    expectEveryAction(1);
    expectEveryAction(2);
}

TEST(StoreStoredSample, TheNewestSchemaHasOne)
{
    EXPECT_TRUE(QFile::exists(QStringLiteral(TIERLOAM_SOURCE_DIR "/tests/samples/household_schema_%1.tierloam").arg(newestSchema())))
        << "a new schema needs a stored sample";
}

}

}
