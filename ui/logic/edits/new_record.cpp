// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"

#include <algorithm>
#include <set>

/// What a new record starts with where the model's own defaults would not hold.
namespace withy::ui::edits {

namespace {

using model::FieldInfo;
using model::FieldKind;
using model::Record;

class Maker {
public:
    Maker(const Season& season, TableKind kind, const Given& given)
        : season_(season)
        , kind_(kind)
        , info_(model::tableInfo(kind))
        , given_(given)
        , record_(model::emptyRecord(kind, model::nextIdOf(season, kind))) {}

    Record make() {
        for (const auto& [name, value] : given_)
            set(name, value);
        fillDays();
        fillSizes();
        fillOrder("position");
        if (kind_ == TableKind::patches) fillOrder("place");
        fillFree();
        return record_;
    }

private:
    [[nodiscard]] bool isGiven(std::string_view name) const {
        return std::any_of(given_.begin(), given_.end(),
                           [&](const auto& g) { return g.first == name && !model::isBlank(g.second); });
    }

    [[nodiscard]] Value get(std::string_view name) const {
        return info_.field(name)->get(model::recordPointer(record_));
    }

    void set(std::string_view name, const Value& value) {
        const auto* field = info_.field(name);
        if (!field || model::isBlank(value)) return;
        const bool wantsText = field->kind == FieldKind::text || field->kind == FieldKind::word ||
                               field->kind == FieldKind::day || field->kind == FieldKind::localTime ||
                               field->kind == FieldKind::colour;
        if (wantsText == std::holds_alternative<std::string>(value))
            field->set(model::recordPointer(record_), value);
    }

    /// Days and hours that must be there: the booking's when it belongs to one, else the season's first.
    void fillDays() {
        const LocalTime start = usualTime();
        const LocalTime first = latestOfGivenTimes().value_or(start);
        bool isFirst = true;
        for (const auto& f : info_.fields) {
            if (f.optional || isGiven(f.name)) {
                if (!f.optional && f.kind == FieldKind::localTime) isFirst = false;
                continue;
            }
            if (f.kind == FieldKind::day)
                set(f.name, kind_ == TableKind::walks ? walkDay() : Value(first.day.iso()));
            if (f.kind != FieldKind::localTime) continue;
            const LocalTime at = isFirst ? start : std::max(start, first) + usualLength();
            set(f.name, Value(at.iso()));
            isFirst = false;
        }
    }

    [[nodiscard]] Value walkDay() const { return Value(season_.theSettings().firstDay.iso()); }

    [[nodiscard]] std::optional<LocalTime> latestOfGivenTimes() const {
        std::optional<LocalTime> latest;
        for (const auto& f : info_.fields) {
            if (f.optional || !isGiven(f.name)) continue;
            const Value v = get(f.name);
            const auto* s = std::get_if<std::string>(&v);
            if (!s) continue;
            std::optional<LocalTime> t;
            if (f.kind == FieldKind::localTime) t = LocalTime::parse(*s);
            if (t && (!latest || *latest < *t)) latest = t;
        }
        return latest;
    }

    [[nodiscard]] const model::Booking* ownBooking() const {
        const auto* field = info_.field("booking");
        if (!field) return nullptr;
        const Value v = field->get(model::recordPointer(record_));
        const auto* id = std::get_if<std::int64_t>(&v);
        return id ? season_.bookings.find(Id<model::Booking>(*id)) : nullptr;
    }

    /// Common practice, no source: guests at noon, a drop two hours before them, work from nine.
    [[nodiscard]] LocalTime usualTime() const {
        if (const auto* booking = ownBooking())
            return kind_ == TableKind::drops ? booking->eventStart - Minutes(120) : booking->eventStart;
        const Day day = season_.theSettings().firstDay;
        if (kind_ == TableKind::rounds)
            return {day, static_cast<std::int32_t>(season_.theSettings().workFrom % 1440)};
        return {day, kind_ == TableKind::bookings ? 12 * 60 : 9 * 60};
    }

    [[nodiscard]] Minutes usualLength() const {
        if (kind_ == TableKind::bookings) return Minutes(240);
        if (kind_ == TableKind::rounds) return Minutes(120);
        return Minutes(kind_ == TableKind::helperHours ? 480 : 60);
    }

    /// Sizes the model will not have as nought. Typical ones, common practice with no source; the grower
    /// measures the real thing.
    void fillSizes() {
        static const struct {
            TableKind kind;
            const char* field;
            std::int64_t mm;
        } sizes[] = {{TableKind::containers, "inner_rim", 75}, {TableKind::containers, "inner_depth", 100},
                     {TableKind::ribbons, "width", 25},        {TableKind::ribbonLengths, "length", 1000},
                     {TableKind::venueTables, "length", 1800}, {TableKind::venueTables, "width", 760}};

        for (const auto& size : sizes) {
            if (size.kind == kind_ && !isGiven(size.field)) set(size.field, Value(size.mm));
        }
    }

    /// Whether another record has the same parents: all references of the record that must be there.
    [[nodiscard]] bool isSibling(const void* other) const {
        for (const auto& f : info_.fields) {
            if (f.kind != FieldKind::reference || f.optional || !isParent(f)) continue;
            if (f.get(other) != f.get(model::recordPointer(record_))) return false;
        }
        return true;
    }

    [[nodiscard]] static bool isParent(const FieldInfo& f) {
        return f.name == "design" || f.name == "slot" || f.name == "booking";
    }

    void fillOrder(std::string_view field) {
        const auto* order = info_.field(field);
        if (!order || isGiven(field)) return;
        std::int64_t last = -1;
        model::forEachRecord(season_, kind_, [&](std::int64_t, const void* other) {
            if (isSibling(other)) last = std::max(last, std::get<std::int64_t>(order->get(other)));
        });
        set(field, Value(std::min<std::int64_t>(last + 1, static_cast<std::int64_t>(order->most))));
    }

    /// The first month, kind of work or day that no other record has.
    void fillFree() {
        if (info_.unique.size() != 1 && kind_ != TableKind::weather) return;
        const auto* field = info_.field(info_.unique.front());
        if (isGiven(field->name)) return;
        std::set<Value> taken;
        model::forEachRecord(season_, kind_,
                             [&](std::int64_t, const void* other) { taken.insert(field->get(other)); });
        if (field->kind == FieldKind::whole) {
            for (auto n = static_cast<std::int64_t>(field->least);
                 n <= static_cast<std::int64_t>(field->most); ++n) {
                if (!taken.contains(Value(n))) return set(field->name, Value(n));
            }
        }
        for (const auto word : field->words) {
            if (!taken.contains(Value(std::string(word)))) return set(field->name, Value(std::string(word)));
        }
        if (field->kind == FieldKind::day) {
            Day day = season_.theSettings().firstDay;
            while (taken.contains(Value(day.iso())))
                day = day + 1;
            set(field->name, Value(day.iso()));
        }
    }

    const Season& season_;
    TableKind kind_;
    const model::TableInfo& info_;
    const Given& given_;
    Record record_;
};

} // namespace

model::Record newRecord(const Season& season, TableKind kind, const Given& given) {
    return Maker(season, kind, given).make();
}

} // namespace withy::ui::edits
