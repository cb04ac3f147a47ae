// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// The cutting plan of every day on which a make-up begins that wants ribbon, in order of time: what an
/// earlier day cuts is gone for a later one. A ribbon's plan of a day is kept where shelf and pieces are the
/// same as before.
std::vector<std::shared_ptr<const RibbonDay>> ribbonDays(const ShedInput& in);

/// Whether the day asks for more of it than can be planned at all (see ribbonFindings()): it is neither cut
/// nor missing.
bool ribbonIsNotCut(const RibbonCutPlan& plan);

/// Whether all the day cuts for is over, written back or not: nothing is short for it any more.
bool ribbonIsOver(const model::Season& season, const RibbonDay& day, std::optional<Day> today);

/// Ribbon that cannot be cut whole from what is there, where no booking by itself says so already, reels
/// without a length, and ribbon of which too much is asked to be planned.
std::vector<ShedFinding> ribbonFindings(const ShedInput& in,
                                        const std::vector<std::shared_ptr<const RibbonDay>>& days);

} // namespace withy::plan
