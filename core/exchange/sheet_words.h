#pragma once

#include "core/exchange/row.h"
#include "core/exchange/sheet.h"
#include "core/exchange/sheet_columns.h"
#include "core/journal/entry.h"

#include <QString>

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

/// Words of somebody's table that the program does not know by itself: names of stacks that are none of the household's, words for acts and
/// for what was fed or laid. Each is asked once, whatever the number of its rows, and never guessed.
namespace tierloam::exchange {

/// What people say such words mean, by their comparable() spelling. No meaning: the rows that say it are left out.
struct WordAnswers {
    using Meant = std::map<std::string, std::optional<std::string>>;

    Meant stacks;                      ///< the name of a stack
    Meant actions;                     ///< the journal's name of an action
    Meant materials;                   ///< the table's name of a material
    std::set<std::string> newStacks;   ///< those of the stacks that the import is to begin
    bool operator==(const WordAnswers&) const = default;
};

struct OpenWord {
    std::string key;                   ///< comparable()
    std::string word;                  ///< as it stands where it is said first
    int line = 0;                      ///< there
    std::size_t rows = 0;              ///< that say it
    bool operator==(const OpenWord&) const = default;
};

/// In the order of the file.
struct OpenWords {
    std::vector<OpenWord> stacks, actions, materials;
    bool operator==(const OpenWords&) const = default;
};

/// Names of stacks that neither stand in the journal nor are set up by the table itself, words that stand for no action, and those that name
/// no material where one is fed, laid or covered with. What is answered already stays in it; it shows which rows take a material.
OpenWords openWordsOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const WordAnswers& answers, std::string_view actionWhereNone, const journal::Entries& existing);

/// actionMeant() for many rows with few words.
class ActionWordsMet {
public:
    /// What the word means by itself.
    std::optional<std::string_view> meant(std::string_view word);
    /// The same, or what people said of it.
    std::optional<std::string_view> meant(std::string_view word, const WordAnswers& answers);

private:
    std::unordered_map<std::string, std::optional<std::string_view>> met_;
};

/// Whether the item of such a row is a material of the table.
bool takesMaterial(std::optional<std::string_view> action);

/// Names of stacks as they may be written: exactly, or the only one that is comparable.
class StackNames {
public:
    void add(const std::string& name);
    /// nullopt: none, or more than one.
    std::optional<std::string> meant(std::string_view written) const;

private:
    std::set<std::string> exact_;
    std::map<std::string, std::optional<std::string>> comparable_;
};

/// The stacks of a journal and those that the table sets up.
StackNames stackNamesOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const journal::Entries& existing);

/// What begins a stack of which the table only says what was done later: `setup` with the usual sizes on the day of its first row, and the
/// usual bedding where a row needs a tray before one was bedded. `rows`: of that stack, as the journal's rows, in the order of the file.
std::vector<Row> rowsThatBegin(const std::string& stack, std::span<const Row> rows);

/// Name of the household's setting that keeps the answers for tables with this header, and its text (JSON).
QString wordsName(const std::vector<std::string>& header);
QString wordsText(const WordAnswers& answers);
/// Without newStacks: they stand by then. Empty for a text that is none of ours.
WordAnswers wordsFrom(const QString& text);

}
