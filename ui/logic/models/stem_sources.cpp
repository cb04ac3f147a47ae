// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/stem_sources.h"

#include "ui/logic/garden_words.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <map>
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

    static QString at(const StemSource& s) {
        const QString day = shortDay(s.day);
        return s.hour.isEmpty() ? day : tr("%1 %2").arg(day, s.hour);
    }

    /// "Mon 6 to Fri 10 Sep"; the month stands twice where it changes.
    static QString span(Day from, Day to) {
        const QString first = shortDay(from);
        const bool oneMonth = from.month() == to.month() && from.year() == to.year();
        return tr("%1 to %2").arg(oneMonth ? first.section(QLatin1Char(' '), 0, 1) : first, shortDay(to));
    }

    static QString counted(std::int64_t stems, const QString& plant) {
        return tr("%1 %2").arg(withy::ui::whole(stems), plant);
    }

    static QString placed(const QString& place, std::int64_t stems, const QString& when) {
        return tr("%1, %2, %3").arg(place, withy::ui::whole(stems), when);
    }

    static QString onRound(const StemSource& s) {
        return tr("%1 on %2").arg(withy::ui::whole(s.stems), at(s));
    }
};

StemSource sourceOf(const model::Season& season, const CutTimes& times, const cover::Piece& piece) {
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
        if (const auto when = times.of(id, piece.plant, piece.cut)) {
            s.day = when->from.day;
            s.hour = planClock(when->from);
            s.round = when->round;
        }
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
        return s.plant == one.plant && s.origin == one.origin && s.from == one.from && s.day == one.day &&
               s.hour == one.hour;
    });
    if (same == all.end())
        all.push_back(std::move(one));
    else
        same->stems += one.stems;
}

const plan::SlotLevel& likely(const plan::SlotCover& slot) {
    return slot.at[static_cast<std::size_t>(plan::Level::likely)];
}

/// What a slot is short of is asked of its first plant.
std::optional<Id<model::Plant>> leadingShort(const plan::SlotCover& slot) {
    if (likely(slot).shortBy.value == 0 || slot.choices.empty()) return std::nullopt;
    return slot.choices.front().plant;
}

} // namespace

std::vector<StemSource> sourcesOf(const model::Season& season, const CutTimes& times,
                                  const plan::SlotCover& slot) {
    std::vector<StemSource> all;
    for (const auto& piece : likely(slot).pieces)
        addUp(all, sourceOf(season, times, piece));
    return all;
}

std::vector<StemSource> sourcesOf(const model::Season& season, const CutTimes& times,
                                  const plan::BookingCover& cover) {
    std::vector<StemSource> all;
    for (const auto& slot : cover.slots)
        for (auto& source : sourcesOf(season, times, slot))
            addUp(all, std::move(source));
    std::stable_sort(all.begin(), all.end(), [](const StemSource& a, const StemSource& b) {
        return std::tuple(a.day, a.hour, a.origin, a.mark.toInt(), a.plant) <
               std::tuple(b.day, b.hour, b.origin, b.mark.toInt(), b.plant);
    });
    return all;
}

QString sourceWords(const std::vector<StemSource>& days) {
    if (days.empty()) return {};
    const auto& first = days.front();
    if (days.size() == 1) return StemSourcesSay::placed(first.place, first.stems, StemSourcesSay::at(first));
    std::int64_t stems = 0;
    Day from = first.day, to = first.day;
    for (const auto& s : days) {
        stems += s.stems;
        from = std::min(from, s.day);
        to = std::max(to, s.day);
    }
    return StemSourcesSay::placed(first.place, stems,
                                  from == to ? shortDay(from) : StemSourcesSay::span(from, to));
}

QString roundByRound(const std::vector<StemSource>& days) {
    if (days.size() < 2) return {};
    auto sorted = days;
    std::stable_sort(sorted.begin(), sorted.end(), [](const StemSource& a, const StemSource& b) {
        return std::tie(a.day, a.hour) < std::tie(b.day, b.hour);
    });
    QStringList parts;
    for (const auto& s : sorted)
        parts << StemSourcesSay::onRound(s);
    return parts.join(QStringLiteral(", "));
}

bool isCut(const plan::BookingCover* cover, Id<model::Plant> plant) {
    if (!cover || cover->slots.empty()) return true;
    bool stored = false;
    for (const auto& slot : cover->slots) {
        if (leadingShort(slot) == plant) return true;
        for (const auto& piece : likely(slot).pieces) {
            if (piece.plant != plant) continue;
            if (piece.source == cover::Source::patch) return true;
            stored = true;
        }
    }
    return !stored;
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

QString pluralOf(const QString& plant) {
    // How garden plants are called is an open list: what is not here stays as it is written.
    static constexpr std::array endings{"anemone",       "aster",      "bell",       "camassia",  "carnation",
                                        "chrysanthemum", "daffodil",   "dahlia",     "daisy",     "flower",
                                        "fritillary",    "freesia",    "gaillardia", "hellebore", "hyacinth",
                                        "hydrangea",     "lily",       "lupin",      "marigold",  "nerine",
                                        "pea",           "peony",      "pink",       "poppy",     "rose",
                                        "rudbeckia",     "snapdragon", "thistle",    "tulip",     "zinnia"};
    const bool counted = std::any_of(endings.begin(), endings.end(),
                                     [&](const char* end) { return plant.endsWith(QLatin1String(end)); });
    if (!counted) return plant;
    return plant.endsWith(QLatin1Char('y')) ? plant.chopped(1) + QStringLiteral("ies")
                                            : plant + QLatin1Char('s');
}

QString countedPlant(const model::Season& season, Id<model::Plant> plant, std::int64_t stems) {
    const QString name = inPassing(season, plant);
    return StemSourcesSay::counted(stems, stems == 1 ? name : pluralOf(name));
}

SwappedIn swappedIn(const model::Season& season, const CutTimes& times, const plan::SlotCover& slot) {
    const std::optional<Id<model::Plant>> leading =
        slot.choices.empty() ? std::nullopt : std::optional(slot.choices.front().plant);
    std::map<Id<model::Plant>, std::int64_t> by;
    for (const auto& s : sourcesOf(season, times, slot))
        if (leading && s.plant != *leading) by[s.plant] += s.stems;
    SwappedIn in;
    std::int64_t most = 0;
    for (const auto& [plant, stems] : by) {
        in.stems += stems;
        if (stems <= most) continue;
        most = stems;
        in.most = plant;
    }
    in.alone = by.size() <= 1;
    return in;
}

} // namespace withy::ui
