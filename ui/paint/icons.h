// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QIcon>
#include <QPixmap>

#include <array>

/// Our own icons: 24 grid, lines of 1.7 with round ends, exactly one solid part each.
namespace withy::ui {

enum class IconName { bookings, designs, garden, shed, diary, season, add, search, caution, back };

inline constexpr std::array allIcons{
    IconName::bookings, IconName::designs, IconName::garden, IconName::shed,    IconName::diary,
    IconName::season,   IconName::add,     IconName::search, IconName::caution, IconName::back};

/// Sharp at any size; ink, or ink 3 where its control cannot be used.
QIcon icon(IconName name, const Palette& palette, Role role = Role::ink);
QPixmap iconPixmap(IconName name, const QColor& colour, int size, double devicePixelRatio = 1);
/// The program's own, for windows and the task bar.
QIcon applicationIcon();

} // namespace withy::ui
