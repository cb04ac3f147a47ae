// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/piece_details.h"

#include "ui/common/field_edit.h"
#include "ui/common/line_control.h"
#include "ui/common/stepper.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/paint/spacing.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

std::int64_t perTable(const model::Season& season, Id<model::Line> line, Id<model::VenueTable> table) {
    for (const auto& p : season.placements) {
        if (p.line == line && p.table == table) return p.perTable;
    }
    return 0;
}

} // namespace

PieceDetails::PieceDetails(Workbench& bench, Id<model::Line> line, QWidget* parent)
    : QWidget(parent), bench_(bench), line_(line), offers_(new QWidget), tables_(new QWidget) {
    setProperty("look", QStringLiteral("working"));
    auto* offers = new QHBoxLayout(offers_);
    offers->setContentsMargins(0, 0, 0, 0);
    offers->setSpacing(grid(2));
    auto* tables = new QVBoxLayout(tables_);
    tables->setContentsMargins(0, 0, 0, 0);
    tables->setSpacing(grid(1));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    rows->setSpacing(grid(2));
    rows->addWidget(tables_);
    rows->addWidget(offers_);
    rows->addWidget(makeRest());
}

QWidget* PieceDetails::makeRest() {
    const QString id = QStringLiteral("pieces.%1.").arg(line_.value);
    auto* rest = new QWidget;
    drop_ = new QuietCombo(rest);
    drop_->setObjectName(id + QStringLiteral("drop"));
    drop_->setAccessibleName(tr("Which drop"));
    note_ = new FieldEdit(bench_, model::TableKind::lines, "note");
    price_ = new FieldEdit(bench_, model::TableKind::lines, "unit_price");
    auto* out = new QPushButton(tr("Take out"));
    out->setObjectName(id + QStringLiteral("erase"));
    out->setToolTip(tr("Takes these pieces out of the booking; undo puts them back"));
    auto* grid = new QGridLayout(rest);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(ui::grid(3));
    grid->setVerticalSpacing(ui::grid(1));
    grid->setColumnStretch(1, 1);
    const std::pair<QString, QWidget*> parts[] = {
        {tr("Drop"), drop_}, {tr("Note"), note_}, {tr("Price of one"), price_}};
    int row = 0;
    for (const auto& [words, widget] : parts) {
        grid->addWidget(new TextLabel(TypeRole::text, words, Ink::second), row, 0);
        grid->addWidget(widget, row++, 1);
    }
    grid->addWidget(out, row, 0, 1, 2, Qt::AlignLeft);
    connect(drop_, &QComboBox::activated, this, [this](int i) {
        const auto drop = drop_->itemData(i).toLongLong();
        take(edits::setLineDrop(bench_.season(), line_,
                                drop ? std::optional(Id<model::Drop>(drop)) : std::nullopt));
    });
    connect(out, &QPushButton::clicked, this, [this] { take(edits::eraseLine(bench_.season(), line_)); });
    connect(note_, &FieldEdit::refused, this, &PieceDetails::refused);
    connect(price_, &FieldEdit::refused, this, &PieceDetails::refused);
    return rest;
}

void PieceDetails::take(const model::Edit& edit) {
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) refresh();
}

void PieceDetails::refresh() {
    const auto* line = bench_.season().lines.find(line_);
    if (!line) return;
    layTables(*line);
    fillDrops(*line);
    note_->show(line_.value);
    price_->show(line_.value);
}

void PieceDetails::layTables(const model::Line& line) {
    const auto& season = bench_.season();
    const auto tables = tablesOf(season, line.booking);
    const bool same = rows_.size() == tables.size() &&
                      std::equal(rows_.begin(), rows_.end(), tables.begin(),
                                 [](const auto& row, const auto* t) { return row.table == t->id; });
    if (!same || tables.empty()) {
        clearLayout(*tables_->layout());
        rows_.clear();
        for (const auto* t : tables) {
            auto* row = new QWidget;
            auto* across = new QHBoxLayout(row);
            across->setContentsMargins(0, 0, 0, 0);
            across->setSpacing(grid(3));
            const QString where = t->howMany == 1 ? tr("on %1").arg(loneTableWords(*t))
                                                  : tr("on each of %1").arg(tableWords(*t));
            auto* each = new Stepper(tr("Pieces %1").arg(where));
            each->setObjectName(QStringLiteral("pieces.%1.table.%2").arg(line_.value).arg(t->id.value));
            each->setRange(0, 1000);
            across->addWidget(each);
            across->addWidget(new TextLabel(TypeRole::text, where), 1);
            tables_->layout()->addWidget(row);
            connect(each, &Stepper::changed, this, [this, table = t->id](qint64 n) {
                take(edits::setPlacement(bench_.season(), line_, table, n));
            });
            rows_.push_back({t->id, row, each});
        }
        if (tables.empty()) {
            auto* none = new TextLabel(
                TypeRole::caption, tr("The venue has no tables yet. Say them at Brief: “12 trestles of 8”."),
                Ink::second);
            none->setWordWrap(true);
            tables_->layout()->addWidget(none);
        }
    }
    for (auto& row : rows_)
        row.perTable->follow(perTable(season, line_, row.table));
    QStringList words;
    const auto offers = placementOffers(season, line);
    for (const auto& offer : offers)
        words << offer.words;
    if (words == offered_) return;
    offered_ = words;
    clearLayout(*offers_->layout());
    for (const auto& offer : offers) {
        auto* button = new QPushButton(asTyped(offer.words));
        button->setObjectName(QStringLiteral("pieces.%1.offer.%2").arg(line_.value).arg(offer.table.value));
        button->setToolTip(tr("Puts all of them there"));
        connect(button, &QPushButton::clicked, this, [this, offer] {
            take(edits::setPlacement(bench_.season(), line_, offer.table, offer.perTable));
        });
        offers_->layout()->addWidget(button);
    }
    static_cast<QHBoxLayout*>(offers_->layout())->addStretch(1);
}

void PieceDetails::fillDrops(const model::Line& line) {
    if (drop_->view()->isVisible()) return; // being chosen from
    const QSignalBlocker quiet(drop_);
    drop_->clear();
    drop_->addItem(tr("not said yet"), 0);
    for (const auto& d : bench_.season().drops) {
        if (d.booking != line.booking) continue;
        drop_->addItem(QStringLiteral("%1, %2").arg(clock(d.time), text(d.place)),
                       QVariant::fromValue<qlonglong>(d.id.value));
        if (line.drop == d.id) drop_->setCurrentIndex(drop_->count() - 1);
    }
}

void PieceDetails::begin() {
    if (auto* first = offers_->findChild<QPushButton*>())
        first->setFocus();
    else if (!rows_.empty())
        rows_.front().perTable->setFocus();
    else
        drop_->setFocus();
}

} // namespace withy::ui
