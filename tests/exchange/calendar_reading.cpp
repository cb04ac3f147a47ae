// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/calendar_reading.h"

#include <libical/ical.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <set>

#include <sys/wait.h>
#include <unistd.h>

namespace withy::exchange::tests {

namespace {

std::string shown(const char* words) {
    return words ? words : "";
}

/// Seconds of universal time by the zones that the file itself brings.
std::int64_t secondsOf(icalcomponent* whole, icalproperty* property, icaltimetype time) {
    icalparameter* tzid = icalproperty_get_first_parameter(property, ICAL_TZID_PARAMETER);
    icaltimezone* zone = tzid ? icalcomponent_get_timezone(whole, icalparameter_get_tzid(tzid)) : nullptr;
    if (!zone) zone = icaltimezone_get_utc_timezone();
    return icaltime_as_timet_with_zone(time, zone);
}

ReadEvent eventOf(icalcomponent* whole, icalcomponent* event) {
    ReadEvent out;
    out.summary = shown(icalcomponent_get_summary(event));
    out.location = shown(icalcomponent_get_location(event));
    out.description = shown(icalcomponent_get_description(event));
    out.sequence = icalcomponent_get_sequence(event);
    icalproperty* start = icalcomponent_get_first_property(event, ICAL_DTSTART_PROPERTY);
    out.from = secondsOf(whole, start, icalproperty_get_dtstart(start));
    icalproperty* end = icalcomponent_get_first_property(event, ICAL_DTEND_PROPERTY);
    out.to = end ? secondsOf(whole, end, icalproperty_get_dtend(end)) : out.from;
    return out;
}

void readOne(const std::string& file, ReadEvents& events, std::vector<std::string>& complaints) {
    const std::unique_ptr<icalcomponent, void (*)(icalcomponent*)> whole(
        icalparser_parse_string(file.c_str()), icalcomponent_free);
    if (!whole) {
        complaints.emplace_back("no calendar at all");
        return;
    }
    if (const int errors = icalcomponent_count_errors(whole.get()); errors > 0)
        complaints.emplace_back(std::to_string(errors) + " errors marked");
    if (!icalrestriction_check(whole.get())) complaints.emplace_back("against the restrictions");
    std::set<std::string> seen;
    for (icalcomponent* e = icalcomponent_get_first_component(whole.get(), ICAL_VEVENT_COMPONENT); e;
         e = icalcomponent_get_next_component(whole.get(), ICAL_VEVENT_COMPONENT)) {
        const std::string uid = shown(icalcomponent_get_uid(e));
        if (!seen.insert(uid).second) complaints.emplace_back("twice in one file: " + uid);
        const ReadEvent event = eventOf(whole.get(), e);
        const auto known = events.find(uid);
        if (known == events.end() || known->second.sequence <= event.sequence) events[uid] = event;
    }
}

/// A folder that goes when it goes out of scope.
struct Folder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("withy calendar " + std::to_string(getpid()));

    Folder() { std::filesystem::create_directories(path); }

    ~Folder() { std::filesystem::remove_all(path); }

    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
};

} // namespace

ReadEvents readByLibical(const std::vector<std::string>& files, std::vector<std::string>& complaints) {
    ReadEvents events;
    for (const auto& file : files)
        readOne(file, events, complaints);
    return events;
}

std::optional<ReadEvents> readByPython(const std::string& library, const std::vector<std::string>& files,
                                       std::vector<std::string>& complaints) {
    const Folder folder;
    // Debian's own interpreter, for which its packages are.
    const std::string python = std::filesystem::exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";
    std::string command = python + " '" WITHY_CALENDAR_READER "' " + library;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const auto path = folder.path / (std::to_string(i) + ".ics");
        std::ofstream(path, std::ios::binary) << files[i];
        command += " '" + path.string() + "'";
    }
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    if (!pipe) return std::nullopt;
    std::string said;
    std::array<char, 4096> part{};
    for (std::size_t n = 0; (n = fread(part.data(), 1, part.size(), pipe)) > 0;)
        said.append(part.data(), n);
    const int code = pclose(pipe);
    if (WIFEXITED(code) && WEXITSTATUS(code) == 77) return std::nullopt;
    if (code != 0) complaints.emplace_back(said);
    ReadEvents events;
    for (std::size_t at = 0; code == 0 && at < said.size();) {
        const auto end = std::min(said.find('\n', at), said.size());
        const auto line = nlohmann::json::parse(said.substr(at, end - at), nullptr, false);
        at = end + 1;
        if (line.is_discarded()) {
            complaints.emplace_back(said);
            break;
        }
        events[line["uid"]] = {line["summary"],
                               line["location"],
                               line["description"],
                               line["sequence"],
                               static_cast<std::int64_t>(line["from"].get<double>()),
                               static_cast<std::int64_t>(line["to"].get<double>())};
    }
    return events;
}

} // namespace withy::exchange::tests
