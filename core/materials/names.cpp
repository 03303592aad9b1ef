#include "core/materials/names.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace tierloam::materials {

namespace {

/// Characters of UTF-8 text; bytes that are none stand for themselves, above every character.
std::u32string characters(std::string_view text)
{
    std::u32string result;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const int more = first < 0x80 ? 0 : (first >= 0xC2 && first < 0xE0) ? 1 : (first >= 0xE0 && first < 0xF0) ? 2 : (first >= 0xF0 && first < 0xF5) ? 3 : -1;
        char32_t character = more <= 0 ? first : first & (0x3Fu >> more);
        bool whole = more >= 0 && i + static_cast<std::size_t>(more) < text.size();
        for (int k = 1; whole && k <= more; ++k) {
            const auto next = static_cast<unsigned char>(text[i + static_cast<std::size_t>(k)]);
            whole = (next & 0xC0) == 0x80;
            character = (character << 6) | (next & 0x3Fu);
        }
        result += whole ? character : 0x110000u + first;
        i += whole ? static_cast<std::size_t>(more) + 1 : 1;
    }
    return result;
}

void append(std::string& text, char32_t character)
{
    const auto byte = [&](std::uint32_t value) { text += static_cast<char>(static_cast<unsigned char>(value)); };
    if (character >= 0x110000) {
        byte(character - 0x110000);
    } else if (character < 0x80) {
        byte(character);
    } else if (character < 0x800) {
        byte(0xC0 | (character >> 6));
        byte(0x80 | (character & 0x3F));
    } else if (character < 0x10000) {
        byte(0xE0 | (character >> 12));
        byte(0x80 | ((character >> 6) & 0x3F));
        byte(0x80 | (character & 0x3F));
    } else {
        byte(0xF0 | (character >> 18));
        byte(0x80 | ((character >> 12) & 0x3F));
        byte(0x80 | ((character >> 6) & 0x3F));
        byte(0x80 | (character & 0x3F));
    }
}

char32_t small(char32_t c)
{
    const auto between = [c](char32_t from, char32_t to) { return c >= from && c <= to; };
    if (between(U'A', U'Z')) return c + 0x20;
    if (between(0xC0, 0xDE) && c != 0xD7) return c + 0x20;                           // À…Þ but ×
    if (between(0x0391, 0x03A9) && c != 0x03A2) return c + 0x20;                     // Α…Ω
    if (between(0x0410, 0x042F)) return c + 0x20;                                    // А…Я
    if (between(0x0400, 0x040F)) return c + 0x50;                                    // Ѐ…Џ
    if (between(0x0100, 0x0137) && c != 0x0130 && c % 2 == 0) return c + 1;          // Ā…Ķ, in pairs
    if ((between(0x0139, 0x0147) || between(0x0179, 0x017D)) && c % 2 == 1) return c + 1;
    if (between(0x014A, 0x0176) && c % 2 == 0) return c + 1;
    if (c == 0x0178) return 0xFF;                                                    // Ÿ
    return c;
}

bool beginsAWord(std::string_view name, std::string_view start)
{
    for (std::size_t at = name.find(start); at != std::string_view::npos; at = name.find(start, at + 1))
        if (at == 0 || name[at - 1] == ' ' || name[at - 1] == '(' || name[at - 1] == ',') return true;
    return false;
}

/// The least distance of what was typed from the name and from each of its words.
int distanceFrom(std::string_view typed, std::string_view name)
{
    int least = editDistance(typed, name);
    for (std::size_t from = 0; from < name.size();) {
        const std::size_t to = std::min(name.find_first_of(" ,()", from), name.size());
        // A word alone is a weaker claim than the whole name.
        if (to > from) least = std::min(least, editDistance(typed, name.substr(from, to - from)) + 1);
        from = to + 1;
    }
    return least;
}

}

std::string folded(std::string_view name)
{
    std::string result;
    result.reserve(name.size());
    for (const char32_t character : characters(name)) append(result, small(character));
    return result;
}

int editDistance(std::string_view a, std::string_view b)
{
    const std::u32string from = characters(a);
    const std::u32string to = characters(b);
    std::vector<int> before(to.size() + 1), last(to.size() + 1), row(to.size() + 1);
    for (std::size_t j = 0; j <= to.size(); ++j) last[j] = static_cast<int>(j);
    for (std::size_t i = 1; i <= from.size(); ++i) {
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= to.size(); ++j) {
            const int exchange = last[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, exchange});
            if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1]) row[j] = std::min(row[j], before[j - 2] + 1);
        }
        std::swap(before, last);
        std::swap(last, row);
    }
    return last[to.size()];
}

std::vector<std::string> nearestNames(std::string_view typed, std::span<const std::string> names, std::size_t most)
{
    struct Candidate {
        int rank;     // 0: a word begins like it; 1: a few slips; 2: far
        int distance;
        const std::string* name;
    };
    const std::string wanted = folded(typed);
    const int slips = std::max(2, static_cast<int>(characters(wanted).size()) / 3);
    std::vector<Candidate> candidates;
    for (const std::string& name : names) {
        const std::string other = folded(name);
        const int distance = distanceFrom(wanted, other);
        const bool begins = wanted.size() >= 2 && (beginsAWord(other, wanted) || (other.size() >= 3 && wanted.starts_with(other)));
        candidates.push_back({begins ? 0 : distance <= slips ? 1 : 2, distance, &name});
    }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.rank != b.rank ? a.rank < b.rank : a.distance < b.distance; });
    std::vector<std::string> result;
    for (const Candidate& candidate : candidates) {
        if (result.size() == most || (candidate.rank == 2 && !result.empty())) break;
        result.push_back(*candidate.name);
    }
    return result;
}

}
