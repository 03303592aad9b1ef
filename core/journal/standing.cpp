#include "core/journal/standing.h"

#include <algorithm>

namespace tierloam::journal {

int Standing::slotOf(int batch) const
{
    const auto found = std::find(slots.begin(), slots.end(), batch);
    return found == slots.end() ? 0 : static_cast<int>(found - slots.begin()) + 1;
}

std::optional<int> Standing::feedSlot() const
{
    const int highest = drying ? trays() - 1 : trays();
    return highest >= 1 ? std::optional{highest} : std::nullopt;
}

std::optional<int> lowestSpareTray(const Standing& standing, const std::vector<Batch>& batches)
{
    if (standing.spare() < 1) return std::nullopt;
    for (int tray = 1; tray <= standing.settings.trays; ++tray) {
        const bool stands = std::any_of(standing.slots.begin(), standing.slots.end(), [&](int batch) {
            return batches[static_cast<std::size_t>(batch) - 1].tray == tray;
        });
        if (!stands) return tray;
    }
    return std::nullopt;
}

}
