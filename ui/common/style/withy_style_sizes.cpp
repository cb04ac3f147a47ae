// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style.h"
#include "ui/common/style/looks.h"
#include "ui/common/style/mnemonics.h"
#include "ui/common/style/style_parts.h"
#include "ui/common/style/ticks.h"
#include "ui/common/style/withy_style.h"
#include "ui/paint/spacing.h"

#include <QAbstractItemView>
#include <QListWidget>
#include <QStyleOption>

namespace withy::ui {

namespace {

/// Between a box to tick, or its words, and the frame of the focus; pixels.
constexpr int besideATick = 4;
constexpr int aboveATick = 2;

/// A tick in a form begins where the text of its neighbours does.
int besideTick(const QWidget* widget) {
    return lookOf(widget) == Look::field ? fieldBox(widget).side : besideATick;
}

/// What Qt takes off a tool button's size again, whatever the style.
constexpr QSize toolButtonShort{3, 3};

QSize headerSize(const QStyleOptionHeader& option) {
    QSize size = option.fontMetrics.size(0, option.text);
    if (option.sortIndicator != QStyleOptionHeader::None) size.rwidth() += arrowWidth();
    return size + QSize(2 * grid(2), 2 * grid(1) + 1);
}

bool isTick(QStyle::SubElement element) {
    switch (element) {
    case QStyle::SE_CheckBoxIndicator:
    case QStyle::SE_CheckBoxContents:
    case QStyle::SE_CheckBoxFocusRect:
    case QStyle::SE_RadioButtonIndicator:
    case QStyle::SE_RadioButtonContents:
    case QStyle::SE_RadioButtonFocusRect:
        return true;
    default:
        return false;
    }
}

} // namespace

QRect WithyStyle::subElementRect(SubElement element, const QStyleOption* option,
                                 const QWidget* widget) const {
    const QRect& outer = option->rect;
    if (isTick(element)) {
        QStyleOptionButton inner;
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) inner = *button;
        const int side = besideTick(widget);
        inner.rect = outer.adjusted(side, aboveATick, -side, -aboveATick);
        return QProxyStyle::subElementRect(element, &inner, widget);
    }
    switch (element) {
    case SE_LineEditContents:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame && frame->lineWidth == 0)
            return outer;
        return fieldBox(widget).inside(outer);
    case SE_PushButtonContents:
        return buttonBox(widget).inside(outer);
    case SE_ShapedFrameContents:
        if (const auto margins = frameMargins(widget)) return outer.marginsRemoved(*margins);
        break;
    case SE_HeaderLabel:
        return outer.adjusted(grid(2), grid(1), -grid(2), -grid(1) - 1);
    case SE_ProgressBarGroove:
    case SE_ProgressBarContents:
    case SE_ProgressBarLabel:
        return outer;
    default:
        break;
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

QRect WithyStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                 const QWidget* widget) const {
    if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option))
        return visualRect(option->direction, option->rect, comboBoxPart(*combo, part, widget));
    if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option))
        return visualRect(option->direction, option->rect, spinBoxPart(*spin, part, widget));
    if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        slider && control == CC_ScrollBar)
        return visualRect(option->direction, option->rect, scrollBarPart(*slider, part));
    return QProxyStyle::subControlRect(control, option, part, widget);
}

QSize WithyStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                   const QWidget* widget) const {
    switch (type) {
    case CT_PushButton:
        return buttonBox(widget).around(contents);
    case CT_ToolButton:
        if (lookOf(widget) == Look::plain) break;
        return buttonBox(widget).around(contents + toolButtonShort);
    case CT_LineEdit:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame && frame->lineWidth == 0)
            return contents;
        return fieldBox(widget).around(contents);
    case CT_ComboBox:
    case CT_SpinBox:
        return fieldBox(widget).around(contents) + QSize(arrowWidth(), 0);
    case CT_CheckBox:
    case CT_RadioButton:
        return QProxyStyle::sizeFromContents(type, option, contents, widget) +
               QSize(2 * besideTick(widget), 2 * aboveATick);
    case CT_HeaderSection:
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(option)) return headerSize(*head);
        break;
    case CT_MenuBarItem:
        return contents + QSize(2 * grid(2), 2 * grid(2));
    case CT_MenuItem: {
        const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
        const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        const bool line = item && item->menuItemType == QStyleOptionMenuItem::Separator;
        return line ? size : size.expandedTo({0, option->fontMetrics.height() + 2 * grid(1)});
    }
    case CT_ItemViewItem: {
        QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget) + QSize(0, 1);
        if (qobject_cast<const QListWidget*>(widget)) size = size.expandedTo({0, controlInRow() + 1});
        return size;
    }
    case CT_ProgressBar:
        return contents.expandedTo({0, grid(3) + 2});
    default:
        break;
    }
    return QProxyStyle::sizeFromContents(type, option, contents, widget);
}

int WithyStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    switch (metric) {
    case PM_ScrollBarExtent:
        return grid(3);
    case PM_ScrollBarSliderMin:
        return control();
    case PM_ScrollView_ScrollBarSpacing:
        return 0;
    case PM_MenuBarHMargin:
        return grid(2);
    case PM_MenuBarVMargin:
    case PM_MenuBarPanelWidth:
        return 0;
    case PM_MenuBarItemSpacing:
        return grid(1);
    case PM_ToolTipLabelFrameWidth:
        return grid(1);
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
    case PM_SmallIconSize:
        return tickSide();
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
        return grid(2);
    case PM_FocusFrameHMargin: // the words of an item stand this far in
        if (qobject_cast<const QAbstractItemView*>(widget)) return grid(2) - 1;
        break;
    case PM_MenuButtonIndicator:
        return arrowWidth();
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
        return 0;
    default:
        break;
    }
    return QProxyStyle::pixelMetric(metric, option, widget);
}

int WithyStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* more) const {
    switch (hint) {
    case SH_Table_GridLineColor:
        return static_cast<int>(currentPalette().of(Role::line).rgba());
    case SH_UnderlineShortcut:
        return Mnemonics::areShown() ? 1 : 0;
    case SH_ComboBox_Popup: // the list stands under its field, not over it
    case SH_Widget_Animation_Duration:
        return 0;
    default:
        return QProxyStyle::styleHint(hint, option, widget, more);
    }
}

} // namespace withy::ui
