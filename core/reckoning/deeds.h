#pragma once

#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/model/acts.h"
#include "core/reckoning/reckoning.h"

#include <optional>
#include <vector>

namespace tierloam::reckoning {

inline constexpr double laidWetness = 0.95; ///< of what the bedding holds, when the journal does not say

/// What an entry does to the state of a stack, amounts and their noise drawn. Observations act only in what they take.
class Deeds {
public:
    Deeds(const journal::Entries& entries, const materials::Table& materials) : entries_{entries}, materials_{materials} {}

    /// `number` counts the entries of the day, so that each has random numbers of its own. Returns what of it was
    /// too much, entry and day left open: the median member holds more than fits under the rim less 1 cm after it, or more worms were put in than its trays carry.
    std::optional<Oversized> perform(model::Ensemble& stack, const journal::Step& step, const journal::StackHistory& history, int day, int number) const;

    /// Food or paper of the base case: `kg` fresh a member, cut to the room of each; returns the members for which it did not all fit.
    static std::vector<char> giveWithinRoom(model::Ensemble& stack, int slot, const model::Substance& what, double kg, bool isFeeding);

    /// The same for amounts that differ from member to member; nothing is given to those with 0.
    static std::vector<char> addWithinRoom(model::Ensemble& stack, int slot, const model::Substance& what, model::PerMember fresh, bool isFeeding);

    /// The substance and fresh kg of an amount as written; nullopt when the material is not known (it cannot be, in a legal journal).
    struct Portion { model::Substance what; double kg = 0; bool byVolume = false; };
    std::optional<Portion> portion(const std::string& material, const Amount& amount) const;
    const materials::Table& materials() const { return materials_; }

private:
    const journal::Entries& entries_;
    const materials::Table& materials_;
};

}
