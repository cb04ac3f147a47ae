// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/list_and_detail.h"

#include "ui/paint/spacing.h"

#include <QResizeEvent>
#include <QScrollArea>

namespace withy::ui {

namespace {

/// Under this width the detail goes below the list.
int narrowWidth() {
    return grid(190);
}

} // namespace

ListAndDetail::ListAndDetail(QWidget* list, QWidget* detail, QWidget* parent)
    : QSplitter(Qt::Horizontal, parent), list_(list) {
    auto* scroller = new QScrollArea;
    scroller->setWidgetResizable(true);
    scroller->setFrameShape(QFrame::NoFrame);
    scroller->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroller->setFocusPolicy(Qt::NoFocus);
    scroller->setWidget(detail);
    scroller_ = scroller;
    setChildrenCollapsible(false);
    setHandleWidth(1);
    addWidget(list_);
    addWidget(scroller_);
    connect(this, &QSplitter::splitterMoved, this, [this] { moved_ = !arranging_; });
}

void ListAndDetail::setListShare(int percent) {
    share_ = percent;
    moved_ = false;
    arrange();
}

void ListAndDetail::resizeEvent(QResizeEvent* event) {
    QSplitter::resizeEvent(event);
    arrange();
}

void ListAndDetail::arrange() {
    const auto wanted = width() < narrowWidth() ? Qt::Vertical : Qt::Horizontal;
    const bool turned = wanted != orientation();
    if (moved_ && !turned) return;
    arranging_ = true;
    setOrientation(wanted);
    const int room = wanted == Qt::Horizontal ? width() : height();
    const int list = wanted == Qt::Horizontal ? room * share_ / 100 : room * 45 / 100;
    setSizes({list, room - list});
    arranging_ = false;
    moved_ = false;
}

} // namespace withy::ui
