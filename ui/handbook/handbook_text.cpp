#include "ui/handbook/handbook_text.h"

#include <algorithm>
#include <vector>

namespace tierloam::handbook {

std::span<const Page> handbookPages()
{
    static const std::vector<Page> all = [] {
        std::vector<Page> pages;
        for (const auto part : {carePages(), turnPages(), yearPages(), knowledgePages()}) pages.insert(pages.end(), part.begin(), part.end());
        return pages;
    }();
    return all;
}

const Page* pageWithId(std::string_view id)
{
    const auto pages = handbookPages();
    const auto found = std::ranges::find_if(pages, [&](const Page& page) { return id == page.id; });
    return found == pages.end() ? nullptr : &*found;
}

}
