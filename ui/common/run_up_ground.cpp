// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/run_up_brush.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/week_steps.h"
#include "ui/paint/spacing.h"

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

class GroundPainting : BoardBrush {
public:
    GroundPainting(QPainter& p, const Board& board, const RunUpLayout& layout, BoardStyle style,
                   const Palette& palette)
        : BoardBrush(p, board, layout, style, palette) {
        for (const auto& day : board.days) {
            for (const double c : day.heat) {
                coldest_ = std::min(coldest_, c);
                warmest_ = std::max(warmest_, c);
            }
        }
        warmest_ = std::max(warmest_, board.heatLimit + 1);
        coldest_ = std::min(coldest_, board.heatLimit - 8);
    }

    void paint() {
        for (std::size_t d = 0; d < board_.days.size(); ++d)
            paintGround(d);
    }

private:
    void paintGround(std::size_t d) {
        const auto& day = board_.days[d];
        const auto& laid = layout_.days()[d];
        paintSky(day, laid);
        paintHours(d, laid);
        paintHeat(day, laid);
        paintLanes(day, laid);
        paintHead(day, laid);
        if (week_) paintHands(day, laid);
    }

    /// The part of a day between two hours, behind heat and lanes.
    void band(const LaidDay& laid, double from, double to, const QColor& colour) {
        const double left = std::max(layout_.left(), layout_.xOfHour(from));
        const double right = std::min(layout_.right(), layout_.xOfHour(to));
        if (left >= right) return;
        p_.fillRect(QRectF(left, laid.heat.top(), right - left, laid.all.bottom() - laid.heat.top()), colour);
    }

    void paintSky(const BoardDay& day, const LaidDay& laid) {
        if (week_ && day.isToday)
            p_.fillRect(QRectF(0, laid.all.top(), layout_.left() - grid(2), laid.all.height()),
                        of(Role::wash));
        if (day.darkAllDay) return band(laid, 0, 24, of(Role::night));
        if (!day.dawn || !day.dusk) return;
        band(laid, 0, *day.dawn, of(Role::night));
        band(laid, *day.dusk, 24, of(Role::night));
        if (day.sunrise) band(laid, *day.dawn, *day.sunrise, of(Role::dusk));
        if (day.sunset) band(laid, *day.sunset, *day.dusk, of(Role::dusk));
    }

    void paintHours(std::size_t d, const LaidDay& laid) {
        const bool scale = !week_ || d == 0;
        const double top = week_ ? laid.all.top() - grid(6) : laid.scale.top();
        const double perHour = layout_.xOfHour(1) - layout_.xOfHour(0);
        const int every = perHour < grid(6) ? 2 : 1;
        for (int h = board_.firstHour; h <= board_.lastHour; ++h) {
            const double x = layout_.xOfHour(h);
            p_.setPen(QPen(of(Role::line), hairline));
            p_.drawLine(QPointF(x, laid.heat.top()), QPointF(x, laid.all.bottom()));
            if (!scale || (h - board_.firstHour) % every != 0) continue;
            const QString hour = QStringLiteral("%1").arg(h, 2, 10, QLatin1Char('0'));
            QRectF at(x - grid(4), top, grid(8), grid(5));
            Qt::Alignment align = Qt::AlignCenter;
            if (h == board_.lastHour && !week_) {
                at = QRectF(x - grid(8), top, grid(8), grid(5));
                align = Qt::AlignRight | Qt::AlignVCenter;
            }
            words(at, hour, TypeRole::caption, of(Role::ink2), align);
        }
    }

    [[nodiscard]] double heatY(const LaidDay& laid, double celsius) const {
        const double inset = week_ ? 1 : grid(2);
        const double room = laid.heat.height() - 2 * inset;
        return laid.heat.bottom() - inset - room * (celsius - coldest_) / std::max(1.0, warmest_ - coldest_);
    }

    void paintHeat(const BoardDay& day, const LaidDay& laid) {
        if (day.heat.empty()) return;
        QPainterPath line;
        const auto point = [&](std::size_t q) {
            return QPointF(layout_.xOfHour(static_cast<double>(q) / 4), heatY(laid, day.heat[q]));
        };
        line.moveTo(point(0));
        for (std::size_t q = 1; q < day.heat.size(); ++q)
            line.lineTo(point(q));
        const double limit = heatY(laid, board_.heatLimit);
        QPainterPath above = line;
        above.lineTo(layout_.xOfHour(24), laid.heat.bottom() + 1000);
        above.lineTo(layout_.xOfHour(0), laid.heat.bottom() + 1000);
        above.closeSubpath();
        const QRectF hot(layout_.left(), laid.heat.top() - 2, layout_.right() - layout_.left(),
                         limit - laid.heat.top() + 2);
        const bool over = *std::max_element(day.heat.begin(), day.heat.end()) > board_.heatLimit;
        p_.save();
        p_.setRenderHint(QPainter::Antialiasing);
        p_.setClipRect(QRectF(layout_.left(), laid.heat.top() - 2, layout_.right() - layout_.left(),
                              laid.heat.height() + 4));
        if (over) hatch(above.intersected(pathOf(hot)), of(Role::osier), 5);
        if (!week_ || over) {
            p_.setPen(QPen(of(Role::osier), hairline, Qt::DashLine));
            p_.drawLine(QPointF(layout_.left(), limit), QPointF(layout_.right(), limit));
        }
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen(of(week_ ? Role::ink3 : Role::ink), week_ ? 1 : 1.5));
        p_.drawPath(line);
        p_.restore();
        if (!week_) nameHeat(day, laid, limit);
    }

    void nameHeat(const BoardDay& day, const LaidDay& laid, double limit) {
        const QRectF names(0, 0, layout_.left() - grid(2), grid(5));
        words(names.translated(0, limit - grid(2.5)), temperatureWords(board_.heatLimit, board_.units),
              TypeRole::caption, of(Role::osier), Qt::AlignRight | Qt::AlignVCenter);
        const auto peak = std::max_element(day.heat.begin(), day.heat.end());
        const double x = layout_.xOfHour(static_cast<double>(peak - day.heat.begin()) / 4);
        if (x < layout_.left() || layout_.right() < x) return;
        p_.setBrush(of(Role::ink));
        p_.setPen(Qt::NoPen);
        p_.drawEllipse(QPointF(x, heatY(laid, *peak)), 2.5, 2.5);
        words(QRectF(x - grid(8), heatY(laid, *peak) - grid(5), grid(16), grid(4.5)),
              temperatureWords(*peak, board_.units, 0), TypeRole::caption, of(Role::ink), Qt::AlignCenter);
    }

    void paintLanes(const BoardDay& day, const LaidDay& laid) {
        for (std::size_t l = 0; l < day.lanes.size(); ++l) {
            const auto& lane = day.lanes[l];
            const auto& rect = laid.lanes[l];
            if (!week_) {
                p_.setPen(QPen(of(Role::edge), hairline));
                p_.drawLine(QPointF(0, rect.top()), QPointF(layout_.right(), rect.top()));
            }
            const QColor ink = of(lane.nobody ? Role::osier : week_ ? Role::ink2 : Role::ink);
            if (week_) {
                words(QRectF(laid.names.left(), rect.top(), laid.names.width(), grid(8)), lane.name,
                      TypeRole::caption, ink, Qt::AlignRight | Qt::AlignVCenter);
            } else {
                const double line = grid(5);
                const double top = rect.center().y() - (lane.hours.isEmpty() ? line / 2 : line);
                words(QRectF(0, top, layout_.left() - grid(2), line), lane.name, TypeRole::strong, ink);
                words(QRectF(0, top + line, layout_.left() - grid(2), line), lane.hours, TypeRole::caption,
                      of(Role::ink2));
            }
            if (lane.worker.helper) paintThere(day, lane, rect);
        }
        p_.setPen(QPen(of(Role::edge), hairline));
        const double bottom = std::floor(laid.all.bottom()) - 0.5;
        p_.drawLine(QPointF(0, bottom), QPointF(laid.all.right(), bottom));
    }

    /// A line under the hours a helper is there.
    void paintThere(const BoardDay& day, const BoardLane& lane, const QRectF& rect) {
        p_.setPen(QPen(of(Role::ink), 1.5));
        for (const auto& span : lane.there) {
            const double from = layout_.xOf(day.day, span.from), to = layout_.xOf(day.day, span.to);
            p_.drawLine(QPointF(from, rect.bottom() - 1), QPointF(to, rect.bottom() - 1));
        }
    }

    void paintHead(const BoardDay& day, const LaidDay& laid) {
        if (week_) {
            const QColor ink = of(day.isToday ? Role::osier : Role::ink);
            const QRectF first(0, laid.head.top() + grid(1.5), laid.head.width(), grid(6));
            words(first.adjusted(grid(1), 0, 0, 0), day.brief, TypeRole::strong, ink);
            words(first.adjusted(grid(1), grid(5), 0, grid(5)), day.rest, TypeRole::caption, of(Role::ink2));
            return;
        }
        words(laid.head, day.title, TypeRole::answer, of(day.isToday ? Role::osier : Role::ink));
        const double after = QFontMetricsF(typeFont(TypeRole::answer)).horizontalAdvance(day.title) + grid(4);
        words(laid.head.adjusted(after, 1, 0, 1), day.rest, TypeRole::text, of(Role::ink2));
        if (day.over.isEmpty()) return;
        const double rest = QFontMetricsF(typeFont(TypeRole::text)).horizontalAdvance(day.rest) + grid(4);
        overMark(QPointF(after + rest, laid.head.center().y()));
        words(laid.head.adjusted(after + rest + grid(5), 1, 0, 1), day.over, TypeRole::strong,
              of(Role::osier));
    }

    /// A jar that runs over: too much, in shape as well as in words.
    void overMark(QPointF at) {
        p_.save();
        p_.setRenderHint(QPainter::Antialiasing);
        p_.setPen(QPen(of(Role::osier), jarLine));
        p_.setBrush(Qt::NoBrush);
        const QRectF jar(at.x(), at.y() - grid(1), grid(3), grid(3));
        p_.drawRect(jar);
        p_.drawLine(QPointF(jar.left() - 2, jar.top() - 4), QPointF(jar.right() + 2, jar.top() - 4));
        hatch(pathOf(jar), of(Role::osier), 4);
        p_.restore();
    }

    /// Hours of work against hours there; what is too much sticks out beyond the post.
    void paintHands(const BoardDay& day, const LaidDay& laid) {
        if (day.work.value <= 0) return;
        const double full =
            std::max<double>(10 * 60, static_cast<double>(std::max(day.work, day.room).value));
        const double width = laid.hands.width();
        const QRectF bar(laid.hands.left(), laid.hands.top() + grid(3), width, grid(3.5));
        const double work = width * static_cast<double>(day.work.value) / full;
        const double room = width * static_cast<double>(day.room.value) / full;
        const bool over = day.room < day.work || !day.over.isEmpty();
        const QColor ink = of(over ? Role::osier : Role::ink2);
        const QRectF done(bar.left(), bar.top(), work, bar.height());
        if (over)
            hatch(pathOf(done), ink, 5);
        else
            p_.fillRect(done, ink);
        p_.setPen(QPen(ink, hairline));
        p_.setBrush(Qt::NoBrush);
        p_.drawRect(done);
        p_.setPen(QPen(of(Role::ink), 2));
        p_.drawLine(QPointF(bar.left() + room, bar.top() - 3), QPointF(bar.left() + room, bar.bottom() + 3));
        const QString said = day.over.isEmpty() ? workWords(day.work) : day.over;
        words(QRectF(bar.left(), bar.bottom() + grid(1), laid.hands.width() + grid(2), grid(5)), said,
              TypeRole::caption, over ? of(Role::osier) : of(Role::ink2));
    }

    double coldest_ = 100;
    double warmest_ = -100;
};

} // namespace

void paintRunUpGround(QPainter& painter, const Board& board, const RunUpLayout& layout, BoardStyle style,
                      const Palette& palette) {
    GroundPainting(painter, board, layout, style, palette).paint();
}

} // namespace withy::ui
