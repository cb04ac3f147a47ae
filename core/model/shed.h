// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/base/id.h"
#include "core/base/money.h"
#include "core/base/quantity.h"
#include "core/model/words.h"

#include <optional>
#include <string>

namespace withy::model {

/// A jar, vase, bowl or trough. Inner sizes hold water, outer sizes stand on the table.
struct Container {
    Id<Container> id;
    std::string name;
    ProfileKind profile = ProfileKind::cylinder;
    Millimetres innerRim;                   ///< diameter; a trough's inner width
    std::optional<Millimetres> innerBody;   ///< widest diameter; blank: as the rim
    std::optional<Millimetres> innerBase;   ///< diameter; blank: as the rim
    std::optional<Millimetres> innerLength; ///< troughs only
    Millimetres innerDepth;
    std::optional<Millimetres> outerHeight;
    std::optional<Millimetres> outerDiameter;  ///< widest; a trough's outer width
    std::optional<Millimetres> outerNeck;      ///< where the ribbon goes round
    std::optional<Millimetres> neckHeight;     ///< height of the neck band a ribbon can sit on
    std::optional<Millilitres> measuredVolume; ///< wins over the computed one
    std::optional<Grams> emptyWeight;
    std::optional<std::int64_t> owned;
    std::optional<Money> cost;
    std::optional<Money> replacementPrice;
    bool returnable = true;
    std::string notes;
};

struct Ribbon {
    Id<Ribbon> id;
    std::string name;
    std::optional<Colour> colour;
    Millimetres width;
    std::optional<Money> costPerMetre;
};

/// One reel or end in the box.
struct RibbonLength {
    Id<RibbonLength> id;
    Id<Ribbon> ribbon;
    RibbonPieceKind kind = RibbonPieceKind::reel;
    Millimetres length;
    std::string dyeLot;
};

/// Several ribbons shared out over the pieces of a line.
struct RibbonMix {
    Id<RibbonMix> id;
    std::string name;
    bool notTwoAlikeSideBySide = false;
};

struct RibbonMixPart {
    Id<RibbonMixPart> id;
    Id<RibbonMix> mix;
    Id<Ribbon> ribbon;
    double share = 100; ///< percent of the pieces
};

struct Sundry {
    Id<Sundry> id;
    std::string name;
    std::string unit = "piece";
    std::optional<double> onHand;
    std::optional<Money> cost;
    UseRule rule = UseRule::perPiece;
    double amount = 1; ///< used per piece, stem, booking or tray
};

/// Trays carry pieces, gridded boxes and buckets carry stems.
struct Holder {
    Id<Holder> id;
    std::string name;
    HolderKind kind = HolderKind::bucket;
    std::optional<Millimetres> innerLength;
    std::optional<Millimetres> innerWidth;
    std::optional<Millimetres> innerHeight;
    std::optional<Grams> tare;
    std::optional<std::int64_t> owned;
    std::optional<std::int64_t> cells; ///< gridded boxes
    std::optional<Stems> stemsPerCell;
    std::optional<Stems> shortStems;  ///< a bucket's room for stems under 40 cm ...
    std::optional<Stems> middleStems; ///< ... 40 to 60 cm ...
    std::optional<Stems> longStems;   ///< ... and longer
    std::optional<Millilitres> water;
};

struct Vehicle {
    Id<Vehicle> id;
    std::string name;
    std::optional<Millimetres> floorLength;
    std::optional<Millimetres> floorWidth;
    std::optional<double> plateLoadKg; ///< as on the plate; the law of the road decides
};

} // namespace withy::model
