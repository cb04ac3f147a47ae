// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/bloom_grid.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace withy::garden {

namespace {

// Own choice: whole degrees, starts a week apart.
constexpr int coldestBase = 0;
constexpr int warmestBase = 12;
constexpr int earliestStart = 180; ///< days before the mean first cut
constexpr int latestStart = 30;
constexpr int startStep = 7;
constexpr double likelyBase = 5;
constexpr double baseSpread = 1;
constexpr int restDays = 30; ///< after the coldest of the winter
constexpr double startSpread = 20;
constexpr int paceDays = 10;      ///< before the first cut, over which its pace is taken
constexpr double leastRate = 0.2; ///< C days per day; below it a heat sum says nothing
constexpr double faintest = 0.3;  ///< of the likeliest's weight; what is less is not taken along
constexpr double finest = 0.25;   ///< days squared: dates are whole days

struct Sum {
    double heat = 0;
    int days = 0;
};

Sum warmthAbout(const BloomRecord::Year& year, int middle) {
    Sum sum;
    const int first = std::max(0, middle - 15 - year.from);
    const int end = std::min(static_cast<int>(year.days.size()), middle + 16 - year.from);
    for (int i = first; i < end; ++i) {
        const auto& day = year.days[static_cast<std::size_t>(i)];
        sum.heat += day.minimum + day.maximum;
        ++sum.days;
    }
    return sum;
}

/// Middle of the coldest month before the flowering, over all years.
int coldestOf(const BloomRecord& record, int end) {
    int coldest = record.from;
    double least = 1e9;
    for (int at = record.from; at < end; ++at) {
        Sum all;
        for (const auto& year : record.years) {
            const Sum one = warmthAbout(year, at);
            all.heat += one.heat;
            all.days += one.days;
        }
        if (all.days == 0 || all.heat / all.days >= least) continue;
        least = all.heat / all.days;
        coldest = at;
    }
    return coldest;
}

BloomCell cellOf(const BloomRecord& record, const std::vector<YearSums>& years, std::size_t base, int start) {
    BloomCell cell;
    cell.base = base;
    cell.start = start;
    for (std::size_t i = 0; i < years.size(); ++i) {
        const int cut = record.years[i].cut;
        cell.sums.push_back(years[i].between(start, cut));
        cell.rate += years[i].total(cut - paceDays + 1, cut + 1) / paceDays;
    }
    cell.rate /= static_cast<double>(years.size());
    const double sum = meanOf(cell.sums);
    for (std::size_t i = 0; i < years.size(); ++i) {
        const double day = years[i].reaches(start, sum, cell.rate);
        const int at = static_cast<int>(std::lround(day));
        cell.errors.push_back(day - record.years[i].cut);
        cell.paces.push_back(std::max(0.3 * cell.rate, years[i].total(at - 3, at + 4) / 7));
    }
    return cell;
}

/// -2 log of likelihood (normal errors of unknown spread) and prior, but for constants.
double unlikely(const BloomCell& cell, std::size_t leftOut) {
    const bool all = leftOut >= cell.sums.size();
    const auto n = static_cast<double>(cell.sums.size()) - (all ? 0 : 1);
    // What the mean sum moves by when one year is left out, put into days at each year's pace.
    const double moved = all ? 0 : meanWithout(cell.sums, leftOut) - meanOf(cell.sums);
    double squares = 0;
    for (std::size_t i = 0; i < cell.sums.size(); ++i) {
        if (i == leftOut) continue;
        const double error = cell.errors[i] + moved / cell.paces[i];
        squares += error * error;
    }
    return n * std::log(squares / n + finest) + cell.unlikely;
}

} // namespace

double meanOf(const std::vector<double>& v) {
    return v.empty() ? 0 : std::accumulate(v.begin(), v.end(), 0.0) / static_cast<double>(v.size());
}

double meanWithout(const std::vector<double>& v, std::size_t leftOut) {
    const double sum = std::accumulate(v.begin(), v.end(), 0.0);
    return (sum - v[leftOut]) / static_cast<double>(v.size() - 1);
}

BloomGrid::BloomGrid(const BloomRecord& record) {
    const int middle = static_cast<int>(std::lround(meanOf(record.cuts)));
    const int coldest = coldestOf(record, middle);
    for (int base = coldestBase; base <= warmestBase; ++base) {
        std::vector<YearSums> sums;
        for (const auto& y : record.years)
            sums.emplace_back(y, record.from, base);
        for (int before = latestStart; before <= earliestStart; before += startStep) {
            const int start = middle - before;
            if (start < record.from) break;
            BloomCell cell = cellOf(record, sums, bases.size(), start);
            if (cell.rate < leastRate) continue;
            cell.unlikely = std::pow((base - likelyBase) / baseSpread, 2) +
                            std::pow((start - coldest - restDays) / startSpread, 2);
            cells.push_back(std::move(cell));
        }
        bases.push_back(base);
        years.push_back(std::move(sums));
    }
}

std::vector<std::pair<const BloomCell*, double>> BloomGrid::likely(std::size_t leftOut) const {
    std::vector<std::pair<const BloomCell*, double>> all;
    for (const auto& cell : cells)
        all.emplace_back(&cell, unlikely(cell, leftOut));
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.second < b.second; });
    const double least = all.front().second;
    for (auto& [cell, u] : all)
        u = std::exp((least - u) / 2);
    std::erase_if(all, [](const auto& one) { return one.second < faintest; });
    double sum = 0;
    for (const auto& one : all)
        sum += one.second;
    for (auto& one : all)
        one.second /= sum;
    return all;
}

} // namespace withy::garden
