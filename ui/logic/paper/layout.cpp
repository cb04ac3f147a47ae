// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/layout.h"

#include "ui/logic/paper/gauge.h"
#include "ui/logic/paper/labels.h"
#include "ui/logic/paper/page_head.h"
#include "ui/logic/paper/rows.h"

#include <algorithm>
#include <array>

namespace withy::paper {
namespace {

using papers::Block;
using papers::Columns;

constexpr double kGutter = 7.5;
constexpr double kLaneGutter = 2.6;

bool before(const Cursor& a, const Cursor& b) {
    return a.page != b.page ? a.page < b.page : a.y < b.y;
}

/// Places the blocks of a document one part after the other: full width, two columns, full width.
class Setter {
public:
    Setter(Flow& flow, const QRectF& area, double tight) : m_flow(flow), m_area(area), m_tight(tight) {
        m_at = flow.start();
    }

    void body(const std::vector<Block>& blocks) {
        std::vector<Block> run;
        for (const Block& block : blocks) {
            const auto* columns = std::get_if<Columns>(&block.content);
            const auto* lanes = std::get_if<papers::Lanes>(&block.content);
            if (columns || lanes) {
                full(run);
                run.clear();
                columns ? both(*columns) : each(*lanes);
            } else {
                run.push_back(block);
            }
        }
        full(run);
    }

    void last(const std::vector<Block>& blocks) {
        const std::vector<Row> rows = rowsOf(blocks, m_area.width(), m_tight);
        m_at = m_flow.placeAtBottom(rows, m_area.left(), m_area.width(), m_at, m_source);
    }

private:
    void full(const std::vector<Block>& blocks) {
        if (blocks.empty()) return;
        m_at = column(blocks, m_area.left(), m_area.width(), m_at);
    }

    void both(const Columns& columns) {
        const double share = columns.split == papers::Split::Halves ? 0.5 : 2.0 / 3.0;
        const double left = (m_area.width() - kGutter) * share;
        const double right = m_area.width() - kGutter - left;
        const Cursor from = m_at;
        const Cursor leftEnd = column(columns.left, m_area.left(), left, from);
        const Cursor rightEnd = column(columns.right, m_area.right() - right, right, from);
        m_at = before(leftEnd, rightEnd) ? rightEnd : leftEnd;
    }

    void each(const papers::Lanes& lanes) {
        if (lanes.lanes.empty()) return;
        const double count = static_cast<double>(lanes.lanes.size());
        const double width = (m_area.width() - kLaneGutter * (count - 1)) / count;
        const Cursor from = m_at;
        double x = m_area.left();
        for (const auto& lane : lanes.lanes) {
            const Cursor end = column(lane, x, width, from);
            if (before(m_at, end)) m_at = end;
            x += width + kLaneGutter;
        }
    }

    Cursor column(const std::vector<Block>& blocks, double x, double width, Cursor from) {
        const std::vector<Row> rows = rowsOf(blocks, width, m_tight);
        const Cursor end = m_flow.place(rows, x, width, from, m_source);
        m_source += static_cast<int>(rows.size());
        return end;
    }

    Flow& m_flow;
    QRectF m_area;
    double m_tight;
    Cursor m_at;
    int m_source = 0;
};

struct Heads {
    Row first;
    Row later;
    double footHeight = 0;
};

Flow flowed(const papers::Document& document, const Heads& heads, const QRectF& area, double tight) {
    Flow flow(area.top() + heads.first.height, area.top() + heads.later.height,
              area.bottom() - heads.footHeight);
    Setter setter(flow, area, tight);
    setter.body(document.body);
    setter.last(document.last);
    return flow;
}

/// Rows of the last page that are not heads printed again.
long overflow(const Flow& flow) {
    const auto& rows = flow.pages().back().rows;
    return std::count_if(rows.begin(), rows.end(), [](const PlacedRow& row) { return !row.repeated; });
}

void addRow(Page& page, const Row& row, QPointF at) {
    for (const Op& op : row.ops)
        page.ops.push_back(moved(op, at));
}

/// One document on pages of its own; its foot counts from `before`, of `all` pages.
struct Sheets {
    const papers::Document& document;
    Heads heads;
    Flow flow;
    double tight = 1;
};

Sheets sheetsOf(const papers::Document& document, const QRectF& area) {
    Heads heads{firstHead(document, area.width()), laterHead(document, area.width()), 0};
    heads.footHeight = pageFoot(document, area.width(), 1, 1).height;
    Flow flow = flowed(document, heads, area, 1);
    double closest = 1;
    if (flow.pages().size() > 1 && overflow(flow) < 4) {
        for (double tight : std::array{0.98, 0.96, 0.94, 0.92}) {
            Flow closer = flowed(document, heads, area, tight);
            if (closer.pages().size() >= flow.pages().size()) continue;
            flow = std::move(closer);
            closest = tight;
            break;
        }
    }
    return {document, std::move(heads), std::move(flow), closest};
}

void addPages(Layout& layout, const Sheets& sheets, const QRectF& area, int all) {
    for (std::size_t i = 0; i < sheets.flow.pages().size(); ++i) {
        const Flow::Page& from = sheets.flow.pages()[i];
        Page page{from.ops, from.rows};
        addRow(page, i == 0 ? sheets.heads.first : sheets.heads.later, area.topLeft());
        const int number = static_cast<int>(layout.pages.size()) + 1;
        const Row foot = pageFoot(sheets.document, area.width(), number, all);
        addRow(page, foot, {area.left(), area.bottom() - foot.height});
        if (sheets.document.gauge) addRow(page, gaugeRow(*sheets.document.gauge, sheetOf(layout)), {0, 0});
        layout.pages.push_back(std::move(page));
    }
}

} // namespace

Layout layoutDocument(const papers::Document& document, PaperSize paper) {
    Layout layout;
    layout.paper = paper;
    if (!document.labels.empty()) {
        layout.pages = labelPages(document.labels, paper);
        return layout;
    }
    layout.landscape = document.landscape;
    const QRectF area = QRectF(QPointF(0, 0), sheetOf(layout)).adjusted(kMargin, kMargin, -kMargin, -kMargin);
    std::vector<Sheets> sheets;
    sheets.push_back(sheetsOf(document, area));
    for (const auto& next : document.sheets)
        sheets.push_back(sheetsOf(next, area));
    int all = 0;
    for (const auto& each : sheets) {
        all += static_cast<int>(each.flow.pages().size());
        layout.tight = std::min(layout.tight, each.tight);
    }
    for (const auto& each : sheets)
        addPages(layout, each, area, all);
    return layout;
}

} // namespace withy::paper
