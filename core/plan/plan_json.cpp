// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_json.h"

#include "core/exchange/json_out.h"
#include "core/model/schema.h"
#include "core/plan/plan_json_parts.h"

#include <algorithm>

namespace withy::plan {

namespace {

using exchange::JsonWriter;

template <class Number>
Figure figure(Number value, Unit unit, Working working) {
    return {static_cast<double>(value), unit, std::move(working)};
}

std::string_view limitWord(garden::WindowLimit limit) {
    switch (limit) {
    case garden::WindowLimit::conditioning:
        return "conditioning";
    case garden::WindowLimit::opening:
        return "opening";
    case garden::WindowLimit::keepingLife:
        return "keeping life";
    case garden::WindowLimit::storageLimit:
        return "storage limit";
    case garden::WindowLimit::oneYear:
        return "one year";
    }
    return "";
}

void writeWindow(JsonWriter& json, const PlantNeed& need) {
    json.key("cut_window");
    if (!need.window) {
        json.null();
        return;
    }
    const auto& window = need.window->window;
    json.beginObject();
    if (window.times) {
        json.member("earliest", window.times->earliest).member("latest", window.times->latest);
        json.member("earliest_by", limitWord(window.times->earliestBy));
        json.member("latest_by", limitWord(window.times->latestBy));
    } else {
        json.key("impossible").beginObject().member("short_by", window.impossible->shortBy);
        json.member("unit", window.impossible->reason == garden::NoCutReason::lifeTooShort ? "days at 20 C"
                                                                                           : "hours");
        json.endObject();
    }
    json.member("default_facts", need.window->missingFacts).member("working", window.working).endObject();
}

void writeNeed(JsonWriter& json, const model::Season& season, const BookingPlan& plan,
               const PlantNeed& need) {
    json.beginObject().member("plant", need.plant).member("name", season.plants.find(need.plant)->name);
    json.figure("need", figure(need.need.need.value, Unit::stems, need.need.working));
    json.figure("spare", figure(need.need.spare.value, Unit::stems, need.need.working));
    json.figure("to_bunches", figure(need.need.toBunches.value, Unit::stems, need.need.working));
    json.figure("to_cut", figure(need.need.total.value, Unit::stems, need.need.working));
    json.key("uses").beginArray();
    for (const auto& use : need.uses) {
        json.beginObject().member("line", use.line).member("slot", use.slot);
        json.member("slot_label", season.slots.find(use.slot)->label).member("stems", use.stems);
        json.member("cut_length_mm", use.cutLength).endObject();
    }
    json.endArray();
    writeWindow(json, need);
    json.key("round");
    if (need.round >= 0)
        json.value(plan.rounds[static_cast<std::size_t>(need.round)].start);
    else
        json.null();
    json.endObject();
}

void writeKit(JsonWriter& json, const model::Season& season, const KitPlan& kit) {
    json.key("kit").beginObject().key("containers").beginArray();
    for (const auto& c : kit.containers) {
        json.beginObject().member("container", season.containers.find(c.container)->name);
        json.figure("needed",
                    figure(static_cast<double>(c.total.needed) / 1000, Unit::count, c.total.working));
        json.key("missing").value(c.total.missing ? std::optional<std::int64_t>(*c.total.missing / 1000)
                                                  : std::nullopt);
        json.endObject();
    }
    json.endArray().key("ribbons").beginArray();
    for (const auto& r : kit.ribbons) {
        json.beginObject().member("ribbon", season.ribbons.find(r.ribbon)->name);
        json.figure("needed", figure(r.needed.value, Unit::millimetres, r.working));
        json.member("missing_mm", r.missing).key("cuts").beginArray();
        for (const auto& cut : r.cuts)
            json.beginObject()
                .member("line", cut.line)
                .member("each_mm", cut.each)
                .member("pieces", cut.pieces)
                .endObject();
        json.endArray().endObject();
    }
    json.endArray().key("sundries").beginArray();
    for (const auto& s : kit.sundries) {
        json.beginObject().member("sundry", season.sundries.find(s.sundry)->name);
        json.figure("needed",
                    figure(static_cast<double>(s.total.needed) / 1000, Unit::count, s.total.working));
        json.endObject();
    }
    json.endArray().figure("water", figure(kit.water.total.value, Unit::millilitres, kit.water.working));
    if (kit.buckets) json.figure("buckets", figure(kit.buckets->total, Unit::count, kit.buckets->working));
    json.endObject();
}

void writeMoney(JsonWriter& json, const model::Season& season, const BookingPlan& plan) {
    if (!plan.money) return;
    const auto& m = *plan.money;
    json.key("money").beginObject().member("currency", season.theSettings().currency);
    json.figure("income", figure(m.income.total.minor, Unit::minorMoney, m.income.working));
    json.figure("asked", figure(m.split.asked.minor, Unit::minorMoney, m.split.working));
    json.figure("owed", figure(m.owed.owed.minor, Unit::minorMoney, m.owed.working));
    json.figure("gift_value", figure(m.gift.gift.minor, Unit::minorMoney, m.gift.working));
    json.member("lines_without_price", m.income.unpriced).endObject();
}

void writeSteps(JsonWriter& json, const BookingPlan& plan) {
    json.key("run_up").beginArray();
    for (const auto& s : plan.steps) {
        json.beginObject().member("step", model::wordOf(s.kind)).member("from", s.from).member("to", s.to);
        json.figure("minutes", figure(s.minutes.value, Unit::minutes, s.working));
        json.member("count", s.count).endObject();
    }
    json.endArray();
}

void writeDesign(JsonWriter& json, const model::Season& season, const DesignPlan& d) {
    json.beginObject().member("design", d.design).member("name", season.designs.find(d.design)->name);
    json.member("stems_per_piece", d.stemsPerPiece).key("slots").beginArray();
    for (const auto& slot : d.slots) {
        json.beginObject().member("slot", season.slots.find(slot.slot)->label);
        if (slot.cutLength)
            json.figure("cut_length",
                        figure(slot.cutLength->length.value, Unit::millimetres, slot.cutLength->working));
        json.endObject();
    }
    json.endArray();
    if (d.water) json.figure("water", figure(d.water->water.value, Unit::millilitres, d.water->working));
    if (d.neck) json.figure("neck_filled", figure(d.neck->share * 100, Unit::percent, d.neck->working));
    if (d.weight) json.figure("weight", figure(d.weight->total.value, Unit::grams, d.weight->working));
    if (d.ribbon) json.figure("ribbon", figure(d.ribbon->length.value, Unit::millimetres, d.ribbon->working));
    json.figure("minutes", d.minutes);
    writeFindings(json, d.findings);
    json.endObject();
}

void writeBooking(JsonWriter& json, const model::Season& season, const BookingPlan& plan) {
    const auto& b = *season.bookings.find(plan.booking);
    json.beginObject().member("booking", b.id).member("title", b.title);
    json.member("standing", model::wordOf(b.standing)).member("event_start", b.eventStart);
    json.member("make_up_start", plan.makeUpStart).member("make_up_end", plan.makeUpEnd);
    json.member("stems_needed", plan.stemsNeeded).member("stems_to_cut", plan.stemsToCut);
    json.key("needs").beginArray();
    for (const auto& need : plan.needs)
        writeNeed(json, season, plan, need);
    json.endArray();
    writeKit(json, season, plan.kit);
    writeMoney(json, season, plan);
    writeSteps(json, plan);
    writeFindings(json, plan.findings);
    json.endObject();
}

} // namespace

void writeFindings(JsonWriter& json, const std::vector<Finding>& findings) {
    json.key("findings").beginArray();
    for (const auto& f : findings) {
        json.beginObject().member("finding", findingWord(f.code));
        json.member("table", model::tableInfo(f.place.table).name).member("record", f.place.id);
        json.member("subjects", f.subjects).member("numbers", f.numbers).endObject();
    }
    json.endArray();
}

std::string planJson(const model::Season& season, const Plan& plan, std::optional<Id<model::Booking>> only) {
    JsonWriter json;
    json.beginObject().member("season", season.theSettings().seasonName);
    json.key("designs").beginArray();
    for (const auto& [id, design] : plan.designs) {
        if (!only || std::any_of(plan.bookings.at(*only)->lines.begin(), plan.bookings.at(*only)->lines.end(),
                                 [&, wanted = id](const LinePlan& l) { return l.design == wanted; }))
            writeDesign(json, season, *design);
    }
    json.endArray().key("bookings").beginArray();
    for (const auto& [id, booking] : plan.bookings) {
        if (!only || *only == id) writeBooking(json, season, *booking);
    }
    json.endArray();
    writeCover(json, season, plan, only);
    if (!only) writeGarden(json, season, plan);
    return json.endObject().text();
}

} // namespace withy::plan
