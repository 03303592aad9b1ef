#pragma once

#include <QKeySequence>
#include <QList>
#include <QString>

#include <span>
#include <utility>
#include <vector>

class QAction;
class QObject;
class QWidget;

/// Every action of the program in one table: what it is called, its keys and where they work. The shortcuts page is made from it.
namespace tierloam::ui {

/// Where the keys of an action work. Those of the window work on every page; those of a page only while it is shown, those of the due list
/// while one of its lines has the focus.
enum class Where { window, due, shelf, trends, journal, materials, handbook, rotation, form };

enum class ActionId {
    // window
    newHousehold, openHousehold, renameHousehold, importJournal, importReadings, exportJournal, exportCalendar, stackSheet, trayLabels, saveCopy, backups, backupFolder, seasonsNorth, seasonsSouth, openDemo, closeWindow, quit,
    undo, redo, deletedEntries, newStack, recordOther, whatIsWrong, guidedHarvest,
    pageShelf, pageTrends, pageJournal, pageMaterials, pageHandbook, pageRotation, goDue, doDue, notifyDue,
    themeLight, themeDark, themeSystem, measuresSystem, measuresMetric, measuresUs, languageSystem, languageEnglish, languageGerman, languageSpanish, languageFrench, fontLarger, fontSmaller, fontNormal, lessMotion, fullScreen, shortcuts, copyReport, about,
    // due list: the line that has the focus
    dueAct, dueOther, dueAnswer, dueDone, dueWhy, dueLater, dueAgain,
    // shelf: the chosen stack
    feed, feedBorne, feedOther, cover, coverOther, water, waterOther, drain, drainOther, flush, rotate, harvest, addTray, rebed, loosen,
    check, weighWorms, countWorms, weighTray, reading, stockWorms, removeWorms, moveWorms, routine, event, note, changeStack, retire,
    moreActs, moveStackLeft, moveStackRight, dayBack, dayForward, weekBack, weekForward, backToToday,
    // trends
    range30, range90, rangeYear, range2Years, rangeAll, chartsTogether, showTable, sumDrainage, yieldByYear, tryChange, compareOnTrends,
    zoomIn, zoomOut, zoomWhole, moveEarlier, moveLater, savePng, saveSvg, savePdf, saveFigures, printCharts,
    // journal
    find, editEntry, duplicateEntry, recordInRow, editTogether, photos, chooseColumns, deleteEntry, clearFilters,
    // materials
    findMaterial, newMaterial, editMaterial, favouriteMaterial, mixMaterial, anotherInMix, sumMix, sumBedding, sumCastings, sumLeachate,
    // handbook
    findInHandbook, handbookBack, handbookOn, handbookStart,
    // rotation
    planAsTheyCome, planSpread, planGathered, harvestDays, keepHarvest, unpinHarvest, stepsAsTable, wishMonthly, raiseWish, compareChange,
    // forms
    saveForm, closeForm
};

struct ActionRow {
    ActionId id;
    Where where;
    const char* name;   ///< object name, stable, for tests
    const char* text;   ///< untranslated, with its mnemonic; an ellipsis means that something is asked first
    const char* keys;   ///< portable text, "; " between alternatives
};

std::span<const ActionRow> actionTable();
const ActionRow& actionRow(ActionId id);

/// Translated, with its mnemonic.
QString actionText(ActionId id);
/// Translated, without mnemonic and ellipsis: the accessible name.
QString actionName(ActionId id);
QList<QKeySequence> actionKeys(ActionId id);
/// "Ctrl+Z" as the platform writes it; the first of its keys.
QString keysText(ActionId id);
QString whereText(Where where);

/// An action with text, keys, object name and tool tip from the table. Keys of the window work in the whole window, those of a page
/// in the widget that the action is added to and its children.
QAction* makeAction(ActionId id, QObject* parent);
/// Its text, tool tip and status tip in the present language, again after that has changed.
void tellAction(QAction& action, ActionId id);

/// Tells that a button does what that action does, so that its keys can be told beside it.
void setAct(QWidget* button, ActionId id, int which = 0);
/// The key of the button's action, the one of that number where the action has one for each of several; empty when it has none.
QKeySequence keyOf(const QWidget& button);
/// A tool tip with the key of the button's action at its end.
QString withKeys(const QString& tip, const QWidget* button);

/// Pairs whose keys would both answer in one place; empty in a sound table. `table` lets tests plant a conflict.
std::vector<std::pair<ActionId, ActionId>> keyConflicts(std::span<const ActionRow> table);

}
