// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_numbers.h"

#include "ui/common/field_edit.h"
#include "ui/common/finding_rows.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/designs/figure_row.h"
#include "ui/logic/format.h"
#include "ui/paint/icons.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr std::size_t mostUses = 4;

QVBoxLayout* column() {
    auto* box = new QVBoxLayout;
    box->setSpacing(0);
    return box;
}

} // namespace

DesignNumbers::DesignNumbers(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , stems_(new FigureRow(QStringLiteral("designs.figure.stems"), FigureRow::Look::leading))
    , uses_(column())
    , figures_(column())
    , minutes_(new FieldEdit(bench, model::TableKind::designs, "minutes"))
    , price_(new FieldEdit(bench, model::TableKind::designs, "price"))
    , notes_(column())
    , findings_(new FindingRows(bench, QStringLiteral("designs.findings"))) {
    notes_->setSpacing(grid(3));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(grid(5), grid(3), grid(5), grid(4));
    all->setSpacing(grid(2));
    all->addWidget(stems_);
    all->addLayout(uses_);
    all->addWidget(new Rule(Rule::Kind::hair));
    all->addLayout(figures_);
    all->addWidget(new Rule(Rule::Kind::hair));
    all->addWidget(fieldRow(tr("Minutes to make one"), minutes_));
    all->addWidget(fieldRow(tr("Price of one"), price_));
    all->addWidget(new Rule(Rule::Kind::hair));
    all->addLayout(notes_);
    all->addWidget(findings_);
    all->addStretch(1);
    connect(findings_, &FindingRows::leadTo, this, &DesignNumbers::leadTo);
    connect(findings_, &FindingRows::refused, this, &DesignNumbers::refused);
    connect(stems_, &FigureRow::leadTo, this, &DesignNumbers::leadTo);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
    connect(&bench_, &Workbench::planned, seen, &WhenSeen::ask);
}

QWidget* DesignNumbers::fieldRow(const QString& label, FieldEdit* field) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* words = new TextLabel(TypeRole::text, label);
    words->setBuddy(field);
    words->setWordWrap(true);
    line->addWidget(words, 1);
    onGrid(field, &QWidget::setFixedWidth, 26);
    field->setBoxed(true);
    line->addWidget(field);
    connect(field, &FieldEdit::refused, this, &DesignNumbers::refused);
    return row;
}

void DesignNumbers::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    const auto id = design ? std::optional(design->value) : std::nullopt;
    minutes_->show(id);
    price_->show(id);
    refresh();
}

void DesignNumbers::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    if (!d) return;
    stems_->setFigure(stemsFigure(bench_.season(), d->id), bench_.season().theSettings().units);
    fillUses();
    fillFigures();
    fillNotes();
    findings_->setHere({model::TableKind::designs, d->id.value});
    findings_->setFindings(findingsOfDesign(bench_.season(), bench_.plan(), d->id));
}

/// A long name is shortened rather than the figures pushed out of sight.
int DesignNumbers::useRoom() const {
    return std::max(grid(44), width() - 2 * grid(5) - grid(2));
}

void DesignNumbers::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width() && design_ &&
        bench_.season().designs.find(*design_))
        fillUses();
}

void DesignNumbers::fillUses() {
    clearLayout(*uses_);
    const auto uses = edits::usesOf(bench_.season(), *design_);
    const auto stems = stemsOf(bench_.season(), *design_);
    for (std::size_t i = 0; i < uses.size() && i < mostUses; ++i) {
        const QString words = useWords(uses[i], stems);
        auto* link = new QPushButton;
        QFont font = typeFont(TypeRole::text);
        font.setWeight(QFont::DemiBold);
        link->setText(asTyped(QFontMetrics(font).elidedText(words, Qt::ElideRight, useRoom())));
        link->setAccessibleName(words);
        link->setMinimumWidth(grid(20)); // a wide one does not hold the panel wide
        link->setObjectName(QStringLiteral("designs.use.%1").arg(uses[i].line.value));
        link->setProperty("look", QStringLiteral("link"));
        link->setToolTip(tr("Show the booking: %1").arg(words));
        connect(link, &QPushButton::clicked, this, [this, id = uses[i].booking] {
            Q_EMIT leadTo({model::TableKind::bookings, id.value});
        });
        uses_->addWidget(link, 0, Qt::AlignLeft);
    }
    const auto more = uses.size() > mostUses ? uses.size() - mostUses : 0;
    QString words;
    if (uses.empty()) words = usedWords(bench_.season(), *design_);
    if (more > 0) words = tr("and in %n more", nullptr, static_cast<int>(more));
    if (words.isEmpty()) return;
    auto* label = new TextLabel(TypeRole::caption, words, Ink::caption);
    label->setWordWrap(true);
    uses_->addWidget(label);
}

FigureRow* DesignNumbers::figureRow(const QString& id) {
    auto* row = new FigureRow(id);
    connect(row, &FigureRow::leadTo, this, &DesignNumbers::leadTo);
    figures_->addWidget(row);
    return row;
}

void DesignNumbers::fillFigures() {
    const auto figures = designFigures(bench_.season(), bench_.plan(), *design_);
    // Rows stay: an opened working stays open while the figures move.
    while (rows_.size() < figures.size())
        rows_.push_back(figureRow(QStringLiteral("designs.figure.%1").arg(rows_.size())));
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        rows_[i]->setVisible(i < figures.size());
        if (i < figures.size()) rows_[i]->setFigure(figures[i], bench_.season().theSettings().units);
    }
}

void DesignNumbers::fillNotes() {
    const QStringList now = designNotes(bench_.season(), bench_.plan(), *design_, bench_.today());
    if (now == said_ && notes_->count() > 0) return;
    said_ = now;
    clearLayout(*notes_);
    for (const auto& words : now) {
        auto* row = new QWidget;
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(0, 0, 0, 0);
        line->setSpacing(grid(2));
        auto* mark = new QLabel;
        dressAgain(mark, [mark] {
            mark->setPixmap(iconPixmap(IconName::caution, currentPalette().of(Role::ink), grid(4.5),
                                       mark->devicePixelRatioF()));
        });
        line->addWidget(mark, 0, Qt::AlignTop);
        auto* label = new TextLabel(TypeRole::text, words);
        label->setWordWrap(true);
        line->addWidget(label, 1);
        notes_->addWidget(row);
    }
}

} // namespace withy::ui
