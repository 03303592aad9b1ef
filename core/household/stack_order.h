#pragma once

#include <QString>

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

/// The order in which stacks stand on the shelf, as people put them, and in which they are named everywhere else. It belongs to the household
/// and is kept as a setting.
namespace tierloam::household {

using StackOrder = std::vector<std::string>; ///< names of stacks

/// As the household file keeps it: a name a line. Names hold no line breaks (the journal refuses control characters).
QString orderText(const StackOrder& order);
StackOrder orderFrom(const QString& text);

/// `names` as wished: those that `wished` names first, in its order; the rest after them, as they came. Names that stand no more are passed over.
StackOrder ordered(const StackOrder& names, const StackOrder& wished);

/// Whatever there is one of for each stack (with its name as `name` or `stack`), in that order.
template<class Each>
std::vector<std::reference_wrapper<const Each>> inOrder(const std::vector<Each>& stacks, const StackOrder& wished)
{
    const auto place = [&](const Each& each) {
        const auto& name = [&]() -> const std::string& { if constexpr (requires { each.name; }) return each.name; else return each.stack; }();
        return std::find(wished.begin(), wished.end(), name) - wished.begin();
    };
    std::vector<std::reference_wrapper<const Each>> result{stacks.begin(), stacks.end()};
    std::ranges::stable_sort(result, {}, place);
    return result;
}

/// With that stack taken out and put where `place` others stand before it; held to what is there.
StackOrder movedTo(StackOrder names, const std::string& stack, std::size_t place);

}
