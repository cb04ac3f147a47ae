// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/stem_rows.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/heat_working.h"
#include "core/plan/run_up_plan.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

namespace withy::ui {

namespace {

using model::TableKind;

class Stemming {
    Q_DECLARE_TR_FUNCTIONS(StemsPage)

public:
    Stemming(const model::Season& season, const plan::Plan& all, const plan::BookingPlan& plan)
        : season_(season), all_(all), plan_(plan), times_(all, plan.booking) {}

    [[nodiscard]] Sheet stems() {
        Sheet sheet;
        sheet.firstTitle = tr("Slot and plant");
        sheet.columns = {{tr("Needed"), true, false}, {tr("Spare"), true, false},
                         {tr("To cut"), true, false}, {tr("When"), false, true},
                         {tr("Cut to"), true, true},  {tr("May be cut"), false, true}};
        for (const auto& line : plan_.lines)
            addLine(line, sheet);
        return sheet;
    }

    [[nodiscard]] Sheet rounds() const {
        Sheet sheet;
        sheet.firstTitle = tr("Round");
        sheet.columns = {{tr("Hours"), false, false},
                         {tr("Stems"), true, false},
                         {tr("Minutes"), true, false},
                         {tr("Warmest"), true, true}};
        for (std::size_t i = 0; i < times_.all().size(); ++i)
            sheet.rows.push_back(roundRow(i));
        return sheet;
    }

    static Answer answer(const model::Season& season, const plan::BookingPlan& plan,
                         const std::vector<ListedFinding>& findings) {
        if (plan.lines.empty()) return {{tr("Nothing is ordered yet. Add a piece on the Pieces page."), {}}};
        Answer out = stemCountsAnswer(season, plan);
        const int asking = countAsking(findings);
        if (asking == 0) return out;
        out.push_back({sentence(findings.front().finding, season), AnswerPart::Weight::asks});
        if (asking > 1)
            out.push_back(
                {tr(" And %n more to look at, below.", nullptr, asking - 1), AnswerPart::Weight::plain});
        return out;
    }

private:
    [[nodiscard]] const model::Plant* plantOf(Id<model::Plant> id) const { return season_.plants.find(id); }

    void addLine(const plan::LinePlan& line, Sheet& sheet) {
        SheetRow head;
        head.key = QStringLiteral("line%1").arg(line.line.value);
        head.look = RowLook::head;
        head.name = nameIn(season_.designs, line.design);
        if (line.pieces.value != 1)
            head.rest = tr("%n of them", nullptr, static_cast<int>(line.pieces.value));
        head.cells = {{whole(line.stems.value), SheetCell::Tone::second}};
        sheet.rows.push_back(std::move(head));
        std::vector<std::pair<const plan::PlantNeed*, const plan::SlotUse*>> uses;
        for (const auto& need : plan_.needs)
            for (const auto& use : need.uses)
                if (use.line == line.line) uses.emplace_back(&need, &use);
        std::stable_sort(uses.begin(), uses.end(), [this](const auto& a, const auto& b) {
            return positionOf(a.second->slot) < positionOf(b.second->slot);
        });
        for (const auto& [need, use] : uses)
            sheet.rows.push_back(useRow(line, *need, *use));
    }

    [[nodiscard]] std::int64_t positionOf(Id<model::Slot> id) const {
        const auto* slot = season_.slots.find(id);
        return slot ? slot->position : 0;
    }

    [[nodiscard]] SheetRow useRow(const plan::LinePlan& line, const plan::PlantNeed& need,
                                  const plan::SlotUse& use) {
        const auto* slot = season_.slots.find(use.slot);
        const auto* plant = plantOf(need.plant);
        SheetRow row;
        row.key =
            QStringLiteral("use%1.%2.%3").arg(line.line.value).arg(use.slot.value).arg(need.plant.value);
        row.dotted = true;
        if (plant) row.dot = plant->colour1;
        row.name = slot ? text(slot->label) : QString();
        row.rest = plant ? text(plant->name) : QString();
        row.cells.push_back(neededCell(line, use, row.rest));
        // The spare is counted once a plant, so it stands on the plant's first row only.
        if (told_.insert(need.plant.value).second) {
            row.cells.push_back(
                {whole((need.need.spare + need.need.toBunches).value), SheetCell::Tone::second});
            row.cells.push_back(toCutCell(need, row.rest));
        } else {
            row.cells.push_back({});
            row.cells.push_back({tr("in the %1").arg(whole(need.need.total.value)), SheetCell::Tone::second});
        }
        row.cells.push_back(whenCell(need));
        row.cells.push_back({use.cutLength ? lengthWords(*use.cutLength, season_) : QString(), {}});
        row.cells.push_back(windowCell(need, row.rest));
        return row;
    }

    [[nodiscard]] static SheetCell neededCell(const plan::LinePlan& line, const plan::SlotUse& use,
                                              const QString& plant) {
        SheetFigure f;
        f.words = whole(use.stems.value);
        f.means = tr("stems of %1 needed").arg(plant);
        const auto all = use.pieces.value * use.perPiece.value;
        f.working = {lineOf(Step::given, "pieces", use.pieces.value, Unit::pieces, Basis::mine),
                     lineOf(Step::times, "stems a piece", use.perPiece.value, Unit::stems, Basis::mine)};
        if (all != use.stems.value && all > 0) // the slot is shared with another plant
            f.working.push_back(lineOf(
                Step::times, "share of the slot",
                100.0 * static_cast<double>(use.stems.value) / static_cast<double>(all), Unit::percent));
        f.working.push_back(lineOf(Step::result, "need", use.stems.value, Unit::stems));
        f.leadsTo = model::Ref{TableKind::designs, line.design.value};
        f.leadWords = tr("Change the design");
        return {{}, {}, std::move(f)};
    }

    [[nodiscard]] static SheetCell toCutCell(const plan::PlantNeed& need, const QString& plant) {
        SheetFigure f;
        f.words = whole(need.need.total.value);
        f.means = tr("stems of %1 to cut, with the spare").arg(plant);
        f.working = need.need.working;
        f.leadsTo = model::Ref{TableKind::settings, 1};
        f.leadWords = tr("Change the spare");
        return {{}, {}, std::move(f)};
    }

    [[nodiscard]] SheetCell whenCell(const plan::PlantNeed& need) const {
        if (const QString at = cutWhen(times_, need.plant); !at.isEmpty()) return {at, {}};
        if (!isCut(coverOf(all_, plan_.booking), need.plant))
            return {tr("not to cut"), SheetCell::Tone::second};
        return {tr("no time fits"), SheetCell::Tone::asks};
    }

    /// "6 Sep to Fri 10 Sep 12:30"; the hour of the beginning stands in the working.
    static QString spanWords(const garden::CutTimes& times) {
        const QString from = shortDay(times.earliest.day).section(QLatin1Char(' '), 1);
        return tr("%1 to %2 %3").arg(from, shortDay(times.latest.day), planClock(times.latest));
    }

    [[nodiscard]] static SheetCell windowCell(const plan::PlantNeed& need, const QString& plant) {
        if (!need.window) return {tr("not known"), SheetCell::Tone::second};
        const auto& window = need.window->window;
        SheetFigure f;
        f.words = window.times ? spanWords(*window.times) : tr("at no time");
        f.means = window.times
                      ? tr("is when %1 may be cut, from %2 on").arg(plant, planClock(window.times->earliest))
                      : tr("may %1 be cut").arg(plant);
        f.working = window.working;
        f.leadsTo = model::Ref{TableKind::plants, need.plant.value};
        f.leadWords = tr("Change what is known of %1").arg(plant);
        return {{}, window.times ? SheetCell::Tone::text : SheetCell::Tone::asks, std::move(f)};
    }

    /// What the row of a round says, whichever plan it is of.
    struct RoundFacts {
        QStringList what;
        std::int64_t stems = 0;
        std::int64_t minutes = 0;
        Working working;
        std::optional<double> celsius;
        std::vector<Id<model::Booking>> others; ///< on the same outing
        Working stemsWorking = {};
    };

    [[nodiscard]] RoundFacts factsOf(std::size_t i) const {
        if (const auto round = times_.all()[i].round) return laidFacts(*round);
        const auto& round = plan_.rounds[i];
        RoundFacts facts{{}, round.stems.value, round.work.value, round.working, {}, {}};
        if (round.hour) facts.celsius = round.hour->celsius;
        for (const auto n : round.needs)
            if (n < plan_.needs.size()) add(facts, plan_.needs[n].plant, plan_.needs[n].need.total);
        return facts;
    }

    [[nodiscard]] RoundFacts laidFacts(std::size_t index) const {
        const auto& round = all_.runUp->rounds[index];
        RoundFacts facts{{}, round.stems.value, round.minutes.value, {}, round.celsius, round.bookings};
        std::erase(facts.others, plan_.booking);
        if (const auto* step = stepOfRound(*all_.runUp, index)) facts.working = step->working;
        std::map<Id<model::Plant>, Stems> stems;
        for (const auto& patch : round.patches)
            stems[patch.plant] += patch.stems;
        for (const auto& [plant, sum] : stems)
            add(facts, plant, sum);
        return facts;
    }

    void add(RoundFacts& facts, Id<model::Plant> plant, Stems stems) const {
        facts.what << counted(stems, plant);
        const auto* record = season_.plants.find(plant);
        facts.stemsWorking.push_back(
            from(model::originOf(TableKind::plants, plant.value),
                 lineOf(facts.stemsWorking.empty() ? Step::given : Step::plus, "stems", stems.value,
                        Unit::stems, Basis::computed, {}, record ? record->name : std::string())));
    }

    [[nodiscard]] QString counted(Stems stems, Id<model::Plant> plant) const {
        return tr("%1 %2").arg(whole(stems.value), nameIn(season_.plants, plant));
    }

    [[nodiscard]] SheetRow roundRow(std::size_t i) const {
        const auto& time = times_.all()[i];
        RoundFacts facts = factsOf(i);
        SheetRow row;
        row.key = QStringLiteral("round%1").arg(i);
        row.name = tr("Round %1").arg(i + 1);
        row.rest = shortDay(time.from.day);
        if (!facts.others.empty())
            row.rest = tr("%1, together with %2").arg(row.rest, bookingWords(season_, facts.others));
        row.under = facts.what.join(QStringLiteral(" · "));
        SheetFigure f;
        f.words = whole(facts.minutes);
        f.means = tr("minutes of cutting in round %1").arg(i + 1);
        f.working = std::move(facts.working);
        f.leadsTo = model::Ref{TableKind::rates, rateId()};
        f.leadWords = tr("Change how fast you cut");
        if (f.leadsTo->id == 0) f.leadsTo = model::Ref{TableKind::settings, 1};
        row.cells.push_back({planHours(time.from, time.to), {}});
        row.cells.push_back(stemsCell(facts, i));
        row.cells.push_back({{}, {}, std::move(f)});
        row.cells.push_back(heatCell(facts.celsius, time, i));
        return row;
    }

    [[nodiscard]] static SheetCell stemsCell(RoundFacts& facts, std::size_t i) {
        SheetFigure f;
        f.words = whole(facts.stems);
        f.means = tr("stems to cut in round %1").arg(i + 1);
        f.working = std::move(facts.stemsWorking);
        f.working.push_back(lineOf(Step::result, "stems", facts.stems, Unit::stems));
        return {{}, {}, std::move(f)};
    }

    [[nodiscard]] std::int64_t rateId() const {
        for (const auto& rate : season_.rates)
            if (rate.work == model::RateKind::cutHundredStems) return rate.id.value;
        return 0;
    }

    [[nodiscard]] SheetCell heatCell(std::optional<double> celsius, const CutTime& time,
                                     std::size_t i) const {
        if (!celsius) return {tr("not known"), SheetCell::Tone::second};
        const auto tone =
            *celsius > season_.theSettings().heatLimitCelsius ? SheetCell::Tone::asks : SheetCell::Tone::text;
        SheetFigure f;
        f.words = temperatureWords(*celsius, season_, 0);
        f.means = tr("at the warmest of round %1").arg(i + 1);
        if (all_.days)
            f.working = plan::warmestWorking(*all_.days, time.from, time.to, *celsius, season_.theSettings());
        if (f.working.empty()) return {f.words, tone};
        return {{}, tone, std::move(f)};
    }

    const model::Season& season_;
    const plan::Plan& all_;
    const plan::BookingPlan& plan_;
    CutTimes times_;
    std::set<std::int64_t> told_; ///< plants whose spare stands on an earlier row
};

} // namespace

Answer stemAnswer(const model::Season& season, const plan::BookingPlan& plan,
                  const std::vector<ListedFinding>& findings) {
    return Stemming::answer(season, plan, findings);
}

std::vector<StemShare> stemShares(const model::Season& season, const plan::BookingPlan& plan) {
    std::vector<StemShare> out;
    for (const auto& need : plan.needs) {
        const auto* plant = season.plants.find(need.plant);
        if (plant && need.need.need.value > 0)
            out.push_back({text(plant->name), plant->colour1, need.need.need.value});
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.stems > b.stems; });
    return out;
}

QString sharesInWords(const std::vector<StemShare>& shares) {
    QStringList all;
    for (const auto& s : shares)
        all << QCoreApplication::translate("StemsPage", "%1 %2").arg(s.plant, whole(s.stems));
    return all.join(QStringLiteral(", "));
}

Sheet stemSheet(const model::Season& season, const plan::Plan& plan, const plan::BookingPlan& booking) {
    return Stemming(season, plan, booking).stems();
}

Sheet roundSheet(const model::Season& season, const plan::Plan& plan, const plan::BookingPlan& booking) {
    return Stemming(season, plan, booking).rounds();
}

} // namespace withy::ui
