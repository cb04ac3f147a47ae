// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/shed/kit_through_time.h"
#include "core/plan/shed/ribbon_days.h"

#include <algorithm>
#include <limits>

namespace withy::plan {

namespace {

using model::TableKind;

std::optional<Money> eachCosts(const model::Season& season, const model::Ref& ref) {
    if (ref.table == TableKind::containers) {
        const auto* c = season.containers.find(Id<model::Container>(ref.id));
        return c ? c->cost : std::nullopt;
    }
    if (ref.table == TableKind::sundries) {
        const auto* s = season.sundries.find(Id<model::Sundry>(ref.id));
        return s ? s->cost : std::nullopt;
    }
    if (ref.table == TableKind::ribbons) {
        const auto* r = season.ribbons.find(Id<model::Ribbon>(ref.id));
        return r ? r->costPerMetre : std::nullopt;
    }
    return std::nullopt;
}

/// Price of an amount given in thousandths of what the price is for, rounded up to the minor unit.
std::optional<Money> costOf(std::optional<Money> each, std::int64_t thousandths) {
    if (!each || each->minor < 0 || thousandths < 0) return std::nullopt;
    const std::int64_t whole = thousandths / 1000, rest = thousandths % 1000;
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max() / 2;
    if (each->minor > 0 && whole > most / each->minor) return std::nullopt; // beyond any purse
    return Money{each->minor * whole + (each->minor * rest + 999) / 1000};
}

BuyingLine lineFor(const model::Season& season, const KitItem& item, const KitShort& at,
                   std::int64_t amount) {
    BuyingLine line;
    line.item = item.item;
    line.inThousandths = item.inThousandths;
    line.amount = item.inThousandths ? (amount + 999) / 1000 * 1000 : amount; // whole units are sold
    line.neededBy = at.day;
    line.firm = at.firm;
    line.bookings = at.bookings;
    line.cost = costOf(eachCosts(season, item.item), item.inThousandths ? line.amount : line.amount * 1000);
    const double scale = item.inThousandths ? 1000 : 1;
    line.working = {lineOf(Step::given, "wanted on that day",
                           static_cast<double>(*item.owned + at.by) / scale, Unit::count),
                    lineOf(Step::minus, item.usedUp ? "on hand" : "owned",
                           static_cast<double>(*item.owned) / scale, Unit::count, Basis::counted),
                    lineOf(Step::result, "short", static_cast<double>(at.by) / scale, Unit::count)};
    if (at.by != amount)
        line.working.push_back(lineOf(Step::minus, "bought for an earlier day",
                                      static_cast<double>(at.by - amount) / scale, Unit::count));
    line.working.push_back(
        lineOf(Step::result, "to get", static_cast<double>(line.amount) / scale, Unit::count));
    return line;
}

void buyKit(const ShedInput& in, const KitItem& item, std::vector<BuyingLine>& out) {
    if (!item.owned || !item.firstShort) return;
    std::int64_t got = 0;
    for (std::size_t i = 0; i < item.levels.size(); ++i) {
        const Day day = std::max(item.levels[i].from, item.firstShort->day);
        if (i + 1 < item.levels.size() && item.levels[i + 1].from <= day) continue; // over by then
        const std::int64_t over = awayOn(item, day) - *item.owned;
        if (over <= got) continue;
        const KitShort at{day, over, awayOn(item, day, true) > *item.owned, wantedBy(item, day, in.today)};
        out.push_back(lineFor(in.season(), item, at, over - got));
        got += out.back().amount;
    }
}

BuyingLine ribbonLine(const ShedInput& in, const RibbonDay& day, const RibbonCutPlan& plan) {
    BuyingLine line;
    line.item = {TableKind::ribbons, plan.ribbon.value};
    line.amount = plan.missingLength.value;
    line.neededBy = day.day;
    for (const auto& pieces : plan.missing) {
        const auto* record = in.season().lines.find(pieces.line);
        if (!record) continue;
        if (std::find(line.bookings.begin(), line.bookings.end(), record->booking) == line.bookings.end())
            line.bookings.push_back(record->booking);
        const auto* booking = in.season().bookings.find(record->booking);
        line.firm = line.firm || (booking && isFirm(booking->standing));
    }
    line.cost = costOf(eachCosts(in.season(), line.item), line.amount);
    line.working = plan.working;
    return line;
}

} // namespace

std::vector<BuyingLine> buyingList(const ShedInput& in, const std::vector<KitItem>& kit,
                                   const std::vector<std::shared_ptr<const RibbonDay>>& ribbon) {
    std::vector<BuyingLine> out;
    for (const auto& item : kit)
        buyKit(in, item, out);
    for (const auto& day : ribbon) {
        if (ribbonIsOver(in.season(), *day, in.today)) continue;
        for (const auto& plan : day->ribbons)
            if (plan->counted && plan->missingLength.value > 0) out.push_back(ribbonLine(in, *day, *plan));
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const BuyingLine& a, const BuyingLine& b) { return a.neededBy < b.neededBy; });
    return out;
}

} // namespace withy::plan
