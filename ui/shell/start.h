// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"

#include <QString>

#include <memory>
#include <optional>

namespace withy::ui {

class MainWindow;

/// The program's window as a start makes it: fonts and season are read side by side, for neither needs the
/// other. An empty path: the first page. Translations are installed before, for a file that cannot be had
/// is told of in words.
std::unique_ptr<MainWindow> openWindow(std::optional<Day> today, const QString& path);

} // namespace withy::ui
