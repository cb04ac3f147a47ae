// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/shed_answers.h"

#include "ui/logic/format.h"

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
    LocalTime when;
    QString words; ///< "18 Honey jar"
    QString booking;
};

/// The first want of the season; `wantsOf` says what is short in one kit, in words.
template <class WantsOf>
std::optional<Want> firstWant(const model::Season& season, const plan::Plan& plan, WantsOf wantsOf) {
    std::optional<Want> first;
    for (const auto& [id, booked] : plan.bookings) {
        const auto* b = season.bookings.find(id);
        if (!b || b->standing == model::Standing::lost) continue;
        const QString words = wantsOf(booked->kit);
        if (!words.isEmpty() && (!first || b->eventStart < first->when))
            first = Want{b->eventStart, words, text(b->title)};
    }
    return first;
}

Answer shortWords(const Want& want) {
    return {{ShedAnswersSay::tr("First to run short: ")},
            {ShedAnswersSay::tr("%1, on %2").arg(want.words, shortDay(want.when.day)), Weight::asks},
            {ShedAnswersSay::tr(" for %1.").arg(want.booking)}};
}

Answer covered(int kinds, const QString& what, int uncounted) {
    Answer answer{{what, Weight::strong},
                  {kinds == uncounted ? ShedAnswersSay::tr(", none of them counted yet.")
                                      : ShedAnswersSay::tr(", enough for every booking.")}};
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

QString shortOf(const std::string& name, const shed::KitTotal& total) {
    if (total.missing.value_or(0) <= 0) return {};
    return ShedAnswersSay::tr("%1 %2").arg(whole(shed::wholeUnits(*total.missing)), text(name));
}

} // namespace

Answer containersAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.containers.empty())
        return {{ShedAnswersSay::tr("Nothing on the shelf yet. Count what is there.")}};
    const auto want = firstWant(season, plan, [&](const plan::KitPlan& kit) {
        for (const auto& need : kit.containers) {
            const auto* c = season.containers.find(need.container);
            const QString words = c ? shortOf(c->name, need.total) : QString();
            if (!words.isEmpty()) return words;
        }
        return QString();
    });
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.containers.size());
    return covered(kinds, ShedAnswersSay::tr("%n kind(s) of container", nullptr, kinds),
                   uncounted(season.containers, &model::Container::owned));
}

Answer ribbonsAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.ribbons.empty())
        return {{ShedAnswersSay::tr("No ribbon yet. Unroll, measure, and note the ends too.")}};
    const auto want = firstWant(season, plan, [&](const plan::KitPlan& kit) {
        for (const auto& need : kit.ribbons) {
            const auto* r = season.ribbons.find(need.ribbon);
            if (r && need.missing && need.missing->value > 0)
                return ShedAnswersSay::tr("%1 of %2").arg(metres(*need.missing), text(r->name));
        }
        return QString();
    });
    if (want) return shortWords(*want);
    std::int64_t all = 0;
    for (const auto& l : season.ribbonLengths)
        all += l.length.value;
    const int kinds = static_cast<int>(season.ribbons.size());
    return {{ShedAnswersSay::tr("%1 of %n ribbon(s)", nullptr, kinds).arg(metres(Millimetres(all))),
             Weight::strong},
            {ShedAnswersSay::tr(" on the reels and in ends; nothing runs short.")}};
}

Answer sundriesAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.sundries.empty())
        return {{ShedAnswersSay::tr("No sundries yet: pins, tape, wire, cable ties, tissue.")}};
    const auto want = firstWant(season, plan, [&](const plan::KitPlan& kit) {
        for (const auto& need : kit.sundries) {
            const auto* s = season.sundries.find(need.sundry);
            const QString words = s ? shortOf(s->name, need.total) : QString();
            if (!words.isEmpty()) return words;
        }
        return QString();
    });
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.sundries.size());
    return covered(kinds, ShedAnswersSay::tr("%n (sundry|sundries)", nullptr, kinds),
                   uncounted(season.sundries, &model::Sundry::onHand));
}

Answer holdersAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.holders.empty())
        return {{ShedAnswersSay::tr("No buckets or trays yet. Clean buckets run out first.")}};
    const auto want = firstWant(season, plan, [&](const plan::KitPlan& kit) {
        if (!kit.buckets || !kit.bucketsOwned) return QString();
        const auto missing = kit.buckets->total - *kit.bucketsOwned;
        return missing > 0 ? ShedAnswersSay::tr("%n bucket(s)", nullptr, static_cast<int>(missing))
                           : QString();
    });
    if (want) return shortWords(*want);
    const int kinds = static_cast<int>(season.holders.size());
    return covered(kinds, ShedAnswersSay::tr("%n kind(s) of tray and bucket", nullptr, kinds),
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
                {ShedAnswersSay::tr(", all shared out whole.")}};
    return {
        {ShedAnswersSay::tr("%n mix(es)", nullptr, mixes), Weight::strong},
        {QStringLiteral("; ")},
        {ShedAnswersSay::tr("the shares of %n do not come to 100 percent", nullptr, uneven), Weight::asks},
        {QStringLiteral(".")}};
}

Answer vehiclesAnswer(const model::Season& season) {
    if (season.vehicles.empty())
        return {{ShedAnswersSay::tr(
            "No vehicle yet. Measure the load floor; the plate says what it may carry.")}};
    const int n = static_cast<int>(season.vehicles.size());
    return {{ShedAnswersSay::tr("%n vehicle(s)", nullptr, n), Weight::strong},
            {ShedAnswersSay::tr(". What may be carried is on the plate, and the law of the road decides.")}};
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
