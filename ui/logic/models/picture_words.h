// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// What is said of the picture of a trial.
namespace withy::ui {

QString noPictureWords();
/// The file is not where it was.
QString pictureGoneWords(const QString& name, const QString& folder);
/// `why` is the reader's own reason.
QString pictureUnreadableWords(const QString& name, const QString& why);

} // namespace withy::ui
