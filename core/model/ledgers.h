#pragma once

#include "core/model/measures.h"

namespace tierloam::model {

/// What does not add up in each ledger of one member, relative to what came in (put in, formed or made). Zero but for rounding,
/// always: put in = held + given off + taken out.
///     dry matter  in trays, worms, cocoons and reserve; respired
///     carbon      of trays and of worms, cocoons and reserve; respired
///     nitrogen    of trays; that of worms and of drainage is left out of the model
///     salts       of trays and sump, formed of what is eaten; run off
///     water       of trays and sump, made by respiration besides what was put in; evaporated, run off
struct LedgerErrors {
    double dryMatter = 0;
    double carbon = 0;
    double nitrogen = 0;
    double salts = 0;
    double water = 0;

    double worst() const; ///< greatest size; NaN when any is
};

LedgerErrors ledgerErrors(const MemberOf& of);

}
