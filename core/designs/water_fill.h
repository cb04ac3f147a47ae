// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/volume.h"

#include <string>
#include <vector>

/// The neck, the water and the weight of a piece that stands in a container.
/// Problem fields: count, stem_diameter, water_share, lift, measured_volume, stems, empty_weight, stem_mass,
/// and those of the container's shape.
namespace withy::designs {

/// Stems of one thickness in one piece.
struct StemGroup {
    std::int64_t count = 0;
    double diameter = 0; ///< millimetres
    Basis basis = Basis::notKnown;
    std::string subject;
    Origin from{}; ///< of the diameter
};

inline constexpr std::int64_t mostStemsInPiece = 100'000;
inline constexpr double mostStemDiameter = 100;

/// Sum of the stems' sections in square millimetres.
Result<double, Problem> stemSections(const std::vector<StemGroup>& stems);

struct NeckFilling {
    double share = 0; ///< of the neck's area; above 1 the stems do not go in
    Working working;
};

/// Sections of the stems / area of the neck.
Result<NeckFilling, Problem> neckFilling(const ProfileShape& shape, const std::vector<StemGroup>& stems);

struct WaterWanted {
    ProfileShape shape;
    std::optional<Millilitres> measured;  ///< wins over the computed volume
    std::int64_t sharePerTenThousand = 0; ///< of the volume: 7500 is three quarters
    double lift = 0;                      ///< millimetres, stem ends off the bottom
    std::vector<StemGroup> stems;
};

struct WaterFill {
    Millilitres water;   ///< to pour in, with the stems in place; to the nearest
    double filled = 0;   ///< millilitres up to the water line, stems included
    double immersed = 0; ///< millilitres of stem below the water line
    double level = 0;    ///< millimetres above the inside of the bottom
    Working working;
};

/// water = share x volume - stems below the water line. The water line is where the computed shape holds
/// that share of its own volume; stems stand upright from the lift.
Result<WaterFill, Problem> waterFill(const WaterWanted& wanted);

/// What one conditioned stem with its leaves weighs. The default is from memory: weigh some.
struct StemMass {
    double grams = 20;
    Basis basis = Basis::fromMemory;
    std::string source;
};

struct PieceWeight {
    Grams total;                   ///< rounded up
    bool containerUnknown = false; ///< the empty weight is blank: the true total is higher
    Working working;
};

/// Container + water + stems. A millilitre of water counts as one gram (0.998 g at 20 C: on the safe side).
Result<PieceWeight, Problem> pieceWeight(std::optional<Grams> emptyWeight, Millilitres water, Stems stems,
                                         const StemMass& mass = {});

} // namespace withy::designs
