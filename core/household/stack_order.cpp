#include "core/household/stack_order.h"

#include <QStringList>

#include <algorithm>

namespace tierloam::household {

QString orderText(const StackOrder& order)
{
    QStringList lines;
    for (const std::string& name : order) lines << QString::fromStdString(name);
    return lines.join(u'\n');
}

StackOrder orderFrom(const QString& text)
{
    StackOrder order;
    for (const QString& line : text.split(u'\n', Qt::SkipEmptyParts)) {
        const std::string name = line.toStdString();
        if (std::find(order.begin(), order.end(), name) == order.end()) order.push_back(name);
    }
    return order;
}

StackOrder ordered(const StackOrder& names, const StackOrder& wished)
{
    StackOrder result = names;
    const auto place = [&](const std::string& name) { return std::find(wished.begin(), wished.end(), name) - wished.begin(); };
    std::stable_sort(result.begin(), result.end(), [&](const std::string& a, const std::string& b) { return place(a) < place(b); });
    return result;
}

StackOrder movedTo(StackOrder names, const std::string& stack, std::size_t place)
{
    const auto found = std::find(names.begin(), names.end(), stack);
    if (found == names.end()) return names;
    names.erase(found);
    names.insert(names.begin() + static_cast<std::ptrdiff_t>(std::min(place, names.size())), stack);
    return names;
}

}
