// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenuBar;

namespace withy::ui {

class Actions;

/// Puts every action into the menu its id begins with ("booking.new" into Booking). Menus without any
/// are left out.
void fillMenus(QMenuBar& bar, const Actions& actions);

} // namespace withy::ui
