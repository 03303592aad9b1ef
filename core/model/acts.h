#pragma once

#include "core/materials/table.h"
#include "core/model/ensemble.h"

#include <optional>
#include <vector>

/// What people do to a stack, on the state of every member. What is taken is taken: nothing goes below zero, and each act books
/// what it puts in and takes out, so that the ledger closes. Slots are 0-based here.
namespace tierloam::model {

/// A material as the model sees it, all per kg dry matter except dryShare and bulk.
struct Substance {
    int softening = 0;          ///< class
    double dryShare = 0;        ///< of fresh mass
    double nitrogen = 0;        ///< kg/kg
    double carbon = 0;          ///< kg/kg
    double held = 0;            ///< kg water per kg at field capacity
    double bulk = 0;            ///< kg/m³ as it comes to hand

    static Substance of(const materials::Material& material);
};

/// One value for each member.
using PerMember = std::vector<double>;

/// A spare tray goes on top: empty, no worms in it unless it is the only one, then all.
void addTray(Ensemble& ensemble, int batch, int tray, int day);

/// Fresh matter into a tray. `fresh` kg and `dryShare` of each member; the rest is water, unless `waterInstead` (kg per kg DM) says what it holds.
void addMatter(Ensemble& ensemble, int slot, const Substance& substance, const PerMember& fresh, const PerMember& dryShare,
               std::optional<double> waterInstead, bool isFeeding);

/// Water on a tray: fills its deficit; of the rest a share runs to the sump at once, salts with it, the remainder stays to drain.
void pour(Ensemble& ensemble, int slot, double litres);

/// Worms put in, `kg` as written (each member has its own bias of bought worms when `bought`): counted ones of one mass, else a grown mixed colony.
/// They go into one slot. Their reserve is their maintenance need ÷ k_R, counted as put in.
void stock(Ensemble& ensemble, int slot, double kg, std::optional<int> number, bool bought);

/// The same of each member, as a grown mixed colony and with no bias: worms that were there and that a member did not have.
void stockEach(Ensemble& ensemble, int slot, const PerMember& kg);

/// Worms taken out, all masses alike, their reserve along.
void takeWorms(Ensemble& ensemble, double kg);
/// The same for a share of each member's colony.
void takeWormShare(Ensemble& ensemble, double share);
void takeWormShareEach(Ensemble& ensemble, const PerMember& share);

/// Castings, kg DM of each member, that lie in a tray which was at work before its journal began. As moist as they hold; C:N 15 (10 to 20 of finished
/// castings: common practice, no source).
void layCastingsEach(Ensemble& ensemble, int slot, const PerMember& dry);

/// All worms into one tray, as when they are picked over by hand; cocoons stay where they lie.
void allWormsInto(Ensemble& ensemble, int slot);

/// The sump: emptied, or so much drawn off. Runs after an open spigot has let off what it does.
void drain(Ensemble& ensemble, std::optional<double> litres);

/// The bed has come to rest in air of so many °C, its own heat and drift as they are: T = T_air + q + u. Nothing else happens and no time passes.
void lieInAir(Ensemble& ensemble, double celsius);

/// The bed of each member, and what it differs by from its surroundings (u), are so many K warmer from now on: sun on it, a heater, a draught.
void warmBedEach(Ensemble& ensemble, const PerMember& kelvin);

/// Slot 0 goes to the top and dries.
void rotate(Ensemble& ensemble);
void endDrying(Ensemble& ensemble);

/// Takes a share of a tray's contents with the worms and cocoons in it. All of it: the tray goes.
void harvest(Ensemble& ensemble, int slot, double share);

}
