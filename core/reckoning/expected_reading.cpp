#include "core/reckoning/expected_reading.h"

#include "core/model/random.h"

namespace tierloam::reckoning {

Band expectedReading(const Population& members, const Look& look, int day, int number)
{
    const std::uint64_t stream = model::streamOf(members.stack.key, day, model::Use::look, number);
    std::vector<double> values(static_cast<std::size_t>(members.stack.members()));
    for (int i = 0; i < members.stack.members(); ++i) {
        const std::size_t m = static_cast<std::size_t>(i);
        const Expectation e = expectation(look, model::MemberOf{members.stack, i}, members.ranOffBefore[m]);
        values[m] = e.shape == Expectation::Shape::atLeast ? e.centre : drawn(e, model::standardNormal(stream, i), model::uniform(stream + 1, i));
    }
    return band(values, members.shares());
}

}
