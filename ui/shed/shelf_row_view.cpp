// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shelf_row_view.h"

#include "ui/common/figure.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/shed/free_graph.h"
#include "ui/shed/vessel_picture.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace withy::ui {

ShelfRowView::ShelfRowView(const QString& name, QWidget* parent)
    : QWidget(parent)
    , grid_(new QGridLayout(this))
    , names_(new QWidget)
    , vessel_(new VesselPicture)
    , name_(new TextLabel(TypeRole::strong))
    , under_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , graph_(new FreeGraph)
    , ends_(new QWidget)
    , lowest_(new FigureButton)
    , because_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , working_(new WorkingPanel) {
    setObjectName(name);
    lowest_->setObjectName(name + QStringLiteral(".lowest"));
    auto* lead = new QHBoxLayout(names_);
    lead->setContentsMargins(0, 0, 0, 0);
    lead->setSpacing(grid(2));
    lead->addWidget(vessel_, 0, Qt::AlignTop);
    vessel_->hide();
    auto* names = new QVBoxLayout;
    names->setContentsMargins(0, 0, 0, 0);
    names->setSpacing(0);
    lead->addLayout(names, 1);
    names->addWidget(name_);
    names->addWidget(under_);
    names->addStretch(1);
    name_->setWordWrap(true);
    under_->setWordWrap(true);
    for (int i = 0; i < 4; ++i) {
        auto* figure = new TextLabel(i == 0 ? TypeRole::strong : TypeRole::text);
        figure->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        figures_.push_back(figure);
    }
    auto* ends = new QVBoxLayout(ends_);
    ends->setContentsMargins(0, 0, 0, 0);
    ends->setSpacing(0);
    ends->addWidget(lowest_, 0, Qt::AlignLeft);
    ends->addWidget(because_);
    ends->addStretch(1);
    because_->setWordWrap(true);
    working_->hide();
    grid_->setContentsMargins(0, grid(1), 0, grid(1));
    grid_->setHorizontalSpacing(grid(2));
    grid_->setVerticalSpacing(grid(1));
    lay();
    connect(lowest_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &ShelfRowView::leadTo);
}

int ShelfRowView::nameWidth() {
    return grid(50);
}

int ShelfRowView::figureWidth() {
    return grid(15);
}

int ShelfRowView::lowestWidth() {
    return grid(52);
}

void ShelfRowView::setVessel(const std::optional<VesselDrawing>& vessel) {
    vessel_->setVessel(vessel);
}

void ShelfRowView::setNarrow(bool narrow) {
    if (narrow_ == narrow) return;
    narrow_ = narrow;
    graph_->setDated(narrow);
    lay();
}

/// Widths follow the size of the text.
void ShelfRowView::dress() {
    names_->setFixedWidth(nameWidth());
    for (auto* figure : figures_)
        figure->setFixedWidth(figureWidth());
    ends_->setFixedWidth(lowestWidth());
}

void ShelfRowView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && names_->width() != nameWidth()) dress();
}

void ShelfRowView::lay() {
    dress();
    while (grid_->count() > 0)
        delete grid_->takeAt(0);
    for (int column = 0; column < 8; ++column)
        grid_->setColumnStretch(column, 0);
    // Not aligned in their cells: an aligned cell does not ask how high wrapped words are at its width.
    grid_->addWidget(names_, 0, 0);
    for (int i = 0; i < 4; ++i)
        grid_->addWidget(figures_[static_cast<std::size_t>(i)], 0, 1 + i, Qt::AlignTop);
    if (narrow_) {
        grid_->addWidget(ends_, 0, 5);
        grid_->setColumnStretch(5, 1);
        grid_->addWidget(graph_, 1, 0, 1, 6);
        grid_->addWidget(working_, 2, 0, 1, 6);
        return;
    }
    grid_->addWidget(graph_, 0, 5);
    grid_->setColumnStretch(5, 1);
    grid_->addWidget(ends_, 0, 6);
    grid_->addWidget(working_, 1, 0, 1, 7);
}

void ShelfRowView::setRow(const ShelfRow& row, std::optional<Day> today) {
    row_ = row;
    setAccessibleName(row.inWords);
    name_->setText(breakable(row.name));
    under_->setText(row.under);
    under_->setVisible(!row.under.isEmpty());
    const QString* words[] = {&row.onHand, &row.promised, &row.out, &row.dueBack};
    for (std::size_t i = 0; i < figures_.size(); ++i)
        figures_[i]->setText(*words[i]);
    graph_->setGraph(row.graph, today, row.inWords);
    const FigureFacts facts{row.lowest, tr("of %1").arg(row.name), row.working,
                            row.item,   tr("Show it in the shed"), {}};
    lowest_->setFacts(facts);
    markAs(lowest_, "asks", row.asks);
    working_->setFacts(facts);
    because_->setText(breakable(row.because));
    because_->setVisible(!row.because.isEmpty());
}

} // namespace withy::ui
