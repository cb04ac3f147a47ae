// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

#include <QString>

#include <optional>

namespace withy::ui::edits {

/// A reel of this ribbon of the length as typed ("9.4 m"). Nothing, and the sentence that says why, when it
/// cannot be read.
std::optional<model::Edit> measureReel(const model::Season& season, Id<model::Ribbon> ribbon,
                                       const QString& typed, QString& sentence);

} // namespace withy::ui::edits
