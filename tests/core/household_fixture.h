#pragma once

#include "core/household/household.h"
#include "tests/support/other_process.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QtCore/qtestsupport_core.h>

#include <gtest/gtest.h>

#include <map>

/// A household on a file of its own, with a clock that stands and estimates that cost nothing, and what its signals said.
namespace tierloam::household {

inline Day day(int year, unsigned month, unsigned dayOfMonth)
{
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

inline journal::Entry entry(journal::Action action, Day on, std::string stack = "Scullery")
{
    journal::Entry made;
    made.date.day = on;
    made.stack = std::move(stack);
    made.action = std::move(action);
    return made;
}

inline journal::Entry feed(double grams, Day on) { return entry(journal::Feed{Amount{grams, Unit::g}, "", {}}, on); }

/// A stack that is set up and bedded.
inline journal::Entries newStack(Day on, const std::string& name = "Scullery")
{
    return {entry(journal::Setup{}, on, name), entry(journal::Bed{Amount{600, Unit::g}, "corrugated cardboard shredded", {}}, on, name),
            entry(journal::Stock{Amount{300, Unit::g}, "", {}}, on, name)};
}

class HouseholdTest : public testing::Test {
protected:
    static constexpr int patience = 20000; ///< ms until a test gives up waiting

    const Day start = day(2031, 3, 1);
    const Day today = day(2031, 5, 1);

    QString path() const { return folder_.filePath(QStringLiteral("mill.tierloam")); }
    QString folder() const { return folder_.path(); }

    static Household::Settings quickSettings()
    {
        Household::Settings settings;
        settings.createIfAbsent = true;
        settings.reckon = [](const journal::Entries& entries, const reckoning::Options& options, std::stop_token) {
            auto made = std::make_shared<reckoning::Reckoning>();
            made->asOf = options.asOf;
            made->members = options.members;
            made->journalDigest = journal::digest(entries);
            return std::shared_ptr<const reckoning::Reckoning>{std::move(made)};
        };
        return settings;
    }

    /// Opens (or opens anew) the household and listens.
    Household& open(const Household::Settings& settings = quickSettings())
    {
        household_.reset();
        recorded_.clear();
        failed_.clear();
        notices_.clear();
        changes_.clear();
        auto result = Household::open(path(), clock, settings);
        if (const auto* failure = std::get_if<store::OpenFailure>(&result)) {
            ADD_FAILURE() << failure->why.toStdString();
            std::abort();
        }
        household_ = std::move(std::get<std::unique_ptr<Household>>(result));
        QObject::connect(household_.get(), &Household::recorded, [this](Ticket ticket, const std::vector<journal::EntryId>& ids) { recorded_[ticket] = ids; });
        QObject::connect(household_.get(), &Household::failed, [this](Ticket ticket, const QString& why) { failed_[ticket] = why; });
        QObject::connect(household_.get(), &Household::notice, [this](const QString& text) { notices_ << text; });
        QObject::connect(household_.get(), &Household::changed, [this](const Changes& changes) { changes_.push_back(changes); });
        return *household_;
    }
    Household& household() { return *household_; }
    void close() { household_.reset(); }

    bool answered(Ticket ticket) const { return recorded_.contains(ticket) || failed_.contains(ticket); }
    /// Waits for a verb; true when it was recorded.
    bool done(Ticket ticket)
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return answered(ticket); }, patience));
        return recorded_.contains(ticket);
    }
    /// Records and waits; the id of the first entry.
    journal::EntryId recordNow(const journal::Entries& entries)
    {
        const Ticket ticket = household().recordAll(entries, QStringLiteral("Record"));
        if (!done(ticket)) {
            ADD_FAILURE() << failed_[ticket].toStdString();
            return {};
        }
        return recorded_[ticket].front();
    }
    /// Presses undo or redo and waits until it is written or told to have failed.
    void undoNow() { press([&] { household().undoStack()->undo(); }); }
    void redoNow() { press([&] { household().undoStack()->redo(); }); }

    journal::Entries entries() { return household().journal()->entries; }
    journal::Entries inFile() const
    {
        auto file = store::HouseholdFile::open(path(), store::HouseholdFile::Mode::readOnly);
        if (const auto* failure = std::get_if<store::OpenFailure>(&file)) {
            ADD_FAILURE() << failure->why.toStdString();
            return {};
        }
        return std::get<journal::Entries>(std::get<std::unique_ptr<store::HouseholdFile>>(file)->entries());
    }

    std::shared_ptr<FixedClock> clock = std::make_shared<FixedClock>(today);
    std::map<Ticket, std::vector<journal::EntryId>> recorded_;
    std::map<Ticket, QString> failed_;
    QStringList notices_;
    std::vector<Changes> changes_;

private:
    template <class Press>
    void press(Press pressed)
    {
        const auto before = recorded_.size() + failed_.size();
        pressed();
        EXPECT_TRUE(QTest::qWaitFor([&] { return recorded_.size() + failed_.size() > before; }, patience));
    }

    QTemporaryDir folder_;
    std::unique_ptr<Household> household_;
};

}
