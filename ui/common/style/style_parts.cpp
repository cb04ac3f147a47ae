// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style/style_parts.h"

#include "ui/common/style.h"
#include "ui/common/style/looks.h"
#include "ui/common/style/mnemonics.h"
#include "ui/paint/spacing.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QScrollArea>

namespace withy::ui {

namespace {

QColor inkOf(Role role) {
    return currentPalette().of(role);
}

/// The text of a control in the colours of its state.
void paintWords(QPainter& painter, const QRect& room, int flags, Role ink, const QString& words) {
    painter.setPen(inkOf(ink));
    painter.drawText(room, flags, words);
}

} // namespace

bool isPopup(const QWidget* widget) {
    return lookOf(widget) == Look::popup || (widget && widget->parentWidget() &&
                                             widget->parentWidget()->inherits("QComboBoxPrivateContainer"));
}

void paintGround(const QStyleOption& option, QPainter& painter, const QWidget* widget) {
    switch (lookOf(widget)) {
    case Look::rule:
        painter.fillRect(option.rect, inkOf(Role::edge));
        break;
    case Look::hair:
    case Look::upright:
        painter.fillRect(option.rect, inkOf(Role::line));
        break;
    case Look::mist:
        painter.fillRect(option.rect, inkOf(Role::mist));
        break;
    case Look::working:
        painter.fillRect(option.rect, inkOf(Role::mist));
        painter.fillRect(option.rect.adjusted(0, 0, 2 - option.rect.width(), 0), inkOf(Role::edge));
        break;
    default:
        break;
    }
}

std::optional<QMargins> frameMargins(const QWidget* widget) {
    if (isText(widget)) {
        const auto box = fieldBox(widget);
        return QMargins(box.side, box.above, box.side, box.below);
    }
    if (qobject_cast<const QAbstractItemView*>(widget))
        return lookOf(widget) == Look::list ? QMargins() : QMargins(1, 1, 1, 1);
    if (qobject_cast<const QScrollArea*>(widget)) return QMargins();
    return std::nullopt;
}

void paintFrame(const QStyleOption& option, QPainter& painter, const QWidget* widget) {
    if (isText(widget)) return paintDress(painter, option.rect, fieldDress(widget, option.state));
    const auto* view = qobject_cast<const QAbstractItemView*>(widget);
    if (!view || lookOf(widget) == Look::list) return;
    Dress dress;
    dress.round = false;
    if (isPopup(widget))
        dress.edge = Role::edge;
    else if ((option.state & QStyle::State_HasFocus) && !view->currentIndex().isValid())
        dress.edge = Role::green; // otherwise the cell in hand has its ring
    paintDress(painter, option.rect, dress);
}

void paintItemGround(const QStyleOptionViewItem& option, QPainter& painter) {
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    if (chosen)
        painter.fillRect(option.rect, inkOf(Role::wash));
    else if (option.backgroundBrush.style() != Qt::NoBrush)
        painter.fillRect(option.rect, option.backgroundBrush);
    const QRect& r = option.rect;
    painter.fillRect(QRect(r.left(), r.bottom(), r.width(), 1), inkOf(Role::line));
    if (!(option.state & QStyle::State_HasFocus)) return;
    Dress focus{.edge = Role::green};
    focus.width = focusRing;
    focus.round = false;
    paintDress(painter, r, focus);
}

void paintHeaderSection(const QStyleOptionHeader& option, QPainter& painter) {
    const QRect& r = option.rect;
    painter.fillRect(r, inkOf(Role::paper));
    painter.fillRect(QRect(r.left(), r.bottom(), r.width(), 1), inkOf(Role::edge));
}

void paintMenuBarItem(const QStyleOptionMenuItem& option, QPainter& painter) {
    painter.fillRect(option.rect, inkOf(Role::mist));
    const bool open = option.state & (QStyle::State_Selected | QStyle::State_Sunken);
    if (open) paintDress(painter, option.rect, {.fill = Role::wash});
    paintWords(painter, option.rect, Qt::AlignCenter | Mnemonics::textFlag() | Qt::TextSingleLine,
               option.state & QStyle::State_Enabled ? Role::ink : Role::ink3, option.text);
}

void paintComboBox(const QStyleOptionComboBox& option, QPainter& painter, const QWidget* widget) {
    const auto dress = fieldDress(widget, option.state);
    paintDress(painter, option.rect, dress);
    if (dress.fill) // a field that is plain text keeps quiet until one goes to it
        paintArrow(painter, comboBoxPart(option, QStyle::SC_ComboBoxArrow, widget), Role::ink3);
}

QRect comboBoxPart(const QStyleOptionComboBox& option, QStyle::SubControl part, const QWidget* widget) {
    const QRect inner = fieldBox(widget).inside(option.rect);
    switch (part) {
    case QStyle::SC_ComboBoxEditField:
        return inner.adjusted(0, 0, -arrowWidth(), 0);
    case QStyle::SC_ComboBoxArrow:
        return QRect(inner.right() + 1 - arrowWidth(), inner.top(), arrowWidth(), inner.height());
    default:
        return option.rect;
    }
}

void paintSpinBox(const QStyleOptionSpinBox& option, QPainter& painter, const QWidget* widget) {
    paintDress(painter, option.rect, fieldDress(widget, option.state));
    if (option.buttonSymbols == QAbstractSpinBox::NoButtons) return;
    const auto arrow = [&](QStyle::SubControl part, QAbstractSpinBox::StepEnabledFlag step, bool up) {
        const bool can = option.stepEnabled.testFlag(step) && (option.state & QStyle::State_Enabled);
        const bool over = can && (option.activeSubControls & part);
        paintArrow(painter, spinBoxPart(option, part, widget),
                   over  ? Role::ink
                   : can ? Role::ink3
                         : Role::line,
                   up);
    };
    arrow(QStyle::SC_SpinBoxUp, QAbstractSpinBox::StepUpEnabled, true);
    arrow(QStyle::SC_SpinBoxDown, QAbstractSpinBox::StepDownEnabled, false);
}

QRect spinBoxPart(const QStyleOptionSpinBox& option, QStyle::SubControl part, const QWidget* widget) {
    const bool buttons = option.buttonSymbols != QAbstractSpinBox::NoButtons;
    const QRect inner = fieldBox(widget).inside(option.rect);
    const int wide = buttons ? arrowWidth() : 0;
    const QRect right(inner.right() + 1 - wide, inner.top(), wide, inner.height());
    switch (part) {
    case QStyle::SC_SpinBoxEditField:
        return inner.adjusted(0, 0, -wide, 0);
    case QStyle::SC_SpinBoxUp:
        return buttons ? right.adjusted(0, 0, 0, -right.height() / 2) : QRect();
    case QStyle::SC_SpinBoxDown:
        return buttons ? right.adjusted(0, right.height() / 2, 0, 0) : QRect();
    default:
        return option.rect;
    }
}

void paintScrollBar(const QStyleOptionSlider& option, QPainter& painter) {
    if (option.minimum >= option.maximum) return;
    const bool over = option.activeSubControls.testFlag(QStyle::SC_ScrollBarSlider);
    const bool lying = option.orientation == Qt::Horizontal;
    QRect handle = scrollBarPart(option, QStyle::SC_ScrollBarSlider);
    // Slim until the pointer is on it, so that it does not read as a rule between columns.
    const int extent = lying ? handle.height() : handle.width();
    const int thick = std::max(4, over ? extent * 2 / 3 : extent / 3);
    const int in = (extent - thick) / 2;
    handle.adjust(lying ? 2 : in, lying ? in : 2, lying ? -2 : -in, lying ? -in : -2);
    const auto& palette = currentPalette();
    const double round = std::min(handle.width(), handle.height()) / 2.0;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(over ? palette.of(Role::edge)
                          : mixed(palette.of(Role::line), palette.of(Role::edge), 0.5));
    painter.drawRoundedRect(handle, round, round);
    painter.restore();
}

QRect scrollBarPart(const QStyleOptionSlider& option, QStyle::SubControl part) {
    const bool lying = option.orientation == Qt::Horizontal;
    const int room = lying ? option.rect.width() : option.rect.height();
    const auto range = qint64(option.maximum) - option.minimum;
    int length = room;
    if (range > 0) {
        const auto page = qint64(option.pageStep);
        length = static_cast<int>(room * page / std::max<qint64>(1, range + page));
        length = std::min(room, std::max(length, control()));
    }
    const int at = QStyle::sliderPositionFromValue(option.minimum, option.maximum, option.sliderPosition,
                                                   room - length, option.upsideDown);
    const auto stretch = [&](int from, int to) {
        return lying ? QRect(option.rect.left() + from, option.rect.top(), to - from, option.rect.height())
                     : QRect(option.rect.left(), option.rect.top() + from, option.rect.width(), to - from);
    };
    switch (part) {
    case QStyle::SC_ScrollBarSlider:
        return stretch(at, at + length);
    case QStyle::SC_ScrollBarSubPage:
        return stretch(0, at);
    case QStyle::SC_ScrollBarAddPage:
        return stretch(at + length, room);
    case QStyle::SC_ScrollBarGroove:
        return option.rect;
    default:
        return {}; // there are no buttons at its ends
    }
}

void paintProgress(const QStyleOptionProgressBar& option, QPainter& painter) {
    paintDress(painter, option.rect, {.fill = Role::sheet, .edge = Role::edge});
    const int range = option.maximum - option.minimum;
    const double done = range > 0 ? double(option.progress - option.minimum) / range : 0;
    QRect bar = option.rect.adjusted(1, 1, -1, -1);
    bar.setWidth(static_cast<int>(bar.width() * std::clamp(done, 0.0, 1.0)));
    painter.fillRect(bar, inkOf(Role::wash));
    if (option.textVisible)
        paintWords(painter, option.rect, Qt::AlignCenter | Qt::TextSingleLine, Role::ink, option.text);
}

} // namespace withy::ui
