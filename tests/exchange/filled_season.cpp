// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/filled_season.h"

#include "core/model/schema.h"

#include <cmath>
#include <map>
#include <random>

namespace withy::tests {

using namespace model;

namespace {

// No std distributions: their results differ from one library to the next.
class Maker {
public:
    Maker(std::uint64_t seed, std::string currency) : random_(seed), currency_(std::move(currency)) {}

    Season make(int rows) {
        for (const auto& info : allTables()) {
            const int wanted = info.kind == TableKind::settings ? 1 : rows;
            for (int i = 0; i < wanted; ++i)
                addRecord(info, i);
        }
        return season_;
    }

private:
    std::uint64_t below(std::uint64_t n) { return random_() % n; }

    double share() { return static_cast<double>(random_() >> 11U) * 0x1p-53; }

    void addRecord(const TableInfo& info, int index) {
        auto& ids = ids_[info.kind];
        // With gaps between the ids, as after erasing.
        const auto last = ids.empty() ? 0 : ids.back();
        const auto id = index == 0 ? 1 : last + 1 + static_cast<std::int64_t>(below(3));
        Record record = emptyRecord(info.kind, id);
        for (const auto& field : info.fields) {
            if (!field.set(recordPointer(record), valueOf(info, field)))
                throw std::logic_error("the description refuses its own value: " + std::string(field.name));
        }
        putRecord(season_, record);
        ids.push_back(id);
    }

    Value valueOf(const TableInfo& info, const FieldInfo& field) {
        if (info.kind == TableKind::settings && field.name == "currency") return currency_;
        if (field.optional && below(3) == 0) return {};
        switch (field.kind) {
        case FieldKind::whole:
        case FieldKind::money:
            return static_cast<std::int64_t>(std::floor(number(field)));
        case FieldKind::real:
            return number(field);
        case FieldKind::yesNo:
            return static_cast<std::int64_t>(below(2));
        case FieldKind::word:
            return std::string(field.words[below(field.words.size())]);
        case FieldKind::reference:
            return ids_.at(field.refersTo)[below(ids_.at(field.refersTo).size())];
        case FieldKind::day:
            return day().iso();
        case FieldKind::localTime:
            return LocalTime{day(), static_cast<std::int32_t>(below(1440))}.iso();
        case FieldKind::colour:
            return Colour{byte(), byte(), byte()}.hex();
        case FieldKind::text:
            break;
        }
        return text(field);
    }

    std::uint8_t byte() { return static_cast<std::uint8_t>(below(256)); }

    Day day() { return *Day::parse("1900-01-01") + static_cast<int>(below(109'000)); }

    double number(const FieldInfo& field) {
        switch (below(4)) {
        case 0:
            return field.least;
        case 1:
            return field.most;
        case 2:
            return std::round((field.least + share() * (field.most - field.least)) * 4) / 4;
        default:
            return field.least + share() * (field.most - field.least);
        }
    }

    std::string text(const FieldInfo& field) {
        static const std::vector<std::string> bits{
            "Zinnia", " ", ",",     "\"",     "\r\n",   "\n",         "\r",           "\t", ";",  "=1+1",
            "+",      "-", "@home", "\u00E9", "\u273F", "\U0001F33C", "\xEF\xBB\xBF", "'",  "\\", "007"};
        std::string out;
        std::size_t characters = 0;
        const std::uint64_t wanted = below(6) + (field.required ? 1 : 0);
        for (std::uint64_t i = 0; i < wanted; ++i) {
            const auto& bit = bits[field.required && i == 0 ? 0 : below(bits.size())];
            characters += bit.size();
            if (characters > field.longest) break;
            out += bit;
        }
        return out;
    }

    std::mt19937_64 random_;
    std::string currency_;
    Season season_;
    std::map<TableKind, std::vector<std::int64_t>> ids_;
};

} // namespace

Season filledSeason(std::uint64_t seed, int rows, const std::string& currency) {
    return Maker(seed, currency).make(rows);
}

} // namespace withy::tests
