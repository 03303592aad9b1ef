#pragma once

#include "core/guide/symptoms.h"
#include "tests/support/households.h"

/// A fault planted into a household drawn from the prior. It happens to the truth; the journal holds what a person would have written: most of the
/// deeds, and looks whose values are drawn from the truth with their noise.
namespace tierloam::tests {

struct Faulty {
    MadeUp household;            ///< its entries with those of the fault, up to asOf
    guide::Cause cause{};
    guide::Symptom symptom{};    ///< one that the cause brings about
};

/// Household `number` of a series with one fault, each cause in turn; the symptom is drawn evenly among those that the cause is known to bring.
Faulty makeFaulty(std::uint64_t series, int number);

/// Symptoms of a cause as this test takes them, written without looking at the program's priors.
std::vector<guide::Symptom> symptomsOf(guide::Cause cause);

}
