// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace withy::model {

/// Number of characters (code points) of a UTF-8 text; nothing when it is not valid UTF-8 or holds
/// control characters other than line breaks and tabs.
std::optional<std::size_t> charactersIn(std::string_view text);

} // namespace withy::model
