// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_level.h"
#include "core/model/season.h"
#include "ui/paint/bloom_heads.h"

#include <optional>
#include <vector>

/// What a drawing of a piece needs, as plain values in millimetres: collected from the model, with
/// stand-ins (ours, marked below) where a fact is blank, so that half a design can be drawn already.
namespace withy::ui {

struct VesselDrawing {
    enum class Outline { jar, straight, tapered, bowl, trough, basket, urn };
    Outline outline = Outline::straight;
    double height = 100;    ///< outside
    double width = 80;      ///< outside, widest; a trough's length
    double rim = 80;        ///< outside, at the top
    double base = 80;       ///< outside, at the foot
    double neck = 80;       ///< outside, where a ribbon goes round
    double neckHeight = 14; ///< of the band a ribbon sits on
    double wall = 3;        ///< below nought: the inner sizes are larger than the outer ones
    double floor = 5;       ///< thickness of the bottom; below nought: deeper than it is high
    double waterLevel = 0;  ///< above the inside of the bottom
    double stand = 0;       ///< height of the stand below, a pedestal's
    friend bool operator==(const VesselDrawing&, const VesselDrawing&) = default;

    [[nodiscard]] bool glass() const {
        return outline == Outline::jar || outline == Outline::straight || outline == Outline::tapered;
    }
};

struct RibbonDrawing {
    QColor colour;
    double width = 15;
    int wraps = 1;
    model::RibbonFinish finish = model::RibbonFinish::plain;
    double loop = 0;
    int loops = 2;
    double tail = 0;
    friend bool operator==(const RibbonDrawing&, const RibbonDrawing&) = default;
};

/// The stems of one slot, all of its best plant.
struct SlotDrawing {
    HeadForm form = HeadForm::leaf;
    QColor bloom;
    QColor eye;
    double head = 40; ///< diameter
    double stem = 4;  ///< diameter
    int count = 1;    ///< drawn; see PieceDrawing::left
    model::Tier tier = model::Tier::middle;
    model::Purpose purpose = model::Purpose::filler;
    bool clump = false;
    double grown = 0; ///< millimetres its stems have lengthened in water since they were cut
    friend bool operator==(const SlotDrawing&, const SlotDrawing&) = default;
};

struct PieceDrawing {
    model::PieceKind kind = model::PieceKind::table;
    std::optional<VesselDrawing> vessel; ///< blank: bound
    std::optional<RibbonDrawing> ribbon;
    std::vector<SlotDrawing> slots;
    double lift = 15;
    double low = 60; ///< heads above the rim or the tie
    double middle = 110;
    double tall = 170;
    double belowTie = 130;
    double spread = 200; ///< widest, over all heads
    std::uint64_t seed = 1;
    std::int64_t left = 0; ///< stems beyond what is drawn (see mostStemsDrawn)
    friend bool operator==(const PieceDrawing&, const PieceDrawing&) = default;
};

/// A container by itself, as one for tables is drawn, filled to `waterShare` per cent.
VesselDrawing vesselDrawing(const model::Container& container, double waterShare);

/// More are counted, not drawn: they would be one patch of colour.
inline constexpr int mostStemsDrawn = 240;
/// Sizes are taken between these, in millimetres, so that a slip of the keyboard still draws.
inline constexpr double leastDrawn = 1;
inline constexpr double mostDrawn = 5000;

/// Pure; empty slots draw the container alone. An unknown design gives a plain stand-in jar.
PieceDrawing pieceDrawing(const model::Season& season, Id<model::Design> design);
/// After its stems stood in water for these stretches: those that grow on stand higher by it.
PieceDrawing grownPiece(const model::Season& season, Id<model::Design> design,
                        const std::vector<designs::WaterPhase>& stood);

} // namespace withy::ui
