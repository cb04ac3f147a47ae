// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/drop_answers.h"

#include "core/plan/index.h"
#include "ui/logic/format.h"
#include "ui/logic/papers/paper_cautions.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using papers::plain;
using papers::strong;

struct DropAnswersSay {
    Q_DECLARE_TR_FUNCTIONS(DropAnswers)
};

/// Of "Village Hall, kitchen door" the first part names the place.
QString placeName(const std::string& place) {
    return text(place).section(QLatin1Char(','), 0, 0).trimmed();
}

QString partOfPlace(const std::string& place) {
    return text(place).section(QLatin1Char(','), 1).trimmed();
}

bool namesPlace(const model::Venue& venue, const QString& place) {
    return !place.isEmpty() && text(venue.name).contains(place, Qt::CaseInsensitive);
}

/// Up to the first comma or stop the words that matter, the rest in plain.
papers::Text answer(const std::string& words) {
    if (words.empty()) return {};
    const auto end = words.find_first_of(",.;:");
    if (end == std::string::npos) return plain(words);
    return strong(words.substr(0, end)) + plain(words.substr(end));
}

papers::Text clearWords(const model::Drop* drop) {
    if (!drop || (!drop->clearedAt && drop->clearedBy.empty())) return {};
    papers::Text out = plain(drop->clearedBy);
    if (!drop->clearedAt) return out;
    const QString when =
        DropAnswersSay::tr("%1, %2").arg(shortDay(drop->clearedAt->day), clock(*drop->clearedAt));
    return drop->clearedBy.empty() ? strong(utf8(when)) : strong(utf8(when)) + plain(": ") + out;
}

/// "24 Honey jar, 1 lb; 2 Bowl".
QString backWords(const model::Season& season, const std::vector<ComingHome>& home) {
    QStringList parts;
    for (const auto& each : home)
        if (const auto* container = season.containers.find(each.container))
            parts << DropAnswersSay::tr("%1 %2").arg(whole(each.out), text(container->name));
    return parts.join(QStringLiteral("; "));
}

papers::Text careWords(const model::Season& season, const plan::BookingPlan& plan,
                       const model::Venue* venue) {
    papers::Text out = strong(utf8(DropAnswersSay::tr("decoration, not food")));
    const auto plants = plantCautions(season, plantsOf(plan));
    if (!plants.gloves.isEmpty())
        out = out + plain(utf8(plants.sap.isEmpty() ? DropAnswersSay::tr("; gloves")
                                                    : DropAnswersSay::tr("; gloves for sap")));
    if (venue && !venue->stairs.empty() &&
        text(venue->stairs).compare(QStringLiteral("none"), Qt::CaseInsensitive) != 0)
        out = out + plain(utf8(DropAnswersSay::tr("; steps: %1").arg(text(venue->stairs))));
    return out;
}

} // namespace

const model::Venue* venueOfDrop(const model::Season& season, const model::Booking& booking,
                                const model::Drop* drop) {
    const auto* own = booking.venue ? season.venues.find(*booking.venue) : nullptr;
    if (!drop) return own;
    const QString place = placeName(drop->place);
    if (own && namesPlace(*own, place)) return own;
    for (const auto& venue : season.venues)
        if (namesPlace(venue, place)) return &venue;
    std::int64_t drops = 0;
    for (const auto& other : season.drops)
        drops += other.booking == booking.id ? 1 : 0;
    return drops == 1 ? own : nullptr;
}

std::vector<papers::DropCard::Answer> dropAnswers(const model::Season& season, const plan::BookingPlan& plan,
                                                  const model::Booking& booking, const model::Drop* drop) {
    using S = DropAnswersSay;
    const auto* venue = venueOfDrop(season, booking, drop);
    const auto known = [&](std::string model::Venue::*field) {
        return venue ? answer(venue->*field) : papers::Text();
    };
    papers::Text door = known(&model::Venue::door);
    if (door.empty() && drop) door = plain(utf8(partOfPlace(drop->place)));
    if (papers::words(door).empty()) door.clear();
    std::vector<papers::DropCard::Answer> out{{utf8(S::tr("door")), std::move(door)},
                                              {utf8(S::tr("key")), known(&model::Venue::keyHolder)},
                                              {utf8(S::tr("park")), known(&model::Venue::parking)},
                                              {utf8(S::tr("water")), known(&model::Venue::water)},
                                              {utf8(S::tr("fix")), known(&model::Venue::fixingRule)}};
    if (venue && !venue->flameRule.empty())
        out.push_back({utf8(S::tr("flame")), known(&model::Venue::flameRule)});
    out.push_back({utf8(S::tr("receives")), drop ? answer(drop->receivedBy) : papers::Text()});
    out.push_back({utf8(S::tr("clears")), clearWords(drop)});
    const auto home = comingHome(season, booking, drop ? std::optional(drop->id) : std::nullopt);
    const QString back = home.empty() ? S::tr("nothing of ours") : backWords(season, home);
    out.push_back({utf8(S::tr("back")), plain(utf8(back))});
    out.push_back({utf8(S::tr("care")), careWords(season, plan, venue)});
    return out;
}

QString placesOf(const model::Season& season, Id<model::Line> line) {
    QStringList parts;
    for (const auto& placement : season.placements) {
        if (placement.line != line) continue;
        const auto* table = season.venueTables.find(placement.table);
        if (!table) continue;
        parts << (table->howMany > 1
                      ? DropAnswersSay::tr("%1 on each, %2 × %3")
                            .arg(placement.perTable)
                            .arg(table->howMany)
                            .arg(text(table->label))
                      : DropAnswersSay::tr("%1 on %2").arg(placement.perTable).arg(text(table->label)));
    }
    return parts.join(QStringLiteral(", "));
}

std::vector<ComingHome> comingHome(const model::Season& season, const model::Booking& booking,
                                   std::optional<Id<model::Drop>> drop) {
    const plan::Index index(season);
    const auto& drops = plan::Index::of(index.drops, booking.id);
    std::vector<ComingHome> out;
    for (const auto* line : plan::Index::of(index.lines, booking.id)) {
        const bool first = drop && !drops.empty() && drops.front()->id == *drop;
        if (drop && line->drop != drop && !(first && !line->drop)) continue;
        const auto* design = season.designs.find(line->design);
        const auto* container =
            design && design->container ? season.containers.find(*design->container) : nullptr;
        if (!container || !container->returnable) continue;
        const auto pieces = line->pieces.value + line->sparePieces.value; // the spare ones are carried in too
        const auto same =
            std::find_if(out.begin(), out.end(), [&](const auto& o) { return o.container == container->id; });
        if (same == out.end())
            out.push_back({container->id, pieces});
        else
            same->out += pieces;
    }
    return out;
}

} // namespace withy::ui
