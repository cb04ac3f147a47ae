// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/strip/strip_painter.h"

#include "ui/common/cover_mark.h"
#include "ui/logic/models/strip_words.h"
#include "ui/paint/spacing.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <utility>

namespace withy::ui {

namespace {

QFont captionFont(bool strong) {
    QFont font = typeFont(TypeRole::caption);
    font.setBold(strong);
    return font;
}

/// Draws one picture.
class Drawing {
public:
    Drawing(const StripPicture& picture, const Palette& palette, QPainter& painter)
        : f_(picture.figures)
        , g_(picture.geometry)
        , bands_(picture.bands)
        , lookedAt_(picture.lookedAt)
        , design_(picture.design)
        , palette_(palette)
        , p_(painter) {}

    void grounds() {
        p_.setFont(captionFont(false));
        months();
        weeks();
    }

    void bands(double ratio) {
        const auto size = (QSizeF(g_.plot.width(), g_.plot.bottom()) * ratio).toSize();
        const BloomFrame frame{size, g_.span.from, g_.dayWidth * ratio, g_.stemHeight * ratio, 0.7 * ratio};
        QImage image;
        if (lookedAt_ || !design_.plants.empty()) {
            auto back = bands_;
            for (std::size_t i = 0; i < back.size(); ++i) {
                if (lookedAt_ ? i == *lookedAt_ : design_.plants.contains(f_.bands[i].plant)) continue;
                back[i].fill = steppedBack(palette_, back[i].fill);
                back[i].edge = steppedBack(palette_, back[i].edge);
            }
            image = paintBloomBands(back, frame);
        } else {
            image = paintBloomBands(bands_, frame);
        }
        image.setDevicePixelRatio(ratio);
        p_.drawImage(QPointF(g_.plot.left(), 0), image);
        if (lookedAt_) outline(*lookedAt_);
    }

    void axis() {
        p_.setPen(QPen(palette_.of(Role::edge), hairline));
        const double base = std::floor(g_.plot.bottom()) + 0.5;
        p_.drawLine(QPointF(g_.plot.left(), base), QPointF(g_.plot.right(), base));
    }

    /// Along the foot, from the first to the last day on which all slots of the design bloom.
    void bracket() {
        p_.setPen(QPen(palette_.of(Role::green), focusRing, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        p_.setBrush(Qt::NoBrush);
        const double foot = g_.plot.bottom() - focusRing / 2;
        const double top = foot - grid(g_.slim ? 3 : 5);
        for (const auto& [from, to] : design_.spans) {
            const double left = std::max(g_.x(from), g_.plot.left());
            const double right = std::min(g_.x(to + 1), g_.plot.right());
            if (left >= right) continue;
            p_.drawPolyline(QPolygonF{{left, top}, {left, foot}, {right, foot}, {right, top}});
        }
    }

    void doubt() {
        if (!f_.today || f_.bands.empty() || lookedAt_ || g_.slim) return;
        line(&StripLevels::cautious, QPen(palette_.of(Role::ink), 1.3), {5 / 1.3, 3 / 1.3});
        line(&StripLevels::hopeful, QPen(palette_.of(Role::ink3), 1.1), {1.5 / 1.1, 3 / 1.1});
    }

    void bandNames() {
        if (g_.slim) return;
        p_.setFont(captionFont(true));
        for (std::size_t i = 0; i < f_.bands.size(); ++i)
            if (lookedAt_ ? i == *lookedAt_
                          : design_.plants.empty() || design_.plants.contains(f_.bands[i].plant))
                nameBand(i);
    }

    void marks() {
        for (const auto& m : g_.marks) {
            QColor stem = palette_.of(Role::ink);
            stem.setAlphaF(m.chosen ? 1 : 0.65F);
            p_.setPen(QPen(stem, m.chosen ? 1.4 : 0.9));
            const double elbow = m.jar.bottom() + grid(1.5);
            p_.drawLine(QPointF(m.jar.center().x(), m.jar.bottom()), QPointF(m.x, elbow));
            int before = -1; // one line for all that are on a day
            for (const auto pin : m.pins) {
                if (std::exchange(before, f_.pins[pin].day) == f_.pins[pin].day) continue;
                const double at = g_.noon(f_.pins[pin].day);
                p_.drawLine(QPointF(at, elbow), QPointF(at, g_.plot.bottom()));
            }
        }
        for (const auto& m : g_.marks)
            jar(m);
        if (g_.chosen.words.isEmpty()) return;
        p_.setFont(captionFont(true));
        p_.setPen(palette_.of(Role::ink));
        p_.drawText(g_.chosen.box, Qt::AlignVCenter | g_.chosen.side, g_.chosen.words);
    }

    void today() {
        if (!f_.today || !g_.isInView(g_.noon(*f_.today))) return;
        const double at = std::floor(g_.noon(*f_.today)) + 0.5;
        p_.setPen(QPen(palette_.of(Role::osier), 1.6));
        p_.drawLine(QPointF(at, g_.slim ? 0 : grid(2.5)), QPointF(at, g_.plot.bottom()));
        p_.setFont(captionFont(true));
        p_.drawText(g_.today.box, Qt::AlignVCenter | g_.today.side, g_.today.words);
    }

private:
    [[nodiscard]] int firstInView() const {
        return std::max(0, static_cast<int>(std::floor(g_.span.from)) - 1);
    }

    [[nodiscard]] int lastInView() const {
        return std::min(f_.days - 1, static_cast<int>(std::ceil(g_.span.from + g_.span.days)) + 1);
    }

    void months() {
        const QFontMetricsF metrics(p_.font());
        const double weekWidth = 7 * g_.dayWidth;
        const bool byWeek = weekWidth >= metrics.horizontalAdvance(QStringLiteral("30 Mmm")) + grid(4);
        const bool brief =
            28 * g_.dayWidth < metrics.horizontalAdvance(QStringLiteral("September")) + grid(4);
        double free = 0; // labels keep clear of each other
        for (int d = firstInView(); d <= lastInView(); ++d) {
            const Day day = f_.dayAt(d);
            const bool begins = day.dayOfMonth() == 1;
            const double at = g_.x(d);
            if (begins && g_.isInView(at)) {
                p_.setPen(QPen(palette_.of(Role::line), hairline));
                p_.drawLine(QPointF(at, g_.plot.top() - grid(2)), QPointF(at, g_.plot.bottom()));
            }
            const bool atLeft = !byWeek && at <= g_.plot.left() && g_.x(d + 1) > g_.plot.left();
            if (g_.slim || !(byWeek ? day.weekday() == 1 : begins || atLeft)) continue;
            const QString words = byWeek ? dayOfMonthWords(day) : monthWords(day, brief);
            const double left = std::max(at, g_.plot.left()) + grid(1.5);
            const double wide = metrics.horizontalAdvance(words) + 2;
            // A month of which little is left gives way to the next.
            const double ends = byWeek ? g_.plot.right() : g_.x(d + daysLeft(day));
            if (left < free || left + wide > std::min(ends, g_.plot.right())) continue;
            free = left + wide + grid(2);
            p_.setPen(palette_.of(Role::ink3));
            p_.drawText(QRectF(left, g_.plot.bottom() + grid(1), wide, grid(5)),
                        Qt::AlignLeft | Qt::AlignVCenter, words);
        }
    }

    static int daysLeft(Day day) {
        int n = 1;
        while ((day + n).month() == day.month())
            ++n;
        return n;
    }

    void weeks() {
        p_.setPen(QPen(palette_.of(Role::edge), 0.8));
        for (int d = firstInView(); d <= lastInView(); ++d) {
            if (f_.dayAt(d).weekday() != 1 || !g_.isInView(g_.x(d))) continue;
            p_.drawLine(QPointF(g_.x(d), g_.plot.bottom()),
                        QPointF(g_.x(d), g_.plot.bottom() + (g_.slim ? grid(0.75) : grid(1))));
        }
    }

    void line(std::int64_t StripLevels::*level, QPen pen, const QList<qreal>& dashes) {
        QPolygonF points;
        for (int d = *f_.today; d < f_.days; ++d)
            points << QPointF(g_.noon(d),
                              g_.y(static_cast<double>(f_.sums[static_cast<std::size_t>(d)].*level)));
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern(dashes);
        p_.setPen(pen);
        p_.save();
        p_.setClipRect(
            QRectF(g_.plot.left(), g_.plot.top() - grid(1), g_.plot.width(), g_.plot.height() + grid(1)));
        p_.drawPolyline(points);
        p_.restore();
    }

    struct Edges {
        double top, foot;
    };

    /// Stems up to the top of each band, by day; a straight line between noons is one for sums too.
    [[nodiscard]] const std::vector<std::vector<float>>& tops() const {
        if (!tops_.empty()) return tops_;
        std::vector<float> sum(static_cast<std::size_t>(f_.days), 0.0F);
        tops_.push_back(sum);
        for (const auto& b : f_.bands) {
            for (std::size_t d = 0; d < sum.size(); ++d)
                sum[d] += static_cast<float>(b.days[d].likely);
            tops_.push_back(sum);
        }
        return tops_;
    }

    /// Of a band at a pixel.
    [[nodiscard]] Edges edgesAt(std::size_t band, double x) const {
        const double day = g_.dayOf(x);
        return {g_.y(betweenNoons(tops()[band + 1], day)), g_.y(betweenNoons(tops()[band], day))};
    }

    void outline(std::size_t band) {
        QPolygonF up, down;
        for (double x = g_.plot.left(); x <= g_.plot.right(); x += 1) {
            const auto e = edgesAt(band, x);
            if (e.foot - e.top < 0.05) continue;
            up << QPointF(x, e.top);
            down.prepend(QPointF(x, e.foot));
        }
        p_.setPen(QPen(palette_.of(Role::ink), 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        p_.setBrush(Qt::NoBrush);
        p_.drawPolygon(up + down);
    }

    [[nodiscard]] bool isClearOfStems(double from, double to) const {
        const auto meets = [&](double x) { return x >= from && x <= to; };
        if (f_.today && meets(g_.noon(*f_.today))) return false;
        return std::none_of(g_.marks.begin(), g_.marks.end(), [&](const auto& m) {
            return std::any_of(m.pins.begin(), m.pins.end(),
                               [&](auto pin) { return meets(g_.noon(f_.pins[pin].day)); });
        });
    }

    /// In the thickest place where the name stays clear of the band's edges, the ends, today, the stems of
    /// the pins and the other names.
    void nameBand(std::size_t i) {
        const QFontMetricsF metrics(p_.font());
        const QString& words = f_.bands[i].kind;
        const double half = metrics.horizontalAdvance(words) / 2 + grid(1);
        const double high = metrics.height() * 0.92; // letters with their tails, and air
        if (static_cast<double>(f_.bands[i].days[static_cast<std::size_t>(f_.bands[i].peak)].likely) *
                g_.stemHeight <
            high)
            return;
        QRectF best;
        for (double x = g_.plot.left() + half + grid(3); x < g_.plot.right() - half - grid(3); x += grid(1)) {
            double top = 0, foot = g_.plot.bottom();
            for (double at = x - half; at <= x + half; at += half / 4) {
                const auto e = edgesAt(i, at);
                top = std::max(top, e.top);
                foot = std::min(foot, e.foot);
            }
            const QRectF box(x - half, top, 2 * half, foot - top);
            if (box.height() < std::max(high, best.height()) || !isClearOfStems(box.left(), box.right()))
                continue;
            const QRectF words2(box.left(), box.center().y() - high / 2, box.width(), high);
            if (std::none_of(names_.begin(), names_.end(),
                             [&](const auto& n) { return n.intersects(words2); }))
                best = box;
        }
        if (best.isEmpty()) return;
        names_.push_back({best.left(), best.center().y() - high / 2, best.width(), high});
        p_.setPen(Palette::textOn(bands_[i].fill));
        p_.drawText(QRectF(best.left(), best.center().y() - grid(4), best.width(), grid(8)), Qt::AlignCenter,
                    words);
    }

    void jar(const StripMark& m) {
        // The mark of several says what most wants the grower.
        const auto worst = std::max_element(m.pins.begin(), m.pins.end(), [&](auto a, auto b) {
            return urgency(coverMark(f_.pins[a].standing, f_.pins[a].cover)) <
                   urgency(coverMark(f_.pins[b].standing, f_.pins[b].cover));
        });
        const auto& pin = f_.pins[m.chosen ? m.pins.front() : *worst];
        if (m.pins.size() > 1) {
            p_.setPen(QPen(palette_.of(Role::ink), 1.2));
            const double wide = m.jar.height() * 0.3;
            const double y = m.jar.bottom() + grid(0.75);
            p_.drawLine(QPointF(m.x - wide, y), QPointF(m.x + wide, y));
        }
        paintJar(p_, m.jar, coverMark(pin.standing, pin.cover), palette_);
    }

    const StripFigures& f_;
    const StripGeometry& g_;
    const std::vector<BloomBand>& bands_;
    std::optional<std::size_t> lookedAt_;
    const StripDesign& design_;
    const Palette& palette_;
    QPainter& p_;
    std::vector<QRectF> names_;
    mutable std::vector<std::vector<float>> tops_; ///< made when first asked for
};

} // namespace

std::vector<BloomBand> bloomBands(const StripFigures& figures, const Palette& palette) {
    std::vector<BloomBand> bands;
    for (const auto& b : figures.bands) {
        BloomBand band;
        for (const auto& day : b.days)
            band.thickness.push_back(static_cast<float>(day.likely));
        band.fill = bandFill(palette, b.colour);
        band.edge = bandEdge(palette, band.fill);
        bands.push_back(std::move(band));
    }
    return bands;
}

QPixmap StripPicture::paint(QSize size, double ratio, const Palette& palette) const {
    QPixmap pixmap(size * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(palette.of(Role::paper));
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    Drawing drawing(*this, palette, painter);
    drawing.grounds();
    drawing.bands(ratio);
    drawing.axis();
    drawing.bracket();
    drawing.bandNames();
    drawing.doubt();
    drawing.marks();
    drawing.today();
    return pixmap;
}

} // namespace withy::ui
