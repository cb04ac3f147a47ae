// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/findings_panel.h"

#include "ui/common/finding_rows.h"
#include "ui/common/text_label.h"
#include "ui/logic/models/finding_list.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

bool touchesAccepted(const model::Edit& edit) {
    const auto isOne = [](const model::Ref& ref) { return ref.table == model::TableKind::acceptedFindings; };
    return std::any_of(edit.erases().begin(), edit.erases().end(), isOne) ||
           std::any_of(edit.puts().begin(), edit.puts().end(),
                       [](const auto& r) { return std::holds_alternative<model::AcceptedFinding>(r); });
}

} // namespace

FindingsPanel::FindingsPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , rows_(new FindingRows(bench, QStringLiteral("findings.rows")))
    , head_(new TextLabel(TypeRole::head))
    , shut_(new QPushButton(tr("Shut"))) {
    setObjectName(QStringLiteral("findings"));
    setProperty("look", QStringLiteral("mist"));
    setFixedWidth(listWidth());
    rows_->nameBookings();
    shut_->setObjectName(QStringLiteral("findings.shut"));
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(rows_);
    auto* top = new QHBoxLayout;
    top->addWidget(head_, 1);
    top->addWidget(shut_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(grid(4), grid(3), grid(3), grid(3));
    column->addLayout(top);
    column->addWidget(scroll, 1);
    connect(rows_, &FindingRows::leadTo, this, &FindingsPanel::leadTo);
    connect(rows_, &FindingRows::refused, this, &FindingsPanel::refused);
    connect(shut_, &QPushButton::clicked, this, &QWidget::hide);
    connect(&bench_, &Workbench::planned, this, &FindingsPanel::refresh);
    connect(&bench_, &Workbench::changed, this, [this](const model::Edit& done) {
        if (touchesAccepted(done)) refresh(); // accepting changes no plan
    });
    hide();
}

void FindingsPanel::refresh() {
    if (!isVisible()) return; // toggle() asks again
    auto list = findingsOfSeason(bench_.season(), bench_.plan());
    const int asking = countAsking(list);
    head_->setText(asking ? tr("%n thing(s) to look at", nullptr, asking) : tr("Nothing asks for you"));
    rows_->setFindings(std::move(list));
}

void FindingsPanel::toggle() {
    if (isVisible()) return hide();
    show();
    refresh();
    shut_->setFocus();
}

void FindingsPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return hide();
    QWidget::keyPressEvent(event);
}

} // namespace withy::ui
