// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace withy::ui {

/// Counted words of the English source, for the number counted: "%n jar(s)" becomes "%n jar" or "%n jars",
/// "%n (sheaf|sheaves)" either word. Sentences counted with tr(..., nullptr, n) are written so.
QString counted(QString source, int n);

/// Puts counted() behind every tr() with a number, below any translation installed later. Once a process.
void installEnglishPlurals();

} // namespace withy::ui
