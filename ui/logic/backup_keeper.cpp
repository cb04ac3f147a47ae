// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/backup_keeper.h"

#include "ui/logic/wording.h"

#include <chrono>

namespace withy::ui {

BackupKeeper::BackupKeeper(QString season, BackupHabit habit, QObject* parent)
    : QObject(parent), season_(std::move(season)), habit_(std::move(habit)) {
    timer_.setInterval(std::chrono::minutes(20));
    connect(&timer_, &QTimer::timeout, this, &BackupKeeper::lookAround);
}

BackupKeeper::~BackupKeeper() {
    finish();
}

void BackupKeeper::seasonOpened() {
    timer_.start();
    last_ = habit_.now();
    const auto all = list();
    const bool ofToday = !all.empty() && all.front().at.toLocalTime().date() >= last_.toLocalTime().date();
    if (!ofToday && !working_) start();
}

void BackupKeeper::lookAround() {
    const bool due = !last_.isValid() || last_.secsTo(habit_.now()) >= habit_.hours * qint64{3600};
    if (changed_ && due && !working_) start();
}

void BackupKeeper::leave() {
    timer_.stop();
    if (worker_.joinable()) worker_.join();
    takeResult();
    changed_ = false;
}

void BackupKeeper::finish() {
    timer_.stop();
    if (worker_.joinable()) worker_.join();
    takeResult();
    if (!changed_) return;
    start();
    worker_.join();
    takeResult();
    changed_ = false; // said, if it failed; once more would not help
}

std::vector<store::Backup> BackupKeeper::list() const {
    return store::Backups(habit_.folder).list(season_);
}

void BackupKeeper::start() {
    last_ = habit_.now();
    changed_ = false;
    working_ = true;
    worker_ = std::jthread([this, backups = store::Backups(habit_.folder), at = last_] {
        Result result;
        try {
            result.made = backups.make(season_, at);
        } catch (...) {
            result.trouble = caughtWords();
        }
        result_ = std::move(result);
        QMetaObject::invokeMethod(this, &BackupKeeper::takeResult, Qt::QueuedConnection);
    });
}

void BackupKeeper::takeResult() {
    if (!working_) return;
    working_ = false;
    if (result_.made) {
        said_ = false;
        Q_EMIT made(*result_.made);
        return;
    }
    changed_ = true; // tried again in some hours
    if (said_) return;
    said_ = true;
    Q_EMIT failed(result_.trouble);
}

} // namespace withy::ui
