// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/models/run_up_board.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::RunUpStep;
using plan::StepKind;

struct BoardWordsSay {
    Q_DECLARE_TR_FUNCTIONS(RunUpBoard)
};

} // namespace

LocalTime toFive(LocalTime t) {
    return LocalTime::fromMinutes((t.minutesSinceEpoch() + 2) / 5 * 5);
}

QString warmestWords(const BoardDay& day, Units units) {
    const double most = *std::max_element(day.heat.begin(), day.heat.end());
    return BoardWordsSay::tr("up to %1").arg(temperatureWords(most, units, 0));
}

QString shortStep(const RunUpStep& s) {
    const QString n = whole(s.count);
    switch (s.key.step) {
    case StepKind::washContainers:
        return BoardWordsSay::tr("Wash %1").arg(n);
    case StepKind::cutRibbon:
        return BoardWordsSay::tr("Cut ribbon");
    case StepKind::fillWater:
        return BoardWordsSay::tr("Water");
    case StepKind::tieRibbon:
        return BoardWordsSay::tr("Ribbon");
    case StepKind::cut:
        return BoardWordsSay::tr("Cut %1").arg(n);
    case StepKind::strip:
        return BoardWordsSay::tr("Strip");
    case StepKind::drink:
        return BoardWordsSay::tr("drinking");
    case StepKind::sort:
        return BoardWordsSay::tr("Sort");
    case StepKind::make:
        return BoardWordsSay::tr("Make %1").arg(n);
    case StepKind::restCool:
        return BoardWordsSay::tr("resting cool");
    case StepKind::checkWater:
        return BoardWordsSay::tr("Top up");
    case StepKind::pack:
        return BoardWordsSay::tr("Pack");
    case StepKind::load:
        return BoardWordsSay::tr("Load");
    case StepKind::drive:
        return BoardWordsSay::tr("Drive");
    case StepKind::place:
        return BoardWordsSay::tr("Place %1").arg(n);
    case StepKind::handOver:
        return BoardWordsSay::tr("Hand over");
    case StepKind::driveBack:
        return BoardWordsSay::tr("Home");
    case StepKind::collect:
        return BoardWordsSay::tr("Fetch %1").arg(n);
    case StepKind::washBack:
        return BoardWordsSay::tr("Wash back");
    }
    return {};
}

} // namespace withy::ui
