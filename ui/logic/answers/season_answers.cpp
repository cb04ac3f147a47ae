// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/season_answers.h"

#include "core/runup/rates.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

struct SeasonSay {
    Q_DECLARE_TR_FUNCTIONS(SeasonPages)
};

QString workName(model::RateKind work) {
    using enum model::RateKind;
    switch (work) {
    case washContainer:
        return SeasonSay::tr("Wash a container");
    case fillWater:
        return SeasonSay::tr("Fill it with water");
    case cutRibbon:
        return SeasonSay::tr("Cut a ribbon");
    case tieRibbon:
        return SeasonSay::tr("Tie a ribbon");
    case cutHundredStems:
        return SeasonSay::tr("Cut 100 stems");
    case stripHundredStems:
        return SeasonSay::tr("Strip 100 stems");
    case sortPiece:
        return SeasonSay::tr("Sort the stems of a piece");
    case packPiece:
        return SeasonSay::tr("Pack a piece");
    case loadTray:
        return SeasonSay::tr("Load a tray");
    case placePiece:
        return SeasonSay::tr("Place a piece");
    case collectPiece:
        return SeasonSay::tr("Collect a piece");
    case checkWaterPiece:
        return SeasonSay::tr("Check the water of a piece");
    case handOver:
        return SeasonSay::tr("Hand a piece over");
    }
    return {};
}

} // namespace

Answer ordersAnswer(const model::Season& season, const review::Orders& orders) {
    if (season.bookings.empty())
        return {{SeasonSay::tr(
            "Nothing booked yet. Start with a date, and the garden will say what it can give.")}};
    const auto& s = season.theSettings();
    int taken = 0, lost = 0;
    for (const auto& b : season.bookings)
        ++(b.standing == model::Standing::lost ? lost : taken);
    Answer answer{{amount(orders.sum.income, s), Weight::strong},
                  {SeasonSay::tr(" to pay over %n booking(s) and ", nullptr, taken)},
                  {amount(orders.sum.gift, s), Weight::strong},
                  {SeasonSay::tr(" given; ")},
                  {amount(orders.sum.owed, s), Weight::strong},
                  {SeasonSay::tr(" is still owed.")}};
    if (lost > 0)
        answer.push_back({SeasonSay::tr(" %n lost booking(s) (is|are) not counted.", nullptr, lost)});
    if (orders.sum.unpriced > 0)
        answer.push_back({SeasonSay::tr(" %n kind(s) of piece (has|have) no price yet, so it is more.",
                                        nullptr, orders.sum.unpriced)});
    return answer;
}

Answer settingsAnswer(const model::Season& season) {
    const auto& s = season.theSettings();
    const auto days = s.lastDay - s.firstDay + 1;
    return {{text(s.placeName.empty() ? s.seasonName : s.placeName), Weight::strong},
            {SeasonSay::tr(", %n day(s) from %1 to %2.", nullptr, days)
                 .arg(shortDay(s.firstDay), shortDay(s.lastDay))}};
}

Answer ratesAnswer(const model::Season& season) {
    int mine = 0;
    for (const auto& r : season.rates) {
        if (r.basis == Basis::mine || r.basis == Basis::counted || r.basis == Basis::lastSeasons) ++mine;
    }
    if (mine == 0)
        return {
            {SeasonSay::tr("All times are common practice, not yet yours. Time a job once; it will show.")}};
    return {{SeasonSay::tr("%n time(s) of your own", nullptr, mine), Weight::strong},
            {SeasonSay::tr("; common practice stands in for the others.")}};
}

std::vector<StandInTime> standInTimes(const model::Season& season) {
    std::vector<StandInTime> all;
    for (std::size_t i = 0; i < model::Words<model::RateKind>::list.size(); ++i) {
        const auto work = static_cast<model::RateKind>(i);
        const bool own = std::any_of(season.rates.begin(), season.rates.end(),
                                     [&](const model::Rate& r) { return r.work == work; });
        if (own) continue;
        all.push_back({workName(work), SeasonSay::tr("%1 min").arg(
                                           QString::number(runup::defaultRate(work).minutes, 'g', 4))});
    }
    return all;
}

Answer backupsAnswer(int backups, const QString& newestAge) {
    if (backups == 0)
        return {
            {SeasonSay::tr("No backup yet. One is made each day the season is opened; or make one now.")}};
    return {{SeasonSay::tr("%n backup(s)", nullptr, backups), Weight::strong},
            {SeasonSay::tr(", the newest made %1.").arg(newestAge)}};
}

Answer tablesAnswer(const model::Season& season) {
    std::size_t records = 0;
    for (std::size_t kind = 0; kind < model::tableCount; ++kind)
        records += model::sizeOf(season, static_cast<model::TableKind>(kind));
    return {{SeasonSay::tr("%1 record(s)", nullptr, asCount(records)).arg(whole(asCount(records))),
             Weight::strong},
            {SeasonSay::tr(" in %1 tables, all yours to take elsewhere.").arg(model::tableCount)}};
}

Answer acceptedAnswer(const model::Season& season) {
    if (season.acceptedFindings.empty())
        return {{SeasonSay::tr("Nothing is left so: you are told of everything.")}};
    return {
        {SeasonSay::tr("%n warning(s)", nullptr, asCount(season.acceptedFindings.size())), Weight::strong},
        {SeasonSay::tr(" (is|are) left so until (its|their) facts change.", nullptr,
                       asCount(season.acceptedFindings.size()))}};
}

} // namespace withy::ui
