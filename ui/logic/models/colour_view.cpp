// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/colour_view.h"

#include "ui/logic/edits/design_edits.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_colours.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace withy::ui {

namespace {

struct ColourViewSay {
    Q_DECLARE_TR_FUNCTIONS(ColourBalance)
};

using plan::ColoursShown;
using plan::ShownPart;

QString percent(double share) {
    return share > 0 && share < 0.5 ? ColourViewSay::tr("under 1 %")
                                    : ColourViewSay::tr("%1 %").arg(std::lround(share));
}

QString nameOfWish(const model::BookingColour& c) {
    return c.name.empty() ? colourName(c.colour) : text(c.name);
}

/// Own colours of a piece without wishes: each plant's first, the most seen first.
std::vector<std::pair<Colour, QString>> ownColours(const std::vector<ShownPart>& parts) {
    std::map<Colour, std::pair<double, QString>> seen;
    for (const auto& part : parts) {
        const auto area = designs::shownArea(part.thing);
        if (!area || part.thing.colours.empty()) continue;
        auto& kept = seen[part.thing.colours.front()];
        kept.first += *area * static_cast<double>(part.thing.count);
        if (kept.second.isEmpty()) kept.second = text(part.thing.subject);
    }
    std::vector<std::pair<double, std::pair<Colour, QString>>> order;
    for (const auto& [colour, what] : seen)
        order.push_back({-what.first, {colour, what.second}});
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::pair<Colour, QString>> out;
    for (const auto& [area, own] : order)
        out.push_back(own);
    return out;
}

/// So many more stems of one slot in each piece of its design.
struct Mend {
    const ShownPart* part = nullptr;
    std::int64_t perPiece = 0;
    std::int64_t stems = 0; ///< over all its pieces
};

constexpr std::int64_t mostPerPiece = 6; ///< more is another design, not a mend (own choice)

std::int64_t piecesWith(const model::Season& season, const ShownPart& part,
                        std::optional<Id<model::Booking>> booking) {
    std::int64_t pieces = 0;
    for (const auto& line : season.lines) {
        if (booking && part.design && line.booking == *booking && line.design == *part.design)
            pieces += line.pieces.value;
    }
    return std::max<std::int64_t>(pieces, 1);
}

/// Builds a view from what is shown.
struct ColourWriter {
    const model::Season& season;
    std::optional<Id<model::Booking>> booking;
    bool onePiece = false;
    ColourView view;

    void write(const ColoursShown& shown) {
        const auto wishes =
            booking ? coloursOf(season, *booking) : std::vector<const model::BookingColour*>{};
        view.wished = !wishes.empty();
        view.units = season.theSettings().units;
        view.other = shown.balance.otherShare;
        for (std::size_t i = 0; i < wishes.size() && i < shown.balance.wishes.size(); ++i)
            addWish(*wishes[i], shown.balance.wishes[i], shown);
        if (shown.balance.notKnown > 0)
            view.sentences << ColourViewSay::tr("%n plant(s) left out: no colour or size is known for them.",
                                                nullptr, static_cast<int>(shown.balance.notKnown));
        say();
    }

    void writeOwn(std::vector<ShownPart> parts) {
        const auto own = ownColours(parts);
        view.units = season.theSettings().units;
        std::vector<designs::ColourWish> asked;
        for (const auto& [colour, name] : own)
            asked.push_back({colour, std::nullopt});
        const auto shown = plan::coloursShown(std::move(parts), asked);
        if (!shown) return;
        for (std::size_t i = 0; i < own.size(); ++i) {
            const auto& w = shown->balance.wishes[i];
            ColourBand band{own[i].first, own[i].second, std::nullopt, w.share, false, {}, w.working};
            band.means = ColourViewSay::tr("%1: %2 shown").arg(band.name, percent(band.shown));
            if (w.share > 0) view.bands.push_back(band);
        }
        say();
    }

private:
    void addWish(const model::BookingColour& c, const designs::WishShown& w, const ColoursShown& shown) {
        ColourBand band{c.colour, nameOfWish(c), w.wished, w.share, false, {}, w.working};
        band.asks = w.share < w.wished - shortByPoints;
        band.means = ColourViewSay::tr("%1: %2 shown of a wished %3")
                         .arg(band.name, percent(band.shown), percent(w.wished));
        view.bands.push_back(band);
        if (band.asks) sayShort(band, w, shown);
    }

    void sayShort(const ColourBand& band, const designs::WishShown& w, const ColoursShown& shown) {
        const QString is =
            ColourViewSay::tr("%1 %2 of a wished %3").arg(band.name, percent(w.share), percent(w.wished));
        if (!w.mend) {
            view.sentences << ColourViewSay::tr("%1: no plant here has this colour.").arg(is);
            return;
        }
        const auto mend = findMend(static_cast<std::size_t>(view.bands.size() - 1), w.wished, shown);
        if (!mend.part) {
            view.sentences
                << ColourViewSay::tr("%1: too little here has it. Add a plant of this colour.").arg(is);
            return;
        }
        const QString what = text(mend.part->thing.subject);
        const QString add =
            onePiece ? ColourViewSay::tr("%1 more %2").arg(whole(mend.perPiece), what)
                     : ColourViewSay::tr("%1 more %2, %3 in each %4")
                           .arg(whole(mend.stems), what, whole(mend.perPiece), designOf(*mend.part));
        view.sentences << (w.mend->smallHeads
                               ? ColourViewSay::tr("%1: small heads; clump them, or add %2.").arg(is, add)
                               : ColourViewSay::tr("%1: add %2.").arg(is, add));
        if (!view.mend && !view.real) offer(mend);
    }

    [[nodiscard]] QString designOf(const ShownPart& part) const {
        const auto* design = part.design ? season.designs.find(*part.design) : nullptr;
        return design ? text(design->name) : QString();
    }

    /// The slot that needs the fewest more stems in a piece to bring a wish to its share.
    [[nodiscard]] Mend findMend(std::size_t wish, double wished, const ColoursShown& shown) const {
        const auto wishes = plan::wishesOf(season, *booking);
        Mend best;
        for (const auto& part : shown.parts) {
            if (!part.slot) continue;
            const auto pieces = onePiece ? 1 : piecesWith(season, part, booking);
            const auto most = best.part ? best.perPiece : mostPerPiece;
            const auto enough = [&](std::int64_t more) {
                auto tried = shown.parts;
                tried[static_cast<std::size_t>(&part - shown.parts.data())].thing.count += more * pieces;
                const auto then = plan::coloursShown(std::move(tried), wishes);
                return then && then->balance.wishes[wish].share >= wished - 1e-9;
            };
            if (!enough(most)) continue;
            for (std::int64_t more = 1; more <= most; ++more) {
                if (!enough(more)) continue;
                const bool fewer = !best.part || more < best.perPiece || more * pieces < best.stems;
                if (fewer) best = {&part, more, more * pieces};
                break;
            }
        }
        return best;
    }

    void offer(const Mend& mend) {
        const auto* slot = season.slots.find(*mend.part->slot);
        if (!slot) return;
        view.mend = ColourMendOffer{
            ColourViewSay::tr("%1 more %2 in each %3")
                .arg(whole(mend.perPiece), text(mend.part->thing.subject), designOf(*mend.part)),
            edits::setSlotCount(season, slot->id, slot->count.value + mend.perPiece)};
    }

    void say() {
        QStringList words;
        for (const auto& band : view.bands)
            words << band.means;
        if (view.other >= 0.5) words << ColourViewSay::tr("in other colours: %1").arg(percent(view.other));
        view.means = words.join(QStringLiteral("; "));
    }
};

QString titleOf(const model::Season& season, Id<model::Booking> booking) {
    const auto* b = season.bookings.find(booking);
    return b ? text(b->title) : QString();
}

bool overWith(model::Standing standing) {
    return standing == model::Standing::settled || standing == model::Standing::lost ||
           standing == model::Standing::delivered;
}

} // namespace

std::optional<Id<model::Booking>> nextBookingOf(const model::Season& season, Id<model::Design> design,
                                                std::optional<Day> today) {
    const model::Booking* next = nullptr;
    for (const auto& line : season.lines) {
        const auto* b = line.design == design ? season.bookings.find(line.booking) : nullptr;
        if (!b || overWith(b->standing) || (today && b->eventEnd.day < *today)) continue;
        if (!next || b->eventStart < next->eventStart) next = b;
    }
    return next ? std::optional(next->id) : std::nullopt;
}

ColourView bookingColours(const model::Season& season, Id<model::Booking> booking,
                          const shareout::ShareOut* real) {
    ColourWriter w{season, booking, false, {}};
    w.view.real = real != nullptr;
    auto parts = real ? plan::shownBy(season, *real) : plan::shownIn(season, booking);
    if (parts.empty()) return {};
    const auto wishes = plan::wishesOf(season, booking);
    w.view.title =
        real ? ColourViewSay::tr("Colours, by what was cut") : ColourViewSay::tr("Colours, as designed");
    if (wishes.empty()) {
        w.writeOwn(std::move(parts));
        w.view.sentences << ColourViewSay::tr("No colours are wished for yet; the brief takes them.");
        return std::move(w.view);
    }
    const auto shown = plan::coloursShown(std::move(parts), wishes);
    if (!shown) {
        w.view.sentences << ColourViewSay::tr(
            "The wished shares come to more than a hundred. Mend them in the brief.");
        return std::move(w.view);
    }
    w.write(*shown);
    return std::move(w.view);
}

ColourView tableColours(const model::Season& season, Id<model::VenueTable> table,
                        Id<model::Booking> booking) {
    ColourWriter w{season, booking, true, {}};
    w.view.title = ColourViewSay::tr("Colours on one table");
    auto parts = plan::shownOn(season, table, booking);
    const auto wishes = plan::wishesOf(season, booking);
    if (wishes.empty()) {
        w.writeOwn(std::move(parts));
    } else if (const auto shown = plan::coloursShown(std::move(parts), wishes)) {
        w.write(*shown);
    }
    w.view.mend.reset(); // by one table alone a design is not to be changed
    return std::move(w.view);
}

ColourView designColours(const model::Season& season, Id<model::Design> design, std::optional<Day> today) {
    auto parts = plan::shownBy(season, design, 1);
    if (parts.empty()) return {};
    const auto booking = nextBookingOf(season, design, today);
    if (booking && !plan::wishesOf(season, *booking).empty()) {
        ColourWriter w{season, booking, true, {}};
        const auto shown = plan::coloursShown(parts, plan::wishesOf(season, *booking));
        if (shown) {
            w.view.title =
                ColourViewSay::tr("Colours, against what %1 wishes").arg(titleOf(season, *booking));
            w.write(*shown);
            return std::move(w.view);
        }
    }
    ColourWriter w{season, std::nullopt, true, {}};
    w.view.title = ColourViewSay::tr("Colours shown");
    w.writeOwn(std::move(parts));
    return std::move(w.view);
}

} // namespace withy::ui
