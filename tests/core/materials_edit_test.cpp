#include "core/materials/edit.h"

#include "journal_builder.h"

#include <gtest/gtest.h>

namespace tierloam::materials {

using namespace journal;
using namespace journal::building;

namespace {

/// Ids: 1 setup, 2 bed, 3 own material, 4 a feed of it.
Entries withPulp()
{
    Bed bedding = bed();
    bedding.material = "newspaper shredded";
    Journal made;
    made.add("2031-01-01", "Mill", building::setup()).add("2031-01-01", "Mill", bedding).add("2031-06-01", "", OwnMaterial{"Beet pulp", {}, {}, {}, {}, {}, {}});
    made.add("2031-02-01", "Mill", Feed{{300, Unit::g}, "beet PULP", {}});
    return made.entries();
}

Entry withId(const Entries& entries, std::int64_t id)
{
    return *std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) { return entry.id == EntryId{id}; });
}

}

TEST(EditOfMaterials, TakingAwayOneThatEntriesNameIsRefusedAndNamesTheFirst)
{
    Edit edit;
    edit.deleted = {EntryId{3}};
    EditEffect effect = materials::applyEdit(withPulp(), edit);
    ASSERT_TRUE(effect.refusal);
    EXPECT_EQ(effect.refusal->reason, RefusalReason::itemUnknown);
    EXPECT_EQ(effect.after[effect.refusal->entry].id, EntryId{4});

    Edit renamed;
    renamed.replaced = {withId(withPulp(), 3)};
    std::get<OwnMaterial>(renamed.replaced[0].action).name = "Pulp";
    EXPECT_TRUE(materials::applyEdit(withPulp(), renamed).refusal);
    std::get<OwnMaterial>(renamed.replaced[0].action).name = "BEET PULP";
    EXPECT_FALSE(materials::applyEdit(withPulp(), renamed).refusal);

    edit.deleted = {EntryId{3}, EntryId{4}};
    EXPECT_FALSE(materials::applyEdit(withPulp(), edit).refusal) << "nothing names it any more";
}

TEST(EditOfMaterials, AnEntryMustNameWhatIsKnown)
{
    const auto refused = [](Action action) {
        Edit edit;
        edit.added = {entry("2031-07-01", "Mill", std::move(action))};
        const EditEffect effect = materials::applyEdit(withPulp(), edit);
        return effect.refusal && effect.refusal->reason == RefusalReason::itemUnknown;
    };
    EXPECT_TRUE(refused(Feed{{1, Unit::kg}, "moon rock", {}}));
    EXPECT_TRUE(refused(Cover{{}, "moon rock"}));
    EXPECT_TRUE(refused(Bed{{1, Unit::kg}, "", {}}));
    EXPECT_TRUE(refused(Stock{{1, Unit::kg}, "Lumbricus lunaris", {}}));
    EXPECT_FALSE(refused(Feed{{1, Unit::kg}, "", {}}));
    EXPECT_FALSE(refused(Feed{{1, Unit::kg}, "beet pulp", {}}));
    EXPECT_FALSE(refused(Cover{}));
    EXPECT_FALSE(refused(stock()));
}

TEST(EditOfMaterials, RulesOfTheStackComeFirst)
{
    Edit edit;
    edit.added = {entry("2031-07-01", "Mill", Feed{{1, Unit::kg}, "moon rock", {}}, 7)};
    EXPECT_EQ(materials::applyEdit(withPulp(), edit).refusal->reason, RefusalReason::slotMissing);
}

}
