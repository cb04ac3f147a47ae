// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/flow.h"
#include "ui/logic/paper/paper_size.h"

#include <vector>

namespace withy::paper {

struct Page {
    std::vector<Op> ops;         // in drawing order, head and foot last
    std::vector<PlacedRow> rows; // of the body
};

/// A paper set on sheets: pure data, the same for screen, printer and PDF.
struct Layout {
    PaperSize paper = PaperSize::A4;
    std::vector<Page> pages; // never empty
    double tight = 1;        // row heights were reduced to this share (0.92 to 1)
    bool landscape = false;
};

/// The sheet as it lies before the reader.
inline QSizeF sheetOf(const Layout& layout) {
    return layout.landscape ? sizeOf(layout.paper).transposed() : sizeOf(layout.paper);
}

/// Sets a document on as many sheets as it needs. Needs a QGuiApplication, for the fonts.
/// Rows are not parted; if fewer than four rows would stand on a last page, row heights fall by up to 8 %
/// to bring them back, type never does.
Layout layoutDocument(const papers::Document& document, PaperSize paper);

} // namespace withy::paper
