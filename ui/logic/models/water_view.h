// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/piece_water.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// The water of one design as it falls, worded.
namespace withy::ui {

struct WaterView {
    QString head;          ///< "Check and top up by Sat 11 Sep, 14:10"
    QStringList sentences; ///< why, how much, what is not known
    bool warns = false;    ///< the event's last hour is dry
    QString litres;        ///< "2.4 litres for 24"; empty: none to carry
    Working working;       ///< of the litres
    QString means;         ///< the curve in words

    // The curve.
    std::vector<designs::WaterPoint> curve;
    std::vector<double> turns;   ///< hours at which a phase begins, but the first
    QStringList phases;          ///< "bench", "cool rest", "van", "venue"
    double hours = 0;            ///< from left to right
    model::UnitSystem units = model::UnitSystem::metric; ///< what is in mm here is said in
    double depth = 0;            ///< mm
    double stemEnds = 0;         ///< mm
    std::optional<double> topUp; ///< hours
    std::optional<double> dry;
    QString from; ///< "Fri 10 Sep, 15:00"; empty without a booking
    QString to;

    [[nodiscard]] bool empty() const { return curve.empty(); }
};

/// For the booking the design is next made for; without one two days at the venue's warmth.
WaterView waterView(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                    std::optional<Day> today);

/// "Tulip, red grows on: 18 mm taller by Sun 12 Sep, 10:00, for Library roof supper." Empty when nothing
/// does.
QString growingOnWords(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                       std::optional<Day> today);
/// The stretches the design's pieces stand through for the booking it is next made for; empty without one.
std::vector<designs::WaterPhase> nextStanding(const model::Season& season, const plan::Plan& plan,
                                              Id<model::Design> design, std::optional<Day> today);

} // namespace withy::ui
