// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/elevation.h"

#include "core/base/conversion.h"
#include "ui/paint/spacing.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct ElevationSay {
    Q_DECLARE_TR_FUNCTIONS(Elevation)
};

QFont captionFont() {
    return typeFont(TypeRole::caption);
}

/// The first of 1, 2, 5, 10 ... millimetres, or tenths of an inch, that is at least `least` pixels.
double roundStep(double scale, double least, Units units) {
    const double unit = units.imperial() ? millimetresInInch / 10 : 1;
    for (double power = unit; power < 1e6; power *= 10) {
        for (const double step : {1.0, 2.0, 5.0}) {
            if (step * power * scale >= least) return step * power;
        }
    }
    return 1e6;
}

/// Under a label, so that lines behind it do not cross its letters.
void label(QPainter& painter, const QRectF& box, int align, const QString& words, const QColor& ink,
           const QColor& under) {
    const QFontMetricsF metrics(captionFont());
    QRectF tight = metrics.boundingRect(box, align, words);
    painter.fillRect(tight.adjusted(-2, 0, 2, 0), under);
    painter.setPen(ink);
    painter.drawText(box, align, words);
}

} // namespace

Elevation::Elevation(const PieceDrawing& piece, const QRectF& boundsMm, const QRect& room,
                     const Palette& palette, Units units)
    : piece_(piece), mm_(boundsMm), room_(room), palette_(palette), units_(units) {
    const QRectF inner = QRectF(room).adjusted(grid(32), grid(9), -grid(27), -grid(4));
    scale_ = fittingScale(mm_, inner.size());
    foot_ = {inner.center().x() - mm_.center().x() * scale_, inner.bottom() - mm_.bottom() * scale_};
    if (hasTiers()) rim_ = neckAboveGround(piece_);
}

bool Elevation::hasTiers() const {
    using model::PieceKind;
    switch (piece_.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
    case PieceKind::garland:
    case PieceKind::sheaf:
        return false;
    default:
        return true;
    }
}

double Elevation::insideBottom() const {
    return piece_.vessel ? piece_.vessel->stand + piece_.vessel->floor : 0;
}

double Elevation::tierEnd() const {
    return room_.right() - grid(26);
}

double Elevation::liftLine() const {
    const double half = std::max(piece_.vessel->width, piece_.vessel->rim) / 2 * scale_;
    return foot_.x() - half - grid(5);
}

std::vector<Elevation::Mark> Elevation::tiers() const {
    std::vector<Mark> all;
    if (!hasTiers()) return all;
    const auto number = [&](double mm) { return lengthFigure(mm, units_); };
    if (grownTop_ > 0)
        all.push_back({rim() + grownTop_, ElevationSay::tr("grown %1").arg(number(grownTop_))});
    all.push_back({rim() + piece_.tall, ElevationSay::tr("tall %1").arg(number(piece_.tall))});
    all.push_back({rim() + piece_.middle, ElevationSay::tr("middle %1").arg(number(piece_.middle))});
    all.push_back({rim() + piece_.low, ElevationSay::tr("low %1").arg(number(piece_.low))});
    all.push_back(
        {rim(), piece_.vessel ? ElevationSay::tr("above the rim") : ElevationSay::tr("above the tie")});
    std::sort(all.begin(), all.end(), [](const Mark& a, const Mark& b) { return a.mm > b.mm; });
    return all;
}

void Elevation::paintBehind(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    paintRuleAtLeft(painter);
    painter.setPen(QPen(palette_.of(Role::edge), 1, Qt::DotLine));
    const double left = foot_.x() + mm_.left() * scale_ - grid(2), right = tierEnd();
    for (const auto& tier : tiers()) {
        if (y(tier.mm) > room_.top() + grid(4))
            painter.drawLine(QPointF(left, y(tier.mm)), QPointF(right, y(tier.mm)));
    }
    if (grownTop_ > 0 && hasTiers() && y(rim() + grownTop_) > room_.top()) {
        painter.setPen(QPen(palette_.of(Role::ink2), 1, Qt::DashLine));
        painter.drawLine(QPointF(foot_.x(), y(rim() + grownTop_)), QPointF(right, y(rim() + grownTop_)));
    }
    painter.setPen(QPen(palette_.of(Role::ink), 2));
    painter.drawLine(QPointF(room_.left() + grid(12), foot_.y()),
                     QPointF(room_.right() - grid(2), foot_.y()));
}

void Elevation::paintRuleAtLeft(QPainter& painter) const {
    const double x = room_.left() + grid(12);
    const double top = mm_.height();
    const double tick = roundStep(scale_, grid(1.25), units_), step = roundStep(scale_, grid(9), units_);
    const QFontMetricsF metrics(captionFont());
    painter.setFont(captionFont());
    for (double mm = 0; mm <= top + 0.01; mm += tick) {
        const bool named = std::abs(std::remainder(mm, step)) < tick / 2;
        painter.setPen(QPen(palette_.of(Role::edge), 0.8));
        painter.drawLine(QPointF(x, y(mm)), QPointF(x + (named ? grid(2) : grid(1)), y(mm)));
        if (!named) continue;
        painter.setPen(palette_.of(Role::ink3));
        const QString words = mm == 0 ? lengthWords(0, units_) : lengthFigure(mm, units_);
        painter.drawText(QRectF(room_.left(), y(mm) - metrics.height() / 2, grid(11), metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, words);
    }
}

void Elevation::upright(QPainter& painter, double x, double from, double to, const QColor& colour) const {
    const double s = grid(1);
    painter.setPen(QPen(colour, 1));
    painter.drawLine(QPointF(x, y(from)), QPointF(x, y(to)));
    painter.setPen(QPen(colour, 1.4));
    for (const double mm : {from, to})
        painter.drawLine(QPointF(x - s, y(mm) + s), QPointF(x + s, y(mm) - s));
}

void Elevation::level(QPainter& painter, double from, double to, double at, const QColor& colour) const {
    const double s = grid(1);
    painter.setPen(QPen(colour, 1));
    painter.drawLine(QPointF(from, at), QPointF(to, at));
    painter.setPen(QPen(colour, 1.4));
    for (const double x : {from, to})
        painter.drawLine(QPointF(x - s, at + s), QPointF(x + s, at - s));
}

void Elevation::paintNumbers(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(captionFont());
    paintSpread(painter);
    paintHeight(painter);
    const QFontMetricsF metrics(captionFont());
    double above = room_.top();
    for (const auto& tier : tiers()) {
        const double at = std::max(y(tier.mm), above + metrics.height() * 0.5);
        label(
            painter, QRectF(room_.right() - grid(24), at - metrics.height() / 2, grid(24), metrics.height()),
            Qt::AlignLeft | Qt::AlignVCenter, tier.words, palette_.of(Role::ink2), palette_.of(Role::paper));
        above = at + metrics.height() * 0.5;
    }
    if (!piece_.vessel || !piece_.vessel->glass()) return;
    paintWater(painter);
    paintLift(painter);
}

void Elevation::paintSpread(QPainter& painter) const {
    const QFontMetricsF metrics(captionFont());
    const double half = piece_.spread / 2 * scale_;
    const double at = room_.top() + grid(4);
    level(painter, foot_.x() - half, foot_.x() + half, at, palette_.of(Role::ink2));
    label(painter, QRectF(foot_.x() - grid(30), at - metrics.height() / 2, grid(60), metrics.height()),
          Qt::AlignCenter, ElevationSay::tr("spread %1").arg(lengthWords(piece_.spread, units_)),
          palette_.of(Role::ink2), palette_.of(Role::paper));
}

void Elevation::paintHeight(QPainter& painter) const {
    const QFontMetricsF metrics(captionFont());
    const double x = room_.left() + grid(23);
    const double top = hasTiers() ? std::max(rim() + piece_.tall, rim()) : mm_.height();
    if (y(top) < room_.top()) return;
    upright(painter, x, 0, top, palette_.of(Role::ink2));
    label(painter, QRectF(x - grid(12), y(top / 2) - metrics.height() / 2, grid(24), metrics.height()),
          Qt::AlignCenter, ElevationSay::tr("%1 high").arg(lengthFigure(top, units_)),
          palette_.of(Role::ink2), palette_.of(Role::paper));
}

void Elevation::paintWater(QPainter& painter) const {
    const auto& v = *piece_.vessel;
    const QFontMetricsF metrics(captionFont());
    if (v.waterLevel * scale_ < metrics.height()) return;
    const double x = foot_.x() + v.width / 2 * scale_ + grid(6);
    const double from = v.stand + v.floor;
    upright(painter, x, from, from + v.waterLevel, palette_.of(Role::waterEdge));
    label(painter,
          QRectF(x + grid(2), y(from + v.waterLevel / 2) - metrics.height() / 2, grid(30), metrics.height()),
          Qt::AlignLeft | Qt::AlignVCenter,
          ElevationSay::tr("water %1").arg(lengthWords(v.waterLevel, units_)), palette_.of(Role::waterEdge),
          palette_.of(Role::paper));
}

void Elevation::paintLift(QPainter& painter) const {
    const auto& v = *piece_.vessel;
    const QFontMetricsF metrics(captionFont());
    const double x = liftLine();
    const double from = v.stand + v.floor;
    if (piece_.lift <= 0) return;
    const double room = x - grid(2) - (room_.left() + grid(24));
    QString words = ElevationSay::tr("ends %1 off base").arg(lengthWords(piece_.lift, units_));
    if (metrics.horizontalAdvance(words) > room)
        words = ElevationSay::tr("ends %1").arg(lengthFigure(piece_.lift, units_));
    upright(painter, x, from, from + piece_.lift, palette_.of(Role::ink2));
    const double up =
        std::max(from + piece_.lift / 2, metrics.height() * 0.6 / scale_); // clear of the ground
    label(painter,
          QRectF(x - grid(2) - std::max(room, 0.0), y(up) - metrics.height() / 2, std::max(room, 0.0),
                 metrics.height()),
          Qt::AlignRight | Qt::AlignVCenter, words, palette_.of(Role::ink2), palette_.of(Role::paper));
}

std::optional<QPointF> Elevation::handleAt(BenchHandle handle) const {
    switch (handle) {
    case BenchHandle::tall:
    case BenchHandle::middle:
    case BenchHandle::low:
        if (!hasTiers()) return std::nullopt;
        return QPointF(tierEnd(), y(rim() + handleLength(piece_, handle)));
    case BenchHandle::neck:
        if (!hasTiers() || piece_.vessel) return std::nullopt;
        return QPointF(tierEnd(), y(rim()));
    case BenchHandle::spread:
        return QPointF(foot_.x() + piece_.spread / 2 * scale_, room_.top() + grid(4));
    case BenchHandle::lift:
        if (!hasTiers() || !piece_.vessel) return std::nullopt;
        return QPointF(liftLine(), y(insideBottom() + piece_.lift));
    }
    return std::nullopt;
}

std::int64_t Elevation::lengthAt(BenchHandle handle, QPointF at) const {
    const double up = (foot_.y() - at.y()) / scale_;
    double mm = 0;
    switch (handle) {
    case BenchHandle::tall:
    case BenchHandle::middle:
    case BenchHandle::low:
        mm = up - rim();
        break;
    case BenchHandle::neck: // what is below the tie besides its stems stays where it is
        mm = up - (rim() - piece_.belowTie);
        break;
    case BenchHandle::spread:
        mm = 2 * std::abs(at.x() - foot_.x()) / scale_;
        break;
    case BenchHandle::lift:
        mm = up - insideBottom();
        break;
    }
    return std::max<std::int64_t>(std::llround(mm), 0);
}

const char* handleField(BenchHandle handle) {
    switch (handle) {
    case BenchHandle::tall:
        return "height_tall";
    case BenchHandle::middle:
        return "height_middle";
    case BenchHandle::low:
        return "height_low";
    case BenchHandle::neck:
        return "stems_below_tie";
    case BenchHandle::spread:
        return "spread";
    case BenchHandle::lift:
        return "lift";
    }
    return "";
}

namespace {

/// Of the drawing's values, the one a handle pulls.
template <class Piece>
auto& lengthOf(Piece& piece, BenchHandle handle) {
    switch (handle) {
    case BenchHandle::tall:
        return piece.tall;
    case BenchHandle::middle:
        return piece.middle;
    case BenchHandle::low:
        return piece.low;
    case BenchHandle::neck:
        return piece.belowTie;
    case BenchHandle::lift:
        return piece.lift;
    case BenchHandle::spread:
        break;
    }
    return piece.spread;
}

} // namespace

double handleLength(const PieceDrawing& piece, BenchHandle handle) {
    return lengthOf(piece, handle);
}

void setHandleLength(PieceDrawing& piece, BenchHandle handle, double mm) {
    const bool mayBeNought = handle != BenchHandle::spread && handle != BenchHandle::neck;
    lengthOf(piece, handle) = std::max(mm, mayBeNought ? 0.0 : leastDrawn);
}

QString handleWords(const PieceDrawing& piece, BenchHandle handle, Units units) {
    const QString length = lengthWords(handleLength(piece, handle), units);
    switch (handle) {
    case BenchHandle::tall:
        return ElevationSay::tr("Height of the tall heads, %1").arg(length);
    case BenchHandle::middle:
        return ElevationSay::tr("Height of the middle heads, %1").arg(length);
    case BenchHandle::low:
        return ElevationSay::tr("Height of the low heads, %1").arg(length);
    case BenchHandle::neck:
        return ElevationSay::tr("Stems below the tie, %1").arg(length);
    case BenchHandle::spread:
        return ElevationSay::tr("Spread, %1").arg(length);
    case BenchHandle::lift:
        return ElevationSay::tr("Stem ends off the base, %1").arg(length);
    }
    return {};
}

QString elevationWords(const PieceDrawing& piece, Units units) {
    const auto number = [&](double mm) { return lengthFigure(mm, units); };
    const auto length = [&](double mm) { return lengthWords(mm, units); };
    QStringList words{ElevationSay::tr("spread %1").arg(length(piece.spread)),
                      ElevationSay::tr("tall %1").arg(number(piece.tall)),
                      ElevationSay::tr("middle %1").arg(number(piece.middle)),
                      ElevationSay::tr("low %1").arg(number(piece.low))};
    if (piece.vessel && piece.vessel->glass())
        words << ElevationSay::tr("water %1").arg(length(piece.vessel->waterLevel))
              << ElevationSay::tr("ends %1 off base").arg(length(piece.lift));
    if (piece.left > 0)
        words << ElevationSay::tr("%n stem(s) more than are drawn", nullptr, static_cast<int>(piece.left));
    return words.join(QStringLiteral(", "));
}

} // namespace withy::ui
