// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/order_figures.h"

#include "ui/common/figure.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

OrderFigures::OrderFigures(QWidget* parent)
    : QWidget(parent)
    , whose_(new TextLabel(TypeRole::strong))
    , row_(new QHBoxLayout)
    , working_(new WorkingPanel) {
    setObjectName(QStringLiteral("season.orders.figures"));
    whose_->setObjectName(QStringLiteral("season.orders.whose"));
    whose_->setWordWrap(true);
    row_->setSpacing(grid(2));
    row_->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(1), 0, grid(2));
    column->setSpacing(grid(1));
    column->addWidget(whose_);
    column->addLayout(row_);
    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout(inside);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(working_);
    rows->addStretch(1);
    room_ = scrolledPage(inside); // two hundred bookings are a long sum
    room_->hide();
    column->addWidget(room_);
    connect(working_, &WorkingPanel::leadTo, this, &OrderFigures::leadTo);
}

void OrderFigures::addFigure() {
    auto* label = new TextLabel(TypeRole::caption, {}, Ink::caption);
    auto* figure = new FigureButton;
    figure->setObjectName(QStringLiteral("season.orders.figure.%1").arg(figures_.size()));
    row_->insertWidget(row_->count() - 1, label);
    row_->insertWidget(row_->count() - 1, figure);
    figures_.emplace_back(label, figure);
    connect(figure, &FigureButton::opened, this, [this, figure](bool on) { open(figure, on); });
}

void OrderFigures::setSums(const OrderSums& sums) {
    setVisible(!sums.figures.empty());
    whose_->setText(breakable(sums.whose));
    while (figures_.size() < sums.figures.size())
        addFigure();
    for (std::size_t i = 0; i < sums.figures.size(); ++i) {
        const auto& [name, f] = sums.figures[i];
        const auto [label, figure] = figures_[i];
        label->setText(name);
        figure->setFacts({f.words, f.means, f.working, f.leadsTo, f.leadWords, f.lines});
        if (figure->isChecked()) working_->setFacts(figure->facts());
    }
}

void OrderFigures::open(FigureButton* figure, bool on) {
    if (on) {
        for (const auto& [label, other] : figures_)
            if (other != figure) other->setChecked(false);
        working_->setFacts(figure->facts());
    }
    room_->setVisible(on);
}

} // namespace withy::ui
