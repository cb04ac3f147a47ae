// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/run_sheet_strip.h"

#include "ui/logic/format.h"
#include "ui/logic/paper/text_lines.h"

#include <algorithm>

namespace withy::ui {

namespace {

using papers::Drawing;
using Point = Drawing::Point;

constexpr double hoursTop = 2.6; // middle of the hours' words
constexpr double axis = 5.6;
constexpr double boxTop = 7.2;
constexpr double boxHigh = 7.2;
constexpr double guestsTop = 15.4;
constexpr double guestsHigh = 4.6;
constexpr int mostHours = 12;

std::vector<Point> rectangle(double left, double top, double right, double bottom) {
    return {{Point::Kind::move, left, top},
            {Point::Kind::line, right, top},
            {Point::Kind::line, right, bottom},
            {Point::Kind::line, left, bottom},
            {Point::Kind::line, left, top}};
}

double widthOfWords(const std::string& words) {
    return paper::widthOf(paper::spansOf(words, paper::types::kDetailStrong));
}

/// From time to millimetres.
struct Scale {
    std::int64_t first = 0; ///< minutes since 1970, a whole hour
    std::int64_t last = 0;
    double width = 0;

    [[nodiscard]] double at(std::int64_t minute) const {
        const double share = static_cast<double>(minute - first) / static_cast<double>(last - first);
        return std::clamp(share, 0.0, 1.0) * width;
    }

    [[nodiscard]] double at(LocalTime t) const { return at(t.minutesSinceEpoch()); }
};

Scale scaleOf(const std::vector<StripBox>& boxes, double width) {
    Scale scale;
    scale.width = width;
    scale.first = boxes.front().from.minutesSinceEpoch();
    scale.last = scale.first;
    for (const auto& box : boxes) {
        scale.first = std::min(scale.first, box.from.minutesSinceEpoch());
        // An hour of the guests is enough to see when they come.
        const bool guests = box.look == StripBox::Look::guests;
        const auto end = guests ? std::min(box.to, box.from + Minutes(60)) : box.to;
        scale.last = std::max(scale.last, end.minutesSinceEpoch());
    }
    scale.first -= scale.first % 60;
    scale.last = std::min((scale.last + 59) / 60 * 60, scale.first + mostHours * 60);
    scale.last = std::max(scale.last, scale.first + 120);
    return scale;
}

void drawHours(const Scale& scale, Drawing& out) {
    out.shapes.push_back(
        {{{Point::Kind::move, 0, axis}, {Point::Kind::line, scale.width, axis}}, Drawing::Fill::none, 0.25});
    for (std::int64_t m = scale.first; m <= scale.last; m += 60) {
        const double x = scale.at(m);
        out.shapes.push_back(
            {{{Point::Kind::move, x, axis - 1}, {Point::Kind::line, x, axis}}, Drawing::Fill::none, 0.25});
        const double share = m == scale.first ? 0 : m == scale.last ? 1 : 0.5;
        out.labels.push_back({x, hoursTop,
                              utf8(QStringLiteral("%1").arg(m / 60 % 24, 2, 10, QLatin1Char('0'))), share,
                              false});
    }
}

void drawBox(const Scale& scale, const StripBox& box, double& free, Drawing& out) {
    const double left = scale.at(box.from);
    const double right = std::max(scale.at(box.to), left + 0.8);
    const double middle = boxTop + boxHigh / 2;
    if (box.look == StripBox::Look::road) {
        out.shapes.push_back({rectangle(left, middle - 0.7, right, middle + 0.7), Drawing::Fill::black, 0});
        return;
    }
    out.shapes.push_back({rectangle(left, boxTop, right, boxTop + boxHigh), Drawing::Fill::white, 0.5});
    const double words = widthOfWords(box.words);
    if (left < free) return; // the words before it reach over it
    if (words + 1.6 <= right - left) {
        out.labels.push_back({left + 0.9, middle, box.words, 0, true});
        free = right;
    }
}

void drawGuests(const Scale& scale, const StripBox& box, Drawing& out) {
    const double left = scale.at(box.from);
    const double right = scale.at(box.to);
    if (right - left < 0.8) return;
    out.shapes.push_back(
        {rectangle(left, guestsTop, right, guestsTop + guestsHigh), Drawing::Fill::black, 0});
    const double words = widthOfWords(box.words);
    if (left > words + 2)
        out.labels.push_back({left - 1.4, guestsTop + guestsHigh / 2, box.words, 1, true});
    else if (scale.width - right > words + 2)
        out.labels.push_back({right + 1.4, guestsTop + guestsHigh / 2, box.words, 0, true});
}

} // namespace

papers::Drawing roadStrip(const std::vector<StripBox>& boxes, double width) {
    Drawing out;
    out.width = width;
    if (boxes.empty()) return out;
    out.height = guestsTop + guestsHigh + 1.2;
    const Scale scale = scaleOf(boxes, width);
    drawHours(scale, out);
    double free = 0;
    for (const auto& box : boxes)
        if (box.look == StripBox::Look::road) drawBox(scale, box, free, out);
    for (const auto& box : boxes)
        if (box.look == StripBox::Look::work) drawBox(scale, box, free, out);
    for (const auto& box : boxes)
        if (box.look == StripBox::Look::guests) drawGuests(scale, box, out);
    return out;
}

} // namespace withy::ui
