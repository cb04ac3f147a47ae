// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/rates.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"

namespace withy::runup {

namespace {

constexpr const char* labourNote = "general.csv, labour: common practice, no source";

double defaultMinutes(model::RateKind work) {
    using model::RateKind;
    switch (work) {
    case RateKind::washContainer:
        return 0.75;
    case RateKind::fillWater:
        return 0.5;
    case RateKind::cutRibbon:
        return 0.5;
    case RateKind::tieRibbon:
        return 1;
    case RateKind::cutHundredStems:
        return 30; // 200 stems an hour, within 150 to 300
    case RateKind::stripHundredStems:
        return 20;
    case RateKind::sortPiece:
        return 0.75;
    case RateKind::packPiece:
        return 0.5;
    case RateKind::loadTray:
        return 2;
    case RateKind::placePiece:
        return 1;
    case RateKind::collectPiece:
        return 1;
    case RateKind::checkWaterPiece:
        return 0.25;
    case RateKind::handOver:
        return 10;
    }
    return 1;
}

double makingMinutes(model::PieceKind kind) {
    using model::PieceKind;
    switch (kind) {
    case PieceKind::table:
        return 12;
    case PieceKind::handTied:
        return 45;
    case PieceKind::buttonhole:
        return 12;
    case PieceKind::corsage:
        return 15;
    case PieceKind::crown:
        return 40;
    case PieceKind::pedestal:
        return 60;
    case PieceKind::sheaf:
        return 40;
    case PieceKind::spray:
        return 50;
    case PieceKind::garland:
        return 60;
    case PieceKind::wreath:
        return 50;
    case PieceKind::pewEnd:
        return 12;
    case PieceKind::budVase:
        return 4;
    case PieceKind::basket:
        return 15;
    }
    return 12;
}

} // namespace

RateUsed defaultRate(model::RateKind work) {
    return {defaultMinutes(work), Basis::commonPractice, labourNote,
            model::originOf(model::TableKind::rates, 0)};
}

RateUsed rateOf(const model::Season& season, model::RateKind work) {
    for (const auto& r : season.rates) {
        if (r.work == work)
            return {r.minutes, r.basis, r.note, model::originOf(model::TableKind::rates, r.id.value)};
    }
    return defaultRate(work);
}

WorkingLine rateLine(const RateUsed& rate, std::string what) {
    return from(rate.from,
                lineOf(Step::times, std::move(what), rate.minutes, Unit::minutes, rate.basis, rate.source));
}

RateUsed defaultMakingMinutes(model::PieceKind kind) {
    return {makingMinutes(kind), Basis::commonPractice, labourNote};
}

} // namespace withy::runup
