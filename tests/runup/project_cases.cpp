// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/runup/project_cases.h"

#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>

namespace withy::runup::tests {

namespace {

using nlohmann::json;

std::optional<std::vector<json>> linesOf(const std::string& file) {
    const char* folder = std::getenv("WITHY_REFERENCE");
    if (folder == nullptr || *folder == '\0') return std::nullopt;
    std::ifstream in(std::string(folder) + "/rcpsp/" + file);
    std::vector<json> out;
    std::string line;
    while (std::getline(in, line))
        if (!line.empty()) out.push_back(json::parse(line));
    return out;
}

Task taskOf(const json& job) {
    Mode mode;
    mode.duration = job.at("d").get<Time>();
    int resource = 0;
    for (const int units : job.at("r").get<std::vector<int>>()) {
        if (units > 0) mode.needs.push_back({resource, units});
        ++resource;
    }
    Task task;
    task.modes = {mode};
    return task;
}

KnownCase thirtyJobs(const json& line) {
    KnownCase out{line.at("id"), {}, line.at("optimum"), 0};
    for (const int units : line.at("capacity").get<std::vector<int>>())
        out.project.resources.push_back(steadyResource(units));
    int number = 0;
    for (const auto& job : line.at("jobs")) {
        out.project.tasks.push_back(taskOf(job));
        for (const int after : job.at("succ").get<std::vector<int>>())
            out.project.follows.push_back({number, after - 1, 0});
        ++number;
    }
    return out;
}

KnownCase busyBlocks(const json& line) {
    KnownCase out{line.at("id"), {}, line.at("optimum"), line.at("optimum_without_busy")};
    int resource = 0;
    for (const int units : line.at("capacity").get<std::vector<int>>()) {
        std::vector<Busy> busy;
        for (const auto& block : line.at("busy"))
            if (block.at("resource").get<int>() == resource)
                busy.push_back({block.at("start"), block.at("end"), block.at("units")});
        out.project.resources.push_back(steadyResource(units, busy));
        ++resource;
    }
    int number = 0;
    for (const auto& job : line.at("tasks")) {
        out.project.tasks.push_back(taskOf(job));
        for (const int before : job.at("pred").get<std::vector<int>>())
            out.project.follows.push_back({before, number, 0});
        ++number;
    }
    return out;
}

template <class Read>
std::optional<std::vector<KnownCase>> cases(const std::string& file, Read read) {
    const auto lines = linesOf(file);
    if (!lines) return std::nullopt;
    std::vector<KnownCase> out;
    for (const auto& line : *lines)
        out.push_back(read(line));
    return out;
}

} // namespace

std::optional<std::vector<KnownCase>> thirtyJobCases() {
    return cases("j30.jsonl", thirtyJobs);
}

std::optional<std::vector<KnownCase>> busyBlockCases() {
    return cases("busy_blocks.jsonl", busyBlocks);
}

} // namespace withy::runup::tests
