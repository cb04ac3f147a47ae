// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/layout.h"

namespace withy::paper {

/// Labels, two side by side and four below each other, with dashed lines to cut along and a mark for the
/// hole. On Letter a label is 4.25 by 2.75 inches. The sheet has neither head nor foot.
std::vector<Page> labelPages(const std::vector<papers::BucketLabel>& labels, PaperSize paper);

} // namespace withy::paper
