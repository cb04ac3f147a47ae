// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/basis.h"

#include <array>
#include <optional>
#include <string_view>

/// The closed word lists of the model. Each enum's words, in order, are what the file, CSV and JSON say.
namespace withy::model {

enum class PaperSize { a4, letter };
enum class UnitSystem { metric, imperial };
enum class SpareRule { percent, byRisk };
enum class ForecastLevel { cautious, likely };
enum class BloomShape { daisy, globe, umbel, spike, bell, trumpet, plume, pea, leaf, grass, berry };
enum class HarvestMethod { cut, pull };
enum class HarvestHabit { oneCut, cutAndComeAgain };
enum class HazardKind { sap, skin, poison, pets, pollen, thorns, scent, food };
enum class WeatherKind { measured, forecast };
enum class StockOrigin { leftOver, boughtIn, dried };
enum class ProfileKind { cylinder, tapered, rounded, trough };
enum class RibbonPieceKind { reel, end };
enum class UseRule { perPiece, perStem, perBooking, perTray };
enum class HolderKind { tray, griddedBox, bucket };
enum class PieceKind {
    table,
    handTied,
    buttonhole,
    corsage,
    crown,
    pedestal,
    sheaf,
    spray,
    garland,
    wreath,
    pewEnd,
    budVase,
    basket
};
enum class Purpose { focal, spike, filler, foliage, airy, trailing };
enum class Tier { low, middle, tall };
enum class RibbonFinish { none, plain, knot, bow };
enum class TableShape { round, rectangular };
enum class BookingKind { wedding, charity, funeral, party, regular, fair, church, other };
enum class Standing { enquiry, held, quoted, booked, made, delivered, settled, lost };
enum class PaymentKind { deposit, stage, balance, refund, gift };
enum class SentKind { quote, confirmation, invoice, receipt };
enum class Repeat { never, daily, weekdays, weekly };
enum class Speed { skilled, learning };
enum class RateKind {
    washContainer,
    fillWater,
    cutRibbon,
    tieRibbon,
    cutHundredStems,
    stripHundredStems,
    sortPiece,
    packPiece,
    loadTray,
    placePiece,
    collectPiece,
    checkWaterPiece,
    handOver
};
enum class StepKind {
    washContainers,
    cutRibbon,
    fillWater,
    tieRibbon,
    cut,
    strip,
    drink,
    sort,
    make,
    restCool,
    checkWater,
    pack,
    load,
    drive,
    place,
    handOver,
    driveBack,
    collect,
    washBack
};

template <class E>
struct Words; // specialised below: static constexpr std::array<std::string_view, N> list

#define WITHY_WORDS(E, ...)                                                                                  \
    template <>                                                                                              \
    struct Words<E> {                                                                                        \
        static constexpr auto list = std::to_array<std::string_view>({__VA_ARGS__});                         \
    };

WITHY_WORDS(PaperSize, "A4", "Letter")
WITHY_WORDS(UnitSystem, "metric", "imperial")
WITHY_WORDS(SpareRule, "percent", "by risk")
WITHY_WORDS(ForecastLevel, "cautious", "likely")
WITHY_WORDS(BloomShape, "daisy", "globe", "umbel", "spike", "bell", "trumpet", "plume", "pea", "leaf",
            "grass", "berry")
WITHY_WORDS(HarvestMethod, "cut", "pull")
WITHY_WORDS(HarvestHabit, "one cut", "cut and come again")
WITHY_WORDS(HazardKind, "sap", "skin", "poison", "pets", "pollen", "thorns", "scent", "food")
WITHY_WORDS(WeatherKind, "measured", "forecast")
WITHY_WORDS(StockOrigin, "left over", "bought in", "dried")
WITHY_WORDS(ProfileKind, "cylinder", "tapered", "rounded", "trough")
WITHY_WORDS(RibbonPieceKind, "reel", "end")
WITHY_WORDS(UseRule, "per piece", "per stem", "per booking", "per tray")
WITHY_WORDS(HolderKind, "tray", "gridded box", "bucket")
WITHY_WORDS(PieceKind, "table", "hand-tied", "buttonhole", "corsage", "crown", "pedestal", "sheaf", "spray",
            "garland", "wreath", "pew end", "bud vase", "basket")
WITHY_WORDS(Purpose, "focal", "spike", "filler", "foliage", "airy", "trailing")
WITHY_WORDS(Tier, "low", "middle", "tall")
WITHY_WORDS(RibbonFinish, "none", "plain", "knot", "bow")
WITHY_WORDS(TableShape, "round", "rectangular")
WITHY_WORDS(BookingKind, "wedding", "charity", "funeral", "party", "regular", "fair", "church", "other")
WITHY_WORDS(Standing, "enquiry", "held", "quoted", "booked", "made", "delivered", "settled", "lost")
WITHY_WORDS(PaymentKind, "deposit", "stage", "balance", "refund", "gift")
WITHY_WORDS(SentKind, "quote", "confirmation", "invoice", "receipt")
WITHY_WORDS(Repeat, "never", "daily", "weekdays", "weekly")
WITHY_WORDS(Speed, "skilled", "learning")
WITHY_WORDS(RateKind, "wash container", "fill water", "cut ribbon", "tie ribbon", "cut 100 stems",
            "strip 100 stems", "sort piece", "pack piece", "load tray", "place piece", "collect piece",
            "check water on a piece", "hand over")
WITHY_WORDS(StepKind, "wash containers", "cut ribbon", "fill water", "tie ribbon", "cut", "strip", "drink",
            "sort", "make", "rest cool", "check water", "pack", "load", "drive", "place", "hand over",
            "drive back", "collect", "wash back")
WITHY_WORDS(Basis, "counted", "last seasons", "published", "common practice", "from memory", "mine",
            "computed", "not known")

#undef WITHY_WORDS

template <class E>
constexpr std::string_view wordOf(E value) {
    return Words<E>::list[static_cast<std::size_t>(value)];
}

template <class E>
constexpr std::optional<E> fromWord(std::string_view word) {
    for (std::size_t i = 0; i < Words<E>::list.size(); ++i) {
        if (Words<E>::list[i] == word) return static_cast<E>(i);
    }
    return std::nullopt;
}

} // namespace withy::model
