// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace withy::ui {

/// Makes the compiled-in fonts known to Qt; without them the system's stand in. Needs a QGuiApplication;
/// any thread may do it, once.
void loadFonts();

} // namespace withy::ui
