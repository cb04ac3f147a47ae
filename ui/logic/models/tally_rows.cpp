// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/tally_rows.h"

#include "core/model/schema.h"
#include "core/plan/forecast_plan.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/outing_goals.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/models/tally_offers.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using edits::TallyCount;
using Weight = AnswerPart::Weight;

struct TallyRowsSay {
    Q_DECLARE_TR_FUNCTIONS(Tally)
};

/// "of 72, 8 short", "of 48, 3 spare": what can be used, against what the pieces hold.
QString againstWords(const TallyRow& row) {
    if (!row.planned)
        return row.cut ? TallyRowsSay::tr("not planned on") : TallyRowsSay::tr("not planned on, not counted");
    if (!row.cut) return TallyRowsSay::tr("of %1, not counted").arg(whole(row.need));
    const std::int64_t over = row.net() - row.need;
    if (over < 0) return TallyRowsSay::tr("of %1, %2 short").arg(whole(row.need), whole(-over));
    if (over > 0) return TallyRowsSay::tr("of %1, %2 spare").arg(whole(row.need), whole(over));
    return TallyRowsSay::tr("of %1, all there").arg(whole(row.need));
}

/// What is odd about the count; it is kept as typed.
QString remarkOf(const model::Patch& patch, const TallyRow& row, std::int64_t otherDays) {
    if (row.thrownAway && !row.cut)
        return TallyRowsSay::tr("%n thrown away, and no count yet of what was cut.", nullptr,
                                static_cast<int>(*row.thrownAway));
    if (row.cut && patch.expectedStems && *row.cut > patch.expectedStems->value)
        return TallyRowsSay::tr("%1 is more than the %2 this patch was thought to give all season. Kept as "
                                "typed. A digit too many?")
            .arg(whole(*row.cut), whole(patch.expectedStems->value));
    if (otherDays > 0) return TallyRowsSay::tr("%1 of them on other days.").arg(whole(otherDays));
    return {};
}

/// "20 of the 62 are for Wedding, Tamsin and Joel."
QString forOthersWords(const model::Season& season, const OutingGoal& outing) {
    QStringList others;
    for (const auto id : outing.others)
        others << text(model::nameOf(season, model::TableKind::bookings, id.value));
    return TallyRowsSay::tr("%1 of the %2 are for %3.")
        .arg(whole(outing.forOthers), whole(outing.goal.goal()), others.join(QStringLiteral(", ")));
}

/// The patch, and when it is cut: on the day itself the hour, for the head of the page names the day.
QString tallyPlaceOf(const model::Patch& patch, const CuttingGoal* goal, Day day) {
    const QString label = text(patch.label);
    if (!goal) return label;
    if (goal->day > day) return TallyRowsSay::tr("%1, early: planned for %2").arg(label, shortDay(goal->day));
    if (goal->day < day) return TallyRowsSay::tr("%1, planned for %2").arg(label, shortDay(goal->day));
    return goal->when ? TallyRowsSay::tr("%1, %2").arg(label, planClock(goal->when->from)) : label;
}

QString stageOf(const model::Plant& plant, const CuttingGoal* goal) {
    QStringList parts;
    if (!plant.stageToCut.empty()) parts << text(plant.stageToCut);
    if (goal && goal->spare > 0) parts << TallyRowsSay::tr("%1 with the spare").arg(whole(goal->goal()));
    return parts.join(QStringLiteral(" · "));
}

TallyRow tallyRowOf(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                    const model::Patch& patch, const OutingGoal* outing, Day day) {
    const CuttingGoal* goal = outing ? &outing->goal : nullptr;
    TallyRow row;
    row.patch = patch.id;
    row.plant = patch.plant;
    row.mark = walkingPlace(season, patch.id);
    row.planned = goal != nullptr;
    if (goal) row.need = goal->need;
    if (goal) row.spare = goal->spare;
    const auto cut = edits::tallied(season, booking, patch.id, day);
    row.cut = cut.all;
    row.thrownAway = edits::tallied(season, booking, patch.id, day, TallyCount::thrownAway).all;
    row.place = tallyPlaceOf(patch, goal, day);
    row.against = againstWords(row);
    row.asks = row.planned && row.cut && row.net() < row.need;
    if (row.thrownAway.value_or(0) > 0)
        row.thrownWords = TallyRowsSay::tr("%1 thrown away").arg(whole(*row.thrownAway));
    row.remark = remarkOf(patch, row, cut.otherDays());
    if (outing && outing->forOthers > 0)
        row.remark =
            QStringList{forOthersWords(season, *outing), row.remark}.join(QLatin1Char(' ')).trimmed();
    if (const auto* plant = season.plants.find(patch.plant)) {
        row.name = text(plant->name);
        row.colour = plant->colour1;
        row.bunch = plant->bunch.value_or(Stems(0)).value;
        row.stage = stageOf(*plant, goal);
    }
    if (!goal) {
        row.offers = standInOffers(season, plan, booking, patch.plant);
        if (row.remark.isEmpty()) row.remark = standInWords(season, booking, patch.plant, row.offers);
    }
    return row;
}

bool isTallied(const model::Season& season, Id<model::Booking> booking, Id<model::Patch> patch) {
    return std::any_of(season.tallies.begin(), season.tallies.end(), [&](const model::Tally& t) {
        return t.patch == patch &&
               std::any_of(season.roundBookings.begin(), season.roundBookings.end(),
                           [&](const auto& rb) { return rb.round == t.round && rb.booking == booking; });
    });
}

/// "Short by 8 zinnias"; the first two, and how many more plants there are.
QString tallyShortWords(const model::Season& season, const std::vector<TallyRow>& rows) {
    std::vector<std::pair<Id<model::Plant>, std::int64_t>> missing;
    for (const auto& row : rows) {
        const auto at =
            std::find_if(missing.begin(), missing.end(), [&](const auto& m) { return m.first == row.plant; });
        const bool counted = row.cut.has_value();
        const std::int64_t by = row.planned && counted ? row.need - row.net() : -row.net();
        if (at != missing.end())
            at->second += by;
        else
            missing.emplace_back(row.plant, by);
    }
    QStringList words;
    int more = 0;
    for (const auto& [plant, by] : missing) {
        if (by <= 0) continue;
        if (words.size() < 2)
            words << countedPlant(season, plant, by);
        else
            ++more;
    }
    if (words.isEmpty()) return {};
    QString list = words.join(TallyRowsSay::tr(" and "));
    if (more > 0)
        list = words.join(QStringLiteral(", ")) + TallyRowsSay::tr(" and %n more plant(s)", nullptr, more);
    return TallyRowsSay::tr("Short by %1.").arg(list);
}

std::int64_t likelyReady(const plan::Plan& plan, Id<model::Patch> patch, Day day) {
    if (!plan.garden) return 0;
    const auto found = plan.garden->patches.find(patch);
    if (found == plan.garden->patches.end() || !found->second.forecast) return 0;
    const auto* on = found->second.forecast->on(day);
    return on ? on->standing.likely.value : 0;
}

const OutingGoal* goalOf(const std::vector<OutingGoal>& goals, const model::Patch& patch) {
    for (const auto& g : goals)
        if (g.goal.patch == patch.id && g.goal.plant == patch.plant) return &g;
    return nullptr;
}

/// A patch's goals of several days are one row: on a day that cuts of it, it is that day's.
void showDay(const std::vector<CuttingGoal>& goals, Day day, CuttingGoal& shown) {
    for (const auto& g : goals) {
        if (g.patch != shown.patch || g.plant != shown.plant || g.day != day) continue;
        shown.day = day;
        shown.when = g.when;
        return;
    }
}

} // namespace

std::vector<TallyRow> tallyRows(const model::Season& season, const plan::Plan& plan,
                                Id<model::Booking> booking, Day day) {
    if (!season.bookings.find(booking)) return {};
    const auto all = outingGoals(season, plan, booking);
    auto due = outingGoals(season, plan, booking, day);
    if (due.empty()) due = all;
    const auto goals = cuttingGoals(season, plan, booking);
    for (auto& goal : due)
        showDay(goals, day, goal.goal);
    std::vector<TallyRow> rows;
    for (const auto* patch : inWalkingOrder(season)) {
        const auto* goal = goalOf(due, *patch);
        if (!goal && !isTallied(season, booking, patch->id)) continue;
        if (!goal) goal = goalOf(all, *patch);
        rows.push_back(tallyRowOf(season, plan, booking, *patch, goal, day));
    }
    return rows;
}

std::optional<TallyLater> tallyLater(const model::Season& season, const plan::Plan& plan,
                                     Id<model::Booking> booking, Day day) {
    TallyLater later;
    bool due = false;
    for (const auto& goal : cuttingGoals(season, plan, booking)) {
        due = due || goal.day <= day;
        if (goal.day <= day) continue;
        later.stems += goal.need;
        later.last = std::max(later.last, goal.day);
    }
    return due && later.stems > 0 ? std::optional(later) : std::nullopt;
}

Answer tallyAnswer(const model::Season& season, const std::vector<TallyRow>& rows,
                   const std::optional<TallyLater>& later) {
    if (rows.empty())
        return {{TallyRowsSay::tr(
            "Nothing to cut is known of yet. Give the booking pieces, and their slots plants "
            "that have a patch; or add what is found in flower.")}};
    std::int64_t in = 0;
    int counted = 0;
    for (const auto& row : rows) {
        counted += row.cut ? 1 : 0;
        in += row.net();
    }
    if (counted == 0)
        return {{TallyRowsSay::tr("Nothing counted yet. "), Weight::strong},
                {TallyRowsSay::tr("Press as the bunches come in; a blank is not a nought.")}};
    Answer answer{
        {TallyRowsSay::tr("%1 of %n counted, ", nullptr, asCount(rows.size())).arg(counted)},
        {TallyRowsSay::tr("%1 stem(s) in", nullptr, static_cast<int>(in)).arg(whole(in)), Weight::strong},
        {QStringLiteral(". ")}};
    const QString missing = tallyShortWords(season, rows);
    if (!missing.isEmpty())
        answer.push_back({missing, Weight::asks});
    else if (counted == asCount(rows.size()) && !later)
        answer.push_back({TallyRowsSay::tr("Every piece has its stems.")});
    if (later)
        answer.push_back(
            {(missing.isEmpty() ? QString() : QStringLiteral(" ")) +
             TallyRowsSay::tr("%1 more (is|are) due by %2.", nullptr, static_cast<int>(later->stems))
                 .arg(whole(later->stems), shortDay(later->last))});
    return answer;
}

QString tallyHead(const model::Season& season, Id<model::Booking> id, Day day) {
    const auto* booking = season.bookings.find(id);
    if (!booking) return {};
    std::vector<const model::Line*> lines;
    for (const auto& line : season.lines)
        if (line.booking == id) lines.push_back(&line);
    return QStringList{longDay(day), text(booking->title), piecesWords(season, lines)}.join(
        QStringLiteral("   ·   "));
}

std::vector<FoundChoice> foundChoices(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> booking, const std::vector<TallyRow>& rows,
                                      Day day) {
    const auto planned = outingGoals(season, plan, booking);
    std::vector<FoundChoice> out;
    std::vector<Id<model::Plant>> planted;
    for (const auto* patch : inWalkingOrder(season)) {
        planted.push_back(patch->plant);
        if (std::any_of(rows.begin(), rows.end(), [&](const TallyRow& r) { return r.patch == patch->id; }))
            continue;
        const auto likely = likelyReady(plan, patch->id, day);
        QStringList words{nameIn(season.plants, patch->plant), text(patch->label)};
        if (const auto* goal = goalOf(planned, *patch))
            words << TallyRowsSay::tr("planned for %1").arg(shortDay(goal->goal.day));
        if (likely > 0) words << TallyRowsSay::tr("%1 likely ready").arg(whole(likely));
        out.push_back({patch->id, patch->plant, words.join(QStringLiteral(" · ")), likely > 0});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const FoundChoice& a, const FoundChoice& b) { return a.inFlower && !b.inFlower; });
    for (const auto& plant : season.plants)
        if (std::find(planted.begin(), planted.end(), plant.id) == planted.end())
            out.push_back({std::nullopt, plant.id, text(plant.name), false});
    return out;
}

} // namespace withy::ui
