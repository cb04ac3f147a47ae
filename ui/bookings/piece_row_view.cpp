// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/piece_row_view.h"

#include "ui/bookings/piece_details.h"
#include "ui/common/drawn_design.h"
#include "ui/common/figure.h"
#include "ui/common/stepper.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace withy::ui {

namespace {

QPushButton* rowLink(const QString& name) {
    auto* button = new QPushButton;
    button->setObjectName(name);
    button->setProperty("look", QStringLiteral("link"));
    button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    return button;
}

FigureFacts factsOf(const PieceFigure& figure, const model::Ref& leads, const QString& leadWords) {
    return {figure.figure, figure.means, figure.working, leads, leadWords, {}};
}

} // namespace

int PieceColumns::picture() {
    return grid(15);
}

int PieceColumns::count() {
    return grid(29);
}

int PieceColumns::worth() {
    return grid(26);
}

int PieceColumns::gap() {
    return grid(3);
}

PieceRowView::PieceRowView(Workbench& bench, Id<model::Line> line, QWidget* parent)
    : QWidget(parent), bench_(bench), line_(line), grid_(new QGridLayout) {
    makeParts();
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(1));
    rows->addLayout(grid_);
    rows->addWidget(working_);
    rows->addWidget(details_);
    rows->addWidget(new Rule(Rule::Kind::hair));
    connectParts();
    arrange();
    refresh();
}

void PieceRowView::makeParts() {
    const QString id = QStringLiteral("pieces.%1.").arg(line_.value);
    name_ = rowLink(id + QStringLiteral("design"));
    name_->setFont(typeFont(TypeRole::name));
    name_->setToolTip(tr("Opens the design"));
    stands_ = new TextLabel(TypeRole::caption, {}, Ink::second);
    stands_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    pieces_ = new Stepper(tr("Pieces"));
    pieces_->setObjectName(id + QStringLiteral("pieces"));
    spare_ = new Stepper(tr("Spare pieces"));
    spare_->setObjectName(id + QStringLiteral("spare"));
    stems_ = new FigureButton;
    stems_->setObjectName(id + QStringLiteral("stems"));
    stemsWords_ = new TextLabel(TypeRole::caption, tr("stems each"), Ink::second);
    making_ = new FigureButton;
    making_->setObjectName(id + QStringLiteral("making"));
    where_ = rowLink(id + QStringLiteral("where"));
    where_->setCheckable(true);
    where_->setToolTip(tr("Tables, drop, price and taking it out"));
    worth_ = new TextLabel(TypeRole::strong);
    priced_ = new TextLabel(TypeRole::caption, {}, Ink::second);
    for (auto* label : {worth_, priced_})
        label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    working_ = new WorkingPanel;
    working_->hide();
    details_ = new PieceDetails(bench_, line_);
    details_->hide();
}

void PieceRowView::connectParts() {
    connect(name_, &QPushButton::clicked, this, [this] {
        Q_EMIT leadTo({model::TableKind::designs, design_.value});
    });
    connect(pieces_, &Stepper::changed, this,
            [this](qint64 n) { take(edits::setPieces(bench_.season(), line_, n)); });
    connect(spare_, &Stepper::changed, this,
            [this](qint64 n) { take(edits::setSparePieces(bench_.season(), line_, n)); });
    for (auto* figure : {stems_, making_})
        connect(figure, &FigureButton::opened, this,
                [this, figure](bool open) { openWorking(figure, open); });
    connect(where_, &QPushButton::toggled, this, &PieceRowView::openDetails);
    connect(working_, &WorkingPanel::leadTo, this, &PieceRowView::leadTo);
    connect(details_, &PieceDetails::refused, this, &PieceRowView::refused);
    connect(details_, &PieceDetails::leadTo, this, &PieceRowView::leadTo);
}

void PieceRowView::take(const model::Edit& edit) {
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) refresh();
}

void PieceRowView::refresh() {
    const auto* line = bench_.season().lines.find(line_);
    if (!line) return;
    const auto row = pieceRow(bench_.season(), bench_.plan(), *line);
    // "One less in every one" may give the line a design of its own.
    if (std::exchange(design_, row.design) != row.design && picture_) picture_->showDesign(design_);
    name_->setText(asTyped(row.name));
    name_->setAccessibleName(tr("Design: %1").arg(row.name));
    stands_->setText(row.stands);
    pieces_->setAccessibleLabel(tr("Pieces of %1").arg(row.name));
    spare_->setAccessibleLabel(tr("Spare pieces of %1").arg(row.name));
    pieces_->follow(row.pieces);
    spare_->follow(row.spare);
    const model::Ref design{model::TableKind::designs, row.design.value};
    stems_->setFacts(factsOf(row.stems, design, tr("Change the design")));
    making_->setFacts(factsOf(row.making, design, tr("Change the making time")));
    making_->setVisible(!row.making.figure.isEmpty());
    if (stems_->isChecked()) working_->setFacts(stems_->facts());
    if (making_->isChecked()) working_->setFacts(making_->facts());
    where_->setText(asTyped(row.where));
    where_->setAccessibleName(tr("Where %1 stands: %2").arg(row.name, row.where));
    worth_->setText(row.worth);
    priced_->setText(row.priced);
    if (details_->isVisible()) details_->refresh();
}

void PieceRowView::setPicture(DrawnDesign* picture) {
    picture_ = picture;
    picture_->showDesign(design_);
    arrange();
}

void PieceRowView::setNarrow(bool narrow) {
    if (narrow_ == narrow) return;
    narrow_ = narrow;
    arrange();
}

void PieceRowView::arrange() {
    while (auto* item = grid_->takeAt(0))
        delete item;
    grid_->setContentsMargins(0, grid(1), 0, grid(1));
    grid_->setHorizontalSpacing(PieceColumns::gap());
    grid_->setVerticalSpacing(grid(1));
    for (int c = 0; c < 5; ++c) {
        grid_->setColumnMinimumWidth(c, 0);
        grid_->setColumnStretch(c, c == 1 ? 1 : 0);
    }
    const int first = narrow_ ? 0 : 1;
    if (picture_ && narrow_) picture_->hide();
    if (!narrow_) {
        grid_->setColumnMinimumWidth(0, PieceColumns::picture());
        for (const int c : {2, 3})
            grid_->setColumnMinimumWidth(c, PieceColumns::count());
        grid_->setColumnMinimumWidth(4, PieceColumns::worth());
        if (picture_) {
            grid_->addWidget(picture_, 0, 0, 2, 1);
            picture_->show(); // once it has its place: before, it would be a window
        }
    }
    auto* named = new QHBoxLayout;
    named->addWidget(name_);
    named->addWidget(stands_, 1);
    auto* stems = new QHBoxLayout;
    stems->addWidget(stems_);
    stems->addWidget(stemsWords_, 1);
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    if (narrow_) {
        grid_->addLayout(named, 0, first, 1, 4);
        grid_->addWidget(worth_, 0, 4);
        grid_->addWidget(pieces_, 1, 0, left);
        grid_->addLayout(stems, 1, 1, 1, 2);
        grid_->addWidget(making_, 1, 3, left);
        grid_->addWidget(priced_, 1, 4);
        grid_->addWidget(spare_, 2, 0, left);
        grid_->addWidget(where_, 2, 1, 1, 4);
        return;
    }
    grid_->addLayout(named, 0, first);
    grid_->addWidget(where_, 1, first, left);
    grid_->addWidget(pieces_, 0, 2, left);
    grid_->addWidget(spare_, 0, 3, left);
    grid_->addWidget(worth_, 0, 4);
    grid_->addLayout(stems, 1, 2);
    grid_->addWidget(making_, 1, 3, left);
    grid_->addWidget(priced_, 1, 4);
}

void PieceRowView::shutOthers(QWidget* but) {
    for (auto* figure : {stems_, making_}) {
        if (figure != but) figure->setChecked(false);
    }
    if (where_ != but) where_->setChecked(false);
}

void PieceRowView::openWorking(FigureButton* figure, bool open) {
    if (open) {
        shutOthers(figure);
        working_->setFacts(figure->facts());
    }
    working_->setVisible(open);
}

void PieceRowView::openDetails(bool open) {
    if (where_->isChecked() != open) {
        where_->setChecked(open);
        return;
    }
    if (open) {
        shutOthers(where_);
        details_->refresh();
    }
    details_->setVisible(open);
    if (open) details_->begin();
}

} // namespace withy::ui
