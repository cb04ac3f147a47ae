// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace withy {

/// A typed record id: a PatchId cannot be passed where a PlantId is wanted. 0 means "none yet".
template <class Record>
struct Id {
    std::int64_t value = 0;

    constexpr Id() = default;

    constexpr explicit Id(std::int64_t v) : value(v) {}

    constexpr explicit operator bool() const { return value != 0; }

    friend constexpr auto operator<=>(const Id&, const Id&) = default;
};

} // namespace withy

template <class Record>
struct std::hash<withy::Id<Record>> {
    std::size_t operator()(const withy::Id<Record>& id) const noexcept {
        return std::hash<std::int64_t>{}(id.value);
    }
};
