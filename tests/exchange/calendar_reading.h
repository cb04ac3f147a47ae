// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// Calendar files as other programs read them.
namespace withy::exchange::tests {

struct ReadEvent {
    std::string summary;
    std::string location;
    std::string description;
    std::int64_t sequence = 0;
    std::int64_t from = 0; ///< seconds of universal time
    std::int64_t to = 0;

    friend bool operator==(const ReadEvent&, const ReadEvent&) = default;
};

/// By UID.
using ReadEvents = std::map<std::string, ReadEvent>;

/// Takes files in one after the other with libical: of one UID the later SEQUENCE stays. `complaints` names
/// what libical marks as wrong or against RFC 5546's rules, and UIDs that one file holds twice.
ReadEvents readByLibical(const std::vector<std::string>& files, std::vector<std::string>& complaints);

/// The same by a library of Python, "icalendar" or "vobject"; nothing when it is not installed. What the
/// reader says is wrong comes back as a complaint.
std::optional<ReadEvents> readByPython(const std::string& library, const std::vector<std::string>& files,
                                       std::vector<std::string>& complaints);

} // namespace withy::exchange::tests
