// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/project.h"

#include <optional>
#include <string>
#include <vector>

/// Scheduling problems with a proven optimum, read from the reference data (rcpsp/README.md there names the
/// sources: PSPLIB's J30 by Kolisch and Sprecher 1997, and small cases with busy blocks).
namespace withy::runup::tests {

struct KnownCase {
    std::string id;
    Project project;
    Time optimum = 0;
    Time optimumWithoutBusy = 0; ///< small cases only
};

/// Nothing when WITHY_REFERENCE does not say where the data is.
std::optional<std::vector<KnownCase>> thirtyJobCases();
std::optional<std::vector<KnownCase>> busyBlockCases();

} // namespace withy::runup::tests
