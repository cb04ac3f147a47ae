// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"

#include <string>

namespace withy::papers {

/// The paper as plain UTF-8 text for a printer of one-width letters, a message or a test: 78 columns, every
/// line ended, no blank at a line's end, no pages. Tick boxes are `[ ]`, tally boxes `[10]`, write-in boxes
/// `[________]`; two columns follow each other, left first. The same document always gives the same text.
std::string renderText(const Document& document);

inline constexpr int kTextWidth = 78;

} // namespace withy::papers
