#include "ui/handbook/handbook_text.h"

#include <QtGlobal>

/// The turns of the trays: adding one, emptying one, and what the castings and the leachate are good for.
namespace tierloam::handbook {

namespace {

using enum BlockKind;

constexpr Block addTray[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "The next tray goes on when the present one holds at least {castings-before-tray} of castings and most of its food is worked. Not earlier: worms follow food, and a colony spread thin over two trays finishes neither.")},
    {diagram, "two"},
    {step, QT_TRANSLATE_NOOP("Handbook", "Look at the top tray: is there a finger's breadth of castings under the food?")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Level the surface, so that it touches the holes of the new tray.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lay bedding in the new tray, wet, and set it on top.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Feed only there from now on. What is below goes on by itself.")},
    {why, QT_TRANSLATE_NOOP("Handbook", "The usual pace: the first tray alone for {first-tray-alone}, the second alone on top for at least {second-tray-alone}. The program says a tray is filled at {filled-castings} of castings and {filled-ratio} of unprocessed matter to castings or less.")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A tray whose contents come within {under-rim} of the rim is full, whatever else holds: there must be air under the next floor.")},
};

constexpr Block harvest[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "When the top tray is filled and no tray is spare, the bottom one has its turn. It is raised to the top, its worms go down out of the light, and what they leave is yours.")},
    {caution, "lifting"},
    {diagram, "three"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Is it ready?")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A tray is ready when its feed-to-cast ratio (what could still be eaten, to castings, both dry) is {ready} or below and it holds {ready-castings} or more of castings; nearly at {nearly}. The program gives the chance that it is so, tells you at {alert-raised}, and takes that back at {alert-withdrawn}.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Worms left in the bottom tray are normal and never a reason to wait: they go down in the light.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "The usual first harvest comes after {first-harvest}, later ones {later-harvests} apart. After {overdue-after} of waiting a harvest is overdue: spent bedding and crowding shrink a colony.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "The sequence")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "For one of your stacks, with the weight of its trays and a card for each day: [[harvest-now|harvest, step by step]].")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lid off. Set the upper trays aside, in their order, on a sheet.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lift the bottom tray out, close to the body, and set it down.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put the upper trays back, each one slot lower.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put the lifted tray on top. Loosen the castings with your fingers, in ridges. Leave the lid off, under a lamp or in a bright place, not in the sun.")},
    {diagram, "drying"},
    {step, QT_TRANSLATE_NOOP("Handbook", "For {light-drying}: loosen once a day. Feed only the tray below. Too wet to crumble? Loosen again and give it a day more.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "When about {left-after-drying} of its worms are left, take the castings, weigh or measure them, and write that down.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lay new bedding in the empty tray; it goes on top again, or waits in storage.")},
    {diagram, "after"},
    {caution, "dust"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "What to expect")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "One part of castings, dry, comes of {yield} parts of dry food and bedding; the rest was breathed. Much less: the tray was not finished, or much of the food was water. Much more: bedding that stays is in it.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Cocoons and worms that leave with it")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Some always do; no method takes all of them out, and castings without any worm cannot be promised. A grown worm lays about {cocoons-weekly} cocoons a week; a cocoon takes about {cocoon-hatch} in the warmth and gives {young} young.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A second light-drying after {second-drying} brings out what has hatched meanwhile.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A bait tray: lay melon or pumpkin under damp paper on the stored castings for {bait-days}, and carry it back with all that sits in it.")},
};

constexpr Block harvestNow[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Choose the stack: the page follows its harvest from the weight of the trays before they are lifted to what became of the castings. Why each step is done stands under [[harvest|rotation and harvest]].")},
    {caution, "lifting"},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lid off. Set the upper trays aside, in their order.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lift the bottom tray out and set it down.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put the upper trays back, each one slot lower.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put the lifted tray on top, loosen its castings in ridges, leave the lid off.")},
    {caution, "dust"},
};

constexpr Block use[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Castings are no soil. A litre of them weighs {bed-litre} while moist. They pack, hold salts and are rich; a little of them goes a long way. The Materials page reckons the amounts for a batch.")},
    {caution, "leachate"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Potting mix")},
    {point, QT_TRANSLATE_NOOP("Handbook", "By volume, {potting-share} of a mix has been tested and helped; more than {potting-most} is not advised, and never castings alone.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Top-dressing")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A layer of {top-dressing} around the plant, scratched in and watered; again after {top-dressing-again}.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Sifting")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Through a mesh of {sieve}, when dry enough to crumble. What stays on it (shell, stones, wood, cocoons) goes into the next bedding.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Storage")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Vented, cool, in the shade, near {storage-moisture} moisture, for {storage-months}. Shut tightly they go sour; bone dry they are dust.")},
    {caution, "dust"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Leachate")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "What ran out at the spigot is salty water that met everything in the trays. It is no brewed tea, and nobody knows what it holds unless it is measured. Published strengths are around {leachate-strength}; for worms {leachate-harmless} is harmless and about {leachate-harmful} harmful. One mS/cm stands for about {salt-per-conductivity} of salts.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Dilute it to {target-seedlings} for young plants, {target-grown} for grown ones. Tap water itself has about {tap-water}. The Materials page says how many parts of water that takes, for the strong end of what the leachate may be.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Use it within {leachate-keeps}, on soil, or pour it back over the top tray when the bed is dry.")},
};

constexpr Page pages[] = {
    {"add-tray", QT_TRANSLATE_NOOP("Handbook", "When to add a tray"), QT_TRANSLATE_NOOP("Handbook", "second third next turn too early full rim"), addTray},
    {"harvest", QT_TRANSLATE_NOOP("Handbook", "Rotation and harvest"), QT_TRANSLATE_NOOP("Handbook", "lift light-drying castings ready cocoons loosen yield bottom tray"), harvest},
    {"harvest-now", QT_TRANSLATE_NOOP("Handbook", "Harvest, step by step"), QT_TRANSLATE_NOOP("Handbook", "guided weight drying day yield take castings now"), harvestNow},
    {"use", QT_TRANSLATE_NOOP("Handbook", "Using castings and leachate"), QT_TRANSLATE_NOOP("Handbook", "potting soil top-dressing storage dilution strength sieve garden plants"), use},
};

}

std::span<const Page> turnPages() { return pages; }

}
