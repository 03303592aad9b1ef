#include "core/exchange/journal_csv.h"
#include "core/exchange/refusal_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace tierloam::exchange {

using namespace journal;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

Entries journalOf(const std::string& rows)
{
    const ReadJournal read = readJournal("date,stack,action,slot,amount,unit,item,detail,note\n" + rows, {});
    for (const Fault& fault : read.faults) ADD_FAILURE() << faultText(QStringLiteral("J"), fault).toStdString();
    Entries entries = read.effect.after;
    std::int64_t id = 0;
    for (Entry& entry : entries) entry.id = EntryId{++id};
    return entries;
}

Entries twoTrays()
{
    return journalOf("2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n"
                     "2031-02-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-03-01,Mill,feed,,300,g,,,\n2031-07-01,Mill,rotate,,,,,,\n");
}

}

TEST(RefusalText, EveryReasonHasASentenceAndWhatIsAllowedOfItsOwn)
{
    const Entries entries = twoTrays();
    std::set<QString> sentences, allowed;
    int reasons = 0;
    for (int code = 0; code <= static_cast<int>(RefusalReason::entryGone); ++code) {
        Refusal refusal{static_cast<RefusalReason>(code), 3, "Mill", 5, 2, entries[3].date.day};
        const QString sentence = refusalText(refusal, entries);
        EXPECT_FALSE(sentence.isEmpty()) << code;
        EXPECT_TRUE(sentence.endsWith(u'.')) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains(u'%')) << sentence.toStdString();
        EXPECT_FALSE(allowedText(refusal, entries).contains(u'%'));
        sentences.insert(sentence);
        allowed.insert(allowedText(refusal, entries));
        ++reasons;
    }
    EXPECT_EQ(static_cast<int>(sentences.size()), reasons);
    EXPECT_EQ(static_cast<int>(allowed.size()), reasons);
}

TEST(RefusalText, OfAnEditNamesTheLaterEntryOnlyWhenItIsNotTheEditsOwn)
{
    Edit edit;
    edit.deleted = {EntryId{3}};
    EditEffect effect = applyEdit(twoTrays(), edit);
    EXPECT_EQ(editRefusalText(effect, edit).toStdString(),
              "«Lifted» of 1 Jul 2031, Mill would not be possible any more: A rotation needs two trays or more; trays of Mill that stand then: 1. "
              "Delete or change that entry first.");

    Edit own;
    Entry feed = twoTrays()[3];
    feed.id = EntryId::none;
    feed.slot = 5;
    own.added = {feed};
    effect = applyEdit(twoTrays(), own);
    EXPECT_EQ(editRefusalText(effect, own).toStdString(), "Mill has no slot 5 then; trays that stand: 2.");

    Edit fine;
    fine.deleted = {EntryId{4}};
    EXPECT_TRUE(editRefusalText(applyEdit(twoTrays(), fine), fine).isEmpty());
}

TEST(RefusalText, ListsWhatMoves)
{
    Edit edit;
    edit.deleted = {EntryId{3}};
    Entries entries = twoTrays();
    entries.pop_back();
    const EditEffect effect = applyEdit(entries, edit);
    EXPECT_EQ(movedText(effect).toStdString(), "Later entries that now fall to another batch: 1\n2031-03-01, Mill, feed");
    EXPECT_EQ(movedText(effect, entryWords).toStdString(), "Later entries that now fall to another batch: 1\n«Fed» of 1 Mar 2031, Mill");
    EXPECT_TRUE(movedText(EditEffect{}).isEmpty());
}

TEST(RefusalText, WarnsOfASecondSpecies)
{
    const Entries entries = journalOf("2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n"
                                      "2031-01-01,Mill,stock,,1,kg,,,\n2031-01-02,Mill,stock,,1,kg,Eisenia andrei,,\n");
    const auto warnings = warningsOf(entries);
    ASSERT_EQ(warnings.size(), 1u);
    EXPECT_THAT(warningText(warnings[0], entries).toStdString(), testing::AllOf(StartsWith("2031-01-02, Mill, stock: "), HasSubstr("as Eisenia andrei, not Eisenia fetida")));
}

}
