// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/random_covers.h"

#include <algorithm>
#include <random>

namespace withy::cover::tests {

namespace {

const Day start = *Day::fromYmd(2027, 6, 1);

class Dice {
public:
    explicit Dice(std::uint32_t seed) : random_(seed) {}

    /// From..to, both possible.
    int roll(int from, int to) {
        return from + static_cast<int>(random_() % static_cast<std::uint32_t>(to - from + 1));
    }

    template <class Rows>
    void shuffle(Rows& rows) {
        for (std::size_t i = rows.size(); i > 1; --i)
            std::swap(rows[i - 1], rows[random_() % i]);
    }

private:
    std::mt19937 random_;
};

Id<model::Plant> plant(int n) {
    return Id<model::Plant>(n);
}

PatchSupply patch(Dice& dice, int id, int plants) {
    PatchSupply p;
    p.patch = Id<model::Patch>(id);
    p.plant = plant(dice.roll(1, plants));
    p.first = start + dice.roll(0, 6);
    p.holdDays = dice.roll(0, 4);
    for (int day = dice.roll(2, 9); day > 0; --day)
        p.ready.push_back(dice.roll(0, 3) == 0 ? 0 : dice.roll(0, 20));
    return p;
}

LotSupply lot(Dice& dice, int id, int plants) {
    LotSupply l;
    l.lot = Id<model::StockLot>(id);
    l.plant = plant(dice.roll(1, plants));
    l.stems = Stems(dice.roll(0, 25));
    l.readyFrom = start + dice.roll(0, 10);
    if (dice.roll(0, 1)) l.useBy = l.readyFrom + dice.roll(0, 6);
    l.homeGrown = dice.roll(0, 1) == 1;
    return l;
}

Offer offer(Dice& dice, int id, int plants) {
    Offer o;
    o.id = id;
    o.plant = plant(dice.roll(1, plants));
    o.bunch = Stems(dice.roll(1, 10));
    o.bunches = dice.roll(0, 3);
    o.pricePerStem = Money{dice.roll(0, 80)};
    o.readyFrom = start + dice.roll(0, 8);
    if (dice.roll(0, 1)) o.useBy = o.readyFrom + dice.roll(0, 8);
    o.orderBy = o.readyFrom - 7;
    return o;
}

void addChoices(Dice& dice, Demand& d, int plants) {
    std::vector<int> order;
    for (int i = 1; i <= plants; ++i)
        order.push_back(i);
    dice.shuffle(order);
    const int choices = dice.roll(1, std::min(3, plants));
    const bool shared = dice.roll(0, 2) == 0;
    for (int c = 0; c < choices; ++c) {
        Choice choice;
        choice.plant = plant(order[static_cast<std::size_t>(c)]);
        choice.to = d.bench - dice.roll(0, 2);
        choice.from = choice.to - dice.roll(0, 5);
        if (dice.roll(0, 2) == 0) choice.best = choice.to - dice.roll(0, choice.to - choice.from);
        choice.storeOnly = dice.roll(0, 11) == 0;
        if (shared && c < 2) choice.wanted = Stems(d.stems.value / 2);
        d.choices.push_back(choice);
    }
}

} // namespace

CoverProblem randomCover(std::uint32_t seed) {
    Dice dice(seed);
    const int plants = dice.roll(2, 5);
    CoverProblem p;
    for (int i = dice.roll(1, 5); i > 0; --i)
        p.patches.push_back(patch(dice, i, plants));
    for (int i = dice.roll(0, 2); i > 0; --i)
        p.lots.push_back(lot(dice, i, plants));
    for (int i = dice.roll(0, 2); i > 0; --i)
        p.offers.push_back(offer(dice, i, plants));
    for (int i = dice.roll(1, 6); i > 0; --i) {
        Demand d;
        d.booking = Id<model::Booking>((i + 1) / 2); // two slots a booking
        d.line = Id<model::Line>(i);
        d.slot = Id<model::Slot>(dice.roll(1, 9));
        d.stems = Stems(dice.roll(0, 40));
        d.claim = static_cast<Claim>((i + 1) / 2 % 4);
        d.event = start + 5 + (i + 1) / 2 * 2 % 5;
        d.bench = d.event - 1;
        addChoices(dice, d, plants);
        p.demands.push_back(std::move(d));
    }
    return p;
}

CoverProblem largeCover(int bookings, std::uint32_t seed) {
    Dice dice(seed);
    constexpr int plants = 40;
    CoverProblem p;
    for (int i = 1; i <= 50; ++i) {
        PatchSupply patch;
        patch.patch = Id<model::Patch>(i);
        patch.plant = plant((i - 1) % plants + 1);
        patch.first = start + dice.roll(0, 120);
        patch.holdDays = dice.roll(1, 5);
        for (int day = dice.roll(30, 60); day > 0; --day)
            patch.ready.push_back(dice.roll(0, bookings / 8 + 4));
        p.patches.push_back(std::move(patch));
    }
    for (int b = 1; b <= bookings; ++b) {
        const Day event = start + dice.roll(2, 178);
        for (int s = 1; s <= 8; ++s) {
            Demand d;
            d.booking = Id<model::Booking>(b);
            d.line = Id<model::Line>(b);
            d.slot = Id<model::Slot>(s);
            d.stems = Stems(dice.roll(5, 60));
            d.claim = static_cast<Claim>(b % 4);
            d.event = event;
            d.bench = event - 1;
            addChoices(dice, d, plants);
            p.demands.push_back(std::move(d));
        }
    }
    return p;
}

CoverProblem shuffled(CoverProblem problem, std::uint32_t seed) {
    Dice dice(seed);
    dice.shuffle(problem.patches);
    dice.shuffle(problem.lots);
    dice.shuffle(problem.offers);
    dice.shuffle(problem.demands);
    return problem;
}

} // namespace withy::cover::tests
