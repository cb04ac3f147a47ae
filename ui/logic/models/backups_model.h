// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/store/backups.h"
#endif

#include <QAbstractTableModel>

#include <vector>

namespace withy::ui {

/// The backups of one season, newest first: when, how long ago, how large.
class BackupsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { when, age, size, columns };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<store::Backup> backups, const QDateTime& now);

    [[nodiscard]] const std::vector<store::Backup>& backups() const { return backups_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    std::vector<store::Backup> backups_;
    QDateTime now_;
};

/// "3 days ago", "2 hours ago", "just now".
QString ageWords(const QDateTime& at, const QDateTime& now);
/// "412 kB", "1.2 MB": decimal, as the International System of Units has it.
QString sizeWords(qint64 bytes);

/// What putting a backup back will do, before it is done.
QString restoreWords(const store::Backup& backup);

/// Makes a backup of the season at `path`; the sentence that says why not, or an empty text.
QString backUpNow(const QString& path, const QString& folder, const QDateTime& now);
/// Newest first; none when the folder cannot be read.
std::vector<store::Backup> backupsOf(const QString& path, const QString& folder);

} // namespace withy::ui
