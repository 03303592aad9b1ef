#include "core/guide/figures.h"

#include <algorithm>
#include <array>

namespace tierloam::guide {

namespace {

using enum FigureUnit;
using B = Basis;
using F = Figure;

constexpr std::string_view practice = "common practice, no source";
constexpr std::string_view rule = "a rule of this program";
constexpr std::string_view ours = "our judgement";
constexpr std::string_view lifting = "Waters et al. 1993, Ergonomics 36:749 (revised NIOSH lifting equation)";
constexpr std::string_view liftingMemory = "Waters et al. 1993 (revised NIOSH lifting equation), memory";
constexpr auto none_ = std::nullopt;

constexpr std::array<FigureRow, static_cast<std::size_t>(F::count)> rows{{
    {F::stock, "stock", 0.11, 0.45, kilogram, B::commonPractice, practice},
    {F::beddingDepth, "bedding-depth", 2.5, 5.0, centimetre, B::commonPractice, practice},
    {F::feedEvery, "feed-every", 7, none_, days, B::commonPractice, practice},
    {F::feedShare, "feed-share", 0.25, 0.5, share, B::published, "Alabama Cooperative Extension (fresh food a day for their own mass of worms)"},
    {F::firstTrayAlone, "first-tray-alone", 2, 3, months, B::commonPractice, practice},
    {F::castingsBeforeTray, "castings-before-tray", 2.5, none_, centimetre, B::commonPractice, practice},
    {F::secondTrayAlone, "second-tray-alone", 60, none_, days, B::commonPractice, practice},
    {F::firstHarvest, "first-harvest", 180, 245, days, B::commonPractice, practice},
    {F::laterHarvests, "later-harvests", 60, 90, days, B::commonPractice, practice},
    {F::paperWater, "paper-water", 3, none_, FigureUnit::ratio, B::published, "University of Illinois Extension (parts of water for one of paper)"},
    {F::wetted, "wetted", 0.95, none_, share, B::commonPractice, "common practice (a wrung-out sponge), no source; the share itself is ours"},
    {F::moistureRange, "moisture-range", 60, 85, percent, B::published, "NC State Extension"},
    {F::moistureBest, "moisture-best", 80, none_, percent, B::published, "NC State Extension"},
    {F::carbonRange, "cn-range", 25, 35, FigureUnit::ratio, B::secondHand, "Cooperband 2002, for composting, second hand"},
    {F::carbonAim, "cn-aim", 30, none_, FigureUnit::ratio, B::secondHand, "the middle of Cooperband 2002, second hand"},
    {F::comfortable, "comfortable", 15, 25, celsius, B::commonPractice, practice},
    {F::coldest, "coldest", 3, none_, celsius, B::published, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985 (as fitted for the model)"},
    {F::growthBest, "growth-best", 26, none_, celsius, B::published, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985 (as fitted for the model)"},
    {F::hottest, "hottest", 36, none_, celsius, B::published, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985 (as fitted for the model)"},
    {F::heatDeath, "heat-death", 33, none_, celsius, B::judgement, ours},
    {F::frostDeath, "frost-death", 1, none_, celsius, B::judgement, ours},
    {F::yearIndoors, "year-indoors", 19, 21, celsius, B::judgement, ours},
    {F::yearGarage, "year-garage", 8, 20, celsius, B::judgement, ours},
    {F::yearOutdoors, "year-outdoors", 3, 21, celsius, B::judgement, ours},
    {F::bedLitre, "bed-litre", 0.55, 0.75, kilogram, B::judgement, "our judgement (a litre of moist castings)"},
    {F::bestDensity, "best-density", 1.6, none_, kilogramPerSquareMetre, B::published, "Ndegwa et al. 2000"},
    {F::ready, "ready", 0.10, none_, FigureUnit::ratio, B::judgement, rule},
    {F::readyCastings, "ready-castings", 1.25, none_, centimetre, B::judgement, rule},
    {F::nearly, "nearly", 0.20, none_, FigureUnit::ratio, B::judgement, rule},
    {F::filledCastings, "filled-castings", 2.5, none_, centimetre, B::judgement, rule},
    {F::filledRatio, "filled-ratio", 0.60, none_, FigureUnit::ratio, B::judgement, rule},
    {F::underRim, "under-rim", 1, none_, centimetre, B::judgement, rule},
    {F::overdueAfter, "overdue-after", 30, none_, days, B::judgement, rule},
    {F::alertRaised, "alert-raised", 80, none_, percent, B::judgement, rule},
    {F::alertWithdrawn, "alert-withdrawn", 60, none_, percent, B::judgement, rule},
    {F::lightDrying, "light-drying", 2, 7, days, B::commonPractice, practice},
    {F::leftAfterDrying, "left-after-drying", 5, none_, percent, B::judgement, ours},
    {F::wormsInSump, "worms-in-sump", 2, none_, percent, B::judgement, ours},
    {F::drainEvery, "drain-every", 7, 14, days, B::commonPractice, practice},
    {F::fullSump, "full-sump", 80, none_, percent, B::judgement, ours},
    {F::awayWeeks, "away", 14, 21, days, B::commonPractice, practice},
    {F::giveAtMost, "give-at-most", 25, none_, percent, B::judgement, ours},
    {F::doubling, "doubling", 50, 92, days, B::published, "Zziwa et al. 2021 (abstract)"},
    {F::yieldRatio, "yield", 1.7, 2.7, FigureUnit::ratio, B::published, "Lalander et al. 2015 and Zziwa et al. 2021 (46 to 60 % lost, abstracts)"},
    {F::cocoonsWeekly, "cocoons-weekly", 2.45, none_, none, B::published, "Venter & Reinecke 1988"},
    {F::cocoonHatch, "cocoon-hatch", 23, none_, days, B::published, "Venter & Reinecke 1988 (at 25 °C)"},
    {F::youngPerCocoon, "young", 2.7, none_, none, B::published, "Venter & Reinecke 1988"},
    {F::secondDrying, "second-drying", 21, 28, days, B::judgement, "our judgement, after the hatching time of Venter & Reinecke 1988"},
    {F::baitDays, "bait-days", 7, 14, days, B::commonPractice, practice},
    {F::pottingShare, "potting-share", 10, 20, percent, B::published, "Atiyeh et al. 2000, Pedobiologia 44:579-590 (abstract)"},
    {F::pottingMost, "potting-most", 25, none_, percent, B::published, "City of Euless, Texas"},
    {F::topDressing, "top-dressing", 0.5, 1.0, centimetre, B::commonPractice, practice},
    {F::topDressingTwice, "top-dressing-again", 2, 3, months, B::commonPractice, practice},
    {F::sieve, "sieve", 4, 6, millimetre, B::commonPractice, practice},
    {F::storageMoisture, "storage-moisture", 30, none_, percent, B::memory, "a journal's abstract, memory"},
    {F::storageMonths, "storage-months", 6, 12, months, B::memory, "memory"},
    {F::castingsDryBulk, "castings-bulk", 182, none_, kilogramPerCubicMetre, B::judgement, "our judgement (dry matter; the same as in the reckoning)"},
    {F::takenMoisture, "taken-moisture", 70, none_, percent, B::judgement, "our judgement, where the entry names none"},
    {F::leachateStrength, "leachate-strength", 2.6, none_, milliSiemens, B::published, "García-Gómez et al. 2008"},
    {F::leachateHarmless, "leachate-harmless", 1.5, 3.0, milliSiemens, B::published, "Kaplan et al. 1980"},
    {F::leachateHarmful, "leachate-harmful", 8, none_, milliSiemens, B::published, "Flack & Hartenstein 1984, about"},
    {F::saltPerConductivity, "salt-per-conductivity", 0.64, none_, gramPerLitre, B::memory, "memory"},
    {F::targetSeedlings, "target-seedlings", 0.8, none_, milliSiemens, B::memory, "memory"},
    {F::targetGrown, "target-grown", 1.5, none_, milliSiemens, B::memory, "memory"},
    {F::tapWater, "tap-water", 0.4, none_, milliSiemens, B::memory, "memory; it differs from place to place: measure yours"},
    {F::leachateKeeps, "leachate-keeps", 1, none_, days, B::commonPractice, practice},
    {F::loadConstant, "load-constant", 23, none_, kilogram, B::published, lifting},
    {F::reachReference, "reach-reference", 25, none_, centimetre, B::published, lifting},
    {F::reachFarthest, "reach-farthest", 63, none_, centimetre, B::memory, liftingMemory},
    {F::heightReference, "height-reference", 75, none_, centimetre, B::published, lifting},
    {F::heightLoss, "height-loss", 0.003, none_, none, B::published, lifting},
    {F::heightMost, "height-most", 175, none_, centimetre, B::memory, liftingMemory},
    {F::travelReference, "travel-reference", 25, none_, centimetre, B::memory, liftingMemory},
    {F::travelBase, "travel-base", 0.82, none_, none, B::published, lifting},
    {F::travelShare, "travel-share", 4.5, none_, centimetre, B::published, lifting},
    {F::travelMost, "travel-most", 175, none_, centimetre, B::memory, liftingMemory},
    {F::twistLoss, "twist-loss", 0.0032, none_, none, B::memory, liftingMemory},
    {F::twistMost, "twist-most", 135, none_, degrees, B::memory, liftingMemory},
    {F::gripFair, "grip-fair", 0.95, none_, none, B::memory, liftingMemory},
    {F::gripPoor, "grip-poor", 0.90, none_, none, B::memory, liftingMemory},
    {F::reachBody, "reach-body", 20, 25, centimetre, B::memory, liftingMemory},
    {F::lightTray, "tray-weight", 1.2, none_, kilogram, B::judgement, "our judgement (an empty tray, where none was weighed)"},
    {F::sourBelow, "sour-below", 5.5, none_, none, B::memory, "memory"},
    {F::limeGrams, "lime", 50, 100, gram, B::memory, "memory (for a square metre, once)"},
    {F::flyDays, "fly-days", 14, 21, days, B::memory, "memory (from egg to fly in a warm room)"},
    {F::membersUsual, "members", 512, none_, none, B::judgement, rule},
    {F::bandShare, "band-share", 90, none_, percent, B::judgement, rule},
    {F::driftDays, "drift-days", 730, none_, days, B::judgement, rule},
    {F::softensAt, "softens-at", 20, none_, celsius, B::judgement, ours},
    {F::softensWith, "softens-with", 1, none_, kilogramPerSquareMetre, B::judgement, ours},
    {F::moistureNear, "moisture-near", 5, none_, percent, B::judgement, ours},
    {F::mostTimes, "most-times", 20, none_, none, B::judgement, rule},
}};

}

std::span<const FigureRow> figureTable() { return rows; }

const FigureRow& figureRow(Figure figure) { return rows[static_cast<std::size_t>(figure)]; }

const FigureRow* figureWithKey(std::string_view key)
{
    const auto found = std::ranges::find(rows, key, &FigureRow::key);
    return found == rows.end() ? nullptr : &*found;
}

}
