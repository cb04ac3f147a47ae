// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/orders_model.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"

#include <algorithm>

namespace withy::ui {

namespace {

bool isFigure(int column) {
    return column >= OrdersModel::pieces;
}

} // namespace

void OrdersModel::show(const model::Season& season, const plan::Plan& plan) {
    beginResetModel();
    season_ = season;
    orders_ = review::seasonOrders(season_, plan);
    rows_.clear();
    for (const auto& order : orders_.rows) {
        if (const auto* booking = season_.bookings.find(order.booking)) rows_.push_back({booking, order});
    }
    sortRows();
    endResetModel();
}

int OrdersModel::rowOf(Id<model::Booking> booking) const {
    const auto at =
        std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.booking->id == booking; });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int OrdersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || rows_.empty() ? 0 : static_cast<int>(rows_.size()) + 1;
}

int OrdersModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant OrdersModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const bool sum = isSum(index.row());
    const Row* row = sum ? nullptr : &rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return cell(row, sum ? orders_.sum : row->order, index.column());
    case Qt::TextAlignmentRole:
        return isFigure(index.column()) ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                        : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    case Qt::ToolTipRole:
        if (index.column() == asked && (sum ? orders_.sum : row->order).unpriced > 0)
            return tr("Some pieces have no price yet: the true sum is higher.");
        return index.column() == title && row ? QVariant(text(row->booking->title)) : QVariant();
    case BookingRole:
        return row ? QVariant(qlonglong(row->booking->id.value)) : QVariant();
    case SumRole:
        return sum;
    case LostRole:
        return row && row->booking->standing == model::Standing::lost;
    default:
        return {};
    }
}

QString OrdersModel::cell(const Row* row, const review::OrderRow& order, int column) const {
    const auto& s = season_.theSettings();
    switch (column) {
    case date:
        return row ? shortDay(row->booking->eventStart.day) : tr("All");
    case title:
        return row ? text(row->booking->title) : tr("lost ones left out");
    case kind:
        return row ? bookingKindWords(row->booking->kind) : QString();
    case standing:
        return row ? standingWords(row->booking->standing) : QString();
    case pieces:
        return pieceFigure({order.pieces.value, order.spare.value});
    case stems:
        return whole(order.stems.value);
    case asked:
        return amount(order.income, s) + (order.unpriced > 0 ? QStringLiteral(" +?") : QString());
    case owed:
        return row ? owedWords(s, row->booking->standing, order.owed, order.overpaid) : amount(order.owed, s);
    case given:
        return amount(order.gift, s);
    default:
        return {};
    }
}

QVariant OrdersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return isFigure(section) ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                 : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const QString heads[] = {tr("Day"),   tr("Booking"), tr("Kind"), tr("Standing"), tr("Pieces + spare"),
                             tr("Stems"), tr("To pay"),  tr("Owed"), tr("Given")};
    return section >= 0 && section < columns ? heads[section] : QVariant();
}

void OrdersModel::sort(int column, Qt::SortOrder order) {
    if (column < 0) return;
    Q_EMIT layoutAboutToBeChanged();
    const auto kept = persistentIndexList();
    std::vector<std::int64_t> bookings;
    for (const auto& i : kept)
        bookings.push_back(isSum(i.row()) ? 0 : rows_[static_cast<std::size_t>(i.row())].booking->id.value);
    sortColumn_ = column;
    sortOrder_ = order;
    sortRows();
    for (qsizetype i = 0; i < kept.size(); ++i) {
        const auto id = bookings[static_cast<std::size_t>(i)];
        const int row = id == 0 ? static_cast<int>(rows_.size()) : rowOf(Id<model::Booking>(id));
        changePersistentIndex(kept[i], index(row, kept[i].column()));
    }
    Q_EMIT layoutChanged();
}

void OrdersModel::sortRows() {
    std::stable_sort(rows_.begin(), rows_.end(), [this](const Row& a, const Row& b) {
        return sortOrder_ == Qt::AscendingOrder ? before(a, b) : before(b, a);
    });
}

bool OrdersModel::before(const Row& a, const Row& b) const {
    switch (sortColumn_) {
    case title:
        return text(a.booking->title).localeAwareCompare(text(b.booking->title)) < 0;
    case kind:
        return a.booking->kind < b.booking->kind;
    case standing:
        return a.booking->standing < b.booking->standing;
    case pieces:
        return a.order.pieces < b.order.pieces;
    case stems:
        return a.order.stems < b.order.stems;
    case asked:
        return a.order.income < b.order.income;
    case owed:
        return a.order.owed < b.order.owed;
    case given:
        return a.order.gift < b.order.gift;
    default:
        return a.booking->eventStart < b.booking->eventStart;
    }
}

} // namespace withy::ui
