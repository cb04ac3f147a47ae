// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

class QLayout;
class QPushButton;
class QScrollArea;
class QStackedWidget;
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
/// Does it now, and again for every theme and size of text: for pictures, which keep the ink they were made
/// with.
void dressAgain(QWidget* widget, std::function<void()> dress);
/// Sets a property the style reads while it paints, such as "wrong".
void markAs(QWidget* widget, const char* property, bool on);

QPushButton* namedButton(const QString& words, const char* name);
/// Looks like a word to press; never taller than its text.
QPushButton* linkButton(const QString& words, const char* name = nullptr);
/// `page` in an area without a frame that scrolls down and takes no focus of its own.
QScrollArea* scrolledPage(QWidget* page);
/// Puts a page in place of the blank that kept its place; in view if that was.
void replaceIn(QStackedWidget& stack, int index, QWidget* with);
/// Takes everything out of a layout of widgets; they are deleted when their events are done.
void clearLayout(QLayout& layout);

} // namespace withy::ui
