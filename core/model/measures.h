#pragma once

#include "core/model/ensemble.h"

/// What can be read off one member of an ensemble. `slot` is 0-based, `member` 0 to members()−1.
namespace tierloam::model {

/// One member of one block, found once and read many times.
struct MemberOf {
    const Ensemble& ensemble;
    const Ensemble::Block& block;
    int lane;

    MemberOf(const Ensemble& of, int member) : ensemble{of}, block{of.blocks[static_cast<std::size_t>(member / lanes)]}, lane{member % lanes} {}
    const TrayBlock& tray(int slot) const { return block.trays[static_cast<std::size_t>(slot)]; }
    double parameter(Parameter p) const { return block.parameters.value[static_cast<int>(p)][lane]; }
};

double quickUnsoftened(const MemberOf& of, int slot);   ///< Σ quick F, kg DM
double slowUnsoftened(const MemberOf& of, int slot);    ///< wood, coir and mineral, kg DM
double unprocessed(const MemberOf& of, int slot);       ///< H + Σ quick F, kg DM
/// (H + Σ quick F)/C; 999 at most, and for a tray without castings.
double feedToCast(const MemberOf& of, int slot);
double castingsDepth(const MemberOf& of, int slot);     ///< cm, C/182/A
/// cm of each layer as it lies: castings, softened, food (soft, mix, coffee), bedding (all other classes).
struct Layers { double castings, softened, food, bedding; double total() const { return castings + softened + food + bedding; } };
Layers layers(const MemberOf& of, int slot);
double dryMatter(const MemberOf& of, int slot);         ///< F + H + C, kg
double contentsWeight(const MemberOf& of, int slot);    ///< wet, without worms and tray, kg
double trayWeight(const MemberOf& of, int slot);        ///< with worms and the tray itself, kg
double trayWeight(const MemberOf& of, int slot, double colonyKg); ///< the same where the colony is known already
double moisture(const MemberOf& of, int slot);          ///< % wet basis, 0 when empty
double waterShare(const MemberOf& of, int slot);        ///< of field capacity; 0 when empty
double carbonToNitrogen(const MemberOf& of, int slot);  ///< 999 at most
double cocoons(const MemberOf& of, int slot);
double tracerLeft(const MemberOf& of, int slot);        ///< % of the last feeding that is not softened
double bits(const MemberOf& of, int slot);              ///< % recognisable by dry matter, mineral left out
double colony(const MemberOf& of);                      ///< kg LW
double worms(const MemberOf& of);
double adults(const MemberOf& of);
double leachateConductivity(const MemberOf& of);        ///< mS/cm, (g/L)/0.64
/// Room under the rim less 1 cm, m³; negative when beyond.
double room(const MemberOf& of, int slot);
/// Volume in m³ that a kg DM of this class takes in this tray, freshly given.
double volumeOfDry(int softeningClass, double dryDensity);

// The rules of readiness.
inline constexpr double readyRatio = 0.10, nearlyRatio = 0.20, filledRatio = 0.60;
inline constexpr double readyDepth = 1.25, filledDepth = 2.5; ///< cm
/// From unprocessed and castings dry matter, and the castings' depth. Of a batch of which shares were taken `left` remains, and lies that much lower.
/// `&`, so that a loop over members needs no branch.
constexpr bool ready(double raw, double castings, double depthCm, double left = 1.0) { return (raw <= readyRatio * castings) & (depthCm >= readyDepth * left); }
constexpr bool nearly(double raw, double castings) { return raw <= nearlyRatio * castings; }
constexpr bool filled(double raw, double castings, double depthCm) { return (depthCm >= filledDepth) & (raw <= filledRatio * castings); }
bool ready(const MemberOf& of, int slot);
bool nearly(const MemberOf& of, int slot);
bool filled(const MemberOf& of, int slot);

/// The rules for the 64 members of a block at once.
struct Readiness { bool ready[lanes]; bool filled[lanes]; };
void readiness(const Ensemble& ensemble, int block, int slot, Readiness& out);

/// What pages show of one tray, of the 64 members of a block at once; each as the function of that name has it for one of them.
struct TrayMeasures {
    Members unprocessed, slow, castingsDepth, feedToCast, carbonToNitrogen, moisture, waterShare, cocoons, contentsWeight;
    Members softenedLayer, foodLayer, beddingLayer; ///< cm
};
void measures(const Ensemble& ensemble, int block, int slot, TrayMeasures& out);

/// The same of a stack.
struct StackMeasures { Members colony, worms, adults, leachateConductivity; };
void measures(const Ensemble& ensemble, int block, StackMeasures& out);

/// put in − (in trays + worms, cocoons and reserve + respired + taken out), relative to what was put in.
double ledgerError(const MemberOf& of);

}
