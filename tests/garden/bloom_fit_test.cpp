// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/bloom_fit.h"
#include "tests/garden/reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <random>

namespace withy::garden {
namespace {

// Yoshino cherry at Washington (US EPA from National Park Service dates; GHCN-Daily USW00013743) and two
// shrubs at Harvard Forest (archives HF003 and HF000): first or peak bloom with that year's temperatures.
// `thermal`: mean absolute error of a plain thermal-time model, each year left out in turn, days.
struct Site {
    const char* name;
    double thermal;
};

constexpr Site sites[] = {
    {"washington_dc_yoshino", 2.7}, {"harvard_azalea", 2.4}, {"harvard_mountain_laurel", 5.3}};
constexpr const char* noReference =
    "skipped: WITHY_REFERENCE is not set, so there are no reference years to read";

std::optional<std::vector<BloomYear>> yearsOf(const char* site) {
    const auto blooms = tests::referenceRows(std::string("bloom/") + site + "_bloom.csv");
    const auto weather = tests::referenceRows(std::string("bloom/") + site + "_weather.csv");
    if (!blooms || !weather) return std::nullopt;
    std::map<Day, DayRange> days;
    for (const auto& row : *weather)
        days[*Day::parse(row[0])] = {std::stod(row[1]), std::stod(row[2])};
    std::vector<BloomYear> years;
    for (const auto& row : *blooms) {
        BloomYear year{*Day::parse(row[1]), *Day::fromYmd(std::stoi(row[0]), 1, 1), {}};
        for (Day day = year.from; days.contains(day); day = day + 1)
            year.days.push_back(days[day]);
        years.push_back(std::move(year));
    }
    return years;
}

struct Tally {
    double sum = 0;
    int years = 0;
    int inside = 0;

    void add(double error, bool in) {
        sum += std::abs(error);
        ++years;
        inside += in ? 1 : 0;
    }

    void add(const Tally& other) {
        sum += other.sum;
        years += other.years;
        inside += other.inside;
    }

    [[nodiscard]] double mean() const { return sum / years; }

    [[nodiscard]] double percent() const { return 100.0 * inside / years; }
};

Day meanDate(const BloomModel& model, Day near) {
    return anchorFor(model, near) + static_cast<int>(std::lround(model.meanDay));
}

void foretell(const BloomModel& model, const BloomOutlook& outlook, Day real, Tally& calendar,
              Tally& chosen) {
    const auto f = predictBloom(model, outlook, real);
    calendar.add(meanDate(model, real) - real, false);
    chosen.add(f.day - real, f.hopeful <= real && real <= f.cautious);
}

BloomOutlook allOf(const BloomYear& y) {
    return {y.from, y.days, static_cast<int>(y.days.size()), 0};
}

std::vector<BloomYear> without(std::vector<BloomYear> years, std::size_t i) {
    years.erase(years.begin() + static_cast<std::ptrdiff_t>(i));
    return years;
}

void print(const std::string& what, const Tally& calendar, const Tally& chosen) {
    std::printf("%-52s %5d years  calendar %5.2f  chosen %5.2f days  in range %3.0f %%\n", what.c_str(),
                chosen.years, calendar.mean(), chosen.mean(), chosen.percent());
}

TEST(BloomFitReference, EachYearLeftOut) {
    Tally pooledCalendar;
    Tally pooled;
    for (const auto& site : sites) {
        SCOPED_TRACE(site.name);
        const auto years = yearsOf(site.name);
        if (!years) GTEST_SKIP() << noReference;
        Tally calendar;
        Tally chosen;
        for (std::size_t i = 0; i < years->size(); ++i)
            foretell(fitBloom(without(*years, i)), allOf((*years)[i]), (*years)[i].firstCut, calendar,
                     chosen);
        print(std::string(site.name) + ", each year left out", calendar, chosen);
        EXPECT_LE(chosen.mean(), site.thermal + 0.1);
        if (years->size() > 50) {
            EXPECT_GE(chosen.percent(), 50);
            EXPECT_LE(chosen.percent(), 70);
        }
        pooledCalendar.add(calendar);
        pooled.add(chosen);
    }
    print("all sites, each year left out", pooledCalendar, pooled);
    EXPECT_GE(pooled.percent(), 50);
    EXPECT_LE(pooled.percent(), 70);
}

/// The others' mean minimum and maximum about each day of the year, and how real days scatter about it.
struct Climate {
    std::vector<DayRange> days; ///< 1 January first
    double spread = 0;

    explicit Climate(const std::vector<BloomYear>& years) {
        constexpr int length = 212;
        constexpr int half = 7;
        for (int i = 0; i < length; ++i) {
            DayRange sum;
            double n = 0;
            for (const auto& y : years)
                for (int j = std::max(0, i - half);
                     j <= std::min(i + half, static_cast<int>(y.days.size()) - 1); ++j) {
                    sum.minimum += y.days[static_cast<std::size_t>(j)].minimum;
                    sum.maximum += y.days[static_cast<std::size_t>(j)].maximum;
                    n += 1;
                }
            if (n > 0) days.push_back({sum.minimum / n, sum.maximum / n});
        }
        double squares = 0;
        double n = 0;
        for (const auto& y : years)
            for (std::size_t i = 0; i < std::min(y.days.size(), days.size()); ++i) {
                const double off =
                    (y.days[i].minimum + y.days[i].maximum - days[i].minimum - days[i].maximum) / 2;
                squares += off * off;
                n += 1;
            }
        spread = std::sqrt(squares / n);
    }
};

BloomOutlook issued(const BloomYear& y, const Climate& climate, Day day) {
    BloomOutlook outlook{y.from, climate.days, std::clamp(day - y.from, 0, static_cast<int>(y.days.size())),
                         climate.spread};
    std::copy_n(y.days.begin(), outlook.known, outlook.days.begin());
    return outlook;
}

// Issued so many days before the mean date, for the years not yet in flower a week before it.
TEST(BloomFitReference, ImprovesAsTheDateNears) {
    constexpr int leads[] = {28, 14, 7};
    std::map<int, Tally> pooled;
    for (const auto& site : sites) {
        const auto years = yearsOf(site.name);
        if (!years) GTEST_SKIP() << noReference;
        std::map<int, Tally> calendar;
        std::map<int, Tally> chosen;
        for (std::size_t i = 0; i < years->size(); ++i) {
            const auto& y = (*years)[i];
            const auto others = without(*years, i);
            const auto model = fitBloom(others);
            const Climate climate(others);
            const Day mean = meanDate(model, y.firstCut);
            if (y.firstCut < mean - 7) continue;
            for (const int lead : leads)
                foretell(model, issued(y, climate, mean - lead), y.firstCut, calendar[lead], chosen[lead]);
        }
        for (const int lead : leads) {
            print(std::string(site.name) + ", issued " + std::to_string(lead) + " days before",
                  calendar[lead], chosen[lead]);
            pooled[lead].add(chosen[lead]);
        }
        if (years->size() > 50) {
            SCOPED_TRACE(site.name);
            EXPECT_LT(chosen[14].mean(), chosen[28].mean());
            EXPECT_LT(chosen[7].mean(), chosen[14].mean());
        }
    }
    EXPECT_LT(pooled[14].mean(), pooled[28].mean());
    EXPECT_LT(pooled[7].mean(), pooled[14].mean());
    for (const int lead : leads) {
        EXPECT_GE(pooled[lead].percent(), 50) << lead;
        EXPECT_LE(pooled[lead].percent(), 70) << lead;
    }
}

/// Numbers 0 to n - 1 in a deterministic disorder.
std::vector<std::size_t> shuffled(std::size_t n, std::mt19937& random) {
    std::vector<std::size_t> order(n);
    for (std::size_t i = 0; i < n; ++i)
        order[i] = i;
    for (std::size_t i = n - 1; i > 0; --i)
        std::swap(order[i], order[random() % (i + 1)]);
    return order;
}

constexpr std::size_t shortRecord = 5;

TEST(BloomFitReference, FiveYearsOfRecord) {
    for (const auto& site : sites) {
        SCOPED_TRACE(site.name);
        const auto years = yearsOf(site.name);
        if (!years) GTEST_SKIP() << noReference;
        Tally windowCalendar;
        Tally window;
        for (std::size_t from = 0; from + shortRecord <= years->size(); ++from) {
            const auto at = years->begin() + static_cast<std::ptrdiff_t>(from);
            const auto model = fitBloom({at, at + shortRecord});
            for (std::size_t i = 0; i < years->size(); ++i)
                if (i < from || i >= from + shortRecord)
                    foretell(model, allOf((*years)[i]), (*years)[i].firstCut, windowCalendar, window);
        }
        Tally drawnCalendar;
        Tally drawn;
        std::mt19937 random(1);
        for (int turn = 0; turn < 200; ++turn) {
            const auto order = shuffled(years->size(), random);
            std::vector<BloomYear> record;
            for (std::size_t i = 0; i < shortRecord; ++i)
                record.push_back((*years)[order[i]]);
            const auto& y = (*years)[order[shortRecord]];
            foretell(fitBloom(record), allOf(y), y.firstCut, drawnCalendar, drawn);
        }
        print(std::string(site.name) + ", five running years", windowCalendar, window);
        print(std::string(site.name) + ", five years drawn", drawnCalendar, drawn);
        EXPECT_LE(window.mean(), windowCalendar.mean() + 0.5);
        EXPECT_LE(drawn.mean(), drawnCalendar.mean() + 0.5);
    }
}

// Each year's date given to another year's weather: a plant that takes no notice of warmth.
TEST(BloomFitReference, APlantThatHeedsNoWarmth) {
    const auto years = yearsOf(sites[0].name);
    if (!years) GTEST_SKIP() << noReference;
    for (const std::size_t record : {std::size_t{5}, std::size_t{8}, std::size_t{20}}) {
        SCOPED_TRACE(record);
        Tally calendar;
        Tally chosen;
        std::mt19937 random(7);
        for (int turn = 0; turn < 200; ++turn) {
            const auto order = shuffled(years->size(), random);
            std::vector<BloomYear> strange;
            for (std::size_t i = 0; i <= record; ++i) {
                BloomYear y = (*years)[order[i]];
                const Day date = (*years)[order[(i + 1) % (record + 1)]].firstCut;
                y.firstCut = *Day::fromYmd(y.from.year(), date.month(), date.dayOfMonth());
                strange.push_back(std::move(y));
            }
            const BloomYear last = strange.back();
            strange.pop_back();
            foretell(fitBloom(strange), allOf(last), last.firstCut, calendar, chosen);
        }
        print("washington, dates of other years, " + std::to_string(record) + " years", calendar, chosen);
        EXPECT_LE(chosen.mean(), calendar.mean() + 0.5);
    }
}

// ---- years made up, so that what should come out is known ----

/// From 1 November before `year`: a cosine year, coldest late in January, with runs of warm and cold.
BloomYear madeUp(int year, double base, double heat, std::mt19937& random, int months = 0) {
    BloomYear y;
    y.from = *Day::fromYmd(year - 1, 11, 1);
    double off = 0;
    for (int i = 0; i < 330; ++i) {
        off = 0.85 * off + (static_cast<double>(random() % 1000) / 500 - 1) * 3;
        const double mean = 9 - 8 * std::cos(2 * M_PI * (i - 85) / 365.0) + off;
        y.days.push_back({mean - 4, mean + 5});
    }
    double sum = 0;
    for (int i = 115; i < 330; ++i) { // a month after the coldest
        sum += soundHeatUnits(y.days[static_cast<std::size_t>(i)].minimum,
                              y.days[static_cast<std::size_t>(i)].maximum, {base, {}});
        if (sum < heat) continue;
        y.firstCut = y.from + i;
        break;
    }
    y.from = y.from + months * 30;
    y.firstCut = y.firstCut + months * 30;
    return y;
}

std::vector<BloomYear> madeUpYears(int count, int months = 0) {
    std::mt19937 random(11);
    std::vector<BloomYear> years;
    for (int i = 0; i < count; ++i)
        years.push_back(madeUp(2001 + i, 4, 250, random, months));
    return years;
}

TEST(BloomFit, FindsTheWarmthThatMadeTheDates) {
    for (const int months : {0, 3, 6, 8, 10}) { // round the year: south of the equator, over the year's end
        SCOPED_TRACE(months);
        const auto model = fitBloom(madeUpYears(20, months));
        EXPECT_EQ(model.kind, BloomModelKind::thermal);
        EXPECT_LT(model.thermal.meanAbsolute, 1.5);
        EXPECT_GT(model.calendar.meanAbsolute, 3);
        ASSERT_FALSE(model.members.empty());
        EXPECT_NEAR(model.members.front().base, 4, 1);
        double weights = 0;
        for (const auto& m : model.members)
            weights += m.weight;
        EXPECT_NEAR(weights, 1, 1e-12);
        const auto y = madeUpYears(22, months).back();
        EXPECT_LE(std::abs(predictBloom(model, allOf(y), y.firstCut + 20).day - y.firstCut), 3);
    }
}

TEST(BloomFit, NeverOnFewerThanFourYears) {
    for (int n = 0; n <= 5; ++n) {
        SCOPED_TRACE(n);
        const auto years = madeUpYears(n);
        const auto model = fitBloom(years);
        EXPECT_EQ(model.years, n);
        const bool few = std::count(model.notes.begin(), model.notes.end(), BloomFitNote::tooFewYears) == 1;
        EXPECT_EQ(few, n < 4);
        if (n >= 4) continue;
        EXPECT_EQ(model.kind, BloomModelKind::calendar);
        EXPECT_TRUE(model.members.empty());
        const auto other = madeUpYears(12).back();
        const auto f = predictBloom(model, allOf(other), other.firstCut);
        EXPECT_FALSE(f.byWarmth);
        EXPECT_LE(f.hopeful, f.day);
        EXPECT_LE(f.day, f.cautious);
    }
}

TEST(BloomFit, LeavesOutWhatItCannotUse) {
    auto years = madeUpYears(8);
    const auto whole = fitBloom(years);
    EXPECT_EQ(std::count(whole.notes.begin(), whole.notes.end(), BloomFitNote::yearLeftOut), 0);
    years[2].days.resize(40);              // ends before the first cut
    years[4].days[60] = {9, 3};            // minimum above maximum
    years[5].from = years[5].firstCut - 5; // begins too late
    years[5].days.erase(years[5].days.begin(), years[5].days.end() - 20);
    years.push_back(years[7]);
    years.back().firstCut = years.back().firstCut + 12; // a second date of one year
    const auto model = fitBloom(years);
    EXPECT_EQ(model.years, 5);
    EXPECT_EQ(std::count(model.notes.begin(), model.notes.end(), BloomFitNote::yearLeftOut), 1);
}

TEST(BloomFit, TheCalendarStandsWithoutTemperatures) {
    const auto model = fitBloom(madeUpYears(12));
    const Day near = *Day::fromYmd(2030, 4, 10);
    const auto none = predictBloom(model, {}, near);
    EXPECT_FALSE(none.byWarmth);
    EXPECT_EQ(none.day, meanDate(model, near));
    const auto late = predictBloom(model, {near, std::vector<DayRange>(30, {5, 12}), 30, 0}, near);
    EXPECT_FALSE(late.byWarmth); // they begin after the warmth that counts
    EXPECT_FALSE(model.working.empty());
}

} // namespace
} // namespace withy::garden
