// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/starting_seasons.h"

#include <gmock/gmock.h>

#include <QRegularExpression>

namespace withy::ui {

namespace {

using model::FieldKind;
using model::Season;
using model::TableKind;
using model::UnitSystem;
using model::Value;

Season withUnits(UnitSystem units, const char* currency = "GBP") {
    auto settings = model::sample::settings();
    settings.units = units;
    settings.currency = currency;
    return model::apply(Season{}, model::Edit("test").put(settings)).value().season;
}

std::string shown(const Season& season, TableKind kind, const char* field, const Value& value) {
    return fieldText(season, kind, *model::tableInfo(kind).field(field), value).toStdString();
}

} // namespace

TEST(FieldText, ValuesAsPeopleReadThem) {
    const auto metric = withUnits(UnitSystem::metric);
    const auto imperial = withUnits(UnitSystem::imperial);

    const struct {
        const Season& season;
        TableKind kind;
        const char* field;
        Value value;
        const char* text;
    } cases[] = {
        {metric, TableKind::bookings, "held_until", std::string("2027-09-11"), "Sat 11 Sep 2027"},
        {metric, TableKind::bookings, "event_start", std::string("2027-09-11T18:30"),
         "Sat 11 Sep 2027, 18:30"},
        {metric, TableKind::plants, "price_per_stem", std::int64_t{950}, "£9.50"},
        {metric, TableKind::plants, "price_per_stem", std::int64_t{124000}, "£1,240.00"},
        {metric, TableKind::settings, "latitude", 52.4, "52.4"},
        {metric, TableKind::settings, "work_from", std::int64_t{390}, "06:30"},
        {metric, TableKind::settings, "work_to", std::int64_t{1440}, "24:00"},
        {metric, TableKind::designs, "kind", std::string("hand-tied"), "hand-tied"},
        {metric, TableKind::plants, "ethylene_sensitive", std::int64_t{1}, "yes"},
        {metric, TableKind::plants, "ethylene_sensitive", Value{}, ""},
        {metric, TableKind::containers, "inner_rim", std::int64_t{75}, "75 mm"},
        {metric, TableKind::plants, "spacing", std::int64_t{305}, "30.5 cm"},
        {metric, TableKind::patches, "bed_length", std::int64_t{12500}, "12.5 m"},
        {metric, TableKind::plants, "vase_life_min_days", 1.0, "1 day"},
        {metric, TableKind::plants, "vase_life_min_days", 5.5, "5.5 days"},
        {metric, TableKind::plants, "storage_celsius", -1.0, "-1 °C"},
        {metric, TableKind::containers, "owned", std::int64_t{0}, "0"}, // nought is not blank
        {metric, TableKind::containers, "owned", Value{}, ""},
        // 25.4 mm to the inch, 304.8 mm to the foot, 453.59237 g to the pound: exact (agreement of 1959)
        {imperial, TableKind::containers, "inner_rim", std::int64_t{254}, "10 in"},
        {imperial, TableKind::containers, "inner_rim", std::int64_t{75}, "2.95 in"},
        {imperial, TableKind::patches, "bed_length", std::int64_t{3048}, "10 ft"},
        {imperial, TableKind::containers, "empty_weight", std::int64_t{454}, "16.01 oz"},
        // 29.5735295625 ml to the US fluid ounce (NIST Handbook 44, appendix C); 9/5 t + 32 (SP 811, 4.2.1.1)
        {imperial, TableKind::containers, "measured_volume", std::int64_t{350}, "11.83 US fl oz"},
        {imperial, TableKind::settings, "heat_limit_celsius", 22.0, "71.6 °F"},
        {imperial, TableKind::plants, "storage_celsius", -1.0, "30.2 °F"},
        {imperial, TableKind::plants, "heat_units_to_flower", 500.0, "900 °F days"},
    };

    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.field) + " -> " + c.text);
        EXPECT_EQ(shown(c.season, c.kind, c.field, c.value), c.text);
    }
}

TEST(FieldText, EveryMillimetreSurvivesInches) {
    const auto imperial = withUnits(UnitSystem::imperial);
    const auto& rim = *model::tableInfo(TableKind::containers).field("inner_rim");
    const auto& bed = *model::tableInfo(TableKind::patches).field("bed_length");
    for (std::int64_t mm = 1; mm <= 5000; ++mm) {
        SCOPED_TRACE(mm);
        const auto inches = readField(imperial, TableKind::containers, rim,
                                      fieldText(imperial, TableKind::containers, rim, Value(mm)));
        ASSERT_TRUE(inches.ok()) << inches.sentence.toStdString();
        ASSERT_EQ(std::get<std::int64_t>(*inches.value), mm);
        const auto feet = readField(imperial, TableKind::patches, bed,
                                    fieldText(imperial, TableKind::patches, bed, Value(mm)));
        ASSERT_TRUE(feet.ok());
        ASSERT_EQ(std::get<std::int64_t>(*feet.value), mm);
    }
}

/// Whatever a season holds: as shown, typed again, it is the same value.
void expectReadsBack(const Season& season) {
    int seen = 0;
    for (const auto& table : model::allTables()) {
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void* record) {
            for (const auto& field : table.fields) {
                const Value value = field.get(record);
                const QString words = fieldText(season, table.kind, field, value);
                SCOPED_TRACE(std::string(table.name) + " " + std::to_string(id) + " " +
                             std::string(field.name) + ": " + words.toStdString());
                // Several records may bear one name; then it matters which is meant now.
                const bool named = field.kind == FieldKind::reference;
                const auto reading = readField(season, table.kind, field, words, named ? value : Value{});
                EXPECT_EQ(reading.sentence.toStdString(), "");
                ASSERT_TRUE(reading.ok());
                EXPECT_EQ(*reading.value, value);
                ++seen;
            }
        });
    }
    EXPECT_GT(seen, 500);
}

TEST(FieldText, WhatIsShownReadsBackToTheSameValue) {
    expectReadsBack(demoSeason());
}

TEST(FieldText, VolumesWeightsAndTemperaturesSurviveToo) {
    const auto imperial = withUnits(UnitSystem::imperial);
    const auto back = [&](TableKind kind, const char* name, const Value& value) {
        const auto& field = *model::tableInfo(kind).field(name);
        const auto reading = readField(imperial, kind, field, fieldText(imperial, kind, field, value));
        EXPECT_TRUE(reading.ok()) << reading.sentence.toStdString();
        return reading.value.value_or(Value{});
    };
    for (std::int64_t n = 1; n <= 5000; ++n) {
        SCOPED_TRACE(n);
        ASSERT_EQ(std::get<std::int64_t>(back(TableKind::containers, "measured_volume", n)), n);
        ASSERT_EQ(std::get<std::int64_t>(back(TableKind::containers, "empty_weight", n)), n);
    }
    for (int hundredth = -6000; hundredth <= 6000; hundredth += 7) {
        const double celsius = hundredth / 100.0;
        SCOPED_TRACE(celsius);
        ASSERT_NEAR(std::get<double>(back(TableKind::plants, "storage_celsius", celsius)), celsius, 5e-4);
    }
}

TEST(FieldText, EveryFieldAndTableHasALabelOfItsOwn) {
    for (const auto& table : model::allTables()) {
        EXPECT_FALSE(tableLabel(table.kind, 1).isEmpty());
        EXPECT_FALSE(tableLabel(table.kind, 2).isEmpty());
        QStringList seen;
        for (const auto& field : table.fields) {
            const QString label = fieldLabel(table.kind, field);
            SCOPED_TRACE(std::string(table.name) + "." + std::string(field.name) + ": " +
                         label.toStdString());
            EXPECT_TRUE(label[0].isUpper());
            EXPECT_FALSE(label.contains(QLatin1Char('_')));
            EXPECT_FALSE(label.contains(QLatin1String("elsius"))); // the unit stands with the figure
            EXPECT_FALSE(seen.contains(label)) << "two fields of one table called alike";
            seen << label;
        }
    }
    EXPECT_EQ(tableLabel(TableKind::clients, 1), QStringLiteral("client"));
    EXPECT_EQ(tableLabel(TableKind::jobNotePlants, 2),
              QStringLiteral("plants of notes")); // the last in the list
}

TEST(FieldText, RecordsWithoutNamesAreKnownByWhatTheyHold) {
    const auto season = demoSeason();
    for (const auto& table : model::allTables()) {
        int left = 20;
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void*) {
            if (left-- <= 0) return;
            const auto words = recordWords(season, table.kind, id);
            EXPECT_FALSE(words.trimmed().isEmpty()) << table.name << " " << id;
            EXPECT_NE(words, tableLabel(table.kind, 1) + QLatin1Char(' ') + QString::number(id))
                << table.name;
        });
    }
}

} // namespace withy::ui
