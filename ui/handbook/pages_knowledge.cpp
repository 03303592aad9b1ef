#include "ui/handbook/handbook_text.h"

#include <QtGlobal>

/// What the program knows and how well: the model, words, cautions, sources.
namespace tierloam::handbook {

namespace {

using enum BlockKind;

constexpr Block inside[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Behind the pages runs a model of the colony and its trays: food softens, worms eat what has softened, grow, lay and die, castings stay, water seeps down, the bed warms and breathes. It runs not once but {members} times, each with other parameters from the ranges below. What you write down weighs these members: those that agree with your journal count for more.")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "So every figure has a range. It holds {band-share} of what is still possible. A wide range is no fault of the page: it says that nobody can know it better from what was written down, and a look would narrow it.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "How far to trust it")},
    {point, QT_TRANSLATE_NOOP("Handbook", "The order of things, and which tray is ahead: well.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Dates months ahead: as a season, not as a day. Softening is known to a factor of two.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Numbers of worms: within a factor, unless you weigh some.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "What it does not know: rot without air in a corner, mites, birds, a lid left open. Write such things down as events.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A household's habits drift; parameters go back to their ranges with a time constant of {drift-days}, so that old years do not rule the new.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "The temperature of the bed: from the set-up, whose usual temperature is the mean of the year, and the season of the place ([[seasons|Seasons]]); readings move it for some weeks.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Track record")},
    {list, "track-record"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Parameters, their ranges and what they rest on")},
    {list, "parameters"},
};

constexpr Block glossary[] = {
    {term, QT_TRANSLATE_NOOP("Handbook", "Batch: one life of a tray, from its bedding to its harvest.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Bed: all that lies in the trays.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Bedding: what a tray is begun with, paper, cardboard, coir, leaves.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Castings: what the worms leave behind; what you harvest.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "C:N: parts of carbon to one of nitrogen, by mass.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Cocoon: the egg case of a worm; lemon-shaped, small as a pinhead.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Colony: all worms of a stack.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Conductivity: how well water carries a current; it rises with salts, in mS/cm.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Cover: paper laid on each feeding.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Dry matter: what is left when all water is gone.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Feed-to-cast ratio: what could still be eaten in a tray, to its castings, both dry.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Field capacity: the water that stays when the rest has drained off.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Input-to-cast yield: dry matter put into a batch, to castings that came of it.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Leachate: what has run through the trays into the sump.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Light-drying: a tray raised to the top, lid off, so that its worms go down.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Member: one of the many runs of the model that the estimates are made of.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Ration: what the colony takes up, to what it needs to keep itself; above one it grows.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Reckoning: what the model and your journal make of each other.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Slot: a place in a stack; slot one is the bottom.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Spigot: the tap of the drainage tray.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Stack: trays over a drainage tray under a lid.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Sump: the drainage tray and what stands in it.")},
    {term, QT_TRANSLATE_NOOP("Handbook", "Turn: the moment when the top tray is filled, so that a tray is to be added or the bottom one harvested.")},
};

constexpr Block cautions[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "The cautions that stand at the work itself, all in one place. They are the usual ones; local codes, your doctor and licensed trades come first. This program gives no medical advice.")},
    {list, "cautions"},
};

constexpr Block sources[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Every number of the handbook and of the sums on the Materials page is a row here. Published means that it was read in that source or in its abstract; memory means that it was not looked up; common practice has no source, it is what people do; ours is a judgement or a rule of this program.")},
    {list, "figures"},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Materials name the source of each row on their own page; parameters of the model stand under [[inside|what is inside the model]].")},
};

constexpr Page pages[] = {
    {"inside", QT_TRANSLATE_NOOP("Handbook", "What is inside the model"), QT_TRANSLATE_NOOP("Handbook", "estimate uncertainty range trust parameters ensemble filter how"), inside},
    {"words", QT_TRANSLATE_NOOP("Handbook", "Words"), QT_TRANSLATE_NOOP("Handbook", "glossary terms meaning"), glossary},
    {"cautions", QT_TRANSLATE_NOOP("Handbook", "Cautions"), QT_TRANSLATE_NOOP("Handbook", "safety health lifting electricity children pregnancy asthma"), cautions},
    {"sources", QT_TRANSLATE_NOOP("Handbook", "Figures and sources"), QT_TRANSLATE_NOOP("Handbook", "literature reference numbers memory"), sources},
};

}

std::span<const Page> knowledgePages() { return pages; }

}
