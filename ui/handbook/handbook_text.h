#pragma once

#include <span>
#include <string_view>

/// The words of the handbook as data: pages of blocks, in English, each block translated when it is shown (context "Handbook").
/// Texts write no number: "{stock}" names a row of the table of figures (core/guide/figures.h). "[[id|words]]" leads to another page.
namespace tierloam::handbook {

enum class BlockKind {
    paragraph,
    heading,
    step,        ///< numbered
    point,
    why,         ///< the reason of what stands before, quieter
    diagram,     ///< `text` is the name of a stage (stages.h)
    caution,     ///< `text` is the word of a topic (caution_words in handbook_html.cpp)
    list,        ///< `text` names a list that is made when it is shown: "parameters", "figures", "cautions", "track-record", "symptoms", "materials-out"
    term,        ///< "word: what it means", of the glossary
};

struct Block {
    BlockKind kind{};
    const char* text = "";
};

struct Page {
    const char* id = "";         ///< stable, in links
    const char* title = "";      ///< untranslated
    const char* also = "";       ///< further words by which it is found, untranslated
    std::span<const Block> blocks;
};

inline constexpr const char* textContext = "Handbook";

/// Pages in reading order.
std::span<const Page> handbookPages();
const Page* pageWithId(std::string_view id);

// By theme, each in its own file.
std::span<const Page> carePages();
std::span<const Page> turnPages();
std::span<const Page> yearPages();
std::span<const Page> knowledgePages();

}
