// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style/withy_style.h"

#include "ui/common/style.h"
#include "ui/common/style/looks.h"
#include "ui/common/style/mnemonics.h"
#include "ui/common/style/style_parts.h"
#include "ui/common/style/ticks.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QAbstractItemView>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPixmap>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTextEdit>
#include <QToolButton>

namespace withy::ui {

namespace {

/// Only the weight: family and size stay the program's, and change with it.
void setWeight(QWidget& widget, int weight) {
    if (widget.font().weight() == weight) return;
    QFont font = widget.testAttribute(Qt::WA_SetFont) ? widget.font() : QFont();
    font.setWeight(static_cast<QFont::Weight>(weight));
    widget.setFont(font);
}

void setColour(QWidget& widget, QPalette::ColorRole role, Role colour) {
    QPalette palette = widget.testAttribute(Qt::WA_SetPalette) ? widget.palette() : QPalette();
    palette.setColor(role, currentPalette().of(colour));
    widget.setPalette(palette);
}

void dressLabel(QLabel& label) {
    const QVariant ink = label.property("ink");
    if (!ink.isValid()) return;
    const QString word = ink.toString();
    const Role role = word == QLatin1String("2")       ? Role::ink2
                      : word == QLatin1String("3")     ? Role::ink3
                      : word == QLatin1String("osier") ? Role::osier
                                                       : Role::ink;
    if (role != Role::ink || label.testAttribute(Qt::WA_SetPalette))
        setColour(label, QPalette::WindowText, role);
}

void dressGround(QWidget& widget) {
    switch (lookOf(&widget)) {
    case Look::rule:
    case Look::hair:
        widget.setFixedHeight(1);
        break;
    case Look::upright:
        widget.setFixedWidth(1);
        break;
    case Look::mist:
    case Look::working:
        break;
    default:
        return;
    }
    widget.setAttribute(Qt::WA_StyledBackground);
}

void paintDownwards(QPainter& painter, const QRect& room) {
    paintArrow(painter, room, Role::ink2);
}

QIcon paintedIcon(int side, void (*paint)(QPainter&, const QRect&)) {
    constexpr int twice = 2; // for screens of two pixels to a point
    QPixmap picture(twice * side, twice * side);
    picture.setDevicePixelRatio(twice);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paint(painter, QRect(0, 0, side, side));
    return picture;
}

bool isDressedButton(const QWidget* widget) {
    return lookOf(widget) != Look::plain;
}

} // namespace

WithyStyle::WithyStyle() : QProxyStyle(QStringLiteral("fusion")) {}

void WithyStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    if (auto* label = qobject_cast<QLabel*>(widget)) dressLabel(*label);
    if (qobject_cast<QPushButton*>(widget) || (qobject_cast<QToolButton*>(widget) && isDressedButton(widget)))
        setWeight(*widget, buttonWeight(widget, false));
    const bool text = qobject_cast<QPlainTextEdit*>(widget) || qobject_cast<QTextEdit*>(widget);
    if (text || qobject_cast<QLineEdit*>(widget)) widget->setAttribute(Qt::WA_Hover);
    if (text) // its ground is drawn with its frame, round corners and all
        static_cast<QAbstractScrollArea*>(widget)->viewport()->setAutoFillBackground(false);
    if (auto* head = qobject_cast<QHeaderView*>(widget)) {
        head->setFont(typeFont(TypeRole::caption));
        setColour(*head, QPalette::Base, Role::paper);
    } else if (qobject_cast<QAbstractItemView*>(widget) && !isPopup(widget)) {
        setColour(*widget, QPalette::Base, Role::paper);
        setColour(*widget, QPalette::AlternateBase, Role::mist);
    }
    dressGround(*widget);
    if (widget->isVisible()) widget->update();
}

/// Two that every window asks for are drawn here: Fusion's are files, and reading one brings Qt's image
/// plugins in.
QIcon WithyStyle::standardIcon(StandardPixmap standard, const QStyleOption* option,
                               const QWidget* widget) const {
    const int side = grid(4);
    if (standard == SP_ToolBarHorizontalExtensionButton) return paintedIcon(side, paintDownwards);
    if (standard == SP_LineEditClearButton) return paintedIcon(side, paintCross);
    return QProxyStyle::standardIcon(standard, option, widget);
}

void WithyStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    switch (element) {
    case PE_Widget:
        return paintGround(*option, *painter, widget);
    case PE_PanelLineEdit:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame && frame->lineWidth > 0)
            paintDress(*painter, option->rect, fieldDress(widget, option->state));
        return;
    case PE_FrameFocusRect:
        if (!qobject_cast<const QAbstractItemView*>(widget)) paintFocus(*painter, option->rect);
        return; // an item of a list has its own
    case PE_PanelItemViewItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(option))
            paintItemGround(*item, *painter);
        return;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        return paintTickBox(*painter, option->rect, option->state);
    case PE_IndicatorRadioButton:
        return paintRadio(*painter, option->rect, option->state);
    case PE_PanelTipLabel:
        return paintDress(*painter, option->rect, {.fill = Role::mist, .edge = Role::edge, .round = false});
    case PE_PanelScrollAreaCorner: // where two scroll bars meet
        return painter->fillRect(option->rect, currentPalette().of(Role::paper));
    case PE_FrameStatusBarItem:
        return;
    default:
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void WithyStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    switch (element) {
    case CE_PushButton:
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option))
            drawButton(*button, *painter, widget);
        return;
    case CE_CheckBox:
    case CE_RadioButton:
        return drawTicked(element, option, painter, widget);
    case CE_ShapedFrame:
        if (frameMargins(widget)) return paintFrame(*option, *painter, widget);
        if (lookOf(widget) != Look::plain) return;
        break;
    case CE_HeaderSection:
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(option))
            paintHeaderSection(*head, *painter);
        return;
    case CE_HeaderLabel:
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(option)) {
            QStyleOptionHeader quiet(*head);
            quiet.state &= ~State_On; // the column of the chosen cell is not bold
            // Fusion has asked itself, not us, where the words stand: over those of their column.
            const int in = grid(2) - pixelMetric(PM_HeaderMargin, option, widget);
            quiet.rect.adjust(in, 0, -in, 0);
            quiet.palette.setColor(QPalette::ButtonText, currentPalette().of(Role::ink3));
            return QProxyStyle::drawControl(element, &quiet, painter, widget);
        }
        return;
    case CE_HeaderEmptyArea:
        painter->fillRect(option->rect, currentPalette().of(Role::paper));
        return;
    case CE_MenuBarItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option))
            paintMenuBarItem(*item, *painter);
        return;
    case CE_MenuBarEmptyArea:
        painter->fillRect(option->rect, currentPalette().of(Role::mist));
        return;
    case CE_ProgressBar:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionProgressBar*>(option))
            paintProgress(*bar, *painter);
        return;
    case CE_Splitter:
        painter->fillRect(option->rect, currentPalette().of(Role::line));
        return;
    default:
        break;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void WithyStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option))
        return paintComboBox(*combo, *painter, widget);
    if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option))
        return paintSpinBox(*spin, *painter, widget);
    if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        slider && control == CC_ScrollBar)
        return paintScrollBar(*slider, *painter);
    if (const auto* button = qstyleoption_cast<const QStyleOptionToolButton*>(option);
        button && isDressedButton(widget))
        return drawToolButton(*button, *painter, widget);
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

void WithyStyle::drawButton(const QStyleOptionButton& option, QPainter& painter,
                            const QWidget* widget) const {
    const auto dress = buttonDress(widget, option.state);
    paintDress(painter, option.rect, dress);
    QStyleOptionButton words(option);
    words.rect = buttonBox(widget).inside(option.rect);
    words.palette.setColor(QPalette::ButtonText, currentPalette().of(dress.ink));
    words.features &= ~QStyleOptionButton::HasMenu;
    painter.save();
    QFont font = painter.font();
    font.setWeight(static_cast<QFont::Weight>(buttonWeight(widget, option.state.testFlag(State_On))));
    font.setUnderline(dress.underlined);
    painter.setFont(font);
    if (option.features & QStyleOptionButton::HasMenu) {
        const int wide = pixelMetric(PM_MenuButtonIndicator, &option, widget);
        const QRect arrow(words.rect.right() + 1 - wide, words.rect.top(), wide, words.rect.height());
        paintArrow(painter, arrow, dress.ink);
        words.rect.setRight(arrow.left() - 1);
    }
    if (lookOf(widget) == Look::link && option.icon.isNull())
        drawItemText(&painter, words.rect, Qt::AlignLeft | Qt::AlignVCenter | Mnemonics::textFlag(),
                     words.palette, true,
                     QFontMetrics(font).elidedText(words.text, Qt::ElideRight, words.rect.width() + 1,
                                                   Qt::TextShowMnemonic),
                     QPalette::ButtonText);
    else
        QProxyStyle::drawControl(CE_PushButtonLabel, &words, &painter, widget);
    painter.restore();
}

void WithyStyle::drawToolButton(const QStyleOptionToolButton& option, QPainter& painter,
                                const QWidget* widget) const {
    const auto dress = buttonDress(widget, option.state);
    paintDress(painter, option.rect, dress);
    QStyleOptionToolButton words(option);
    words.rect = buttonBox(widget).inside(option.rect);
    words.palette.setColor(QPalette::ButtonText, currentPalette().of(dress.ink));
    words.font.setWeight(static_cast<QFont::Weight>(buttonWeight(widget, option.state.testFlag(State_On))));
    QProxyStyle::drawControl(CE_ToolButtonLabel, &words, &painter, widget);
}

/// A box to tick and its words, with a green frame around box and words when the keys are there.
void WithyStyle::drawTicked(ControlElement element, const QStyleOption* option, QPainter* painter,
                            const QWidget* widget) const {
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
    if (!button) return;
    QStyleOptionButton box(*button);
    box.state &= ~State_HasFocus;
    QProxyStyle::drawControl(element, &box, painter, widget);
    if (option->state & State_HasFocus) paintFocus(*painter, option->rect);
}

} // namespace withy::ui
