// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cover_facts.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(Cover)
};

} // namespace

std::optional<CoverFacts> coverFacts(const plan::CoverPlan* cover, Id<model::Booking> booking) {
    if (!cover || cover->fault) return std::nullopt;
    const auto found = cover->bookings.find(booking);
    if (found == cover->bookings.end()) return std::nullopt;
    const auto& b = found->second;
    CoverFacts facts;
    facts.standing = b.standing;
    facts.shortBy = b.shortBy(plan::Level::likely).value;
    if (b.needed.value > 0) {
        const auto level =
            b.standing == plan::CoverStanding::tight ? plan::Level::cautious : plan::Level::likely;
        facts.share = static_cast<double>(b.covered[static_cast<std::size_t>(level)].value) /
                      static_cast<double>(b.needed.value);
    }
    return facts;
}

bool isAsked(model::Standing standing) {
    return standing == model::Standing::enquiry || standing == model::Standing::held ||
           standing == model::Standing::quoted;
}

QString coverWords(model::Standing standing, const std::optional<CoverFacts>& cover) {
    if (!cover) return {};
    switch (cover->standing) {
    case plan::CoverStanding::covered:
        return isAsked(standing) ? Say::tr("fits") : Say::tr("covered");
    case plan::CoverStanding::tight:
        return Say::tr("tight");
    case plan::CoverStanding::shortOf:
        return Say::tr("%n short", nullptr, static_cast<int>(cover->shortBy));
    case plan::CoverStanding::notKnown:
        return Say::tr("no forecast");
    case plan::CoverStanding::nothing:
        break;
    }
    return {};
}

} // namespace withy::ui
