// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/row.h"

#include <QRectF>

#include <vector>

namespace withy::paper {

/// A row in its place. `source` counts the rows of the body in the order they were made; a head printed again
/// keeps the number of the first.
struct PlacedRow {
    QRectF rect;
    int source = 0;
    bool repeated = false;
};

/// A place between rows.
struct Cursor {
    int page = 0;
    double y = 0;
};

/// Puts rows into columns of one sheet after the other. It knows heights, not meanings.
class Flow {
public:
    struct Page {
        std::vector<Op> ops;
        std::vector<PlacedRow> rows;
    };

    /// Tops of the first and of the later pages, and the common bottom, in millimetres.
    Flow(double firstTop, double laterTop, double bottom);

    Cursor start() const { return {0, m_firstTop}; }

    /// Places rows from `from` on, their left edge at `x`; `source` numbers the first of them. No row is
    /// parted, heads stay with what follows, and rows that ask for it have their heads repeated.
    Cursor place(const std::vector<Row>& rows, double x, double width, Cursor from, int source);

    /// Places rows at the bottom of the page of `from`, or of the next one when they do not fit.
    Cursor placeAtBottom(const std::vector<Row>& rows, double x, double width, Cursor from, int source);

    const std::vector<Page>& pages() const { return m_pages; }

private:
    double topOf(int page) const { return page == 0 ? m_firstTop : m_laterTop; }

    void putRow(const Row& row, double x, double width, Cursor& at, int source, bool repeated);
    void putHeads(const std::vector<Row>& rows, std::size_t index, double x, double width, Cursor& at,
                  int source);
    void putWalk(const Row& row, double x, const Cursor& at);

    double m_firstTop;
    double m_laterTop;
    double m_bottom;
    double m_walkEnd = -1; // where the last walk row of this column and page ended
    std::vector<Page> m_pages;
};

/// Height of rows below each other, without the air above the first.
double stackHeight(const std::vector<Row>& rows);

} // namespace withy::paper
