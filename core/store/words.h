#pragma once

#include "core/journal/action.h"
#include "core/store/logged.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

/// The words that stand in the file for choices of the journal. They are part of the file format: never renamed, only added to.
namespace tierloam::store {

template <class Choice>
struct Words; ///< `all`: the words in the order of the enumeration, which starts at 0 and has no gaps

template <> struct Words<journal::Spigot> { static constexpr std::array<std::string_view, 2> all{"open", "shut"}; };
template <> struct Words<journal::Place> { static constexpr std::array<std::string_view, 3> all{"indoors", "garage", "outdoors"}; };
template <> struct Words<journal::Stand> { static constexpr std::array<std::string_view, 3> all{"legs", "base", "none"}; };
template <> struct Words<journal::Side> { static constexpr std::array<std::string_view, 5> all{"left", "right", "front", "back", "all"}; };
template <> struct Words<journal::WormsSeen> { static constexpr std::array<std::string_view, 3> all{"few", "some", "many"}; };
template <> struct Words<journal::RoutineOf> { static constexpr std::array<std::string_view, 2> all{"water", "cover"}; };
template <> struct Words<journal::SofteningClass> {
    static constexpr std::array<std::string_view, 8> all{"soft", "mix", "coffee", "paper", "cardboard", "wood", "coir", "mineral"};
};

template <> struct Words<journal::Welcome> { static constexpr auto all = journal::welcomeWords; };
template <> struct Words<journal::Doubt> { static constexpr auto all = journal::doubtWords; };

template <> struct Words<LoggedKind> { static constexpr std::array<std::string_view, loggedKinds> all{"bin", "air", "moisture", "humidity"}; };

template <class Choice>
constexpr std::string_view wordOf(Choice choice)
{
    return Words<Choice>::all[static_cast<std::size_t>(choice)];
}

template <class Choice>
constexpr std::optional<Choice> choiceNamed(std::string_view word)
{
    for (std::size_t i = 0; i < Words<Choice>::all.size(); ++i)
        if (Words<Choice>::all[i] == word) return static_cast<Choice>(i);
    return std::nullopt;
}

}
