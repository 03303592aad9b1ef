#include "core/reckoning/expected_reading.h"

#include "core/model/random.h"

namespace tierloam::reckoning {

std::vector<Expectation> expectations(const Population& members, const Look& look, Crew& crew)
{
    std::vector<Expectation> expected(static_cast<std::size_t>(members.stack.members()));
    crew.each(static_cast<int>(members.stack.blocks.size()), [&](int block) {
        for (int i = block * model::lanes; i < (block + 1) * model::lanes; ++i) {
            const std::size_t m = static_cast<std::size_t>(i);
            expected[m] = expectation(look, model::MemberOf{members.stack, i}, members.ranOffBefore[m]);
        }
    });
    return expected;
}

Band expectedReading(std::span<const Expectation> expected, Weights weights, std::uint64_t stackKey, int day, int number)
{
    const std::uint64_t stream = model::streamOf(stackKey, day, model::Use::look, number);
    std::vector<double> values;
    values.reserve(expected.size());
    for (const Expectation& e : expected) {
        const int i = static_cast<int>(values.size());
        values.push_back(e.shape == Expectation::Shape::atLeast ? e.centre : drawn(e, model::standardNormal(stream, i), model::uniform(stream + 1, i)));
    }
    return band(values, weights);
}

}
