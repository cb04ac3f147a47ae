// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/one_length.h"

#include <cstdlib>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace withy::cutting::tests {

/// A published instance: E. Falkenauer's u and t (OR-Library), A. Scholl's 1 and 2, and generated ones.
struct Instance {
    std::string name;
    std::string family;
    Millimetres roll;
    std::int64_t optimum = 0;
    std::vector<PieceWish> pieces;
};

inline void readInstances(const std::string& file, std::vector<Instance>& all) {
    std::ifstream in(file);
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line)) {
        std::vector<std::string> fields;
        std::istringstream row(line);
        for (std::string field; std::getline(row, field, ',');)
            fields.push_back(field);
        Instance instance{
            fields.at(0), fields.at(1), Millimetres(std::stoll(fields.at(2))), std::stoll(fields.at(4)), {}};
        std::istringstream lengths(fields.at(8));
        for (std::int64_t length = 0; lengths >> length;)
            instance.pieces.push_back({Millimetres(length), 1});
        all.push_back(std::move(instance));
    }
}

/// Nothing when the environment does not say where the series are kept.
inline std::optional<std::vector<Instance>> cuttingInstances() {
    const char* folder = std::getenv("WITHY_REFERENCE");
    if (folder == nullptr || *folder == '\0') return std::nullopt;
    std::vector<Instance> all;
    for (const char* file : {"instances.csv", "generated.csv"})
        readInstances(std::string(folder) + "/cutting/" + file, all);
    return all;
}

} // namespace withy::cutting::tests
