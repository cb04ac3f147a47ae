// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/backups_model.h"

#include "ui/logic/season_opening.h"
#include "ui/logic/wording.h"

#include <algorithm>

namespace withy::ui {

void BackupsModel::show(std::vector<store::Backup> backups, const QDateTime& now) {
    beginResetModel();
    backups_ = std::move(backups);
    now_ = now;
    endResetModel();
}

int BackupsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(backups_.size());
}

int BackupsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant BackupsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& backup = backups_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole && index.column() == size)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) return backup.path;
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case when:
        return whenMade(backup);
    case age:
        return ageWords(backup.at, now_);
    case size:
        return sizeWords(backup.bytes);
    default:
        return {};
    }
}

QVariant BackupsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return section == size ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                               : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const QString heads[] = {tr("Made"), tr("Age"), tr("Size")};
    return section >= 0 && section < columns ? heads[section] : QVariant();
}

QString ageWords(const QDateTime& at, const QDateTime& now) {
    const auto minutes = std::max<qint64>(0, at.secsTo(now)) / 60;
    if (minutes < 2) return BackupsModel::tr("just now");
    if (minutes < 120) return BackupsModel::tr("%n minute(s) ago", nullptr, static_cast<int>(minutes));
    if (minutes < 48 * 60) return BackupsModel::tr("%n hour(s) ago", nullptr, static_cast<int>(minutes / 60));
    return BackupsModel::tr("%n day(s) ago", nullptr, static_cast<int>(minutes / 1440));
}

QString sizeWords(qint64 bytes) {
    if (bytes < 1000 * 1000) return BackupsModel::tr("%1 kB").arg(std::max<qint64>(1, (bytes + 500) / 1000));
    return BackupsModel::tr("%1 MB").arg(QString::number(static_cast<double>(bytes) / 1e6, 'f', 1));
}

QString restoreWords(const store::Backup& backup) {
    return BackupsModel::tr(
               "The season goes back to how it stood on %1. What is there now is not lost: it is put "
               "aside beside it, under a name with today's date.")
        .arg(whenMade(backup));
}

QString backUpNow(const QString& path, const QString& folder, const QDateTime& now) {
    try {
        static_cast<void>(store::Backups(folder).make(path, now));
    } catch (const store::StoreError& e) {
        return sentence(e);
    }
    return {};
}

std::vector<store::Backup> backupsOf(const QString& path, const QString& folder) {
    try {
        return store::Backups(folder).list(path);
    } catch (const store::StoreError&) {
        return {}; // said when one is made or put back
    }
}

} // namespace withy::ui
