// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_layout.h"

#include "ui/paint/seeded.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

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

/// Sprays are trimmed to the piece they stand in.
double headIn(const PieceDrawing& piece, const SlotDrawing& slot) {
    if (slot.form == HeadForm::leaf || slot.form == HeadForm::grass || slot.form == HeadForm::trail)
        return std::min(slot.head * 0.66, std::max(12.0, piece.spread * 0.3));
    return std::min(slot.head, std::max(10.0, piece.spread * (growsUp(slot.form) ? 0.4 : 0.85)));
}

struct Tiered {
    const PieceDrawing& piece;
    Seeded& seeded;

    /// `down` from 0 at the tier's own height to 1 at the tier below.
    PlacedStem place(const SlotDrawing& slot, const TierBand& band, double u, double down, int turn) {
        PlacedStem s;
        s.slot = &slot;
        s.head = headIn(piece, slot) * (1 + seeded.around(0.07));
        s.seed = static_cast<std::uint64_t>(turn) + piece.seed * 1000;
        const double reach = growsUp(slot.form) ? headReach(slot.form) * s.head : 0;
        const double lean = slot.form == HeadForm::leaf ? 62 : growsUp(slot.form) ? 24 : 26;
        s.tilt = u * lean + seeded.around(3);
        const double slant = std::abs(std::sin(s.tilt * 3.14159265 / 180));
        const double half = piece.spread / 2 - (reach > 0 ? reach * slant + s.head * 0.3 : s.head / 2);
        s.x = u * band.width * std::max(half, piece.spread * 0.08) + seeded.around(piece.spread * 0.015);
        // A dome: the edges stand lower than the middle.
        const double edge = std::min(band.under, band.height) * 0.55;
        double top = edge + (band.height - edge) * std::sqrt(1 - 0.72 * u * u);
        top -= (top - edge) * down;
        s.height = std::max(top - reach * 0.45 * (1 - 0.6 * slant), std::min(top, 14.0));
        return s;
    }
};

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
    // Within a tier: leaves and froth behind, faces in front, the higher behind the lower.
    std::stable_sort(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                     [](const auto& a, const auto& b) {
                         const int ra = rank(*a.slot), rb = rank(*b.slot);
                         return ra != rb ? ra > rb : a.height > b.height;
                     });
}

} // namespace

std::vector<PlacedStem> placeStems(const PieceDrawing& piece) {
    Seeded seeded(piece.seed);
    Tiered at{piece, seeded};
    std::vector<PlacedStem> out;
    int turn = 0;
    for (const Tier tier : tiers)
        placeTier(at, tier, out, turn);
    // Leaves stand behind every face, whatever their tier.
    std::stable_partition(out.begin(), out.end(), [](const auto& s) { return rank(*s.slot) == 4; });
    return out;
}

} // namespace withy::ui
