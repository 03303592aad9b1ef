#pragma once

#include <QString>

#include <string>
#include <vector>

/// The order in which stacks stand on the shelf, as people put them. It belongs to the household and is kept as a setting.
namespace tierloam::shelf {

using StackOrder = std::vector<std::string>; ///< names of stacks

/// As the household file keeps it: a name a line. Names hold no line breaks (the journal refuses control characters).
QString orderText(const StackOrder& order);
StackOrder orderFrom(const QString& text);

/// `names` as wished: those that `wished` names first, in its order; the rest after them, as they came. Names that stand no more are passed over.
StackOrder ordered(const StackOrder& names, const StackOrder& wished);

/// With that stack taken out and put where `place` others stand before it; held to what is there.
StackOrder movedTo(StackOrder names, const std::string& stack, std::size_t place);

}
