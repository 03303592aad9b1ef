#include "core/planning/feeding_split.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace tierloam::planning {

namespace {

long stepsOf(double kg) { return kg > 0.0 && std::isfinite(kg) ? static_cast<long>(std::floor(kg / splitStep + 1e-9)) : 0; }

}

double servedBy(const Appetite& appetite, double kg)
{
    const double high = std::max(appetite.high, 0.0);
    const double low = std::clamp(appetite.low, 0.0, high);
    const double usual = std::clamp(appetite.usual, low, high);
    const auto part = [kg](double from, double to) { return to > from ? std::clamp((kg - from) / (to - from), 0.0, 1.0) : kg >= to ? 1.0 : 0.0; };
    return part(0.0, low) + part(low, usual) + part(usual, high);
}

Split splitSupply(double supply, const std::vector<Appetite>& appetites)
{
    Split split{std::vector<double>(appetites.size(), 0.0), 0.0};
    std::vector<long> most, given(appetites.size(), 0);
    for (const Appetite& each : appetites) most.push_back(stepsOf(each.high));

    struct Next {
        double served;      ///< now
        double then;        ///< after one step more: of two served alike, the one that gains more
        std::size_t stack;
        bool operator<(const Next& other) const
        {
            if (served != other.served) return served > other.served;
            if (then != other.then) return then < other.then;
            return stack > other.stack;
        }
    };
    std::priority_queue<Next> queue;
    const auto offer = [&](std::size_t i) {
        if (given[i] >= most[i]) return;
        const double now = static_cast<double>(given[i]) * splitStep;
        queue.push({servedBy(appetites[i], now), servedBy(appetites[i], now + splitStep), i});
    };
    for (std::size_t i = 0; i < appetites.size(); ++i) offer(i);
    long left = stepsOf(supply);
    while (left > 0 && !queue.empty()) {
        const std::size_t i = queue.top().stack;
        queue.pop();
        ++given[i];
        --left;
        offer(i);
    }
    for (std::size_t i = 0; i < given.size(); ++i) split.kg[i] = static_cast<double>(given[i]) * splitStep;
    split.leftOver = queue.empty() && left > 0 ? static_cast<double>(left) * splitStep : 0.0;
    return split;
}

}
