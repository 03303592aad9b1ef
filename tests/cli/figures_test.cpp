#include "program.h"

#include "core/quantity/day_text.h"

#include <QElapsedTimer>

#include <cstdio>

// Prints how long the calls take on a journal of two years and three stacks (about 900 entries). What is asserted is that the work is done;
// the figures mean something in a release build on a quiet machine.
namespace tierloam::cli {

class Figures : public Program {
protected:
    /// Three stacks, fed and covered weekly, watered, drained and looked at, each turned when it is about due. An invented household.
    static std::string twoYears(int& rows)
    {
        std::string text = header;
        rows = 0;
        const Day first = *parseDay("2029-01-01");
        const auto add = [&](int day, const std::string& rest) {
            text += dayText(first + std::chrono::days{day}) + ',' + rest + '\n';
            ++rows;
        };
        for (const char* name : {"Scullery", "Lean-to", "Cellar"}) {
            const std::string stack = name;
            add(0, stack + ",setup,,,,,trays=3,");
            add(0, stack + ",bed,,900,g,corrugated cardboard shredded,,");
            add(1, stack + ",stock,,400,g,,,");
        }
        for (int week = 1; week < 104; ++week)
            for (const char* name : {"Scullery", "Lean-to", "Cellar"}) {
                const std::string stack = name;
                if (week == 12 || week == 24) add(7 * week, stack + ",bed,,900,g,corrugated cardboard shredded,,");
                if (week > 30 && week % 10 == 4) add(7 * week, stack + ",rotate,,,,,,");
                if (week > 30 && week % 10 == 5) {
                    add(7 * week, stack + ",harvest,,2.5,kg,,,");
                    add(7 * week, stack + ",bed,,900,g,corrugated cardboard shredded,,");
                }
                add(7 * week, stack + ",feed,,700,g,,,");
                if (week % 2 == 0) add(7 * week, stack + ",cover,,,,,,");
                if (week % 3 == 0) add(7 * week + 1, stack + ",drain,,0.6,L,,,");
                if (week % 2 == 1) add(7 * week + 2, stack + ",water,,0.5,L,,,");
                if (week % 6 == 0) add(7 * week + 2, stack + ",check,1,,,,depth=3;bits=20,");
                if (week % 8 == 0) add(7 * week + 3, stack + ",reading,,,,,bin=19.5;air=18,");
            }
        return text;
    }

    Answer timed(const char* what, const QStringList& arguments)
    {
        QElapsedTimer clock;
        clock.start();
        Answer answer = run(arguments);
        std::printf("[  figure  ] %s: %.3f s\n", what, static_cast<double>(clock.nsecsElapsed()) * 1e-9);
        return answer;
    }
};

TEST_F(Figures, OfTwoYearsOfThreeStacks)
{
    int rows = 0;
    write("j.csv", twoYears(rows));
    std::printf("[  figure  ] entries: %d\n", rows);
    EXPECT_GT(rows, 800);
    const QString file = QStringLiteral("h.tierloam");
    const Answer imported = timed("import", {file, QStringLiteral("--import"), QStringLiteral("j.csv")});
    EXPECT_EQ(imported.out, "imported " + std::to_string(rows) + " entries\n") << imported.err;
    EXPECT_EQ(timed("record", {file, QStringLiteral("--record"), QStringLiteral("2031-01-01,Cellar,feed,,700,g,,,")}).code, 0);
    EXPECT_EQ(timed("export", {file, QStringLiteral("--export"), QStringLiteral("o.csv")}).code, 0);
    const std::string exportedText = read("o.csv");
    EXPECT_EQ(std::count(exportedText.begin(), exportedText.end(), '\n'), rows + 2);
    EXPECT_EQ(timed("summary", {file, QStringLiteral("--summary"), QStringLiteral("--at"), QStringLiteral("2031-01-01")}).code, 0);
}

}
