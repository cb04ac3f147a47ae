// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace withy::ui {

/// "#ad4a08", "ad4a08", "#f80", a colour keyword of SVG 1.1 ("coral", "plum"), or one of the flower
/// trade's words below.
std::optional<Colour> readColour(const QString& typed);

} // namespace withy::ui
