// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/season_file.h"

#include <QString>

#include <optional>
#include <string>

namespace withy::cli {

/// Prints one sentence on standard error.
void complain(const QString& sentence);
/// The whole of a file, or nothing after complaining.
std::optional<std::string> readAll(const std::string& path);
/// Through a temporary file, so that a failure leaves no half of it.
bool writeAll(const std::string& path, const QByteArray& bytes);
std::optional<store::SeasonFile> open(const std::string& path, store::SeasonFile::Mode mode);

} // namespace withy::cli
