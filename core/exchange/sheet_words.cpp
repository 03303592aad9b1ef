#include "core/exchange/sheet_words.h"

#include "core/exchange/sheet_row.h"
#include "core/exchange/text.h"
#include "core/journal/action.h"
#include "core/materials/bedding.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>
#include <cmath>

namespace tierloam::exchange {

namespace {

/// Counts words in the order in which they are met.
class Met {
public:
    explicit Met(std::vector<OpenWord>& words) : words_{words} {}

    void hear(std::string_view word, int line)
    {
        std::string key = comparable(word);
        const auto [at, isNew] = places_.try_emplace(std::move(key), words_.size());
        if (isNew) words_.push_back({at->first, std::string{word}, line, 0});
        ++words_[at->second].rows;
    }

private:
    std::vector<OpenWord>& words_;
    std::unordered_map<std::string, std::size_t> places_;
};

/// What can stand in the journal before the first tray is bedded.
bool needsNoTray(std::string_view action)
{
    constexpr std::array<std::string_view, 9> early{"setup", "routine", "drain", "flush", "reading", "lid", "event", "note", "retire"};
    return std::ranges::find(early, action) != early.end();
}

std::string_view dayOf(const Row& row) { return std::string_view{row[Column::date]}.substr(0, 10); }

QJsonObject meantAsJson(const WordAnswers::Meant& meant)
{
    QJsonObject made;
    for (const auto& [word, meaning] : meant) made.insert(toQString(word), meaning ? QJsonValue{toQString(*meaning)} : QJsonValue{});
    return made;
}

WordAnswers::Meant meantFrom(const QJsonObject& held)
{
    WordAnswers::Meant meant;
    for (auto at = held.begin(); at != held.end(); ++at) {
        if (at.value().isString()) meant.emplace(at.key().toStdString(), at.value().toString().toStdString());
        else if (at.value().isNull()) meant.emplace(at.key().toStdString(), std::nullopt);
    }
    return meant;
}

}

std::optional<std::string_view> ActionWordsMet::meant(std::string_view word)
{
    if (word.empty()) return std::nullopt;
    const auto [at, isNew] = met_.try_emplace(std::string{word});
    if (!isNew) return at->second;
    if (const auto found = table_.find(comparable(word)); found != table_.end()) at->second = found->second;
    return at->second;
}

std::optional<std::string_view> ActionWordsMet::meant(std::string_view word, const WordAnswers& answers)
{
    const auto known = meant(word);
    if (known || word.empty() || answers.actions.empty()) return known;
    const auto answered = answers.actions.find(comparable(word));
    return answered != answers.actions.end() && answered->second ? meant(*answered->second) : std::nullopt;
}

bool takesMaterial(std::optional<std::string_view> action) { return action == std::string_view{"feed"} || action == std::string_view{"bed"} || action == std::string_view{"cover"}; }

void StackNames::add(const std::string& name)
{
    if (!exact_.insert(name).second) return;
    const auto [at, isNew] = comparable_.try_emplace(comparable(name), name);
    if (!isNew) at->second.reset();
}

std::optional<std::string> StackNames::meant(std::string_view written) const
{
    if (auto name = std::string{written}; exact_.contains(name)) return name;
    const auto found = comparable_.find(comparable(written));
    return found == comparable_.end() ? std::nullopt : found->second;
}

StackNames stackNamesOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const journal::Entries& existing)
{
    StackNames names;
    for (const journal::Entry& entry : existing)
        if (std::holds_alternative<journal::Setup>(entry.action)) names.add(entry.stack);
    const SheetCells cells{columns};
    ActionWordsMet actions;
    for (const csv::Record& record : sheet.rows) {
        if (record.problem != csv::Problem::none) continue;
        const std::string_view stack = cells.of(record, SheetField::stack);
        if (!stack.empty() && actions.meant(cells.of(record, SheetField::action)) == std::string_view{"setup"}) names.add(std::string{stack});
    }
    return names;
}

OpenWords openWordsOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const WordAnswers& answers, std::string_view actionWhereNone, const journal::Entries& existing)
{
    OpenWords open;
    const StackNames names = stackNamesOf(sheet, columns, existing);
    const SheetCells cells{columns};
    ActionWordsMet known;
    Met stacks{open.stacks}, actions{open.actions}, items{open.materials};
    std::unordered_map<std::string, bool> knownNames, knownItems;
    const materials::Table table = materials::Table::withOwn(existing);
    std::set<std::string> own; // which the table brings itself
    for (const csv::Record& record : sheet.rows)
        if (record.problem == csv::Problem::none && known.meant(cells.of(record, SheetField::action)) == std::string_view{"material"}) own.insert(comparable(cells.of(record, SheetField::item)));
    for (const csv::Record& record : sheet.rows) {
        if (record.problem != csv::Problem::none || !mayBeAnEntry(cells, record)) continue;
        const std::string_view said = cells.of(record, SheetField::action);
        const auto action = said.empty() ? std::nullopt : known.meant(said);
        if (!said.empty() && !action) actions.hear(said, record.line);
        const std::string_view stack = cells.of(record, SheetField::stack);
        if (stack.empty() || action == std::string_view{"material"}) continue;
        const auto [at, isNew] = knownNames.try_emplace(std::string{stack}, false);
        if (isNew) at->second = names.meant(stack).has_value();
        if (!at->second) stacks.hear(stack, record.line);
    }
    for (const csv::Record& record : sheet.rows) {
        const std::string_view item = cells.of(record, SheetField::item);
        if (record.problem != csv::Problem::none || item.empty() || !mayBeAnEntry(cells, record)) continue;
        const std::string_view said = cells.of(record, SheetField::action);
        if (!takesMaterial(known.meant(said.empty() ? actionWhereNone : said, answers))) continue;
        const auto [at, isNew] = knownItems.try_emplace(std::string{item}, false);
        if (isNew) at->second = table.find(item) != nullptr || own.contains(comparable(item));
        if (!at->second) items.hear(item, record.line);
    }
    return open;
}

std::vector<Row> rowsThatBegin(const std::string& stack, std::span<const Row> rows)
{
    if (rows.empty()) return {};
    std::vector<const Row*> inOrder;
    for (const Row& row : rows) inOrder.push_back(&row);
    std::ranges::stable_sort(inOrder, {}, [](const Row* row) { return dayOf(*row); });
    Row begins;
    begins[Column::date] = dayOf(*inOrder.front());
    begins[Column::stack] = stack;
    begins[Column::note] = ExchangeText::tr("Taken as usual, since the imported table does not say it; put right what was otherwise").toStdString();
    std::vector<Row> made{begins};
    made.back()[Column::action] = "setup";
    const auto first = std::ranges::find_if(inOrder, [](const Row* row) { return !needsNoTray((*row)[Column::action]); });
    if (first == inOrder.end() || (**first)[Column::action] == "bed") return made;
    const materials::Material* bedding = materials::Table::builtIn().find(materials::usualBedding);
    const Mass laid = materials::beddingForTray(journal::StackSettings{}.area, centimetres(materials::usualBeddingDepthCm), *bedding).asItComes;
    made.push_back(begins);
    made.back()[Column::action] = "bed";
    made.back()[Column::amount] = std::to_string(static_cast<int>(std::round(laid.base() * 100.0) * 10.0)); // whole tens of grams
    made.back()[Column::unit] = std::string{"g"};
    made.back()[Column::item] = materials::usualBedding;
    return made;
}

QString wordsName(const std::vector<std::string>& header)
{
    return QStringLiteral("table_words_%1").arg(headerNumber(header), 16, 16, QLatin1Char{'0'});
}

QString wordsText(const WordAnswers& answers)
{
    const QJsonObject all{{QStringLiteral("stacks"), meantAsJson(answers.stacks)}, {QStringLiteral("actions"), meantAsJson(answers.actions)}, {QStringLiteral("materials"), meantAsJson(answers.materials)}};
    return QString::fromUtf8(QJsonDocument{all}.toJson(QJsonDocument::Compact));
}

WordAnswers wordsFrom(const QString& text)
{
    const QJsonObject all = QJsonDocument::fromJson(text.toUtf8()).object();
    const auto meant = [&](QLatin1StringView name) { return meantFrom(all.value(name).toObject()); };
    return {meant(QLatin1StringView{"stacks"}), meant(QLatin1StringView{"actions"}), meant(QLatin1StringView{"materials"}), {}};
}

}
