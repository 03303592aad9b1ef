#pragma once

#include <fstream>
#include <string>
#include <vector>

/// The tables of DEVELOPERS.md, for tests that hold the program to what is written there.
namespace tierloam::tests {

using Row = std::vector<std::string>;

/// Rows of the first table after that line, without its head; empty when there is none. Rows of fewer than `columns` cells end it.
inline std::vector<Row> tableUnder(const std::string& heading, std::size_t columns)
{
    std::ifstream file{TIERLOAM_SOURCE_DIR "/DEVELOPERS.md"};
    std::vector<Row> rows;
    std::string line;
    while (std::getline(file, line) && line != heading) {}
    int heads = 0;
    while (std::getline(file, line)) {
        if (line.empty() || line.front() != '|') {
            if (heads > 0) break;
            continue;
        }
        Row row;
        for (std::size_t at = 1, end = line.find('|', at); end != std::string::npos; at = end + 1, end = line.find('|', at)) row.push_back(line.substr(at, end - at));
        if (row.size() < columns) break;
        if (++heads > 2) rows.push_back(std::move(row));
    }
    return rows;
}

/// What stands in backticks.
inline std::vector<std::string> codesIn(const std::string& cell)
{
    std::vector<std::string> codes;
    for (std::size_t at = cell.find('`'); at != std::string::npos;) {
        const std::size_t end = cell.find('`', at + 1);
        if (end == std::string::npos) break;
        codes.push_back(cell.substr(at + 1, end - at - 1));
        at = cell.find('`', end + 1);
    }
    return codes;
}

}
