// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

/// The days of a week side by side.
namespace withy::paper {
namespace {

using papers::Align;
using Kind = papers::BoardItem::Kind;

constexpr double kEdge = 1.3; // the heavy left edge of a step
constexpr double kBesideTitle = 1.8;
constexpr double kMark = 4.6; // the small box of a booking's letter
constexpr Type kDayTitle{Face::Sans, QFont::Black, 15, 6.4};

struct SetBoardItem {
    TextLine time;
    std::vector<TextLine> title;
    std::vector<TextLine> detail;
    TextLine beside; // or the detail at the end of the title's last line

    SetBoardItem(const papers::BoardItem& item, double width) {
        const double first = item.mark.empty() ? width : width - kMark - 1;
        time = oneLine(spansOf(item.time, types::kDetailStrong), first);
        const auto& type = item.kind == Kind::note ? types::kDetail : types::kDetailStrong;
        title = breakLines(spansOf(item.title, type), width, 4);
        const auto words = spansOf(item.detail, types::kDetail);
        if (!title.empty() && title.back().width + kBesideTitle + widthOf(words) < width)
            beside = oneLine(words, width);
        else
            detail = breakLines(words, width, 3);
    }

    [[nodiscard]] bool timed(const papers::BoardItem& item) const {
        return !item.time.empty() || !item.mark.empty();
    }
};

} // namespace

void addRows(std::vector<Row>& out, const papers::BoardHead& head, const Frame& frame) {
    Row row;
    Pen pen(row);
    pen.in(0, 0, kDayTitle.lineMm, oneLine(spansOf(head.title, kDayTitle), frame.width));
    pen.in(0, kDayTitle.lineMm, types::kDetail.lineMm,
           oneLine(spansOf(head.note, head.strong ? types::kDetailStrong : types::kDetail), frame.width));
    row.height = kDayTitle.lineMm + types::kDetail.lineMm + 1 + kThick;
    pen.across(row.height - kThick / 2, 0, frame.width, kThick);
    row.keepWithNext = true;
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::BoardItem& item, const Frame& frame) {
    const bool fixed = item.kind == Kind::fixed;
    const bool bare = item.kind == Kind::note;
    const double left = bare ? 0 : kEdge + 1.3;
    const double inner = frame.width - left - (bare ? 0 : 1.0);
    const SetBoardItem set(item, inner);
    const double line = types::kDetail.lineMm;
    const bool timed = set.timed(item);
    const double content = (timed ? line : 0) + heightOf(set.title, line) + heightOf(set.detail, line);
    const Pads pads = tightened({0.6, 0.7}, content, frame.tight);
    Row row;
    Pen pen(row);
    row.before = tightenedAir(1.1, frame.tight);
    row.height = pads.top + content + pads.bottom;
    const QRectF box(0, 0, frame.width, row.height);
    const Ink ink = fixed ? Ink::White : Ink::Black;
    if (fixed) pen.box(box, Fill::Black, 0, 0.5);
    if (item.kind == Kind::busy) {
        pen.box(box, Fill::Hatch, 0.2, 0.5);
        double widest = set.time.width;
        for (const auto& words : set.title)
            widest = std::max(widest, words.width);
        pen.box({left - 1, pads.top, std::min(widest + 2, frame.width - left), content}, Fill::White, 0, 0);
    }
    if (item.kind == Kind::step || item.kind == Kind::round) {
        pen.box(box, Fill::White, item.kind == Kind::round ? kThick : kHairline, 0.5);
        pen.box({0, 0, kEdge, row.height}, Fill::Black, 0, 0);
    }
    double y = pads.top;
    if (timed) {
        pen.in(left, y, line, set.time, Align::Left, ink);
        if (!item.mark.empty()) {
            const QRectF mark(frame.width - kMark - 0.8, y + (line - kMark) / 2, kMark, kMark);
            pen.box(mark, Fill::White, 0.34, 0.4);
            pen.in(mark.center().x(), mark.top(), kMark,
                   oneLine(spansOf(item.mark, types::kDetailStrong), kMark), Align::Centre);
        }
        y += line;
    }
    for (const auto* lines : {&set.title, &set.detail})
        for (const auto& words : *lines) {
            const double step = stepOf(words, line);
            pen.in(left, y, step, words, Align::Left, ink);
            if (!set.beside.spans.empty() && &words == &set.title.back())
                pen.at(left + words.width + kBesideTitle, baselineIn(y, step, words), set.beside, Align::Left,
                       ink);
            y += step;
        }
    out.push_back(std::move(row));
}

/// Laid out one after the other here; the flow places them side by side.
void addRows(std::vector<Row>& out, const papers::Lanes& lanes, const Frame& frame) {
    for (const auto& lane : lanes.lanes) {
        const int first = static_cast<int>(out.size());
        for (Row& row : rowsOf(lane, frame.width, frame.tight)) {
            for (int& place : row.repeats)
                place += first;
            out.push_back(std::move(row));
        }
    }
}

} // namespace withy::paper
