// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/rules.h"
#include "core/model/text_check.h"
#include "tests/model/sample.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace withy::model {

using namespace sample;

namespace {

struct Case {
    const char* name;
    ProblemCode code;
    const char* field;
    std::function<Record()> record;
};

Booking bookingWith(const std::function<void(Booking&)>& change) {
    auto b = booking(1, "Supper");
    change(b);
    return b;
}

Plant plantWith(const std::function<void(Plant&)>& change) {
    auto p = plant(1, "Zinnia");
    change(p);
    return p;
}

Settings settingsWith(const std::function<void(Settings&)>& change) {
    auto s = settings();
    change(s);
    return s;
}

} // namespace

TEST(Rules, NameFieldAndCode) {
    const std::vector<Case> cases{
        {"empty title", ProblemCode::required, "title",
         [] { return bookingWith([](Booking& b) { b.title = "  "; }); }},
        {"title over-long", ProblemCode::tooLong, "title",
         [] { return bookingWith([](Booking& b) { b.title = std::string(10000, 'x'); }); }},
        {"title no text", ProblemCode::notText, "title",
         [] { return bookingWith([](Booking& b) { b.title = "\xff\xfe"; }); }},
        {"end before start", ProblemCode::endBeforeStart, "event_end",
         [] { return bookingWith([](Booking& b) { b.eventEnd = at(2027, 9, 11, 10); }); }},
        {"before the season", ProblemCode::outsideSeason, "event_start",
         [] {
             return bookingWith([](Booking& b) {
                 b.eventStart = at(2027, 2, 1, 10);
                 b.eventEnd = at(2027, 2, 1, 12);
             });
         }},
        {"skipped hour", ProblemCode::skippedHour, "event_start",
         [] {
             return bookingWith([](Booking& b) {
                 b.eventStart = at(2027, 3, 28, 1, 30);
                 b.eventEnd = at(2027, 3, 28, 4);
             });
         }},
        {"repeated hour", ProblemCode::repeatedHour, "event_end",
         [] {
             return bookingWith([](Booking& b) {
                 b.eventStart = at(2027, 10, 30, 19);
                 b.eventEnd = at(2027, 10, 31, 1, 30);
             });
         }},
        {"held for ever", ProblemCode::holdWithoutEnd, "held_until",
         [] { return bookingWith([](Booking& b) { b.standing = Standing::held; }); }},
        {"gift over all", ProblemCode::aboveMost, "gift_share",
         [] { return bookingWith([](Booking& b) { b.giftShare = 101; }); }},
        {"unknown client", ProblemCode::unknownRecord, "client",
         [] { return bookingWith([](Booking& b) { b.client = Id<Client>(4); }); }},
        {"negative bunch", ProblemCode::belowLeast, "bunch",
         [] { return plantWith([](Plant& p) { p.bunch = Stems(-1); }); }},
        {"lengths the wrong way", ProblemCode::lessThan, "stem_length_max",
         [] {
             return plantWith([](Plant& p) {
                 p.stemLengthMin = Millimetres(500);
                 p.stemLengthMax = Millimetres(300);
             });
         }},
        {"not a number", ProblemCode::notANumber, "q10",
         [] { return plantWith([](Plant& p) { p.q10 = std::nan(""); }); }},
        {"absurd vase life", ProblemCode::aboveMost, "vase_life_min_days",
         [] { return plantWith([](Plant& p) { p.vaseLifeMinDays = 1e9; }); }},
        {"beyond the pole", ProblemCode::aboveMost, "latitude",
         [] { return settingsWith([](Settings& s) { s.latitude = 91; }); }},
        {"no zone", ProblemCode::badZone, "zone_rule",
         [] { return settingsWith([](Settings& s) { s.zoneRule = "somewhere"; }); }},
        {"no currency", ProblemCode::badCurrency, "currency",
         [] { return settingsWith([](Settings& s) { s.currency = "gbp"; }); }},
        {"season backwards", ProblemCode::endBeforeStart, "last_day",
         [] { return settingsWith([](Settings& s) { s.lastDay = day(2026, 1, 1); }); }},
    };
    const auto s = season();
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        const auto refused = apply(s, Edit("x").put(c.record()));
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.error()[0].code, c.code);
        EXPECT_EQ(refused.error()[0].field, c.field);
    }
}

TEST(Rules, ALeapDayIsADayOnlyInLeapYears) {
    EXPECT_TRUE(Day::parse("2028-02-29"));
    EXPECT_FALSE(Day::parse("2027-02-29"));
    EXPECT_FALSE(Day::parse("2100-02-29"));
}

TEST(Rules, ShorteningTheSeasonNamesTheBookingItWouldStrand) {
    const auto s = apply(season(), Edit("x").put(booking(1, "Supper"))).value().season;
    const auto refused =
        apply(s, Edit("x").put(settingsWith([](Settings& v) { v.lastDay = day(2027, 8, 31); })));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error()[0].code, ProblemCode::outsideSeason);
    EXPECT_EQ(refused.error()[0].table, "booking");
    EXPECT_EQ(refused.error()[0].record, 1);
}

TEST(Rules, DoubledWeatherIsNamed) {
    Weather a;
    a.id = Id<Weather>(1);
    a.date = day(2027, 4, 1);
    Weather b = a;
    b.id = Id<Weather>(2);
    const auto refused = apply(season(), Edit("x").put(a).put(b));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error()[0].code, ProblemCode::duplicate);
    b.kind = WeatherKind::forecast;
    EXPECT_TRUE(apply(season(), Edit("x").put(a).put(b)).ok());
}

TEST(TextCheck, CountsCharactersAndKnowsWhatIsNoText) {
    EXPECT_EQ(charactersIn("abc"), 3u);
    EXPECT_EQ(charactersIn("caf\xc3\xa9"), 4u);
    EXPECT_EQ(charactersIn("\xf0\x9f\x8c\xbb"), 1u);
    EXPECT_EQ(charactersIn("a\nb\tc"), 5u);
    EXPECT_FALSE(charactersIn("\xc0\xaf"));         // overlong
    EXPECT_FALSE(charactersIn("\xed\xa0\x80"));     // surrogate
    EXPECT_FALSE(charactersIn("\xf4\x90\x80\x80")); // beyond Unicode
    EXPECT_FALSE(charactersIn(std::string_view("a\0b", 3)));
    EXPECT_FALSE(charactersIn("\x1b[31m"));
    EXPECT_FALSE(charactersIn("\xe2\x82"));
}

} // namespace withy::model
