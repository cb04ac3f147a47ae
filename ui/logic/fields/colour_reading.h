// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace withy::ui {

/// "#ad4a08", "ad4a08", "#f80", a published word ("dark purplish red"), one of the flower trade's words
/// ("apricot"), or a colour keyword of CSS Color Module Level 4 ("coral", "plum").
std::optional<Colour> readColour(const QString& typed);

/// What a grower calls it: the trade's word where it is exactly that, else the nearest published word by
/// CIEDE2000. readColour reads each of them back, to the middle of what it means.
QString colourName(Colour colour);

/// The same for a stored "#rrggbb"; anything else comes back as it is.
QString colourName(const QString& hex);

/// The parts of colourName: the nearest word of the published lists, and the colour one of them means, in
/// lower case.
QString nearestColourWord(Colour colour);
std::optional<Colour> publishedColour(const QString& word);

} // namespace withy::ui
