// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/money.h"
#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>
#include <string>
#include <vector>

/// A booking's money, the plain part: income, gift share, payments, what is owed, what was given.
/// All sums are exact whole numbers of the smallest unit; a sum that does not fit is a problem, never a
/// wrapped figure. Fields: "pieces", "unit_price", "price", "gift_share", "amount", "asked".
namespace withy::bookings {

/// The most that one price, payment or sum may be, in smallest units: beyond it is a slip of the keys.
inline constexpr std::int64_t mostMoney = 1'000'000'000'000'000;

/// Pieces of one design at a price. Spare pieces are not charged: leave them out of `pieces`.
struct PricedLine {
    std::string name;
    std::int64_t pieces = 0;
    std::optional<Money> unitPrice;   ///< agreed for this line; wins
    std::optional<Money> designPrice; ///< the design's own price
    Origin from{};                    ///< where the pieces are typed
    Origin unitFrom{};                ///< where the agreed price is
    Origin designFrom{};
};

/// A sum over lines of which some may have no price.
struct Income {
    Money total; ///< of the lines that have a price
    int unpriced = 0;

    [[nodiscard]] bool partlyKnown() const { return unpriced > 0; } ///< the true sum is higher

    Working working;
};

/// Pieces x price, summed; the line's price before the design's. A line with pieces and no price
/// is counted in `unpriced` and adds nothing.
Result<Income, Problem> bookingIncome(const std::vector<PricedLine>& lines);

/// The same at the designs' own prices throughout: what the work is worth at list price. A design without
/// a price is worth its line's price, where there is one.
Result<Income, Problem> listValue(const std::vector<PricedLine>& lines);

struct GiftSplit {
    Money given; ///< share of the income, rounded half up to the smallest unit
    Money asked; ///< what is left
    Working working;
};

/// `perTenThousand` of the income is given: 2500 is a quarter; 0 to 10000.
Result<GiftSplit, Problem> giftShare(Money income, std::int64_t perTenThousand, Origin from = {});

struct PaymentLine {
    std::string name;
    Money amount; ///< below zero: paid back to the client
    Origin from{};
};

struct Owed {
    Money asked;
    Money paid;
    Money owed;     ///< still to come; never below zero
    Money overpaid; ///< paid beyond what was asked; never below zero
    Working working;
};

Result<Owed, Problem> owed(Money asked, const std::vector<PaymentLine>& payments);

struct GiftValue {
    Money gift;      ///< list value - asked; never below zero
    Money aboveList; ///< asked beyond the list value; never below zero
    Working working;
};

Result<GiftValue, Problem> giftValue(Money listValue, Money asked);

/// All of the above for one booking.
struct BookingMoney {
    Income income;
    Income list;
    GiftSplit split;
    Owed owed;
    GiftValue gift;
};

Result<BookingMoney, Problem> bookingMoney(const std::vector<PricedLine>& lines,
                                           std::int64_t giftPerTenThousand,
                                           const std::vector<PaymentLine>& payments, Origin giftFrom = {});

} // namespace withy::bookings
