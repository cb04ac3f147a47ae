// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_out.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <limits>
#include <random>

namespace withy::exchange {
namespace {

using nlohmann::json;

std::string compact(const auto& value) {
    return JsonWriter(JsonLayout::compact).value(value).text();
}

TEST(JsonOut, EscapesAsTheStandardSays) {
    // RFC 8259, section 7.
    const std::pair<std::string, std::string> cases[] = {
        {"", R"("")"},
        {"plain", R"("plain")"},
        {"say \"hi\"", R"("say \"hi\"")"},
        {"back\\slash", R"("back\\slash")"},
        {"a/b", R"("a/b")"},
        {"\b\f\n\r\t", R"("\b\f\n\r\t")"},
        {std::string("\0\x1f", 2), R"("\u0000\u001f")"},
        {"\u017E\u273F\U0001F33C", "\"\u017E\u273F\U0001F33C\""},
        {"bad \xFF", "\"bad \uFFFD\""},
    };
    for (const auto& [text, written] : cases)
        EXPECT_EQ(compact(text), written);
}

TEST(JsonOut, WritesNumbersShort) {
    const std::pair<double, const char*> cases[] = {
        {0, "0"},
        {-0.0, "0"},
        {1, "1"},
        {0.1, "0.1"},
        {-12.5, "-12.5"},
        {100000, "100000"},
        {1e15, "1e+15"},
        {1e-7, "1e-07"},
        {1.0 / 3, "0.3333333333333333"},
        {NAN, "null"},
        {std::numeric_limits<double>::infinity(), "null"},
    };
    for (const auto& [x, text] : cases)
        EXPECT_EQ(compact(x), text);
    EXPECT_EQ(compact(std::numeric_limits<std::int64_t>::min()), "-9223372036854775808");
}

TEST(JsonOut, EveryNumberReadsBackTheSame) {
    std::mt19937_64 random(4);
    for (int i = 0; i < 2000; ++i) {
        const double x =
            std::ldexp(static_cast<double>(random() % 1'000'000'007), static_cast<int>(random() % 200) - 100);
        EXPECT_EQ(json::parse(compact(x)).get<double>(), x);
    }
}

TEST(JsonOut, EveryTextReadsBackTheSame) {
    std::mt19937_64 random(5);
    for (int i = 0; i < 500; ++i) {
        std::string text;
        for (int k = 0; k < 20; ++k)
            text +=
                random() % 4 == 0 ? std::string("\u273F") : std::string(1, static_cast<char>(random() % 128));
        EXPECT_EQ(json::parse(compact(text)).get<std::string>(), text);
    }
}

TEST(JsonOut, TakesTheTypesOfTheModel) {
    JsonWriter w(JsonLayout::compact);
    w.beginObject()
        .member("day", *Day::parse("2026-07-04"))
        .member("time", *LocalTime::parse("2026-07-04 18:00"))
        .member("colour", Colour{1, 2, 255})
        .member("money", Money{950})
        .member("stems", Stems(7))
        .member("yes", true)
        .member("whole", 3)
        .member("words", "literal")
        .member("blank", std::optional<int>())
        .member("given", std::optional<Day>(Day{0}))
        .member("list", std::vector<int>{1, 2})
        .endObject();
    EXPECT_EQ(w.text(), R"({"day":"2026-07-04","time":"2026-07-04T18:00","colour":"#0102ff","money":950,)"
                        R"("stems":7,"yes":true,"whole":3,"words":"literal","blank":null,)"
                        R"("given":"1970-01-01","list":[1,2]})");
}

TEST(JsonOut, IndentsTheSameWayEveryTime) {
    JsonWriter w;
    w.beginObject().key("drops").beginArray().value(1).beginObject().endObject().endArray();
    w.key("none").beginArray().endArray().endObject();
    EXPECT_EQ(w.text(), "{\n  \"drops\": [\n    1,\n    {}\n  ],\n  \"none\": []\n}\n");
    EXPECT_EQ(json::parse(w.text()).dump(), R"({"drops":[1,{}],"none":[]})");
}

TEST(JsonOut, WritesAFigureWithItsWorking) {
    const Figure figure{
        264,
        Unit::stems,
        {{"stems in one", 10, Unit::stems, Step::given, Basis::mine, "", "Supper jar", {}},
         {"pieces", 24, Unit::pieces, Step::times, Basis::counted, "", "", {}},
         {"spare rule", 10, Unit::percent, Step::plus, Basis::published, "a handbook", "", {}},
         {"stems", 264, Unit::stems, Step::result, Basis::computed, "", "", {}}}};
    JsonWriter w;
    w.beginObject().figure("need", figure).endObject();
    const json read = json::parse(w.text()).at("need");
    EXPECT_EQ(read.at("value"), 264);
    EXPECT_EQ(read.at("unit"), "stems");
    ASSERT_EQ(read.at("working").size(), 4u);
    EXPECT_EQ(read.at("working").at(0).at("subject"), "Supper jar");
    const json spare = {{"what", "spare rule"}, {"value", 10},          {"unit", "%"},
                        {"step", "plus"},       {"basis", "published"}, {"source", "a handbook"},
                        {"subject", ""}};
    EXPECT_EQ(read.at("working").at(2), spare);
    EXPECT_LT(w.text().find("\"what\""), w.text().find("\"step\""));
}

TEST(JsonOut, NamesEveryUnitAndStep) {
    const std::pair<Unit, const char*> units[] = {
        {Unit::none, "none"},       {Unit::stems, "stems"},
        {Unit::pieces, "pieces"},   {Unit::millimetres, "mm"},
        {Unit::millilitres, "ml"},  {Unit::grams, "g"},
        {Unit::minutes, "minutes"}, {Unit::hours, "hours"},
        {Unit::days, "days"},       {Unit::celsius, "C"},
        {Unit::percent, "%"},       {Unit::minorMoney, "minor units"},
        {Unit::count, "count"},     {Unit::time, "minutes since 1970-01-01T00:00"},
    };
    for (const auto& [unit, word] : units)
        EXPECT_EQ(unitWord(unit), word);
    const std::pair<Step, const char*> steps[] = {
        {Step::given, "given"}, {Step::plus, "plus"}, {Step::minus, "minus"},
        {Step::times, "times"}, {Step::over, "over"}, {Step::result, "result"},
    };
    for (const auto& [step, word] : steps)
        EXPECT_EQ(stepWord(step), word);
}

} // namespace
} // namespace withy::exchange
