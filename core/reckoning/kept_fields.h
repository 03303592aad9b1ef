#pragma once

#include "core/reckoning/archive.h"
#include "core/reckoning/kept.h"
#include "core/reckoning/reckoning.h"

/// Lists of fields of what a reckoning hands over. One for both ways, each names every member of its type, so that a new one does not compile before it
/// stands here.
namespace tierloam::reckoning::archive {

template <class Archive>
void pass(Archive& archive, Band& of)
{
    auto& [p05, p50, p95] = of;
    each(archive, p05, p50, p95);
}

template <class Archive>
void pass(Archive& archive, Amount& of)
{
    auto& [value, unit] = of;
    each(archive, value, unit);
}

template <class Archive>
void pass(Archive& archive, Dates& of)
{
    auto& [p10, p50, p90] = of;
    each(archive, p10, p50, p90);
}

template <class Archive>
void pass(Archive& archive, Strata& of)
{
    auto& [castings, softened, food, bedding] = of;
    each(archive, castings, softened, food, bedding);
}

template <class Archive>
void pass(Archive& archive, TrayEstimate& of)
{
    auto& [slot, tray, batch, age, state, input, castings, unprocessed, slow, depth, ratio, ready, nearly, carbonToNitrogen, moisture, water, worms, cocoons,
           weight, wormsPerArea, air, height, strata, readyOn] = of;
    each(archive, slot, tray, batch, age, state, input, castings, unprocessed, slow, depth, ratio, ready, nearly, carbonToNitrogen, moisture, water, worms,
         cocoons, weight, wormsPerArea, air, height, strata, readyOn);
}

template <class Archive>
void pass(Archive& archive, Foresight& of)
{
    auto& [both, airLow, sumpFull, trayFull, bed7, bed14, drained, room, ownWarmth, carbon, nitrogen, turn, turnSince, turnLikely, colonyKept, topWater7, looks] = of;
    each(archive, both, airLow, sumpFull, trayFull, bed7, bed14, drained, room, ownWarmth, carbon, nitrogen, turn, turnSince, turnLikely, colonyKept, topWater7, looks);
}

template <class Archive>
void pass(Archive& archive, LookForesight& of)
{
    auto& [ready, turn, nextLooks, turnLook, bitsRule] = of;
    each(archive, ready, turn, nextLooks, turnLook, bitsRule);
}

template <class Archive>
void pass(Archive& archive, StackEstimate& of)
{
    auto& [day, colony, worms, adults, processing, ration, temperature, sump, strength, drained, slots, ahead] = of;
    each(archive, day, colony, worms, adults, processing, ration, temperature, sump, strength, drained, slots, ahead);
}

template <class Archive>
void pass(Archive& archive, Forecast& of)
{
    auto& [days, turn, sumpFull, trayFull, drained, both, turnLikely, colonyLater, feedLow, feedUsual, feedHigh, feedGiven, feedNow, airLow, ownWarmth, carbon, nitrogen, room, bulk, cover] = of;
    each(archive, days, turn, sumpFull, trayFull, drained, both, turnLikely, colonyLater, feedLow, feedUsual, feedHigh, feedGiven, feedNow, airLow, ownWarmth, carbon, nitrogen, room, bulk, cover);
}

template <class Archive>
void pass(Archive& archive, Record& of)
{
    auto& [entry, feed, drain, water, look, gap, usualFeed, drying, shut, sump, spare, height, area, flush, added, dryingSince, awayFrom, awayUntil, nextFrom, nextUntil, laterAway, squeezed,
           squeeze, bedRead, bedReadC, bedReadUnder, waterPerWeek, sumpLook, moistureLook, moistureRead, moistureReadPct, stocked, wormLook, usual, usualKg, fedLastWeek] = of;
    each(archive, entry, feed, drain, water, look, gap, usualFeed, drying, shut, sump, spare, height, area, flush, added, dryingSince, awayFrom, awayUntil,
         nextFrom, nextUntil, laterAway, squeezed, squeeze, bedRead, bedReadC, bedReadUnder, waterPerWeek, sumpLook, moistureLook, moistureRead, moistureReadPct, stocked, wormLook, usual, usualKg, fedLastWeek);
}

template <class Archive>
void pass(Archive& archive, DrainCheck& of)
{
    auto& [day, litres, expected] = of;
    each(archive, day, litres, expected);
}

template <class Archive>
void pass(Archive& archive, HarvestCheck& of)
{
    auto& [day, batch, taken, expected, lifted, ready] = of;
    each(archive, day, batch, taken, expected, lifted, ready);
}

template <class Archive>
void pass(Archive& archive, TurnNote& of)
{
    auto& [what, batch, from, to, done] = of;
    each(archive, what, batch, from, to, done);
}

template <class Archive>
void pass(Archive& archive, Oversized& of)
{
    auto& [what, entry, day, slot, comesTo, most, adds] = of;
    each(archive, what, entry, day, slot, comesTo, most, adds);
}

template <class Archive>
void pass(Archive& archive, Disagreement& of)
{
    auto& [entry, day, kind, slot, value, expected, settledOn, batch] = of;
    each(archive, entry, day, kind, slot, value, expected, settledOn, batch);
}

template <class Archive>
void pass(Archive& archive, UnwrittenGuess& of)
{
    auto& [from, to, feedings, probability, kg, material, days] = of;
    each(archive, from, to, feedings, probability, kg, material, days);
}

template <class Archive>
void pass(Archive& archive, LookChoice& of)
{
    auto& [kind, slot, minutes, cut] = of;
    each(archive, kind, slot, minutes, cut);
}

template <class Archive>
void pass(Archive& archive, BitsRule& of)
{
    auto& [fewer, otherwise] = of;
    each(archive, fewer, otherwise);
}

template <class Archive>
void pass(Archive& archive, StackReckoning& of)
{
    auto& [name, digest, firstBedding, asOf, now, history, forecast, record, turnProbability, turnSince, readySince, oversized, disagreements, settled, unwritten, drains,
           harvests, turns, nextLooks, turnLook, bitsRule, effectiveSize, retired, present, snapshots] = of;
    each(archive, name, digest, firstBedding, asOf, now, history, forecast, record, turnProbability, turnSince, readySince, oversized, disagreements, settled, unwritten,
         drains, harvests, turns, nextLooks, turnLook, bitsRule, effectiveSize, retired);
    static_cast<void>(present); // the members stay out
    static_cast<void>(snapshots);
}

template <class Archive>
void pass(Archive& archive, Reckoning& of)
{
    auto& [asOf, digest, members, stacks] = of;
    each(archive, asOf, digest, members, stacks);
}

template <class Archive>
void pass(Archive& archive, KeptFor& of)
{
    auto& [program, southern] = of;
    each(archive, program, southern);
}

}
