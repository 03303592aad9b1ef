#include "ui/exchange/sheet_sentence.h"

#include <QCoreApplication>
#include <QStringList>

namespace tierloam::exchange_view {

namespace {

class SheetSentence {
    Q_DECLARE_TR_FUNCTIONS(SheetSentence)
};

}

QString readSentence(const exchange::Sheet& sheet)
{
    const int rows = static_cast<int>(sheet.rows.size());
    QStringList parts{(sheet.whole ? SheetSentence::tr("%n row(s), %1.", nullptr, rows) : SheetSentence::tr("The first %n row(s), %1; the others are being read.", nullptr, rows)).arg(exchange::encodingText(sheet.encoding))};
    if (!sheet.separatorIsSure) parts << SheetSentence::tr("What parts the cells is not certain: look at the columns below.");
    if (sheet.headerLine == 0) parts << SheetSentence::tr("No row names the columns: say below what each holds.");
    else if (sheet.above > 0) parts << SheetSentence::tr("The columns are named in line %1; what stands above it is left out.").arg(sheet.headerLine);
    return parts.join(QLatin1Char{' '});
}

QString fateSentence(const exchange::Sheet& sheet, const exchange::SheetPlan* plan, bool noDate, bool asked, bool anew)
{
    using exchange::RowFate;
    if (noDate) return SheetSentence::tr("No column holds the date. Choose the one that does in the first row of the table.");
    if (!plan) return SheetSentence::tr("Looking at the rows…");
    const auto count = [plan](RowFate fate) { return static_cast<int>(plan->count(fate)); };
    const int added = static_cast<int>(plan->entries.size());
    QStringList parts;
    // Rows that wait for an answer are not at fault.
    if (asked) {
        parts << SheetSentence::tr("Please answer what is asked above; then you see what becomes of each row.");
    } else if (sheet.whole) {
        if (sheet.rows.empty()) parts << SheetSentence::tr("There are no rows beneath the names of the columns: nothing to import.");
        else if (added > 0) parts << SheetSentence::tr("%n entry(ies) will be added, as one step that can be undone.", nullptr, added);
        else parts << SheetSentence::tr("Nothing will be added.");
        if (plan->begun > 0) parts << SheetSentence::tr("%n of them begin(s) what is a new stack.", nullptr, static_cast<int>(plan->begun));
        if (count(RowFate::fault) > 0) parts << SheetSentence::tr("%n row(s) at fault: not added.", nullptr, count(RowFate::fault));
        if (count(RowFate::unwanted) > 0) parts << SheetSentence::tr("%n row(s) left out as answered.", nullptr, count(RowFate::unwanted));
        if (count(RowFate::there) > 0) parts << SheetSentence::tr("%n row(s) already there: left out.", nullptr, count(RowFate::there));
        if (count(RowFate::twice) > 0) parts << SheetSentence::tr("%n row(s) said before: left out.", nullptr, count(RowFate::twice));
        if (anew && added > 0) parts << SheetSentence::tr("No household is open: you are asked for the name of a new one, which keeps your answers too.");
    }
    if (!sheet.whole) parts << SheetSentence::tr("The rest of the file is being read; more may be asked then.");
    return parts.join(QLatin1Char{' '});
}

}
