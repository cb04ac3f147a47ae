// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdlib>
#include <fstream>
#include <optional>
#include <string>
#include <vector>

namespace withy::garden::tests {

using Row = std::vector<std::string>;

/// Fields of a line without quotes; an empty last field counts.
inline Row fields(const std::string& line) {
    Row row(1);
    for (const char c : line) {
        if (c == ',')
            row.emplace_back();
        else if (c != '\r')
            row.back() += c;
    }
    return row;
}

/// The rows under the header of a data series that is not part of the project; nothing when the
/// environment does not say where the series are kept.
inline std::optional<std::vector<Row>> referenceRows(const std::string& file) {
    const char* folder = std::getenv("WITHY_REFERENCE");
    if (folder == nullptr || *folder == '\0') return std::nullopt;
    std::ifstream in(std::string(folder) + "/" + file);
    std::vector<Row> rows;
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line))
        if (!line.empty()) rows.push_back(fields(line));
    return rows;
}

} // namespace withy::garden::tests
