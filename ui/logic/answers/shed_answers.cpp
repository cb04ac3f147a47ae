// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/shed_answers.h"

#include "core/plan/shed/ribbon_days.h"
#include "core/plan/shed_plan.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/shelf_rows.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

struct ShedAnswersSay {
    Q_DECLARE_TR_FUNCTIONS(Shed)
};

/// Something that is short for a booking.
struct Want {
    Day when;
    QString words; ///< "Honey jar, 18 short"
    QString booking;
};

/// What the shelves say, of all bookings together; nothing until they are planned.
std::optional<Want> firstOnShelves(const model::Season& season, const plan::Plan& plan,
                                   model::TableKind table) {
    const auto* item = plan.shed ? firstShortOf(*plan.shed, table) : nullptr;
    if (!item) return std::nullopt;
    return Want{item->firstShort->day,
                ShedAnswersSay::tr("%1, %2 short")
                    .arg(itemName(season, item->item), amountOf(*item, item->firstShort->by)),
                bookingTitles(season, item->firstShort->bookings)};
}

std::optional<Want> firstRibbon(const model::Season& season, const plan::Plan& plan) {
    if (!plan.shed) return std::nullopt;
    for (const auto& day : plan.shed->ribbon) {
        if (plan::ribbonIsOver(season, *day, plan.shed->today)) continue;
        for (const auto& cut : day->ribbons) {
            const auto* r = season.ribbons.find(cut->ribbon);
            if (!r || cut->missingLength.value <= 0) continue;
            return Want{
                day->day,
                ShedAnswersSay::tr("%1, %2 short").arg(text(r->name), reelWords(cut->missingLength, season)),
                bookingTitles(season, day->bookings)};
        }
    }
    return std::nullopt;
}

Answer shortWords(const Want& want) {
    return {{ShedAnswersSay::tr("First to run short: ")},
            {ShedAnswersSay::tr("%1 on %2").arg(want.words, shortDay(want.when)), Weight::asks},
            {want.booking.isEmpty() ? ShedAnswersSay::tr(".")
                                    : ShedAnswersSay::tr(" for %1.").arg(want.booking)}};
}

/// How many there are, and that they are enough: of what is counted, and once the bookings were asked.
Answer covered(const plan::Plan& plan, int kinds, const QString& what, int uncounted) {
    QString rest = ShedAnswersSay::tr(".");
    if (kinds == uncounted)
        rest = ShedAnswersSay::tr(", none of them counted yet.");
    else if (plan.shed && uncounted == 0)
        rest = ShedAnswersSay::tr(", enough for every booking.");
    else if (plan.shed)
        rest = ShedAnswersSay::tr("; of what is counted, enough for every booking.");
    Answer answer{{what, Weight::strong}, {rest}};
    if (uncounted > 0 && uncounted < kinds)
        answer.push_back({ShedAnswersSay::tr(" %n never counted.", nullptr, uncounted)});
    return answer;
}

template <class Rows, class Member>
int uncounted(const Rows& rows, Member member) {
    int n = 0;
    for (const auto& r : rows)
        n += r.*member ? 0 : 1;
    return n;
}

} // namespace

Answer containersAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.containers.empty())
        return {{ShedAnswersSay::tr("Nothing on the shelf yet. Count what is there.")}};
    const auto want = firstOnShelves(season, plan, model::TableKind::containers);
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.containers.size());
    return covered(plan, kinds, ShedAnswersSay::tr("%n kind(s) of container", nullptr, kinds),
                   uncounted(season.containers, &model::Container::owned));
}

Answer ribbonsAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.ribbons.empty())
        return {{ShedAnswersSay::tr("No ribbon yet. Unroll, measure, and note the ends too.")}};
    const auto want = firstRibbon(season, plan);
    if (want) return shortWords(*want);
    std::int64_t all = 0;
    for (const auto& l : season.ribbonLengths)
        all += l.length.value;
    const int kinds = static_cast<int>(season.ribbons.size());
    return {
        {ShedAnswersSay::tr("%1 of %n ribbon(s)", nullptr, kinds).arg(reelWords(Millimetres(all), season)),
         Weight::strong},
        {plan.shed ? ShedAnswersSay::tr(" on the reels and in ends; nothing runs short.")
                   : ShedAnswersSay::tr(" on the reels and in ends.")}};
}

Answer sundriesAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.sundries.empty())
        return {{ShedAnswersSay::tr("No sundries yet: pins, tape, wire, cable ties, tissue.")}};
    const auto want = firstOnShelves(season, plan, model::TableKind::sundries);
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.sundries.size());
    return covered(plan, kinds, ShedAnswersSay::tr("%n (sundry|sundries)", nullptr, kinds),
                   uncounted(season.sundries, &model::Sundry::onHand));
}

Answer holdersAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.holders.empty())
        return {{ShedAnswersSay::tr("No buckets or trays yet. Clean buckets run out first.")}};
    const auto want = firstOnShelves(season, plan, model::TableKind::holders);
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.holders.size());
    return covered(plan, kinds, ShedAnswersSay::tr("%n kind(s) of tray and bucket", nullptr, kinds),
                   uncounted(season.holders, &model::Holder::owned));
}

Answer mixesAnswer(const model::Season& season) {
    if (season.ribbonMixes.empty())
        return {{ShedAnswersSay::tr("No mix yet. One ribbon alone is a mix too: give it 100 percent.")}};
    int uneven = 0;
    for (const auto& mix : season.ribbonMixes) {
        double sum = 0;
        for (const auto& part : season.ribbonMixParts)
            sum += part.mix == mix.id ? part.share : 0;
        uneven += std::abs(sum - 100) > 0.01 ? 1 : 0;
    }
    const int mixes = static_cast<int>(season.ribbonMixes.size());
    if (uneven == 0)
        return {{ShedAnswersSay::tr("%n mix(es)", nullptr, mixes), Weight::strong},
                {ShedAnswersSay::tr(", every one adds up to 100 percent.")}};
    return {{ShedAnswersSay::tr("%n mix(es)", nullptr, mixes), Weight::strong},
            {QStringLiteral("; ")},
            {ShedAnswersSay::tr("%n (does|do) not add up to 100 percent", nullptr, uneven), Weight::asks},
            {QStringLiteral(".")}};
}

Answer vehiclesAnswer(const model::Season& season) {
    if (season.vehicles.empty())
        return {{ShedAnswersSay::tr(
            "No vehicle yet. Measure the load floor; the plate says what it may carry.")}};
    const int n = static_cast<int>(season.vehicles.size());
    return {{ShedAnswersSay::tr("%n vehicle(s)", nullptr, n), Weight::strong},
            {ShedAnswersSay::tr(". The plate says what it may carry.")}};
}

std::optional<std::int64_t> mostNeeded(const plan::Plan& plan, Id<model::Container> container) {
    std::optional<std::int64_t> most;
    for (const auto& [id, booked] : plan.bookings) {
        for (const auto& need : booked->kit.containers) {
            if (need.container == container)
                most = std::max(most.value_or(0), shed::wholeUnits(need.total.needed));
        }
    }
    return most;
}

} // namespace withy::ui
