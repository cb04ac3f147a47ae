// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cover_facts.h"

#include "ui/logic/format.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct CoverFactsSay {
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
        facts.share =
            static_cast<double>(b.covered[plan::indexOf(level)].value) / static_cast<double>(b.needed.value);
    }
    return facts;
}

QString coverFaultSentence(const model::Season& season, const cover::CoverFault& fault) {
    if (fault.trouble == cover::CoverTrouble::tooLarge)
        return CoverFactsSay::tr("The garden is not shared out: the bookings ask for more in all than can be "
                                 "added up. Look for a number of pieces with a digit too many.");
    QString where;
    if (const auto* patch = season.patches.find(Id<model::Patch>(fault.id)); patch && fault.field == "patch")
        where = text(patch->label);
    const auto* booking = season.bookings.find(Id<model::Booking>(fault.id));
    if (booking && (fault.field == "demand" || fault.field == "choice")) where = text(booking->title);
    if (where.isEmpty()) where = CoverFactsSay::tr("the store");
    return CoverFactsSay::tr(
               "The garden is not shared out: the figures of %1 cannot be. Look for stems below "
               "nought, or with a digit too many.")
        .arg(where);
}

bool isAsked(model::Standing standing) {
    return standing == model::Standing::enquiry || standing == model::Standing::held ||
           standing == model::Standing::quoted;
}

QString coverWords(model::Standing standing, const std::optional<CoverFacts>& cover) {
    if (!cover) return {};
    switch (cover->standing) {
    case plan::CoverStanding::covered:
        return isAsked(standing) ? CoverFactsSay::tr("fits") : CoverFactsSay::tr("covered");
    case plan::CoverStanding::tight:
        return CoverFactsSay::tr("tight");
    case plan::CoverStanding::shortOf:
        return CoverFactsSay::tr("%n short", nullptr, static_cast<int>(cover->shortBy));
    case plan::CoverStanding::notKnown:
        return CoverFactsSay::tr("no forecast");
    case plan::CoverStanding::nothing:
        break;
    }
    return {};
}

} // namespace withy::ui
