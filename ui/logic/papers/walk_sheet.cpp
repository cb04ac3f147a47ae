// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/answers/walk_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/forecast_rows.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using papers::CellKind;
using papers::plain;
using papers::strong;

struct WalkSheetSay {
    Q_DECLARE_TR_FUNCTIONS(WalkSheet)
};

std::optional<Day> dayOf(const QDateTime& printed) {
    if (!printed.isValid()) return std::nullopt;
    const QDate date = printed.date();
    return Day::fromYmd(date.year(), date.month(), date.day());
}

/// What is expected of each count, small in the corner of its box.
std::string expected(const WalkExpectations& all, Id<model::Patch> patch, std::size_t count) {
    const auto found = all.find(patch);
    if (found == all.end() || found->second.week == 0) return {}; // a printed nought is no help to a pencil
    const auto likely = found->second.likely[count];
    return likely ? utf8(whole(*likely)) : std::string();
}

papers::Text patchWords(const model::Season& season, const model::Patch& patch) {
    const auto* plant = season.plants.find(patch.plant);
    papers::Text words = strong(patch.label);
    if (plant) words = words + plain(" · " + plant->name);
    if (!patch.wayThere.empty()) words = words + plain(" · " + patch.wayThere);
    return words;
}

/// "46, 5 Sep": the weekday would cost the patch its room.
std::string lastOf(const model::Season& season, Id<model::Patch> patch) {
    const model::Walk* last = nullptr;
    for (const auto& w : season.walks)
        if (w.patch == patch && w.readyNow && (!last || last->date <= w.date)) last = &w;
    if (!last) return utf8(WalkSheetSay::tr("not walked"));
    return utf8(WalkSheetSay::tr("%1, %2").arg(whole(last->readyNow->value),
                                               shortDay(last->date).section(QLatin1Char(' '), 1)));
}

std::vector<papers::Column> columnsOf() {
    const auto head = [](const QString& words) { return utf8(words); };
    return {{head(WalkSheetSay::tr("no.")), papers::Align::Left, 0, false, CellKind::Disc},
            {head(WalkSheetSay::tr("patch and plant")), papers::Align::Left, 2, false},
            {head(WalkSheetSay::tr("last walk")), papers::Align::Left, 0, false},
            {head(WalkSheetSay::tr("ready now")), papers::Align::Left, 0, false, CellKind::Box},
            {head(WalkSheetSay::tr("in three days")), papers::Align::Left, 0, false, CellKind::Box},
            {head(WalkSheetSay::tr("within the week")), papers::Align::Left, 0, false, CellKind::Box},
            {head(WalkSheetSay::tr("remark")), papers::Align::Left, 0, false, CellKind::Line}};
}

/// The patches where something is to be expected.
papers::Table sheetOf(const model::Season& season, const WalkExpectations& expectations) {
    papers::Table t;
    t.columns = columnsOf();
    std::string before;
    for (const auto* patch : inWalkingOrder(season)) {
        if (isOutOfBloom(expectations, patch->id)) continue;
        const std::string number = utf8(walkingPlace(season, patch->id));
        t.rows.push_back({{plain(number == before ? std::string() : number), patchWords(season, *patch),
                           plain(lastOf(season, patch->id)), plain(expected(expectations, patch->id, 0)),
                           plain(expected(expectations, patch->id, 1)),
                           plain(expected(expectations, patch->id, 2)), plain("")},
                          papers::RowKind::Body});
        before = number;
    }
    return t;
}

/// The others in one paragraph, and a few rows for what was found there all the same.
std::vector<papers::Block> resting(const model::Season& season, const WalkExpectations& expectations) {
    constexpr int rowsToWriteIn = 3;
    QStringList names;
    for (const auto* patch : inWalkingOrder(season)) {
        if (!isOutOfBloom(expectations, patch->id)) continue;
        const auto* plant = season.plants.find(patch->plant);
        const QString place = walkingPlace(season, patch->id) + QChar(QChar::Nbsp) + text(patch->label);
        names << (plant ? WalkSheetSay::tr("%1 (%2)").arg(place, text(plant->name)) : place);
    }
    if (names.isEmpty()) return {};
    papers::Table found;
    found.columns = columnsOf();
    found.columns[0].cells = CellKind::Box;
    found.columns[1].cells = CellKind::Line;
    for (int row = 0; row < rowsToWriteIn; ++row)
        found.rows.push_back({std::vector(found.columns.size(), plain("")), papers::RowKind::Body});
    return {{papers::SectionHead{utf8(WalkSheetSay::tr("%n patch(es) not in bloom within a fortnight",
                                                       nullptr, static_cast<int>(names.size()))),
                                 plain(utf8(WalkSheetSay::tr("found there all the same: write it below")))}},
            {papers::Paragraph{plain(utf8(names.join(QStringLiteral(" · "))))}},
            {found}};
}

std::optional<Day> lastWalked(const model::Season& season) {
    std::optional<Day> last;
    for (const auto& w : season.walks)
        if (w.readyNow) last = std::max(last.value_or(w.date), w.date);
    return last;
}

std::vector<papers::Text> factsOf(const PaperOrder& order, std::optional<Day> day) {
    const auto& season = order.season;
    std::vector<papers::Text> facts;
    facts.push_back(
        strong(std::to_string(season.patches.size())) +
        plain(utf8(WalkSheetSay::tr(" patch(es)", nullptr, static_cast<int>(season.patches.size())))));
    if (const auto last = lastWalked(season))
        facts.push_back(plain(utf8(WalkSheetSay::tr("last walk "))) + strong(utf8(shortDay(*last))));
    for (const auto& w : season.weather) {
        if (!day || w.date != *day) continue;
        facts.push_back(plain(utf8(w.kind == model::WeatherKind::forecast ? WalkSheetSay::tr("forecast ")
                                                                          : WalkSheetSay::tr("measured "))) +
                        strong(utf8(WalkSheetSay::tr("%1 to %2")
                                        .arg(temperatureFigure(w.minCelsius, season),
                                             temperatureWords(w.maxCelsius, season)))));
        break;
    }
    if (const QString lead = leadFigure(order.plan); !lead.isEmpty())
        facts.push_back(plain(utf8(WalkSheetSay::tr("the season runs "))) + strong(utf8(lead)));
    return facts;
}

papers::Block writeHere() {
    papers::WriteHere write;
    write.title = utf8(WalkSheetSay::tr("Write here,\ntype in later"));
    write.boxes = {{utf8(WalkSheetSay::tr("walked on")), 30},
                   {utf8(WalkSheetSay::tr("walked by")), 30},
                   {utf8(WalkSheetSay::tr("from")), 22},
                   {utf8(WalkSheetSay::tr("note for the sheet")), 0}};
    return {write};
}

} // namespace

papers::Document walkSheet(const PaperOrder& order) {
    const auto& season = order.season;
    const auto day = order.today ? order.today : dayOf(order.printedAt);
    papers::Document d;
    d.name = utf8(WalkSheetSay::tr("Round the garden"));
    if (day) d.key = utf8(shortDay(*day));
    d.keyNote = season.theSettings().placeName;
    d.facts = factsOf(order, day);
    if (season.patches.empty()) {
        d.body.push_back(
            {papers::Paragraph{plain(utf8(WalkSheetSay::tr("There is no patch to walk to yet.")))}});
    } else {
        const auto expectations = day ? walkExpectations(season, *day) : WalkExpectations();
        if (auto live = sheetOf(season, expectations); !live.rows.empty())
            d.body.push_back({std::move(live)});
        for (auto& block : resting(season, expectations))
            d.body.push_back(std::move(block));
        d.body.push_back({papers::Paragraph{
            plain(utf8(WalkSheetSay::tr(
                "Count stems that could be cut, not buds you hope for. Write 0 for none; an empty box "
                "stays not known. Small in the corner: what is expected."))),
            true}});
    }
    if (wants(order, PaperKind::walkSheet, PaperPart::writeHere)) d.last.push_back(writeHere());
    d.footWhat = season.theSettings().seasonName;
    return d;
}

} // namespace withy::ui
