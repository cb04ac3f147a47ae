// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/stem_sources.h"

#include "ui/logic/garden_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace withy::ui {

namespace {

class StemSourcesSay {
    Q_DECLARE_TR_FUNCTIONS(StemSources)

public:
    static QString store(const model::StockLot* lot) {
        if (!lot) return tr("from the store");
        const QString supplier = text(lot->supplier);
        if (lot->origin == model::StockOrigin::boughtIn && !lot->homeGrown)
            return supplier.isEmpty() ? tr("bought in, in the store")
                                      : tr("bought in from %1, in the store").arg(supplier);
        if (!lot->homeGrown) return tr("in the store, not marked as our own");
        return lot->origin == model::StockOrigin::dried ? tr("our own, dried, in the store")
                                                        : tr("our own, left over, in the store");
    }

    static QString toBuy() { return tr("to be bought in"); }

    static QString whole(const StemSource& s) {
        const QString day = shortDay(s.day);
        return tr("%1, %2, %3")
            .arg(s.place, s.hour.isEmpty() ? day : tr("%1 %2").arg(day, s.hour), withy::ui::whole(s.stems));
    }

    static QString byDay(std::vector<StemSource> days) {
        std::stable_sort(days.begin(), days.end(),
                         [](const StemSource& a, const StemSource& b) { return a.day < b.day; });
        QStringList parts;
        for (const auto& s : days)
            parts << tr("%1 %2").arg(withy::ui::whole(s.stems), shortDay(s.day));
        return tr("%1: %2").arg(days.front().place, parts.join(QStringLiteral(", ")));
    }
};

QString hourOn(const plan::BookingPlan& plan, Day day) {
    for (const auto& round : plan.rounds)
        if (round.start.day == day) return clock(round.start);
    return {};
}

StemSource sourceOf(const model::Season& season, const plan::BookingPlan& plan, const cover::Piece& piece) {
    StemSource s;
    s.plant = piece.plant;
    s.from = piece.from;
    s.day = piece.cut;
    s.stems = piece.stems.value;
    if (piece.source == cover::Source::patch) {
        const Id<model::Patch> id(piece.from);
        s.mark = walkingPlace(season, id);
        if (const auto* patch = season.patches.find(id)) s.place = text(patch->label);
        if (s.place.isEmpty()) s.place = nameIn(season.plants, piece.plant);
        s.hour = hourOn(plan, piece.cut);
    } else if (piece.source == cover::Source::lot) {
        const auto* lot = season.stockLots.find(Id<model::StockLot>(piece.from));
        s.origin = lot && lot->homeGrown ? StemOrigin::ownStore : StemOrigin::boughtIn;
        s.place = StemSourcesSay::store(lot);
    } else {
        s.origin = StemOrigin::boughtIn;
        s.place = StemSourcesSay::toBuy();
    }
    return s;
}

void addUp(std::vector<StemSource>& all, StemSource one) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const StemSource& s) {
        return s.plant == one.plant && s.origin == one.origin && s.from == one.from && s.day == one.day;
    });
    if (same == all.end())
        all.push_back(std::move(one));
    else
        same->stems += one.stems;
}

const plan::SlotLevel& likely(const plan::SlotCover& slot) {
    return slot.at[static_cast<std::size_t>(plan::Level::likely)];
}

} // namespace

std::vector<StemSource> sourcesOf(const model::Season& season, const plan::BookingPlan& plan,
                                  const plan::SlotCover& slot) {
    std::vector<StemSource> all;
    for (const auto& piece : likely(slot).pieces)
        addUp(all, sourceOf(season, plan, piece));
    return all;
}

std::vector<StemSource> sourcesOf(const model::Season& season, const plan::BookingPlan& plan,
                                  const plan::BookingCover& cover) {
    std::vector<StemSource> all;
    for (const auto& slot : cover.slots)
        for (auto& source : sourcesOf(season, plan, slot))
            addUp(all, std::move(source));
    std::stable_sort(all.begin(), all.end(), [](const StemSource& a, const StemSource& b) {
        return std::tuple(a.day, a.origin, a.mark.toInt(), a.plant) <
               std::tuple(b.day, b.origin, b.mark.toInt(), b.plant);
    });
    return all;
}

QString sourceWords(const std::vector<StemSource>& days) {
    if (days.empty()) return {};
    return days.size() == 1 ? StemSourcesSay::whole(days.front()) : StemSourcesSay::byDay(days);
}

std::int64_t boughtIn(const std::vector<StemSource>& sources) {
    std::int64_t sum = 0;
    for (const auto& s : sources)
        if (s.origin == StemOrigin::boughtIn) sum += s.stems;
    return sum;
}

const plan::BookingCover* coverOf(const plan::Plan& plan, Id<model::Booking> booking) {
    if (!plan.cover) return nullptr;
    const auto found = plan.cover->bookings.find(booking);
    return found == plan.cover->bookings.end() ? nullptr : &found->second;
}

QString inPassing(const model::Season& season, Id<model::Plant> plant) {
    QString name = nameIn(season.plants, plant).section(QLatin1Char(','), 0, 0).trimmed();
    if (!name.isEmpty()) name[0] = name[0].toLower();
    return name;
}

} // namespace withy::ui
