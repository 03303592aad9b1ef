#include "core/exchange/logger_plan.h"
#include "core/exchange/sheet_import.h"
#include "tests/support/word_answers.h"

#include <QCoreApplication>

#include <cstdlib>

/// Any bytes as somebody's table and as a logger's: read with its questions and words answered in every way, and every row has one fate.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* bytes, std::size_t length)
{
    using namespace tierloam;
    static int count = 0;
    static const QCoreApplication application{count, nullptr};
    const auto read = exchange::readSheet({reinterpret_cast<const char*>(bytes), length});
    if (const auto* why = std::get_if<QString>(&read)) {
        if (why->isEmpty()) std::abort();
        return 0;
    }
    const auto& sheet = std::get<exchange::Sheet>(read);
    exchange::SheetAnswers answers;
    answers.columns = exchange::recogniseColumns(sheet.header);
    for (const int way : {0, 1, 2, 3}) {
        answers.decimal = way % 2 == 0 ? exchange::DecimalMark::point : exchange::DecimalMark::comma;
        answers.order = way % 2 == 0 ? exchange::DateOrder::dayFirst : exchange::DateOrder::monthFirst;
        answers.century = 2000;
        answers.stack = "Mill";
        answers.action = "feed";
        answers.unit = Unit::g;
        if (way > 0) answers.words = tests::answeredToTheEnd(sheet, answers.columns, answers.action, {}, static_cast<std::uint64_t>(way));
        if (!tests::areKept(answers.words)) std::abort();
        const auto plan = exchange::planImport(sheet, answers, {});
        if (plan.fates.size() != sheet.rows.size() || plan.count(exchange::RowFate::fault) != plan.faults.size() || plan.count(exchange::RowFate::added) + plan.begun != plan.entries.size()) std::abort();
        if (exchange::readSheet(exchange::faultyRows(sheet, plan), sheet.separator).index() != 0) std::abort();
    }
    exchange::LoggerMapping mapping = exchange::guessMapping(sheet.header);
    for (auto& column : mapping.columns)
        if (!column.degree) column.degree = exchange::Degree::fahrenheit;
    mapping.decimal = exchange::DecimalMark::comma;
    mapping.order = exchange::DateOrder::dayFirst;
    mapping.century = 1900;
    (void)exchange::planReadings(exchange::readLogger(sheet, mapping), "Mill", {}, {});
    return 0;
}
