// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLayout;
class QPushButton;
class QScrollArea;
class QString;
class QWidget;

/// Small things that pages are put together from.
namespace withy::ui {

QPushButton* namedButton(const QString& words, const char* name);
/// Looks like a word to press; never taller than its text.
QPushButton* linkButton(const QString& words, const char* name = nullptr);
/// `page` in an area without a frame that scrolls down and takes no focus of its own.
QScrollArea* scrolledPage(QWidget* page);
/// Takes everything out of a layout of widgets; they are deleted when their events are done.
void clearLayout(QLayout& layout);

} // namespace withy::ui
