#include "core/store/writer.h"
#include "tests/core/store_samples.h"
#include "tests/support/other_process.h"

#include <atomic>
#include <future>
#include <semaphore>
#include <thread>

namespace tierloam::store {

namespace {

using namespace samples;
using namespace std::chrono_literals;
using Mode = HouseholdFile::Mode;

std::unique_ptr<Writer> writerOn(const QString& path, Contents& contents, std::chrono::milliseconds busyTimeout = 5s)
{
    auto result = Writer::open(path, Mode::createIfAbsent, busyTimeout, contents);
    if (auto* failure = std::get_if<OpenFailure>(&result)) ADD_FAILURE() << failure->why.toStdString();
    return std::move(std::get<std::unique_ptr<Writer>>(result));
}

WriteJob job(double grams, std::uint64_t series = 1)
{
    WriteJob made;
    made.edit.added = {feed(grams)};
    made.series = series;
    return made;
}

WriteAnswer answerTo(Writer& writer, WriteJob asked)
{
    const auto answer = std::make_shared<std::promise<WriteAnswer>>();
    writer.write(std::move(asked), [answer](WriteAnswer given) { answer->set_value(std::move(given)); });
    return answer->get_future().get();
}

Look lookAt(Writer& writer)
{
    const auto answer = std::make_shared<std::promise<Look>>();
    writer.look([answer](Look given) { answer->set_value(std::move(given)); });
    return answer->get_future().get();
}

TEST(StoreWriter, SaysWhyAFileCannotBeOpened)
{
    const Place place;
    place.put("junk");
    Contents contents;
    auto result = Writer::open(place.path(), Mode::mustExist, 1s, contents);
    EXPECT_EQ(std::get<OpenFailure>(result).problem, OpenProblem::notAHousehold);
}

/// A household of so many rows that a copy of it takes more than a moment.
std::unique_ptr<Writer> writerOfMany(const QString& path, Contents& contents)
{
    auto writer = writerOn(path, contents);
    WriteJob many = job(7);
    for (int i = 0; i < 4000; ++i) many.edit.added.push_back(feed(1 + i));
    EXPECT_FALSE(answerTo(*writer, std::move(many)).failure);
    return writer;
}

/// A copy that stands still, as on a slow stick, until it is let go.
struct SlowCopy {
    std::binary_semaphore atWork{0}, go{0};
    std::atomic<bool> held{false};
    std::promise<std::optional<QString>> answer;
    CopyControl control()
    {
        CopyControl made;
        made.progress = [this](double) {
            if (held.exchange(true)) return;
            atWork.release();
            go.acquire();
        };
        return made;
    }
};

TEST(StoreWriter, WhatIsRecordedWhileACopyIsWrittenDoesNotWaitForIt)
{
    const Place place;
    Contents contents;
    const auto writer = writerOfMany(place.path(), contents);
    SlowCopy slow;
    auto copied = slow.answer.get_future();
    writer->saveCopy(place.path("copy.tierloam"), slow.control(), [&](std::optional<QString> why) { slow.answer.set_value(std::move(why)); });
    ASSERT_TRUE(slow.atWork.try_acquire_for(20s));
    const auto answer = std::make_shared<std::promise<WriteAnswer>>();
    auto written = answer->get_future();
    writer->write(job(9), [answer](WriteAnswer given) { answer->set_value(std::move(given)); });
    const bool meanwhile = written.wait_for(20s) == std::future_status::ready;
    EXPECT_TRUE(meanwhile);
    slow.go.release();
    EXPECT_EQ(copied.get(), std::nullopt);
    EXPECT_FALSE(written.get().failure);
    const auto copy = opened(place.path("copy.tierloam"), Mode::mustExist);
    EXPECT_EQ(journalOf(*copy).size(), 4001U) << "what was there when it was asked for";
}

TEST(StoreWriter, ACopyUnderWayIsCalledOffAtTheEnd)
{
    const Place place;
    Contents contents;
    auto writer = writerOfMany(place.path(), contents);
    SlowCopy slow;
    auto copied = slow.answer.get_future();
    writer->saveCopy(place.path("copy.tierloam"), slow.control(), [&](std::optional<QString> why) { slow.answer.set_value(std::move(why)); });
    ASSERT_TRUE(slow.atWork.try_acquire_for(20s));
    auto closing = std::async(std::launch::async, [&] { writer.reset(); });
    std::this_thread::sleep_for(1s); // the writer is going by now, else the copy would come to its end
    slow.go.release();
    closing.get();
    EXPECT_TRUE(copied.get());
    EXPECT_FALSE(QFile::exists(place.path("copy.tierloam")));
}

TEST(StoreWriter, AFileThatWasMovedAwayIsCopiedAllTheSame)
{
    const Place place;
    Contents contents;
    const auto writer = writerOfMany(place.path(), contents);
    ASSERT_TRUE(QFile::rename(place.path(), place.path("elsewhere.tierloam")));
    place.put("another file by now");
    std::promise<std::optional<QString>> answer;
    writer->saveCopy(place.path("copy.tierloam"), {}, [&](std::optional<QString> why) { answer.set_value(std::move(why)); });
    const auto why = answer.get_future().get();
    EXPECT_FALSE(why) << why->toStdString();
}

// The rows are read while every page is being looked at; what is wrong elsewhere in the file still keeps it shut, and as it is.
TEST(StoreWriter, AFileThatIsNotWholeIsRefusedThoughItsRowsCanBeRead)
{
    const Place place;
    Contents contents;
    {
        const auto writer = writerOn(place.path(), contents);
        for (int i = 0; i < 30; ++i) ASSERT_FALSE(answerTo(*writer, job(7 + i)).failure);
    }
    const QByteArray whole = place.bytes();
    constexpr qsizetype unusedPages = 36; // "Total number of freelist pages" in the header, sqlite.org/fileformat2.html
    QByteArray damaged = whole;
    damaged[unusedPages + 3] = static_cast<char>(damaged[unusedPages + 3] + 1);
    place.put(damaged);
    {
        auto beside = HouseholdFile::open(place.path(), Mode::mustExist, 1s, HouseholdFile::Check::beside);
        ASSERT_TRUE(std::holds_alternative<std::unique_ptr<HouseholdFile>>(beside)) << "else nothing goes on beside";
        const auto& file = *std::get<std::unique_ptr<HouseholdFile>>(beside);
        EXPECT_EQ(std::get<journal::Entries>(file.entries()).size(), 30U);
        const auto why = std::get<std::unique_ptr<HouseholdFile>>(beside)->whyNotWhole();
        ASSERT_TRUE(why);
        EXPECT_EQ(why->problem, OpenProblem::damaged);
        EXPECT_FALSE(std::get<std::unique_ptr<HouseholdFile>>(beside)->whyNotWhole()) << "told once";
    }
    auto refused = Writer::open(place.path(), Mode::mustExist, 1s, contents);
    ASSERT_TRUE(std::holds_alternative<OpenFailure>(refused));
    EXPECT_EQ(std::get<OpenFailure>(refused).problem, OpenProblem::damaged);
    EXPECT_FALSE(std::get<OpenFailure>(refused).why.isEmpty());
    EXPECT_EQ(place.bytes(), damaged) << "left as it is";
    for (const qsizetype kept : {whole.size() - 1, whole.size() / 2, whole.size() - 4096}) {
        place.put(whole.left(kept));
        refused = Writer::open(place.path(), Mode::mustExist, 1s, contents);
        ASSERT_TRUE(std::holds_alternative<OpenFailure>(refused)) << kept;
        EXPECT_EQ(std::get<OpenFailure>(refused).problem, OpenProblem::damaged) << kept;
        EXPECT_EQ(place.bytes(), whole.left(kept));
    }
    place.put(whole);
    EXPECT_EQ(writerOn(place.path(), contents)->path(), place.path());
    EXPECT_EQ(contents.entries.size(), 30U);
}

TEST(StoreWriter, AnswersWithTheRowsAsTheyStand)
{
    const Place place;
    Contents contents;
    {
        const auto writer = writerOn(place.path(), contents);
        const auto answer = answerTo(*writer, job(7));
        ASSERT_FALSE(answer.failure);
        ASSERT_EQ(answer.stored.size(), 1U);
        EXPECT_EQ(answer.stored[0].id, answer.ids[0]);
        EXPECT_EQ(answer.stored[0].positionInDay, 1);
        WriteJob rename;
        rename.setting = {QStringLiteral("name"), QStringLiteral("Mill")};
        EXPECT_FALSE(answerTo(*writer, rename).failure);
    }
    const auto writer = writerOn(place.path(), contents);
    EXPECT_EQ(contents.entries.size(), 1U);
    EXPECT_EQ(contents.settings.at(QStringLiteral("name")), QStringLiteral("Mill"));
}

TEST(StoreWriter, DoesWhatWasAskedForInOrderBeforeItEnds)
{
    const Place place;
    std::vector<int> order;
    {
        Contents contents;
        const auto writer = writerOn(place.path(), contents);
        for (int i = 0; i < 20; ++i)
            writer->write(job(i + 1), [&order, i](const WriteAnswer& answer) {
                if (!answer.failure) order.push_back(i);
            });
    }
    ASSERT_EQ(order.size(), 20U);
    EXPECT_TRUE(std::is_sorted(order.begin(), order.end()));
    EXPECT_EQ(journalOf(*opened(place.path())).size(), 20U);
}

TEST(StoreWriter, AfterAFailureTheRestOfTheSeriesFailsUntried)
{
    const Place place;
    Contents contents;
    const auto writer = writerOn(place.path(), contents, 100ms);
    auto other = tests::OtherProcess::holdingLock(place.path());
    ASSERT_TRUE(other.ready());
    EXPECT_TRUE(answerTo(*writer, job(1, 1)).failure->inUse);
    ASSERT_TRUE(other.letGo());
    const auto second = answerTo(*writer, job(2, 1));
    ASSERT_TRUE(second.failure);
    EXPECT_FALSE(second.failure->inUse);
    EXPECT_FALSE(answerTo(*writer, job(3, 2)).failure);
    EXPECT_EQ(journalOf(*opened(place.path())).size(), 1U);
}

TEST(StoreWriter, SeesForeignWritesOnceAndAMovedFile)
{
    const Place place;
    Contents contents;
    const auto writer = writerOn(place.path(), contents);
    EXPECT_FALSE(lookAt(*writer).foreign);
    EXPECT_FALSE(answerTo(*writer, job(1)).failure);
    EXPECT_FALSE(lookAt(*writer).foreign) << "its own write is no news";
    idsOf(opened(place.path(), Mode::mustExist)->apply({{feed(2)}, {}, {}}));
    const auto look = lookAt(*writer);
    ASSERT_TRUE(look.foreign);
    EXPECT_EQ(look.foreign->entries.size(), 2U);
    EXPECT_FALSE(lookAt(*writer).foreign);
    ASSERT_TRUE(QFile::rename(place.path(), place.path("b.tierloam")));
    EXPECT_TRUE(lookAt(*writer).movedAway);
    EXPECT_TRUE(answerTo(*writer, job(3)).failure->gone);
}

TEST(StoreWriter, ManyAskersAtOnceLoseNothing)
{
    const Place place;
    std::atomic<int> written{0};
    {
        Contents contents;
        const auto writer = writerOn(place.path(), contents);
        std::vector<std::jthread> askers;
        for (int thread = 0; thread < 4; ++thread)
            askers.emplace_back([&] {
                for (int i = 0; i < 10; ++i) {
                    writer->write(job(1), [&](const WriteAnswer& answer) { written += answer.failure ? 0 : 1; });
                    writer->look([](const Look&) {});
                }
                writer->finish();
            });
        askers.clear();
        EXPECT_EQ(written, 40) << "finish() waits for all";
    }
    EXPECT_EQ(journalOf(*opened(place.path())).size(), 40U);
}

}

}
