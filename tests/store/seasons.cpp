// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/store/seasons.h"

#include "core/model/edit.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <random>
#include <stdexcept>

namespace withy::test {

using model::FieldInfo;
using model::FieldKind;
using model::TableInfo;
using model::TableKind;
using model::Value;

namespace {

std::string textOf(const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return std::to_string(*whole);
    if (const auto* text = std::get_if<std::string>(&value)) return '"' + *text + '"';
    if (model::isBlank(value)) return "-";
    char shown[64];
    std::snprintf(shown, sizeof shown, "%a", std::get<double>(value));
    return shown;
}

/// Values for one field at a time.
class Maker {
public:
    Maker(unsigned seed, int perTable, bool lawful, std::size_t longestText = std::string::npos)
        : random_(seed), perTable_(perTable), lawful_(lawful), longestText_(longestText) {}

    Value valueFor(const FieldInfo& field) {
        if (field.optional && below(4) == 0) return {};
        switch (field.kind) {
        case FieldKind::whole:
        case FieldKind::money:
            return wholeFor(field);
        case FieldKind::real:
            return realFor(field);
        case FieldKind::yesNo:
            return below(2);
        case FieldKind::word:
            return std::string(field.words[static_cast<std::size_t>(below(std::ssize(field.words)))]);
        case FieldKind::day:
            return day().iso();
        case FieldKind::localTime:
            return LocalTime{day(), static_cast<std::int32_t>(below(1440))}.iso();
        case FieldKind::colour:
            return colour();
        case FieldKind::reference:
            return 1 + below(field.refersTo == TableKind::settings ? 1 : perTable_);
        case FieldKind::text:
            return textFor(field);
        }
        return {};
    }

    std::int64_t below(std::int64_t n) {
        return std::uniform_int_distribution<std::int64_t>(0, n - 1)(random_);
    }

    /// The name of a field of a plant.
    Value factName() {
        const auto& facts = model::tableInfo(TableKind::plants).fields;
        return std::string(facts[static_cast<std::size_t>(below(std::ssize(facts)))].name);
    }

private:
    Value wholeFor(const FieldInfo& field) {
        const auto least = static_cast<std::int64_t>(std::max(field.least, -9e15));
        const auto most = static_cast<std::int64_t>(std::min(field.most, 9e15));
        switch (below(4)) {
        case 0:
            return least;
        case 1:
            return most;
        default:
            return std::uniform_int_distribution<std::int64_t>(least, most)(random_);
        }
    }

    Value realFor(const FieldInfo& field) {
        const double least = std::max(field.least, -1e300);
        double most = std::min(field.most, 1e300);
        if (lawful_ && field.name == "share") most /= static_cast<double>(perTable_); // shares add up to 100
        switch (below(5)) {
        case 0:
            return least;
        case 1:
            return most;
        case 2:
            return std::clamp(0.1 + 0.2, least, most); // 0.30000000000000004
        case 3:
            return std::clamp(5e-324, least, most); // the smallest there is
        default:
            return std::uniform_real_distribution<double>(least, most)(random_);
        }
    }

    Value textFor(const FieldInfo& field) {
        static const std::vector<std::string> pieces = {"a",    "Ü",  "漢", "💐", "👩‍🌾", "'", "\"",
                                                        ";",    "\n", "\t", " ", "--",          "%", "\\",
                                                        "NULL", "0",  "é"};
        const auto kind = below(4);
        if (kind == 0 && !field.required) return std::string();
        const auto longest = static_cast<std::int64_t>(std::min(field.longest, longestText_));
        const auto wanted = kind == 1 ? longest : std::min<std::int64_t>(longest, 1 + below(40));
        std::string text = "x";
        for (std::int64_t characters = 1; characters < wanted;) {
            const auto& piece = pieces[static_cast<std::size_t>(below(std::ssize(pieces)))];
            const auto n =
                std::count_if(piece.begin(), piece.end(), [](char c) { return (c & 0xc0) != 0x80; });
            if (characters + n > wanted) continue;
            characters += n;
            text += piece;
        }
        return text;
    }

    Day day() {
        if (lawful_) return *Day::fromYmd(2026, 1, 1) + static_cast<int>(below(365));
        return *Day::fromYmd(1900, 1, 1) + static_cast<int>(below(109000));
    }

    Value colour() {
        char text[8];
        std::snprintf(text, sizeof text, "#%06x", static_cast<unsigned>(below(0x1000000)));
        return std::string(text);
    }

    std::mt19937_64 random_;
    std::int64_t perTable_;
    bool lawful_;
    std::size_t longestText_;
};

model::Settings lawfulSettings() {
    model::Settings s;
    s.seasonName = "Somewhere's 2026";
    s.firstDay = *Day::fromYmd(2026, 1, 1);
    s.lastDay = *Day::fromYmd(2026, 12, 31);
    s.latitude = 52.25;
    s.longitude = -0.1;
    s.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    return s;
}

model::Record randomRecord(Maker& maker, const TableInfo& table, std::int64_t id) {
    model::Record record = model::emptyRecord(table.kind, id);
    for (const auto& field : table.fields)
        EXPECT_TRUE(field.set(model::recordPointer(record), maker.valueFor(field))) << field.name;
    return record;
}

/// The value that lets `field` pass as often as can be: blank where it may be.
void easeField(Maker& maker, const FieldInfo& field, model::Record& record) {
    if (field.optional && maker.below(2) == 0)
        field.set(model::recordPointer(record), Value{});
    else if (field.name == "fact")
        field.set(model::recordPointer(record), maker.factName());
    else
        field.set(model::recordPointer(record), maker.valueFor(field));
}

/// Puts a record of random values, changing the fields complained about until the model takes it.
/// False when there is no room for one more (thirteen months).
bool putLawful(Maker& maker, model::Season& season, const TableInfo& table, std::int64_t id) {
    model::Record record = randomRecord(maker, table, id);
    for (int attempt = 0; attempt < 200; ++attempt) {
        auto applied = model::apply(season, model::Edit("fill").put(record));
        if (applied.ok()) {
            season = applied->season;
            return true;
        }
        for (const auto& problem : applied.error()) {
            const auto* field = table.field(problem.field);
            if (!field) throw std::logic_error("no field " + problem.field);
            easeField(maker, *field, record);
            const auto* other = problem.details.empty() ? nullptr : table.field(problem.details[0]);
            if (other && other->kind != FieldKind::reference) easeField(maker, *other, record);
            if (problem.code == ProblemCode::endBeforeStart) {
                for (const auto& f : table.fields) {
                    if (f.kind == FieldKind::localTime) easeField(maker, f, record);
                }
            }
        }
    }
    return false;
}

} // namespace

std::string textOf(const model::Season& season) {
    std::string text;
    for (const auto& table : model::allTables()) {
        text += "[" + std::string(table.name) + "]\n";
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void* record) {
            text += std::to_string(id);
            for (const auto& field : table.fields)
                text += "|" + textOf(field.get(record));
            text += "\n";
        });
    }
    return text;
}

model::Season wildSeason(unsigned seed, int perTable) {
    Maker maker(seed, perTable, false);
    model::Season season;
    for (const auto& table : model::allTables()) {
        for (int id = 1; id <= perTable; ++id)
            model::putRecord(season, randomRecord(maker, table, id));
    }
    return season;
}

model::Season lawfulSeason(unsigned seed, int perTable, std::size_t longestText) {
    Maker maker(seed, perTable, true, longestText);
    model::Season season;
    model::putRecord(season, lawfulSettings());
    for (const auto& table : model::allTables()) {
        if (table.kind == TableKind::settings) continue;
        int id = 1;
        while (id <= perTable && putLawful(maker, season, table, id))
            ++id;
        EXPECT_GT(id, 1) << "no lawful " << table.name << " found";
    }
    return season;
}

} // namespace withy::test
