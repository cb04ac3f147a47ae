// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/kit_through_time.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/shed/kit_holds.h"

#include <algorithm>
#include <limits>
#include <set>

namespace withy::plan {

namespace {

using model::TableKind;

constexpr Day dayOne{std::numeric_limits<std::int32_t>::min() / 2};

struct ItemFacts {
    std::string name;
    std::optional<std::int64_t> owned; ///< in the item's measure
};

ItemFacts factsOf(const model::Season& season, const model::Ref& ref) {
    if (ref.table == TableKind::containers) {
        const auto* c = season.containers.find(Id<model::Container>(ref.id));
        return c ? ItemFacts{c->name, c->owned} : ItemFacts{};
    }
    if (ref.table == TableKind::sundries) {
        const auto* s = season.sundries.find(Id<model::Sundry>(ref.id));
        if (!s) return {};
        ItemFacts facts{s->name, std::nullopt};
        if (s->onHand) {
            const auto there = shed::thousandthsOf(*s->onHand);
            if (there.ok()) facts.owned = *there;
        }
        return facts;
    }
    const auto* h = season.holders.find(Id<model::Holder>(ref.id));
    if (!h) return {};
    if (h->kind != model::HolderKind::bucket) return {h->name, h->owned};
    ItemFacts facts{h->name, std::nullopt}; // buckets of all kinds stand in for each other
    for (const auto& other : season.holders)
        if (other.kind == model::HolderKind::bucket && other.owned)
            facts.owned = facts.owned.value_or(0) + *other.owned;
    return facts;
}

std::vector<KitLevel> levelsOf(const std::vector<KitHold>& holds) {
    std::map<Day, std::pair<std::int64_t, std::int64_t>> steps;
    const auto step = [&](Day day, std::int64_t amount, bool firm) {
        auto& [all, booked] = steps[day];
        all += amount;
        if (firm) booked += amount;
    };
    for (const auto& hold : holds) {
        step(hold.from, hold.amount, hold.firm);
        if (hold.until) step(*hold.until + 1, -(hold.amount - hold.broken - hold.lost), hold.firm);
    }
    std::vector<KitLevel> levels;
    KitLevel now;
    for (const auto& [day, change] : steps) {
        now = {day, now.away + change.first, now.awayFirm + change.second};
        levels.push_back(now);
    }
    return levels;
}

KitShort shortOn(const KitItem& item, Day day, std::optional<Day> today) {
    const std::int64_t owned = *item.owned;
    return {day, awayOn(item, day) - owned, awayOn(item, day, true) > owned, wantedBy(item, day, today)};
}

/// Levels that still matter: those from today on, and the one that today stands in.
template <class Visit>
void forEachToCome(const KitItem& item, std::optional<Day> today, Visit visit) {
    const Day now = today.value_or(dayOne);
    for (std::size_t i = 0; i < item.levels.size(); ++i) {
        const bool over = i + 1 < item.levels.size() && item.levels[i + 1].from <= now;
        if (!over) visit(item.levels[i], std::max(item.levels[i].from, now));
    }
}

void findShort(std::optional<Day> today, KitItem& item) {
    if (!item.owned) return;
    forEachToCome(item, today, [&](const KitLevel&, Day day) {
        const auto at = shortOn(item, day, today);
        if (!item.lowest || at.by > item.lowest->by) item.lowest = at;
        if (at.by <= 0) return;
        if (!item.firstShort) item.firstShort = at;
        if (!item.worst || at.by > item.worst->by) item.worst = at;
    });
}

void countToday(std::optional<Day> today, KitItem& item) {
    for (const auto& hold : item.holds) {
        item.broken += hold.broken;
        if (!today || *today < hold.from) {
            item.promised += hold.amount;
            continue;
        }
        const auto away = awayOn(hold, *today) - hold.broken;
        if (hold.firm || !hold.until) item.out += away;
        if (away > 0 && hold.until && *hold.until >= *today && !hold.late)
            item.dueBack = item.dueBack ? std::min(*item.dueBack, *hold.until) : *hold.until;
    }
    if (!item.owned) return;
    item.out = std::clamp<std::int64_t>(*item.owned - item.broken, 0, item.out); // never more than there are
    item.here = std::max<std::int64_t>(0, *item.owned - item.broken - item.out);
}

Working workingOf(const model::Season& season, const KitItem& item, const std::string& name) {
    Working working;
    if (!item.owned || !item.lowest) return working;
    const double scale = item.inThousandths ? 1000 : 1;
    const auto line = [&](Step step, const char* what, std::int64_t amount, Basis basis,
                          const std::string& subject) {
        return lineOf(step, what, static_cast<double>(amount) / scale, Unit::count, basis, {}, subject);
    };
    working.push_back(
        lineOf(Step::given, "lowest on", std::int64_t{item.lowest->day.number} * 1440, Unit::time));
    working.push_back(from(model::originOf(item.item), line(Step::given, item.usedUp ? "on hand" : "owned",
                                                            *item.owned, Basis::counted, name)));
    for (const auto& hold : item.holds) {
        const auto away = awayOn(hold, item.lowest->day);
        if (away == 0) continue;
        const auto* booking = season.bookings.find(hold.booking);
        const bool gone = hold.broken + hold.lost > 0 && away == hold.broken + hold.lost;
        working.push_back(from(model::originOf(TableKind::bookings, hold.booking.value),
                               line(Step::minus,
                                    gone          ? "broken or not come back"
                                    : item.usedUp ? "used"
                                                  : "away",
                                    away, hold.firm ? Basis::mine : Basis::notKnown,
                                    booking ? booking->title : std::string())));
    }
    working.push_back(line(Step::result, "free on that day", -item.lowest->by, Basis::computed, {}));
    return working;
}

std::set<model::Ref> countedItems(const model::Season& season) {
    std::set<model::Ref> refs;
    for (const auto& c : season.containers)
        refs.insert({TableKind::containers, c.id.value});
    for (const auto& s : season.sundries)
        refs.insert({TableKind::sundries, s.id.value});
    const auto* bucket = commonestHolder(season, model::HolderKind::bucket);
    for (const auto& h : season.holders)
        if (h.kind != model::HolderKind::bucket || &h == bucket)
            refs.insert({TableKind::holders, h.id.value});
    return refs;
}

/// A booking that wants more than there is says so itself, of what its own kit list counts.
bool bookingSaysIt(const model::Season& season, const KitItem& item, const KitShort& at) {
    if (at.bookings.size() != 1) return false;
    const auto* holder = item.item.table == TableKind::holders
                             ? season.holders.find(Id<model::Holder>(item.item.id))
                             : nullptr;
    if (holder && holder->kind != model::HolderKind::bucket) return false;
    return std::any_of(item.holds.begin(), item.holds.end(), [&](const KitHold& h) {
        return h.booking == at.bookings.front() && h.amount > *item.owned;
    });
}

/// The first day of each stretch of days on which it is short, as far as no booking says so itself; said of
/// each booking once, of the last that came to it.
std::vector<KitShort> shortStretches(const ShedInput& in, const KitItem& item) {
    std::vector<KitShort> out;
    if (!item.owned) return out;
    bool said = false;
    const auto isSaidOf = [&](Id<model::Booking> id) {
        return std::any_of(out.begin(), out.end(),
                           [&](const KitShort& s) { return s.bookings.back() == id; });
    };
    forEachToCome(item, in.today, [&](const KitLevel&, Day day) {
        auto at = shortOn(item, day, in.today);
        said = said && at.by > 0;
        if (said || at.by <= 0 || at.bookings.empty() || bookingSaysIt(in.season(), item, at)) return;
        said = true;
        if (!isSaidOf(at.bookings.back())) out.push_back(std::move(at));
    });
    return out;
}

bool before(const KitItem& a, const KitItem& b) {
    if (a.firstShort.has_value() != b.firstShort.has_value()) return a.firstShort.has_value();
    if (a.firstShort && a.firstShort->day != b.firstShort->day) return a.firstShort->day < b.firstShort->day;
    return a.item < b.item;
}

} // namespace

std::int64_t awayOn(const KitHold& hold, Day day) {
    if (day < hold.from) return 0;
    if (!hold.until || day <= *hold.until) return hold.amount;
    return hold.broken + hold.lost;
}

std::int64_t awayOn(const KitItem& item, Day day, bool firmOnly) {
    std::int64_t sure = 0, late = 0;
    for (const auto& hold : item.holds)
        if (hold.firm || !firmOnly) (hold.late ? late : sure) += awayOn(hold, day);
    if (!item.owned) return sure + late;
    return sure + std::min(late, std::max<std::int64_t>(0, *item.owned - sure));
}

std::vector<Id<model::Booking>> wantedBy(const KitItem& item, Day day, std::optional<Day> today) {
    std::vector<Id<model::Booking>> toCome, all;
    for (const auto& hold : item.holds) {
        if (hold.late || day < hold.from || (hold.until && *hold.until < day)) continue;
        if (hold.amount <= hold.broken + hold.lost) continue;
        all.push_back(hold.booking);
        if (!today || *today <= hold.from) toCome.push_back(hold.booking);
    }
    return toCome.empty() ? all : toCome;
}

std::vector<KitItem> kitThroughTime(const ShedInput& in, const PackingOf& packing) {
    std::map<model::Ref, KitItem> items;
    for (const auto& ref : countedItems(in.season()))
        items[ref].item = ref;
    for (const auto& part : {containerHolds(in), holderHolds(in, packing), sundryHolds(in, packing)})
        for (const auto& held : part)
            items[held.item].holds.push_back(held.hold);
    std::vector<KitItem> out;
    for (auto& [ref, item] : items) {
        const auto facts = factsOf(in.season(), ref);
        item.item = ref;
        item.usedUp = item.inThousandths = ref.table == TableKind::sundries;
        item.owned = facts.owned;
        std::stable_sort(item.holds.begin(), item.holds.end(),
                         [](const KitHold& a, const KitHold& b) { return a.from < b.from; });
        item.levels = levelsOf(item.holds);
        findShort(in.today, item);
        countToday(in.today, item);
        item.working = workingOf(in.season(), item, facts.name);
        out.push_back(std::move(item));
    }
    std::stable_sort(out.begin(), out.end(), before);
    return out;
}

std::vector<OutstandingReturn> outstandingReturns(const ShedInput& in) {
    std::vector<OutstandingReturn> out;
    for (const auto& held : containerHolds(in)) {
        const auto& hold = held.hold;
        if (!hold.out && hold.lost == 0) continue;
        const Id<model::Container> container(held.item.id);
        const auto* booking = in.season().bookings.find(hold.booking);
        OutstandingReturn r{hold.booking,
                            container,
                            std::nullopt,
                            hold.amount,
                            hold.out ? hold.amount : hold.lost,
                            dueHome(in, *booking, container).day,
                            hold.late};
        for (const auto& record : in.season().returns)
            if (record.booking == hold.booking && record.container == container) r.record = record.id;
        out.push_back(r);
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.due < b.due; });
    return out;
}

std::vector<ShedFinding> kitFindings(const ShedInput& in, const std::vector<KitItem>& kit,
                                     const std::vector<OutstandingReturn>& returns) {
    std::vector<ShedFinding> out;
    for (const auto& item : kit) {
        const double scale = item.inThousandths ? 1000 : 1;
        for (const auto& at : shortStretches(in, item))
            out.push_back(
                {at.bookings.back(),
                 findingOf(ShedCode::kitRunsShort, at.firm ? Severity::warning : Severity::note, item.item,
                           {factsOf(in.season(), item.item).name, at.day.iso()},
                           {static_cast<double>(at.by) / scale, static_cast<double>(at.bookings.size())})});
    }
    for (const auto& r : returns) {
        if (!r.late) continue;
        const auto* container = in.season().containers.find(r.container);
        out.push_back({r.booking, findingOf(ShedCode::returnLate, Severity::note,
                                            {TableKind::containers, r.container.value},
                                            {container ? container->name : std::string(), r.due.iso()},
                                            {static_cast<double>(r.missing)})});
    }
    return out;
}

} // namespace withy::plan
