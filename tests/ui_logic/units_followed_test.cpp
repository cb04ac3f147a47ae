// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/cover_plan.h"
#include "tests/ui_logic/laid_run_up.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/colour_view.h"
#include "ui/logic/models/cover_rows.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/forecast_rows.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/logic/models/money_rows.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/logic/models/size_words.h"
#include "ui/logic/models/stem_rows.h"
#include "ui/logic/models/table_words.h"
#include "ui/logic/models/water_view.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/shed/packing_scenes.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/logic/shed/ribbon_scene.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed/table_scenes.h"
#include "ui/logic/shed_words.h"
#include "ui/logic/wording.h"

#include <QRegularExpression>

/// The season's choice of units is followed by every answer, figure, working, drawing and paper.
namespace withy::ui::tests {

namespace {

using model::Season;
using model::TableKind;
using model::UnitSystem;

const QRegularExpression& metricWord() {
    static const QRegularExpression words(
        QStringLiteral(
            "(?<![\\p{L}])(mm|cm|ml|cl|kg|km|millimet\\w*|centimet\\w*|met(re|er)s?|lit(re|er)s?|kilos?"
            "|kilograms?|grams?|Celsius)(?![\\p{L}])|\\d\\s?(l|m|g|C)(?![\\p{L}])|°\\s?C"),
        QRegularExpression::UseUnicodePropertiesOption);
    return words;
}

const QRegularExpression& imperialWord() {
    static const QRegularExpression words(
        QStringLiteral("\\d (in|ft|lb|oz|miles?)\\b(?! [A-Za-z])|°F|US (fl|qt|gal)"));
    return words;
}

/// What a grower wrote stands as it was written, so the season under test is written without units' words.
Season inWordsWithoutUnits(Season season, UnitSystem units) {
    for (const auto& table : model::allTables()) {
        std::vector<std::int64_t> ids;
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void*) { ids.push_back(id); });
        for (const auto id : ids) {
            auto record = *model::findRecord(season, table.kind, id);
            void* at = const_cast<void*>(model::recordPointer(record));
            for (const auto& field : table.fields) {
                if (field.kind != model::FieldKind::text) continue;
                const auto value = field.get(at);
                const auto* words = std::get_if<std::string>(&value);
                if (!words) continue;
                const QString said = text(*words)
                                         .replace(metricWord(), QStringLiteral("some"))
                                         .replace(imperialWord(), QStringLiteral("some"));
                field.set(at, utf8(said));
            }
            model::putRecord(season, record);
        }
    }
    auto settings = season.theSettings();
    settings.units = units;
    model::putRecord(season, model::Record(settings));
    return season;
}

/// All that is said of a season, each with where.
class Said {
public:
    Said(const Season& season, const plan::Plan& plan) : season_(season), plan_(plan) {}

    std::vector<std::pair<std::string, QString>> all() {
        fields();
        answers();
        findings();
        designs();
        for (const auto& booking : season_.bookings)
            ofBooking(booking);
        shed();
        garden();
        papers_();
        return std::move(all_);
    }

private:
    void say(const std::string& where, const QString& words) { all_.emplace_back(where, words); }

    void say(const std::string& where, const Answer& answer) { say(where, plainWords(answer)); }

    void say(const std::string& where, const Working& working) {
        auto unsourced = working; // a source is quoted as it stands
        for (auto& line : unsourced)
            line.source.clear();
        say(where + ", working", lines(unsourced, season_.theSettings()).join(QLatin1Char('\n')));
    }

    void say(const std::string& where, const Scene& scene) {
        say(where, scene.inWords);
        for (const auto& label : scene.labels)
            say(where + ", label", label.words);
    }

    void say(const std::string& where, const Sheet& sheet) {
        for (const auto& row : sheet.rows) {
            say(where, row.name + QLatin1Char('\n') + row.rest + QLatin1Char('\n') + row.under);
            for (const auto& cell : row.cells) {
                say(where, cell.words);
                if (cell.field) say(where, cell.field->prompt);
                if (cell.reach) say(where, cell.reach->inWords);
                for (const auto& source : cell.sources)
                    say(where, source.words + QLatin1Char('\n') + source.detail);
                if (!cell.figure) continue;
                say(where,
                    cell.figure->words + QLatin1Char('\n') + cell.figure->lines.join(QLatin1Char('\n')));
                say(where, cell.figure->working);
            }
            if (!row.below) continue;
            say(where, row.below->notes.join(QLatin1Char('\n')));
            for (const auto& way : row.below->ways)
                say(where, way.words);
        }
    }

    void fields() {
        for (const auto& table : model::allTables())
            model::forEachRecord(season_, table.kind, [&](std::int64_t, const void* record) {
                for (const auto& field : table.fields)
                    say(std::string(table.name) + " " + std::string(field.name),
                        shownText(season_, table.kind, field, field.get(record)));
            });
    }

    void answers() {
        say("containers", containersAnswer(season_, plan_));
        say("ribbons", ribbonsAnswer(season_, plan_));
        say("sundries", sundriesAnswer(season_, plan_));
        say("holders", holdersAnswer(season_, plan_));
        say("mixes", mixesAnswer(season_));
        say("vehicles", vehiclesAnswer(season_));
        say("settings", settingsAnswer(season_));
        say("weather", weatherAnswer(season_));
        say("plants", plantsAnswer(season_));
        say("patches", patchesAnswer(season_));
        say("forecast", forecastAnswer(season_, plan_));
    }

    void findings() {
        for (const auto& listed : findingsOfSeason(season_, plan_))
            say("finding", sentence(season_, listed));
    }

    void designs() {
        for (const auto& design : season_.designs) {
            for (const auto& f : designFigures(season_, plan_, design.id)) {
                say(design.name, f.figure + QLatin1Char('\n') + f.note);
                say(design.name, f.working);
            }
            for (const auto& f : findingsOfDesign(season_, plan_, design.id))
                say(design.name + ", finding", sentence(f.finding, season_));
            say(design.name, designNotes(season_, plan_, design.id, today_).join(QLatin1Char('\n')));
            const auto water = waterView(season_, plan_, design.id, today_);
            say(design.name + ", water", water.head + QLatin1Char('\n') + water.litres + QLatin1Char('\n') +
                                             water.means + water.sentences.join(QLatin1Char('\n')));
            say(design.name + ", water", water.working);
        }
        for (const auto& plant : season_.plants)
            say(plant.name, stemLengthWords(plant, season_));
        for (const auto& table : season_.venueTables)
            say(table.label, onTableWords(table, 2, season_) + tableSizeWords(table, season_) +
                                 usualSizeWords({&table}, season_) + offTableWords(212, 90, season_));
    }

    void ofBooking(const model::Booking& booking) {
        const auto& title = booking.title;
        const auto& plan = *plan_.bookings.at(booking.id);
        const auto list = findingsOf(season_, plan_, booking.id);
        for (const auto& f : list)
            say(title + ", finding", sentence(f.finding, season_));
        for (const auto& band : bookingColours(season_, booking.id, nullptr).bands)
            say(title + ", colours", band.working);
        say(title + ", stems", stemAnswer(season_, plan, list));
        say(title + ", pieces", piecesAnswer(season_, booking.id, &plan));
        say(title + ", kit", kitAnswer(season_, plan, plan_.shed.get()));
        say(title + ", kit", kitSheet(season_, plan, plan_.shed.get()));
        say(title + ", stems", stemSheet(season_, plan_, plan));
        say(title + ", rounds", roundSheet(season_, plan_, plan));
        say(title + ", money", moneyAnswer(season_, plan));
        say(title + ", prices", priceSheet(season_, plan));
        say(title + ", sums", sumSheet(season_, plan));
        say(title + ", run-up", runUpAnswer(season_, plan_, booking.id));
        if (!plan_.cover) return;
        const auto cover = plan_.cover->bookings.find(booking.id);
        if (cover == plan_.cover->bookings.end()) return;
        const CutTimes times(plan_, booking.id);
        const CoverView view{season_, plan, *plan_.cover, cover->second, times, plan_.garden.get()};
        say(title + ", cover", coverAnswer(view));
        say(title + ", cover", coverSheet(view));
    }

    void shed() {
        for (const auto& c : season_.containers) {
            const auto volume = containerVolume(season_, c.id);
            say(c.name, volume.figure + QLatin1Char('\n') + volume.note);
            say(c.name, volume.working);
            say(c.name, volumeWords(season_, c.id));
        }
        for (const auto& r : season_.ribbons)
            say(r.name, ribbonOnHand(season_, r.id));
        const auto& shed = *plan_.shed;
        say("shelves", shelfAnswer(season_, shed));
        for (const auto& line : shed.buying)
            say("buying", itemAmount(season_, line));
        for (const auto& day : shed.ribbon)
            for (const auto& cut : day->ribbons) {
                const auto row = ribbonRow(season_, *cut, &shed, day->day);
                say(utf8(row.name), row.figure + QLatin1Char('\n') + row.needs + QLatin1Char('\n') +
                                        row.verdict + QLatin1Char('\n') + row.under);
                say(utf8(row.name), row.working);
                say(utf8(row.name), ribbonScene(season_, *cut, {600, 20, 120}, {}));
            }
        for (const auto& [id, packing] : shed.packing) {
            say("packing", packingAnswer(season_, packing.get()));
            say("packing", carryWords(*packing, season_));
            say("packing", packing->carryWorking);
            for (const auto& words : waterLines(season_, *packing))
                say("packing, water", words);
            for (const auto& line : loadLines(season_, *packing))
                say("packing, load", line.words + QLatin1Char('\n') + line.weight);
            say("trays", traysScene(season_, *packing, 800, {}));
        }
        for (const auto& [id, tables] : shed.tables) {
            say("tables", tablesAnswer(season_, *tables));
            say("hall", hallScene(season_, *tables, 900, std::nullopt, {}).scene);
            for (std::size_t t = 0; t < tables->tables.size(); ++t) {
                const auto& table = tables->tables[t];
                say("table", tableSize(table, season_) + standingWords(season_, table));
                say("table", nearScene(season_, *tables, t, 600, {}));
                say("table", endScene(season_, table, 600, 300, {}));
                if (table.fit) say("table", table.fit->working);
            }
        }
    }

    void garden() {
        say("warmth", leadWarmth(season_, plan_));
        if (plan_.garden && plan_.garden->lead) say("lead", plan_.garden->lead->working);
        if (!plan_.garden) return;
        for (const auto& [id, outlook] : plan_.garden->patches)
            say("patch", outlook.datesWorking);
    }

    void papers_() {
        for (const auto word : paperWords()) {
            const auto kind = *paperKind(word);
            const auto known = partsOf(kind);
            const std::set<PaperPart> parts(known.begin(), known.end());
            const auto print = [&](std::optional<Id<model::Booking>> booking) {
                say("paper " + std::string(word),
                    text(papers::renderText(paperOf(kind, {season_, plan_, booking, {}, parts}))));
            };
            if (!needsBooking(kind))
                print(std::nullopt);
            else
                for (const auto& booking : season_.bookings)
                    print(booking.id);
        }
    }

    const Season& season_;
    const plan::Plan& plan_;
    Day today_ = model::sample::day(2027, 9, 6);
    std::vector<std::pair<std::string, QString>> all_;
};

std::vector<std::pair<std::string, QString>> saidIn(UnitSystem units) {
    const auto season = inWordsWithoutUnits(demoSeason(), units);
    const auto plan = demoPlan(season);
    return Said(season, plan).all();
}

int countOf(const std::vector<std::pair<std::string, QString>>& all, const QRegularExpression& what) {
    int n = 0;
    for (const auto& [where, words] : all)
        n += words.contains(what) ? 1 : 0;
    return n;
}

} // namespace

TEST(UnitsFollowed, NothingIsMetricInAnImperialSeason) {
    const auto all = saidIn(UnitSystem::imperial);
    std::set<std::string> told;
    for (const auto& [where, words] : all) {
        const auto found = metricWord().match(words);
        if (!found.hasMatch() || told.size() > 40) continue;
        const auto at = found.capturedStart();
        told.insert(where + ": …" + words.mid(std::max<qsizetype>(0, at - 60), 110).toStdString() + "…");
    }
    for (const auto& one : told)
        ADD_FAILURE() << one;
    // And it is not for want of measures.
    EXPECT_GT(countOf(all, QRegularExpression(QStringLiteral("\\d in\\b"))), 200);
    EXPECT_GT(countOf(all, QRegularExpression(QStringLiteral("\\d ft\\b"))), 20);
    EXPECT_GT(countOf(all, QRegularExpression(QStringLiteral("\\d US (fl oz|qt|gal)\\b"))), 50);
    EXPECT_GT(countOf(all, QRegularExpression(QStringLiteral("\\d (lb|oz)\\b"))), 50);
    EXPECT_GT(countOf(all, QRegularExpression(QStringLiteral("\\d °F"))), 50);
}

/// The same walk finds the metric words of a metric season: it looks where they are, and nothing else.
TEST(UnitsFollowed, NothingIsImperialInAMetricSeason) {
    const auto all = saidIn(UnitSystem::metric);
    EXPECT_GT(countOf(all, metricWord()), 500);
    for (const auto& [where, words] : all) {
        const auto found = imperialWord().match(words);
        if (found.hasMatch())
            ADD_FAILURE() << where << ": "
                          << words.mid(std::max<qsizetype>(0, found.capturedStart() - 60), 110).toStdString();
    }
}

} // namespace withy::ui::tests
