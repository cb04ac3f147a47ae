// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

namespace withy::paper {
namespace {

void widen(double& width, double least, double most) {
    width = std::min(std::max(width, least), most);
}

struct Measurer {
    Frame& frame;

    void operator()(const papers::TimedTask& task) const {
        widen(frame.timeWidth, widthOf(spansOf(task.time, types::kTime)) + 2.6, frame.width * 0.35);
        if (!task.latest.empty()) latest(task.latest);
        if (!task.who.empty())
            widen(frame.whoWidth, std::max(14.2, widthOf(spansOf(task.who, types::kDetail)) + 4),
                  frame.width * 0.26);
    }

    void operator()(const papers::DropCard& card) const {
        widen(frame.timeWidth, widthOf(spansOf(card.time, types::kTime)) + 2.6, frame.width * 0.2);
        if (!card.latest.empty()) latest(card.latest);
    }

    void operator()(const papers::CountRow& row) const {
        widen(frame.countWidth, widthOf(spansOf(row.count, types::kTime)) + 2.6, frame.width * 0.4);
    }

    void operator()(const papers::TallyRow& row) const {
        widen(frame.tallyWidth, widthOf(spansOf(row.count, types::kCount)) + 4, frame.width * 0.3);
    }

    template <class Other>
    void operator()(const Other&) const {}

private:
    void latest(const std::string& time) const {
        widen(frame.latestWidth, widthOf(spansOf(time, types::kLatest)) + 4.6, frame.width * 0.2);
    }
};

/// Heads that come again on the next page over what belongs to them.
bool isHead(const papers::Block& block) {
    return std::holds_alternative<papers::PatchHead>(block.content) ||
           std::holds_alternative<papers::BoardHead>(block.content);
}

bool isUnderHead(const papers::Block& block) {
    return std::holds_alternative<papers::TallyRow>(block.content) ||
           std::holds_alternative<papers::BoardItem>(block.content);
}

} // namespace

Frame frameFor(const std::vector<papers::Block>& blocks, double width, double tight) {
    Frame frame;
    frame.width = width;
    frame.tight = tight;
    for (const papers::Block& block : blocks)
        std::visit(Measurer{frame}, block.content);
    return frame;
}

std::vector<Row> rowsOf(const std::vector<papers::Block>& blocks, double width, double tight) {
    std::vector<Row> rows;
    Frame frame = frameFor(blocks, width, tight);
    int patch = -1;
    for (const papers::Block& block : blocks) {
        frame.firstRow = static_cast<int>(rows.size());
        std::visit([&](const auto& content) { addRows(rows, content, frame); }, block.content);
        const bool added = static_cast<int>(rows.size()) > frame.firstRow;
        if (added && block.keepWithNext) rows.back().keepWithNext = true;
        if (isHead(block)) patch = frame.firstRow;
        if (isUnderHead(block) && patch >= 0)
            for (std::size_t i = frame.firstRow; i < rows.size(); ++i)
                rows[i].repeats = {patch};
    }
    return rows;
}

void addRows(std::vector<Row>& out, const papers::Columns& columns, const Frame& frame) {
    for (const auto* side : {&columns.left, &columns.right}) {
        const int first = static_cast<int>(out.size());
        for (Row& row : rowsOf(*side, frame.width, frame.tight)) {
            for (int& place : row.repeats)
                place += first;
            out.push_back(std::move(row));
        }
    }
}

} // namespace withy::paper
