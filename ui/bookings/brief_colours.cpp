// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/brief_colours.h"

#include "ui/bookings/quick_line.h"
#include "ui/common/record_table.h"
#include "ui/common/style.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_colours.h"

#include <QPainter>

namespace withy::ui {

ColourBar::ColourBar(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("brief.colourBar"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize ColourBar::sizeHint() const {
    return {grid(60), parts_.empty() ? 0 : grid(8)};
}

void ColourBar::setParts(const std::vector<Part>& parts, const QString& inWords) {
    parts_ = parts;
    setAccessibleName(tr("Wished colours: %1").arg(inWords));
    setToolTip(inWords);
    setVisible(!parts_.empty());
    updateGeometry();
    update();
}

void ColourBar::paintEvent(QPaintEvent*) {
    QPainter p(this);
    double sum = 0;
    for (const auto& part : parts_)
        sum += part.share;
    if (sum <= 0) return;
    const auto& palette = currentPalette();
    double x = 0;
    for (const auto& part : parts_) {
        const double w = part.share / sum * (width() - 1);
        const QRectF box(x + 0.5, 0.5, w - 1, height() - 1);
        p.setPen(QPen(palette.bloomEdge(part.colour), hairline));
        p.setBrush(part.colour);
        p.drawRect(box);
        x += w;
    }
}

BriefColours::BriefColours(Workbench& bench, QWidget* parent)
    : Group(tr("Wished colours"), parent)
    , bench_(bench)
    , bar_(new ColourBar)
    , table_(new RecordTable(bench, {.kind = model::TableKind::bookingColours,
                                     .columns = {"name", "colour", "share"},
                                     .parent = std::pair{std::string("booking"), std::int64_t{0}},
                                     .addRow = false}))
    , quick_(new QuickLine("brief.coloursLine", tr("Wished colours in one line"),
                           tr("Add more: teal 20, cream 10"),
                           [this](const QString& typed) { return addTyped(typed); }))
    , sum_(remark()) {
    setRemark(tr("shares may stay blank"));
    table_->setEmptyWords(tr("No colours wished for yet."));
    table_->growWithRows();
    add(bar_);
    add(sum_);
    add(table_);
    add(quick_);
    connect(table_, &RecordTable::refused, this, &BriefColours::refused);
    connect(table_, &RecordTable::blocked, this, &BriefColours::refused);
    connect(&bench_, &Workbench::changed, this, &BriefColours::refresh);
}

void BriefColours::showBooking(std::optional<Id<model::Booking>> id) {
    if (id_ != id) quick_->clear();
    id_ = id;
    table_->showParent(id ? std::optional(id->value) : std::nullopt);
    refresh();
}

void BriefColours::refresh() {
    const auto list = id_ ? coloursOf(bench_.season(), *id_) : std::vector<const model::BookingColour*>{};
    std::vector<ColourBar::Part> parts;
    for (const auto* c : list) {
        // A colour without a share still shows, as a tenth.
        const double share = c->share.value_or(10);
        parts.push_back({Palette::bloom(c->colour), share});
    }
    bar_->setParts(parts, coloursWords(list));
    const QString sum = sharesWords(list);
    sum_->setText(sum);
    sum_->setVisible(!sum.isEmpty());
}

QString BriefColours::addTyped(const QString& typed) {
    if (!id_) return {};
    const auto reading = readColours(bench_.season(), typed);
    if (!reading.ok()) return reading.sentence;
    return bench_.apply(edits::addColours(bench_.season(), *id_, reading.colours));
}

} // namespace withy::ui
