#include "tests/ui/forms_fixture.h"
#include "ui/common/formats.h"

/// Each form typed and clicked as a person does: what is recorded is what was meant.
namespace tierloam::forms {

using journal::Entry;

TEST_F(FormsTest, FeedRecordsTheUsualWithEnterAlone)
{
    open(FormKind::feed);
    const household::Usual usual = household().usual("Scullery");
    const int stepsBefore = household().undoStack()->index();
    const auto made = record();
    ASSERT_EQ(made.size(), usual.coverWithFeed ? 2u : 1u);
    EXPECT_EQ(std::get<journal::Feed>(made[0].action).food, usual.feed);
    EXPECT_EQ(made[0].date, (DayAndTime{today, std::nullopt}));
    EXPECT_EQ(made[0].slot, std::nullopt) << "the form's default slot is kept empty";
    EXPECT_EQ(household().undoStack()->index(), stepsBefore + 1) << "feeding and cover are one step";
}

TEST_F(FormsTest, FeedTakesAmountMaterialSideSlotAndCover)
{
    open(FormKind::feed);
    type("Amount", "1,2");
    choose("Amount", "kg");
    type("Food", "banana peel");
    choose("Side", "left");
    auto* covered = window().findChild<QCheckBox*>();
    if (!covered->isChecked()) QTest::mouseClick(covered, Qt::LeftButton, {}, QPoint{5, covered->height() / 2});
    type("Cover", "45");
    type("Of", "office paper shredded");
    choose("Tray", "slot 2");
    type("Date", "2031-05-01");
    type("Note", "from the market");
    const auto made = record();
    ASSERT_EQ(made.size(), 2u);
    EXPECT_EQ(std::get<journal::Feed>(made[0].action), (journal::Feed{{1.2, Unit::kg}, "banana peel", journal::Side::left}));
    EXPECT_EQ(made[0].slot, 2);
    EXPECT_EQ(made[0].date.day, today - std::chrono::days{1});
    EXPECT_EQ(made[0].note, "from the market");
    EXPECT_EQ(std::get<journal::Cover>(made[1].action), (journal::Cover{Amount{45, Unit::g}, "office paper shredded"}));
    EXPECT_EQ(made[1].slot, 2);
    EXPECT_EQ(made[1].note, "") << "the note is the feeding's";
}

TEST_F(FormsTest, AFurtherFeedingOffersTheLastChoices)
{
    open(FormKind::feed);
    type("Food", "banana peel");
    choose("Side", "right");
    record();
    open(FormKind::feed);
    EXPECT_EQ(static_cast<QComboBox*>(field("Food")->focusProxy())->currentText(), u"banana peel");
    EXPECT_EQ(static_cast<QComboBox*>(field("Side")->focusProxy())->currentText(), u"right");
}

TEST_F(FormsTest, Cover)
{
    open(FormKind::cover);
    type("Amount", "25");
    const auto cover = recordOne<journal::Cover>();
    EXPECT_EQ(cover.paper, (Amount{25, Unit::g}));
}

TEST_F(FormsTest, WaterIntoTheTrayThatWasClicked)
{
    open(FormKind::water, "Scullery", 2);
    type("Amount", "0.3");
    choose("Amount", "L");
    EXPECT_EQ(recordOne<journal::Water>().poured, (Amount{0.3, Unit::L}));
    EXPECT_EQ(last_.slot, 2);
}

TEST_F(FormsTest, RoutineOfCover)
{
    open(FormKind::routine);
    choose("Of", "paper");
    type("Each time", "20");
    type("Every so many days", "3");
    EXPECT_EQ(recordOne<journal::Routine>(), (journal::Routine{{20, Unit::g}, journal::RoutineOf::cover, 3}));
}

TEST_F(FormsTest, DrainWithAllThatCanBeSaid)
{
    open(FormKind::drain, "Lean-to");
    type("Drained", "2.5");
    choose("The sump", "still");
    type("Worms put back", "12");
    choose("Spigot", "open");
    type("Conductivity", "2,1");
    const auto drain = recordOne<journal::Drain>();
    EXPECT_EQ(drain.volume->value, 2.5);
    EXPECT_EQ(drain.emptied, false);
    EXPECT_EQ(drain.wormsPutBack, 12);
    EXPECT_EQ(drain.spigot, journal::Spigot::open);
    EXPECT_EQ(drain.ecMilliSiemensPerCm, 2.1);
    EXPECT_EQ(last_.slot, std::nullopt);
}

TEST_F(FormsTest, DrainWithAVolumeIsTwoInputs)
{
    open(FormKind::drain, "Lean-to"); // 1: the button that opened it
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("3")); // the usual amount is selected: typing replaces it
    const auto drain = recordOne<journal::Drain>(); // 2: Enter
    EXPECT_EQ(drain.volume->value, 3);
    EXPECT_EQ(drain.emptied, std::nullopt) << "emptied is the default and is not written";
}

TEST_F(FormsTest, DrainMayOnlyTurnTheSpigot)
{
    open(FormKind::drain, "Lean-to");
    type("Drained", "");
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty()) << "neither volume nor spigot";
    choose("Spigot", "open");
    EXPECT_EQ(recordOne<journal::Drain>(), (journal::Drain{std::nullopt, std::nullopt, std::nullopt, std::nullopt, journal::Spigot::open}));
}

TEST_F(FormsTest, Flush)
{
    open(FormKind::flush);
    type("Water poured", "3");
    choose("Water poured", "L");
    type("Drained", "3,2");
    type("Worms put back", "4");
    EXPECT_EQ(recordOne<journal::Flush>(), (journal::Flush{{3, Unit::L}, litres(3.2), std::nullopt, 4}));
}

TEST_F(FormsTest, ReadingWantsAtLeastOne)
{
    open(FormKind::reading);
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty());
    type("In the bed", "21.5");
    type("Air humidity", "60");
    choose("Squeezed in the hand", "3");
    type("pH", "6.8");
    type("Standing in the sump", "1.5");
    const auto reading = recordOne<journal::Reading>();
    EXPECT_EQ(reading.bin, celsius(21.5));
    EXPECT_EQ(reading.air, std::nullopt) << "not measured is not zero";
    EXPECT_EQ(reading.relativeHumidity, Share::fromPercent(60));
    EXPECT_EQ(reading.squeeze, 3);
    EXPECT_EQ(reading.ph, 6.8);
    EXPECT_EQ(reading.sump, litres(1.5));
}

TEST_F(FormsTest, CheckOfATray)
{
    open(FormKind::check, "Scullery", 1);
    type("Depth of castings", "3.5");
    type("Still recognisable", "20");
    type("Left of the last feeding", "25");
    choose("Worms seen", "some");
    const auto check = recordOne<journal::Check>();
    EXPECT_EQ(check.depth, centimetres(3.5));
    EXPECT_EQ(check.bits, Share::fromPercent(20));
    EXPECT_EQ(check.left, Share::fromPercent(25));
    EXPECT_EQ(check.worms, journal::WormsSeen::some);
    EXPECT_EQ(last_.slot, 1);
}

TEST_F(FormsTest, CheckCannotBeDeeperThanTheTray)
{
    open(FormKind::check);
    type("Depth of castings", "40");
    pressEnter();
    EXPECT_FALSE(field("Depth of castings")->shownProblem().isEmpty());
    EXPECT_TRUE(recorded_.empty());
}

TEST_F(FormsTest, WeighCountAndTrayWeight)
{
    open(FormKind::weigh);
    type("Worms", "850");
    choose("Worms", "g");
    type("Share of the bed searched", "50");
    EXPECT_EQ(recordOne<journal::Weigh>(), (journal::Weigh{{850, Unit::g}, Share::fromPercent(50)}));
    EXPECT_EQ(last_.slot, std::nullopt) << "the whole stack";

    open(FormKind::count);
    type("Worms counted", "14");
    type("In how much bed", "0.5");
    EXPECT_EQ(recordOne<journal::Count>(), (journal::Count{{14, Unit::count}, litres(0.5)}));

    open(FormKind::trayWeight, "Scullery", 1);
    type("Tray with contents", "5.2");
    type("Empty tray", "6");
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty()) << "the tare is above the whole";
    type("Empty tray", "1.1");
    EXPECT_EQ(recordOne<journal::TrayWeight>(), (journal::TrayWeight{{5.2, Unit::kg}, kilograms(1.1)}));
    EXPECT_EQ(last_.slot, 1);
}

TEST_F(FormsTest, RotateSaysWhatMovesAndRecords)
{
    open(FormKind::rotate);
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("to slot 3")), -1) << shell().effect().toStdString();
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("93")), -1) << "how ready it is: " << shell().effect().toStdString();
    recordOne<journal::Rotate>();
}

TEST_F(FormsTest, LoosenAndLidOfTheDryingTray)
{
    open(FormKind::loosen, "Cellar", 3);
    recordOne<journal::Loosen>();
    open(FormKind::lid, "Cellar");
    EXPECT_EQ(recordOne<journal::Lid>().on, true) << "it is off: what is worth recording is the other";
}

TEST_F(FormsTest, HarvestTheDryingTrayWhole)
{
    open(FormKind::harvest, "Cellar");
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("Ends batch")), -1);
    pressEnter();
    EXPECT_FALSE(field("Castings")->shownProblem().isEmpty()) << "an amount is wanted";
    type("Castings", "7");
    choose("Castings", "L");
    type("Their moisture", "66");
    const auto harvest = recordOne<journal::Harvest>();
    EXPECT_EQ(harvest, (journal::Harvest{{7, Unit::L}, Share::fromPercent(66), std::nullopt}));
    EXPECT_EQ(household().journal()->replay.stack("Cellar")->on(today)->trays(), 2);
}

TEST_F(FormsTest, HarvestAShareOfATray)
{
    open(FormKind::harvest, "Scullery", 1);
    choose("Taken", "a part");
    type("Share taken", "60");
    type("Castings", "1.4");
    choose("Castings", "kg");
    EXPECT_EQ(recordOne<journal::Harvest>(), (journal::Harvest{{1.4, Unit::kg}, std::nullopt, Share::fromPercent(60)}));
    EXPECT_EQ(last_.slot, 1);
}

TEST_F(FormsTest, AddATraySaysWhichAndHowWetItWants)
{
    open(FormKind::addTray, "Lean-to");
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("goes on top, into slot 3")), -1) << shell().effect().toStdString();
    type("Bedding", "coconut coir (from a dry brick)");
    type("Amount, dry", "400");
    choose("Amount, dry", "g");
    EXPECT_FALSE(field("Amount, dry")->hint().isEmpty()) << "water to wet it with";
    const auto bed = recordOne<journal::Bed>();
    EXPECT_EQ(bed, (journal::Bed{{400, Unit::g}, "coconut coir (from a dry brick)", std::nullopt}));
    EXPECT_EQ(last_.slot, std::nullopt);
    EXPECT_EQ(household().journal()->replay.stack("Lean-to")->on(today)->trays(), 3);
}

TEST_F(FormsTest, BeddingIntoATrayNeverPutsATrayOnTop)
{
    open(FormKind::bedding, "Lean-to");
    type("Amount, dry", "100");
    recordOne<journal::Bed>();
    EXPECT_EQ(last_.slot, 2);
    EXPECT_EQ(household().journal()->replay.stack("Lean-to")->on(today)->trays(), 2);
}

TEST_F(FormsTest, StockRemoveAndMove)
{
    open(FormKind::stock);
    type("Worms", "250");
    choose("Worms", "g");
    choose("Species", "Eisenia andrei");
    EXPECT_FALSE(field("Species")->hint().isEmpty()) << "another species is said";
    type("Counted", "600");
    EXPECT_EQ(recordOne<journal::Stock>(), (journal::Stock{{250, Unit::g}, "Eisenia andrei", 600}));

    open(FormKind::remove);
    type("Worms", "100");
    choose("Worms", "g");
    EXPECT_EQ(recordOne<journal::Remove>(), (journal::Remove{{100, Unit::g}}));

    open(FormKind::move);
    type("Worms", "150");
    choose("Into", "Cellar");
    EXPECT_EQ(recordOne<journal::Move>(), (journal::Move{{150, Unit::g}, "Cellar"}));
}

TEST_F(FormsTest, EventNoteAndRetire)
{
    open(FormKind::event);
    type("What", "Away");
    type("Until", "2031-05-20");
    const auto event = recordOne<journal::Event>();
    EXPECT_EQ(event.what, "away") << "suggested words are written in their fixed form";
    EXPECT_EQ(event.until, today + std::chrono::days{18});

    open(FormKind::event);
    type("What", "a mouse");
    EXPECT_EQ(recordOne<journal::Event>(), (journal::Event{"a mouse", std::nullopt}));

    open(FormKind::note);
    pressEnter();
    EXPECT_FALSE(field("Note")->shownProblem().isEmpty()) << "an empty note is none";
    type("Note", "moved the jar");
    recordOne<journal::Note>();
    EXPECT_EQ(last_.note, "moved the jar");

    open(FormKind::retire, "Cellar");
    recordOne<journal::Retire>();
    EXPECT_TRUE(household().journal()->replay.stack("Cellar")->on(today)->retired);
}

TEST_F(FormsTest, SetupWritesOnlyWhatWasChanged)
{
    open(FormKind::setup);
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty()) << "nothing is changed yet";
    choose("Place", "garage");
    type("Usual bed temperature", "16");
    journal::Setup changed;
    changed.place = journal::Place::garage;
    changed.temp = celsius(16);
    EXPECT_EQ(recordOne<journal::Setup>(), changed);
}

TEST_F(FormsTest, TheTimeOfDayIsKeptWhenNoted)
{
    open(FormKind::water);
    click("addTime");
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("18:30"));
    recordOne<journal::Water>();
    EXPECT_EQ(last_.date.minuteOfDay, 18 * 60 + 30);
}

// 5 kg for each square metre of the trays that stand: the upper end of the crowding that halves the greatest mass in the model's table.
TEST_F(FormsTest, MoreWormsThanTheTraysCanCarryAreDoubtedAndRecordedAllTheSame)
{
    open(FormKind::stock);
    const journal::Standing* standing = household().journal()->replay.stack("Scullery")->on(today);
    const double most = 5.0 * standing->settings.area.base() * standing->trays();
    auto* doubt = window().findChild<QLabel*>(QStringLiteral("formDoubt"));
    type("Worms", QByteArray::number(qRound(most * 1000.0) - 10).constData());
    QTest::qWait(600);
    EXPECT_FALSE(doubt->isVisible()) << doubt->text().toStdString();
    type("Worms", QByteArray::number(qRound(most * 1000.0) + 10).constData());
    EXPECT_TRUE(QTest::qWaitFor([&] { return doubt->isVisible(); }, patience));
    EXPECT_TRUE(doubt->text().contains(ui::massText(most))) << doubt->text().toStdString();
    EXPECT_EQ(record().size(), 1U);
}

}
