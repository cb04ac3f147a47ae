// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"
#include "core/model/rules.h"

namespace withy::model {

namespace {

/// Gathers the complaints about one record.
class Judge {
public:
    Judge(const RuleContext& context, TableKind kind, std::int64_t id, Problems& problems)
        : season(context.season)
        , context_(context)
        , table_(tableInfo(kind).name)
        , id_(id)
        , problems_(problems) {}

    void say(ProblemCode code, std::string field, std::string value, std::vector<std::string> details = {}) {
        problems_.push_back({code, table_, id_, std::move(field), std::move(value), std::move(details)});
    }

    /// Both given and in the wrong order.
    template <class T, class Show>
    void ordered(const std::optional<T>& low, const std::optional<T>& high, const char* lowName,
                 const char* highName, Show show) {
        if (low && high && *high < *low)
            say(ProblemCode::lessThan, highName, show(*high), {lowName, show(*low)});
    }

    /// The time exists once on the place's clocks.
    void onTheClock(const char* field, const LocalTime& t) {
        if (!context_.zone) return;
        const auto instant = context_.zone->instant(t);
        if (instant.ok()) return;
        say(instant.error() == ClockTrouble::skipped ? ProblemCode::skippedHour : ProblemCode::repeatedHour,
            field, t.iso());
    }

    void endsAfterStart(const LocalTime& from, const LocalTime& to, const char* toName, bool mayBeEqual) {
        if (to < from || (!mayBeEqual && to == from))
            say(ProblemCode::endBeforeStart, toName, to.iso(), {from.iso()});
    }

    void inSeason(const char* field, Day day, const std::string& shown) {
        const auto& s = season.theSettings();
        if (day < s.firstDay || s.lastDay < day)
            say(ProblemCode::outsideSeason, field, shown, {s.firstDay.iso(), s.lastDay.iso()});
    }

    const Season& season;

private:
    const RuleContext& context_;
    std::string table_;
    std::int64_t id_;
    Problems& problems_;
};

std::string mm(Millimetres v) {
    return std::to_string(v.value);
}

std::string number(double v) {
    std::string text = std::to_string(v);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string iso(Day d) {
    return d.iso();
}

void rules(Judge& j, const Settings& s) {
    if (s.id.value != 1) j.say(ProblemCode::duplicate, "id", std::to_string(s.id.value), {"1"});
    if (s.lastDay < s.firstDay)
        j.say(ProblemCode::endBeforeStart, "last_day", s.lastDay.iso(), {s.firstDay.iso()});
    else if (s.lastDay - s.firstDay > 550)
        j.say(ProblemCode::aboveMost, "last_day", s.lastDay.iso(), {(s.firstDay + 550).iso(), "day"});
    if (!Zone::fromPosix(s.zoneRule)) j.say(ProblemCode::badZone, "zone_rule", s.zoneRule);
    if (!minorDigits(s.currency)) j.say(ProblemCode::badCurrency, "currency", s.currency);
    if (s.workTo <= s.workFrom)
        j.say(ProblemCode::lessThan, "work_to", std::to_string(s.workTo),
              {"work_from", std::to_string(s.workFrom)});
}

void rules(Judge& j, const MonthNormal& n) {
    if (n.maxCelsius < n.minCelsius)
        j.say(ProblemCode::lessThan, "max_celsius", number(n.maxCelsius),
              {"min_celsius", number(n.minCelsius)});
}

void rules(Judge& j, const Plant& p) {
    j.ordered(p.stemLengthMin, p.stemLengthMax, "stem_length_min", "stem_length_max", mm);
    j.ordered(p.vaseLifeMinDays, p.vaseLifeMaxDays, "vase_life_min_days", "vase_life_max_days", number);
    j.ordered(p.conditioningHoursMin, p.conditioningHoursMax, "conditioning_hours_min",
              "conditioning_hours_max", number);
    j.ordered(p.baseCelsius, p.ceilingCelsius, "base_celsius", "ceiling_celsius", number);
}

void rules(Judge& j, const PlantFact& f) {
    const auto* field = tableInfo(TableKind::plants).field(f.fact);
    if (!field) j.say(ProblemCode::notAWord, "fact", f.fact, {"a field of plant"});
}

void rules(Judge& j, const Patch& p) {
    j.ordered(p.firstCut, p.peakCut, "first_cut", "peak_cut", iso);
    j.ordered(p.peakCut, p.lastCut, "peak_cut", "last_cut", iso);
    j.ordered(p.firstCut, p.lastCut, "first_cut", "last_cut", iso);
}

void rules(Judge& j, const Walk& w) {
    j.inSeason("date", w.date, w.date.iso());
}

void rules(Judge& j, const Weather& w) {
    if (w.maxCelsius < w.minCelsius)
        j.say(ProblemCode::lessThan, "max_celsius", number(w.maxCelsius),
              {"min_celsius", number(w.minCelsius)});
}

void rules(Judge& j, const PastBloom& b) {
    j.ordered(std::optional(b.firstCut), b.lastCut, "first_cut", "last_cut", iso);
}

void rules(Judge& j, const StockLot& l) {
    j.ordered(std::optional(l.readyFrom), l.useBy, "ready_from", "use_by", iso);
}

void rules(Judge& j, const Container& c) {
    if (c.profile == ProfileKind::trough && !c.innerLength) j.say(ProblemCode::required, "inner_length", "");
}

void rules(Judge& j, const RibbonMixPart& p) {
    double sum = 0;
    for (const auto& other : j.season.ribbonMixParts) {
        if (other.mix == p.mix) sum += other.share;
    }
    if (sum > 100.0001) j.say(ProblemCode::sharesNotOne, "share", number(p.share), {number(sum)});
}

void rules(Judge& j, const VenueTable& t) {
    if (t.shape == TableShape::rectangular && !t.width) j.say(ProblemCode::required, "width", "");
}

void rules(Judge& j, const Booking& b) {
    j.inSeason("event_start", b.eventStart.day, b.eventStart.iso());
    j.onTheClock("event_start", b.eventStart);
    j.onTheClock("event_end", b.eventEnd);
    j.endsAfterStart(b.eventStart, b.eventEnd, "event_end", true);
    if (b.eventEnd.day - b.eventStart.day > 60)
        j.say(ProblemCode::aboveMost, "event_end", b.eventEnd.iso(), {(b.eventStart.day + 60).iso(), "day"});
    if (b.lookGoodUntil) j.endsAfterStart(b.eventStart, *b.lookGoodUntil, "look_good_until", true);
    if (b.makeFrom && b.eventStart < *b.makeFrom)
        j.say(ProblemCode::moreThan, "make_from", b.makeFrom->iso(), {"event_start", b.eventStart.iso()});
    if (b.standing == Standing::held && !b.heldUntil) j.say(ProblemCode::holdWithoutEnd, "held_until", "");
}

void rules(Judge& j, const AgreedSwap& s) {
    if (s.plant == s.standIn)
        j.say(ProblemCode::duplicate, "stand_in", nameOf(j.season, TableKind::plants, s.plant.value),
              {"plant"});
}

void rules(Judge& j, const Drop& d) {
    j.onTheClock("time", d.time);
    if (d.clearedAt) j.endsAfterStart(d.time, *d.clearedAt, "cleared_at", true);
}

void rules(Judge& j, const Line& l) {
    if (!l.drop) return;
    const Drop* drop = j.season.drops.find(*l.drop);
    if (drop && drop->booking != l.booking)
        j.say(ProblemCode::unknownRecord, "drop", std::to_string(l.drop->value), {"drop"});
}

void rules(Judge& j, const HelperHours& h) {
    j.endsAfterStart(h.from, h.to, "to", false);
}

void rules(Judge& j, const BusyHours& b) {
    j.endsAfterStart(b.from, b.to, "to", false);
    if (b.repeatsUntil && *b.repeatsUntil < b.from.day)
        j.say(ProblemCode::endBeforeStart, "repeats_until", b.repeatsUntil->iso(), {b.from.day.iso()});
}

void rules(Judge& j, const Round& r) {
    j.endsAfterStart(r.from, r.to, "to", true);
}

void rules(Judge& j, const Tally& t) {
    if (t.cut && t.thrownAway && *t.cut < *t.thrownAway)
        j.say(ProblemCode::moreThan, "thrown_away", std::to_string(t.thrownAway->value),
              {"cut", std::to_string(t.cut->value)});
}

void rules(Judge& j, const Return& r) {
    const std::int64_t home = r.back.value_or(0) + r.broken.value_or(0);
    if (home > r.out)
        j.say(ProblemCode::moreThan, "back", std::to_string(home), {"out", std::to_string(r.out)});
}

/// Records with nothing to say beyond their fields.
template <class R>
void rules(Judge&, const R&) {}

} // namespace

void checkRules(const RuleContext& context, TableKind kind, std::int64_t id, const void* record,
                Problems& problems) {
    Judge judge(context, kind, id, problems);
    switch (kind) {
#define X(Type, member)                                                                                      \
    case TableKind::member:                                                                                  \
        return rules(judge, *static_cast<const Type*>(record));
        WITHY_RECORDS(X)
#undef X
    case TableKind::none:
        return;
    }
}

RuleContext contextOf(const Season& season) {
    return {season, Zone::fromPosix(season.theSettings().zoneRule)};
}

void checkSeason(const RuleContext& context, Problems& problems) {
    if (context.season.settings.empty()) {
        problems.push_back({ProblemCode::noSettings, "settings", 1, "id", "", {}});
        return;
    }
    // Dates that hang on the settings: shortening the season may strand a booking.
    for (const auto& b : context.season.bookings)
        checkRules(context, TableKind::bookings, b.id.value, &b, problems);
}

} // namespace withy::model
