// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/caution_rows.h"

#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/garden_words.h"
#include "ui/paint/icons.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// The ink triangle of a caution; never osier.
class Triangle : public QWidget {
public:
    Triangle() {
        fixedOnGrid(this, 5, 5);
        setAccessibleName(CautionRows::tr("Caution"));
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        icon(IconName::caution, currentPalette()).paint(&painter, rect());
    }
};

} // namespace

CautionRows::CautionRows(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), rows_(new QVBoxLayout(this)) {
    rows_->setContentsMargins(0, grid(1), 0, 0);
    rows_->setSpacing(grid(1));
}

void CautionRows::show(Id<model::Plant> plant) {
    QStringList words;
    for (const auto& h : bench_.season().plantHazards) {
        if (h.plant == plant) words << cautionWords(h);
    }
    const QString all = words.join(QLatin1Char('\n'));
    if (all == shown_) return;
    shown_ = all;
    clearLayout(*rows_);
    for (const auto& w : words) {
        auto* line = new QWidget;
        auto* row = new QHBoxLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(grid(2));
        row->addWidget(new Triangle, 0, Qt::AlignTop);
        auto* label = new TextLabel(TypeRole::text, w);
        label->setWordWrap(true);
        row->addWidget(label, 1);
        rows_->addWidget(line);
    }
    setVisible(!words.isEmpty());
}

RecordTableSpec hazardSpec() {
    RecordTableSpec spec;
    spec.kind = model::TableKind::plantHazards;
    spec.columns = {"kind", "text", "basis", "source"};
    spec.parent = std::pair<std::string, std::int64_t>{"plant", 0};
    return spec;
}

} // namespace withy::ui
