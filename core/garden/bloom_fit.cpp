// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/bloom_fit.h"

#include "core/base/working_lines.h"
#include "core/garden/bloom_grid.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace withy::garden {

namespace {

constexpr double pulled = 1; ///< years' worth of the prior share
constexpr double priorShare = 0.5;
constexpr double wholeFrom = 0.6;   ///< a larger share is taken as warmth alone
constexpr double noneUpTo = 0.5;    ///< a smaller one as the calendar: warmth must earn its place
constexpr double settled = 10;      ///< years by which counted ranges outweigh computed ones
constexpr double normal60 = 0.8416; ///< half width of the middle 60 % of a normal, standard deviations
constexpr int shortYears = 10;

double deviation(const std::vector<double>& v) {
    if (v.size() < 2) return 0;
    const double m = meanOf(v);
    double sum = 0;
    for (const double x : v)
        sum += (x - m) * (x - m);
    return std::sqrt(sum / static_cast<double>(v.size() - 1));
}

BloomErrors errorsOf(const std::vector<double>& residuals) {
    BloomErrors e;
    for (const double r : residuals) {
        e.meanAbsolute += std::abs(r);
        e.rootMeanSquare += r * r;
        e.worst = std::max(e.worst, std::abs(r));
    }
    const auto n = static_cast<double>(std::max<std::size_t>(1, residuals.size()));
    e.meanAbsolute /= n;
    e.rootMeanSquare = std::sqrt(e.rootMeanSquare / n);
    return e;
}

/// Of every year left out.
using LikelyCells = std::vector<std::vector<std::pair<const BloomCell*, double>>>;

/// Errors of the left-out years, by calendar and by warmth.
struct LeftOut {
    std::vector<double> calendar;
    std::vector<double> thermal;
};

LeftOut leaveOneOut(const BloomRecord& record, const BloomGrid& grid, const LikelyCells& likely) {
    LeftOut out;
    std::vector<double> cuts;
    for (const auto& y : record.years)
        cuts.push_back(y.cut);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        out.calendar.push_back(meanWithout(cuts, i) - cuts[i]);
        double day = 0;
        for (const auto& [cell, weight] : likely[i])
            day += weight *
                   grid.years[cell->base][i].reaches(cell->start, meanWithout(cell->sums, i), cell->rate);
        out.thermal.push_back(day - cuts[i]);
    }
    return out;
}

/// The share of warmth with the least squared error, pulled towards the prior.
double shareOf(const LeftOut& out, std::size_t leftOut) {
    double along = 0;
    double across = 0;
    double n = 0;
    for (std::size_t i = 0; i < out.calendar.size(); ++i) {
        if (i == leftOut) continue;
        const double apart = out.calendar[i] - out.thermal[i];
        along += out.calendar[i] * apart;
        across += apart * apart;
        n += 1;
    }
    if (across <= 0) return 0;
    const double years = pulled * across / n;
    const double share = std::clamp((along + years * priorShare) / (across + years), 0.0, 1.0);
    return share >= wholeFrom ? 1 : share <= noneUpTo ? 0 : share;
}

std::vector<double> blended(const LeftOut& out) {
    std::vector<double> errors;
    for (std::size_t i = 0; i < out.calendar.size(); ++i) {
        const double share = shareOf(out, i);
        errors.push_back((1 - share) * out.calendar[i] + share * out.thermal[i]);
    }
    return errors;
}

/// Days either way that hold 60 %: counted where there are years enough, else from the spread.
double halfRangeOf(std::vector<double> errors) {
    for (double& e : errors)
        e = std::abs(e);
    std::sort(errors.begin(), errors.end());
    const auto n = static_cast<double>(errors.size());
    const double at = std::clamp(0.6 * (n + 1) - 1, 0.0, n - 1);
    const auto low = static_cast<std::size_t>(at);
    const double high = errors[std::min(low + 1, errors.size() - 1)];
    const double counted = errors[low] + (at - static_cast<double>(low)) * (high - errors[low]);
    const double scarce = std::sqrt((n + 1) / std::max(1.0, n - 1)); // few years know their own spread badly
    const double computed = normal60 * scarce * errorsOf(errors).rootMeanSquare;
    return (n * counted + settled * computed) / (n + settled);
}

/// What the years bring on each day from the record's first on.
struct DayHeats {
    std::vector<double> sums;
    std::vector<int> years;
};

DayHeats dayHeatsOf(const BloomRecord& record, const std::vector<YearSums>& years) {
    DayHeats all;
    for (int day = record.from; day < record.from + 366; ++day) {
        all.sums.push_back(0);
        all.years.push_back(0);
        for (const auto& y : years) {
            if (!y.knows(day)) continue;
            all.sums.back() += y.total(day, day + 1);
            ++all.years.back();
        }
    }
    return all;
}

/// One year's heat until the day before `known`, then the other years' mean.
YearSums asKnown(const DayHeats& all, const YearSums& one, int from, int known) {
    std::vector<double> heat;
    for (std::size_t i = 0; i < all.sums.size(); ++i) {
        const int day = from + static_cast<int>(i);
        const bool knows = one.knows(day);
        const double own = knows ? one.total(day, day + 1) : 0;
        const int others = all.years[i] - (knows ? 1 : 0);
        if (day < known ? !knows : others == 0) break;
        heat.push_back(day < known ? own : (all.sums[i] - own) / others);
    }
    return {heat, from};
}

/// Foretells years left out from what was known some days before the mean date.
class Hindcast {
public:
    Hindcast(const BloomRecord& record, const BloomGrid& grid, const LikelyCells& likely)
        : record_(record), grid_(grid), likely_(likely) {
        for (const auto& y : record.years)
            cuts_.push_back(y.cut);
        for (const auto& years : grid.years)
            heats_.push_back(dayHeatsOf(record, years));
    }

    /// Errors of those not yet in flower `lead` days before the mean date.
    [[nodiscard]] std::vector<double> errors(double share, int lead) const {
        std::vector<double> errors;
        const int issued = static_cast<int>(std::lround(meanOf(record_.cuts))) - lead;
        for (std::size_t i = 0; i < cuts_.size(); ++i) {
            if (record_.years[i].cut < issued) continue;
            const double day = (1 - share) * meanWithout(cuts_, i) + share * foretold(i, issued);
            errors.push_back(day - cuts_[i]);
        }
        return errors;
    }

private:
    [[nodiscard]] double foretold(std::size_t one, int issued) const {
        double day = 0;
        std::map<std::size_t, YearSums> sums; // by base
        for (const auto& [cell, weight] : likely_[one]) {
            auto at = sums.find(cell->base);
            if (at == sums.end()) {
                const auto& own = grid_.years[cell->base][one];
                at = sums.emplace(cell->base, asKnown(heats_[cell->base], own, record_.from, issued)).first;
            }
            day += weight * at->second.reaches(cell->start, meanWithout(cell->sums, one), cell->rate);
        }
        return day;
    }

    const BloomRecord& record_;
    const BloomGrid& grid_;
    const LikelyCells& likely_;
    std::vector<double> cuts_;
    std::vector<DayHeats> heats_; ///< by base
};

std::vector<double> rangesAhead(const Hindcast& hindcast, double share) {
    std::vector<double> ranges;
    for (const int lead : bloomLeads) {
        auto errors = hindcast.errors(share, lead);
        const double atLeast = ranges.empty() ? 0 : ranges.back(); // farther off is never surer
        ranges.push_back(errors.empty() ? atLeast : std::max(atLeast, halfRangeOf(std::move(errors))));
    }
    return ranges;
}

void takeWarmth(BloomModel& model, const BloomRecord& record) {
    const BloomGrid grid(record);
    if (grid.cells.empty()) return;
    LikelyCells likely;
    for (std::size_t i = 0; i < record.years.size(); ++i)
        likely.push_back(grid.likely(i));
    const LeftOut out = leaveOneOut(record, grid, likely);
    for (const auto& [cell, weight] : grid.likely(noYear))
        model.members.push_back(
            {grid.bases[cell->base], cell->start, meanOf(cell->sums), cell->rate, weight});
    model.warmthShare = shareOf(out, noYear);
    const std::vector<double> errors = blended(out);
    model.calendar = errorsOf(out.calendar);
    model.thermal = errorsOf(out.thermal);
    model.chosen = model.warmthShare > 0 ? errorsOf(errors) : model.calendar;
    model.halfRange = halfRangeOf(model.warmthShare > 0 ? errors : out.calendar);
    if (model.warmthShare > 0)
        model.halfRangeAhead = rangesAhead(Hindcast(record, grid, likely), model.warmthShare);
}

void write(BloomModel& model) {
    auto& w = model.working;
    w.push_back(lineOf(Step::given, "years noted", model.years, Unit::count, Basis::lastSeasons));
    w.push_back(lineOf(Step::given, "calendar error", model.calendar.meanAbsolute, Unit::days));
    w.push_back(lineOf(Step::given, "warmth error", model.thermal.meanAbsolute, Unit::days));
    w.push_back(lineOf(Step::given, "base temperature",
                       model.members.empty() ? 0 : model.members.front().base, Unit::celsius));
    w.push_back(lineOf(Step::given, "heat sum", model.members.empty() ? 0 : model.members.front().heatSum,
                       Unit::none));
    w.push_back(lineOf(Step::times, "share of warmth", model.warmthShare * 100, Unit::percent));
    w.push_back(lineOf(Step::result, "error of the chosen", model.chosen.meanAbsolute, Unit::days));
}

/// Errors of the calendar alone, when that is all there is.
void takeCalendar(BloomModel& model, const std::vector<double>& cuts) {
    if (cuts.size() < 2) return;
    std::vector<double> errors;
    for (std::size_t i = 0; i < cuts.size(); ++i)
        errors.push_back(meanWithout(cuts, i) - cuts[i]);
    model.calendar = errorsOf(errors);
    model.chosen = model.calendar;
    model.halfRange = halfRangeOf(errors);
}

} // namespace

BloomModel fitBloom(const std::vector<BloomYear>& years) {
    const BloomRecord record = bloomRecord(years);
    BloomModel model;
    model.anchorMonth = record.anchor.month;
    model.anchorDay = record.anchor.day;
    model.years = static_cast<int>(record.years.size());
    model.meanDay = record.cuts.empty() ? 183 : meanOf(record.cuts);
    model.meanSpread = deviation(record.cuts);
    if (record.leftOut) model.notes.push_back(BloomFitNote::yearLeftOut);
    takeCalendar(model, record.cuts);
    if (model.years < fewestBloomYears)
        model.notes.push_back(BloomFitNote::tooFewYears);
    else
        takeWarmth(model, record);
    if (model.warmthShare > 0)
        model.kind = model.warmthShare < 1 ? BloomModelKind::mix : BloomModelKind::thermal;
    else if (model.years >= fewestBloomYears)
        model.notes.push_back(BloomFitNote::warmthNoBetter);
    if (model.years < shortYears) model.notes.push_back(BloomFitNote::shortRecord);
    write(model);
    return model;
}

} // namespace withy::garden
