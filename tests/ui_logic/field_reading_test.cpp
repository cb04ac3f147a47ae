// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <gmock/gmock.h>

/// What people type into fields, and what is understood.
/// Inches: 25.4 mm exactly, pounds: 0.45359237 kg exactly (international yard and pound agreement of
/// 1959). Days and times in the kept form: ISO 8601.
namespace withy::ui {

namespace {

using model::Season;
using model::TableKind;
using model::UnitSystem;
using model::Value;
using testing::HasSubstr;

Season seasonOf(const char* currency = "GBP", UnitSystem units = UnitSystem::metric) {
    auto settings = model::sample::settings();
    settings.currency = currency;
    settings.units = units;
    auto zinnia = model::sample::plant(1, "Zinnia, coral");
    auto again = model::sample::plant(2, "Cosmos");
    auto twin = model::sample::plant(3, "Cosmos");
    model::Edit edit("test");
    edit.put(settings).put(zinnia).put(again).put(twin);
    return model::apply(Season{}, edit).value().season;
}

const model::FieldInfo& fieldOf(TableKind kind, const char* name) {
    const auto* field = model::tableInfo(kind).field(name);
    EXPECT_NE(field, nullptr) << name;
    return *field;
}

std::string shown(const Value& value) {
    if (const auto* s = std::get_if<std::string>(&value)) return *s;
    if (const auto* n = std::get_if<std::int64_t>(&value)) return std::to_string(*n);
    if (const auto* x = std::get_if<double>(&value)) return std::to_string(*x);
    return "(blank)";
}

struct Understood {
    TableKind kind;
    const char* field;
    const char* typed;
    Value kept;
    Value now = {};
};

void expectUnderstood(const Season& season, const std::vector<Understood>& cases) {
    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.field) + " <- " + c.typed);
        const auto reading =
            readField(season, c.kind, fieldOf(c.kind, c.field), QString::fromUtf8(c.typed), c.now);
        EXPECT_EQ(reading.sentence.toStdString(), "");
        EXPECT_TRUE(reading.ok());
        if (!reading.ok()) continue;
        const auto* want = std::get_if<double>(&c.kept);
        const auto* got = std::get_if<double>(&*reading.value);
        if (want && got)
            EXPECT_NEAR(*got, *want, 1e-9);
        else
            EXPECT_EQ(shown(*reading.value), shown(c.kept));
    }
}

struct Refused {
    TableKind kind;
    const char* field;
    const char* typed;
    const char* says; ///< a part of the sentence
};

void expectRefused(const Season& season, const std::vector<Refused>& cases) {
    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.field) + " <- " + c.typed);
        const auto reading = readField(season, c.kind, fieldOf(c.kind, c.field), QString::fromUtf8(c.typed));
        EXPECT_FALSE(reading.ok());
        EXPECT_THAT(reading.sentence.toStdString(), HasSubstr(c.says));
    }
}

Value n(std::int64_t value) {
    return value;
}

Value s(const char* value) {
    return std::string(value);
}

constexpr auto bookings = TableKind::bookings;
constexpr auto containers = TableKind::containers;
constexpr auto plants = TableKind::plants;
constexpr auto patches = TableKind::patches;

} // namespace

TEST(FieldReading, DaysAsPeopleWriteThem) {
    const char* day = "2027-09-11"; // a Saturday; the season runs from 1 March to 31 October 2027
    std::vector<Understood> cases;
    for (const char* typed :
         {"11 sep", "11 Sep 2027", "11 september", "sep 11", "11/9", "11/09", "11/9/27", "11/9/2027",
          "11.9.2027", "11.9.", "11-9-2027", "2027-09-11", "2027/9/11", "Sat 11 Sep 2027",
          "saturday 11th september", "the 11th of Sept", "Fri 11 Sep", "  11 SEP  "})
        cases.push_back({bookings, "held_until", typed, s(day)});
    expectUnderstood(seasonOf(), cases);
    expectUnderstood(seasonOf(), {
                                     {bookings, "held_until", "29 feb 2028", s("2028-02-29")},
                                     {bookings, "held_until", "1 feb", s("2027-02-01")}, // before the season
                                     {bookings, "held_until", "", Value{}},
                                 });
    expectRefused(seasonOf(), {
                                  {bookings, "held_until", "11", "is not a day"},
                                  {bookings, "held_until", "soon", "Write it as 11 Sep 2027"},
                                  {bookings, "held_until", "30 feb", "There is no 30 feb"},
                                  {bookings, "held_until", "29/2/2027", "There is no"},
                                  {bookings, "held_until", "9/13", "The day comes first"},
                                  {bookings, "held_until", "11 ma", "is not a day"}, // March or May
                                  {bookings, "held_until", "1 jan 1066", "There is no"},
                                  {TableKind::payments, "date", "", "may not be blank"},
                              });
}

TEST(FieldReading, DaysWithoutAYearFallInASeasonOverNewYear) {
    auto settings = model::sample::settings();
    settings.firstDay = model::sample::day(2027, 10, 1);
    settings.lastDay = model::sample::day(2028, 9, 30);
    const auto season = model::apply(Season{}, model::Edit("test").put(settings)).value().season;
    expectUnderstood(season, {{bookings, "held_until", "11 nov", s("2027-11-11")},
                              {bookings, "held_until", "11 mar", s("2028-03-11")},
                              {bookings, "held_until", "29 feb", s("2028-02-29")}});
}

TEST(FieldReading, HoursAsPeopleWriteThem) {
    const Value before = s("2027-09-11T12:00");
    std::vector<Understood> cases;
    for (const char* typed :
         {"18:30", "18.30", "6.30pm", "6:30 PM", "11 sep, 18:30", "11/9 6.30pm", "2027-09-11T18:30",
          "2027-09-11 18:30", "Sat 11 Sep 2027, 18:30", "11 sep at 6.30 pm"})
        cases.push_back({bookings, "event_start", typed, s("2027-09-11T18:30"), before});
    cases.push_back({bookings, "event_start", "12 sep", s("2027-09-12T12:00"), before}); // keeps its hour
    cases.push_back({bookings, "event_start", "noon", s("2027-09-11T12:00"), before});
    cases.push_back(
        {bookings, "event_start", "midnight", s("2027-09-12T00:00"), before}); // the end of the day
    cases.push_back({bookings, "event_start", "12 am", s("2027-09-11T00:00"), before});
    cases.push_back({bookings, "event_start", "12 pm", s("2027-09-11T12:00"), before});
    expectUnderstood(seasonOf(), cases);
    expectRefused(seasonOf(), {
                                  {bookings, "look_good_until", "18:30", "The day is missing"},
                                  {bookings, "look_good_until", "11 sep", "The hour is missing"},
                                  {bookings, "look_good_until", "11 sep 25:00", "is not a day"},
                                  {bookings, "look_good_until", "11 sep 13pm", "is not a day"},
                              });
    expectUnderstood(seasonOf(), {
                                     {TableKind::venues, "in_from", "13", n(780)},
                                     {TableKind::venues, "in_from", "1pm", n(780)},
                                     {TableKind::venues, "in_from", "1300", n(780)},
                                     {TableKind::venues, "in_from", "13:05", n(785)},
                                     {TableKind::venues, "out_by", "24:00", n(1440)},
                                     {TableKind::venues, "out_by", "midnight", n(1440)},
                                 });
    expectRefused(seasonOf(), {{TableKind::venues, "in_from", "24:01", "is not a time of day"},
                               {TableKind::venues, "in_from", "13:75", "is not a time of day"},
                               {TableKind::venues, "in_from", "early", "Write it as 18:30"}});
}

TEST(FieldReading, MoneyToThePenny) {
    std::vector<Understood> cases;
    for (const char* typed : {"9.5", "9.50", "£9.50", "GBP 9.50", "gbp9.50", "£ 9.5"})
        cases.push_back({plants, "price_per_stem", typed, n(950)});
    cases.push_back({plants, "price_per_stem", "1,240", n(124000)}); // three digits cannot be pence
    cases.push_back({plants, "price_per_stem", "1,240.50", n(124050)});
    cases.push_back({plants, "price_per_stem", ".85", n(85)});
    cases.push_back({plants, "price_per_stem", "0", n(0)});
    cases.push_back({plants, "price_per_stem", "", Value{}});
    cases.push_back({TableKind::payments, "amount", "-12", n(-1200)});
    cases.push_back({TableKind::payments, "amount", "−12", n(-1200)}); // a true minus sign
    expectUnderstood(seasonOf(), cases);
    expectUnderstood(seasonOf("JPY"),
                     {{plants, "price_per_stem", "JPY 1,200", n(1200)}}); // no minor unit (ISO 4217)
    expectUnderstood(seasonOf("EUR"), {{plants, "price_per_stem", "€9.50", n(950)}});
    expectRefused(seasonOf(),
                  {
                      {plants, "price_per_stem", "9,50", "Is “9,50” meant as 9.50?"},
                      {plants, "price_per_stem", "9.505", "is no amount"},
                      {plants, "price_per_stem", "€9.50", "is not an amount of GBP"},
                      {plants, "price_per_stem", "a lot", "Write it as £9.50"},
                      {plants, "price_per_stem", "-1", "The least is £0.00"},
                      {plants, "price_per_stem", "9999999999999", "The most is £1,000,000,000.00"},
                  });
}

TEST(FieldReading, LengthsInTheUnitPeopleType) {
    expectUnderstood(seasonOf(),
                     {
                         {containers, "inner_rim", "75", n(75)},
                         {containers, "inner_rim", "75 mm", n(75)},
                         {containers, "inner_rim", "7.5cm", n(75)},
                         {containers, "inner_rim", "0.075 m", n(75)},
                         {containers, "inner_rim", "3 in", n(76)},  // 76.2 mm
                         {containers, "inner_rim", "3\"", n(76)},   //
                         {containers, "inner_rim", "1 ft", n(305)}, // 304.8 mm
                         {containers, "inner_rim", "100 in", n(2540)},
                         {plants, "spacing", "30", n(300)}, // shown and so typed in centimetres
                         {patches, "bed_length", "12.5", n(12500)},
                         {patches, "bed_length", "10 yd", n(9144)},
                         {containers, "measured_volume", "0.5 l", n(500)},
                         {containers, "measured_volume", "2 l", n(2000)},
                         {containers, "measured_volume", "33 cl", n(330)},
                         {containers, "empty_weight", "1.2 kg", n(1200)},
                         {containers, "empty_weight", "1 lb", n(454)}, // 453.59 g
                         {plants, "stem_diameter_mm", "6", Value(6.0)},
                         {plants, "stem_diameter_mm", "1 in", Value(25.4)},
                         {TableKind::venues, "distance_km", "10 miles", Value(16.0934)}, // 16.09344
                     });
    expectUnderstood(seasonOf("GBP", UnitSystem::imperial),
                     {
                         {containers, "inner_rim", "3", n(76)},
                         {containers, "inner_rim", "2.95", n(75)},
                         {containers, "inner_rim", "75 mm", n(75)},
                         {plants, "spacing", "12", n(305)},
                         {patches, "bed_length", "10", n(3048)},        // feet
                         {containers, "measured_volume", "12", n(355)}, // 354.88
                         {containers, "measured_volume", "1 US gal", n(3785)},
                         {containers, "measured_volume", "350 ml", n(350)},
                         {plants, "storage_celsius", "41", Value(5.0)},
                         {plants, "storage_celsius", "41°", Value(5.0)},
                         {plants, "storage_celsius", "5 °C", Value(5.0)},
                         {plants, "storage_celsius", "41 F", Value(5.0)},
                     });
    expectRefused(seasonOf("GBP", UnitSystem::imperial),
                  {
                      // Two are called so: 28.41 ml in Britain, 29.57 ml in the States (SP 811, B.8).
                      {containers, "measured_volume", "12 fl oz", "“fl oz” is no unit of this figure"},
                      {containers, "measured_volume", "1 pint", "“pint” is no unit of this figure"},
                      {plants, "storage_celsius", "-80", "-80 °F is too small. The least is -76 °F."},
                  });
    expectRefused(seasonOf(),
                  {
                      {containers, "inner_rim", "75 kg", "“kg” is no unit of this figure"},
                      {containers, "inner_rim", "75.5 mm", "Leave the fraction out"},
                      {containers, "inner_rim", "0", "0 mm is too small. The least is 1 mm."},
                      {containers, "inner_rim", "6 m", "6,000 mm is too much. The most is 5,000 mm."},
                      {containers, "inner_rim", "wide", "is not a number"},
                      {containers, "inner_rim", "", "may not be blank"},
                      {containers, "inner_rim", "99999999999999999999999", "too much"},
                  });
}

TEST(FieldReading, FiguresAndWhatCouldMeanTwoThings) {
    expectUnderstood(seasonOf(),
                     {
                         {plants, "vase_life_min_days", "5", Value(5.0)},
                         {plants, "vase_life_min_days", "5 days", Value(5.0)},
                         {plants, "vase_life_min_days", "1 week", Value(7.0)},
                         {plants, "opening_hours", "90 min", Value(1.5)},
                         {plants, "opening_hours", "1:30", Value(1.5)},
                         {plants, "storage_celsius", "-1.5", Value(-1.5)},
                         {plants, "storage_celsius", "4 °C", Value(4.0)},
                         {plants, "storage_celsius", "41 F", Value(5.0)}, // (41 - 32) x 5 / 9
                         {plants, "loss_percent", "8 %", Value(8.0)},
                         {containers, "owned", "48", n(48)},
                         {containers, "owned", "1,240", n(1240)}, // a fraction of a jar there is not
                         {containers, "owned", "1,000", n(1000)},
                         {containers, "owned", "1 240", n(1240)},
                         {containers, "owned", "4+30+6", n(40)},
                         {TableKind::venues, "travel", "25", n(25)},
                         {TableKind::venues, "travel", "25 min", n(25)},
                         {TableKind::venues, "travel", "1 h 15", n(75)},
                         {TableKind::venues, "travel", "1.5 hours", n(90)},
                     });
    expectRefused(seasonOf(), {
                                  {plants, "vase_life_min_days", "1,5", "Is “1,5” meant as 1.5?"},
                                  {plants, "heat_units_to_flower", "1,234", "could be 1234 or 1.234"},
                                  {containers, "owned", "1,5", "is not a whole number"},
                                  {containers, "owned", "1.5", "Leave the fraction out"},
                                  {containers, "owned", "many", "is not a number"},
                                  {plants, "loss_percent", "100", "The most is 99 %."},
                                  {plants, "storage_celsius", "nan", "is not a number"},
                                  {plants, "storage_celsius", "1e5", "no unit"},
                              });
}

TEST(FieldReading, WordsNamesAndColours) {
    expectUnderstood(seasonOf(),
                     {
                         {TableKind::designs, "kind", "hand-tied", s("hand-tied")},
                         {TableKind::designs, "kind", "HAND", s("hand-tied")}, // tells it from the others
                         {plants, "ethylene_sensitive", "yes", n(1)},
                         {plants, "ethylene_sensitive", "n", n(0)},
                         {plants, "ethylene_sensitive", "", Value{}},
                         {patches, "plant", " zinnia, CORAL ", n(1)},
                         {patches, "plant", "Cosmos", n(3), n(3)}, // which one is known already
                         {plants, "colour_1", "#AD4A08", s("#ad4a08")},
                         {plants, "colour_1", "ad4a08", s("#ad4a08")},
                         {plants, "colour_1", "#f80", s("#ff8800")},
                         {plants, "colour_1", "coral", s("#ff7f50")}, // CSS Color Module Level 4
                         {plants, "colour_1", "light coral", s("#f08080")},
                         {plants, "colour_1", "Plum", s("#dda0dd")},
                         {plants, "colour_1", "Light Pink", s("#f9ccca")}, // ISCC-NBS centroid
                         {plants, "colour_1", "dark purplish red", s("#673147")},
                         {TableKind::plantFacts, "fact", "vase life, least", s("vase_life_min_days")},
                     });
    expectRefused(seasonOf(),
                  {
                      {TableKind::designs, "kind", "be", "is not one of these: table, hand-tied"},
                      {TableKind::designs, "kind", "b", "is not one of these"}, // buttonhole, bud vase ...
                      {plants, "ethylene_sensitive", "perhaps", "neither yes nor no"},
                      {patches, "plant", "Rose", "There is no plant called “Rose”"},
                      {patches, "plant", "Cosmos", "2 of the plants are called “Cosmos”"},
                      {patches, "plant", "", "A plant belongs here"},
                      {plants, "colour_1", "#12345", "is not a colour"},
                      {plants, "colour_1", "reddish", "is not a colour"},
                      {plants, "colour_1", "transparent", "is not a colour"},
                      {plants, "name", "  ", "may not be blank"},
                  });
}

TEST(FieldReading, MonthsByNameOrNumber) {
    constexpr auto normals = TableKind::monthNormals;
    expectUnderstood(seasonOf(), {
                                     {normals, "month", "March", n(3)},
                                     {normals, "month", "sep", n(9)},
                                     {normals, "month", "12", n(12)},
                                     {normals, "month", "f", n(2)},
                                 });
    expectRefused(seasonOf(), {
                                  {normals, "month", "Ma", "is not a month"}, // March or May
                                  {normals, "month", "13", "is not a month"},
                                  {normals, "month", "0", "is not a month"},
                              });
    const auto& field = *model::tableInfo(normals).field("month");
    EXPECT_EQ(fieldText(seasonOf(), normals, field, n(10)).toStdString(), "October");
}

// The centres of what the ISCC-NBS names mean (Kelly and Judd, NBS Special Publication 440, in sRGB), CSS
// Color Module Level 4 for coral and teal, and colours close by: the name is that of the centre.
TEST(FieldReading, ColoursAreCalledByPublishedWords) {
    const std::pair<const char*, const char*> cases[]{
        {"#673147", "dark purplish red"},
        {"#6a3049", "dark purplish red"},
        {"#be0032", "vivid red"},
        {"#fab57f", "light orange"},
        {"#f9b680", "light orange"},
        {"#8c82b6", "light violet"},
        {"#ff7f50", "coral"},
        {"#008080", "teal"},
        {"#f3e5ab", "pale yellow"},
    };
    const auto& field = *model::tableInfo(plants).field("colour_1");
    for (const auto& [hex, name] : cases) {
        SCOPED_TRACE(hex);
        EXPECT_EQ(shownText(seasonOf(), plants, field, s(hex)).toStdString(), name);
        EXPECT_EQ(fieldText(seasonOf(), plants, field, s(hex)).toStdString(), hex)
            << "typed and copied exactly";
    }
}

/// What a cell says can be typed into another one, and it says the same there.
TEST(FieldReading, TheNameOfAColourReadsBack) {
    for (int red = 0; red < 256; red += 51) {
        for (int green = 0; green < 256; green += 51) {
            for (int blue = 0; blue < 256; blue += 51) {
                const Colour colour{static_cast<std::uint8_t>(red), static_cast<std::uint8_t>(green),
                                    static_cast<std::uint8_t>(blue)};
                const QString name = colourName(colour);
                SCOPED_TRACE(colour.hex() + " " + name.toStdString());
                const auto again = readColour(name);
                ASSERT_TRUE(again);
                EXPECT_EQ(colourName(*again), name);
            }
        }
    }
}

TEST(FieldReading, TextIsKeptAsTyped) {
    for (const char* odd : {"<b>bold</b> & co", "🌻🌾", "عيد ميلاد", "two\nlines\twith a tab", " leading"}) {
        SCOPED_TRACE(odd);
        const auto reading =
            readField(seasonOf(), bookings, fieldOf(bookings, "wishes"), QString::fromUtf8(odd));
        ASSERT_TRUE(reading.ok());
        EXPECT_EQ(std::get<std::string>(*reading.value), odd);
    }
    const auto& wishes = fieldOf(bookings, "wishes"); // at most 10,000 characters
    EXPECT_TRUE(readField(seasonOf(), bookings, wishes, QString(10000, QLatin1Char('x'))).ok());
    const auto longer = readField(seasonOf(), bookings, wishes, QString(10001, QLatin1Char('x')));
    EXPECT_FALSE(longer.ok());
    EXPECT_EQ(longer.sentence.toStdString(), "It is 10,001 characters long. Keep it to 10,000.");
    // A character beyond the basic plane counts as one (code points, as the model counts).
    EXPECT_TRUE(readField(seasonOf(), bookings, wishes, QStringLiteral("🌻").repeated(10000)).ok());
    EXPECT_FALSE(readField(seasonOf(), bookings, wishes, QString(QChar(1))).ok());
}

TEST(FieldReading, WhatIsRefusedIsRefusedByTheModelToo) {
    auto season = seasonOf();
    season.bookings.put(model::sample::booking(1, "Supper"));
    const model::Ref supper{bookings, 1};
    EXPECT_EQ(judgeField(season, supper, "event_end", s("2027-09-11T23:00")).toStdString(), "");
    const auto early = judgeField(season, supper, "event_end", s("2027-09-11T10:00")).toStdString();
    EXPECT_EQ(early, "Sat 11 Sep, 10:00 is before the start, Sat 11 Sep, 18:30. Give a later end.");
    const auto tuesday = judgeField(season, supper, "event_end", s("2027-09-07T10:00")).toStdString();
    EXPECT_EQ(tuesday, "Tue 7 Sep, 10:00 is before the start, Sat 11 Sep, 18:30. Give a later end.");
    const auto held = judgeField(season, supper, "standing", s("held")).toStdString();
    EXPECT_THAT(held, HasSubstr("Held until: "));
    EXPECT_THAT(held, testing::Not(HasSubstr("1,"))); // nobody knows a booking by its number
}

} // namespace withy::ui
