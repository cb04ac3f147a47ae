// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/store/backups.h"
#include "ui/logic/season_opening.h"
#endif

#include <QObject>
#include <QTimer>

#include <functional>
#include <optional>
#include <thread>
#include <vector>

namespace withy::ui {

/// Where backups go, and when.
struct BackupHabit {
    QString folder = usualBackupsFolder();
    std::function<QDateTime()> now = &QDateTime::currentDateTimeUtc; ///< tests set another clock
    int hours = 3;                                                   ///< between backups of a long session
};

/// Makes the backups of one season that is open for writing: at the day's first opening, every few hours
/// while it changes, and when it is left changed. Copies on a thread of its own; a failure is said once,
/// until one has gone well again. The season itself is never touched.
class BackupKeeper : public QObject {
    Q_OBJECT

public:
    explicit BackupKeeper(QString season, BackupHabit habit = {}, QObject* parent = nullptr);
    /// As finish().
    ~BackupKeeper() override;

    /// Call once it is open: makes a backup unless there is one of today.
    void seasonOpened();

    /// Call with every change; makes nothing yet.
    void seasonChanged() { changed_ = true; }

    /// Makes a backup if it changed and the last one is hours old; a timer calls it too.
    void lookAround();
    /// Waits for a backup that is being made, and makes a last one if it changed since.
    void finish();

    /// Waits likewise, and makes none: the season is about to be put back, and a new backup would thin
    /// out an older one of the same day, which may be the very one that is wanted.
    void leave();
    /// Newest first.
    [[nodiscard]] std::vector<store::Backup> list() const;

Q_SIGNALS:
    void made(const withy::store::Backup& backup);
    void failed(const QString& sentence);

private:
    struct Result {
        std::optional<store::Backup> made;
        QString trouble;
    };

    void start();
    /// Takes the worker's result, if there is one not yet taken.
    void takeResult();

    QString season_;
    BackupHabit habit_;
    QTimer timer_;
    QDateTime last_;       ///< when one was last begun
    bool changed_ = false; ///< since then
    bool said_ = false;    ///< that it fails
    bool working_ = false;
    Result result_; ///< the worker's until its notice comes or it is joined
    std::jthread worker_;
};

} // namespace withy::ui
