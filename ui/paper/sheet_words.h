#pragma once

#include "core/household/batch_story.h"
#include "ui/paper/sheet.h"
#include "ui/shelf/shelf_model.h"

/// The parts of a stack's sheet in words.
namespace tierloam::paper {

exchange::ReportBox verdictBox(const shelf::Verdict& verdict);
/// What is due, most pressing first.
QList<exchange::ReportBlock> dueBlocks(const std::vector<advice::Advice>& advice, Day today);
/// Names and values of a part.
exchange::ReportTable factTable(const QString& title, const shelf::Facts& facts);
/// The estimates of the whole stack, a row each.
exchange::ReportTable estimateTable(const reckoning::StackReckoning& stack);
/// One row a batch, from the first on.
exchange::ReportTable batchTable(const std::vector<household::BatchStory>& stories, Day today);
/// What was done to one batch, line by line; the latest `most` of them.
exchange::ReportTable storyTable(const household::BatchStory& story, const journal::Entries& entries, Day today, std::size_t most = 24);
/// Whole harvests: taken beside expected.
exchange::ReportTable harvestTable(const reckoning::StackReckoning& stack);
/// What work at this stack asks to beware of; the bottom tray's weight in it when it is known.
QList<exchange::ReportBlock> cautionBlocks(const journal::Standing* standing, const reckoning::StackReckoning* stack);
/// The set-up in one line.
QString setupLine(const journal::Standing& standing);

/// Held to a length that a page can hold; what is left out is marked.
QString held(const QString& text, qsizetype most = 400);

}
