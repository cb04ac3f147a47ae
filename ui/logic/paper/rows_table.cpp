// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include "ui/logic/paper/table_widths.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;
using papers::RowKind;

constexpr int kMostCellLines = 14;

Align alignOf(const papers::Column& column) {
    return column.numeric ? Align::Right : column.align;
}

double edgeOf(const TableSlot& slot, Align align) {
    if (align == Align::Right) return slot.x + slot.width;
    return align == Align::Centre ? slot.x + slot.width / 2 : slot.x;
}

struct TypePair {
    Type normal;
    Type strong;
};

TypePair typesFor(const papers::Table& table) {
    return table.small ? TypePair{types::kDetail, types::kDetailStrong}
                       : TypePair{types::kText, types::kTextStrong};
}

bool hasHeads(const papers::Table& table) {
    return std::any_of(table.columns.begin(), table.columns.end(),
                       [](const auto& c) { return !c.title.empty(); });
}

bool titleInHead(const papers::Table& table) {
    return hasHeads(table) && table.columns.front().title.empty();
}

/// The head row: titles stand on the rule, the table's own title among them in serif.
Row headRow(const papers::Table& table, const std::vector<TableSlot>& places, double width) {
    std::vector<std::vector<TextLine>> cells;
    double height = 0;
    for (std::size_t c = 0; c < places.size(); ++c) {
        const bool serif = c == 0 && titleInHead(table);
        const Type type = serif ? types::kHead : types::kDetail;
        const std::string& words = serif ? table.title : table.columns[c].title;
        cells.push_back(breakLines(spansOf(words, type), places[c].width, 3));
        height = std::max(height, heightOf(cells.back(), type.lineMm));
    }
    Row row;
    Pen pen(row);
    for (std::size_t c = 0; c < places.size(); ++c) {
        const double lineMm = c == 0 && titleInHead(table) ? types::kHead.lineMm : types::kDetail.lineMm;
        const Align align = alignOf(table.columns[c]);
        pen.lines(edgeOf(places[c], align), height - heightOf(cells[c], lineMm), cells[c], lineMm, align);
    }
    row.height = height + 0.5 + kThick;
    pen.across(row.height - kThick / 2, 0, width, kThick);
    row.keepWithNext = true;
    return row;
}

Row groupRow(const papers::TableRow& group, double width) {
    Row row;
    Pen pen(row);
    row.before = 2.4;
    const std::vector<TextLine> lines =
        group.cells.empty() ? std::vector<TextLine>{}
                            : breakLines(spansOf(group.cells.front(), types::kHead, types::kHead), width, 2);
    row.height = pen.lines(0, 0, lines, types::kHead.lineMm) + 0.4 + kThick;
    pen.across(row.height - kThick / 2, 0, width, kThick);
    row.keepWithNext = true;
    return row;
}

constexpr double kWriteBox = 10;

bool isToWriteIn(const papers::Column& column) {
    return column.cells == papers::CellKind::Box || column.cells == papers::CellKind::Line;
}

/// A cell that is no words: the printed figure stands in the corner of its box, never where one writes.
void drawCell(Pen& pen, const papers::Column& column, const TableSlot& place, double top,
              const TextLine& words) {
    using papers::CellKind;
    if (column.cells == CellKind::Line) return pen.across(top + kWriteBox, place.x, place.x + place.width);
    if (column.cells == CellKind::Disc) {
        if (words.spans.empty()) return;
        pen.disc({place.x + kDiscRadius, top + kDiscRadius}, kDiscRadius);
        pen.in(place.x + kDiscRadius, top, 2 * kDiscRadius, words, Align::Centre, Ink::White);
        return;
    }
    const QRectF box(place.x, top + 0.5, place.width, kWriteBox);
    pen.box(box);
    pen.at(box.right() - 1, box.bottom() - 1.2, words, Align::Right, Ink::Grey);
}

Row bodyRow(const papers::TableRow& given, const papers::Table& table, const std::vector<TableSlot>& places,
            const Frame& frame) {
    const bool total = given.kind == RowKind::Total;
    const TypePair pair = typesFor(table);
    std::vector<std::vector<TextLine>> cells;
    double content = pair.normal.lineMm;
    for (std::size_t c = 0; c < places.size(); ++c) {
        static const papers::Text kBlank;
        const papers::Text& words = c < given.cells.size() ? given.cells[c] : kBlank;
        cells.push_back(breakLines(spansOf(words, total ? pair.strong : pair.normal, pair.strong),
                                   places[c].width, kMostCellLines));
        content = std::max(content, heightOf(cells.back(), pair.normal.lineMm));
        if (isToWriteIn(table.columns[c])) content = std::max(content, kWriteBox + 1);
        if (table.columns[c].cells == papers::CellKind::Disc) content = std::max(content, 2 * kDiscRadius);
    }
    const double rule = total ? kThick : kHairline;
    const Pads pads = tightened({0.75, 0.75 + rule}, content, frame.tight);
    Row row;
    Pen pen(row);
    for (std::size_t c = 0; c < places.size(); ++c) {
        const Align align = alignOf(table.columns[c]);
        if (table.columns[c].cells == papers::CellKind::Words)
            pen.lines(edgeOf(places[c], align), pads.top, cells[c], pair.normal.lineMm, align);
        else
            drawCell(pen, table.columns[c], places[c], pads.top,
                     cells[c].empty() ? TextLine{} : cells[c].front());
    }
    row.height = pads.top + content + pads.bottom;
    pen.across(row.height - rule / 2, 0, frame.width, rule);
    return row;
}

/// Beyond this many columns a sheet cannot hold even single letters side by side.
std::size_t mostColumns(double width) {
    return static_cast<std::size_t>(std::max(1.0, width / 9));
}

void addShortened(std::vector<Row>& out, const papers::Table& table, const Frame& frame) {
    papers::Table shorter = table;
    shorter.columns.resize(mostColumns(frame.width));
    const int left = static_cast<int>(table.columns.size() - shorter.columns.size());
    addRows(out, shorter, frame);
    const QString note =
        QCoreApplication::translate("paper", "%n columns more do not fit on this paper", nullptr, left);
    addRows(out, papers::Paragraph{papers::plain(note.toStdString()), true}, frame);
}

} // namespace

void addRows(std::vector<Row>& out, const papers::Table& table, const Frame& frame) {
    if (table.columns.empty()) return;
    if (table.columns.size() > mostColumns(frame.width)) return addShortened(out, table, frame);
    const TypePair pair = typesFor(table);
    const std::vector<TableSlot> places = tableSlots(table, frame.width, pair.normal, pair.strong);
    const std::size_t first = out.size();
    std::vector<int> heads;
    if (!table.title.empty() && !titleInHead(table))
        addRows(out, papers::SectionHead{table.title, {}}, frame);
    if (hasHeads(table)) {
        heads.push_back(static_cast<int>(out.size()));
        out.push_back(headRow(table, places, frame.width));
    }
    int group = -1;
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        const papers::TableRow& row = table.rows[r];
        const bool isGroup = row.kind == RowKind::Group;
        if (isGroup) group = static_cast<int>(out.size());
        if (row.kind == RowKind::Total) group = -1;
        out.push_back(isGroup ? groupRow(row, frame.width) : bodyRow(row, table, places, frame));
        out.back().repeats = heads;
        if (!isGroup && group >= 0) out.back().repeats.push_back(group);
        // A total never stands alone: the row above it comes along.
        if (row.kind == RowKind::Total && r > 0 && out.size() > 1) out[out.size() - 2].keepWithNext = true;
    }
    if (out.size() > first) out[first].before = std::max(out[first].before, 3.0);
}

} // namespace withy::paper
