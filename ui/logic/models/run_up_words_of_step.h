// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"
#include "ui/logic/models/sheet.h"

#include <QString>

/// What is said of the step that is chosen, and who could be asked to do it.
namespace withy::ui {

struct StepWords {
    QString title;  ///< "Make up 24 x Supper jar"
    QString when;   ///< "Fri 10 Sep, 15:10 to 16:22, You, Wilf. 72 minutes."
    QString limits; ///< "Not before 15:09. Not after 15:46."
};

/// Its minutes, which open their working and lead to the rate, design or way they rest on.
SheetFigure stepFigure(const model::Season& season, const plan::RunUpStep& step);
StepWords stepWordsOf(const model::Season& season, const plan::RunUpStep& step);
/// While none is chosen: how to choose one.
StepWords noStepWords();

struct WhoChoice {
    std::optional<plan::Worker> worker; ///< blank: whoever can
    QString words;
};

std::vector<WhoChoice> whoChoices(const model::Season& season);

} // namespace withy::ui
