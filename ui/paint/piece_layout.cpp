// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_layout.h"

#include "ui/paint/seeded.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace withy::ui {

namespace {

using model::Purpose;
using model::Tier;

constexpr std::array tiers{Tier::tall, Tier::middle, Tier::low};

bool growsUp(HeadForm form) {
    return headReach(form) > 1;
}

/// 0 stands in the middle of its tier, 4 at the edge.
int rank(const SlotDrawing& slot) {
    if (slot.form == HeadForm::leaf || slot.form == HeadForm::trail) return 4;
    switch (slot.purpose) {
    case Purpose::focal:
        return 0;
    case Purpose::spike:
        return 1;
    case Purpose::filler:
        return 2;
    case Purpose::airy:
        return 3;
    case Purpose::foliage:
    case Purpose::trailing:
        return 4;
    }
    return 2;
}

struct TierBand {
    double height; ///< of its heads
    double under;  ///< of the tier below: crowded tiers fill down to it
    double width;  ///< share of the half spread its outermost heads reach
};

TierBand bandOf(const PieceDrawing& piece, Tier tier) {
    switch (tier) {
    case Tier::low:
        return {piece.low, piece.low * 0.3, 1};
    case Tier::middle:
        return {piece.middle, piece.low, 0.94};
    case Tier::tall:
        return {piece.tall, piece.middle, 0.74};
    }
    return {piece.middle, piece.low, 1};
}

/// Evenly from -1 to 1; a few stems keep nearer the middle.
std::vector<double> evenPlaces(std::size_t n, double alone) {
    if (n == 1) return {alone};
    const double width = n == 2 ? 0.72 : n == 3 ? 0.9 : 1;
    std::vector<double> places(n);
    for (std::size_t i = 0; i < n; ++i)
        places[i] = width * (-1 + 2.0 * static_cast<double>(i) / static_cast<double>(n - 1));
    return places;
}

/// Takes the free place nearest to `near`.
double takeNearest(std::vector<double>& places, double near) {
    const auto at = std::min_element(places.begin(), places.end(), [near](double a, double b) {
        return std::abs(a - near) < std::abs(b - near);
    });
    const double place = *at;
    places.erase(at);
    return place;
}

/// The free place that lies as far from the middle as `rank` wants, sides in turn.
double takeByRank(std::vector<double>& places, double want, bool left) {
    return takeNearest(places, left ? -want : want);
}

/// Sprays are trimmed to the piece they stand in; flowers keep their true size.
double headIn(const PieceDrawing& piece, const SlotDrawing& slot) {
    if (slot.form == HeadForm::leaf || slot.form == HeadForm::grass || slot.form == HeadForm::trail)
        return std::min(slot.head * 0.66, std::max(12.0, piece.spread * 0.3));
    return slot.head;
}

/// From the head's origin up to what its tier is measured to.
double rise(const PlacedStem& s) {
    if (!growsFromFoot(s.slot->form)) return 0;
    return headReach(s.slot->form) * s.head * std::cos(s.tilt * std::numbers::pi / 180);
}

struct Tiered {
    const PieceDrawing& piece;
    Seeded& seeded;

    /// `down` from 0 at the tier's own height to 1 at the tier below.
    PlacedStem place(const SlotDrawing& slot, const TierBand& band, double u, double down, int turn) {
        PlacedStem s;
        s.slot = &slot;
        s.head = headIn(piece, slot);
        s.seed = static_cast<std::uint64_t>(turn) + piece.seed * 1000;
        const double lean = slot.form == HeadForm::leaf ? 62 : growsUp(slot.form) ? 24 : 26;
        s.tilt = u * lean + seeded.around(3);
        // The whole head keeps within the spread, so a leaning spray stands further in.
        const double room = piece.spread / 2 - s.reach(u < 0 ? -1 : 1);
        s.x = u * band.width * std::max(room, piece.spread * 0.05) + seeded.around(piece.spread * 0.015);
        // A dome: the edges stand lower than the middle.
        const double edge = std::min(band.under, band.height) * 0.55;
        double top = edge + (band.height - edge) * std::sqrt(1 - 0.72 * u * u);
        top -= (top - edge) * down;
        s.height = top - rise(s);
        return s;
    }
};

/// Raises or lowers the whole tier until its highest head stands at the tier's height.
void fitToHeight(std::vector<PlacedStem>& stems, std::size_t first, double height) {
    if (first == stems.size()) return;
    double highest = -mostDrawn;
    for (std::size_t i = first; i < stems.size(); ++i)
        highest = std::max(highest, stems[i].top());
    constexpr double footOverRim = 5; // a spray longer than its tier is high stands on the rim
    for (std::size_t i = first; i < stems.size(); ++i) {
        auto& s = stems[i];
        s.height += height - highest;
        if (growsFromFoot(s.slot->form)) s.height = std::max(s.height, footOverRim);
    }
}

/// Draws each side in or out until its outermost head touches the spread.
void fitToSpread(const PieceDrawing& piece, std::vector<PlacedStem>& stems) {
    if (stems.size() < 2) return;
    const double half = piece.spread / 2;
    for (const int side : {1, -1}) {
        double most = std::numeric_limits<double>::infinity();
        for (const auto& s : stems) {
            const double out = s.x * side, head = s.reach(side) - out;
            if (out > piece.spread * 0.03 && head < half) most = std::min(most, (half - head) / out);
        }
        if (!std::isfinite(most)) continue;
        for (auto& s : stems)
            s.x *= s.x * side > 0 ? most : 1;
    }
}

void placeTier(Tiered& at, Tier tier, std::vector<PlacedStem>& out, int& turn) {
    std::vector<const SlotDrawing*> slots;
    std::size_t stems = 0;
    for (const auto& slot : at.piece.slots) {
        if (slot.tier != tier) continue;
        slots.push_back(&slot);
        stems += static_cast<std::size_t>(slot.count);
    }
    if (stems == 0) return;
    // A stem alone in its tier stands to one side, so that three in a bottle do not hide one another.
    const double alone = (at.piece.seed % 2 ? 1 : -1) * (tier == Tier::tall     ? 0.1
                                                         : tier == Tier::middle ? -0.45
                                                                                : 0.5);
    auto places = evenPlaces(stems, alone);
    const auto band = bandOf(at.piece, tier);
    double across = 0;
    for (const auto* slot : slots)
        across += slot->count * headIn(at.piece, *slot) * (growsUp(slot->form) ? 0.6 : 1);
    // Heads side by side fill the spread so many times over: they stand in as many rows.
    const double rows = std::clamp(across / (at.piece.spread * band.width), 1.0, 4.0) - 1;
    // The edge goes first, so that what belongs in the middle finds the middle left.
    std::stable_sort(slots.begin(), slots.end(),
                     [](const auto* a, const auto* b) { return rank(*a) > rank(*b); });
    const auto first = out.size();
    for (const auto* slot : slots) {
        const double want = rank(*slot) / 4.0;
        double last = at.seeded.around(0.5);
        for (int i = 0; i < slot->count; ++i) {
            const bool edge = rank(*slot) == 4 && !slot->clump;
            last = slot->clump ? takeNearest(places, last)
                   : edge      ? takeByRank(places, want, i % 2 == 0)
                               : takeNearest(places, (i + 0.5) / slot->count * 2 - 1);
            const double down = std::min(0.9, rows * 0.34 * ((turn % 3) + at.seeded.next() * 0.6));
            out.push_back(at.place(*slot, band, last, stems > 1 ? down : 0, ++turn));
        }
    }
    fitToHeight(out, first, band.height);
    // Within a tier: leaves and froth behind, faces in front, the higher behind the lower.
    std::stable_sort(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                     [](const auto& a, const auto& b) {
                         const int ra = rank(*a.slot), rb = rank(*b.slot);
                         return ra != rb ? ra > rb : a.height > b.height;
                     });
}

/// Along the ring's ellipse at `angle`, in degrees from upright, clockwise.
double alongRing(double angle, double rx, double ry) {
    return std::atan2(-std::sin(angle) * rx, -std::cos(angle) * ry) * 180 / std::numbers::pi;
}

/// The ring as wide as lets its widest head touch the spread.
double ringHalf(const PieceDrawing& piece, const std::vector<PlacedStem>& heads,
                const std::vector<double>& angles) {
    double rx = piece.spread / 2;
    for (std::size_t i = 0; i < heads.size(); ++i) {
        const double out = std::cos(angles[i]);
        const int side = out < 0 ? -1 : 1;
        if (std::abs(out) > 0.05)
            rx = std::min(rx, (piece.spread / 2 - heads[i].reach(side)) / std::abs(out));
    }
    return std::max(rx, piece.spread * 0.15);
}

} // namespace

double PlacedStem::top() const {
    return height + rise(*this);
}

double PlacedStem::reach(int side) const {
    const QRectF outline = headOutline(slot->form, head, tilt);
    return x * side + (side > 0 ? outline.right() : -outline.left());
}

std::vector<const SlotDrawing*> dealt(const PieceDrawing& piece) {
    std::vector<std::pair<double, const SlotDrawing*>> order;
    for (const auto& slot : piece.slots) {
        for (int i = 0; i < slot.count; ++i)
            order.emplace_back((i + 0.5) / slot.count, &slot);
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<const SlotDrawing*> out;
    for (const auto& [place, slot] : order)
        out.push_back(slot);
    return out;
}

bool leafy(const SlotDrawing& slot) {
    return slot.form == HeadForm::leaf || slot.form == HeadForm::trail;
}

Ring placeRing(const PieceDrawing& piece) {
    const bool crown = piece.kind == model::PieceKind::crown;
    const double flat = crown ? 0.4 : 1;
    const auto stems = dealt(piece);
    const auto n = static_cast<double>(stems.size());
    Ring ring;
    Seeded seeded(piece.seed);
    std::vector<double> angles;
    for (std::size_t i = 0; i < stems.size(); ++i) {
        const double angle = 2 * std::numbers::pi * (static_cast<double>(i) + 0.5) / n;
        PlacedStem s;
        s.slot = stems[i];
        // Sprays are trimmed to lie along the ring.
        s.head = leafy(*stems[i]) ? std::min(stems[i]->head * 0.5, piece.spread * 0.13) : stems[i]->head;
        s.tilt = leafy(*stems[i]) ? alongRing(angle, 1, flat) + (i % 2 ? -24 : 204)
                                  : std::cos(angle) * (crown ? 50 : 20) + seeded.around(8);
        s.seed = i + 1;
        ring.heads.push_back(s);
        angles.push_back(angle);
    }
    ring.rx = ringHalf(piece, ring.heads, angles);
    ring.ry = ring.rx * flat;
    for (std::size_t i = 0; i < stems.size(); ++i) {
        ring.heads[i].x = std::cos(angles[i]) * ring.rx;
        ring.heads[i].height = -std::sin(angles[i]) * ring.ry;
    }
    // Leaves behind every face, the far side of a crown behind the near one.
    std::stable_sort(ring.heads.begin(), ring.heads.end(), [](const auto& a, const auto& b) {
        return leafy(*a.slot) != leafy(*b.slot) ? leafy(*a.slot) : a.height > b.height;
    });
    return ring;
}

std::vector<PlacedStem> placeStems(const PieceDrawing& piece) {
    Seeded seeded(piece.seed);
    Tiered at{piece, seeded};
    std::vector<PlacedStem> out;
    int turn = 0;
    for (const Tier tier : tiers)
        placeTier(at, tier, out, turn);
    fitToSpread(piece, out);
    for (auto& s : out)
        s.height += s.slot->grown;
    // Leaves stand behind every face, whatever their tier.
    std::stable_partition(out.begin(), out.end(), [](const auto& s) { return rank(*s.slot) == 4; });
    return out;
}

} // namespace withy::ui
