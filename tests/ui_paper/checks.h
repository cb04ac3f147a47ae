// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/layout.h"

#include <QString>
#include <QStringList>

/// What must hold for every paper, whatever is on it.
namespace withy::checks {

/// Everything that breaks the rules of a sheet: ink outside the printable area, letters under 11 pt, a row
/// parted, lost or printed over another, words over words. Empty when all is well.
QStringList faults(const paper::Layout& layout);

/// All words of one page, one line of them each.
QStringList linesOf(const paper::Page& page);

} // namespace withy::checks
