// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/scene.h"

namespace withy::ui {

/// "44 pieces in 6 trays, 45.4 kg in all. Heaviest lift 6.5 kg, limit 10."; what is over, asks.
Answer packingAnswer(const model::Season& season, const plan::BookingPacking* packed);
/// All trays side by side at one scale, in as many rows as it takes.
Scene traysScene(const model::Season& season, const plan::BookingPacking& packed, double width,
                 const SceneLook& look);
/// "Into the Elderly van, last drop first".
QString loadHead(const model::Season& season, const plan::BookingPacking* packed);
QString loadCaution();

/// More things than the vehicle's floor is laid out with at once.
bool tooManyToLay(const plan::BookingPacking& packed);
/// "3 things find no room on the floor: 2 trips at least."; empty when all goes in.
QString tripsWords(const plan::BookingPacking& packed);

/// So many things are listed; what is over is counted.
inline constexpr std::size_t mostLoadLines = 500;
/// "and 12 more things".
QString moreThings(int count);

struct LoadLine {
    QString number;
    QString words;
    QString weight;
    bool asks = false;
};

std::vector<LoadLine> loadLines(const model::Season& season, const plan::BookingPacking& packed);
/// "5.4 litres to carry".
QString carryWords(const plan::BookingPacking& packed, Units units);
/// "at 14:05 on Sun 13 Jun"; when it is the end of the event "before you leave, by 22:00 on Sat 12 Jun". The
/// day is left out where it is `beside`.
QString checkWhen(const model::Booking& booking, LocalTime at, std::optional<Day> beside = std::nullopt);
/// One sentence a design: what travels, what is poured in, when to check.
std::vector<QString> waterLines(const model::Season& season, const plan::BookingPacking& packed);

} // namespace withy::ui
