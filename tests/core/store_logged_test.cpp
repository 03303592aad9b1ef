#include "tests/core/store_samples.h"

// Readings of loggers in the household file: one transaction with the days' entries, taken back and brought back whole.
namespace tierloam::store {

namespace {

using namespace samples;

std::int64_t secondOf(Day day, int hour) { return std::chrono::duration_cast<std::chrono::seconds>(day.time_since_epoch()).count() + hour * 3600LL; }

LoggedJob twoDays()
{
    LoggedJob job;
    job.add = {{"Scullery", LoggedKind::bin, {{secondOf(day(2031, 5, 1), 0), 20.0}, {secondOf(day(2031, 5, 1), 23), 22.0}, {secondOf(day(2031, 5, 2), 0), 25.0}}},
               {"Scullery", LoggedKind::humidity, {{secondOf(day(2031, 5, 2), 12), 60.0}}}};
    return job;
}

LoggedDays daysOf(const HouseholdFile& file)
{
    const auto read = file.loggedDays();
    if (const auto* failure = std::get_if<WriteFailure>(&read)) ADD_FAILURE() << failure->why.toStdString();
    return std::get<LoggedDays>(read);
}

journal::Entry meanEntry(Day on, double bin) { return entry(journal::Reading{celsius(bin), {}, {}, {}, {}, {}}, on); }

}

TEST(StoreLogged, ReadingsAndTheirEntriesAreOneTransaction)
{
    const Place place;
    const auto file = opened(place.path());
    const auto both = file->applyWithReadings({{meanEntry(day(2031, 5, 1), 21), meanEntry(day(2031, 5, 2), 25)}, {}, {}}, twoDays(), QStringLiteral("l.csv"));
    const auto ids = idsOf(both.written);
    ASSERT_EQ(ids.size(), 2U);
    ASSERT_EQ(both.series.size(), 2U);
    const LoggedDays expected{{"Scullery", {{day(2031, 5, 1), LoggedKind::bin, 2, 20.0, 21.0, 22.0}, {day(2031, 5, 2), LoggedKind::bin, 1, 25.0, 25.0, 25.0},
                                            {day(2031, 5, 2), LoggedKind::humidity, 1, 60.0, 60.0, 60.0}}}};
    EXPECT_EQ(daysOf(*file), expected);

    const auto before = std::get<LoggedBefore>(file->loggedBetween("Scullery", day(2031, 5, 1), day(2031, 5, 1)));
    EXPECT_EQ(before.readings[0], (std::vector<LoggedReading>{{secondOf(day(2031, 5, 1), 0), 20.0}, {secondOf(day(2031, 5, 1), 23), 22.0}}));
    EXPECT_EQ(before.entries, (std::map<Day, journal::EntryId>{{day(2031, 5, 1), ids[0]}})) << "the entry that the import made, to be brought up to date by the next";
    EXPECT_TRUE(std::get<LoggedBefore>(file->loggedBetween("Mill", day(2031, 1, 1), day(2032, 1, 1))).readings[0].empty());

    LoggedJob back;
    back.remove = both.series;
    EXPECT_TRUE(idsOf(file->applyWithReadings({{}, {}, ids}, back).written).empty());
    EXPECT_TRUE(daysOf(*file).empty());
    EXPECT_TRUE(journalOf(*file).empty());
    EXPECT_TRUE(failureOf(file->applyWithReadings({{}, {}, {}}, back).written).refused) << "they are gone already";

    LoggedJob again;
    again.bringBack = both.series;
    auto returned = journal::Entries{meanEntry(day(2031, 5, 1), 21), meanEntry(day(2031, 5, 2), 25)};
    for (std::size_t i = 0; i < 2; ++i) returned[i].id = ids[i];
    EXPECT_EQ(idsOf(file->applyWithReadings({returned, {}, {}}, again).written), ids);
    EXPECT_EQ(daysOf(*file), expected);
}

TEST(StoreLogged, NothingIsKeptOfAnImportThatFailsOrIsCalledOff)
{
    const Place place;
    const auto file = opened(place.path());
    idsOf(file->apply({{feed(100)}, {}, {}}));
    LoggedJob job = twoDays();
    job.add.front().readings.push_back({0, std::numeric_limits<double>::quiet_NaN()});
    EXPECT_TRUE(failureOf(file->applyWithReadings({{feed(200)}, {}, {}}, job, QStringLiteral("l.csv")).written).refused);
    std::stop_source stop;
    job = twoDays();
    job.add.front().readings.assign(5000, {0, 20.0});
    job.stop = stop.get_token();
    int told = 0;
    job.progress = [&](int done, int of) {
        ++told;
        EXPECT_LT(done, of);
        stop.request_stop();
    };
    const auto failure = failureOf(file->applyWithReadings({{feed(200)}, {}, {}}, job, QStringLiteral("l.csv")).written);
    EXPECT_TRUE(failure.why.contains(QStringLiteral("Called off"))) << failure.why.toStdString();
    EXPECT_EQ(told, 1);
    EXPECT_TRUE(daysOf(*file).empty());
    EXPECT_EQ(journalOf(*file).size(), 1U);
    const auto refusing = [](const journal::Entries&) { return std::optional{QStringLiteral("no")}; };
    EXPECT_EQ(failureOf(file->applyWithReadings({{feed(200)}, {}, {}}, twoDays(), QStringLiteral("l.csv"), refusing).written).why, QStringLiteral("no"));
    EXPECT_TRUE(daysOf(*file).empty());
}

TEST(StoreLogged, ReadingsComeBackWithTheDeletedEntriesOfTheirImport)
{
    const Place place;
    auto file = opened(place.path());
    const auto both = file->applyWithReadings({{meanEntry(day(2031, 5, 1), 21), meanEntry(day(2031, 5, 2), 25)}, {}, {}}, twoDays(), QStringLiteral("l.csv"));
    const auto ids = idsOf(both.written);
    const LoggedDays all = daysOf(*file);
    LoggedJob back;
    back.remove = both.series;
    EXPECT_TRUE(idsOf(file->applyWithReadings({{}, {}, ids}, back).written).empty());
    ASSERT_TRUE(daysOf(*file).empty());
    // Years later, in another session, one of them is taken out of the deleted entries.
    file.reset();
    file = opened(place.path());
    auto returned = meanEntry(day(2031, 5, 1), 21);
    returned.id = ids[0];
    EXPECT_EQ(idsOf(file->apply({{returned}, {}, {}})), std::vector{ids[0]});
    EXPECT_EQ(daysOf(*file), all);
    // One entry of two is no reason to lose readings; the last one is.
    auto other = meanEntry(day(2031, 5, 2), 25);
    other.id = ids[1];
    idsOf(file->apply({{other}, {}, {}}));
    idsOf(file->apply({{}, {}, {ids[0]}}));
    EXPECT_EQ(daysOf(*file), all);
    idsOf(file->apply({{}, {}, {ids[1]}}));
    EXPECT_TRUE(daysOf(*file).empty());
    // An entry that came another way moves none.
    const auto own = idsOf(file->apply({{feed(200)}, {}, {}}));
    idsOf(file->apply({{}, {}, own}));
    EXPECT_TRUE(daysOf(*file).empty());
}

TEST(StoreLogged, SeriesOfSeveralImportsAreSeenAsOneDay)
{
    const Place place;
    const auto file = opened(place.path());
    file->applyWithReadings({}, twoDays(), QStringLiteral("a.csv"));
    LoggedJob more;
    more.add = {{"Scullery", LoggedKind::bin, {{secondOf(day(2031, 5, 1), 12), 27.0}}}};
    file->applyWithReadings({}, more, QStringLiteral("b.csv"));
    const auto days = daysOf(*file);
    EXPECT_EQ(days.at("Scullery").front(), (LoggedDay{day(2031, 5, 1), LoggedKind::bin, 3, 20.0, 23.0, 27.0}));
    // And they are in every copy.
    ASSERT_FALSE(file->saveCopy(place.path("copy.tierloam")));
    EXPECT_EQ(daysOf(*opened(place.path("copy.tierloam"), HouseholdFile::Mode::readOnly)), days);
}

}
