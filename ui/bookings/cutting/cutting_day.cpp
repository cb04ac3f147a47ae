// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/cutting_day.h"

#include "ui/bookings/cutting/tally_panel.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/tally_rows.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr int tallySide = 0;

} // namespace

CuttingDay::CuttingDay(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , facts_(new TextLabel(TypeRole::text, {}, Ink::second))
    , earlier_(namedButton(tr("Da&y before"), "cutting.earlier"))
    , later_(namedButton(tr("Day &after"), "cutting.later"))
    , tally_(new TallyPanel(bench))
    , line_(new QFrame)
    , panes_(new QHBoxLayout) {
    setObjectName(QStringLiteral("cutting"));
    line_->setProperty("look", QStringLiteral("upright"));
    line_->hide();
    panes_->setContentsMargins(0, 0, 0, 0);
    panes_->setSpacing(0);
    panes_->addWidget(tally_, 1);
    panes_->addWidget(line_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(makeHead());
    all->addLayout(panes_, 1);
    connect(tally_, &TallyPanel::refused, this, &CuttingDay::refused);
    connect(tally_, &TallyPanel::leadTo, this, &CuttingDay::leadTo);
    connect(tally_, &TallyPanel::dayChanged, this, &CuttingDay::showHead);
    connect(&bench_, &Workbench::changed, this, &CuttingDay::showHead);
}

QWidget* CuttingDay::makeHead() {
    auto* head = new QWidget;
    auto* title = new TextLabel(TypeRole::title, tr("Cutting day"));
    title->setObjectName(QStringLiteral("cutting.title"));
    facts_->setObjectName(QStringLiteral("cutting.facts"));
    facts_->setWordWrap(true);
    auto* back = namedButton(tr("Ba&ck to the booking"), "cutting.back");
    auto* list = namedButton(tr("C&utting list"), "cutting.list");
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    row->addWidget(title, 1);
    for (auto* button : {earlier_, later_, list, back})
        row->addWidget(button, 0, Qt::AlignVCenter);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(pageMargin(), grid(2), pageMargin(), grid(2));
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(facts_);
    connect(back, &QPushButton::clicked, this, &CuttingDay::backAsked);
    connect(list, &QPushButton::clicked, this, &CuttingDay::listAsked);
    connect(earlier_, &QPushButton::clicked, this, [this] { stepDay(-1); });
    connect(later_, &QPushButton::clicked, this, [this] { stepDay(1); });
    return head;
}

void CuttingDay::show(Id<model::Booking> booking) {
    tally_->show(booking);
    showHead();
    Q_EMIT bookingShown(booking.value);
}

std::optional<Id<model::Booking>> CuttingDay::booking() const {
    return tally_->booking();
}

void CuttingDay::showHead() {
    if (const auto id = booking()) facts_->setText(tallyHead(bench_.season(), *id, tally_->day()));
}

void CuttingDay::stepDay(int by) {
    tally_->setDay(tally_->day() + by);
}

void CuttingDay::setBeside(QWidget* panel) {
    delete beside_;
    delete sides_;
    beside_ = panel;
    sides_ = new Segments(tr("Side of the page"), {tr("Tally"), tr("Share-out")}, Segments::Look::tabs);
    sides_->setObjectName(QStringLiteral("cutting.sides"));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(pageMargin(), 0, pageMargin(), 0);
    row->addWidget(sides_);
    static_cast<QVBoxLayout*>(layout())->insertLayout(1, row);
    connect(sides_, &Segments::chosen, this, &CuttingDay::arrange);
    panes_->addWidget(panel, 1);
    arrange();
}

bool CuttingDay::commit() {
    return tally_->keep();
}

void CuttingDay::enter() {
    tally_->enter();
}

void CuttingDay::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    if (!tally_->stepBack()) Q_EMIT backAsked();
}

/// Side by side where both have room, else the chosen one.
void CuttingDay::arrange() {
    if (!beside_) return;
    const bool narrow = width() < grid(260);
    const bool tallyOnly = sides_->current() <= tallySide;
    sides_->setVisible(narrow);
    line_->setVisible(!narrow);
    tally_->setVisible(!narrow || tallyOnly);
    beside_->setVisible(!narrow || !tallyOnly);
    tally_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : std::max(grid(150), width() * 9 / 20));
}

void CuttingDay::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void CuttingDay::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && panes_) arrange();
}

} // namespace withy::ui
