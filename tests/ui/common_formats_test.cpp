#include "ui/common/amount_field.h"
#include "ui/common/figure_words.h"
#include "ui/common/formats.h"
#include "ui/common/percent.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>
#include <QTextLayout>
#include <QTranslator>

#include <algorithm>

namespace tierloam::ui {

using std::chrono::sys_days;
using namespace std::chrono_literals;

namespace {

constexpr Day day(int year, unsigned month, unsigned dayOfMonth)
{
    return sys_days{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

/// No-break spaces read as blanks and joiners are left out, so that the expected text can be typed.
std::string plain(QString text)
{
    return text.remove(QChar{0x2060}).replace(QChar{0xA0}, u' ').toStdString();
}

/// What stands at the ends of lines, at every width in which the text could be set.
QStringList lineEnds(const QString& text)
{
    QStringList ends;
    for (int width = 10; width < 600; width += 3) {
        QTextLayout layout{text};
        QTextOption option;
        option.setWrapMode(QTextOption::WordWrap);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            if (line.textStart() + line.textLength() < text.size()) ends << text.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return ends;
}

bool parted(const QString& text)
{
    static const QRegularExpression within{QStringLiteral("/\u2060?$|/\u2060?sq$|/\u2060?cu$|\\d$")};
    return std::ranges::any_of(lineEnds(text), [](const QString& end) { return within.match(end).hasMatch(); });
}

/// A language that has a word for a cup, and for more than one.
class Cups final : public QTranslator {
public:
    QString translate(const char* context, const char* text, const char* note, int) const override
    {
        if (QLatin1StringView{context} != QLatin1StringView{"Formats"} || QLatin1StringView{text} != QLatin1StringView{"cup"}) return {};
        return QLatin1StringView{note}.contains(QLatin1StringView{"one of it"}) ? QStringLiteral("Becher") : QStringLiteral("Bechern");
    }
    bool isEmpty() const override { return false; }
};

class Formats : public testing::Test {
protected:
    void TearDown() override
    {
        QLocale::setDefault(before_);
        setMeasures(Measures::metric);
    }
    void use(const char* locale) { QLocale::setDefault(QLocale{QString::fromLatin1(locale)}); }

private:
    QLocale before_;
};

}

// What people read has the words of their language; a unit typed behind a number is understood in these and by the journal's name, which files hold.
TEST_F(Formats, ACupHasItsWordInEachLanguage)
{
    EXPECT_EQ(amountText({2, Unit::cup}), QStringLiteral("2\u00a0cup"));
    Cups cups;
    QCoreApplication::installTranslator(&cups);
    EXPECT_EQ(amountText({1, Unit::cup}), QStringLiteral("1\u00a0Becher"));
    EXPECT_EQ(amountText({2, Unit::cup}), QStringLiteral("2\u00a0Bechern"));
    EXPECT_EQ(amountText({0.5, Unit::cup}), QStringLiteral("0.5\u00a0Bechern"));
    AmountField field{massAndVolumeUnits()};
    for (const auto* typed : {"2 Bechern", "2 becher", "2 cup"}) {
        field.setAmount(Amount{1, Unit::g});
        field.findChild<QLineEdit*>(QStringLiteral("amount"))->setText(QString::fromLatin1(typed));
        EXPECT_EQ(field.amount().value, (Amount{2, Unit::cup})) << typed;
    }
    QCoreApplication::removeTranslator(&cups);
}

TEST_F(Formats, ASentenceEndsWithOneStop)
{
    EXPECT_EQ(oneStop(QStringLiteral("Reif etwa nach 20. Dez.. Mehr.")), QStringLiteral("Reif etwa nach 20. Dez. Mehr."));
    EXPECT_EQ(oneStop(QStringLiteral("am 3. Okt..")), QStringLiteral("am 3. Okt."));
    EXPECT_EQ(oneStop(QStringLiteral("wait... 0.5")), QStringLiteral("wait... 0.5"));
}

TEST_F(Formats, MassIsRoundedToWhatAnEstimateIsWorth)
{
    use("en_GB");
    EXPECT_EQ(plain(massText(0.4472)), "450 g");
    EXPECT_EQ(plain(massText(0.0123)), "12 g");
    EXPECT_EQ(plain(massText(0.996)), "1.0 kg");
    EXPECT_EQ(plain(massText(1.14)), "1.1 kg");
    EXPECT_EQ(plain(massText(12.4)), "12 kg");
    EXPECT_EQ(plain(massText(0)), "0 g");
}

TEST_F(Formats, RangeStandsInTheUnitOfTheValue)
{
    use("en_GB");
    EXPECT_EQ(plain(massBand({0.9, 1.1, 1.4})), "1.1 kg (0.9–1.4)");
    EXPECT_EQ(plain(massBand({0.4, 0.6, 1.2})), "600 g (400–1200)");
    EXPECT_EQ(plain(volumeBand({1.0, 1.4, 2.0})), "1.4 L (1.0–2.0)");
    EXPECT_EQ(plain(rateBand({24, 31, 39})), "31 g/d (24–39)");
    EXPECT_EQ(plain(ratioBand({0.04, 0.07, 0.11})), "0.07 : 1 (0.04–0.11)");
}

TEST_F(Formats, RangeThatSaysNothingIsLeftOut)
{
    use("en_GB");
    EXPECT_EQ(plain(massBand({1.1, 1.1, 1.1})), "1.1 kg");
}

TEST_F(Formats, ValuesStayWithTheirUnitsInATextOfCore)
{
    EXPECT_EQ(unbroken(QStringLiteral("moisture 51 %; 3.7 L of 4 L, ready 0.02 : 1")), QStringLiteral("moisture 51\u00a0%; 3.7\u00a0L of 4\u00a0L, ready 0.02\u00a0:\u00a01"));
    EXPECT_EQ(unbroken(QStringLiteral("78 (74–82) %, 1 kg/m²; km/h, and/or")), QStringLiteral("78 (74–82)\u00a0%, 1\u00a0kg/\u2060m²; km/h, and/or"));
    EXPECT_EQ(unbroken(QStringLiteral("5 days, 3 Lifts, 2 galleries, 4 : 12")), QStringLiteral("5 days, 3 Lifts, 2 galleries, 4 : 12"));
}

// "0.4 L/" at the end of a line and "wk" on the next one is no unit any more.
TEST_F(Formats, AUnitOfTwoPartsIsNeverParted)
{
    for (const Measures each : {Measures::metric, Measures::us}) {
        setMeasures(each);
        for (const QString& unit : {flowText(0.4), flowBand({0.2, 0.4, 0.6}), rateText(19), rateBand({15, 19, 26}), perAreaText(1.6), perAreaBand({1, 1.6, 2}), volumePerArea(12), bulkText(420), strengthText(2.1),
                                    strengthBand({1, 2.1, 3})}) {
            const QString text = QStringLiteral("Nothing was drained in this time. To be expected: ") + unit + QStringLiteral(" of dry matter.");
            EXPECT_FALSE(parted(text)) << unit.toStdString();
            EXPECT_TRUE(parted(QString{text}.remove(QChar{0x2060}).replace(QChar{0xA0}, u' '))) << unit.toStdString() << ": what must be found";
        }
    }
    EXPECT_FALSE(parted(unbroken(QStringLiteral("More than 12 L/m² ran out in a week; at 2.6 mS/cm it is strong, at 3 gal/L weak."))));
    EXPECT_TRUE(unbroken(QStringLiteral("and/or, kg/m")).contains(QStringLiteral("d/o"))) << "words are left alone";
}

// Among words that run from right to left "31 g/d (24–39)" would be read as "g/d (24–39) 31".
TEST_F(Formats, ValueUnitAndRangeKeepTheirOrderAmongWordsFromRightToLeft)
{
    use("en_GB");
    const auto shownAs = [](const QString& text) {
        QTextLayout layout{QStringLiteral("\u05d0\u05d1\u05d2 ") + text};
        QTextOption option;
        option.setTextDirection(Qt::RightToLeft);
        layout.setTextOption(option);
        layout.beginLayout();
        const QTextLine line = layout.createLine();
        layout.endLayout();
        const auto x = [&](const QString& piece) { return line.cursorToX(static_cast<int>(layout.text().indexOf(piece))); };
        return x(QStringLiteral("31")) < x(QStringLiteral("g")) && x(QStringLiteral("g")) < x(QStringLiteral("24"));
    };
    EXPECT_FALSE(shownAs(rateBand({24, 31, 39}))) << "what must be found";
    setRightToLeft(true);
    EXPECT_TRUE(shownAs(rateBand({24, 31, 39})));
    EXPECT_EQ(massText(0.45), QStringLiteral("\u2066450\u00a0g\u2069"));
    EXPECT_EQ(massRange({0.4, 0.5, 0.6}), QStringLiteral("\u2066400–600\u2069"));
    EXPECT_EQ(flowParts({0.2, 0.4, 0.6}).second, QStringLiteral("\u20660.2–0.6\u2069"));
    setRightToLeft(false);
    EXPECT_EQ(massText(0.45), QStringLiteral("450\u00a0g"));
}

TEST_F(Formats, ANarrowMiddleTakesTheUnitOfItsWideRange)
{
    use("en_GB");
    EXPECT_EQ(plain(flowBand({0.0, 0.039, 1.905})), "0.0 L/wk (0.0–1.9)");
    EXPECT_EQ(plain(flowBand({0.01, 0.039, 0.09})), "39 mL/wk (10–90)");
    const auto [value, range] = flowParts({0.0, 0.039, 1.905});
    EXPECT_EQ(plain(value % u'|' % range), "0.0 L/wk|0.0–1.9");
    EXPECT_TRUE(flowParts({0.5, 0.5, 0.5}).second.isEmpty());
}

TEST_F(Formats, DecimalMarkFollowsTheLocale)
{
    use("de_DE");
    EXPECT_EQ(plain(massBand({0.9, 1.1, 1.4})), "1,1 kg (0,9–1,4)");
    EXPECT_EQ(plain(amountText({0.5, Unit::L})), "0,5 L");
    EXPECT_EQ(plain(amountText({1250, Unit::g})), "1250 g");
}

TEST_F(Formats, WhatWasTypedIsShownAsTyped)
{
    use("en_GB");
    EXPECT_EQ(plain(amountText({0.123, Unit::kg})), "0.123 kg");
    EXPECT_EQ(plain(amountText({3, Unit::floz})), "88.7 mL") << "typed in the other system: three digits in the one chosen";
    EXPECT_EQ(plain(amountText({2, Unit::cup})), "2 cup") << "of both systems";
    setMeasures(Measures::us);
    EXPECT_EQ(plain(amountText({3, Unit::floz})), "3 fl oz");
    EXPECT_EQ(plain(amountText({450, Unit::g})), "15.9 oz");
    EXPECT_EQ(plain(amountText({890, Unit::g})), "1.96 lb");
    setMeasures(Measures::metric);
    EXPECT_EQ(plain(amountText({12, Unit::count})), "12");
}

TEST_F(Formats, UsMeasures)
{
    use("en_US");
    setMeasures(Measures::us);
    EXPECT_EQ(plain(massText(0.45359237)), "1.0 lb");
    EXPECT_EQ(plain(massText(0.2)), "7.1 oz");
    EXPECT_EQ(plain(volumeText(3.785411784)), "1.00 gal");
    EXPECT_EQ(plain(temperatureText(20)), "68 °F");
}

TEST_F(Formats, ARangeWhoseEndsReadAlikeIsOneFigure)
{
    use("en_US");
    EXPECT_EQ(plain(figureText(guide::Figure::sieve)), "4 to 6 mm");
    setMeasures(Measures::us);
    EXPECT_EQ(plain(figureText(guide::Figure::sieve)), "0.2 in");
    EXPECT_EQ(plain(figureText(guide::Figure::comfortable)), "59 °F to 77 °F");
    // A rate and its range in one unit, whichever it is.
    EXPECT_EQ(plain(rateParts({13, 17, 23}).first), "0.60 oz/d");
    EXPECT_EQ(plain(rateParts({13, 17, 23}).second), "0.46–0.81");
    EXPECT_TRUE(rateParts({17, 17, 17}).second.isEmpty());
}

TEST_F(Formats, RatioWithoutCastingsIsSaidInWords)
{
    use("en_GB");
    EXPECT_EQ(plain(ratioText(999)), "no castings yet");
    EXPECT_EQ(plain(ratioText(3.42)), "3.4 : 1");
}

TEST_F(Formats, RatioKeepsItsOrderWithinWordsFromRightToLeft)
{
    use("en_GB");
    const QString plainly = ratioText(3.42);
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    const QString isolated = ratioText(3.42);
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    EXPECT_EQ(isolated, QChar{0x2066} + plainly + QChar{0x2069}) << "left-to-right isolate and its end";
}

TEST_F(Formats, PartOfAWhole)
{
    use("en_GB");
    EXPECT_EQ(plain(volumeOf(1.42, 4)), "1.4 L of 4");
    EXPECT_EQ(plain(volumeOf(0.5, 3.8)), "0.5 L of 3.8");
    EXPECT_EQ(plain(percentText(0.934)), "93 %");
}

// One rule for texts, rings and buttons: a tray that is ready with 0.996 reads 99 % wherever it is told.
TEST_F(Formats, NoShareIsToldAsWholeOrNothingUnlessItIs)
{
    use("en_GB");
    const std::pair<double, int> told[] = {{0.93, 93}, {0.996, 99}, {0.998, 99}, {0.9996, 100}, {1.0, 100}, {0.003, 1}, {0.0004, 0}, {0.0, 0}, {1.254, 125}};
    for (const auto& [fraction, percent] : told) {
        EXPECT_EQ(percentShown(fraction), percent) << fraction;
        EXPECT_EQ(plain(percentText(fraction)), std::to_string(percent) + " %");
    }
}

TEST_F(Formats, CountsCarryThousandsMarksAndNoMinusZero)
{
    use("en_GB");
    EXPECT_EQ(plain(countText(12345)), "12,345");
    EXPECT_EQ(plain(countText(4567, true)), "4,600");
    EXPECT_EQ(plain(numberText(-0.001, 1)), "0.0");
}

TEST_F(Formats, DayAndMonthStandInTheOrderOfTheLocale)
{
    const Day may = day(2031, 5, 2);
    use("en_GB");
    EXPECT_EQ(plain(longDay(may, may)), "Friday 2 May");
    EXPECT_EQ(plain(shortDay(may, day(2032, 1, 1))), "2 May 2031");
    use("en_US");
    EXPECT_EQ(plain(shortDay(may, may)), "May 2");
    EXPECT_EQ(plain(fullDay(may)), "May 2, 2031");
    use("de_DE");
    EXPECT_EQ(plain(shortDay(may, may)), "2. Mai");
}

TEST_F(Formats, RangesOfDaysSayTheMonthOnce)
{
    const Day today = day(2031, 5, 2);
    use("en_GB");
    EXPECT_EQ(plain(dayRange(day(2031, 5, 2), day(2031, 5, 9), today)), "2–9 May");
    EXPECT_EQ(plain(dayRange(day(2031, 4, 28), day(2031, 5, 3), today)), "28 Apr – 3 May");
    EXPECT_EQ(plain(dayRange(day(2031, 12, 30), day(2032, 1, 4), today)), "30 Dec 2031 – 4 Jan 2032");
    EXPECT_EQ(plain(dayRange(day(2032, 1, 2), day(2032, 1, 4), today)), "2–4 Jan 2032");
    EXPECT_EQ(plain(dayRange(today, today, today)), "2 May");
    use("en_US");
    EXPECT_EQ(plain(dayRange(day(2031, 5, 2), day(2031, 5, 9), today)), "May 2–9");
    use("de_DE");
    EXPECT_EQ(plain(dayRange(day(2031, 5, 2), day(2031, 5, 9), today)), "2.–9. Mai");
}

TEST_F(Formats, DatesWithTheirRange)
{
    const Day today = day(2031, 5, 2);
    use("en_GB");
    EXPECT_EQ(plain(datesText({day(2031, 5, 4), day(2031, 5, 12), day(2031, 6, 3)}, today)), "12 May (4 May – 3 Jun)");
    EXPECT_EQ(plain(datesText({day(2031, 5, 4), std::nullopt, std::nullopt}, today)), "after 4 May");
    EXPECT_EQ(plain(datesText({day(2031, 5, 4), day(2031, 5, 12), std::nullopt}, today)), "12 May (4 May or later)");
    EXPECT_EQ(plain(datesText({}, today)), "");
}

TEST_F(Formats, DueDaysAreNamedAsPeopleCount)
{
    const Day today = day(2031, 5, 2);
    use("en_GB");
    EXPECT_EQ(plain(dueDay(today, today)), "today");
    EXPECT_EQ(plain(dueDay(today + std::chrono::days{1}, today)), "tomorrow");
    EXPECT_EQ(plain(dueDay(today + std::chrono::days{5}, today)), "Wednesday");
    EXPECT_EQ(plain(dueDay(today + std::chrono::days{7}, today)), "9 May");
    EXPECT_EQ(plain(dueDay(today - std::chrono::days{3}, today)), "since 29 Apr");
}

TEST_F(Formats, CivilDaysGoBothWays)
{
    for (const Day each : {day(1900, 1, 1), day(1970, 1, 1), day(2000, 2, 29), day(2199, 12, 31)}) EXPECT_EQ(civilDay(qDate(each)), each);
    EXPECT_EQ(qDate(day(2031, 5, 2)), (QDate{2031, 5, 2}));
}

}
