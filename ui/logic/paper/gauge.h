// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/row.h"

namespace withy::paper {

/// The cutting gauge of a sheet, as ops from the sheet's own top left: a line in the right margin with a tick
/// every ten millimetres above the foot of the paper. Marks that the sheet cannot hold are left out.
Row gaugeRow(const papers::CuttingGauge& gauge, const QSizeF& sheet);

} // namespace withy::paper
