// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/flow_row.h"

#include "ui/paint/spacing.h"

#include <QWidget>

#include <algorithm>

namespace withy::ui {

FlowRow::FlowRow(QWidget* parent) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
    setSpacing(grid(2));
}

FlowRow::~FlowRow() {
    for (auto* item : items_)
        delete item;
}

void FlowRow::addItem(QLayoutItem* item) {
    items_.push_back(item);
}

int FlowRow::count() const {
    return static_cast<int>(items_.size());
}

QLayoutItem* FlowRow::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index) {
    auto* item = itemAt(index);
    if (item) items_.erase(items_.begin() + index);
    return item;
}

QSize FlowRow::minimumSize() const {
    QSize size;
    for (const auto* item : items_)
        size = size.expandedTo(item->minimumSize());
    return size;
}

QSize FlowRow::sizeHint() const {
    QSize size;
    for (const auto* item : items_) {
        size.rwidth() += item->sizeHint().width() + spacing();
        size.setHeight(std::max(size.height(), item->sizeHint().height()));
    }
    return size;
}

void FlowRow::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    place(rect, true);
}

int FlowRow::place(const QRect& rect, bool move) const {
    int x = rect.x();
    int y = rect.y();
    int line = 0;
    std::vector<std::pair<QLayoutItem*, QRect>> inLine;
    const auto settle = [&] { // on one middle line
        for (const auto& [item, at] : inLine)
            if (move) item->setGeometry(at.translated(0, (line - at.height()) / 2));
        inLine.clear();
    };
    for (auto* item : items_) {
        if (item->isEmpty()) continue;
        const QSize hint(
            std::min(item->sizeHint().width(), std::max(rect.width(), item->minimumSize().width())),
            item->sizeHint().height());
        if (x > rect.x() && x + hint.width() > rect.x() + rect.width()) {
            settle();
            x = rect.x();
            y += line + grid(1);
            line = 0;
        }
        inLine.emplace_back(item, QRect(QPoint(x, y), hint));
        x += hint.width() + spacing();
        line = std::max(line, hint.height());
    }
    settle();
    return y + line - rect.y();
}

} // namespace withy::ui
