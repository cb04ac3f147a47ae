// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/run_up_paint.h"

#include "ui/common/run_up_brush.h"
#include "ui/paint/spacing.h"

#include <algorithm>

namespace withy::ui {

namespace {

class BoxPainting : BoardBrush {
public:
    BoxPainting(QPainter& p, const Board& board, const RunUpLayout& layout, BoardStyle style,
                const Palette& palette, const BoardLooks& looks)
        : BoardBrush(p, board, layout, style, palette), looks_(looks) {}

    void paint() {
        for (const auto& laid : layout_.boxes())
            if (boxAt(laid).look == BoardLook::busy) paintBusy(laid);
        for (const auto& laid : layout_.boxes())
            if (boxAt(laid).look == BoardLook::thread) paintThread(laid);
        for (const auto& laid : layout_.boxes()) {
            const auto look = boxAt(laid).look;
            if (look == BoardLook::fixed) paintFixed(laid);
            if (look == BoardLook::step || look == BoardLook::round) paintStep(laid);
        }
        for (const auto& group : layout_.groups())
            words(group.words, group.said, TypeRole::caption, of(Role::ink2));
    }

private:
    [[nodiscard]] const BoardBox& boxAt(const LaidBox& laid) const {
        const auto& at = laid.place;
        return board_.days[at.day].lanes[at.lane].boxes[at.box];
    }

    void paintBusy(const LaidBox& laid) {
        hatch(pathOf(laid.box), of(Role::edge), grid(2));
        if (laid.words.isEmpty()) return;
        p_.fillRect(laid.words, of(Role::paper));
        words(laid.words.adjusted(grid(1), 0, 0, 0), boxAt(laid).name, TypeRole::caption, of(Role::ink2));
    }

    void paintThread(const LaidBox& laid) {
        p_.setPen(QPen(of(Role::waterEdge), 1.5));
        p_.drawLine(laid.box.topLeft(), laid.box.topRight());
        p_.drawLine(laid.box.bottomLeft(), laid.box.bottomRight());
        if (!week_) {
            p_.drawLine(laid.box.topLeft() - QPointF(0, 3), laid.box.bottomLeft() + QPointF(0, 3));
            p_.drawLine(laid.box.topRight() - QPointF(0, 3), laid.box.bottomRight() + QPointF(0, 3));
        }
        if (!laid.words.isEmpty())
            words(laid.words, boxAt(laid).name, TypeRole::caption, of(Role::waterEdge));
        if (isChosen(boxAt(laid))) frame(laid.box.adjusted(-3, -3, 3, 3));
    }

    void paintFixed(const LaidBox& laid) {
        p_.fillRect(laid.box, of(Role::ink));
        const auto& box = boxAt(laid);
        const QRectF at = laid.box.adjusted(grid(2), grid(week_ ? 0 : 1), -grid(1), 0);
        if (at.width() < grid(6)) return;
        words(week_ ? at : QRectF(at.left(), at.top(), at.width(), grid(5)), box.name, TypeRole::strong,
              of(Role::paper));
        if (!week_)
            words(QRectF(at.left(), at.top() + grid(5), at.width(), grid(5)), box.detail, TypeRole::caption,
                  of(Role::paper));
    }

    [[nodiscard]] bool isChosen(const BoardBox& box) const { return box.step && box.step == looks_.chosen; }

    void frame(const QRectF& at) {
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen(of(Role::green), looks_.focused ? focusRing : hairline));
        p_.drawRect(at);
    }

    void paintStep(const LaidBox& laid) {
        const auto& box = boxAt(laid);
        QRectF at = laid.box;
        const bool chosen = isChosen(box);
        if (chosen && looks_.moved != 0)
            at.translate(static_cast<double>(looks_.moved) / 60 * (layout_.xOfHour(1) - layout_.xOfHour(0)),
                         0);
        const bool round = box.look == BoardLook::round && box.mine && !box.done;
        const QColor edge = box.outside ? of(Role::osier) : box.mine ? of(Role::ink) : of(Role::edge);
        p_.fillRect(at, round ? of(Role::green) : box.done ? of(Role::wash) : of(Role::sheet));
        if (box.outside) hatch(pathOf(at), of(Role::osier), 6);
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen(edge, hairline));
        p_.drawRect(at);
        p_.fillRect(QRectF(at.left(), at.top(), std::clamp(at.width() / 4, 1.0, 4.0), at.height()), edge);
        sayStep(laid, box, at, round);
        if (box.kept) pin(at);
        if (box.done) tick(at);
        if (chosen) frame(at.adjusted(-3, -3, 3, 3));
    }

    void sayStep(const LaidBox& laid, const BoardBox& box, const QRectF& at, bool round) {
        const QColor ink = !box.mine || box.done ? of(Role::ink2) : of(Role::ink);
        if (laid.overBusy && !laid.inside) p_.fillRect(laid.words.adjusted(-2, 0, 2, 0), of(Role::paper));
        if (!laid.words.isEmpty()) {
            const QColor name = round && (laid.inside || laid.words.top() == laid.box.top()) &&
                                        laid.box.left() <= laid.words.left() &&
                                        laid.words.left() < laid.box.right()
                                    ? of(Role::onGreen)
                                    : ink;
            const QString said =
                box.letter.isEmpty() ? box.name : box.letter + QStringLiteral("  ") + box.name;
            const bool onlyLetter = week_ && !laid.inside && laid.box.left() <= laid.words.left() &&
                                    laid.words.left() < laid.box.right();
            if (box.outside && laid.inside)
                p_.fillRect(
                    QRectF(laid.words.left() - 2, at.center().y() - grid(2.5),
                           std::min(laid.words.width(),
                                    QFontMetricsF(typeFont(TypeRole::strong)).horizontalAdvance(said) + 4),
                           grid(5)),
                    of(Role::sheet));
            words(laid.words.translated(at.left() - laid.box.left(), 0), onlyLetter ? box.letter : said,
                  TypeRole::strong, name);
        }
        if (!laid.detail.isEmpty()) words(laid.detail, box.detail, TypeRole::caption, of(Role::ink2));
    }

    /// Kept by hand: a pin's head on the corner.
    void pin(const QRectF& at) {
        p_.save();
        p_.setRenderHint(QPainter::Antialiasing);
        p_.setBrush(of(Role::green));
        p_.setPen(QPen(of(Role::sheet), hairline));
        p_.drawEllipse(QPointF(at.left() + 2, at.top()), 4.5, 4.5);
        p_.restore();
    }

    void tick(const QRectF& at) {
        p_.save();
        p_.setRenderHint(QPainter::Antialiasing);
        p_.setPen(QPen(of(Role::green), 2));
        const QPointF c(at.right() - 1, at.top() + 1);
        p_.drawPolyline(QPolygonF({c + QPointF(-5, 0), c + QPointF(-2, 4), c + QPointF(5, -5)}));
        p_.restore();
    }

    const BoardLooks& looks_;
};

} // namespace

void BoardBrush::words(const QRectF& at, const QString& said, TypeRole role, const QColor& ink,
                       Qt::Alignment align) {
    const auto font = typeFont(role);
    p_.setFont(font);
    p_.setPen(ink);
    p_.drawText(at, static_cast<int>(align) | Qt::TextSingleLine,
                QFontMetricsF(font).elidedText(said, Qt::ElideRight, at.width() + 1));
}

void BoardBrush::hatch(const QPainterPath& clip, const QColor& ink, double step) {
    const QRectF at = clip.boundingRect();
    p_.save();
    p_.setClipPath(clip, Qt::IntersectClip);
    p_.setPen(QPen(ink, hairline));
    for (double x = at.left() - at.height(); x < at.right(); x += step)
        p_.drawLine(QPointF(x, at.bottom()), QPointF(x + at.height(), at.top()));
    p_.restore();
}

QPainterPath BoardBrush::pathOf(const QRectF& rect) {
    QPainterPath path;
    path.addRect(rect);
    return path;
}

void paintRunUp(QPainter& painter, const Board& board, const RunUpLayout& layout, BoardStyle style,
                const Palette& palette, const BoardLooks& looks) {
    paintRunUpGround(painter, board, layout, style, palette);
    BoxPainting(painter, board, layout, style, palette, looks).paint();
}

} // namespace withy::ui
