// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/sun.h"
#include "tests/garden/reference.h"
#include "tests/garden/sun_words.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace withy::garden {
namespace {

using tests::Row;
using tests::word;

/// Seconds after midnight of HH:MM or HH:MM:SS.
std::int64_t secondsOf(const std::string& clock) {
    const std::int64_t seconds = clock.size() > 5 ? std::stoi(clock.substr(6, 2)) : 0;
    return std::stoi(clock.substr(0, 2)) * 3600 + std::stoi(clock.substr(3, 2)) * 60 + seconds;
}

void expectNear(const char* what, Day day, const std::optional<Instant>& got, const std::string& want,
                std::int64_t limit) {
    SCOPED_TRACE(what);
    ASSERT_EQ(got.has_value(), !want.empty());
    if (got) {
        EXPECT_LE(std::abs(got->seconds - day.number * std::int64_t{86400} - secondsOf(want)), limit);
    }
}

struct Events {
    std::string status;
    std::optional<Instant> begin;
    std::optional<Instant> end;
};

Events eventsOf(const std::string& kind, Day day, GeoPoint at) {
    if (kind == "sun") {
        const auto sun = sunOnUtDate(day, at);
        return {word(sun->status), sun->rise, sun->set};
    }
    const auto civil = civilTwilightOnUtDate(day, at);
    return {word(civil->status), civil->dawn, civil->dusk};
}

// Yearly tables of rise and set and of civil twilight of the US Naval Observatory, 2020 and 2023,
// six stations from 78 S to 78 N, printed to the minute: within one minute, status exact.
TEST(SunReference, PrintedAlmanac) {
    const auto rows = tests::referenceRows("sun/almanac_usno.csv");
    if (!rows)
        GTEST_SKIP() << "skipped: WITHY_REFERENCE is not set, so there is no reference almanac to read";
    ASSERT_GT(rows->size(), 100u);
    for (const Row& row : *rows) {
        SCOPED_TRACE(row[0] + " at " + row[1] + " " + row[3]);
        ASSERT_EQ(row.size(), 7u);
        const Day day = *Day::parse(row[0]);
        const Events got = eventsOf(row[3], day, {std::stod(row[1]), std::stod(row[2])});
        EXPECT_EQ(got.status, row[4]);
        expectNear("begin", day, got.begin, row[5], 60);
        expectNear("end", day, got.end, row[6], 60);
    }
}

// Output of the reference program of the solar position algorithm (I. Reda and A. Andreas,
// NREL/TP-560-34302), 2010 and 2110: 10 s up to 60 degrees, 30 s at 78.
TEST(SunReference, SolarPositionAlgorithm) {
    const auto rows = tests::referenceRows("sun/spa_reference.csv");
    if (!rows) GTEST_SKIP() << "skipped: WITHY_REFERENCE is not set, so there is no reference output to read";
    ASSERT_GT(rows->size(), 20u);
    for (const Row& row : *rows) {
        SCOPED_TRACE(row[0] + " at " + row[1]);
        ASSERT_EQ(row.size(), 6u);
        const Day day = *Day::parse(row[0]);
        const double latitude = std::stod(row[1]);
        const auto got = sunOnUtDate(day, {latitude, std::stod(row[2])});
        ASSERT_TRUE(got.ok());
        const std::int64_t limit = std::abs(latitude) <= 60 ? 10 : 30;
        EXPECT_EQ(got->status == SunStatus::normal, !row[3].empty());
        expectNear("rise", day, got->rise, row[3], limit);
        expectNear("set", day, got->set, row[5], limit);
        // The program gives no transit either where the sun stays up or down.
        if (!row[4].empty()) expectNear("transit", day, got->transit, row[4], limit);
    }
}

} // namespace
} // namespace withy::garden
