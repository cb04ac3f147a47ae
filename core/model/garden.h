// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/money.h"
#include "core/base/quantity.h"
#include "core/model/words.h"

#include <optional>
#include <string>

namespace withy::model {

/// Something cut: a variety with its cutting, conditioning and keeping facts. A blank fact is not
/// known, which is never the same as nought. Where each fact comes from stands in PlantFact.
struct Plant {
    Id<Plant> id;
    std::string name;
    std::string botanicalName;
    bool focal = false;
    bool spike = false;
    bool filler = false;
    bool foliage = false;
    bool airy = false;
    bool trailing = false;
    std::optional<Colour> colour1;
    std::optional<Colour> colour2;
    std::optional<Colour> colour3;
    BloomShape shape = BloomShape::daisy;
    std::optional<Millimetres> stemLengthMin;
    std::optional<Millimetres> stemLengthMax;
    std::optional<double> stemDiameterMm;
    std::optional<double> headDiameterMm;
    std::string stageToCut;
    std::optional<double> openingHours;    ///< from the stage to cut until open, at 20 C
    std::optional<double> vaseLifeMinDays; ///< at 20 C
    std::optional<double> vaseLifeMaxDays;
    std::optional<double> q10;
    std::optional<double> storageDays;    ///< the handbook's limit ...
    std::optional<double> storageCelsius; ///< ... at this temperature
    std::optional<double> conditioningHoursMin;
    std::optional<double> conditioningHoursMax;
    std::string conditioning;             ///< how: deep water, sear, dark ...
    std::optional<double> uptakeMlPerDay; ///< water drunk by a stem at 20 C
    std::optional<double> growsOnMmPerDay;
    std::optional<bool> ethyleneSensitive;
    std::optional<double> holdDays; ///< how long a ready stem may wait on the plant
    HarvestHabit habit = HarvestHabit::oneCut;
    std::optional<std::int64_t> regrowthDays;
    std::optional<double> stemsPerPlant;
    std::optional<Stems> bunch; ///< blank: not bunched
    std::optional<double> cuttingStemsPerHour;
    HarvestMethod method = HarvestMethod::cut;
    std::optional<double> lossPercent;
    std::optional<double> baseCelsius;
    std::optional<double> ceilingCelsius;
    std::optional<double> heatShare; ///< 0 flowers by the calendar, 1 by warmth alone
    std::optional<double> daysToFlower;
    std::optional<double> heatUnitsToFlower; ///< degree days above the base
    std::optional<double> germinationPercent;
    std::optional<double> weeksUnderCover;
    std::optional<Millimetres> spacing;
    std::optional<Money> pricePerStem;
    std::optional<Money> costPerStem;
    std::string notes;
};

/// Where one fact of a plant comes from.
struct PlantFact {
    Id<PlantFact> id;
    Id<Plant> plant;
    std::string fact; ///< the Plant field's name, "vase_life_min_days"
    Basis basis = Basis::mine;
    std::string source;
    std::string remark; ///< what differs between sources, what the figure was measured on
};

/// A caution that goes with a plant; shown where the work happens. Never a statement that all is safe.
struct PlantHazard {
    Id<PlantHazard> id;
    Id<Plant> plant;
    HazardKind kind = HazardKind::skin;
    std::string text;
    Basis basis = Basis::commonPractice;
    std::string source;
};

/// Where a plant grows.
struct Patch {
    Id<Patch> id;
    Id<Plant> plant;
    std::string label;
    std::int64_t place = 0; ///< order on the walk
    std::optional<std::int64_t> plants;
    std::optional<Millimetres> bedLength;
    std::optional<Stems> expectedStems;
    std::optional<Day> firstCut; ///< usual, in this season's calendar
    std::optional<Day> peakCut;
    std::optional<Day> lastCut;
    std::optional<Day> hardCut; ///< when it was cut down to come again (Plant::regrowthDays)
    bool underCover = false;
    std::string wayThere; ///< "40 paces on, past the water butt"
    std::string notes;
};

/// A count made in the garden. Blank counts were not taken; they are not noughts.
struct Walk {
    Id<Walk> id;
    Day date;
    Id<Patch> patch;
    std::optional<Stems> readyNow;
    std::optional<Stems> withinThreeDays;
    std::optional<Stems> withinWeek;
    std::string remark;
};

struct Weather {
    Id<Weather> id;
    Day date;
    double minCelsius = 0;
    double maxCelsius = 0;
    WeatherKind kind = WeatherKind::measured;
};

/// When a patch's or plant's first stems were really cut in a past year.
struct PastBloom {
    Id<PastBloom> id;
    Id<Plant> plant;
    std::optional<Id<Patch>> patch;
    Day firstCut;
    std::optional<Day> lastCut;
    std::optional<Stems> stems;
};

/// Stems already cut or bought and standing in the store.
struct StockLot {
    Id<StockLot> id;
    Id<Plant> plant;
    Stems stems;
    StockOrigin origin = StockOrigin::leftOver;
    Day readyFrom;
    std::optional<Day> useBy;
    std::optional<Money> unitCost;
    std::string supplier;
    bool homeGrown = false; ///< only stems so marked may be called our own
};

} // namespace withy::model
