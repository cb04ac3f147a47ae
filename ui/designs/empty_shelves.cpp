// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/empty_shelves.h"

#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/spacing.h"

#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

EmptyShelves::EmptyShelves(QWidget* parent)
    : QWidget(parent), draw_(new QPushButton(tr("Draw your &first piece"))) {
    draw_->setObjectName(QStringLiteral("designs.first"));
    draw_->setProperty("look", QStringLiteral("main"));
    auto* head = new TextLabel(TypeRole::title, tr("Nothing on the shelves yet"));
    auto* words =
        new TextLabel(TypeRole::text,
                      tr("Choose what it stands in, or how it is bound. Then say what goes in, one kind of "
                         "stem at a time; it is drawn to scale as you go."),
                      Ink::second);
    words->setWordWrap(true);
    onGrid(words, &QWidget::setMaximumWidth, 110);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(grid(34), grid(8), pageMargin(), pageMargin());
    column->setSpacing(grid(3));
    column->addWidget(head, 0, Qt::AlignLeft);
    column->addWidget(words);
    column->addWidget(draw_, 0, Qt::AlignLeft);
    column->addStretch(1);
    setFocusProxy(draw_);
    connect(draw_, &QPushButton::clicked, this, [this] { Q_EMIT newAsked(draw_); });
}

void EmptyShelves::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& palette = currentPalette();
    const int under = draw_->geometry().bottom() + grid(10);
    const int apart = std::max((height() - under - grid(10)) / 2, grid(14));
    for (int i = 0; i < 3; ++i) {
        const int y = under + i * apart;
        if (y > height() - grid(8)) break;
        painter.setPen(QPen(palette.of(Role::ink), 2));
        painter.drawLine(grid(1), y, width() - pageMargin(), y);
        painter.setFont(typeFont(TypeRole::head));
        painter.drawText(QRect(grid(1), y + grid(1), grid(40), grid(8)), Qt::AlignLeft | Qt::AlignTop,
                         groupWords(static_cast<DesignGroup>(i)));
    }
}

} // namespace withy::ui
