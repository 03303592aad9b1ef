#pragma once

#include <optional>
#include <span>
#include <string_view>

/// What is known of the work and how well: the one table of figures that the handbook and its sums take their numbers from. No page
/// writes a number of its own; a text names the figure by its key, and the page sets value and unit as the locale has them.
namespace tierloam::guide {

enum class Figure {
    stock, beddingDepth, feedEvery, feedShare, firstTrayAlone, castingsBeforeTray, secondTrayAlone, firstHarvest, laterHarvests, paperWater, wetted,
    moistureRange, moistureBest, carbonRange, carbonAim, comfortable, coldest, growthBest, hottest, heatDeath, frostDeath, yearIndoors, yearGarage, yearOutdoors, bedLitre, bestDensity,
    ready, readyCastings, nearly, filledCastings, filledRatio, underRim, overdueAfter, alertRaised, alertWithdrawn,
    lightDrying, leftAfterDrying, wormsInSump, drainEvery, fullSump, awayWeeks, giveAtMost, doubling,
    yieldRatio, cocoonsWeekly, cocoonHatch, youngPerCocoon, secondDrying, baitDays,
    pottingShare, pottingMost, topDressing, topDressingTwice, sieve, storageMoisture, storageMonths, castingsDryBulk, takenMoisture,
    leachateStrength, leachateHarmless, leachateHarmful, saltPerConductivity, targetSeedlings, targetGrown, tapWater, leachateKeeps,
    loadConstant, reachReference, reachFarthest, heightReference, heightLoss, heightMost, travelReference, travelBase, travelShare, travelMost, twistLoss, twistMost,
    gripFair, gripPoor, reachBody, lightTray,
    sourBelow, limeGrams, flyDays, membersUsual, bandShare, driftDays,
    softensAt, softensWith, moistureNear, mostTimes,
    count
};

/// How a value is shown: its dimension, in the unit that is named.
enum class FigureUnit { none, kilogram, gram, litre, centimetre, millimetre, days, months, percent, share, celsius, milliSiemens, kilogramPerSquareMetre, kilogramPerCubicMetre, gramPerLitre, degrees, ratio };

/// On what a figure rests.
enum class Basis {
    published,      ///< read in the source that is named, or in its abstract
    secondHand,     ///< read in another's account of it
    memory,         ///< known from memory alone
    commonPractice, ///< the trade says so; no source
    judgement,      ///< ours, or a rule of this program
};

struct FigureRow {
    Figure figure{};
    std::string_view key;          ///< as texts write it: {stock}
    double low = 0;
    std::optional<double> high;    ///< of a range
    FigureUnit unit{};
    Basis basis{};
    std::string_view source;       ///< not translated; of common practice and judgement it says what kind
};

/// All rows, in the order of the enumeration.
std::span<const FigureRow> figureTable();
const FigureRow& figureRow(Figure figure);
/// The row whose key that is; nullptr when there is none.
const FigureRow* figureWithKey(std::string_view key);
/// The single value, or the lower end of a range.
inline double lowOf(Figure figure) { return figureRow(figure).low; }
/// The upper end of a range; the single value where there is none.
inline double highOf(Figure figure) { return figureRow(figure).high.value_or(figureRow(figure).low); }

}
