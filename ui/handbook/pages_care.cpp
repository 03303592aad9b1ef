#include "ui/handbook/handbook_text.h"

#include <QtGlobal>

/// The daily things: what a stack is, how it begins, food, bedding, water.
namespace tierloam::handbook {

namespace {

using enum BlockKind;

constexpr Block first[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A stack is a pile of trays with holes in their floors, over a drainage tray, under a lid. Worms live in all of it. You feed the highest tray; what they have eaten stays behind as castings; when the top tray holds mostly castings, the next tray goes on top, and when there is no tray left, the bottom one is emptied.")},
    {diagram, "three"},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Everything else follows from one rule: nobody can see inside a tray. What is known is what went in, what ran out and a look now and then. Write these down, and the program says how far each tray is, and how sure it is.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Where to go from here")},
    {point, QT_TRANSLATE_NOOP("Handbook", "You have no stack yet: [[start|starting a stack]].")},
    {point, QT_TRANSLATE_NOOP("Handbook", "You have one, and wonder what to do: [[feeding|feeding]], [[bedding|bedding]], [[water|water and drainage]].")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A tray looks full: [[add-tray|when to add a tray]], [[harvest|rotation and harvest]], [[use|using castings and leachate]].")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Something smells, flies or dies: [[symptoms|what may be wrong]], put in order by what is known of your stack.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "You want to know how the estimates are made: [[inside|what is inside the model]].")},
};

constexpr Block start[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A first tray, some bedding and a few handfuls of worms are enough. Begin with one tray alone; the others wait.")},
    {diagram, "first"},
    {step, QT_TRANSLATE_NOOP("Handbook", "Choose a place that stays at {comfortable} all year, out of the sun, where the spigot can be reached and a full tray can be lifted.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Stand the drainage tray level, with one tray on it. Leave the spigot open over a jar, or shut it and look at it each week.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lay bedding {bedding-depth} deep, wetted like a wrung-out sponge. [[bedding|How much that is]].")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put in {stock} of composting worms. They go down by themselves when it is light.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Feed a little after a day or two, under paper. Close the lid.")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A stack that has long been at work: write down its worms and the bedding of each tray, then look into each tray on the first day and note how deep the castings lie and how many bits there are. What lies there is then taken as it was found.")},
    {why, QT_TRANSLATE_NOOP("Handbook", "A small stock is no mistake. Everything takes longer: the first tray stays alone for {first-tray-alone}, and with few worms nearer to the end of that.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "The first weeks")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Some worms climb the walls in the first nights. Leave a light on and the lid closed; they settle.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Nothing much seems to happen. Food has to soften before worms can eat it, and it softens faster the more worms there are.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Bits of bedding stay visible for months. That is how it should be.")},
    {caution, "hands"},
    {caution, "dust"},
    {caution, "rules"},
};

constexpr Block feeding[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Feed every {feed-every} or so, in the highest tray, no more than is nearly gone by the next time. Cover each feeding with paper.")},
    {diagram, "fed"},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Composting worms eat about {feed-share} of their own mass of fresh food a day when they have time to get at it. A new stack eats less: the colony is small, and what it eats has to soften first. The program reckons from your journal what each stack can take this week.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "How to feed")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lift the paper and look. If most of the last feeding still lies there, wait.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Put the food in one place, in a flat layer, and change the side from time to time.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Cover it with a sheet or a handful of shredded paper. It keeps flies out, takes up wet and gives carbon.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Write it down: one click on Feed takes the usual amount, for today.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "What to feed")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Vegetable and fruit scraps, coffee grounds, tea leaves, crushed eggshell. Cut or frozen and thawed scraps soften faster. The whole list, each with its reason, is on the Materials page.")},
    {caution, "manure"},
    {list, "materials-out"},
    {why, QT_TRANSLATE_NOOP("Handbook", "Too much food harms in three ways: it takes the air while it rots, it heats, and it sinks together and holds water. A stack that was fed too little loses nothing but time.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A bed gone sour (a sharp smell, pH below {sour-below}): stop feeding, loosen it, and strew {lime} of calcium carbonate or crushed eggshell over a square metre, once.")},
    {caution, "remedy"},
    {caution, "kept-out"},
};

constexpr Block bedding[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Bedding is the house of the worms and half of their food: shredded cardboard or paper, leaves, coir, shavings. A new tray takes a layer of {bedding-depth}.")},
    {diagram, "bedded"},
    {step, QT_TRANSLATE_NOOP("Handbook", "Shred it to finger width; whole sheets lie like a roof and let nothing through.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Wet it until a handful, pressed hard, gives a few drops. Paper takes about {paper-water} of water by weight.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Lay it loosely. It settles to half its height in a week.")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "The Materials page reckons from floor and depth how much dry bedding and how many litres of water that is, for a tray of your stack.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Which one")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Cardboard and paper soften within months and turn into castings.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Leaves, straw: much the same, and they bring life of their own.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Coir and shavings hold air and water, and most of them stay: use them as they are or sift them out.")},
    {why, QT_TRANSLATE_NOOP("Handbook", "Bedding is carbon. Scraps alone hold too little of it: a mix of {cn-range} carbon to nitrogen keeps, with more nitrogen it smells, with more carbon it stands still. Averaging ratios by parts is wrong; the mix on the Materials page reckons it by mass.")},
    {caution, "dust"},
};

constexpr Block water[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A good bed is wet and drips not: moisture of {moisture-range}, best {moisture-best}. Scraps are mostly water and often enough; coir and cardboard in a warm room need some.")},
    {caution, "leachate"},
    {diagram, "water"},
    {heading, QT_TRANSLATE_NOOP("Handbook", "How wet is it")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Press a handful hard. Nothing comes: too dry. A few drops: right. A stream: too wet.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Dry, pale paper under the cover: too dry. Worms in the lid, a sour smell, a shining surface: too wet.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Watering")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Pour slowly and all over. What is poured beyond what the trays hold runs into the sump within the hour, and the sump then says nothing about the bed.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Better little and often than a flood.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Drainage")},
    {step, QT_TRANSLATE_NOOP("Handbook", "With the spigot shut, drain every {drain-every}, and before the sump is at {full-sump}. With it open, empty the jar.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Write down how much. What ran out is one of the few things that can be measured without digging.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Some worms swim in the sump, about {worms-in-sump} of them. That is normal: put them back into the top tray.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "If it smells or hardly runs, flush: spigot shut, water through, everything drained at once.")},
    {why, QT_TRANSLATE_NOOP("Handbook", "What runs out is leachate, no brewed tea. What it can be used for, and how far to dilute it, stands under [[use|using castings and leachate]].")},
};

constexpr Page pages[] = {
    {"first", QT_TRANSLATE_NOOP("Handbook", "The stack in one page"), QT_TRANSLATE_NOOP("Handbook", "overview basics worms trays begin"), first},
    {"start", QT_TRANSLATE_NOOP("Handbook", "Starting a stack"), QT_TRANSLATE_NOOP("Handbook", "new first tray stock worms place"), start},
    {"feeding", QT_TRANSLATE_NOOP("Handbook", "Feeding"), QT_TRANSLATE_NOOP("Handbook", "food scraps amount how much cover overfed hungry"), feeding},
    {"bedding", QT_TRANSLATE_NOOP("Handbook", "Bedding"), QT_TRANSLATE_NOOP("Handbook", "paper cardboard coir shavings leaves carbon C:N"), bedding},
    {"water", QT_TRANSLATE_NOOP("Handbook", "Water and drainage"), QT_TRANSLATE_NOOP("Handbook", "moisture wet dry sump spigot drain flush squeeze"), water},
};

}

std::span<const Page> carePages() { return pages; }

}
