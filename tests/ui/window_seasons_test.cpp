// The seasons of the household's half of the globe: chosen, taken back, kept in the file, guessed for a new one.
#include "tests/ui/window_fixture.h"

#include "core/reckoning/reckon.h"
#include "core/reckoning/outlook.h"
#include "core/store/setting_names.h"
#include "core/household/seasons.h"

namespace tierloam::window {

namespace {

class Seasons : public WindowTest {
protected:
    /// A stack in the yard since last summer.
    void openYard()
    {
        estimates_.reset();
        ASSERT_TRUE(window_->createFile(path(QStringLiteral("yard.tierloam"))));
        show();
        journal::Entries entries;
        const auto add = [&](journal::Action action) {
            journal::Entry entry;
            entry.stack = "Yard";
            entry.date.day = tests::sampleToday() - std::chrono::days{100};
            entry.positionInDay = static_cast<int>(entries.size()) + 1;
            entry.action = std::move(action);
            entries.push_back(std::move(entry));
        };
        journal::Setup setup;
        setup.place = journal::Place::outdoors;
        setup.temp = celsius(16);
        add(setup);
        add(journal::Bed{{450, Unit::g}, "corrugated cardboard shredded", {}});
        add(journal::Stock{{450, Unit::g}, {}, {}});
        household().recordAll(entries, QStringLiteral("yard"));
        ASSERT_TRUE(written(3));
    }
    bool comes(bool southern)
    {
        return QTest::qWaitFor([&] {
            const auto made = household().reckoning();
            return made && made->stacks.size() == 1 && made->stacks.front().present && made->stacks.front().present->course.surroundings.southern == southern;
        }, patience);
    }
    double bedC() { return household().reckoning()->stacks.front().now.binTempC.p50; }
    bool checked(ui::ActionId id) { return window_->action(id)->isChecked(); }
};

TEST_F(Seasons, AreTurnedByHalfAYearAndTheBedWithThem)
{
    openYard();
    ASSERT_TRUE(comes(false));
    const double may = bedC();
    EXPECT_TRUE(checked(ui::ActionId::seasonsNorth));
    press("Ctrl+Alt+N");
    ASSERT_TRUE(comes(true)) << "estimates are asked for anew";
    EXPECT_LT(bedC(), may - 2.0) << "at the beginning of May it is spring in the north, autumn in the south";
    EXPECT_TRUE(checked(ui::ActionId::seasonsSouth));
    press("Ctrl+Z");
    ASSERT_TRUE(comes(false));
    EXPECT_NEAR(bedC(), may, 1e-9);
    EXPECT_TRUE(checked(ui::ActionId::seasonsNorth));
    press("Ctrl+Alt+N");
    household().finishWrites();
    ASSERT_TRUE(window_->openFile(sampleFile(QStringLiteral("other.tierloam"))));
    EXPECT_TRUE(checked(ui::ActionId::seasonsNorth)) << "another household";
    ASSERT_TRUE(window_->openFile(path(QStringLiteral("yard.tierloam"))));
    EXPECT_TRUE(checked(ui::ActionId::seasonsSouth)) << "kept in the file";
    ASSERT_TRUE(comes(true));
}

TEST_F(Seasons, OfANewHouseholdAreGuessedFromWhereTheMachineIsAndTold)
{
    EXPECT_TRUE(household::liesSouth(QLocale::Australia));
    EXPECT_TRUE(household::liesSouth(QLocale::Chile));
    EXPECT_FALSE(household::liesSouth(QLocale::Germany));
    EXPECT_FALSE(household::liesSouth(QLocale::AnyTerritory));
    // Latitudes of the largest towns, common geography: Guayaquil −2, Nairobi −1, Kinshasa −4, Brazzaville −4, Mamoudzou −13, Victoria −5, Pago Pago −14,
    // Avarua −21, Alofi −19, Funafuti −9, Yaren −1, Kingston (Norfolk) −29, Jamestown −16, Nukunonu −9, Mata Utu −13, Adamstown −25, Papeete −18, Nouméa −22,
    // Stanley −52, Dili −9, Jakarta −6, São Paulo −24.
    for (const QLocale::Territory territory : {QLocale::Ecuador, QLocale::Kenya, QLocale::CongoKinshasa, QLocale::CongoBrazzaville, QLocale::Mayotte, QLocale::Seychelles, QLocale::AmericanSamoa,
                                               QLocale::CookIslands, QLocale::Niue, QLocale::TuvaluTerritory, QLocale::NauruTerritory, QLocale::NorfolkIsland, QLocale::SaintHelena, QLocale::TokelauTerritory,
                                               QLocale::WallisAndFutuna, QLocale::Pitcairn, QLocale::FrenchPolynesia, QLocale::NewCaledonia, QLocale::FalklandIslands, QLocale::TimorLeste, QLocale::Indonesia, QLocale::Brazil})
        EXPECT_TRUE(household::liesSouth(territory)) << QLocale::territoryToString(territory).toStdString();
    // Bogotá 5, Libreville 0.4, Kampala 0.3, Tarawa 1, Malé 4, São Tomé 0.3, Mogadishu 2, Singapore 1, Malabo 4.
    for (const QLocale::Territory territory : {QLocale::Colombia, QLocale::Gabon, QLocale::Uganda, QLocale::Kiribati, QLocale::Maldives, QLocale::SaoTomeAndPrincipe, QLocale::Somalia, QLocale::Singapore, QLocale::EquatorialGuinea})
        EXPECT_FALSE(household::liesSouth(territory)) << QLocale::territoryToString(territory).toStdString();
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("new.tierloam"))));
    window_->guessSeasons(QLocale::UnitedStates);
    EXPECT_TRUE(checked(ui::ActionId::seasonsNorth));
    EXPECT_FALSE(notices().join(u' ').contains(QStringLiteral("equator")));
    window_->guessSeasons(QLocale::NewZealand);
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().kept(store::settingHemisphere) == store::hemisphereSouth; }, patience));
    EXPECT_TRUE(QTest::qWaitFor([&] { return checked(ui::ActionId::seasonsSouth); }, patience));
    EXPECT_TRUE(notices().join(u' ').contains(QStringLiteral("equator")));
}

}

}
