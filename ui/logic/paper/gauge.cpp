// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/gauge.h"

#include <algorithm>

namespace withy::paper {

namespace {

constexpr double kGaugeIn = 8.2;    // from the right edge; most printers reach it
constexpr double kGaugeLeast = 14;  // printers leave so much blank at foot and head
constexpr double kGaugeApart = 1.5; // between the words of two marks

void addUpwards(Row& row, double x, double y, TextLine line) {
    if (!line.spans.empty()) row.ops.push_back(TextOp{{x, y}, std::move(line), Ink::Black, true});
}

} // namespace

Row gaugeRow(const papers::CuttingGauge& gauge, const QSizeF& sheet) {
    Row row;
    Pen pen(row);
    const double x = sheet.width() - kGaugeIn;
    const double foot = sheet.height();
    const double most = foot - kGaugeLeast;
    row.ops.push_back(LineOp{{x, foot - most}, {x, foot - kGaugeLeast}, kHairline});
    for (int i = 1; i * gauge.tick <= most; ++i) {
        if (i * gauge.tick < kGaugeLeast) continue;
        pen.across(foot - i * gauge.tick, x, x + (i % gauge.ticksToLong == 0 ? 2.4 : 1.4));
    }
    auto marks = gauge.marks;
    std::stable_sort(marks.begin(), marks.end(), [](const auto& a, const auto& b) { return a.mm > b.mm; });
    double free = 0; // the lowest point, from the top, that words take
    for (const auto& mark : marks) {
        if (mark.mm < kGaugeLeast || mark.mm > most) continue;
        const double y = foot - mark.mm;
        pen.across(y, x - 1.4, x + 4.6, kThick);
        TextLine words = oneLine(spansOf(mark.label, types::kDetailStrong), 40);
        const double from = std::max(y + kGaugeApart, free) + words.width;
        free = from + kGaugeApart;
        if (from < foot - kGaugeLeast) addUpwards(row, x + 4.4, from, std::move(words));
    }
    TextLine words =
        oneLine(spansOf(gauge.words, types::kDetail), std::max(20.0, foot - kGaugeLeast - free - 2));
    if (free + words.width + 2 < foot - kGaugeLeast)
        addUpwards(row, x + 4.4, foot - kGaugeLeast - 1, std::move(words));
    return row;
}

} // namespace withy::paper
