// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/money_totals.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <algorithm>

namespace withy::bookings {

namespace {

constexpr std::int64_t mostCharged = 1'000'000;

WorkingLine moneyLine(Step step, std::string what, Money amount, const std::string& subject = {}) {
    return lineOf(step, std::move(what), amount.minor, Unit::minorMoney,
                  step == Step::given ? Basis::mine : Basis::computed, {}, subject);
}

/// a + b within the money's range.
std::optional<Problem> addTo(Money& sum, Money amount, std::string_view field) {
    std::int64_t next = 0;
    if (__builtin_add_overflow(sum.minor, amount.minor, &next))
        return problemAt(ProblemCode::aboveMost, field, plainAmount(amount, 0), {std::to_string(mostMoney)});
    if (auto p = outside(field, next, -mostMoney, mostMoney)) return p;
    sum = Money{next};
    return std::nullopt;
}

/// pieces x price within the money's range, its two lines written down.
Result<Money, Problem> amountOf(const PricedLine& line, Money price, std::string_view field, Origin priceFrom,
                                Working& working) {
    if (const auto p = outside(field, price.minor, 0, mostMoney)) return *p;
    std::int64_t amount = 0;
    if (__builtin_mul_overflow(price.minor, line.pieces, &amount) || amount > mostMoney)
        return problemAt(ProblemCode::aboveMost, field, plainAmount(price, 0), {std::to_string(mostMoney)});
    working.push_back(from(
        line.from, lineOf(Step::given, "pieces", line.pieces, Unit::pieces, Basis::mine, {}, line.name)));
    working.push_back(from(priceFrom, lineOf(Step::times, "price a piece", price.minor, Unit::minorMoney,
                                             Basis::mine, {}, line.name)));
    working.push_back(moneyLine(Step::result, "line", Money{amount}, line.name));
    return Money{amount};
}

struct Choice {
    std::optional<Money> first;
    std::string_view firstField;
    std::optional<Money> second;
    std::string_view secondField;
    Origin firstFrom;
    Origin secondFrom;
};

std::optional<Problem> addLine(const PricedLine& line, const Choice& price, Income& income) {
    if (auto p = outside("pieces", line.pieces, 0, mostCharged)) return p;
    if (line.pieces == 0) return std::nullopt;
    if (!price.first && !price.second) {
        ++income.unpriced;
        income.working.push_back(from(line.from, lineOf(Step::given, "pieces without a price", line.pieces,
                                                        Unit::pieces, Basis::notKnown, {}, line.name)));
        return std::nullopt;
    }
    const auto amount = amountOf(line, price.first ? *price.first : *price.second,
                                 price.first ? price.firstField : price.secondField,
                                 price.first ? price.firstFrom : price.secondFrom, income.working);
    if (!amount.ok()) return amount.error();
    return addTo(income.total, *amount, price.first ? price.firstField : price.secondField);
}

std::optional<Problem> notMoney(std::string_view field, Money amount, std::int64_t least) {
    return outside(field, amount.minor, least, mostMoney);
}

} // namespace

Result<Income, Problem> bookingIncome(const std::vector<PricedLine>& lines) {
    Income income;
    for (const auto& line : lines) {
        const Choice price{line.unitPrice, "unit_price",  line.designPrice,
                           "price",        line.unitFrom, line.designFrom};
        if (const auto p = addLine(line, price, income)) return *p;
    }
    income.working.push_back(moneyLine(Step::result, "income", income.total));
    return income;
}

Result<Income, Problem> listValue(const std::vector<PricedLine>& lines) {
    Income income;
    for (const auto& line : lines) {
        const Choice price{line.designPrice, "price",         line.unitPrice,
                           "unit_price",     line.designFrom, line.unitFrom};
        if (const auto p = addLine(line, price, income)) return *p;
    }
    income.working.push_back(moneyLine(Step::result, "list value", income.total));
    return income;
}

Result<GiftSplit, Problem> giftShare(Money income, std::int64_t perTenThousand, Origin origin) {
    if (const auto p = notMoney("income", income, 0)) return *p;
    if (const auto p = outside("gift_share", perTenThousand, 0, 10'000)) return *p;
    GiftSplit split;
    split.given = scaledHalfUp(income, perTenThousand, 10'000);
    split.asked = income - split.given;
    split.working = {moneyLine(Step::given, "income", income),
                     from(origin, lineOf(Step::given, "gift share", static_cast<double>(perTenThousand) / 100,
                                         Unit::percent, Basis::mine)),
                     moneyLine(Step::minus, "given", split.given),
                     moneyLine(Step::result, "to pay", split.asked)};
    return split;
}

Result<Owed, Problem> owed(Money asked, const std::vector<PaymentLine>& payments) {
    if (const auto p = notMoney("asked", asked, 0)) return *p;
    Owed state;
    state.asked = asked;
    state.working.push_back(moneyLine(Step::given, "to pay", asked));
    for (const auto& payment : payments) {
        if (const auto p = notMoney("amount", payment.amount, -mostMoney)) return *p;
        if (const auto p = addTo(state.paid, payment.amount, "amount")) return *p;
        state.working.push_back(
            from(payment.from, moneyLine(Step::minus, "payment", payment.amount, payment.name)));
    }
    const Money left = asked - state.paid;
    state.owed = std::max(left, Money{});
    state.overpaid = std::max(Money{} - left, Money{});
    state.working.push_back(moneyLine(Step::result, left < Money{} ? "overpaid" : "owed",
                                      left < Money{} ? state.overpaid : state.owed));
    return state;
}

Result<GiftValue, Problem> giftValue(Money list, Money asked) {
    if (const auto p = notMoney("list_value", list, 0)) return *p;
    if (const auto p = notMoney("asked", asked, 0)) return *p;
    GiftValue value;
    value.gift = std::max(list - asked, Money{});
    value.aboveList = std::max(asked - list, Money{});
    value.working = {moneyLine(Step::given, "list value", list), moneyLine(Step::minus, "to pay", asked),
                     moneyLine(Step::result, asked > list ? "above list" : "gift value",
                               asked > list ? value.aboveList : value.gift)};
    return value;
}

Result<BookingMoney, Problem> bookingMoney(const std::vector<PricedLine>& lines,
                                           std::int64_t giftPerTenThousand,
                                           const std::vector<PaymentLine>& payments, Origin giftFrom) {
    auto income = bookingIncome(lines);
    if (!income.ok()) return income.error();
    auto list = listValue(lines);
    if (!list.ok()) return list.error();
    auto split = giftShare(income->total, giftPerTenThousand, giftFrom);
    if (!split.ok()) return split.error();
    auto state = owed(split->asked, payments);
    if (!state.ok()) return state.error();
    auto gift = giftValue(list->total, split->asked);
    if (!gift.ok()) return gift.error();
    return BookingMoney{std::move(income).value(), std::move(list).value(), std::move(split).value(),
                        std::move(state).value(), std::move(gift).value()};
}

} // namespace withy::bookings
