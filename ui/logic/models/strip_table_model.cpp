// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/strip_table_model.h"

#include "ui/logic/format.h"
#include "ui/logic/models/strip_words.h"

namespace withy::ui {

void StripTableModel::setFigures(StripFigures figures) {
    beginResetModel();
    figures_ = std::move(figures);
    endResetModel();
}

int StripTableModel::mondayAt(int row) const {
    return (8 - figures_.first.weekday()) % 7 + row * 7;
}

int StripTableModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid() || figures_.bands.empty()) return 0;
    return (figures_.days - mondayAt(0) + 6) / 7;
}

int StripTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || figures_.bands.empty() ? 0 : static_cast<int>(figures_.bands.size()) + 2;
}

std::int64_t StripTableModel::stems(int row, int column) const {
    const auto day = static_cast<std::size_t>(mondayAt(row));
    const auto band = static_cast<std::size_t>(column);
    if (band < figures_.bands.size()) return figures_.bands[band].days[day].likely;
    const auto leaf = figures_.leaf[day].likely;
    return band == figures_.bands.size() ? leaf : leaf + figures_.sums[day].likely;
}

QVariant StripTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) return {};
    if (role == Qt::DisplayRole) return whole(stems(index.row(), index.column()));
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole)
        return tr("%1, %2: %3")
            .arg(headerData(index.column(), Qt::Horizontal).toString(),
                 headerData(index.row(), Qt::Vertical).toString(), whole(stems(index.row(), index.column())));
    return {};
}

QVariant StripTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (section < 0) return {};
    if (orientation == Qt::Vertical) {
        if (role != Qt::DisplayRole || section >= rowCount()) return {};
        return dayOfMonthWords(figures_.dayAt(mondayAt(section)));
    }
    if (section >= columnCount()) return {};
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const auto band = static_cast<std::size_t>(section);
    if (band < figures_.bands.size()) return figures_.bands[band].name;
    return band == figures_.bands.size() ? tr("Foliage") : tr("All together");
}

QString StripTableModel::asText() const {
    QStringList lines;
    QStringList head{tr("Monday")};
    for (int c = 0; c < columnCount(); ++c)
        head << headerData(c, Qt::Horizontal).toString();
    lines << head.join(QLatin1Char('\t'));
    for (int r = 0; r < rowCount(); ++r) {
        QStringList cells{headerData(r, Qt::Vertical).toString()};
        for (int c = 0; c < columnCount(); ++c)
            cells << QString::number(stems(r, c)); // no thousands' comma: a spreadsheet reads it
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace withy::ui
