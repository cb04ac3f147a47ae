// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <algorithm>

namespace withy::ui::edits {

namespace {

struct Place {
    std::int64_t id = 0;
    std::int64_t number = 0;
};

using Places = std::vector<Place>;

Places siblings(const Season& season, Ref record, const model::FieldInfo& order,
                const model::FieldInfo* parent) {
    const Value own = parent ? valueOf(season, record, parent->name) : Value{};
    Places all;
    model::forEachRecord(season, record.table, [&](std::int64_t id, const void* other) {
        if (parent && parent->get(other) != own) return;
        all.push_back({id, std::get<std::int64_t>(order.get(other))});
    });
    std::stable_sort(all.begin(), all.end(),
                     [](const Place& a, const Place& b) { return a.number < b.number; });
    return all;
}

/// Raises numbers from `from` on as far as each needs, so that every one is more than the one before.
void raiseFrom(Places& places, std::size_t from) {
    for (std::size_t i = from; i < places.size(); ++i) {
        const std::int64_t least = i == 0 ? 0 : places[i - 1].number + 1;
        if (places[i].number < least) places[i].number = least;
    }
}

/// Numbers for the new order: the moved one takes what is free between its neighbours, or those after it
/// make room; all anew when that would go beyond `most`.
void renumber(Places& places, std::size_t moved, std::int64_t most) {
    const bool last = moved + 1 == places.size();
    const std::int64_t after = last ? most + 1 : places[moved + 1].number;
    const std::int64_t before = moved == 0 ? -1 : places[moved - 1].number;
    places[moved].number = std::clamp(places[moved].number, before + 1, std::max(before + 1, after - 1));
    raiseFrom(places, 0);
    if (places.back().number <= most) return;
    for (std::size_t i = 0; i < places.size(); ++i)
        places[i].number = static_cast<std::int64_t>(i);
}

} // namespace

Edit moveRecord(const Season& season, Ref ref, std::string_view orderField, int toIndex,
                std::string_view parentField) {
    const auto& info = model::tableInfo(ref.table);
    const auto* order = info.field(orderField);
    Edit edit("record.move", {utf8(recordWords(season, ref.table, ref.id))});
    if (!order || !model::hasRecord(season, ref.table, ref.id)) return edit;
    Places places = siblings(season, ref, *order, info.field(parentField));
    const Places old = places;
    const auto at =
        std::find_if(places.begin(), places.end(), [&](const Place& p) { return p.id == ref.id; });
    if (at == places.end()) return edit;
    const auto target = static_cast<std::ptrdiff_t>(
        std::clamp<std::size_t>(static_cast<std::size_t>(std::max(0, toIndex)), 0, places.size() - 1));
    if (at - places.begin() == target) return edit;
    const Place moved = *at;
    places.erase(at);
    places.insert(places.begin() + target, moved);
    renumber(places, static_cast<std::size_t>(target), static_cast<std::int64_t>(order->most));
    for (const auto& place : places) {
        const auto before =
            std::find_if(old.begin(), old.end(), [&](const Place& p) { return p.id == place.id; });
        if (before->number == place.number) continue;
        auto record = *model::findRecord(season, ref.table, place.id);
        order->set(model::recordPointer(record), Value(place.number));
        edit.put(record);
    }
    return edit;
}

} // namespace withy::ui::edits
