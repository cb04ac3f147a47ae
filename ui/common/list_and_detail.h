// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>

namespace withy::ui {

/// A list at the left and what is chosen of it at the right; below it where the page is narrow. The
/// detail scrolls by itself. The bar between may be moved.
class ListAndDetail : public QSplitter {
    Q_OBJECT

public:
    ListAndDetail(QWidget* list, QWidget* detail, QWidget* parent = nullptr);
    /// Parts of a hundred of the width that the list takes, where there is room; 60 to begin with.
    void setListShare(int percent);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    QWidget* list_;
    QWidget* scroller_;
    int share_ = 60;
    bool moved_ = false;
    bool arranging_ = false;
};

} // namespace withy::ui
