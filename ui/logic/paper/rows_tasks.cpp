// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;

constexpr double kTick = 7;
constexpr double kTickColumn = 9.9;
constexpr int kMostPieces = 400;
constexpr double kBeside = 3;

/// The small boxes under a step: fours, eight to a row, one a piece.
struct Ticks {
    static constexpr double kBox = 4.6;
    static constexpr double kStep = 5.6;
    static constexpr double kFourGap = 1.0;
    static constexpr int kPerRow = 8;

    static void draw(Pen& pen, double x, double y, int count) {
        for (int i = 0; i < count; ++i) {
            const int column = i % kPerRow;
            pen.box({x + column * kStep + (column / 4) * kFourGap, y + (i / kPerRow) * kStep, kBox, kBox},
                    Fill::White, 0.37);
        }
    }

    static double height(int count) { return ((count + kPerRow - 1) / kPerRow) * kStep; }
};

struct TaskText {
    std::vector<TextLine> title;
    std::vector<TextLine> detail;
    TextLine beside; // or the detail in the title's line
    double height = 0;
};

TaskText setTask(const papers::TimedTask& task, double width) {
    TaskText text;
    const auto title = spansOf(task.title, types::kTask);
    const auto detail = spansOf(task.detail, types::kDetail, types::kDetailStrong);
    if (task.beside && widthOf(title) + kBeside + widthOf(detail) < width) {
        text.title = {oneLine(title, width)};
        text.beside = oneLine(detail, width);
        text.height = std::max(types::kTime.lineMm, 0.34 + types::kTask.lineMm);
        return text;
    }
    text.title = breakLines(spansOf(task.title, types::kTask), width, 3);
    text.detail = breakLines(spansOf(task.detail, types::kDetail, types::kDetailStrong), width, 12);
    text.height = std::max(types::kTime.lineMm, 0.34 + heightOf(text.title, types::kTask.lineMm) +
                                                    heightOf(text.detail, types::kDetail.lineMm));
    return text;
}

void drawWho(Pen& pen, const papers::TimedTask& task, const Frame& frame, double top) {
    if (task.who.empty()) return;
    const QRectF box(frame.width - frame.whoWidth, top + 0.5, frame.whoWidth, 6.1);
    pen.box(box, Fill::White, 0.34, 0.68);
    pen.in(box.center().x(), box.top(), box.height(),
           oneLine(spansOf(task.who, types::kDetail), box.width() - 1.6), Align::Centre);
}

/// The boxes that do not fit under the step itself go into rows of their own, so that a page may turn.
void addMoreTicks(std::vector<Row>& out, int count, double x, const Frame& frame) {
    const int shownBoxes = std::min(count, kMostPieces);
    constexpr int kRun = 2 * Ticks::kPerRow;
    for (int from = 0; from < shownBoxes; from += kRun) {
        Row row;
        Pen pen(row);
        const int now = std::min(kRun, shownBoxes - from);
        Ticks::draw(pen, x, 0, now);
        row.height = Ticks::height(now);
        out.push_back(std::move(row));
    }
    Row& end = out.back();
    Pen pen(end);
    if (count > kMostPieces) {
        const QString more =
            QCoreApplication::translate("paper", "and %n more", nullptr, count - kMostPieces);
        pen.in(x, end.height, types::kDetail.lineMm, oneLine({{more, types::kDetail}}, frame.width - x));
        end.height += types::kDetail.lineMm;
    }
    end.height += 1.2;
    pen.across(end.height - kHairline / 2, 0, frame.width);
}

} // namespace

void addRows(std::vector<Row>& out, const papers::TimedTask& task, const Frame& frame) {
    constexpr int kInStep = 6 * Ticks::kPerRow; // boxes that stay with their step
    const double tickX = frame.timeWidth + frame.latestWidth;
    const double x = tickX + kTickColumn;
    const double right = frame.whoWidth > 0 ? frame.width - frame.whoWidth - 1.8 : frame.width;
    const TaskText text = setTask(task, right - x);
    const int boxes = std::clamp(task.pieces, 0, kInStep);
    const double ticks = boxes > 0 ? 1.1 + Ticks::height(boxes) : 0;
    const double content = text.height + ticks;
    const Pads pads = tightened({1.5, 1.5 + kHairline}, content, frame.tight);
    const bool runsOn = task.pieces > kInStep;

    Row row;
    Pen pen(row);
    pen.in(0, pads.top, types::kTime.lineMm,
           oneLine(spansOf(task.time, types::kTime), frame.timeWidth - 1.5));
    if (frame.latestWidth > 0)
        pen.in(frame.timeWidth, pads.top, types::kTime.lineMm,
               oneLine(spansOf(task.latest, types::kLatest), frame.latestWidth));
    pen.box({tickX, pads.top + 0.1, kTick, kTick}, Fill::White, kThick);
    double y = pads.top + 0.34;
    if (!text.beside.spans.empty())
        pen.at(x + text.title.front().width + kBeside, baselineIn(y, types::kTask.lineMm, text.title.front()),
               text.beside);
    y += pen.lines(x, y, text.title, types::kTask.lineMm);
    y += pen.lines(x, y, text.detail, types::kDetail.lineMm);
    drawWho(pen, task, frame, pads.top);
    Ticks::draw(pen, x, pads.top + text.height + 1.1, boxes);
    row.height = pads.top + content + (runsOn ? 0 : pads.bottom);
    if (!runsOn) pen.across(row.height - kHairline / 2, 0, frame.width);
    row.keepWithNext = runsOn;
    out.push_back(std::move(row));
    if (runsOn) addMoreTicks(out, task.pieces - kInStep, x, frame);
}

void addRows(std::vector<Row>& out, const papers::BusyBand& band, const Frame& frame) {
    constexpr double kIn = 2.7;
    constexpr double kPad = 2;
    Spans spans = spansOf(band.hours, types::kTextStrong);
    const QString gap = spans.empty() || band.label.empty() ? QString() : QStringLiteral(" ");
    for (Span& span : spansOf(band.label, types::kText))
        spans.push_back({gap + span.text, span.type});
    const auto lines = breakLines(spans, frame.width - 2 * (kIn + kPad), 3);
    const double words = std::max(types::kText.lineMm, heightOf(lines, types::kText.lineMm));
    const Pads pads = tightened({0.9, 0.9 + kHairline}, words, frame.tight);
    double widest = 0;
    for (const TextLine& line : lines)
        widest = std::max(widest, line.width);

    Row row;
    Pen pen(row);
    row.height = words + pads.top + pads.bottom;
    pen.box({0, 0, frame.width, row.height - kHairline}, Fill::Hatch, 0, 0);
    if (!lines.empty()) pen.box({kIn, 0, widest + 2 * kPad, row.height - kHairline}, Fill::White, 0, 0);
    pen.lines(kIn + kPad, pads.top, lines, types::kText.lineMm);
    pen.across(row.height - kHairline / 2, 0, frame.width);
    out.push_back(std::move(row));
}

} // namespace withy::paper
