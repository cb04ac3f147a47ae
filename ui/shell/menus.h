// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenuBar;

namespace withy::ui {

class Actions;

/// Puts every action into the menu its id begins with ("booking.new" into Booking). A menu without any
/// stands there all the same and cannot be opened.
void fillMenus(QMenuBar& bar, const Actions& actions);

} // namespace withy::ui
