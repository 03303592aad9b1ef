#include "app/window_paper.h"

#include "app/core_calls.h"
#include "app/languages.h"
#include "app/opened_file.h"
#include "core/exchange/stack_names.h"
#include "core/household/stack_order.h"
#include "core/store/setting_names.h"
#include "ui/paper/labels.h"
#include "ui/paper/look.h"
#include "ui/paper/sheet.h"

#include <QApplication>

#include <algorithm>

namespace tierloam::app {

namespace {

class Text {
    Q_DECLARE_TR_FUNCTIONS(WindowPaper)
};

/// The name as the journal has it; case does not matter when that is enough. Told when there is none.
std::optional<std::string> stackNamed(const std::string& asked, const journal::Replay& replay, Day day)
{
    const QStringList known = paper::stacksOn(replay, day);
    const QString name = QString::fromStdString(asked);
    std::vector<std::string> names;
    for (const QString& each : known) names.push_back(each.toStdString());
    if (auto meant = exchange::stackMeant(asked, names)) return meant;
    complain(known.isEmpty() ? Text::tr("--report: there is no stack on that day") : Text::tr("--report: found «%1»; allowed: %2").arg(name, known.join(QStringLiteral(", "))));
    return std::nullopt;
}

int report(const CommandLine& call)
{
    if (isItsOwnTarget(call, Text::tr("the sheet"))) return exitBadInput;
    auto reckoned = reckonFile(call);
    if (!reckoned) return exitFailed;
    auto view = std::make_shared<household::JournalView>();
    view->replay = journal::replay(reckoned->entries);
    view->materials = materials::Table::withOwn(reckoned->entries);
    view->entries = std::move(reckoned->entries);
    const auto stack = stackNamed(call.stack, view->replay, dayOf(call));
    if (!stack) return exitBadInput;
    const auto logged = reckoned->logged.find(*stack);
    const auto sheet = paper::makeSheet({reckoned->household, *stack, dayOf(call), view, reckoned->reckoning, logged == reckoned->logged.end() ? nullptr : &logged->second,
                                         QStringLiteral(TIERLOAM_VERSION)});
    const bool html = call.csv.endsWith(QLatin1StringView{".html"}, Qt::CaseInsensitive);
    const auto why = html ? paper::saveAsHtml(*sheet, call.csv) : paper::saveAsPdf(*sheet, call.csv);
    if (!why) return exitDone;
    complain(*why);
    return exitFailed;
}

int labels(const CommandLine& call)
{
    if (isItsOwnTarget(call, Text::tr("the labels"))) return exitBadInput;
    const auto opened = openFile(call.file, store::HouseholdFile::Mode::readOnly);
    if (!opened) return exitFailed;
    const auto made = paper::labelsOf(journal::replay(opened->entries), dayOf(call), household::orderFrom(settingOf(*opened->file, store::settingStackOrder)));
    if (made.empty()) {
        complain(Text::tr("no tray stands on that day, so there is nothing to label"));
        return exitBadInput;
    }
    const auto why = paper::saveLabels(made, paper::usualLabelSheet(), 0, QStringLiteral("Tierloam ") + QStringLiteral(TIERLOAM_VERSION), call.csv);
    if (!why) return exitDone;
    complain(*why);
    return exitFailed;
}

}

void needNoDisplay()
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    for (const char* name : {"QT_QPA_PLATFORMTHEME", "QT_STYLE_OVERRIDE", "QT_SCALE_FACTOR", "QT_SCREEN_SCALE_FACTORS", "QT_FONT_DPI"}) qunsetenv(name);
}

int drawPaper(int& argc, char** argv, const CommandLine& call)
{
    needNoDisplay();
    const QApplication application{argc, argv};
    QApplication::setFont(paper::paperFont());
    useLanguage(call.language);
    return call.call == Call::report ? report(call) : labels(call);
}

}
