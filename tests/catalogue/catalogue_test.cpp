// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/table_csv.h"
#include "core/model/edit.h"
#include "core/model/schema.h"
#include "tests/model/sample.h"

#include <gtest/gtest.h>

#include <array>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

/// The plants in resources/plants: they import without a problem, every figure says where it is from, and
/// figures and cautions are those of the sources named in its README.
namespace withy::model {
namespace {

std::string textOf(const std::string& file) {
    std::ifstream in(std::string(WITHY_RESOURCES "/plants/") + file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string lower(std::string text) {
    for (auto& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return text;
}

constexpr std::array<std::pair<TableKind, const char*>, 3> files{
    {{TableKind::plants, "plant.csv"},
     {TableKind::plantFacts, "plant_fact.csv"},
     {TableKind::plantHazards, "plant_hazard.csv"}}};

/// Each table imported in turn into an empty season: limits, words, references and ranges are judged here.
Season imported() {
    auto season = sample::season();
    for (const auto& [kind, file] : files) {
        const auto edit = exchange::importInto(season, kind, textOf(file));
        if (!edit.ok()) {
            for (const auto& p : edit.error())
                ADD_FAILURE() << file << ':' << p.line << ' ' << p.field << " \"" << p.value << '"';
            return season;
        }
        season = apply(season, *edit).value().season;
    }
    return season;
}

const Season& season() {
    static const Season s = imported();
    return s;
}

const Plant* plantNamed(const std::string& name) {
    for (const auto& p : season().plants) {
        if (p.name == name) return &p;
    }
    return nullptr;
}

using FactKey = std::pair<std::int64_t, std::string>;

const PlantFact* factOf(const Plant& plant, const std::string& field) {
    static const auto all = [] {
        std::map<FactKey, const PlantFact*> map;
        for (const auto& f : season().plantFacts)
            map[{f.plant.value, f.fact}] = &f;
        return map;
    }();
    const auto at = all.find({plant.id.value, field});
    return at == all.end() ? nullptr : at->second;
}

/// The fields whose origin must be told: all from the stem length on, except the notes.
std::vector<const FieldInfo*> factFields() {
    std::vector<const FieldInfo*> list;
    bool begun = false;
    for (const auto& f : tableInfo(TableKind::plants).fields) {
        begun = begun || f.name == "stem_length_min";
        if (begun && f.name != "notes") list.push_back(&f);
    }
    return list;
}

/// Source id and tier, from the rows "| FDI | B | ..." of the README.
const std::map<std::string, char>& listedSources() {
    static const auto list = [] {
        std::map<std::string, char> map;
        std::istringstream in(textOf("README.md"));
        for (std::string line; std::getline(in, line);) {
            const auto bar = line.find(" | ");
            if (line.rfind("| ", 0) != 0 || bar == std::string::npos) continue;
            const char tier = line[bar + 3];
            if (line.compare(bar + 4, 2, " |") == 0 && tier >= 'A' && tier <= 'C')
                map[line.substr(2, bar - 2)] = tier;
        }
        return map;
    }();
    return list;
}

/// The ids in "ID: author, title, year; ID: ...".
std::vector<std::string> sourceIds(const std::string& source) {
    std::vector<std::string> ids;
    for (std::size_t from = 0; from < source.size();) {
        const auto end = std::min(source.find("; ", from), source.size());
        ids.push_back(source.substr(from, source.find(": ", from) - from));
        from = end + 2;
    }
    return ids;
}

void expectReadable(Basis basis, const std::string& source) {
    EXPECT_TRUE(basis == Basis::published || basis == Basis::commonPractice || basis == Basis::fromMemory);
    if (basis == Basis::published) {
        EXPECT_FALSE(source.empty());
    }
    for (const auto& id : sourceIds(source)) {
        const auto at = listedSources().find(id);
        ASSERT_NE(at, listedSources().end()) << id;
        if (basis == Basis::published) {
            EXPECT_NE(at->second, 'C') << id;
        }
    }
}

std::optional<double> real(const Plant& plant, std::string_view field) {
    const auto value = tableInfo(TableKind::plants).field(field)->get(&plant);
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return static_cast<double>(*whole);
    if (const auto* number = std::get_if<double>(&value)) return *number;
    return std::nullopt;
}

} // namespace

TEST(Catalogue, HasThePlantsOfATemperateGardenUnderNamesOfTheirOwn) {
    EXPECT_GE(season().plants.size(), 90u);
    std::set<std::string> names;
    for (const auto& p : season().plants) {
        SCOPED_TRACE(p.name);
        EXPECT_TRUE(names.insert(lower(p.name)).second);
        EXPECT_FALSE(p.botanicalName.empty());
        EXPECT_TRUE(p.colour1);
        EXPECT_TRUE(p.focal || p.spike || p.filler || p.foliage || p.airy || p.trailing);
        EXPECT_FALSE(p.pricePerStem || p.costPerStem) << "money is the grower's own";
    }
}

TEST(Catalogue, HeadersAreTheFieldsInOrder) {
    for (const auto& [kind, file] : files) {
        SCOPED_TRACE(file);
        const auto rows = exchange::parseCsv(textOf(file));
        ASSERT_TRUE(rows.ok());
        std::vector<std::string> header;
        for (const auto& cell : rows->front().fields)
            header.push_back(cell.text);
        std::vector<std::string> wanted{"id"};
        for (const auto& f : tableInfo(kind).fields)
            wanted.emplace_back(f.name);
        EXPECT_EQ(header, wanted);
    }
}

TEST(Catalogue, EveryFigureSaysWhereItIsFromAndNothingElseDoes) {
    std::size_t figures = 0;
    for (const auto& p : season().plants) {
        for (const auto* field : factFields()) {
            SCOPED_TRACE(p.name + ", " + std::string(field->name));
            const auto value = field->get(&p);
            const auto* text = std::get_if<std::string>(&value);
            const bool known = !isBlank(value) && !(text && text->empty());
            EXPECT_EQ(factOf(p, std::string(field->name)) != nullptr, known);
            figures += known;
        }
    }
    EXPECT_EQ(season().plantFacts.size(), figures) << "a fact twice, or of a field that needs none";
}

TEST(Catalogue, SourcesAreListedAndOnlyTheReadOnesArePublished) {
    ASSERT_GE(listedSources().size(), 50u);
    for (const auto& f : season().plantFacts) {
        SCOPED_TRACE("fact " + std::to_string(f.id.value) + " " + f.fact);
        expectReadable(f.basis, f.source);
        EXPECT_EQ(f.source.empty(), f.basis != Basis::published);
    }
    for (const auto& h : season().plantHazards) {
        SCOPED_TRACE("hazard " + std::to_string(h.id.value));
        expectReadable(h.basis, h.source);
    }
}

TEST(Catalogue, RegrowthGoesWithTheHabit) {
    for (const auto& p : season().plants)
        EXPECT_EQ(p.regrowthDays.has_value(), p.habit == HarvestHabit::cutAndComeAgain) << p.name;
}

TEST(Catalogue, FortyPlantsAndMoreHaveAPublishedVaseLife) {
    int published = 0;
    for (const auto& p : season().plants) {
        const auto* least = factOf(p, "vase_life_min_days");
        const auto* most = factOf(p, "vase_life_max_days");
        published += (least && least->basis == Basis::published) || (most && most->basis == Basis::published);
        EXPECT_TRUE(p.vaseLifeMinDays) << p.name;
    }
    EXPECT_GE(published, 40);
}

TEST(Catalogue, FiguresAreThoseOfTheirSources) {
    struct Case {
        const char* plant;
        const char* field;
        double value;
        const char* source; ///< the id in resources/plants/README.md, where the paper is named
    };

    const std::vector<Case> cases{
        {"Zinnia", "vase_life_min_days", 7, "ASCFG-ZIN"},        // 7 to 14, over a dozen cultivars
        {"Zinnia", "vase_life_max_days", 14, "ASCFG-ZIN"},       //
        {"Zinnia", "days_to_flower", 65, "MCMASTER"},            // 60 to 70 days from seed
        {"Snapdragon", "vase_life_min_days", 10.6, "CELIKEL10"}, // fresh at 20 C
        {"Snapdragon", "q10", 2.6, "CELIKEL10"},                 // respiration, 0 to 20 C
        {"Snapdragon", "storage_days", 5, "CELIKEL10"},          // dry at 0 C, no loss
        {"Snapdragon", "storage_celsius", 0, "CELIKEL10"},       //
        {"Snapdragon", "stems_per_plant", 7, "ASCFG13"},         // field average
        {"Ammi", "vase_life_min_days", 3, "SFLORAL"},            // 3 to 5 at home
        {"Ammi", "vase_life_max_days", 10, "FBOOK"},             //
        {"Ammi", "stem_length_max", 1000, "FBOOK"},              // up to 100 cm
        {"Cornflower", "vase_life_min_days", 5, "FDI"},          // 5 to 7
        {"Cornflower", "vase_life_max_days", 7, "FDI"},          //
        {"Cornflower", "stem_length_min", 510, "COLN"},          // 51 to 71 cm
        {"Dahlia", "vase_life_min_days", 4, "GTALKS25"},         // 4 to 5 in the local trade
        {"Dahlia", "vase_life_max_days", 10, "ASCFG07D"},        // 7 to 10
        {"Tulip", "vase_life_min_days", 3, "BENSCHOP71"},        // at 23.5 C
        {"Tulip", "vase_life_max_days", 6, "BENSCHOP71"},        //
        {"Daffodil", "vase_life_max_days", 5, "SFLORAL"},        // 3 to 5
        {"Daffodil", "storage_days", 7, "WILLS98"},              // 7 to 21 at 0 to 2 C
        {"Daffodil", "conditioning_hours_min", 6, "SFLORAL"},    // alone in its bucket
        {"Iceland poppy", "vase_life_max_days", 8, "DOLE-4SP"},  // in holding solution
        {"Iceland poppy", "storage_days", 7, "DOLE-4SP"},        // a week at 1 C
        {"Rudbeckia", "vase_life_max_days", 37, "DOLE-4SP"},     // Indian Summer
        {"Sunflower", "base_celsius", 10, "HPRCC"},              // 50 F
        {"Sunflower", "heat_units_to_flower", 611, "HPRCC"},     // 575 to 647
        {"Plume celosia", "base_celsius", 8, "MSU-BASE"},        // 46 F
        {"Gypsophila", "q10", 3, "CELIKEL05"},                   // respiration, 0 to 10 C
        {"Garden rose", "q10", 3, "CELIKEL05"},                  //
        {"Garden rose", "vase_life_max_days", 7, "FBOOK"},       // garden roses 3 to 7
        {"Dutch iris", "storage_days", 7, "UCD"},                // at 0 C
        {"Peony", "storage_days", 28, "HEUSER86"},               // dry at 0 C, loose calyx
        {"Grape hyacinth", "vase_life_max_days", 10, "COLN"},    // 5 d at 26 C, 10 d at 18 C
        {"Statice", "storage_days", 14, "WILLS98"},              // 14 to 42 at 2 to 4 C
        {"Love-in-a-mist", "vase_life_min_days", 7, "FBOOK"},    // 7
        {"Ninebark", "vase_life_min_days", 14, "NCSU-GPN07"},    // more than 14
        {"Geum", "stems_per_plant", 9, "ASCFG05"},               // average over 9
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.plant) + ", " + c.field);
        const auto* plant = plantNamed(c.plant);
        ASSERT_NE(plant, nullptr);
        ASSERT_TRUE(real(*plant, c.field));
        EXPECT_DOUBLE_EQ(*real(*plant, c.field), c.value);
        const auto* fact = factOf(*plant, c.field);
        ASSERT_NE(fact, nullptr);
        EXPECT_EQ(fact->basis, Basis::published);
        EXPECT_EQ(fact->source.rfind(std::string(c.source) + ": ", 0), 0u) << fact->source;
    }
}

TEST(Catalogue, WhatIsNotPublishedDoesNotPretendTo) {
    struct Case {
        const char* plant;
        const char* field;
        Basis basis;
    };

    const std::vector<Case> cases{
        {"Hellebore", "vase_life_min_days", Basis::commonPractice}, // growers' own pages only
        {"Cosmos", "vase_life_min_days", Basis::fromMemory},        // nothing read
        {"Zinnia", "q10", Basis::commonPractice},                   // the planning default
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.plant);
        const auto* plant = plantNamed(c.plant);
        ASSERT_NE(plant, nullptr);
        const auto* fact = factOf(*plant, c.field);
        ASSERT_NE(fact, nullptr);
        EXPECT_EQ(fact->basis, c.basis);
    }
    const auto* ninebark = plantNamed("Ninebark");
    ASSERT_NE(ninebark, nullptr);
    EXPECT_FALSE(ninebark->vaseLifeMaxDays) << "\"more than 14 days\" has no upper end";
}

TEST(Catalogue, PoisonousAndIrritantPlantsCarryTheirCaution) {
    const std::vector<std::pair<const char*, HazardKind>> cases{
        {"Foxglove", HazardKind::poison},
        {"Monkshood", HazardKind::poison},
        {"Monkshood", HazardKind::skin},
        {"Larkspur", HazardKind::poison},
        {"Delphinium", HazardKind::poison},
        {"Lily of the valley", HazardKind::poison},
        {"Spurge", HazardKind::sap},
        {"Spurge", HazardKind::poison},
        {"Daffodil", HazardKind::poison},
        {"Daffodil", HazardKind::sap},
        {"Hellebore", HazardKind::poison},
        {"Hyacinth", HazardKind::poison},
        {"Mophead hydrangea", HazardKind::poison},
        {"Anemone", HazardKind::poison},
        {"Ranunculus", HazardKind::poison},
        {"Tobacco flower", HazardKind::poison},
        {"Poppy pods", HazardKind::poison},
        {"Ammi", HazardKind::sap},
        {"Rue", HazardKind::sap},
        {"Burning bush", HazardKind::sap},
        {"Lily", HazardKind::pets},
        {"Lily", HazardKind::pollen},
        {"Day lily", HazardKind::pets},
        {"Tulip", HazardKind::skin},
        {"Alstroemeria", HazardKind::sap},
        {"Chrysanthemum", HazardKind::skin},
        {"Garden rose", HazardKind::thorns},
        {"Gypsophila", HazardKind::pollen},
    };
    std::set<std::pair<std::int64_t, HazardKind>> there;
    for (const auto& h : season().plantHazards)
        there.insert({h.plant.value, h.kind});
    for (const auto& [name, kind] : cases) {
        SCOPED_TRACE(std::string(name) + ", " + std::string(wordOf(kind)));
        const auto* plant = plantNamed(name);
        ASSERT_NE(plant, nullptr);
        EXPECT_TRUE(there.count({plant->id.value, kind}));
    }
}

TEST(Catalogue, ThePoisonousAreKeptOffFood) {
    // The list of plants to keep off cakes and platters: common practice, no source.
    for (const char* name :
         {"Lily of the valley", "Foxglove", "Delphinium", "Larkspur", "Monkshood", "Anemone", "Daffodil",
          "Mophead hydrangea", "Hyacinth", "Ranunculus", "Spurge", "Gypsophila"}) {
        const auto* plant = plantNamed(name);
        ASSERT_NE(plant, nullptr) << name;
        bool kept = false;
        for (const auto& h : season().plantHazards)
            kept = kept || (h.plant == plant->id && h.kind == HazardKind::food);
        EXPECT_TRUE(kept) << name;
    }
}

TEST(Catalogue, CautionsSayWhoHelps) {
    for (const auto& h : season().plantHazards) {
        SCOPED_TRACE(h.text);
        if (h.kind == HazardKind::poison) {
            EXPECT_NE(h.text.find("medical help at once"), std::string::npos);
        }
        if (h.kind == HazardKind::pets) {
            EXPECT_NE(h.text.find("vet"), std::string::npos);
        }
    }
}

TEST(Catalogue, NothingIsCalledFitToEat) {
    for (const char* file : {"plant.csv", "plant_fact.csv", "plant_hazard.csv", "README.md"}) {
        const auto text = lower(textOf(file));
        ASSERT_FALSE(text.empty()) << file;
        for (const char* word : {"edible", "safe to eat", "can be eaten", "harmless to people"})
            EXPECT_EQ(text.find(word), std::string::npos) << file << ": " << word;
    }
}

} // namespace withy::model
