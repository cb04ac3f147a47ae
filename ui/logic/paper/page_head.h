// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/row.h"

namespace withy::paper {

/// Head of page 1: kind, name, the key with its note, and the strip of facts. Its height holds the air below.
Row firstHead(const papers::Document& document, double width);

/// Head of the other pages: kind, name and key again, smaller, no facts.
Row laterHead(const papers::Document& document, double width);

/// The foot: what, printed when, page x of y. Every page's is of the same height.
Row pageFoot(const papers::Document& document, double width, int page, int pages);

} // namespace withy::paper
