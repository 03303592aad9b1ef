#pragma once

#include "core/exchange/report.h"
#include "core/household/household.h"
#include "core/store/logged.h"

#include <QRectF>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QPainter;

/// A stack's sheet: how it stands, what became of its batches, its charts, what is due and what to beware of. One content for screen, printer,
/// PDF and HTML.
namespace tierloam::paper {

/// What the sheet is made from. `reckoning` may be null: then it holds only what the journal knows, and says so.
struct SheetInputs {
    QString household;
    std::string stack;               ///< its name
    Day today{};
    std::shared_ptr<const household::JournalView> journal;
    std::shared_ptr<const reckoning::Reckoning> reckoning;
    const std::vector<store::LoggedDay>* logged = nullptr; ///< of the stack
    QString version;
};

/// Paints a figure of the report into its rectangle, whose size is that of the figure.
using PaintFigure = std::function<void(QPainter&, const QRectF&)>;

struct Sheet {
    exchange::Report report;
    QList<PaintFigure> figures;      ///< one for each ReportFigure, in their order
};

/// nullopt when there is no stack of that name on that day. Needs a QApplication; the figures look at `inputs.logged` only while this runs.
std::optional<Sheet> makeSheet(const SheetInputs& inputs);

/// Names of the stacks that a sheet can be made of, those that stand first, then retired ones.
QStringList stacksOn(const journal::Replay& replay, Day day, const household::StackOrder& order = {});

/// Why a sheet could not be written, as a sentence; nullopt when it is there. What was there before is replaced as a whole or not at all.
std::optional<QString> saveAsPdf(const Sheet& sheet, const QString& path);
std::optional<QString> saveAsHtml(const Sheet& sheet, const QString& path);

}
