#include "ui/handbook/handbook_text.h"

#include <QtGlobal>

/// The year and the neighbours: seasons, going away, moving and splitting, giving worms away; and what may be wrong.
namespace tierloam::handbook {

namespace {

using enum BlockKind;

constexpr Block seasons[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Worms grow fastest near {growth-best}. A bed of {comfortable} is warm enough, and leaves room for the heat of a feeding. They hardly grow below {coldest}, and not at all at {hottest}.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "The usual temperature of the set-up")},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "It is the mean of the whole year, not what a thermometer shows today: the program makes winter and summer of it, little indoors, more in a garage, most outdoors. What it proposes is a bed of {year-indoors} through the year indoors, {year-garage} in a garage, shed or porch, {year-outdoors} outdoors.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Hold a thermometer in the bed and type into the set-up what it shows now: the mean follows from it, by place and season. Beneath stands what the coldest and the warmest month will be.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "When readings of the bed stay off to one side, correct the set-up; a reading alone moves the estimate for some weeks only.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Heat")},
    {point, QT_TRANSLATE_NOOP("Handbook", "From {heat-death} in the bed worms begin to die. Carry the stack to a cooler room first; then shade, an open lid under a cloth, less food.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A bed heats by itself when much is fed at once. Stop feeding, spread the food flat, loosen the tray.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "A frozen bottle of water, wrapped, on the top bedding buys a day.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Cold")},
    {point, QT_TRANSLATE_NOOP("Handbook", "Near {frost-death} worms die. Bring the stack in, or wrap sides and lid and stand it off the ground; feed little, since what is not eaten rots when it warms.")},
    {point, QT_TRANSLATE_NOOP("Handbook", "In a cold room everything takes longer; the dates of the program know that when you write down the bed's temperature now and then.")},
    {caution, "heater"},
};

constexpr Block away[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A stack can be left alone for {away} without any care, longer in the cold. Bedding is food as well.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "A few days before: feed the usual, not more. A heap of food rots; it does not keep.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "On the last day: water to a wrung-out sponge, cover with a thick layer of wet paper, close the lid.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Empty the sump and leave the spigot open over a large jar.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Write it down as an event, away, with the day of your return: the estimates then expect no feeding.")},
    {why, QT_TRANSLATE_NOOP("Handbook", "The rotation plan can be asked what two weeks away would change.")},
};

constexpr Block moving[] = {
    {heading, QT_TRANSLATE_NOOP("Handbook", "Moving a stack")},
    {caution, "lifting"},
    {step, QT_TRANSLATE_NOOP("Handbook", "Empty the sump, shut the spigot.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Carry tray by tray, the heaviest last and shortest, and stack them again in the same order.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Write a change of place into the stack's set-up, with the temperature that a thermometer shows in the bed there.")},
    {heading, QT_TRANSLATE_NOOP("Handbook", "Splitting")},
    {diagram, "split"},
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "A colony that is crowded, beyond about {best-density} of floor, or a household with more scraps than a stack can take, is ready to be split.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Set up the new stack with one bedded tray.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Take worms with a part of their bed out of the old stack, at most {give-at-most} of the colony, so that the old one keeps its pace.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Record it as moved worms: both stacks know it then.")},
};

constexpr Block giving[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Worms double in {doubling} under good care, so there is something to give. Give worms with a handful of their own bedding; they settle better.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Weigh them, or count some and weigh those; take at most {give-at-most} of the colony, from the top tray, where most of them are.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "{stock} makes a start for a first tray.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Pack them in damp bedding in a vented box, cool, for a day at most.")},
    {step, QT_TRANSLATE_NOOP("Handbook", "Record the worms as taken away: the estimate of your colony follows.")},
    {caution, "giving"},
    {caution, "rules"},
};

constexpr Block symptoms[] = {
    {paragraph, QT_TRANSLATE_NOOP("Handbook", "Choose the stack and what you notice. Each cause has its chance, from what the estimates say of this stack, its evidence in numbers, the look that would tell it from the others, and what to do.")},
    {list, "symptoms"},
    {why, QT_TRANSLATE_NOOP("Handbook", "The order is computed. Each member of the ensemble is one possible stack that agrees with your journal; a cause is likely when many of them are in the state that brings such a symptom about. Something else keeps its share, and where the record shows none of the causes, that is what is said. A look written down changes the order.")},
    {caution, "remedy"},
    {caution, "doctor"},
};

constexpr Page pages[] = {
    {"symptoms", QT_TRANSLATE_NOOP("Handbook", "What may be wrong"), QT_TRANSLATE_NOOP("Handbook", "smell flies mites ants escape dying mould sour heat standing water help problem"), symptoms},
    {"seasons", QT_TRANSLATE_NOOP("Handbook", "Seasons"), QT_TRANSLATE_NOOP("Handbook", "summer winter heat cold frost temperature"), seasons},
    {"away", QT_TRANSLATE_NOOP("Handbook", "Going away"), QT_TRANSLATE_NOOP("Handbook", "holiday travel weeks absence"), away},
    {"moving", QT_TRANSLATE_NOOP("Handbook", "Moving and splitting"), QT_TRANSLATE_NOOP("Handbook", "carry transport divide new stack crowded"), moving},
    {"giving", QT_TRANSLATE_NOOP("Handbook", "Giving worms"), QT_TRANSLATE_NOOP("Handbook", "share neighbours school release"), giving},
};

}

std::span<const Page> yearPages() { return pages; }

}
