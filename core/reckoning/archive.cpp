#include "core/reckoning/archive.h"

namespace tierloam::reckoning::archive {

std::uint64_t checksum(std::string_view bytes)
{
    std::uint64_t hash = 0xcbf29ce484222325u;
    const auto mix = [&](std::uint64_t word) { hash = (hash ^ word) * 0x100000001b3u; };
    std::size_t at = 0;
    for (; at + 8 <= bytes.size(); at += 8) {
        std::uint64_t word = 0;
        std::memcpy(&word, bytes.data() + at, 8);
        mix(word);
    }
    for (; at < bytes.size(); ++at) mix(static_cast<unsigned char>(bytes[at]));
    return hash ^ bytes.size();
}

In::In(std::string_view mark, std::string_view bytes)
{
    std::uint64_t sum = 0;
    good_ = bytes.starts_with(mark) && bytes.size() >= mark.size() + sizeof sum;
    if (!good_) return;
    std::memcpy(&sum, bytes.data() + mark.size(), sizeof sum);
    from_ = bytes.substr(mark.size() + sizeof sum);
    good_ = checksum(from_) == sum;
}

}
