#include "core/model/members.h"

namespace tierloam::model {

namespace {

/// Blocks are made of rows of 64 doubles and of nothing else, so that members can be copied without knowing what they hold.
template <class Block>
constexpr std::size_t rowsOf()
{
    static_assert(sizeof(Block) % sizeof(Members) == 0);
    return sizeof(Block) / sizeof(Members);
}

template <class Block>
Members* rows(Block& block) { return reinterpret_cast<Members*>(&block); }
template <class Block>
const Members* rows(const Block& block) { return reinterpret_cast<const Members*>(&block); }

template <class Part>
void inheritPart(std::vector<Ensemble::Block>& to, const std::vector<Ensemble::Block>& from, std::span<const int> ancestors, Part part)
{
    using Block = std::remove_reference_t<decltype(part(to.front()))>;
    for (std::size_t r = 0; r < rowsOf<Block>(); ++r)
        for (std::size_t i = 0; i < ancestors.size(); ++i) {
            const std::size_t a = static_cast<std::size_t>(ancestors[i]);
            rows(part(to[i / lanes]))[r][i % lanes] = rows(part(from[a / lanes]))[r][a % lanes];
        }
}

}

void inherit(Ensemble& ensemble, std::span<const int> ancestors)
{
    const std::vector<Ensemble::Block> before = ensemble.blocks;
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.standing; });
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.parameters; });
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.stack; });
    for (std::size_t t = 0; t < ensemble.shapes.size(); ++t)
        inheritPart(ensemble.blocks, before, ancestors, [t](auto& block) -> auto& { return block.trays[t]; });
}

std::vector<double> standings(const Ensemble& ensemble)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    std::vector<double> z(members * parameterCount);
    for (std::size_t r = 0; r < parameterCount; ++r)
        for (std::size_t i = 0; i < members; ++i) z[r * members + i] = ensemble.blocks[i / lanes].standing.z[r][i % lanes];
    return z;
}

void setStandings(Ensemble& ensemble, std::span<const double> z)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    for (std::size_t r = 0; r < parameterCount; ++r)
        for (std::size_t i = 0; i < members; ++i) ensemble.blocks[i / lanes].standing.z[r][i % lanes] = z[r * members + i];
    for (Ensemble::Block& block : ensemble.blocks) setFrom(block.parameters, block.standing, ensemble.species);
}

}
