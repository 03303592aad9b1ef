#include "ui/paper/sheet.h"

#include "core/advice/household_advice.h"
#include "core/exchange/report_html.h"
#include "core/exchange/whole_file.h"
#include "core/household/usual.h"
#include "ui/common/formats.h"
#include "ui/common/usual_amounts.h"
#include "ui/paper/look.h"
#include "ui/paper/page_flow.h"
#include "ui/paper/sheet_figures.h"
#include "ui/paper/sheet_words.h"
#include "ui/trends/trend_sentence.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QPainter>

#include <algorithm>

namespace tierloam::paper {

namespace {

struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

/// What the due list says of it: which look is asked for depends on the other stacks.
std::vector<advice::Advice> saidOf(const SheetInputs& inputs, const reckoning::StackReckoning& stack) { return advice::ofStack(advice::adviceForAll(*inputs.reckoning), stack.name); }

/// The stack alone, as the shelf shows it; nullopt when it does not stand.
std::optional<shelf::StackModel> shelfModel(const SheetInputs& inputs, const journal::StackHistory& history)
{
    auto alone = std::make_shared<household::JournalView>(*inputs.journal);
    alone->replay.stacks = {history};
    shelf::ShelfInputs shelf;
    shelf.household = inputs.household;
    shelf.today = shelf.shown = inputs.today;
    shelf.journal = alone;
    shelf.reckoning = inputs.reckoning;
    shelf.usual = [&](const std::string& stack) { return ui::roundDefaults(household::usualOf(inputs.journal->entries, inputs.journal->materials, stack, inputs.today)); };
    shelf.advice = [&](const reckoning::StackReckoning& stack) { return saidOf(inputs, stack); };
    shelf::ShelfModel model = shelf::makeShelf(shelf);
    if (model.stacks.empty()) return std::nullopt;
    return std::move(model.stacks.front());
}

class Maker {
public:
    explicit Maker(const SheetInputs& inputs) : inputs_{inputs}, width_{contentWidth(usualPage())} {}

    Sheet make(const journal::StackHistory& history, const journal::Standing& standing)
    {
        const reckoning::StackReckoning* stack = inputs_.reckoning && !standing.retired ? inputs_.reckoning->stack(history.name) : nullptr;
        const QString name = held(QString::fromStdString(history.name), 160);
        exchange::Report& report = sheet_.report;
        report.language = QLocale{}.bcp47Name();
        report.rightToLeft = QGuiApplication::layoutDirection() == Qt::RightToLeft;
        report.program = QStringLiteral("Tierloam ") % inputs_.version;
        report.title = name;
        report.subtitle = SheetText::tr("%1 · as of %2 · %3").arg(held(inputs_.household, 160), ui::fullDay(inputs_.today), setupLine(standing));
        report.foot = SheetText::tr("%1 · %2. Estimates, no measurements: a look into the tray rules over any number here.").arg(name, ui::fullDay(inputs_.today));

        how(history, standing, stack);
        if (stack) add(dueBlocks(saidOf(inputs_, *stack), inputs_.today));
        story(history, stack);
        charts(history, stack);
        add(cautionBlocks(standing.retired ? nullptr : &standing, stack));
        return std::move(sheet_);
    }

private:
    void add(const QList<exchange::ReportBlock>& blocks) { sheet_.report.blocks << blocks; }
    template <class Block>
    void add(Block block)
    {
        sheet_.report.blocks << exchange::ReportBlock{std::move(block)};
    }
    void table(exchange::ReportTable made)
    {
        if (!made.rows.isEmpty()) add(std::move(made));
    }
    void figure(const QString& title, const QString& words, const Figure& made)
    {
        exchange::ReportFigure block{title, words, static_cast<int>(made.size.width()), static_cast<int>(made.size.height()), {}};
        block.svg = svgBytes(made.size, [&](QPainter& painter) { made.paint(painter, {QPointF{}, made.size}); });
        sheet_.figures << made.paint;
        add(std::move(block));
    }

    void how(const journal::StackHistory& history, const journal::Standing& standing, const reckoning::StackReckoning* stack)
    {
        if (standing.retired) {
            add(exchange::ReportParagraph{SheetText::tr("This stack has ended. What follows is its story."), false});
            return;
        }
        const auto model = shelfModel(inputs_, history);
        if (!model) return;
        add(verdictBox(model->verdict));
        if (!standing.slots.empty()) figure({}, model->value, stackFigure(*model, width_));
        add(exchange::ReportHeading{SheetText::tr("How it stands")});
        if (!model->lastLine.isEmpty()) add(exchange::ReportParagraph{model->lastLine, true});
        if (!stack && !standing.slots.empty()) add(exchange::ReportParagraph{SheetText::tr("The estimates are not there yet: this sheet holds only what the journal knows."), false});
        if (stack) table(estimateTable(*stack));
        // From the top down, as one looks at it.
        const shelf::StoryInputs inputs{*inputs_.journal, history, standing, stack, inputs_.today, inputs_.today};
        for (auto part = model->parts.rbegin(); part != model->parts.rend(); ++part) {
            const shelf::PartStory story = part->slot > 0 ? shelf::trayStory(inputs, part->slot) : shelf::sumpStory(inputs);
            table(factTable(part->name, part->facts + story.facts));
            for (const QString& note : part->notes) add(exchange::ReportParagraph{note, true});
            if (stack) figure({}, story.chartsText, storyFigure(story, width_));
        }
    }

    void story(const journal::StackHistory& history, const reckoning::StackReckoning* stack)
    {
        const auto stories = household::batchStories(history, inputs_.journal->entries, inputs_.journal->materials, inputs_.today);
        add(exchange::ReportHeading{SheetText::tr("The story of its batches")});
        if (stories.empty()) add(exchange::ReportParagraph{SheetText::tr("No tray has been bedded yet."), false});
        table(batchTable(stories, inputs_.today));
        for (const household::BatchStory& one : stories)
            if (!one.ended) table(storyTable(one, inputs_.journal->entries, inputs_.today));
        if (stack) table(harvestTable(*stack));
    }

    void charts(const journal::StackHistory& history, const reckoning::StackReckoning* stack)
    {
        if (!stack) return;
        add(exchange::ReportHeading{SheetText::tr("Charts of the past year and the forecast under usual care")});
        const QString key = SheetText::tr("Lines are estimates, bands the range that holds nine times in ten; what is shaded, with a dashed line, is the forecast. Signs stand for what was written down.");
        add(exchange::ReportParagraph{key, true});
        figure({}, SheetText::tr("The signs in the charts"), chartKey(width_));
        const trends::Period period = trends::periodOf(trends::Range::year, inputs_.today, history.firstBedding);
        for (const trends::Measure measure : trends::allMeasures) {
            const trends::Series series = trends::seriesOf(measure, QString::fromStdString(history.name), 0, stack, *inputs_.journal, period, inputs_.logged);
            const QString sentence = trends::sentenceOf(measure, series, period, true);
            const int barDays = series.bars.empty() ? 7 : series.bars.front().days;
            const QString title = SheetText::tr("%1: %2").arg(trends::measureName(measure), trends::measureNote(measure, barDays));
            if (series.empty()) {
                add(exchange::ReportParagraph{title % QStringLiteral(". ") % sentence, true});
                continue;
            }
            figure(title, sentence, chartFigure(measure, {series}, period, width_));
            add(exchange::ReportParagraph{sentence, true});
        }
    }

    const SheetInputs& inputs_;
    double width_;
    Sheet sheet_;
};

}

std::optional<Sheet> makeSheet(const SheetInputs& inputs)
{
    const journal::StackHistory* history = inputs.journal->replay.stack(inputs.stack);
    const journal::Standing* standing = history ? history->on(inputs.today) : nullptr;
    if (!standing) return std::nullopt;
    return Maker{inputs}.make(*history, *standing);
}

QStringList stacksOn(const journal::Replay& replay, Day day, const household::StackOrder& order)
{
    QStringList standing, retired;
    for (const journal::StackHistory& stack : household::inOrder(replay.stacks, order)) {
        const journal::Standing* now = stack.on(day);
        if (now) (now->retired ? retired : standing) << QString::fromStdString(stack.name);
    }
    return standing + retired;
}

std::optional<QString> saveAsPdf(const Sheet& sheet, const QString& path)
{
    const QByteArray pdf = pdfBytes(sheet.report.title, sheet.report.program, usualPage(), pageMargins(), [&](QPainter& painter, QPagedPaintDevice& device) { paintSheet(sheet, painter, device); });
    if (pdf.isEmpty()) return SheetText::tr("The pages could not be drawn.");
    return exchange::writeWholeFile(path, {pdf.constData(), static_cast<std::size_t>(pdf.size())});
}

std::optional<QString> saveAsHtml(const Sheet& sheet, const QString& path)
{
    return exchange::writeWholeFile(path, exchange::reportHtml(sheet.report));
}

}
