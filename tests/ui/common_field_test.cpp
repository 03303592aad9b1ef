#include "ui/common/amount_field.h"
#include "ui/common/area_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/date_field.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/common/typed_number.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>

namespace tierloam::ui {

namespace {

void wheel(QWidget* widget, int delta)
{
    QWheelEvent event{QPointF{3, 3}, widget->mapToGlobal(QPointF{3, 3}), QPoint{}, QPoint{0, delta}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false};
    QCoreApplication::sendEvent(widget, &event);
}

constexpr Day may2 = std::chrono::sys_days{std::chrono::year{2031} / 5 / 2};

class Locale {
public:
    explicit Locale(const QLocale& locale) { QLocale::setDefault(locale); }
    ~Locale() { QLocale::setDefault(before_); }
    Locale(const Locale&) = delete;
    Locale& operator=(const Locale&) = delete;

private:
    QLocale before_;
};

}

struct NumberRow {
    const char* typed;
    std::optional<double> value;
};

class TypedNumberText : public testing::TestWithParam<NumberRow> {};

TEST_P(TypedNumberText, IsReadOrRefusedInWords)
{
    const Typed<double> read = typedNumber(QString::fromUtf8(GetParam().typed));
    EXPECT_EQ(read.value, GetParam().value) << GetParam().typed;
    const bool empty = QString::fromUtf8(GetParam().typed).trimmed().isEmpty();
    EXPECT_EQ(read.problem.isEmpty(), empty || GetParam().value.has_value()) << GetParam().typed;
}

// Comma and point are both decimal marks: 1,234 is a little more than one, never a thousand; what could be either is refused.
INSTANTIATE_TEST_SUITE_P(Typed, TypedNumberText,
                         testing::Values(NumberRow{"450", 450}, NumberRow{"1.5", 1.5}, NumberRow{"1,5", 1.5}, NumberRow{" 0,25 ", 0.25},
                                         NumberRow{".5", 0.5}, NumberRow{",5", 0.5}, NumberRow{"5.", 5}, NumberRow{"1,234", 1.234},
                                         NumberRow{"1.234", 1.234}, NumberRow{"-3", -3}, NumberRow{"−3", -3}, NumberRow{"", std::nullopt},
                                         NumberRow{"   ", std::nullopt}, NumberRow{"1,234.5", std::nullopt}, NumberRow{"1.234,5", std::nullopt},
                                         NumberRow{"1.234.567", std::nullopt}, NumberRow{"1 234", std::nullopt}, NumberRow{"1'234", std::nullopt},
                                         NumberRow{"1\u00a0234", std::nullopt}, NumberRow{"1e3", std::nullopt}, NumberRow{"inf", std::nullopt},
                                         NumberRow{"nan", std::nullopt}, NumberRow{"--2", std::nullopt}, NumberRow{"twelve", std::nullopt}));

TEST(TypedNumber, ComesBackTheSameInEveryLocale)
{
    for (const auto language : {QLocale::English, QLocale::German, QLocale::French, QLocale::Spanish}) {
        const Locale locale{QLocale{language}};
        for (const double value : {0.1, 1234.5, 1.0 / 3.0, 1e-4, 999999.0}) EXPECT_EQ(typedNumber(typedText(value)).value, value);
    }
    const Locale german{QLocale{QLocale::German, QLocale::Germany}};
    EXPECT_EQ(typedText(1234.5), u"1234,5");
}

TEST(AmountField, KeepsNumberAndUnitAsTyped)
{
    AmountField field{massAndVolumeUnits()};
    field.setName(QStringLiteral("Food"));
    QTest::keyClicks(field.edit(), QStringLiteral("1,25"));
    field.setUnit(Unit::kg);
    EXPECT_EQ(field.amount().value, (Amount{1.25, Unit::kg}));
    EXPECT_EQ(field.edit()->accessibleName(), u"Food");
    EXPECT_FALSE(field.unitList()->accessibleName().isEmpty());
}

TEST(AmountField, TakesAUnitTypedBehindTheNumber)
{
    AmountField field{massAndVolumeUnits()};
    field.setUnit(Unit::g);
    QTest::keyClicks(field.edit(), QStringLiteral("1.2 KG"));
    EXPECT_EQ(field.amount().value, (Amount{1.2, Unit::kg}));
    QTest::keyClick(field.edit(), Qt::Key_Return);
    EXPECT_EQ(field.edit()->text(), u"1.2");
    EXPECT_EQ(field.unit(), Unit::kg);
    field.edit()->setText(QStringLiteral("3 stone"));
    EXPECT_FALSE(field.amount().value);
    EXPECT_FALSE(field.problem().isEmpty());
}

TEST(AmountField, SaysInWordsWhatIsWrong)
{
    AmountField field{massUnits()};
    field.setUnit(Unit::kg);
    const auto problemOf = [&field](const char16_t* text) {
        field.edit()->setText(QString::fromUtf16(text));
        return field.problem();
    };
    EXPECT_FALSE(problemOf(u"0").isEmpty());
    EXPECT_FALSE(problemOf(u"-1").isEmpty());
    EXPECT_FALSE(problemOf(u"1000.5").isEmpty());
    EXPECT_TRUE(problemOf(u"1000").isEmpty());
    field.setZeroAllowed(true);
    EXPECT_TRUE(problemOf(u"0").isEmpty());
    EXPECT_TRUE(problemOf(u"").isEmpty());
    field.setRequired(QStringLiteral("Give the mass."));
    EXPECT_EQ(problemOf(u""), u"Give the mass.");
    AmountField count{{Unit::count}};
    count.edit()->setText(QStringLiteral("2.5"));
    EXPECT_FALSE(count.amount().value);
}

TEST(Field, WordsComeWhenItIsLeftAndGoWhenItIsRight)
{
    QWidget window;
    auto* layout = new QVBoxLayout{&window};
    AmountField* field = new AmountField{massUnits()};
    auto* other = new QLineEdit;
    layout->addWidget(field);
    layout->addWidget(other);
    window.show();
    QApplication::setActiveWindow(&window);
    field->edit()->setFocus();
    QTest::keyClicks(field->edit(), QStringLiteral("1.2.3"));
    EXPECT_TRUE(field->shownProblem().isEmpty()) << "never while the first letters are typed";
    other->setFocus();
    EXPECT_FALSE(field->shownProblem().isEmpty());
    EXPECT_EQ(field->edit()->accessibleDescription(), field->shownProblem());
    field->edit()->setFocus();
    QTest::keyClick(field->edit(), Qt::Key_Backspace);
    QTest::keyClick(field->edit(), Qt::Key_Backspace);
    EXPECT_TRUE(field->shownProblem().isEmpty());
    EXPECT_TRUE(field->edit()->accessibleDescription().isEmpty());
}

TEST(Field, TheWheelChangesOnlyWhatHasTheFocus)
{
    QWidget window;
    auto* layout = new QVBoxLayout{&window};
    AmountField* field = new AmountField{massUnits()};
    layout->addWidget(field);
    window.show();
    QApplication::setActiveWindow(&window);
    field->edit()->setFocus();
    const int before = field->unitList()->currentIndex();
    wheel(field->unitList(), -120);
    EXPECT_EQ(field->unitList()->currentIndex(), before);
    EXPECT_FALSE(field->unitList()->hasFocus());
    field->unitList()->setFocus();
    wheel(field->unitList(), -120);
    EXPECT_NE(field->unitList()->currentIndex(), before) << "the same wheel must count once it has the focus";
}

TEST(Field, UndoBelongsToItOnlyWhileItHasSomethingToUndo)
{
    QWidget window;
    auto* layout = new QVBoxLayout{&window};
    auto* field = new AmountField{massUnits()};
    layout->addWidget(field);
    auto* undo = new QAction{&window};
    undo->setShortcut(QKeySequence::Undo);
    window.addAction(undo);
    QSignalSpy undone{undo, &QAction::triggered};
    window.show();
    QApplication::setActiveWindow(&window);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    field->edit()->setFocus();
    QTest::keyClick(field->edit(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 1) << "nothing typed: the window undoes";
    QTest::keyClicks(field->edit(), QStringLiteral("12"));
    QTest::keyClick(field->edit(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 1) << "typed: the field undoes";
    EXPECT_EQ(field->edit()->text(), u"");
    QTest::keyClick(field->edit(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 2) << "used up: the window again";
}

TEST(DateField, StandsOnTodayUntilChanged)
{
    DateField field{may2};
    EXPECT_EQ(field.moment().value, (DayAndTime{may2, std::nullopt}));
    field.setToday(may2 + std::chrono::days{1});
    EXPECT_EQ(field.moment().value->day, may2 + std::chrono::days{1});
    QTest::keyClick(field.edit(), Qt::Key_Down);
    EXPECT_EQ(field.moment().value->day, may2);
    EXPECT_EQ(field.hint(), u"Friday, yesterday");
    field.setToday(may2 + std::chrono::days{9});
    EXPECT_EQ(field.moment().value->day, may2) << "once changed it stays";
}

TEST(DateField, WhatIsProposedGoesOnWithTodayUntilItIsChanged)
{
    DateField field{may2};
    field.propose(14);
    EXPECT_EQ(field.moment().value->day, may2 + std::chrono::days{14});
    field.setToday(may2 + std::chrono::days{1});
    EXPECT_EQ(field.moment().value->day, may2 + std::chrono::days{15});
    field.setMoment({may2 + std::chrono::days{20}, std::nullopt});
    field.setToday(may2 + std::chrono::days{2});
    EXPECT_EQ(field.moment().value->day, may2 + std::chrono::days{20});
}

TEST(DateField, ReadsDatesAsPeopleWriteThem)
{
    for (const char16_t* text : {u"2031-05-02", u"02/05/2031", u"2 May 2031", u"today", u"Today"}) {
        EXPECT_EQ(typedDay(QString::fromUtf16(text), may2).value, may2) << QString::fromUtf16(text).toStdString();
    }
    EXPECT_EQ(typedDay(QStringLiteral("yesterday"), may2).value, may2 - std::chrono::days{1});
    for (const char16_t* text : {u"2031-02-29", u"31/04/2031", u"1899-12-31", u"2200-01-01", u"soon"}) {
        const Typed<Day> read = typedDay(QString::fromUtf16(text), may2);
        EXPECT_FALSE(read.value) << QString::fromUtf16(text).toStdString();
        EXPECT_FALSE(read.problem.isEmpty());
    }
    const Locale german{QLocale{QLocale::German, QLocale::Germany}};
    EXPECT_EQ(typedDay(QStringLiteral("02.05.2031"), may2).value, may2);
    EXPECT_EQ(typedDay(typedDayText(may2), may2).value, may2);
}

TEST(DateField, TheTimeIsThereWhenWished)
{
    DateField field{may2};
    EXPECT_TRUE(field.timeEdit()->isHidden());
    QTest::mouseClick(field.timeButton(), Qt::LeftButton);
    EXPECT_FALSE(field.timeEdit()->isHidden());
    QTest::keyClicks(field.timeEdit(), QStringLiteral("18:30"));
    EXPECT_EQ(field.moment().value, (DayAndTime{may2, 18 * 60 + 30}));
    field.timeEdit()->setText(QStringLiteral("25:00"));
    EXPECT_FALSE(field.moment().value);
    EXPECT_FALSE(field.problem().isEmpty());
    for (const char16_t* text : {u"6:30 pm", u"18.30", u"1830"}) EXPECT_EQ(typedTime(QString::fromUtf16(text)).value, 18 * 60 + 30);
}

TEST(NumberFields, HandOverBaseUnits)
{
    TemperatureField warm;
    warm.setTemperature(celsius(21.5));
    EXPECT_EQ(warm.edit()->text(), u"21.5");
    warm.unitList()->setCurrentIndex(1); // °F
    warm.edit()->setText(QStringLiteral("68"));
    ASSERT_TRUE(warm.temperature());
    EXPECT_NEAR(warm.temperature()->base(), 20.0, 1e-9);
    warm.edit()->setText(QStringLiteral("200"));
    EXPECT_FALSE(warm.temperature());
    EXPECT_NE(warm.problem().indexOf(QStringLiteral("-40")), -1) << warm.problem().toStdString();

    LengthField depth{0, 11};
    depth.edit()->setText(QStringLiteral("3,5"));
    EXPECT_EQ(depth.length(), centimetres(3.5));
    depth.edit()->setText(QStringLiteral("11.5"));
    EXPECT_FALSE(depth.length());

    ShareField share;
    share.edit()->setText(QStringLiteral("0"));
    EXPECT_EQ(share.share(), Share::fromPercent(0));
    share.edit()->setText(QStringLiteral("101"));
    EXPECT_FALSE(share.share());

    CountField count{0, 100000};
    count.edit()->setText(QStringLiteral("12"));
    EXPECT_EQ(count.count(), 12);
    count.edit()->setText(QStringLiteral("1.5"));
    EXPECT_FALSE(count.count());
}

TEST(NumberFields, ShowUsMeasuresFirstWhenChosen)
{
    setMeasures(Measures::us);
    TemperatureField warm;
    EXPECT_EQ(warm.unitList()->currentText(), u"°F");
    warm.setTemperature(celsius(20));
    EXPECT_EQ(warm.edit()->text(), u"68");
    EXPECT_NEAR(warm.temperature()->base(), 20.0, 1e-9);
    setMeasures(Measures::metric);
}

/// What the program thinks usual was thought of in metric units: in US units a round amount of theirs is proposed, in the unit that texts name.
TEST(NumberFields, ProposeRoundAmountsOfTheUnitShown)
{
    for (const Measures each : {Measures::metric, Measures::us}) {
        setMeasures(each);
        const bool us = each == Measures::us;
        VolumeField sump;
        sump.proposeVolume(litres(4));
        EXPECT_EQ(sump.edit()->text(), us ? u"1.1" : u"4");
        EXPECT_EQ(sump.unitList()->currentText(), us ? u"gal" : u"L");
        sump.proposeVolume(litres(0.1));
        EXPECT_EQ(sump.edit()->text(), us ? u"3.4" : u"0.1");
        EXPECT_EQ(sump.unitList()->currentText(), us ? u"fl oz" : u"L");
        sump.proposeVolume(litres(4), knownDigits);
        EXPECT_EQ(sump.edit()->text(), us ? u"1.06" : u"4");
        sump.setVolume(litres(0.1));
        sump.setVolume(litres(4));
        EXPECT_EQ(sump.unitList()->currentText(), us ? u"gal" : u"L") << "nor is what was written told in cups";
        LengthField height{1, 60};
        height.propose(11);
        EXPECT_EQ(height.edit()->text(), us ? u"4.3" : u"11");
        height.propose(11, knownDigits);
        EXPECT_EQ(height.edit()->text(), us ? u"4.33" : u"11");
        TemperatureField warm;
        warm.propose(22);
        EXPECT_EQ(warm.edit()->text(), us ? u"72" : u"22");
        AreaField floor;
        floor.proposeArea(squareMetres(0.16), roundDigits);
        EXPECT_EQ(floor.first()->text(), us ? u"1.7" : u"0.16");
        AmountField bedding{massUnits()};
        bedding.proposeRound({800, Unit::g});
        EXPECT_EQ(bedding.edit()->text(), us ? u"1.8" : u"800");
        EXPECT_EQ(bedding.unit(), us ? Unit::lb : Unit::g);
        bedding.propose({800, Unit::g});
        EXPECT_EQ(bedding.edit()->text(), us ? u"1.76" : u"800") << "what people gave is not rounded so far";
    }
    setMeasures(Measures::metric);
}

TEST(AreaField, FromSidesOrAsAnArea)
{
    AreaField field;
    field.setName(QStringLiteral("Tray"));
    QTest::keyClicks(field.first(), QStringLiteral("40"));
    EXPECT_FALSE(field.problem().isEmpty()) << "the length is missing";
    QTest::keyClicks(field.second(), QStringLiteral("40"));
    EXPECT_EQ(field.area().value, squareMetres(0.16));
    field.setArea(squareMetres(0.2));
    EXPECT_TRUE(field.second()->isHidden());
    EXPECT_EQ(field.area().value, squareMetres(0.2));
    field.first()->setText(QStringLiteral("16"));
    EXPECT_FALSE(field.area().value) << "a tray of 16 m² is a slip of the mark";
    EXPECT_FALSE(field.first()->accessibleName().isEmpty());
}

TEST(ChoiceField, LeavesOutOrChooses)
{
    ChoiceField field;
    field.addChoice(QStringLiteral("not noted"));
    field.addChoice(QStringLiteral("few"), 0);
    field.addChoice(QStringLiteral("many"), 2);
    EXPECT_TRUE(field.isEmpty());
    enum class Seen { few, some, many };
    field.choose(std::optional{Seen::many});
    EXPECT_EQ(field.chosen<Seen>(), Seen::many);
    QSignalSpy edited{&field, &Field::edited};
    QTest::keyClick(field.list(), Qt::Key_Up);
    EXPECT_EQ(field.chosen<Seen>(), Seen::few);
    EXPECT_EQ(edited.count(), 1);
}

TEST(TextField, RefusesWhatTheJournalCannotHold)
{
    TextField field;
    field.setText(QStringLiteral("lean-to, quiet"));
    EXPECT_TRUE(field.problem().isEmpty());
    field.setText(QStringLiteral("bell\a"));
    EXPECT_FALSE(field.problem().isEmpty());
}

}
