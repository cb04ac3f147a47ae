// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_list_model.h"
#include "ui/logic/models/booking_words.h"

#include <algorithm>

namespace withy::ui {

int BookingListModel::rowOf(Id<model::Booking> id) const {
    const auto& rows = laid_.rows;
    const auto at = std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return id && r.id == id; });
    return at == rows.end() ? -1 : static_cast<int>(at - rows.begin());
}

std::optional<Id<model::Booking>> BookingListModel::idAt(int row) const {
    if (row < 0 || row >= rowCount()) return std::nullopt;
    const auto id = laid_.rows[static_cast<std::size_t>(row)].id;
    return id ? std::optional(id) : std::nullopt;
}

std::optional<Id<model::Booking>> BookingListModel::neighbour(std::optional<Id<model::Booking>> id,
                                                              int by) const {
    int row = id ? rowOf(*id) : -1;
    if (row < 0) row = by > 0 ? -1 : rowCount();
    for (row += by; row >= 0 && row < rowCount(); row += by) {
        if (const auto there = idAt(row)) return there;
    }
    return std::nullopt;
}

void BookingListModel::setFind(const QString& words) {
    const QStringList find = foldedForFinding(words).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (find == choice_.find) return;
    choice_.find = find;
    refresh();
}

void BookingListModel::setSort(BookingSort sort) {
    choice_.sort = sort;
    refresh();
}

void BookingListModel::setStanding(std::optional<model::Standing> standing) {
    choice_.standing = standing;
    refresh();
}

void BookingListModel::setKind(std::optional<model::BookingKind> kind) {
    choice_.kind = kind;
    refresh();
}

void BookingListModel::openGoneBy(bool open) {
    choice_.goneByOpen = open;
    refresh();
}

void BookingListModel::makeListed(Id<model::Booking> id) {
    const auto* b = bench_.season().bookings.find(id);
    if (!b || rowOf(id) >= 0) return;
    const auto& c = choice_;
    if (c.standing && *c.standing != b->standing) choice_.standing.reset();
    if (c.kind && *c.kind != b->kind) choice_.kind.reset();
    refresh();
    if (rowOf(id) >= 0) return;
    choice_.goneByOpen = true;
    refresh();
    if (rowOf(id) >= 0) return;
    choice_.find.clear();
    refresh();
}

QString BookingListModel::choiceWords() const {
    QString sort;
    switch (choice_.sort) {
    case BookingSort::date:
        sort = tr("By date");
        break;
    case BookingSort::name:
        sort = tr("By name");
        break;
    case BookingSort::standing:
        sort = tr("By standing");
        break;
    case BookingSort::owed:
        sort = tr("By what is owed");
        break;
    }
    QStringList words{sort};
    if (choice_.standing) words << standingWords(*choice_.standing);
    if (choice_.kind) words << bookingKindWords(*choice_.kind);
    return words.join(QStringLiteral(", "));
}

QString BookingListModel::emptyWords() const {
    if (bench_.season().bookings.empty())
        return tr("Nothing booked yet. Start with a date, and the garden will say what it can give.");
    if (laid_.found > 0) return {};
    if (choice_.find.isEmpty())
        return tr("No booking is like that. Show them all again with the button above.");
    return tr("No booking has those words. Try a name, a place or a month.");
}

} // namespace withy::ui
