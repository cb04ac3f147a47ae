// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyleOption>

#include <optional>

class QPainter;
class QWidget;

/// The drawing that needs nothing of the style it is part of.
namespace withy::ui {

/// A part of the page drawn as ground, line or opened working.
void paintGround(const QStyleOption& option, QPainter& painter, const QWidget* widget);

/// How far the frame of a list, a table or a text stands from what it holds; nothing when it is none of them.
std::optional<QMargins> frameMargins(const QWidget* widget);
/// Only what has frame margins.
void paintFrame(const QStyleOption& option, QPainter& painter, const QWidget* widget);

void paintItemGround(const QStyleOptionViewItem& option, QPainter& painter);
void paintHeaderSection(const QStyleOptionHeader& option, QPainter& painter);
void paintMenuBarItem(const QStyleOptionMenuItem& option, QPainter& painter);
void paintSpinBox(const QStyleOptionSpinBox& option, QPainter& painter, const QWidget* widget);
void paintComboBox(const QStyleOptionComboBox& option, QPainter& painter, const QWidget* widget);
void paintScrollBar(const QStyleOptionSlider& option, QPainter& painter);
void paintProgress(const QStyleOptionProgressBar& option, QPainter& painter);

QRect scrollBarPart(const QStyleOptionSlider& option, QStyle::SubControl part);
QRect comboBoxPart(const QStyleOptionComboBox& option, QStyle::SubControl part, const QWidget* widget);
QRect spinBoxPart(const QStyleOptionSpinBox& option, QStyle::SubControl part, const QWidget* widget);

/// The list that drops down from a field.
bool isPopup(const QWidget* widget);

} // namespace withy::ui
