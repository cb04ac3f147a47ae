// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/labels.h"

#include "ui/logic/paper/rows.h"

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;
using papers::BucketLabel;

constexpr int kAcross = 2;
constexpr int kDown = 4;
constexpr double kOuter = kMargin; // what a printer may leave blank at the sheet's edge
constexpr double kInner = 6.2;     // from a cut to the words
constexpr Type kLabelName{Face::Serif, QFont::Bold, 14.5, 6.4};
constexpr Type kLabelDay{Face::Sans, QFont::Black, 19, 7.2};
constexpr Type kLabelCount{Face::Sans, QFont::Black, 34, 11.6};
constexpr Type kLabelPlant{Face::Sans, QFont::Bold, 17, 7};
constexpr Type kBand{Face::Sans, QFont::Bold, 14, 6.2};
constexpr Type kVessel{Face::Sans, QFont::Black, 18, 7.4};

/// Dashes of 2.4 mm, 1.6 mm apart.
void dashed(Page& page, QPointF from, QPointF to) {
    constexpr double kDash = 2.4;
    constexpr double kStep = 4;
    const QPointF along = to - from;
    const double length = std::abs(along.x()) + std::abs(along.y()); // straight across or down
    for (double at = 0; at < length; at += kStep) {
        const QPointF a = from + along * (at / length);
        const QPointF b = from + along * (std::min(at + kDash, length) / length);
        page.ops.emplace_back(LineOp{a, b, 0.25});
    }
}

void holeMark(Page& page, QPointF centre) {
    constexpr double kRadius = 2.4;
    constexpr int kParts = 10;
    QPainterPath circle;
    const QRectF box(centre.x() - kRadius, centre.y() - kRadius, 2 * kRadius, 2 * kRadius);
    for (int i = 0; i < kParts; ++i) {
        const double from = i * 360.0 / kParts;
        circle.arcMoveTo(box, from);
        circle.arcTo(box, from, 360.0 / kParts * 0.6);
    }
    page.ops.emplace_back(PathOp{circle, 0.25, Fill::None});
    page.ops.emplace_back(LineOp{centre - QPointF(0.8, 0), centre + QPointF(0.8, 0), 0.25});
    page.ops.emplace_back(LineOp{centre - QPointF(0, 0.8), centre + QPointF(0, 0.8), 0.25});
}

/// One label from its own top left, `width` of words.
class LabelSetter {
public:
    LabelSetter(const BucketLabel& label, double width) : label_(label), width_(width) {}

    Row row() {
        double y = head();
        y = stems(y + 1.2);
        y = band(y + 1.6);
        y = pencil(y + 2);
        foot(y + 0.8);
        return std::move(row_);
    }

private:
    double head() {
        const TextLine day = oneLine(spansOf(label_.day, kLabelDay), width_ * 0.5);
        pen_.in(width_, 0, kLabelDay.lineMm, day, Align::Right);
        pen_.in(0, 0, kLabelDay.lineMm, oneLine(spansOf(label_.name, kLabelName), width_ - day.width - 3));
        pen_.across(kLabelDay.lineMm + 0.6, 0, width_, kThick);
        return kLabelDay.lineMm + 0.6;
    }

    double stems(double y) {
        const TextLine count = oneLine(spansOf(label_.count, kLabelCount), width_ * 0.4);
        const double x = std::max(count.width + 3, 22.0);
        const double words = width_ - x - (label_.flower.shapes.empty() ? 0 : label_.flower.width + 2);
        drawShapes(row_, label_.flower, {width_ - label_.flower.width, y + 0.6});
        pen_.in(0, y, kLabelCount.lineMm, count);
        pen_.in(0, y + kLabelCount.lineMm - 0.3, types::kDetail.lineMm,
                oneLine(spansOf(label_.unit, types::kDetail), x - 1));
        pen_.in(x, y + 0.4, kLabelPlant.lineMm, oneLine(spansOf(label_.plant, kLabelPlant), words));
        double line = y + 0.4 + kLabelPlant.lineMm;
        if (!label_.variety.empty()) {
            pen_.in(x, line, types::kText.lineMm, oneLine(spansOf(label_.variety, types::kText), words));
            line += types::kText.lineMm;
        }
        if (label_.caution) {
            pen_.sign(Sign::Caution, {x, line + 0.3, 4.4, 4.4});
            pen_.in(x + 5.8, line, types::kDetail.lineMm,
                    oneLine(spansOf(label_.cautionWords, types::kDetailStrong), width_ - x - 5.8));
        }
        return y + std::max(kLabelCount.lineMm + types::kDetail.lineMm - 0.3,
                            0.4 + kLabelPlant.lineMm + types::kText.lineMm + types::kDetail.lineMm);
    }

    double band(double y) {
        using enum BucketLabel::Band;
        constexpr double kHigh = 8.6;
        const QRectF box(0, y, width_, kHigh);
        TextLine words = oneLine(spansOf(label_.bandWords, kBand), width_ - 6);
        const Ink ink = label_.band == first ? Ink::White : Ink::Black;
        if (label_.band == first) pen_.box(box, Fill::Black, 0, 0.5);
        if (label_.band == hold) {
            pen_.box(box, Fill::Hatch, kThick, 0.5);
            pen_.box({1.6, y + 1, words.width + 2.8, kHigh - 2}, Fill::White, 0, 0);
        }
        if (label_.band == apart) {
            pen_.box(box, Fill::White, kThick, 0.5);
            pen_.box(box.adjusted(1, 1, -1, -1), Fill::White, kThick, 0.3);
        }
        pen_.in(3, y, kHigh, std::move(words), Align::Left, ink);
        return y + kHigh;
    }

    double pencil(double y) {
        constexpr double kHigh = 10;
        constexpr double kBox = 25;
        const auto label = breakLines(spansOf(label_.cutLabel, types::kDetail), 16, 2);
        pen_.lines(0, y + (kHigh - heightOf(label, types::kDetail.lineMm)) / 2, label, types::kDetail.lineMm);
        pen_.box({16.5, y, kBox, kHigh}, Fill::White, 0.37);
        const double right = label_.vessel.empty() ? width_ : width_ - kHigh - 2;
        const double x = 16.5 + kBox + 2.2;
        pen_.in(x, y, kHigh / 2, oneLine(spansOf(label_.waterLabel, types::kDetail), right - x));
        pen_.in(x, y + kHigh / 2, kHigh / 2, oneLine(spansOf(label_.water, types::kDetailStrong), right - x));
        if (!label_.vessel.empty()) {
            const QRectF square(width_ - kHigh, y, kHigh, kHigh);
            const bool own = label_.band == BucketLabel::Band::apart;
            pen_.box(square, own ? Fill::White : Fill::Black, own ? kThick : 0, 0.4);
            pen_.in(square.center().x(), y, kHigh, oneLine(spansOf(label_.vessel, kVessel), kHigh - 0.6),
                    Align::Centre, own ? Ink::Black : Ink::White);
        }
        return y + kHigh;
    }

    void foot(double y) {
        const TextLine number = oneLine(spansOf(label_.number, types::kDetail), width_ * 0.5);
        pen_.in(width_, y, types::kDetail.lineMm, number, Align::Right);
        pen_.in(0, y, types::kDetail.lineMm,
                oneLine(spansOf(label_.round, types::kDetail), width_ - number.width - 2));
    }

    const BucketLabel& label_;
    double width_;
    Row row_;
    Pen pen_{row_};
};

void cuts(Page& page, const QSizeF& sheet) {
    dashed(page, {sheet.width() / 2, 0}, {sheet.width() / 2, sheet.height()});
    for (int i = 1; i < kDown; ++i) {
        const double y = sheet.height() * i / kDown;
        dashed(page, {0, y}, {sheet.width(), y});
    }
}

} // namespace

std::vector<Page> labelPages(const std::vector<BucketLabel>& labels, PaperSize paper) {
    constexpr double kHole = 5.6;      // from the label's top to the middle of the hole
    constexpr double kHoleRoom = 10.2; // and to the words
    const QSizeF sheet = sizeOf(paper);
    const QSizeF each(sheet.width() / kAcross, sheet.height() / kDown);
    const double wordsWidth = each.width() - kOuter - kInner;
    std::vector<Page> pages;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const int place = static_cast<int>(i % (kAcross * kDown));
        if (place == 0) {
            pages.emplace_back();
            cuts(pages.back(), sheet);
        }
        const int column = place % kAcross;
        const QPointF corner(column * each.width(), (place / kAcross) * each.height());
        holeMark(pages.back(), corner + QPointF(each.width() / 2, kHole));
        const QPointF at = corner + QPointF(column == 0 ? kOuter : kInner, kHoleRoom);
        for (const Op& op : LabelSetter(labels[i], wordsWidth).row().ops)
            pages.back().ops.push_back(moved(op, at));
        pages.back().rows.push_back(
            {QRectF(at, QSizeF(wordsWidth, each.height() - kHoleRoom)), static_cast<int>(i), false});
    }
    return pages;
}

} // namespace withy::paper
