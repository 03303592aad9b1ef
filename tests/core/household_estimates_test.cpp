#include "core/household/reckoner.h"
#include "tests/core/household_fixture.h"

#include <QDirIterator>

#include <atomic>
#include <new>
#include <semaphore>

namespace tierloam::household {

namespace {

using namespace std::chrono_literals;

class HouseholdEstimates : public HouseholdTest {
protected:
    void waitForEstimates()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return household().reckoningIsCurrent(); }, patience));
    }
};

TEST_F(HouseholdEstimates, ComeAfterOpeningAndAfterEachEditThatMatters)
{
    std::atomic<int> runs{0};
    auto settings = quickSettings();
    settings.reckon = [&runs, inner = settings.reckon](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
        ++runs;
        return inner(entries, options, stop);
    };
    open(settings);
    EXPECT_EQ(household().reckoning(), nullptr);
    EXPECT_FALSE(household().reckoningIsCurrent());
    waitForEstimates();
    EXPECT_EQ(runs, 1);
    recordNow(newStack(start));
    waitForEstimates();
    EXPECT_EQ(runs, 2);
    EXPECT_EQ(household().reckoning()->journalDigest, journal::digest(entries()));
    ASSERT_TRUE(done(household().rename(QStringLiteral("Mill"))));
    EXPECT_TRUE(household().reckoningIsCurrent());
    EXPECT_EQ(runs, 2) << "a name changes no estimate";
    undoNow();
    undoNow();
    waitForEstimates();
    EXPECT_EQ(household().reckoning()->journalDigest, journal::digest({}));
}

/// Estimates of the session before stand there before the model has run; what has changed since, a damaged file, another release or another day do not
/// stay for longer than until it has.
class KeptFromTheSessionBefore : public HouseholdEstimates {
protected:
    KeptFromTheSessionBefore()
    {
        settings = quickSettings();
        settings.reckon = reckoning::reckon;
        settings.members = 64;
        settings.estimatesFolder = folder() + QStringLiteral("/kept");
        settings.program = "1.0";
        settings.reckon = [this, inner = settings.reckon](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
            const std::stop_callback onStop{stop, [this] { go.release(); }};
            go.acquire(); // each run waits until it is let go
            int snapshots = 0;
            if (options.previous)
                for (const reckoning::StackReckoning& stack : options.previous->stacks) snapshots += static_cast<int>(stack.snapshots.size());
            wentOn = snapshots;
            return inner(entries, options, stop);
        };
        go.release(20);
        open(settings);
        waitForEstimates();
        recordNow(newStack(start));
        waitForEstimates();
        close(); // the reckoner ends when it has kept them
        while (go.try_acquire()) {}
    }
    /// Opens without letting the model run; true when estimates stand there all the same.
    bool thereAtOnce()
    {
        open(settings);
        const bool there = QTest::qWaitFor([&] { return household().reckoning() != nullptr; }, 2000);
        current = household().reckoningIsCurrent();
        go.release(20);
        waitForEstimates();
        while (go.try_acquire()) {}
        return there;
    }
    QString keptFile() const
    {
        const QStringList files = QDir{settings.estimatesFolder}.entryList(QDir::Files);
        return files.size() == 1 ? settings.estimatesFolder + QLatin1Char{'/'} + files.front() : QString{};
    }

    QStringList memberFiles() const
    {
        QStringList files;
        QDirIterator each{settings.estimatesFolder, {QStringLiteral("*.members")}, QDir::Dirs};
        while (each.hasNext())
            for (const QFileInfo& file : QDir{each.next()}.entryInfoList(QDir::Files)) files << file.filePath();
        return files;
    }

    Household::Settings settings;
    std::atomic<int> wentOn{0};          ///< snapshots that the last run was given
    std::counting_semaphore<> go{0};
    bool current = false;
};

TEST_F(KeptFromTheSessionBefore, StandThereAtOnceAndAreCurrentOnTheSameDay)
{
    ASSERT_TRUE(thereAtOnce());
    EXPECT_TRUE(current);
    EXPECT_EQ(QFile::permissions(keptFile()) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions{});
}

TEST_F(KeptFromTheSessionBefore, ShowTheDayBeforeUntilThereAreNewOnes)
{
    clock->set(today + std::chrono::days{1});
    ASSERT_TRUE(thereAtOnce());
    EXPECT_FALSE(current);
    EXPECT_EQ(household().reckoning()->asOf, today + std::chrono::days{1});
}

TEST_F(KeptFromTheSessionBefore, AreNotShownWhenTheyDoNotHold)
{
    QFile file{keptFile()};
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    QByteArray bytes = file.readAll();
    bytes[bytes.size() / 2] = static_cast<char>(bytes[bytes.size() / 2] ^ 1);
    file.seek(0);
    file.write(bytes);
    file.close();
    EXPECT_FALSE(thereAtOnce()) << "damaged";
    EXPECT_TRUE(thereAtOnce()) << "and made anew silently";
    settings.program = "1.1";
    EXPECT_FALSE(thereAtOnce()) << "another release";
    clock->set(today - std::chrono::days{1});
    EXPECT_FALSE(thereAtOnce()) << "from the future";
    EXPECT_TRUE(notices_.isEmpty());
}

TEST_F(KeptFromTheSessionBefore, MembersAreThereForTheNextRunToGoOnFrom)
{
    const auto wentOnFrom = [this] {
        wentOn = -1;
        go.release(20);
        open(settings);
        EXPECT_TRUE(QTest::qWaitFor([&] { return wentOn >= 0; }, patience));
        return wentOn.load();
    };
    ASSERT_EQ(memberFiles().size(), 1);
    const QString file = memberFiles().front();
    EXPECT_EQ(QFile::permissions(file) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions{});
    ASSERT_EQ(wentOnFrom(), 2) << "of yesterday and of a month ago";
    recordNow(newStack(start, "Barn"));
    waitForEstimates();
    close();
    EXPECT_EQ(memberFiles().size(), 2);

    QFile damaged{file};
    ASSERT_TRUE(damaged.open(QIODevice::ReadWrite));
    damaged.resize(damaged.size() / 2);
    damaged.close();
    const qint64 half = QFileInfo{file}.size();
    EXPECT_EQ(wentOnFrom(), 2) << "the other stack's alone";
    EXPECT_TRUE(QTest::qWaitFor([&] { return QFileInfo{file}.size() > half; }, patience)); // the kept estimates are of today: nothing tells that the run has ended
    close();
    EXPECT_EQ(wentOnFrom(), 4) << "made anew silently";
    EXPECT_TRUE(notices_.isEmpty());
}

TEST_F(KeptFromTheSessionBefore, AnEntryMadeAtOnceGoesOnFromThemToo)
{
    open(settings); // the first run waits
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().reckoning() != nullptr; }, patience));
    go.release(20);
    recordNow({feed(300, today)});
    waitForEstimates();
    EXPECT_GE(wentOn, 2) << "from what was kept, or from what the first run made of it";
    EXPECT_EQ(household().reckoning()->journalDigest, journal::digest(entries()));
}

TEST_F(HouseholdEstimates, TheNextDayBringsNewOnes)
{
    auto settings = quickSettings();
    settings.lookEvery = 20ms;
    open(settings);
    waitForEstimates();
    EXPECT_EQ(household().reckoning()->asOf, today);
    clock->set(today + std::chrono::days{1});
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().reckoning()->asOf == today + std::chrono::days{1}; }, patience));
}

TEST_F(HouseholdEstimates, ANewerEditStopsAnOlderRun)
{
    std::counting_semaphore<> began{0};
    std::atomic<int> stopped{0};
    auto settings = quickSettings();
    settings.reckon = [&, inner = settings.reckon](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
        if (entries.size() == 3) { // the first edit's run goes on until it is stopped
            began.release();
            std::binary_semaphore told{0};
            const std::stop_callback onStop{stop, [&] { told.release(); }};
            told.acquire();
            ++stopped;
            return std::shared_ptr<const reckoning::Reckoning>{};
        }
        return inner(entries, options, stop);
    };
    open(settings);
    waitForEstimates();
    recordNow(newStack(start));
    began.acquire();
    EXPECT_FALSE(household().reckoningIsCurrent());
    recordNow({feed(1, today)});
    waitForEstimates();
    EXPECT_EQ(stopped, 1);
    EXPECT_EQ(household().reckoning()->journalDigest, journal::digest(entries()));
}

TEST_F(HouseholdEstimates, ClosingStopsARun)
{
    std::counting_semaphore<> began{0};
    auto settings = quickSettings();
    settings.reckon = [&](const journal::Entries&, const reckoning::Options&, std::stop_token stop) {
        began.release();
        std::binary_semaphore told{0};
        const std::stop_callback onStop{stop, [&] { told.release(); }};
        told.acquire();
        return std::shared_ptr<const reckoning::Reckoning>{};
    };
    open(settings);
    began.acquire();
    close(); // would hang otherwise
}

TEST_F(HouseholdEstimates, TheRealModelIsBehindTheDoor)
{
    auto settings = quickSettings();
    settings.reckon = {};
    settings.members = 64;
    open(settings);
    recordNow(newStack(start));
    waitForEstimates();
    ASSERT_EQ(household().reckoning()->stacks.size(), 1U);
    EXPECT_EQ(household().reckoning()->stacks[0].name, "Scullery");
    EXPECT_GT(household().reckoning()->stacks[0].now.colonyKg.p50, 0.0);
}

/// What there is of a long run is shown, and is not taken for the whole.
TEST_F(HouseholdEstimates, OfManyStacksComeBitByBit)
{
    std::binary_semaphore seen{0};
    auto settings = quickSettings();
    settings.reckon = [&, inner = settings.reckon](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
        auto whole = inner(entries, options, stop);
        if (entries.empty()) return whole;
        EXPECT_EQ(options.shownFirst, std::vector<std::string>{"Scullery"});
        options.progress(1, 200, whole);
        options.progress(2, 200, nullptr);
        seen.acquire();
        return whole;
    };
    open(settings);
    waitForEstimates();
    household().setShownFirst({"Scullery"});
    const auto before = household().reckoning();
    recordNow(newStack(start));
    EXPECT_TRUE(QTest::qWaitFor([&] { return household().reckoningProgress().made == 2; }, patience));
    EXPECT_EQ(household().reckoningProgress().all, 200U);
    EXPECT_NE(household().reckoning(), before);
    EXPECT_FALSE(household().reckoningIsCurrent());
    seen.release();
    waitForEstimates();
    EXPECT_EQ(household().reckoningProgress().all, 0U);
}

/// Memory may give out in a run: that is told, the program stays, and the next change is reckoned.
TEST_F(HouseholdEstimates, ThatCannotBeMadeAreToldAndTriedAgainAfterTheNextChange)
{
    std::atomic<bool> scarce{true};
    auto settings = quickSettings();
    settings.reckon = [&, inner = settings.reckon](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
        if (scarce) throw std::bad_alloc{};
        return inner(entries, options, stop);
    };
    open(settings);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !notices_.isEmpty(); }, patience));
    EXPECT_TRUE(notices_.front().contains(QStringLiteral("could not be made")));
    EXPECT_EQ(household().reckoning(), nullptr);
    EXPECT_FALSE(household().reckoningIsCurrent());
    scarce = false;
    recordNow(newStack(start));
    waitForEstimates();
    EXPECT_EQ(notices_.size(), 1);
}

/// What is kept for the next session is a help: the answer stands without it.
TEST(Reckoner, KeepsItsAnswerWhenWhatItRestsOnCannotBeKept)
{
    std::atomic<int> answers{0}, failures{0};
    std::counting_semaphore<> answered{0};
    Reckoner::Memory memory;
    memory.keep = [](const Reckoner::Request&, const reckoning::Reckoning&, const std::stop_token&) { throw std::bad_alloc{}; };
    {
        Reckoner reckoner{[](const journal::Entries&, const reckoning::Options&, std::stop_token) { return std::make_shared<const reckoning::Reckoning>(); },
                          [&](std::uint64_t, const std::shared_ptr<const reckoning::Reckoning>&, bool) {
                              ++answers;
                              answered.release();
                          },
                          memory, {}, [&](std::uint64_t) { ++failures; }};
        for (std::uint64_t number = 1; number <= 2; ++number) {
            Reckoner::Request request;
            request.number = number;
            reckoner.ask(std::move(request));
            answered.acquire();
        }
    }
    EXPECT_EQ(answers, 2);
    EXPECT_EQ(failures, 0);
}

/// Without any Qt: fit for the thread sanitizer.
TEST(Reckoner, AnswersTheNewestOfManyRequestsLast)
{
    std::atomic<std::uint64_t> newest{0};
    std::atomic<int> answers{0};
    std::binary_semaphore last{0};
    constexpr std::uint64_t many = 200;
    {
        Reckoner reckoner{[](const journal::Entries&, const reckoning::Options&, std::stop_token stop) -> std::shared_ptr<const reckoning::Reckoning> {
                              for (int i = 0; i < 100; ++i) {
                                  if (stop.stop_requested()) return nullptr;
                                  std::this_thread::yield();
                              }
                              return std::make_shared<reckoning::Reckoning>();
                          },
                          [&](std::uint64_t number, const std::shared_ptr<const reckoning::Reckoning>& made, bool whole) {
                              EXPECT_TRUE(whole);
                              EXPECT_NE(made, nullptr);
                              EXPECT_GT(number, newest);
                              newest = number;
                              ++answers;
                              if (number == many) last.release();
                          }};
        for (std::uint64_t i = 1; i <= many; ++i) reckoner.ask({i, journal::Entries(3), {}});
        last.acquire();
    }
    EXPECT_EQ(newest, many);
    EXPECT_LE(answers, static_cast<int>(many));
}

TEST(Reckoner, NeverAnswersAStoppedRun)
{
    std::binary_semaphore began{0};
    std::binary_semaphore answered{0};
    std::vector<std::uint64_t> numbers;
    Reckoner reckoner{[&](const journal::Entries& entries, const reckoning::Options&, std::stop_token stop) {
                          if (entries.empty()) {
                              began.release();
                              std::binary_semaphore told{0};
                              const std::stop_callback onStop{stop, [&] { told.release(); }};
                              told.acquire();
                          }
                          return std::make_shared<const reckoning::Reckoning>(); // even when it hands something over
                      },
                      [&](std::uint64_t number, const std::shared_ptr<const reckoning::Reckoning>&, bool) {
                          numbers.push_back(number);
                          answered.release();
                      }};
    reckoner.ask({1, {}, {}});
    began.acquire();
    reckoner.ask({2, journal::Entries(1), {}});
    answered.acquire();
    EXPECT_EQ(numbers, std::vector<std::uint64_t>{2});
}

}

}
