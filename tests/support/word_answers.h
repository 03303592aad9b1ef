#pragma once

#include "core/exchange/sheet_words.h"
#include "core/exchange/table_answers.h"
#include "core/journal/action.h"
#include "core/journal/names.h"

#include <cstdint>
#include <iterator>
#include <string>

namespace tierloam::tests {

/// The same for the same word and seed, whatever else is asked beside it.
inline std::uint64_t drawn(const exchange::OpenWord& word, std::uint64_t seed)
{
    std::uint64_t hash = 0xcbf29ce484222325ULL ^ (seed * 0x9e3779b97f4a7c15ULL);
    for (const char c : word.key) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
    return hash >> 17;
}

/// Answers as people could give them to what is asked: left out, a stack that stands or a new one, any action, any of a few materials.
inline exchange::WordAnswers answered(const exchange::OpenWords& words, std::uint64_t seed)
{
    exchange::WordAnswers given;
    for (const exchange::OpenWord& word : words.stacks) {
        const auto way = drawn(word, seed) % 3;
        const bool isNew = way == 1 && journal::isStackName(word.word);
        given.stacks[word.key] = way == 0 ? std::nullopt : std::optional{isNew ? word.word : std::string{"Mill"}};
        if (isNew) given.newStacks.insert(word.word);
    }
    for (const exchange::OpenWord& word : words.actions) {
        const auto way = drawn(word, seed) % (std::size(journal::actionNames) + 1);
        given.actions[word.key] = way == std::size(journal::actionNames) ? std::nullopt : std::optional{std::string{journal::actionNames[way]}};
    }
    for (const exchange::OpenWord& word : words.materials) {
        constexpr const char* materials[] = {"kitchen mix", "coffee grounds", "newspaper shredded"};
        const auto way = drawn(word, seed) % 4;
        given.materials[word.key] = way == 3 ? std::nullopt : std::optional{std::string{materials[way]}};
    }
    return given;
}

/// Answers to all that a table asks, to what it asks after those too (materials of what an answer made a feeding).
inline exchange::WordAnswers answeredToTheEnd(const exchange::Sheet& sheet, const std::vector<exchange::SheetColumn>& columns, std::string_view actionWhereNone, const journal::Entries& existing, std::uint64_t seed)
{
    exchange::WordAnswers given;
    for (int round = 0; round < 3; ++round) given = answered(exchange::openWordsOf(sheet, columns, given, actionWhereNone, existing), seed);
    return given;
}

/// Whether answers come back from their setting as they went in, but for what the import begins.
inline bool areKept(const exchange::WordAnswers& words)
{
    exchange::TableAnswers said;
    said.words = words;
    said.words.newStacks.clear();
    return exchange::tableFrom(exchange::tableText(said)) == said;
}

}
