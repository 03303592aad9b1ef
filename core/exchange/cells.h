#pragma once

#include "core/exchange/fault.h"
#include "core/exchange/row.h"
#include "core/store/words.h"

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace tierloam::exchange {

/// A range of numbers as the format states it.
struct Range {
    double low = 0.0;
    double high = 0.0;
    bool lowIncluded = true;

    bool has(double value) const { return (lowIncluded ? value >= low : value > low) && value <= high; }
    QString text() const;    ///< "0 to 100", "above 0, at most 1000"
};

enum class Zero { allowed, refused };

/// Takes the cells of one row apart for one action. The first thing that is wrong is kept as the fault; from then on what is
/// returned is of no use, and the caller drops it. Each reader asks for exactly what its action may hold.
class Cells {
public:
    explicit Cells(const Row& row) : row_{row} {}

    const std::optional<Fault>& fault() const { return fault_; }
    const std::string& text(Column column) const { return row_[column]; }
    void refuse(Column column, const QString& allowed);

    /// The cell must be empty; `why` says what the action does not have.
    void nothing(Column column, const QString& why);
    /// Amount and unit both empty.
    void noAmount();
    bool hasAmount() const { return !row_[Column::amount].empty() || !row_[Column::unit].empty(); }
    Amount mass(Zero zero = Zero::refused);
    Amount volume(Zero zero = Zero::refused);
    Amount massOrVolume();
    Amount number();         ///< a whole number of unit `count`

    /// Takes the detail apart; keys other than these are a fault. To be called before any of the readers below.
    void keys(std::initializer_list<std::string_view> known);
    bool has(std::string_view key) const { return pairs_.contains(key); }
    bool noPairs() const { return pairs_.empty(); }
    std::optional<double> decimal(std::string_view key, Range range);
    std::optional<int> whole(std::string_view key, int low, int high);
    std::optional<Share> percent(std::string_view key, Range range);
    std::optional<bool> yesNo(std::string_view key, std::string_view yes, std::string_view no);
    std::optional<Day> date(std::string_view key);
    std::optional<std::uint64_t> hex(std::string_view key);
    std::optional<std::string> word(std::string_view key);
    template <class Choice>
    std::optional<Choice> choice(std::string_view key)
    {
        const auto value = word(key);
        if (!value) return std::nullopt;
        const auto found = store::choiceNamed<Choice>(*value);
        if (!found) refusePair(key, joined(store::Words<Choice>::all));
        return found;
    }
    void refusePair(std::string_view key, const QString& allowedValue);

    /// Words of a fixed list, of which none holds a comma.
    template <class Names>
    static QString joined(const Names& names)
    {
        QString text;
        for (const std::string_view name : names) append(text, name);
        return text;
    }
    /// Names that people or the table of materials gave, which may hold commas: «bread, white», «bread, whole wheat».
    template <class Names>
    static QString quoted(const Names& names)
    {
        QString text;
        for (const std::string_view name : names) appendQuoted(text, name);
        return text;
    }

private:
    Amount amount(bool masses, bool volumes, Zero zero);
    static void append(QString& list, std::string_view name);
    static void appendQuoted(QString& list, std::string_view name);

    const Row& row_;
    std::map<std::string_view, std::string_view> pairs_; ///< views into the detail cell
    std::optional<Fault> fault_;
};

}
