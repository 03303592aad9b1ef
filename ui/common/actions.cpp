#include "ui/common/actions.h"

#include "ui/common/popup_keys.h"

#include <QAction>
#include <QCoreApplication>
#include <QVariant>
#include <QWidget>

#include <algorithm>

namespace tierloam::ui {

namespace {

constexpr const char* context = "Actions";

/// Single letters work only on the page they belong to and only while no field has the focus; everything of the window has Ctrl or a function key.
constexpr ActionRow rows[] = {
    {ActionId::newHousehold, Where::window, "newHousehold", QT_TRANSLATE_NOOP("Actions", "&New household…"), "Ctrl+Shift+N"},
    {ActionId::openHousehold, Where::window, "openHousehold", QT_TRANSLATE_NOOP("Actions", "&Open household…"), "Ctrl+O"},
    {ActionId::renameHousehold, Where::window, "renameHousehold", QT_TRANSLATE_NOOP("Actions", "Na&me of the household…"), "Ctrl+Shift+M"},
    {ActionId::importJournal, Where::window, "importJournal", QT_TRANSLATE_NOOP("Actions", "&Import a table (CSV)…"), "Ctrl+I"},
    {ActionId::importReadings, Where::window, "importReadings", QT_TRANSLATE_NOOP("Actions", "Import readings of a &logger…"), "Ctrl+L"},
    {ActionId::exportJournal, Where::window, "exportJournal", QT_TRANSLATE_NOOP("Actions", "&Export journal (CSV)…"), "Ctrl+E"},
    {ActionId::exportCalendar, Where::window, "exportCalendar", QT_TRANSLATE_NOOP("Actions", "Export ca&lendar…"), "Ctrl+Shift+E"},
    {ActionId::stackSheet, Where::window, "stackSheet", QT_TRANSLATE_NOOP("Actions", "&Print the sheet of a stack…"), "Ctrl+P"},
    {ActionId::trayLabels, Where::window, "trayLabels", QT_TRANSLATE_NOOP("Actions", "Labels for &trays…"), "Ctrl+Shift+P"},
    {ActionId::saveCopy, Where::window, "saveCopy", QT_TRANSLATE_NOOP("Actions", "Sa&ve a copy…"), "Ctrl+Shift+S"},
    {ActionId::backups, Where::window, "backups", QT_TRANSLATE_NOOP("Actions", "&Backups…"), "Ctrl+B"},
    {ActionId::backupFolder, Where::window, "backupFolder", QT_TRANSLATE_NOOP("Actions", "&Folder for backups…"), "Ctrl+Shift+B"},
    {ActionId::seasonsNorth, Where::window, "seasonsNorth", QT_TRANSLATE_NOOP("Actions", "Warmest in &July, north of the equator"), "Ctrl+Alt+J"},
    {ActionId::seasonsSouth, Where::window, "seasonsSouth", QT_TRANSLATE_NOOP("Actions", "Warmest in J&anuary, south of the equator"), "Ctrl+Alt+N"},
    {ActionId::openDemo, Where::window, "openDemo", QT_TRANSLATE_NOOP("Actions", "Open the &demo household"), "Ctrl+Shift+D"},
    {ActionId::closeWindow, Where::window, "closeWindow", QT_TRANSLATE_NOOP("Actions", "&Close window"), "Ctrl+W"},
    {ActionId::quit, Where::window, "quit", QT_TRANSLATE_NOOP("Actions", "&Quit"), "Ctrl+Q"},
    {ActionId::undo, Where::window, "undo", QT_TRANSLATE_NOOP("Actions", "&Undo"), "Ctrl+Z"},
    {ActionId::redo, Where::window, "redo", QT_TRANSLATE_NOOP("Actions", "&Redo"), "Ctrl+Shift+Z; Ctrl+Y"},
    {ActionId::deletedEntries, Where::window, "deletedEntries", QT_TRANSLATE_NOOP("Actions", "&Deleted entries…"), "Ctrl+Shift+X"},
    {ActionId::newStack, Where::window, "newStack", QT_TRANSLATE_NOOP("Actions", "New &stack…"), "Ctrl+N"},
    {ActionId::recordOther, Where::window, "recordOther", QT_TRANSLATE_NOOP("Actions", "Re&cord…"), "Ctrl+R"},
    {ActionId::whatIsWrong, Where::window, "whatIsWrong", QT_TRANSLATE_NOOP("Actions", "What may be &wrong"), "F7"},
    {ActionId::guidedHarvest, Where::window, "guidedHarvest", QT_TRANSLATE_NOOP("Actions", "&Harvest, step by step"), "F8"},
    {ActionId::pageShelf, Where::window, "pageShelf", QT_TRANSLATE_NOOP("Actions", "&Shelf"), "Ctrl+1"},
    {ActionId::pageTrends, Where::window, "pageTrends", QT_TRANSLATE_NOOP("Actions", "&Trends"), "Ctrl+2"},
    {ActionId::pageJournal, Where::window, "pageJournal", QT_TRANSLATE_NOOP("Actions", "&Journal"), "Ctrl+4"},
    {ActionId::pageMaterials, Where::window, "pageMaterials", QT_TRANSLATE_NOOP("Actions", "&Materials"), "Ctrl+5"},
    {ActionId::pageHandbook, Where::window, "pageHandbook", QT_TRANSLATE_NOOP("Actions", "&Handbook"), "Ctrl+6; F1"},
    {ActionId::pageRotation, Where::window, "pageRotation", QT_TRANSLATE_NOOP("Actions", "R&otation"), "Ctrl+3"},
    {ActionId::goDue, Where::window, "goDue", QT_TRANSLATE_NOOP("Actions", "Go to the &due list"), "F6"},
    {ActionId::doDue, Where::window, "doDue", QT_TRANSLATE_NOOP("Actions", "Do the &first thing due"), "Ctrl+D"},
    {ActionId::notifyDue, Where::window, "notifyDue", QT_TRANSLATE_NOOP("Actions", "&Tell on the desktop what is due today"), "Ctrl+Alt+T"},
    {ActionId::themeLight, Where::window, "themeLight", QT_TRANSLATE_NOOP("Actions", "&Light colours"), "Ctrl+Alt+L"},
    {ActionId::themeDark, Where::window, "themeDark", QT_TRANSLATE_NOOP("Actions", "&Dark colours"), "Ctrl+Alt+D"},
    {ActionId::themeSystem, Where::window, "themeSystem", QT_TRANSLATE_NOOP("Actions", "Colours &as the system"), "Ctrl+Alt+S"},
    {ActionId::measuresSystem, Where::window, "measuresSystem", QT_TRANSLATE_NOOP("Actions", "Units &as the system"), "Ctrl+Alt+0"},
    {ActionId::measuresMetric, Where::window, "measuresMetric", QT_TRANSLATE_NOOP("Actions", "&Metric: kg, L, °C"), "Ctrl+Alt+K"},
    {ActionId::measuresUs, Where::window, "measuresUs", QT_TRANSLATE_NOOP("Actions", "&US: lb, gal, °F"), "Ctrl+Alt+U"},
    {ActionId::languageSystem, Where::window, "languageSystem", QT_TRANSLATE_NOOP("Actions", "Language &as the system"), "Ctrl+Alt+1"},
    {ActionId::languageEnglish, Where::window, "languageEnglish", "English", "Ctrl+Alt+2"}, // each in its own words, for those who are lost in another
    {ActionId::languageGerman, Where::window, "languageGerman", "Deutsch", "Ctrl+Alt+3"},
    {ActionId::languageSpanish, Where::window, "languageSpanish", "Español", "Ctrl+Alt+4"},
    {ActionId::languageFrench, Where::window, "languageFrench", "Français", "Ctrl+Alt+5"},
    {ActionId::fontLarger, Where::window, "fontLarger", QT_TRANSLATE_NOOP("Actions", "L&arger text"), "Ctrl++; Ctrl+="},
    {ActionId::fontSmaller, Where::window, "fontSmaller", QT_TRANSLATE_NOOP("Actions", "S&maller text"), "Ctrl+-"},
    {ActionId::fontNormal, Where::window, "fontNormal", QT_TRANSLATE_NOOP("Actions", "&Normal text"), "Ctrl+0"},
    {ActionId::lessMotion, Where::window, "lessMotion", QT_TRANSLATE_NOOP("Actions", "Less &motion"), "Ctrl+Alt+M"},
    {ActionId::fullScreen, Where::window, "fullScreen", QT_TRANSLATE_NOOP("Actions", "&Full screen"), "F11"},
    {ActionId::shortcuts, Where::window, "shortcuts", QT_TRANSLATE_NOOP("Actions", "&Keys and shortcuts"), "Ctrl+K"},
    {ActionId::copyReport, Where::window, "copyReport", QT_TRANSLATE_NOOP("Actions", "Copy a &report"), "Ctrl+Shift+R"},
    {ActionId::about, Where::window, "about", QT_TRANSLATE_NOOP("Actions", "&About Tierloam"), "Shift+F1"},

    {ActionId::dueAct, Where::due, "dueActKey", QT_TRANSLATE_NOOP("Actions", "Do what the line says"), "D"},
    {ActionId::dueOther, Where::due, "dueOtherKey", QT_TRANSLATE_NOOP("Actions", "Another amount or day…"), "."},
    {ActionId::dueAnswer, Where::due, "dueAnswerKey", QT_TRANSLATE_NOOP("Actions", "Answers in their order"), "1; 2; 3; 4; 5; 6; 7; 8"},
    {ActionId::dueDone, Where::due, "dueDoneKey", QT_TRANSLATE_NOOP("Actions", "Note it as done"), "N"},
    {ActionId::dueWhy, Where::due, "dueWhyKey", QT_TRANSLATE_NOOP("Actions", "Why, and what if it is left"), "W"},
    {ActionId::dueLater, Where::due, "dueLaterKey", QT_TRANSLATE_NOOP("Actions", "Put it off"), "P"},
    {ActionId::dueAgain, Where::due, "dueAgainKey", QT_TRANSLATE_NOOP("Actions", "Show what was put off"), "A"},

    {ActionId::feed, Where::shelf, "feed", QT_TRANSLATE_NOOP("Actions", "&Feed the usual"), "F"},
    {ActionId::feedBorne, Where::shelf, "feedBorne", QT_TRANSLATE_NOOP("Actions", "Feed only what is borne"), "Shift+L"},
    {ActionId::feedOther, Where::shelf, "feedOther", QT_TRANSLATE_NOOP("Actions", "F&eed…"), "Shift+F"},
    {ActionId::cover, Where::shelf, "cover", QT_TRANSLATE_NOOP("Actions", "&Cover with the usual"), "C"},
    {ActionId::coverOther, Where::shelf, "coverOther", QT_TRANSLATE_NOOP("Actions", "Co&ver…"), "Shift+C"},
    {ActionId::water, Where::shelf, "water", QT_TRANSLATE_NOOP("Actions", "&Water the usual"), "W"},
    {ActionId::waterOther, Where::shelf, "waterOther", QT_TRANSLATE_NOOP("Actions", "W&ater…"), "Shift+W"},
    {ActionId::drain, Where::shelf, "drain", QT_TRANSLATE_NOOP("Actions", "&Drain the usual"), "D"},
    {ActionId::drainOther, Where::shelf, "drainOther", QT_TRANSLATE_NOOP("Actions", "D&rain…"), "Shift+D"},
    {ActionId::flush, Where::shelf, "flush", QT_TRANSLATE_NOOP("Actions", "F&lush…"), "L"},
    {ActionId::rotate, Where::shelf, "rotate", QT_TRANSLATE_NOOP("Actions", "Lift the &bottom tray…"), "R"},
    {ActionId::harvest, Where::shelf, "harvest", QT_TRANSLATE_NOOP("Actions", "Ha&rvest…"), "H"},
    {ActionId::addTray, Where::shelf, "addTray", QT_TRANSLATE_NOOP("Actions", "Add a tra&y…"), "A"},
    {ActionId::rebed, Where::shelf, "rebed", QT_TRANSLATE_NOOP("Actions", "Add beddin&g…"), "B"},
    {ActionId::loosen, Where::shelf, "loosen", QT_TRANSLATE_NOOP("Actions", "L&oosen the castings"), "O"},
    {ActionId::check, Where::shelf, "check", QT_TRANSLATE_NOOP("Actions", "Chec&k a tray…"), "K"},
    {ActionId::weighWorms, Where::shelf, "weighWorms", QT_TRANSLATE_NOOP("Actions", "We&igh worms…"), "G"},
    {ActionId::countWorms, Where::shelf, "countWorms", QT_TRANSLATE_NOOP("Actions", "Co&unt worms…"), "U"},
    {ActionId::weighTray, Where::shelf, "weighTray", QT_TRANSLATE_NOOP("Actions", "Weig&h a tray…"), "Y"},
    {ActionId::reading, Where::shelf, "reading", QT_TRANSLATE_NOOP("Actions", "Readin&g…"), "S"},
    {ActionId::stockWorms, Where::shelf, "stockWorms", QT_TRANSLATE_NOOP("Actions", "&Put worms in…"), "P"},
    {ActionId::removeWorms, Where::shelf, "removeWorms", QT_TRANSLATE_NOOP("Actions", "T&ake worms out…"), "X"},
    {ActionId::moveWorms, Where::shelf, "moveWorms", QT_TRANSLATE_NOOP("Actions", "&Move worms…"), "M"},
    {ActionId::routine, Where::shelf, "routine", QT_TRANSLATE_NOOP("Actions", "U&nwritten routine…"), "Shift+R"},
    {ActionId::event, Where::shelf, "event", QT_TRANSLATE_NOOP("Actions", "Somet&hing happened…"), "E"},
    {ActionId::note, Where::shelf, "note", QT_TRANSLATE_NOOP("Actions", "&Note…"), "N"},
    {ActionId::changeStack, Where::shelf, "changeStack", QT_TRANSLATE_NOOP("Actions", "&Change the stack…"), "Shift+S"},
    {ActionId::retire, Where::shelf, "retire", QT_TRANSLATE_NOOP("Actions", "Retire the stack…"), "Shift+X"},
    {ActionId::moreActs, Where::shelf, "moreActs", QT_TRANSLATE_NOOP("Actions", "More…"), "."},
    {ActionId::moveStackLeft, Where::shelf, "moveStackLeft", QT_TRANSLATE_NOOP("Actions", "Move the stack to the left"), "Alt+Left"},
    {ActionId::moveStackRight, Where::shelf, "moveStackRight", QT_TRANSLATE_NOOP("Actions", "Move the stack to the right"), "Alt+Right"},
    {ActionId::dayBack, Where::shelf, "dayBack", QT_TRANSLATE_NOOP("Actions", "A day back"), "["},
    {ActionId::dayForward, Where::shelf, "dayForward", QT_TRANSLATE_NOOP("Actions", "A day on"), "]"},
    {ActionId::weekBack, Where::shelf, "weekBack", QT_TRANSLATE_NOOP("Actions", "A week back"), "Shift+["},
    {ActionId::weekForward, Where::shelf, "weekForward", QT_TRANSLATE_NOOP("Actions", "A week on"), "Shift+]"},
    {ActionId::backToToday, Where::shelf, "backToToday", QT_TRANSLATE_NOOP("Actions", "Back to today"), "T"},

    {ActionId::range30, Where::trends, "range30", QT_TRANSLATE_NOOP("Actions", "30 days"), "1"},
    {ActionId::range90, Where::trends, "range90", QT_TRANSLATE_NOOP("Actions", "90 days"), "2"},
    {ActionId::rangeYear, Where::trends, "rangeYear", QT_TRANSLATE_NOOP("Actions", "1 year"), "3"},
    {ActionId::range2Years, Where::trends, "range2Years", QT_TRANSLATE_NOOP("Actions", "2 years"), "4"},
    {ActionId::rangeAll, Where::trends, "rangeAll", QT_TRANSLATE_NOOP("Actions", "All"), "5"},
    {ActionId::chartsTogether, Where::trends, "chartsTogether", QT_TRANSLATE_NOOP("Actions", "Stacks together"), "G"},
    {ActionId::showTable, Where::trends, "showTable", QT_TRANSLATE_NOOP("Actions", "As table"), "T"},
    {ActionId::sumDrainage, Where::trends, "sumDrainage", QT_TRANSLATE_NOOP("Actions", "Drainage added up"), "A"},
    {ActionId::yieldByYear, Where::trends, "yieldByYear", QT_TRANSLATE_NOOP("Actions", "Yield by year"), "Y"},
    {ActionId::tryChange, Where::trends, "tryChange", QT_TRANSLATE_NOOP("Actions", "Try a change"), "C"},
    {ActionId::compareOnTrends, Where::trends, "compareOnTrendsKey", QT_TRANSLATE_NOOP("Actions", "Compare the change with the usual course"), "Ctrl+Return; Ctrl+Enter"},
    {ActionId::zoomIn, Where::trends, "zoomIn", QT_TRANSLATE_NOOP("Actions", "Fewer days"), "+; ="},
    {ActionId::zoomOut, Where::trends, "zoomOut", QT_TRANSLATE_NOOP("Actions", "More days"), "-"},
    {ActionId::zoomWhole, Where::trends, "zoomWhole", QT_TRANSLATE_NOOP("Actions", "All days"), "0"},
    {ActionId::moveEarlier, Where::trends, "moveEarlier", QT_TRANSLATE_NOOP("Actions", "Earlier days"), "Shift+Left"},
    {ActionId::moveLater, Where::trends, "moveLater", QT_TRANSLATE_NOOP("Actions", "Later days"), "Shift+Right"},
    {ActionId::savePng, Where::trends, "savePng", QT_TRANSLATE_NOOP("Actions", "Picture (&PNG)…"), "Shift+P"},
    {ActionId::saveSvg, Where::trends, "saveSvg", QT_TRANSLATE_NOOP("Actions", "Drawing (&SVG)…"), "Shift+S"},
    {ActionId::savePdf, Where::trends, "savePdf", QT_TRANSLATE_NOOP("Actions", "Pages (P&DF)…"), "Shift+D"},
    {ActionId::saveFigures, Where::trends, "saveFigures", QT_TRANSLATE_NOOP("Actions", "Figures (&CSV)…"), "Shift+F"},
    {ActionId::printCharts, Where::trends, "printCharts", QT_TRANSLATE_NOOP("Actions", "P&rint…"), "P"},

    {ActionId::find, Where::journal, "find", QT_TRANSLATE_NOOP("Actions", "Find"), "Ctrl+F"},
    {ActionId::editEntry, Where::journal, "editEntry", QT_TRANSLATE_NOOP("Actions", "Edit…"), "Return; Enter; F2"},
    {ActionId::duplicateEntry, Where::journal, "duplicateEntry", QT_TRANSLATE_NOOP("Actions", "One more like it…"), "Ctrl+J"},
    {ActionId::recordInRow, Where::journal, "recordInRow", QT_TRANSLATE_NOOP("Actions", "Record several…"), "Ins"},
    {ActionId::editTogether, Where::journal, "editTogether", QT_TRANSLATE_NOOP("Actions", "Change together…"), "Shift+F2"},
    {ActionId::photos, Where::journal, "photos", QT_TRANSLATE_NOOP("Actions", "Pictures…"), "F3"},
    {ActionId::chooseColumns, Where::journal, "chooseColumns", QT_TRANSLATE_NOOP("Actions", "Columns…"), "Alt+C"},
    {ActionId::deleteEntry, Where::journal, "deleteEntry", QT_TRANSLATE_NOOP("Actions", "Delete"), "Del"},
    {ActionId::clearFilters, Where::journal, "clearFilters", QT_TRANSLATE_NOOP("Actions", "Show all"), "Esc"},

    {ActionId::findMaterial, Where::materials, "findMaterialKey", QT_TRANSLATE_NOOP("Actions", "Find a material"), "Ctrl+F"},
    {ActionId::newMaterial, Where::materials, "newMaterial", QT_TRANSLATE_NOOP("Actions", "New material…"), "Alt+N"},
    {ActionId::editMaterial, Where::materials, "editMaterial", QT_TRANSLATE_NOOP("Actions", "Edit the own material…"), "F2"},
    {ActionId::favouriteMaterial, Where::materials, "favouriteMaterial", QT_TRANSLATE_NOOP("Actions", "Favourite"), "Alt+F"},
    {ActionId::mixMaterial, Where::materials, "mixMaterial", QT_TRANSLATE_NOOP("Actions", "Put it into the mix"), "Return; Enter"},
    {ActionId::anotherInMix, Where::materials, "anotherInMixKey", QT_TRANSLATE_NOOP("Actions", "Another material in the mix"), "Ins"},
    {ActionId::sumMix, Where::materials, "sumMix", QT_TRANSLATE_NOOP("Actions", "Mix"), "Alt+1"},
    {ActionId::sumBedding, Where::materials, "sumBedding", QT_TRANSLATE_NOOP("Actions", "Bedding"), "Alt+2"},
    {ActionId::sumCastings, Where::materials, "sumCastings", QT_TRANSLATE_NOOP("Actions", "Use of castings"), "Alt+3"},
    {ActionId::sumLeachate, Where::materials, "sumLeachate", QT_TRANSLATE_NOOP("Actions", "Use of leachate"), "Alt+4"},


    {ActionId::findInHandbook, Where::handbook, "findInHandbookKey", QT_TRANSLATE_NOOP("Actions", "Find in the handbook"), "Ctrl+F"},
    {ActionId::handbookBack, Where::handbook, "handbookBack", QT_TRANSLATE_NOOP("Actions", "Back"), "Alt+Left"},
    {ActionId::handbookOn, Where::handbook, "handbookOn", QT_TRANSLATE_NOOP("Actions", "Forward"), "Alt+Right"},
    {ActionId::handbookStart, Where::handbook, "handbookStart", QT_TRANSLATE_NOOP("Actions", "To the first page"), "Alt+Home"},

    {ActionId::planAsTheyCome, Where::rotation, "planAsTheyCome", QT_TRANSLATE_NOOP("Actions", "As they come"), "1"},
    {ActionId::planSpread, Where::rotation, "planSpread", QT_TRANSLATE_NOOP("Actions", "Spread over the year"), "2"},
    {ActionId::planGathered, Where::rotation, "planGathered", QT_TRANSLATE_NOOP("Actions", "Gathered on few days"), "3"},
    {ActionId::harvestDays, Where::rotation, "harvestDaysKey", QT_TRANSLATE_NOOP("Actions", "Days of the week for harvests, Monday first"), "Alt+1; Alt+2; Alt+3; Alt+4; Alt+5; Alt+6; Alt+7"},
    {ActionId::keepHarvest, Where::rotation, "keepHarvestKey", QT_TRANSLATE_NOOP("Actions", "Keep this day"), "K"},
    {ActionId::unpinHarvest, Where::rotation, "unpinHarvest", QT_TRANSLATE_NOOP("Actions", "Let it come on its turn"), "Del"},
    {ActionId::stepsAsTable, Where::rotation, "stepsAsTable", QT_TRANSLATE_NOOP("Actions", "Steps as table"), "T"},
    {ActionId::wishMonthly, Where::rotation, "wishMonthlyKey", QT_TRANSLATE_NOOP("Actions", "A little each month"), "Ctrl+M"},
    {ActionId::raiseWish, Where::rotation, "raiseWishKey", QT_TRANSLATE_NOOP("Actions", "What would raise it?"), "Ctrl+G"},
    {ActionId::compareChange, Where::rotation, "compareChangeKey", QT_TRANSLATE_NOOP("Actions", "Compare the change with the usual course"), "Ctrl+Return; Ctrl+Enter"},

    {ActionId::saveForm, Where::form, "saveForm", QT_TRANSLATE_NOOP("Actions", "Save"), "Ctrl+S; Ctrl+Return; Ctrl+Enter"},
    {ActionId::closeForm, Where::form, "closeForm", QT_TRANSLATE_NOOP("Actions", "Cancel"), "Esc"},
};

bool meet(Where a, Where b)
{
    return a == b || a == Where::window || b == Where::window;
}

}

std::span<const ActionRow> actionTable()
{
    return rows;
}

const ActionRow& actionRow(ActionId id)
{
    return *std::ranges::find(rows, id, &ActionRow::id);
}

QString actionText(ActionId id)
{
    return QCoreApplication::translate(context, actionRow(id).text);
}

QString actionName(ActionId id)
{
    QString text = actionText(id);
    text.remove(u'&');
    if (text.endsWith(u'…')) text.chop(1);
    return text;
}

QList<QKeySequence> actionKeys(ActionId id)
{
    return QKeySequence::listFromString(QString::fromLatin1(actionRow(id).keys), QKeySequence::PortableText);
}

QString keysText(ActionId id)
{
    return actionKeys(id).value(0).toString(QKeySequence::NativeText);
}

QString whereText(Where where)
{
    switch (where) {
    case Where::window: return QCoreApplication::translate("Actions", "Everywhere");
    case Where::due: return QCoreApplication::translate("Actions", "In a line of the due list");
    case Where::shelf: return QCoreApplication::translate("Actions", "On the shelf");
    case Where::trends: return QCoreApplication::translate("Actions", "On the trends page");
    case Where::journal: return QCoreApplication::translate("Actions", "In the journal");
    case Where::rotation: return QCoreApplication::translate("Actions", "On the rotation page");
    case Where::materials: return QCoreApplication::translate("Actions", "On the materials page");
    case Where::handbook: return QCoreApplication::translate("Actions", "In the handbook");
    case Where::form: return QCoreApplication::translate("Actions", "In a form");
    }
    return {};
}

QAction* makeAction(ActionId id, QObject* parent)
{
    keepKeysInPopups();
    const ActionRow& row = actionRow(id);
    auto* action = new QAction{parent};
    action->setObjectName(QString::fromLatin1(row.name));
    action->setShortcuts(actionKeys(id));
    action->setShortcutContext(row.where == Where::window ? Qt::WindowShortcut : Qt::WidgetWithChildrenShortcut);
    tellAction(*action, id);
    return action;
}

void tellAction(QAction& action, ActionId id)
{
    action.setText(actionText(id));
    action.setToolTip(QCoreApplication::translate(context, "%1 (%2)").arg(actionName(id), keysText(id)));
    action.setStatusTip(actionName(id));
}

namespace {

constexpr const char* actOf = "act";
constexpr const char* whichOf = "whichKey";

}

void setAct(QWidget* button, ActionId id, int which)
{
    button->setProperty(actOf, static_cast<int>(id));
    button->setProperty(whichOf, which);
}

QKeySequence keyOf(const QWidget& button)
{
    const QVariant act = button.property(actOf);
    return act.isValid() ? actionKeys(static_cast<ActionId>(act.toInt())).value(button.property(whichOf).toInt()) : QKeySequence{};
}

QString withKeys(const QString& tip, const QWidget* button)
{
    const QString key = keyOf(*button).toString(QKeySequence::NativeText);
    return key.isEmpty() ? tip : QCoreApplication::translate(context, "%1 (%2)").arg(tip, key);
}

std::vector<std::pair<ActionId, ActionId>> keyConflicts(std::span<const ActionRow> table)
{
    std::vector<std::pair<ActionId, ActionId>> conflicts;
    const auto keysOf = [](const ActionRow& row) {
        return QKeySequence::listFromString(QString::fromLatin1(row.keys), QKeySequence::PortableText);
    };
    for (std::size_t i = 0; i < table.size(); ++i) {
        for (std::size_t j = i + 1; j < table.size(); ++j) {
            if (!meet(table[i].where, table[j].where)) continue;
            const auto mine = keysOf(table[i]);
            const auto theirs = keysOf(table[j]);
            if (std::ranges::any_of(mine, [&](const QKeySequence& key) { return theirs.contains(key); })) {
                conflicts.emplace_back(table[i].id, table[j].id);
            }
        }
    }
    return conflicts;
}

}
