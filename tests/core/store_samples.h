#pragma once

#include "core/store/household_file.h"
#include "core/store/text.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

/// Entries and files that the tests of the store share.
namespace tierloam::store::samples {

inline Day day(int year, unsigned month, unsigned dayOfMonth)
{
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

inline journal::Entry entry(journal::Action action, Day on = day(2031, 5, 1), std::string stack = "Scullery")
{
    journal::Entry made;
    made.date.day = on;
    made.stack = std::holds_alternative<journal::OwnMaterial>(action) ? std::string{} : std::move(stack);
    made.action = std::move(action);
    return made;
}

inline journal::Entry feed(double grams, Day on = day(2031, 5, 1))
{
    return entry(journal::Feed{Amount{grams, Unit::g}, "", {}}, on);
}

/// Every action once with all of its details and once with none that may be absent; odd numbers and marks throughout.
inline journal::Entries everyAction()
{
    using namespace journal;
    const auto share = [](double percent) { return Share::fromPercent(percent); };
    Entries all;
    const auto add = [&](Action action) { all.push_back(entry(std::move(action), day(2030, 1, 1) + std::chrono::days{all.size() / 3})); };
    add(Setup{});
    add(Setup{squareMetres(0.1 + 0.2), centimetres(11.3), 4, litres(0), Spigot::shut, Place::outdoors, celsius(-7.25), Stand::legs, 0xfedcba9876543210ULL});
    add(OwnMaterial{"Brewer's grain", {}, {}, {}, {}, {}, {}});
    add(OwnMaterial{"Trub; \"feines\"", SofteningClass::mineral, share(84.1), 2.0, 1e-7, 450.0, 4.0 / 3.0});
    add(Stock{{0.45, Unit::kg}, "", {}});
    add(Stock{{1.0 / 3.0, Unit::lb}, "Eisenia andrei", 5});
    add(Bed{{600, Unit::g}, "coir", {}});
    add(Bed{{21.1, Unit::oz}, "coir", share(74)});
    add(Feed{{1.25, Unit::cup}, "", {}});
    add(Feed{{3, Unit::floz}, "Kürbis", Side::back});
    add(Cover{{}, ""});
    add(Cover{Amount{30, Unit::g}, "newspaper shredded"});
    add(Water{{500, Unit::mL}});
    add(Routine{{0, Unit::L}, RoutineOf::water, {}});
    add(Routine{{25, Unit::g}, RoutineOf::cover, 3});
    add(Drain{{}, {}, {}, {}, Spigot::open});
    add(Drain{Amount{0, Unit::L}, false, 2.1, 12, Spigot::shut});
    add(Drain{Amount{0.25, Unit::gal}, true, {}, 0, {}});
    add(Flush{{4, Unit::L}, {}, {}, {}});
    add(Flush{{4, Unit::L}, litres(3.2), 0.9, 31});
    add(Reading{celsius(21.5), {}, {}, {}, {}, {}});
    add(Reading{celsius(-40), celsius(80), share(60), share(72.4), 5, 6.8});
    add(Check{centimetres(3), {}, {}, {}});
    add(Check{centimetres(0), share(0), share(100), WormsSeen::many});
    add(Weigh{{812, Unit::g}, {}});
    add(Weigh{{0, Unit::g}, share(12.5)});
    add(Count{{211, Unit::count}, {}});
    add(Count{{0, Unit::count}, litres(0.5)});
    add(TrayWeight{{7.4, Unit::kg}, {}});
    add(TrayWeight{{7.4, Unit::kg}, kilograms(1.1)});
    add(Rotate{});
    add(Loosen{});
    add(Lid{});
    add(Lid{true});
    add(Lid{false});
    add(Harvest{{5.5, Unit::kg}, {}, {}});
    add(Harvest{{9, Unit::L}, share(66), share(60)});
    add(Remove{{200, Unit::g}});
    add(Move{{150, Unit::g}, "Cellar, back"});
    add(Event{"smell", {}});
    add(Event{"away", day(2199, 12, 31)});
    add(Note{});
    add(Retire{});
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i % 4 == 1) all[i].slot = static_cast<int>(i % 3) + 1;
        if (i % 5 == 2) all[i].date.minuteOfDay = static_cast<int>(i * 33 % 1440);
        if (i % 3 == 0) all[i].note = "Zeile 1\nline 2, \"quoted\"; größe 10 µm \U0001F41B ";
    }
    all.front().date.day = day(1900, 1, 1);
    all.back().date.day = day(2199, 12, 31);
    return all;
}

/// A folder of its own with a household path in it.
class Place {
public:
    QString path(const char* name = "mill.tierloam") const { return folder_.filePath(QString::fromLatin1(name)); }
    QString folder() const { return folder_.path(); }
    QByteArray bytes(const char* name = "mill.tierloam") const
    {
        QFile file{path(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }
    void put(const QByteArray& bytes, const char* name = "mill.tierloam") const
    {
        QFile file{path(name)};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    QStringList names() const { return QDir{folder_.path()}.entryList(QDir::Files); }

private:
    QTemporaryDir folder_;
};

inline std::unique_ptr<HouseholdFile> opened(const QString& path, HouseholdFile::Mode mode = HouseholdFile::Mode::createIfAbsent,
                                             std::chrono::milliseconds busyTimeout = std::chrono::seconds{5})
{
    auto result = HouseholdFile::open(path, mode, busyTimeout);
    if (auto* failure = std::get_if<OpenFailure>(&result)) {
        ADD_FAILURE() << failure->why.toStdString();
        return nullptr;
    }
    return std::move(std::get<std::unique_ptr<HouseholdFile>>(result));
}

inline OpenFailure refused(const QString& path, HouseholdFile::Mode mode, std::chrono::milliseconds busyTimeout = std::chrono::seconds{5})
{
    auto result = HouseholdFile::open(path, mode, busyTimeout);
    if (auto* failure = std::get_if<OpenFailure>(&result)) return *failure;
    ADD_FAILURE() << "opened: " << path.toStdString();
    return {};
}

inline std::vector<journal::EntryId> idsOf(const Written& written)
{
    if (const auto* failure = std::get_if<WriteFailure>(&written)) {
        ADD_FAILURE() << failure->why.toStdString();
        return {};
    }
    return std::get<std::vector<journal::EntryId>>(written);
}

inline WriteFailure failureOf(const Written& written)
{
    if (const auto* failure = std::get_if<WriteFailure>(&written)) return *failure;
    ADD_FAILURE() << "written";
    return {};
}

inline journal::Entries journalOf(const HouseholdFile& file)
{
    auto entries = file.entries();
    if (auto* failure = std::get_if<WriteFailure>(&entries)) {
        ADD_FAILURE() << failure->why.toStdString();
        return {};
    }
    return std::get<journal::Entries>(entries);
}

}
