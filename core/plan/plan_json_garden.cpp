// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_json_parts.h"

#include "core/plan/cover_plan.h"
#include "core/plan/forecast_plan.h"

#include <array>

namespace withy::plan {

namespace {

using exchange::JsonWriter;

constexpr std::array<std::string_view, 4> datesByWords{"nothing", "calendar", "warmth", "past years"};
constexpr std::array<std::string_view, 5> standingWords{"covered", "tight", "short", "not known", "nothing"};
constexpr std::array<std::string_view, 3> sourceWords{"patch", "store", "offer"};
constexpr std::array<std::string_view, 3> mendWords{"swap", "buy", "fewer pieces"};
constexpr std::array<std::string_view, 2> leftOutWords{"too short", "no day to cut it"};

template <class Enum, std::size_t N>
std::string_view wordOf(const std::array<std::string_view, N>& words, Enum e) {
    return words[static_cast<std::size_t>(e)];
}

std::string_view plantName(const model::Season& season, Id<model::Plant> id) {
    const auto* plant = season.plants.find(id);
    return plant ? std::string_view(plant->name) : std::string_view();
}

void writeDates(JsonWriter& json, std::string_view name, const std::optional<garden::Dates>& dates) {
    json.key(name);
    if (!dates) {
        json.null();
        return;
    }
    json.beginObject().member("first", dates->first).member("peak", dates->peak);
    json.member("last", dates->last).endObject();
}

void writeLevels(JsonWriter& json, std::string_view name, const garden::StemLevels& levels) {
    json.key(name).beginObject().member("cautious", levels.cautious).member("likely", levels.likely);
    json.member("hopeful", levels.hopeful).endObject();
}

/// The days on which any stem may stand, at each level.
void writeDays(JsonWriter& json, const garden::PatchForecast& forecast) {
    json.key("standing").beginArray();
    Day day = forecast.from;
    for (const auto& d : forecast.days) {
        if (d.standing.hopeful.value > 0) {
            json.beginArray().value(day).value(d.standing.cautious);
            json.value(d.standing.likely).value(d.standing.hopeful).endArray();
        }
        day = day + 1;
    }
    json.endArray();
}

void writePatch(JsonWriter& json, const model::Season& season, const PatchOutlook& p) {
    const auto* patch = season.patches.find(p.patch);
    if (!patch) return;
    json.beginObject().member("patch", p.patch).member("label", patch->label);
    json.member("plant", plantName(season, patch->plant)).member("dates_by", wordOf(datesByWords, p.by));
    writeDates(json, "usual", p.usual);
    writeDates(json, "this_year", p.dates);
    json.figure("days_early", {static_cast<double>(p.daysEarly), Unit::days, p.datesWorking});
    json.member("first_cut_hopeful", p.hopefulFirst).member("first_cut_cautious", p.cautiousFirst);
    json.member("hold_days", p.holdDays);
    if (p.forecast) {
        json.figure("expected_stems", {p.forecast->expected, Unit::stems, p.forecast->working});
        writeLevels(json, "total", p.forecast->total);
        json.member("shift_by_walks_days", p.forecast->shiftDays).member("walks_used", p.forecast->walksUsed);
        writeDays(json, *p.forecast);
    }
    json.endObject();
}

void writePieces(JsonWriter& json, const SlotCover& slot, Level level) {
    const auto& at = slot.at[indexOf(level)];
    json.beginArray();
    for (const auto& piece : at.pieces) {
        json.beginObject().member("from", wordOf(sourceWords, piece.source)).member("id", piece.from);
        json.member("plant", piece.plant).member("cut", piece.cut).member("stems", piece.stems).endObject();
    }
    json.endArray();
}

void writeMend(JsonWriter& json, const model::Season& season, const Mend& mend) {
    json.beginObject().member("mend", wordOf(mendWords, mend.kind)).member("stems", mend.stems);
    if (mend.kind == MendKind::fewerPieces) {
        json.member("pieces_fewer", mend.pieces);
    } else {
        json.member("plant", plantName(season, mend.plant));
    }
    if (mend.kind == MendKind::swap) json.member("colour_difference", mend.colourDifference);
    if (mend.kind == MendKind::buy) {
        json.member("bunches", mend.bunches).member("stems_per_bunch", mend.bunch);
        json.member("price", mend.price).member("order_by", mend.orderBy).member("too_late", mend.orderLate);
    }
    json.endObject();
}

void writeSlot(JsonWriter& json, const model::Season& season, const SlotCover& slot) {
    const auto& cautious = slot.at[indexOf(Level::cautious)];
    const auto& likely = slot.at[indexOf(Level::likely)];
    const auto* named = season.slots.find(slot.slot);
    json.beginObject().member("line", slot.line).member("slot", slot.slot);
    json.member("label", named ? std::string_view(named->label) : std::string_view());
    json.member("needed", slot.needed);
    json.key("covered").beginArray().value(cautious.covered).value(likely.covered).endArray();
    json.key("short").beginArray().value(cautious.shortBy).value(likely.shortBy).endArray();
    json.key("pieces_cautious");
    writePieces(json, slot, Level::cautious);
    json.key("pieces_likely");
    writePieces(json, slot, Level::likely);
    json.key("competing").beginArray();
    for (const auto& c : cautious.competitors) {
        json.beginObject().member("booking", c.booking).member("plant", plantName(season, c.plant));
        json.member("stems", c.stems).endObject();
    }
    json.endArray().key("left_out").beginArray();
    for (const auto& l : slot.leftOut) {
        json.beginObject().member("plant", plantName(season, l.plant));
        json.member("why", wordOf(leftOutWords, l.reason)).endObject();
    }
    json.endArray().key("mends").beginArray();
    for (const auto& mend : slot.mends)
        writeMend(json, season, mend);
    json.endArray().endObject();
}

void writeBookingCover(JsonWriter& json, const model::Season& season, const BookingCover& b) {
    json.beginObject().member("booking", b.booking).member("cover", wordOf(standingWords, b.standing));
    json.member("needed", b.needed);
    json.key("covered").beginArray().value(b.covered[0]).value(b.covered[1]).endArray();
    json.key("slots").beginArray();
    for (const auto& slot : b.slots)
        writeSlot(json, season, slot);
    json.endArray().endObject();
}

/// Each level has its own list.
void writeFreeToPromise(JsonWriter& json, const model::Season& season, const CoverPlan& cover) {
    json.key("free_to_promise").beginObject();
    constexpr std::array<std::string_view, levelCount> names{"cautious", "likely"};
    for (std::size_t level = 0; level < levelCount; ++level) {
        json.key(names[level]).beginArray();
        for (const auto& w : cover.freeToPromise[level]) {
            json.beginObject().member("plant", plantName(season, w.plant)).member("monday", w.monday);
            json.member("expected", w.expected).member("in_store", w.inStore);
            json.member("promised", w.promised).member("asked", w.asked).member("free", w.free).endObject();
        }
        json.endArray();
    }
    json.endObject();
}

} // namespace

void writeGarden(JsonWriter& json, const model::Season& season, const Plan& plan) {
    if (!plan.garden) return;
    const auto& garden = *plan.garden;
    json.key("garden").beginObject();
    if (garden.lead) json.figure("runs_early", {garden.lead->daysEarly, Unit::days, garden.lead->working});
    json.member("measured_days", garden.measuredDays).member("forecast_days", garden.forecastDays);
    json.member("days_filled_from_normals", garden.filledDays).key("patches").beginArray();
    for (const auto& [id, patch] : garden.patches)
        writePatch(json, season, patch);
    json.endArray();
    writeFindings(json, garden.findings);
    json.endObject();
}

void writeCover(JsonWriter& json, const model::Season& season, const Plan& plan,
                std::optional<Id<model::Booking>> only) {
    if (!plan.cover) return;
    if (const auto& fault = plan.cover->fault)
        json.key("cover_fault")
            .beginObject()
            .member("field", fault->field)
            .member("id", fault->id)
            .endObject();
    json.key("cover").beginArray();
    for (const auto& [id, cover] : plan.cover->bookings)
        if (!only || *only == id) writeBookingCover(json, season, cover);
    json.endArray();
    writeFreeToPromise(json, season, *plan.cover);
}

} // namespace withy::plan
