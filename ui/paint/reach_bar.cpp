// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/reach_bar.h"

#include "ui/paint/spacing.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr double usualPost = 0.55; ///< of the width
constexpr double leastPost = 0.25; ///< so that up to four times what is needed is in view

void hatch(QPainter& p, const QRectF& at, const QColor& ink) {
    QPainterPath clip;
    clip.addRect(at);
    p.save();
    p.setClipPath(clip, Qt::IntersectClip);
    p.setPen(QPen(ink, hairline));
    const double step = std::max(3.0, at.height() / 3);
    for (double x = at.left() - at.height(); x < at.right(); x += step)
        p.drawLine(QPointF(x, at.bottom()), QPointF(x + at.height(), at.top()));
    p.restore();
}

class Bar {
public:
    Bar(QPainter& p, const QRectF& box, const ReachBar& bar, const Palette& palette)
        : p_(p)
        , box_(box.adjusted(1, 1, -2, -1))
        , bar_(bar)
        , palette_(palette)
        , scale_(std::max(1.0, reachScale(bar))) {}

    void paint(const QColor& fill, const QColor& swap) {
        const auto own = bar_.swapped > 0 && swap.isValid()
                             ? std::max<std::int64_t>(0, bar_.likely - bar_.swapped)
                             : bar_.likely;
        if (bar_.known) {
            covered(0, own, fill);
            covered(own, bar_.likely, swap);
        }
        part(bar_.known ? bar_.likely : 0, bar_.need, [&](const QRectF& at) {
            p_.setPen(QPen(palette_.of(bar_.known ? Role::osier : Role::edge), 1.3, Qt::DashLine));
            p_.setBrush(Qt::NoBrush);
            p_.drawRect(at);
        });
        if (bar_.known) whisker();
        post();
    }

private:
    [[nodiscard]] double x(double stems) const {
        return box_.left() + box_.width() * std::clamp(stems / scale_, 0.0, 1.0);
    }

    /// Solid as far as it is sure, hatched beyond.
    void covered(std::int64_t from, std::int64_t to, const QColor& fill) {
        const QColor edge = palette_.bloomEdge(fill);
        part(from, std::min(to, bar_.cautious), [&](const QRectF& at) {
            p_.setPen(QPen(edge, hairline));
            p_.setBrush(fill);
            p_.drawRect(at);
        });
        part(std::max(from, bar_.cautious), to, [&](const QRectF& at) {
            hatch(p_, at, edge);
            p_.setPen(QPen(edge, hairline));
            p_.setBrush(Qt::NoBrush);
            p_.drawRect(at);
        });
    }

    template <class Draw>
    void part(std::int64_t from, std::int64_t to, Draw draw) const {
        if (to <= from) return;
        const double high = box_.height() * 0.56;
        draw(QRectF(x(static_cast<double>(from)), box_.center().y() - high / 2,
                    x(static_cast<double>(to)) - x(static_cast<double>(from)), high));
    }

    void whisker() const {
        const double y = box_.center().y();
        const double from = x(static_cast<double>(bar_.thereCautious));
        const double dot = x(static_cast<double>(bar_.thereLikely));
        const double to = x(static_cast<double>(bar_.thereHopeful.value_or(bar_.thereLikely)));
        const double end = box_.height() * 0.16;
        p_.setPen(QPen(palette_.of(Role::ink), 1.3));
        if (from >= box_.right()) return beyond(y, end); // more than the scale shows, even cautiously
        p_.drawLine(QPointF(from, y), QPointF(std::max(dot, to), y));
        for (const double at : {from, std::max(dot, to)})
            p_.drawLine(QPointF(at, y - end), QPointF(at, y + end));
        p_.setPen(Qt::NoPen);
        p_.setBrush(palette_.of(Role::ink));
        p_.drawEllipse(QPointF(dot, y), 2.4, 2.4);
    }

    /// Two small hooks to the right: there is plenty.
    void beyond(double y, double end) const {
        for (const double x : {box_.right() - 2 * end, box_.right() - end * 0.6})
            p_.drawPolyline(QPolygonF{{x - end, y - end}, {x, y}, {x - end, y + end}});
    }

    void post() const {
        p_.setPen(QPen(palette_.of(Role::ink), 2));
        const double at = x(static_cast<double>(bar_.need));
        p_.drawLine(QPointF(at, box_.top()), QPointF(at, box_.bottom()));
    }

    QPainter& p_;
    QRectF box_;
    const ReachBar& bar_;
    const Palette& palette_;
    double scale_;
};

} // namespace

double reachScale(const ReachBar& bar) {
    const auto there = std::max({bar.thereCautious, bar.thereLikely, bar.thereHopeful.value_or(0), bar.need});
    const auto need = static_cast<double>(bar.need);
    const double most = need / leastPost;
    if (static_cast<double>(bar.thereCautious) >= most) return need / usualPost; // plenty: only two hooks
    return std::min(static_cast<double>(there), most);
}

void paintReachBar(QPainter& painter, const QRectF& box, const ReachBar& bar, const QColor& fill,
                   const Palette& palette, const QColor& swap) {
    if (box.width() < 4 || box.height() < 4) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Bar(painter, box, bar, palette).paint(fill, swap);
    painter.restore();
}

} // namespace withy::ui
