// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/range.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// How many stems pieces need, with the spare declared once and counted once.
/// Every figure out of range is a problem naming its field: "count", "pieces", "need", "spare_percent",
/// "loss", "confidence", "bunch".
namespace withy::bookings {

inline constexpr std::int64_t mostStemsPerPiece = 100'000;
inline constexpr std::int64_t mostPieces = 1'000'000;
inline constexpr std::int64_t mostBunch = 10'000;
inline constexpr std::int64_t mostSparePerTenThousand = 100'000; ///< 1000 %

/// A share of the need on top, in parts of ten thousand: 1000 is 10 %.
struct PercentSpare {
    std::int64_t perTenThousand = 0;
    Basis basis = Basis::mine;
    std::string source;
    Origin from{};
};

/// As many on top as keep the chance of too few sound stems below 1 - confidence.
struct RiskSpare {
    double loss = 0;               ///< chance that one stem is lost, 0 to just below 1
    double confidence = 0.95;      ///< strictly between 0 and 1
    Basis basis = Basis::notKnown; ///< of the loss
    std::string source;            ///< of the loss
    Origin from{};                 ///< likewise
    Origin confidenceFrom{};
};

using SpareRule = std::variant<PercentSpare, RiskSpare>;

/// How the stems of one kind are rounded up.
struct SpareTerms {
    SpareRule rule;
    std::int64_t bunch = 0; ///< stems in a bunch; 0 or 1: not bunched
    Origin bunchFrom{};
};

/// So many stems in so many pieces; spare pieces count as pieces.
struct NeedPart {
    std::int64_t stemsPerPiece = 0;
    std::int64_t pieces = 0;
    std::string subject; ///< "Supper jar"; may be empty
    Origin piecesFrom{};
    Origin stemsFrom{};
};

struct StemNeed {
    Stems need;
    Stems spare;
    Stems toBunches;              ///< added on top of the spare to fill the last bunch
    Stems total;                  ///< need + spare + toBunches
    std::optional<double> chance; ///< by risk: that need + spare are enough
    Working working;
};

/// Parts of ten thousand for a percentage as typed: 12.5 is 1250. Rounded to a hundredth of a percent,
/// so that the binary fraction of a typed decimal does no harm. 0 to 1000 %; also for gift and water shares.
Result<std::int64_t, Problem> perTenThousand(double percent, std::string_view field = "spare_percent");

/// ceil(need x share), in whole numbers: 10 % of 70 is 7.
Result<Stems, Problem> spareByPercent(Stems need, std::int64_t perTenThousand);

/// Need, spare and bunches of one part.
Result<StemNeed, Problem> stemNeed(const NeedPart& part, const SpareTerms& terms);

/// The parts are summed first; spare and bunches are then counted once, on the sum.
Result<StemNeed, Problem> stemNeed(const std::vector<NeedPart>& parts, const SpareTerms& terms);

} // namespace withy::bookings
