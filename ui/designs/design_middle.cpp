// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_middle.h"

#include "ui/common/colour_balance.h"
#include "ui/common/segments.h"
#include "ui/common/when_seen.h"
#include "ui/designs/design_view.h"
#include "ui/designs/from_above.h"
#include "ui/designs/water_curve.h"
#include "ui/paint/spacing.h"

#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace withy::ui {

DesignMiddle::DesignMiddle(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , sides_(new Segments(tr("Seen"), {tr("From the side"), tr("From above")}, Segments::Look::tabs))
    , drawings_(new QStackedWidget)
    , view_(new DesignView(bench))
    , above_(new FromAbove(bench))
    , colours_(new ColourBalance(QStringLiteral("designs")))
    , water_(new WaterPanel) {
    sides_->setObjectName(QStringLiteral("designs.sides"));
    drawings_->addWidget(view_);
    drawings_->addWidget(above_);
    auto* below = new QVBoxLayout;
    below->setContentsMargins(grid(3), 0, grid(3), grid(3));
    below->setSpacing(grid(3));
    below->addWidget(water_);
    below->addWidget(colours_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(1), 0, 0);
    column->setSpacing(grid(2));
    auto* top = new QHBoxLayout;
    top->setContentsMargins(grid(3), 0, grid(3), 0);
    top->addWidget(sides_);
    top->addStretch(1);
    column->addLayout(top);
    column->addWidget(drawings_, 1);
    column->addLayout(below);
    connect(sides_, &Segments::chosen, drawings_, &QStackedWidget::setCurrentIndex);
    connect(view_, &DesignView::refused, this, &DesignMiddle::refused);
    connect(colours_, &ColourBalance::mendAsked, this,
            [this](const model::Edit& edit) { Q_EMIT refused(bench_.apply(edit)); });
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    // After the drawing is painted anew: what it says of water and colours takes as long again.
    auto* soon = new QTimer(this);
    soon->setSingleShot(true);
    connect(soon, &QTimer::timeout, seen, &WhenSeen::ask);
    connect(&bench_, &Workbench::planned, soon, qOverload<>(&QTimer::start));
    connect(&bench_, &Workbench::changed, soon, qOverload<>(&QTimer::start));
}

void DesignMiddle::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    view_->showDesign(design);
    above_->showDesign(design);
    refresh();
}

void DesignMiddle::setNarrow(bool narrow) {
    drawings_->setMinimumHeight(narrow ? grid(80) : grid(70));
    drawings_->setMaximumHeight(narrow ? grid(80) : QWIDGETSIZE_MAX);
}

void DesignMiddle::refresh() {
    if (!design_ || !bench_.season().designs.find(*design_)) return;
    colours_->setView(designColours(bench_.season(), *design_, bench_.today()));
    water_->setView(waterView(bench_.season(), bench_.plan(), *design_, bench_.today()));
}

} // namespace withy::ui
