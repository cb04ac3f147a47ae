// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/tally_offers.h"

#include "core/plan/plant_facts.h"
#include "ui/logic/models/sheet.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

struct TallyOffersSay {
    Q_DECLARE_TR_FUNCTIONS(Tally)
};

/// The slot names the plant, or a plant for which it may stand in.
bool mayFill(const model::Season& season, Id<model::Booking> booking, Id<model::Slot> slot,
             Id<model::Plant> plant) {
    std::set<std::int64_t> named;
    for (const auto& p : season.slotPlants)
        if (p.slot == slot) named.insert(p.plant.value);
    if (named.contains(plant.value)) return true;
    return std::any_of(season.agreedSwaps.begin(), season.agreedSwaps.end(), [&](const auto& swap) {
        return swap.booking == booking && swap.standIn == plant && named.contains(swap.plant.value);
    });
}

bool tooShort(const plan::Plan& plan, const model::Slot& slot, const model::Plant& plant) {
    const auto design = plan.designs.find(slot.design);
    if (design == plan.designs.end() || !plant.stemLengthMax) return false;
    for (const auto& s : design->second->slots)
        if (s.slot == slot.id) return s.cutLength && s.cutLength->length > *plant.stemLengthMax;
    return false;
}

std::set<std::int64_t> designsOf(const model::Season& season, Id<model::Booking> booking) {
    std::set<std::int64_t> out;
    for (const auto& line : season.lines)
        if (line.booking == booking) out.insert(line.design.value);
    return out;
}

QString slotOfferWords(const model::Season& season, const model::Slot& slot) {
    return TallyOffersSay::tr("%1 in %2").arg(text(slot.label), nameIn(season.designs, slot.design));
}

QString joinedOr(const QStringList& words) {
    return words.size() < 2 ? words.join(QString())
                            : words.mid(0, words.size() - 1).join(QStringLiteral(", ")) +
                                  TallyOffersSay::tr(" or ") + words.last();
}

} // namespace

std::vector<StandInOffer> standInOffers(const model::Season& season, const plan::Plan& plan,
                                        Id<model::Booking> booking, Id<model::Plant> id) {
    const auto* plant = season.plants.find(id);
    if (!plant) return {};
    const auto designs = designsOf(season, booking);
    std::vector<StandInOffer> out;
    for (const auto& slot : season.slots) {
        if (!designs.contains(slot.design.value) || !plan::serves(*plant, slot.purpose)) continue;
        if (mayFill(season, booking, slot.id, id) || tooShort(plan, slot, *plant)) continue;
        out.push_back({slot.id, slotOfferWords(season, slot)});
    }
    return out;
}

QString standInWords(const model::Season& season, Id<model::Booking> booking, Id<model::Plant> plant,
                     const std::vector<StandInOffer>& offers) {
    const auto designs = designsOf(season, booking);
    QStringList fills;
    for (const auto& slot : season.slots)
        if (designs.contains(slot.design.value) && mayFill(season, booking, slot.id, plant))
            fills << slotOfferWords(season, slot);
    if (!fills.isEmpty()) return TallyOffersSay::tr("May fill %1.").arg(joinedOr(fills));
    if (offers.empty())
        return TallyOffersSay::tr("In no slot of this booking, and fit for none. It counts as spare.");
    QStringList could;
    for (const auto& offer : offers)
        if (could.size() < 2) could << offer.words;
    return TallyOffersSay::tr("In no slot of this booking. It could stand in for %1.").arg(joinedOr(could));
}

} // namespace withy::ui
