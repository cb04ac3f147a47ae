// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/figure_row.h"

#include "ui/common/figure.h"
#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"

#include <QFontMetrics>
#include <QHBoxLayout>

namespace withy::ui {

FigureRow::FigureRow(const QString& id, Look look, QWidget* parent)
    : QWidget(parent)
    , label_(new TextLabel(look == Look::leading ? TypeRole::answer : TypeRole::text))
    , figure_(new FigureButton)
    , note_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , working_(new WorkingPanel)
    , look_(look) {
    figure_->setObjectName(id);
    if (look == Look::leading) figure_->setFont(typeFont(TypeRole::tally));
    note_->setWordWrap(true);
    auto* line = new QHBoxLayout;
    line->setSpacing(grid(2));
    if (look == Look::leading) {
        line->addWidget(figure_);
        line->addWidget(label_, 1, Qt::AlignBottom);
    } else {
        line->addWidget(label_, 1);
        line->addWidget(figure_);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(1), 0, grid(1));
    column->setSpacing(0);
    column->addLayout(line);
    column->addWidget(note_);
    column->addWidget(working_);
    working_->hide();
    connect(figure_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &FigureRow::leadTo);
}

void FigureRow::setFigure(const DesignFigure& f, model::UnitSystem units) {
    label_->setText(look_ == Look::leading ? f.means : f.label);
    note_->setText(f.note);
    note_->setVisible(!f.note.isEmpty());
    const FigureFacts facts{f.figure, f.means, f.working, f.leadsTo, f.leadWords, {}, units};
    figure_->setFacts(facts);
    if (look_ == Look::leading) { // the style measures a tool button by its usual font
        const QFontMetrics large(typeFont(TypeRole::tally));
        figure_->setMinimumSize(large.horizontalAdvance(f.figure) + grid(3), large.height());
    }
    working_->setFacts(facts);
}

} // namespace withy::ui
