// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

#include <QString>
#include <QTime>

/// What the window says of itself: where things are kept, what was put back.
namespace withy::ui {

QString keptInWords(const QString& path);     ///< a new season, and where it is
QString copyKeptInWords(const QString& path); ///< a copy was made
QString undoneWords(const model::EditName& name);
QString redoneWords(const model::EditName& name);
/// "Season 2027, Wren Bank"
QString seasonWords(const model::Season& season);
/// "Season 2027, Wren Bank    Kept at 09:41"; `at` invalid: nothing changed yet. Of the demo season also the
/// day it is looked at on: "Season 2027, Wren Bank: demo, as if Tue 1 Jun 2027".
QString keptWords(const model::Season& season, bool canWrite, QTime at,
                  std::optional<Day> today = std::nullopt);

} // namespace withy::ui
