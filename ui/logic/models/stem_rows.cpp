// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/stem_rows.h"

#include "core/base/working_lines.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using model::TableKind;

class Stemming {
    Q_DECLARE_TR_FUNCTIONS(StemsPage)

public:
    Stemming(const model::Season& season, const plan::BookingPlan& plan) : season_(season), plan_(plan) {}

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
        for (std::size_t i = 0; i < plan_.rounds.size(); ++i)
            sheet.rows.push_back(roundRow(i));
        return sheet;
    }

    static Answer answer(const plan::BookingPlan& plan, const std::vector<ListedFinding>& findings) {
        if (plan.lines.empty()) return {{tr("Nothing is ordered yet. Add a piece on the Pieces page."), {}}};
        std::int64_t pieces = 0;
        for (const auto& line : plan.lines)
            pieces += line.pieces.value;
        Answer out;
        out.push_back({tr("%n stem(s)", nullptr, static_cast<int>(plan.stemsNeeded.value)),
                       AnswerPart::Weight::strong});
        out.push_back({tr(" for %n piece(s), ", nullptr, static_cast<int>(pieces)), {}});
        out.push_back({whole(plan.stemsToCut.value), AnswerPart::Weight::strong});
        out.push_back({tr(" to cut with the spare."), {}});
        const int asking = countAsking(findings);
        if (asking == 0) return out;
        out.push_back({QStringLiteral(" ") + sentence(findings.front().finding), AnswerPart::Weight::asks});
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
        row.cells.push_back({use.cutLength ? tr("%1 mm").arg(use.cutLength->value) : QString(), {}});
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
        if (need.round < 0 || static_cast<std::size_t>(need.round) >= plan_.rounds.size())
            return {tr("no time fits"), SheetCell::Tone::asks};
        const auto& start = plan_.rounds[static_cast<std::size_t>(need.round)].start;
        const QString at = tr("%1 %2").arg(shortDay(start.day), clock(start));
        return {plan_.rounds.size() > 1 ? tr("%1, round %2").arg(at).arg(need.round + 1) : at, {}};
    }

    /// "6 Sep to Fri 10 Sep 12:30"; the hour of the beginning stands in the working.
    static QString spanWords(const garden::CutTimes& times) {
        const QString from = shortDay(times.earliest.day).section(QLatin1Char(' '), 1);
        return tr("%1 to %2 %3").arg(from, shortDay(times.latest.day), clock(times.latest));
    }

    [[nodiscard]] static SheetCell windowCell(const plan::PlantNeed& need, const QString& plant) {
        if (!need.window) return {tr("not known"), SheetCell::Tone::second};
        const auto& window = need.window->window;
        SheetFigure f;
        f.words = window.times ? spanWords(*window.times) : tr("at no time");
        f.means = window.times
                      ? tr("is when %1 may be cut, from %2 on").arg(plant, clock(window.times->earliest))
                      : tr("may %1 be cut").arg(plant);
        f.working = window.working;
        f.leadsTo = model::Ref{TableKind::plants, need.plant.value};
        f.leadWords = tr("Change what is known of %1").arg(plant);
        return {{}, window.times ? SheetCell::Tone::text : SheetCell::Tone::asks, std::move(f)};
    }

    [[nodiscard]] SheetRow roundRow(std::size_t i) const {
        const auto& round = plan_.rounds[i];
        SheetRow row;
        row.key = QStringLiteral("round%1").arg(i);
        row.name = tr("Round %1").arg(i + 1);
        row.rest = shortDay(round.start.day);
        QStringList what;
        for (const auto n : round.needs)
            if (n < plan_.needs.size())
                what << tr("%1 %2").arg(whole(plan_.needs[n].need.total.value),
                                        nameIn(season_.plants, plan_.needs[n].plant));
        row.under = what.join(QStringLiteral(" · "));
        SheetFigure f;
        f.words = whole(round.work.value);
        f.means = tr("minutes of cutting in round %1").arg(i + 1);
        f.working = round.working;
        f.leadsTo = model::Ref{TableKind::rates, rateId()};
        f.leadWords = tr("Change how fast you cut");
        if (f.leadsTo->id == 0) f.leadsTo = model::Ref{TableKind::settings, 1};
        row.cells.push_back({tr("%1 to %2").arg(clock(round.start), clock(round.end)), {}});
        row.cells.push_back({whole(round.stems.value), {}});
        row.cells.push_back({{}, {}, std::move(f)});
        row.cells.push_back(heatCell(round));
        return row;
    }

    [[nodiscard]] std::int64_t rateId() const {
        for (const auto& rate : season_.rates)
            if (rate.work == model::RateKind::cutHundredStems) return rate.id.value;
        return 0;
    }

    [[nodiscard]] static SheetCell heatCell(const plan::CutRound& round) {
        if (!round.hour) return {tr("not known"), SheetCell::Tone::second};
        return {tr("%1 °C").arg(round.hour->celsius, 0, 'f', 0),
                round.hour->overLimit ? SheetCell::Tone::asks : SheetCell::Tone::text};
    }

    const model::Season& season_;
    const plan::BookingPlan& plan_;
    std::set<std::int64_t> told_; ///< plants whose spare stands on an earlier row
};

} // namespace

Answer stemAnswer(const plan::BookingPlan& plan, const std::vector<ListedFinding>& findings) {
    return Stemming::answer(plan, findings);
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

Sheet stemSheet(const model::Season& season, const plan::BookingPlan& plan) {
    return Stemming(season, plan).stems();
}

Sheet roundSheet(const model::Season& season, const plan::BookingPlan& plan) {
    return Stemming(season, plan).rounds();
}

} // namespace withy::ui
