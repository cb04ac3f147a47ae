// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;

/// A head's note stands at its right when there is room, else below it.
struct HeadText {
    std::vector<TextLine> title;
    std::vector<TextLine> note;
    bool beside = true;
};

HeadText setHead(const std::string& title, const papers::Text& note, const Type& type, double width) {
    HeadText head;
    const Spans words = spansOf(note, types::kDetail, types::kDetailStrong);
    const double noteWidth = widthOf(words);
    head.beside = noteWidth <= width * 0.6;
    head.note = breakLines(words, width, 2);
    head.title = breakLines(spansOf(title, type),
                            head.beside ? width - noteWidth - (noteWidth > 0 ? 4 : 0) : width, 3);
    return head;
}

/// Draws title and note above a thick rule; returns where the rule's lower edge is.
double drawHead(Pen& pen, const HeadText& head, double x, double right, double top, const Type& type) {
    double y = top + pen.lines(x, top, head.title, type.lineMm);
    if (head.beside && !head.note.empty()) {
        const bool alone = head.title.empty();
        const TextLine& last = alone ? head.note.front() : head.title.back();
        const double base = alone
                                ? baselineIn(top, type.lineMm, last)
                                : baselineIn(y - stepOf(last, type.lineMm), stepOf(last, type.lineMm), last);
        pen.at(right, base, head.note.front(), Align::Right);
        if (alone) y += type.lineMm;
    } else {
        y += pen.lines(x, y, head.note, types::kDetail.lineMm);
    }
    y += 0.5 + kThick;
    pen.across(y - kThick / 2, x, right, kThick);
    return y;
}

double boxRow(Row& row, const std::vector<TextLine>& lines, double right, const TextLine& note) {
    constexpr double kBox = 5.5;
    Pen pen(row);
    const double height = std::max(kBox, heightOf(lines, types::kText.lineMm));
    pen.box({0, row.height, kBox, kBox}, Fill::White, kBoxLine);
    pen.lines(7.8, row.height - 0.05, lines, types::kText.lineMm);
    pen.in(right, row.height - 0.05, types::kText.lineMm, note, Align::Right);
    return height;
}

Row rowOfLines(const std::vector<TextLine>& lines, std::size_t from, std::size_t end, double lineMm) {
    Row row;
    Pen pen(row);
    row.height = pen.lines(
        0, 0,
        {lines.begin() + static_cast<std::ptrdiff_t>(from), lines.begin() + static_cast<std::ptrdiff_t>(end)},
        lineMm);
    return row;
}

} // namespace

void addRows(std::vector<Row>& out, const papers::SectionHead& head, const Frame& frame) {
    const HeadText text = setHead(head.title, head.note, types::kHead, frame.width);
    Row row;
    Pen pen(row);
    row.before = tightenedAir(4.6, frame.tight);
    row.height = drawHead(pen, text, 0, frame.width, 0, types::kHead) + 0.7;
    row.keepWithNext = true;
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::PatchHead& patch, const Frame& frame) {
    constexpr double kRadius = 4.57;
    constexpr double kIndent = 14.2;
    const HeadText text = setHead(patch.name, patch.note, types::kPatch, frame.width - kIndent);
    Row row;
    Pen pen(row);
    row.before = tightenedAir(3.4, frame.tight);
    row.height = drawHead(pen, text, kIndent, frame.width, 1.4, types::kPatch);
    pen.disc({kWalkX, kWalkTop}, kRadius);
    Type figure = types::kTime;
    if (widthOf(spansOf(patch.number, figure)) > 1.6 * kRadius) figure.points = kFloorPoints;
    pen.in(kWalkX, kWalkTop - kRadius, 2 * kRadius, oneLine(spansOf(patch.number, figure), 1.7 * kRadius),
           Align::Centre, Ink::White);
    row.height = std::max(row.height, kWalkTop + kRadius);
    row.keepWithNext = true;
    row.walk = Row::Walk::Start;
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::CountRow& row, const Frame& frame) {
    const QString gap = row.word.empty() || row.rest.empty() ? QString() : QStringLiteral(" ");
    Spans spans = spansOf(row.word, types::kTextStrong);
    for (Span& span : spansOf(row.rest, types::kText))
        spans.push_back({gap + span.text, span.type});
    const auto lines = breakLines(spans, frame.width - frame.countWidth, 4);
    const TextLine count = oneLine(spansOf(row.count, types::kTime), frame.countWidth - 1);
    const double content = std::max(types::kTime.lineMm, heightOf(lines, types::kText.lineMm) + 0.8);
    const Pads pads = tightened({0.75, 0.6 + kHairline}, content, frame.tight);

    Row made;
    Pen pen(made);
    const TextLine usual = row.count.empty() ? oneLine({{QStringLiteral("0"), types::kTime}}, 20) : count;
    const double base = baselineIn(pads.top, types::kTime.lineMm, usual);
    if (!lines.empty()) {
        const double first = baselineIn(0, stepOf(lines[0], types::kText.lineMm), lines[0]);
        pen.lines(frame.countWidth, base - first, lines, types::kText.lineMm);
    }
    pen.at(0, base, count);
    made.height = pads.top + content + pads.bottom;
    pen.across(made.height - kHairline / 2, 0, frame.width);
    out.push_back(std::move(made));
}

void addRows(std::vector<Row>& out, const papers::TickRow& tick, const Frame& frame) {
    const TextLine note = oneLine(spansOf(tick.right, types::kText, types::kTextStrong), frame.width * 0.5);
    const double room = frame.width - 7.8 - (note.width > 0 ? note.width + 3 : 0);
    const auto lines = breakLines(spansOf(tick.text, types::kText, types::kTextStrong), room, 8);
    const double content = std::max(5.7, heightOf(lines, types::kText.lineMm));
    const Pads pads = tightened({0.6, tick.ruled ? 0.95 + kHairline : 0.6}, content, frame.tight);

    Row row;
    row.height = pads.top;
    row.height += boxRow(row, lines, frame.width, note) + pads.bottom;
    if (tick.ruled) Pen(row).across(row.height - kHairline / 2, 0, frame.width);
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::FigureLine& line, const Frame& frame) {
    Spans spans = spansOf(line.figure, types::kTime);
    for (Span& span : spansOf(line.rest, types::kText, types::kTextStrong))
        spans.push_back({span.text, span.type});
    const std::size_t figures = line.figure.empty() ? 0 : 1;
    if (figures == 1 && spans.size() > 1) spans[1].text.prepend(QLatin1Char(' '));
    const auto lines = breakLines(spans, frame.width, 4);
    if (lines.empty()) return;
    Row row;
    row.height = 0.3 + Pen(row).lines(0, 0.3, lines, 6.5);
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::Paragraph& paragraph, const Frame& frame) {
    const Type& normal = paragraph.small ? types::kDetail : types::kText;
    const Type& bold = paragraph.small ? types::kDetailStrong : types::kTextStrong;
    const auto lines = breakLines(spansOf(paragraph.text, normal, bold), frame.width, 1000);
    const std::size_t count = lines.size();
    for (std::size_t from = 0; from < count;) {
        std::size_t end = from + 1; // never one line alone on a page
        if (from == 0) end = 2;
        if (count - from <= 3) end = count;
        end = std::min(end, count);
        if (count - end == 1) end = count;
        out.push_back(rowOfLines(lines, from, end, normal.lineMm));
        if (from == 0) out.back().before = 1;
        from = end;
    }
    if (count > 0) out.back().height += 0.8;
}

void addRows(std::vector<Row>& out, const papers::Spacer& spacer, const Frame&) {
    Row row;
    row.before = between(0, spacer.mm, 200);
    out.push_back(std::move(row));
}

} // namespace withy::paper
