// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/store/backups.h"

#include <QString>

/// What the window says of itself: where things are kept, what was put back.
namespace withy::ui {

QString keptInWords(const QString& path);     ///< a new season, and where it is
QString copyKeptInWords(const QString& path); ///< a copy was made
QString undoneWords(const model::EditName& name);
QString redoneWords(const model::EditName& name);
QString restoredWords(const store::Backup& backup);
QString backupFailedWords(const QString& why);
/// "10:41 on Monday 6 September 2027", of local time.
QString momentWords(const QDateTime& at);

} // namespace withy::ui
