// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/row.h"

#include <vector>

/// From blocks to rows: each maker sets its words in the width it is given.
namespace withy::paper {

/// What all rows of one column of the sheet share, so that times, counts and names stand under each other.
struct Frame {
    double width = 0;
    double tight = 1; // see tightened()
    double timeWidth = 19;
    double latestWidth = 0; // 0 = steps have one time
    double whoWidth = 0;    // 0 = nobody is named
    double countWidth = 8.8;
    double tallyWidth = 24;
    int firstRow = 0; // place of the block's first row in the whole list
};

Frame frameFor(const std::vector<papers::Block>& blocks, double width, double tight);

/// All rows of a column. A Columns block inside is laid out left part first (the flow handles the others).
std::vector<Row> rowsOf(const std::vector<papers::Block>& blocks, double width, double tight);

/// The shapes of a drawing with its top left at `at`; its labels are left to who sets them.
void drawShapes(Row& row, const papers::Drawing& drawing, QPointF at);

void addRows(std::vector<Row>& out, const papers::SectionHead& head, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::TimedTask& task, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::BusyBand& band, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::CountRow& row, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::TickRow& row, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::FigureLine& line, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Paragraph& paragraph, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::KeyRow& key, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::HourStrip& strip, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::PatchHead& patch, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::TallyRow& row, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Table& table, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Cautions& cautions, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::WriteHere& write, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Spacer& spacer, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Drawing& drawing, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::SlotRow& slot, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::PieceGroupRow& group, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::TimeHead& head, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::DropCard& card, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::BoardHead& head, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::BoardItem& item, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Lanes& lanes, const Frame& frame);
void addRows(std::vector<Row>& out, const papers::Columns& columns, const Frame& frame);

} // namespace withy::paper
