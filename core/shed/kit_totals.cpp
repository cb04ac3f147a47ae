// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/kit_totals.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <algorithm>
#include <cmath>

namespace withy::shed {

namespace {

constexpr std::int64_t mostThousandths = 1'000'000'000'000'000;

struct Times {
    std::optional<std::int64_t> number;
    const char* what;
    Unit unit;
};

Times timesOf(const KitUse& use) {
    switch (use.rule) {
    case UseRule::perPiece:
        return {use.counts.pieces, "pieces", Unit::pieces};
    case UseRule::perStem:
        return {use.counts.stems, "stems", Unit::stems};
    case UseRule::perBooking:
        return {use.counts.bookings, "bookings", Unit::count};
    case UseRule::perTray:
        return {use.counts.trays, "trays", Unit::count};
    }
    return {std::nullopt, "", Unit::none};
}

WorkingLine units(Step step, std::string what, std::int64_t thousandths, Basis basis = Basis::computed,
                  const std::string& subject = {}) {
    return lineOf(step, std::move(what), static_cast<double>(thousandths) / 1000, Unit::count, basis, {},
                  subject);
}

std::optional<Problem> addUse(const KitUse& use, KitTotal& total) {
    if (auto p = outside("amount", use.thousandths, 0, mostAmount)) return p;
    const Times times = timesOf(use);
    if (!times.number) {
        ++total.unknownUses;
        total.working.push_back(lineOf(Step::given, std::string(times.what) + " not known", 0, times.unit,
                                       Basis::notKnown, {}, use.subject));
        return std::nullopt;
    }
    if (auto p = outside(times.what, *times.number, 0, mostCounted)) return p;
    // Both factors are limited, so neither the product nor the sum can wrap before it is checked.
    total.needed += use.thousandths * *times.number;
    if (auto p = outside("needed", total.needed, 0, mostThousandths)) return p;
    total.working.push_back(
        lineOf(Step::given, times.what, *times.number, times.unit, Basis::mine, {}, use.subject));
    total.working.push_back(
        from(use.from, units(Step::times, "amount each", use.thousandths, Basis::mine, use.subject)));
    return std::nullopt;
}

void compare(Origin origin, KitTotal& total) {
    if (!total.onHand) {
        total.working.push_back(from(origin, units(Step::given, "on hand not counted", 0, Basis::notKnown)));
        return;
    }
    total.missing = std::max<std::int64_t>(total.needed - *total.onHand, 0);
    total.spare = std::max<std::int64_t>(*total.onHand - total.needed, 0);
    total.working.push_back(from(origin, units(Step::minus, "on hand", *total.onHand, Basis::counted)));
    total.working.push_back(*total.missing > 0 ? units(Step::result, "missing", *total.missing)
                                               : units(Step::result, "spare", *total.spare));
}

} // namespace

Result<std::int64_t, Problem> thousandthsOf(double amount) {
    if (const auto p = outsideReal("amount", amount, 0, static_cast<double>(mostAmount) / 1000)) return *p;
    return std::int64_t{std::llround(amount * 1000)};
}

std::int64_t wholeUnits(std::int64_t thousandths) {
    return thousandths / 1000 + (thousandths % 1000 > 0 ? 1 : 0);
}

Result<KitTotal, Problem> kitTotal(const std::vector<KitUse>& uses, const KitStock& stock) {
    if (stock.thousandths) {
        if (const auto p = outside("on_hand", *stock.thousandths, 0, mostThousandths)) return *p;
    }
    KitTotal total;
    total.onHand = stock.thousandths;
    for (const auto& use : uses) {
        if (const auto p = addUse(use, total)) return *p;
    }
    if (stock.wholeUnits) total.needed = wholeUnits(total.needed) * 1000;
    total.working.push_back(units(Step::result, "needed", total.needed));
    compare(stock.from, total);
    return total;
}

} // namespace withy::shed
