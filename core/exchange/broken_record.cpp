#include "core/exchange/broken_record.h"

#include "core/exchange/text.h"

namespace tierloam::exchange {

namespace {

Fault wholeRow(std::string_view raw, const QString& allowed) { return {0, {}, shown(raw), allowed}; }

}

std::optional<Fault> brokenRecord(const csv::Record& record)
{
    switch (record.problem) {
    case csv::Problem::none:
        return std::nullopt;
    case csv::Problem::openQuote:
        return wholeRow(record.raw, ExchangeText::tr("a closing quote mark for each opening one"));
    case csv::Problem::strayQuote:
        return wholeRow(record.raw, ExchangeText::tr("quote marks only around a whole cell, and doubled inside it"));
    case csv::Problem::notUtf8:
        return wholeRow(record.raw, ExchangeText::tr("text in UTF-8; this may be Latin-1"));
    }
    return std::nullopt;
}

}
