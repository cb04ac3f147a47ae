// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLayout;
class QPushButton;
class QScrollArea;
class QString;
class QWidget;

/// Small things that pages are put together from.
namespace withy::ui {

/// A grower's own words for a button, a menu or a label with a buddy: an "&" is shown and makes no mnemonic.
QString asTyped(const QString& words);
/// The other way: words as they are read, without the "&" of a mnemonic.
QString withoutMnemonic(const QString& words);

/// A size of so many steps of the grid (see grid()), set again when the size of the text changes:
/// onGrid(field, &QWidget::setFixedWidth, 26).
void onGrid(QWidget* widget, void (QWidget::*set)(int), double steps);
void fixedOnGrid(QWidget* widget, double wide, double high);

QPushButton* namedButton(const QString& words, const char* name);
/// Looks like a word to press; never taller than its text.
QPushButton* linkButton(const QString& words, const char* name = nullptr);
/// `page` in an area without a frame that scrolls down and takes no focus of its own.
QScrollArea* scrolledPage(QWidget* page);
/// Takes everything out of a layout of widgets; they are deleted when their events are done.
void clearLayout(QLayout& layout);

} // namespace withy::ui
