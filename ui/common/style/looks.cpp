// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style/looks.h"

#include "ui/common/style.h"
#include "ui/paint/spacing.h"

#include <QAbstractItemView>
#include <QHash>
#include <QPainter>
#include <QPlainTextEdit>
#include <QTextEdit>
#include <QVariant>

namespace withy::ui {

namespace {

const QHash<QString, Look>& looksByWord() {
    static const QHash<QString, Look> looks{
        {QStringLiteral("main"), Look::main},       {QStringLiteral("link"), Look::link},
        {QStringLiteral("segment"), Look::segment}, {QStringLiteral("step"), Look::step},
        {QStringLiteral("tally"), Look::tally},     {QStringLiteral("tab"), Look::tab},
        {QStringLiteral("button"), Look::button},   {QStringLiteral("quiet"), Look::quiet},
        {QStringLiteral("figure"), Look::figure},   {QStringLiteral("field"), Look::field},
        {QStringLiteral("cell"), Look::cell},       {QStringLiteral("title"), Look::title},
        {QStringLiteral("list"), Look::list},       {QStringLiteral("popup"), Look::popup},
        {QStringLiteral("mist"), Look::mist},       {QStringLiteral("working"), Look::working},
        {QStringLiteral("rule"), Look::rule},       {QStringLiteral("upright"), Look::upright},
        {QStringLiteral("hair"), Look::hair},
    };
    return looks;
}

bool has(const QWidget* widget, const char* property) {
    return widget && widget->property(property).toBool();
}

Dress focused(Dress dress) {
    dress.edge = Role::green;
    dress.width = focusRing;
    dress.edges = Dress::Edges::all;
    dress.line = Qt::SolidLine;
    return dress;
}

/// A button drawn as one, in the colours of its state.
Dress boxedButton(bool main, QStyle::State state) {
    Dress dress{.ink = main ? Role::onGreen : Role::ink,
                .fill = main ? Role::green : Role::sheet,
                .edge = main ? Role::green : Role::edge};
    if (!(state & QStyle::State_Enabled)) {
        dress.ink = main ? Role::ink2 : Role::ink3;
        dress.fill = main ? Role::line : Role::paper;
        dress.edge = Role::line;
        return dress;
    }
    if (main && (state & QStyle::State_MouseOver)) {
        dress.ink = Role::paper;
        dress.fill = dress.edge = Role::ink;
    } else if (state & QStyle::State_Sunken) {
        dress.fill = Role::mist;
    } else if (state & (QStyle::State_MouseOver | QStyle::State_On)) {
        dress.fill = Role::wash;
    }
    if (!(state & QStyle::State_HasFocus)) return dress;
    dress = focused(dress);
    if (main) dress.edge = Role::ink;
    return dress;
}

Dress tabDress(QStyle::State state) {
    const bool on = state.testFlag(QStyle::State_On);
    const bool over = state.testFlag(QStyle::State_MouseOver);
    Dress dress{.ink = on || over ? Role::ink : Role::ink2};
    dress.edges = Dress::Edges::below;
    dress.width = 3;
    dress.round = false;
    if (on)
        dress.edge = Role::green;
    else if (over)
        dress.edge = Role::line;
    if (!(state & QStyle::State_HasFocus)) return dress;
    dress = focused(dress);
    dress.round = true;
    return dress;
}

Dress figureDress(const QWidget* widget, QStyle::State state) {
    Dress dress{.ink = has(widget, "asks") ? Role::osier : Role::ink, .edge = Role::edge};
    dress.edges = Dress::Edges::below;
    dress.line = Qt::DotLine;
    dress.round = false;
    if (state & (QStyle::State_MouseOver | QStyle::State_On)) dress.fill = Role::wash;
    if (state & QStyle::State_On) {
        dress.edge = Role::green;
        dress.line = Qt::SolidLine;
    }
    return state & QStyle::State_HasFocus ? focused(dress) : dress;
}

} // namespace

Look lookOf(const QWidget* widget) {
    if (!widget) return Look::plain;
    const QVariant look = widget->property("look");
    return look.isValid() ? looksByWord().value(look.toString(), Look::plain) : Look::plain;
}

bool isText(const QWidget* widget) {
    return qobject_cast<const QPlainTextEdit*>(widget) || qobject_cast<const QTextEdit*>(widget);
}

bool isInCell(const QWidget* widget) {
    for (const auto* w = widget ? widget->parentWidget() : nullptr; w && !w->isWindow();
         w = w->parentWidget())
        if (qobject_cast<const QAbstractItemView*>(w)) return true;
    return false;
}

QSize Box::around(QSize contents) const {
    return {std::max(contents.width(), leastWidth) + 2 * side,
            std::max(contents.height(), leastHeight) + above + below};
}

QRect Box::inside(const QRect& outer) const {
    return outer.adjusted(side, above, -side, -below);
}

Box buttonBox(const QWidget* widget) {
    switch (lookOf(widget)) {
    case Look::link:
        return {2, 1, 1};
    case Look::step:
        return {1, 1, 1, controlInRow(), controlInRow()};
    case Look::tally:
        return {1, 1, 1, controlInRow()};
    case Look::tab:
        return {grid(1), 0, 3, controlInRow()};
    case Look::quiet:
        return {grid(1), grid(1), grid(1)};
    case Look::figure:
        return {2, 1, 2};
    default:
        return {grid(3) + 1, 2, 2, controlInRow()};
    }
}

Box fieldBox(const QWidget* widget) {
    if (isText(widget)) {
        if (lookOf(widget) == Look::cell) return {grid(1) + focusRing, focusRing, focusRing};
        return {grid(2) - 1, grid(1) + 1, grid(1) + 1}; // with the document's own margin as far in as a line
    }
    switch (lookOf(widget)) {
    case Look::step:
        return {0, 2, 2, controlInRow()};
    case Look::tally:
    case Look::title:
        return {1, 1, 1};
    case Look::cell:
        return {grid(1) + focusRing, focusRing, focusRing};
    default:
        return isInCell(widget) ? Box{grid(1) + 1, 1, 1} : Box{grid(2) + 1, 2, 2, controlInRow()};
    }
}

int arrowWidth() {
    return grid(4);
}

Dress buttonDress(const QWidget* widget, QStyle::State state) {
    Dress dress;
    const bool focus = state.testFlag(QStyle::State_HasFocus);
    switch (lookOf(widget)) {
    case Look::main:
        return boxedButton(true, state);
    case Look::link:
        dress.ink = state & QStyle::State_Enabled ? Role::green : Role::ink3;
        dress.underlined = true;
        return focus ? focused(dress) : dress;
    case Look::quiet:
        dress.ink = state & QStyle::State_Enabled ? Role::ink2 : Role::ink3;
        if (state & QStyle::State_MouseOver) dress.fill = Role::wash;
        return focus ? focused(dress) : dress;
    case Look::tab:
        return tabDress(has(widget, "clicked") ? state & ~QStyle::State_HasFocus : state);
    case Look::figure:
        return figureDress(widget, state);
    case Look::segment:
    case Look::step:
        dress = boxedButton(false, state);
        dress.round = false;
        return dress;
    default:
        return boxedButton(false, state);
    }
}

Dress fieldDress(const QWidget* widget, QStyle::State state) {
    const auto look = lookOf(widget);
    const bool focus = state.testFlag(QStyle::State_HasFocus);
    const bool over = state.testFlag(QStyle::State_MouseOver);
    const bool quiet = look == Look::field || look == Look::tally || look == Look::title;
    Dress dress{.fill = Role::sheet, .edge = Role::edge};
    dress.round = look != Look::step && (look == Look::cell || !isInCell(widget));
    if (!(state & QStyle::State_Enabled)) {
        dress.ink = Role::ink3;
        dress.fill = Role::paper;
        dress.edge = Role::line;
    }
    if (focus || look == Look::cell) return focused(dress);
    if (look == Look::step) dress.edges = Dress::Edges::aboveAndBelow;
    if (quiet && !over) {
        dress.fill.reset();
        dress.edge.reset();
        if (has(widget, "blank") && look != Look::title) {
            dress.edge = Role::edge;
            dress.edges = Dress::Edges::below;
            dress.line = Qt::DashLine;
            dress.round = false;
        }
    } else if (quiet && look == Look::title) {
        dress.fill.reset();
        dress.edge = Role::line;
    }
    if (has(widget, "wrong")) dress.edge = Role::osier;
    return dress;
}

int buttonWeight(const QWidget* widget, bool down) {
    switch (lookOf(widget)) {
    case Look::segment:
    case Look::tab:
        return down ? QFont::Bold : QFont::Normal;
    case Look::step:
    case Look::quiet:
        return QFont::Normal;
    case Look::figure:
        return has(widget, "quiet") ? QFont::Normal : QFont::Bold;
    default:
        return QFont::DemiBold;
    }
}

void paintDress(QPainter& painter, const QRect& outer, const Dress& dress) {
    const auto& palette = currentPalette();
    const double radius = dress.round ? corner : 0;
    const double half = dress.width / 2.0;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, dress.round);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::NoBrush);
    if (dress.fill) painter.setBrush(palette.of(*dress.fill));
    const bool around = dress.edge && dress.edges == Dress::Edges::all;
    if (around) painter.setPen(QPen(palette.of(*dress.edge), dress.width, dress.line));
    const QRectF line = QRectF(outer).adjusted(half, half, -half, -half);
    if (dress.fill || around) painter.drawRoundedRect(around ? line : QRectF(outer), radius, radius);
    if (dress.edge && !around) {
        QPen pen(palette.of(*dress.edge), dress.width, dress.line, Qt::FlatCap);
        if (dress.line == Qt::DashLine) pen.setDashPattern({2, 2});
        painter.setPen(pen);
        const double left = outer.left();
        const double right = outer.left() + outer.width();
        painter.drawLine(QPointF(left, line.bottom()), QPointF(right, line.bottom()));
        if (dress.edges == Dress::Edges::aboveAndBelow)
            painter.drawLine(QPointF(left, line.top()), QPointF(right, line.top()));
    }
    painter.restore();
}

void paintFocus(QPainter& painter, const QRect& outer) {
    paintDress(painter, outer, focused({}));
}

void paintCross(QPainter& painter, const QRect& room) {
    const double half = grid(0.9);
    const QPointF middle = QRectF(room).center();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(currentPalette().of(Role::ink3), iconLine - 0.3, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(middle + QPointF(-half, -half), middle + QPointF(half, half));
    painter.drawLine(middle + QPointF(-half, half), middle + QPointF(half, -half));
    painter.restore();
}

void paintArrow(QPainter& painter, const QRect& room, Role ink, bool up) {
    const double half = grid(0.8);
    const double rise = half / 2 * (up ? -1 : 1);
    const QPointF middle = QRectF(room).center();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(
        QPen(currentPalette().of(ink), iconLine - 0.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF{QPointF(middle.x() - half, middle.y() - rise),
                                   QPointF(middle.x(), middle.y() + rise),
                                   QPointF(middle.x() + half, middle.y() - rise)});
    painter.restore();
}

} // namespace withy::ui
