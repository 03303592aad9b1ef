#include "core/journal/last_bedding.h"

namespace tierloam::journal {

const Bed* lastTrayBedding(const Entries& entries, const StackHistory& history, Day until)
{
    for (auto step = history.steps.rbegin(); step != history.steps.rend(); ++step) {
        const Entry& entry = entries[step->entry];
        const auto* bed = std::get_if<Bed>(&entry.action);
        if (bed != nullptr && entry.date.day <= until && step->batch && history.batch(*step->batch).entry == step->entry) return bed;
    }
    return nullptr;
}

}
