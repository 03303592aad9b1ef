#include "core/reckoning/kept.h"

#include "core/reckoning/kept_fields.h"

namespace tierloam::reckoning {

namespace {

constexpr std::string_view mark = "tierloam estimates 1\n";

}

std::string keptBytes(const Reckoning& reckoning, const KeptFor& made)
{
    KeptFor key = made;
    Reckoning copy = reckoning; // one list of fields serves both ways, and reading needs them mutable
    return archive::written(mark, key, copy);
}

std::shared_ptr<const Reckoning> fromKept(std::string_view bytes, const KeptFor& wanted)
{
    archive::In in{mark, bytes};
    KeptFor key;
    archive::each(in, key);
    if (!in.good() || !(key == wanted)) return nullptr;
    auto reckoning = std::make_shared<Reckoning>();
    archive::each(in, *reckoning);
    return in.good() && in.atEnd() ? reckoning : nullptr;
}

}
