// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace withy::ui {

/// Small numbers from a seed, the same on every machine, so that a drawing never fidgets.
/// Lehmer's generator, 16807 modulo 2^31 - 1 (Park and Miller 1988).
class Seeded {
public:
    explicit Seeded(std::uint64_t seed)
        : state_(static_cast<std::uint32_t>((seed * 2654435761U + 12345U) % 2147483646U + 1U)) {
        next();
        next();
    }

    /// From 0 up to, never including, 1.
    double next() {
        state_ = static_cast<std::uint32_t>(std::uint64_t{state_} * 16807U % 2147483647U);
        return (state_ - 1U) / 2147483646.0;
    }

    /// Between -most and most.
    double around(double most) { return (next() - 0.5) * 2 * most; }

private:
    std::uint32_t state_;
};

} // namespace withy::ui
