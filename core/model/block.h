#pragma once

/// The layout of the state: structure of arrays over blocks of 64 members. Plain data only, and no functions: these headers
/// are compiled into kernels for several instruction sets, and an inline function would be merged across them.
/// Units: kg dry matter (DM), kg live worm mass (LW), kg water, m², °C, L, days; every pool ≥ 0.
namespace tierloam::model {

inline constexpr int lanes = 64;            ///< members of a block
inline constexpr int massClasses = 16;      ///< geometric, 4 mg to 1.6 g
inline constexpr int softeningClasses = 8;  ///< order of journal::SofteningClass: soft mix coffee paper cardboard wood coir mineral
inline constexpr int quickClasses = 5;      ///< the first five soften within months
inline constexpr int cocoonStages = 4;      ///< Erlang chain

using Members = double[lanes];

/// One tray (batch) of 64 members.
struct alignas(64) TrayBlock {
    Members unsoftened[softeningClasses]; ///< F[c], kg DM
    Members softened;                     ///< H, kg DM
    Members castings;                     ///< C, kg DM
    Members nitrogen;                     ///< kg
    Members carbon;                       ///< kg, of F, H and C together
    Members salts;                        ///< kg
    Members cocoons[cocoonStages];        ///< number
    Members water;                        ///< kg
    Members share;                        ///< of the stack's worms, 0…1
    Members tracer;                       ///< unsoftened kg DM of the last feeding
    Members tracerStart;                  ///< kg DM of the last feeding when it was given
    Members input;                        ///< kg DM put in since the bedding, quick and slow
    // Of the last step, for the processes that follow it and for display:
    Members air;                          ///< multiplier 0…1
    Members wet;                          ///< moisture multiplier 0…1
    Members capacity;                     ///< field capacity, kg water
    // Scratch of one step, so that nothing is summed twice:
    Members unsoftenedDry;                ///< ΣF, kg DM
    Members unsoftenedHeld;               ///< kg water that F holds, before the member's scale
    Members unsoftenedCarbon;             ///< kg
    Members unsoftenedRate;               ///< Σ k·scale·F, kg DM/d at 25 °C without worms
    Members shredding;                    ///< Q10 · noise · worm factor
    Members gain;                         ///< kg DM that softens in this step and enters H while worms eat; 0 between steps
    Members gainFall;                     ///< kg DM by which that slows from the step's beginning to its end
    Members rateFall;                     ///< by how much softening has slowed unsoftenedRate in this step
    Members preference;                   ///< of worms for this tray
};

/// What all members of a tray share.
struct TrayShape {
    double held[softeningClasses];        ///< kg water per kg DM, DM-weighted mean of what went in
    double dryDensity[softeningClasses];  ///< ρ = bulk·(1 − moisture), kg DM/m³, likewise
    double carbonShare[softeningClasses]; ///< kg C per kg DM, likewise
    double weight[softeningClasses];      ///< kg DM that went in (nominal), the weights of these means
    int tracerClass;                      ///< softening class of the last feeding, −1 before the first
    int batch;
    int tray;
    int beddedDay;                        ///< days since the stack's first bedding
    bool drying;
    double left;                          ///< of `whole`, what is still there by what was put in and taken: 1 before a share is taken, and again once as much was added
    double whole;                         ///< kg DM (nominal): the most of what was put in that has been there at once
};

/// What a stack holds besides its trays, 64 members.
struct alignas(64) StackBlock {
    Members worms[massClasses];           ///< number
    Members reserve;                      ///< R, kg DM
    Members wormCarbon;                   ///< kg, of worms, cocoons and R
    Members sump;                         ///< L
    Members sumpSalts;                    ///< kg
    Members bed;                          ///< bed temperature, °C
    Members meanWarmth;                   ///< q̄, K
    Members warmth;                       ///< q, K: own heat above the air
    Members drift;                        ///< u, K: AR(1)
    Members softNoise;                    ///< AR(1) on log softening
    Members softFactor;                   ///< exp(softNoise)
    // Ledger, kg DM since the first bedding:
    Members putIn;
    Members respired;
    Members takenOut;
    // Ledgers of carbon, nitrogen (of trays alone), salts and water, kg since the first bedding. Water made is 0.6 · respired.
    Members carbonIn;
    Members carbonRespired;
    Members carbonOut;                    ///< with what was taken out
    Members nitrogenIn;
    Members nitrogenOut;
    Members saltsFormed;
    Members saltsOut;                     ///< ran off, drained or taken out
    Members waterIn;                      ///< in matter and poured
    Members waterOut;                     ///< drained by hand or taken out with trays; what runs off by itself stands below
    Members evaporated;
    // Totals since the first bedding that daily rates are read from:
    Members ingested;                     ///< kg DM
    Members assimilated;                  ///< kg DM
    Members maintenanceNeed;              ///< kg DM
    Members intoSump;                     ///< L
    Members ranOff;                       ///< L through an open spigot
    Members overflowed;                   ///< L beside a full sump
    // Of the last step:
    Members respiredRate;                 ///< kg DM/d
    Members evaporationRate;              ///< kg/d
};

/// Parameters of 64 members; the rows and their ranges are those of parameters.h.
inline constexpr int parameterCount = 32;
struct alignas(64) ParameterBlock {
    Members value[parameterCount];
    Members growthAt25;                   ///< g(25 °C) of the member's own curve, by which g(T) is divided
};

/// Geometric classes of worm mass and what depends on them alone.
struct MassClassTable {
    double kilograms[massClasses];        ///< m
    double twoThirds[massClasses];        ///< (m/1 g)^(2/3)
    double threeQuarters[massClasses];    ///< (m/1 g)^(3/4)
    double cubeRoot[massClasses];         ///< (m/1 g)^(1/3)
    double adultShare[massClasses];       ///< of the class's log-width above 0.28 g
    double gapUp[massClasses];            ///< kg to the next class; the last: 0
    double gapDown[massClasses];          ///< kg to the class below; the first: its own mass
    double growthRate[massClasses];       ///< worms that a kg DM of growth moves up; the last: 0
    double shrinkRate[massClasses];       ///< worms that a kg DM of deficit moves down
};

/// What acts on a step from outside, the same for all members.
struct StepForcing {
    double days;                          ///< length of one step of the pair
    double area;                          ///< m² of one tray
    double height;                        ///< m of one tray
    double sumpCapacity;                  ///< L
    bool spigotOpen;
    bool lidOff;
    double usualTemperature;              ///< temp + season, °C
    bool airKnown;
    double airTemperature;                ///< °C, when known
    double relativeHumidity;              ///< 0…1
    bool noBackgroundDeath;               ///< laboratory pot
    bool hatchlingsRemoved;               ///< laboratory pot: young leave as they hatch
    bool holdTemperature;                 ///< the bed is kept at usualTemperature
    bool holdWater;                       ///< every tray is kept at field capacity
};

}
