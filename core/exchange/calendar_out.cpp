// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar_out.h"

#include "core/exchange/utf8.h"
#include "core/exchange/zone_changes.h"

#include <libical/ical.h>

#include <algorithm>
#include <limits>
#include <map>
#include <memory>
#include <optional>

namespace withy::exchange {

namespace {

struct FreeComponent {
    void operator()(icalcomponent* c) const { icalcomponent_free(c); }
};

// Two turns of the 28 years in which weekdays and dates come together again: a rule that holds in them holds.
// From so early on, for readers that look at a zone in years long past to know it.
constexpr int firstRuleYear = 1971;
constexpr int lastRuleYear = 2040;

using Component = std::unique_ptr<icalcomponent, FreeComponent>;

/// Of two files the later has the larger number, as RFC 5545 (3.8.7.4) asks of a revised event: seconds since
/// 2020 began, which fit the 31 bits of an integer until 2088.
int revisionAt(Instant written) {
    constexpr std::int64_t since = 1'577'836'800;
    return static_cast<int>(
        std::clamp<std::int64_t>(written.seconds - since, 0, std::numeric_limits<std::int32_t>::max()));
}

void add(icalcomponent* component, icalproperty* property) {
    icalcomponent_add_property(component, property);
}

/// What a text of RFC 5545 (3.3.11) may hold: control characters become blanks, broken bytes U+FFFD.
std::string tidy(const std::string& text) {
    std::string out;
    out.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const auto point = codePointAt(text, at);
        if (point.bytes == 0)
            appendUtf8(out, U'\uFFFD');
        else if (point.value == U'\n' || (point.value >= 32 && point.value != 127))
            out.append(text, at, point.bytes);
        else if (point.value != U'\r') // the other half of a line's end
            out += ' ';
        at += std::max<std::size_t>(1, point.bytes);
    }
    return out;
}

icaltimetype clockTime(LocalTime t) {
    icaltimetype out = icaltime_null_time();
    out.year = t.day.year();
    out.month = t.day.month();
    out.day = t.day.dayOfMonth();
    out.hour = t.minute / 60;
    out.minute = t.minute % 60;
    return out;
}

icaltimetype universalTime(Instant t) {
    icaltimetype out = clockTime(Zone::utc().local(t));
    out.second = static_cast<int>(((t.seconds % 60) + 60) % 60);
    out.zone = icaltimezone_get_utc_timezone();
    return out;
}

/// A TZID that names the rule itself, so that no reader takes it for another zone of the name. The letters
/// that would have to be quoted in a parameter are written otherwise.
std::string zoneName(std::string rule) {
    for (char& c : rule) {
        if (c == ',') c = ' ';
        if (c == ':') c = '.';
    }
    return "Withy " + rule;
}

class CalendarWriter {
public:
    explicit CalendarWriter(const CalendarOut& calendar)
        : calendar_(calendar)
        , zone_(Zone::fromPosix(calendar.zoneRule))
        , zoneName_(zoneName(calendar.zoneRule)) {}

    std::string text() {
        addHead();
        if (zone_ && !calendar_.entries.empty()) icalcomponent_add_component(whole_.get(), timezone());
        for (const auto& entry : calendar_.entries)
            icalcomponent_add_component(whole_.get(), event(entry));
        char* written = icalcomponent_as_ical_string_r(whole_.get());
        std::string out = written ? written : "";
        icalmemory_free_buffer(written);
        return out;
    }

private:
    void addHead() {
        add(whole_.get(), icalproperty_new_version("2.0"));
        add(whole_.get(), icalproperty_new_prodid("-//Withy//Withy//EN"));
        add(whole_.get(), icalproperty_new_calscale("GREGORIAN"));
        const std::string name = tidy(calendar_.name);
        if (name.empty()) return;
        add(whole_.get(), icalproperty_new_name(name.c_str())); // RFC 7986, and what was used before it
        icalproperty* older = icalproperty_new_x(name.c_str());
        icalproperty_set_x_name(older, "X-WR-CALNAME");
        add(whole_.get(), older);
    }

    icalcomponent* timezone() {
        icalcomponent* zone = icalcomponent_new_vtimezone();
        add(zone, icalproperty_new_tzid(zoneName_.c_str()));
        std::map<std::pair<int, int>, std::vector<LocalTime>> byOffsets;
        for (const auto& change : zoneChanges(*zone_, firstRuleYear, lastRuleYear))
            byOffsets[{change.offsetBefore, change.offsetAfter}].push_back(change.before);
        if (byOffsets.empty()) {
            const LocalTime newYear{*Day::fromYmd(firstRuleYear, 1, 1), 0};
            const int offset = offsetAt(*zone_, zone_->instantNear(newYear));
            byOffsets[{offset, offset}].push_back(newYear);
        }
        for (const auto& [offsets, onsets] : byOffsets)
            icalcomponent_add_component(zone, observance(offsets.first, offsets.second, onsets));
        return zone;
    }

    static icalcomponent* observance(int before, int after, const std::vector<LocalTime>& onsets) {
        icalcomponent* part = after > before ? icalcomponent_new_xdaylight() : icalcomponent_new_xstandard();
        add(part, icalproperty_new_dtstart(clockTime(onsets.front())));
        const std::string rule = onsets.size() > 1 ? yearlyRule(onsets) : std::string();
        if (!rule.empty())
            add(part, icalproperty_new_rrule(icalrecurrencetype_from_string(rule.c_str())));
        else
            for (auto at = onsets.begin() + 1; at != onsets.end(); ++at)
                add(part, icalproperty_new_rdate({clockTime(*at), icalperiodtype_null_period()}));
        add(part, icalproperty_new_tzoffsetfrom(before * 60));
        add(part, icalproperty_new_tzoffsetto(after * 60));
        return part;
    }

    /// Of an hour that comes twice readers take now the first, now the second.
    [[nodiscard]] bool twice(LocalTime t) const {
        const auto instant = zone_->instant(t);
        return !instant.ok() && instant.error() == ClockTrouble::repeated;
    }

    /// In the place's time, or in universal time where that would leave a doubt.
    void addTimes(icalcomponent* event, const CalendarEntry& entry) const {
        const auto zoned = [&](LocalTime t, icalproperty* (*property)(icaltimetype)) {
            if (!zone_) return property(clockTime(t));
            const Instant instant = zone_->instantNear(t);
            if (twice(entry.from) || twice(entry.to)) return property(universalTime(instant));
            icalproperty* out = property(clockTime(zone_->local(instant)));
            icalproperty_add_parameter(out, icalparameter_new_tzid(zoneName_.c_str()));
            return out;
        };
        add(event, zoned(entry.from, icalproperty_new_dtstart));
        const bool lasts =
            zone_ ? zone_->instantNear(entry.to) > zone_->instantNear(entry.from) : entry.to > entry.from;
        if (lasts) add(event, zoned(entry.to, icalproperty_new_dtend));
    }

    icalcomponent* event(const CalendarEntry& entry) const {
        icalcomponent* event = icalcomponent_new_vevent();
        add(event, icalproperty_new_uid(tidy(entry.uid).c_str()));
        add(event, icalproperty_new_dtstamp(universalTime(calendar_.written)));
        add(event, icalproperty_new_lastmodified(universalTime(calendar_.written)));
        add(event, icalproperty_new_sequence(revisionAt(calendar_.written)));
        addTimes(event, entry);
        add(event, icalproperty_new_summary(tidy(entry.summary).c_str()));
        if (!entry.location.empty()) add(event, icalproperty_new_location(tidy(entry.location).c_str()));
        if (!entry.description.empty())
            add(event, icalproperty_new_description(tidy(entry.description).c_str()));
        if (!entry.category.empty()) add(event, icalproperty_new_categories(tidy(entry.category).c_str()));
        add(event, icalproperty_new_status(entry.tentative ? ICAL_STATUS_TENTATIVE : ICAL_STATUS_CONFIRMED));
        add(event, icalproperty_new_transp(entry.takesNoTime ? ICAL_TRANSP_TRANSPARENT : ICAL_TRANSP_OPAQUE));
        return event;
    }

    const CalendarOut& calendar_;
    std::optional<Zone> zone_;
    std::string zoneName_;
    Component whole_{icalcomponent_new_vcalendar()};
};

} // namespace

std::string calendarText(const CalendarOut& calendar) {
    return CalendarWriter(calendar).text();
}

} // namespace withy::exchange
