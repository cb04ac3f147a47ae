// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/brief_venue.h"

#include "ui/bookings/quick_line.h"
#include "ui/common/record_form.h"
#include "ui/common/record_table.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_tables.h"

namespace withy::ui {

BriefVenue::BriefVenue(Workbench& bench, QWidget* parent)
    : Group(tr("The venue"), parent)
    , bench_(bench)
    , none_(remark(tr("Name the venue at Who and when; its tables, doors and rules come here.")))
    , quick_(new QuickLine("brief.tablesLine", tr("Tables in one line"), tr("12 trestles of 8, 1 top table"),
                           [this](const QString& typed) { return addTables(typed); }))
    , tables_(new RecordTable(bench, {.kind = model::TableKind::venueTables,
                                      .columns = {"how_many", "label", "shape", "length", "width", "covers"},
                                      .parent = std::pair{std::string("venue"), std::int64_t{0}}}))
    , usual_(remark())
    , form_(new RecordForm(
          bench, model::TableKind::venues,
          {{{},
            {"name", "address", "door", "key_holder", "travel", "distance_km", "in_from", "out_by", "water",
             "stairs", "parking", "fixing_rule", "flame_rule", "who_moves", "notes"}}})) {
    tables_->setEmptyWords(tr("No tables yet. Say them above."));
    tables_->growWithRows();
    form_->setMostColumns(1);
    add(none_);
    add(quick_);
    add(tables_);
    add(usual_);
    add(form_);
    connect(tables_, &RecordTable::refused, this, &BriefVenue::refused);
    connect(tables_, &RecordTable::blocked, this, &BriefVenue::refused);
    connect(form_, &RecordForm::refused, this, &BriefVenue::refused);
    connect(&bench_, &Workbench::changed, this, &BriefVenue::refresh);
}

void BriefVenue::showBooking(std::optional<Id<model::Booking>> id) {
    if (id_ != id) quick_->clear();
    id_ = id;
    refresh();
}

void BriefVenue::refresh() {
    const auto& season = bench_.season();
    const auto* b = id_ ? season.bookings.find(*id_) : nullptr;
    const auto* venue = b && b->venue ? season.venues.find(*b->venue) : nullptr;
    const auto now = venue ? std::optional(venue->id) : std::nullopt;
    if (now != venue_) {
        venue_ = now;
        const auto id = now ? std::optional(now->value) : std::nullopt;
        tables_->showParent(id);
        form_->show(id);
    }
    none_->setVisible(!venue);
    for (QWidget* part :
         {static_cast<QWidget*>(quick_), static_cast<QWidget*>(tables_), static_cast<QWidget*>(form_)})
        part->setVisible(venue != nullptr);
    setHead(venue ? text(venue->name) : tr("The venue"));
    int users = 0;
    for (const auto& other : season.bookings)
        users += venue && other.venue == venue->id ? 1 : 0;
    setRemark(users > 1 ? tr("kept once, used by %n booking(s)", nullptr, users) : QString());
    const QString usual = id_ ? usualSizeWords(tablesOf(season, *id_), season) : QString();
    usual_->setText(usual);
    usual_->setVisible(!usual.isEmpty());
}

QString BriefVenue::addTables(const QString& typed) {
    if (!venue_) return {};
    const auto reading = readTables(typed);
    if (!reading.ok()) return reading.sentence;
    return bench_.apply(edits::addTables(bench_.season(), *venue_, reading.tables));
}

} // namespace withy::ui
