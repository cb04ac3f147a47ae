// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;

constexpr double kSign = 5.2;

std::vector<TextLine> setItem(const papers::Cautions::Item& item, double width, const Type& normal,
                              const Type& bold) {
    Spans spans = spansOf(item.what, bold);
    const QString gap = spans.empty() || item.toDo.empty() ? QString() : QStringLiteral(" ");
    for (Span& span : spansOf(item.toDo, normal))
        spans.push_back({gap + span.text, span.type});
    return breakLines(spans, width, 8);
}

/// One caution by itself: triangle, bold what, then what to do.
void addPlain(std::vector<Row>& out, const std::vector<TextLine>& lines) {
    Row row;
    Pen pen(row);
    const double words = heightOf(lines, types::kText.lineMm);
    pen.sign(Sign::Caution, {0, 0.4, kSign, kSign});
    pen.lines(7.8, 0.2, lines, types::kText.lineMm);
    row.before = 1.2;
    row.height = std::max(kSign + 0.8, words + 0.4);
    out.push_back(std::move(row));
}

void addUnframed(std::vector<Row>& out, const papers::Cautions& cautions, const Frame& frame) {
    const std::size_t first = out.size();
    if (!cautions.title.empty()) {
        Row head;
        head.height = Pen(head).lines(0, 0, breakLines(spansOf(cautions.title, types::kTask), frame.width, 2),
                                      types::kTask.lineMm);
        head.keepWithNext = true;
        out.push_back(std::move(head));
    }
    for (const auto& item : cautions.items)
        addPlain(out, setItem(item, frame.width - 7.8, types::kText, types::kTextStrong));
    if (out.size() > first) out[first].before = 3.4;
}

double framedHeight(const std::vector<std::vector<TextLine>>& items, double lineMm) {
    double height = 0;
    for (const auto& lines : items)
        height += heightOf(lines, lineMm) + 0.4;
    return height;
}

} // namespace

void addRows(std::vector<Row>& out, const papers::Cautions& cautions, const Frame& frame) {
    constexpr double kIn = 2.8;
    constexpr double kTallest = 110; // a higher frame could not stand on a part-filled page
    if (cautions.items.empty()) return;
    const bool titled = !cautions.title.empty();
    const double x = titled ? kIn : kIn + 8.4;
    std::vector<std::vector<TextLine>> items;
    if (cautions.items.size() <= 40)
        for (const auto& item : cautions.items)
            items.push_back(setItem(item, frame.width - x - kIn, types::kDetail, types::kDetailStrong));
    const double words = framedHeight(items, types::kDetail.lineMm);
    if (cautions.items.size() < 3 || items.empty() || words > kTallest)
        return addUnframed(out, cautions, frame);

    Row row;
    Pen pen(row);
    const double head = titled ? types::kTask.lineMm + 1 : 0;
    const Pads pads = tightened({2, 1.8}, head + words, frame.tight);
    row.before = tightenedAir(4.6, frame.tight);
    row.height = pads.top + head + words + pads.bottom;
    pen.box({0, 0, frame.width, row.height}, Fill::White, kThick, 0.68);
    const double signTop = titled ? pads.top + 0.5 : (row.height - kSign) / 2;
    pen.sign(Sign::Caution, {kIn, signTop, kSign, kSign});
    if (titled)
        pen.in(kIn + kSign + 2, pads.top, types::kTask.lineMm,
               oneLine(spansOf(cautions.title, types::kTask), frame.width - 2 * kIn - kSign - 2));
    double y = pads.top + head;
    for (const auto& lines : items)
        y += pen.lines(x, y, lines, types::kDetail.lineMm) + 0.4;
    out.push_back(std::move(row));
}

namespace {

struct WriteBox {
    QRectF rect; // from the top of its line of boxes
    TextLine label;
};

using WriteLine = std::vector<WriteBox>;

constexpr double kBetween = 4;
constexpr double kBoxHeight = 10;

/// Shares what a line of boxes leaves over among those that ask for no width of their own.
void stretch(WriteLine& line, const std::vector<bool>& open, double width) {
    double used = kBetween * static_cast<double>(line.size() - 1);
    int shares = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        used += line[i].rect.width();
        shares += open[i] ? 1 : 0;
    }
    const double more = shares > 0 ? std::max(0.0, width - used) / shares : 0;
    double x = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        QRectF& rect = line[i].rect;
        rect.moveLeft(x);
        if (open[i]) rect.setWidth(rect.width() + more);
        x = rect.right() + kBetween;
    }
}

std::vector<WriteLine> setBoxes(const std::vector<papers::WriteHere::Box>& boxes, double width) {
    std::vector<WriteLine> lines;
    std::vector<bool> open;
    double used = 0;
    for (const auto& box : boxes) {
        const TextLine label = oneLine(spansOf(box.label, types::kDetail), width);
        const double least = std::max({label.width, between(0, box.widthMm, width), std::min(18.0, width)});
        if (!lines.empty() && used + kBetween + least > width) {
            stretch(lines.back(), open, width);
            open.clear();
            lines.emplace_back();
            used = 0;
        }
        if (lines.empty()) lines.emplace_back();
        lines.back().push_back({QRectF(0, 0, least, kBoxHeight), label});
        open.push_back(!(box.widthMm > 0));
        used += least + (lines.back().size() > 1 ? kBetween : 0);
    }
    if (!lines.empty()) stretch(lines.back(), open, width);
    return lines;
}

} // namespace

void addRows(std::vector<Row>& out, const papers::WriteHere& write, const Frame& frame) {
    constexpr double kTitleColumn = 42;
    constexpr double kLine = types::kDetail.lineMm + 0.6 + kBoxHeight;
    const bool beside = frame.width > 120 && !write.title.empty();
    const auto title =
        breakLines(spansOf(write.title, types::kHead), beside ? kTitleColumn - 4 : frame.width, 3);
    const double x = beside ? kTitleColumn : 0;
    const std::size_t first = out.size();
    if (!beside && !title.empty()) {
        Row head;
        head.height = Pen(head).lines(0, 0, title, types::kHead.lineMm) + 0.8;
        head.keepWithNext = true;
        out.push_back(std::move(head));
    }
    const auto lines = setBoxes(write.boxes, frame.width - x);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        Row row;
        Pen pen(row);
        row.before = i == 0 ? 0 : 1.6;
        row.height = kLine;
        if (beside && i == 0) {
            const double high = heightOf(title, types::kHead.lineMm);
            row.height = std::max(row.height, high);
            pen.lines(0, row.height - std::max(high, (kBoxHeight + high) / 2), title, types::kHead.lineMm);
        }
        const double top = row.height - kBoxHeight;
        for (const WriteBox& box : lines[i]) {
            pen.in(x + box.rect.left(), top - 0.6 - types::kDetail.lineMm, types::kDetail.lineMm, box.label);
            pen.box(box.rect.translated(x, top));
        }
        out.push_back(std::move(row));
    }
    if (out.size() > first) out[first].before = 5;
}

} // namespace withy::paper
