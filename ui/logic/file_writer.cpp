// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/file_writer.h"

#include "ui/logic/wording.h"

#include <QThread>

#include <utility>

namespace withy::ui {

FileWriter::FileWriter(store::SeasonFile file, std::function<void()> tell)
    : file_(std::move(file)), tell_(std::move(tell)) {
    if (file_.mode() == store::SeasonFile::Mode::read) return;
    thread_.reset(QThread::create([this] { work(); }));
    file_.moveTo(*thread_);
    thread_->start();
}

FileWriter::~FileWriter() {
    if (!thread_) return;
    {
        const std::lock_guard lock(mutex_);
        quit_ = true;
    }
    changed_.notify_all();
    thread_->wait();
}

bool FileWriter::idle() const {
    return waiting_.empty() || !news_.trouble.isEmpty();
}

void FileWriter::write(model::Edit done) {
    Q_ASSERT(thread_);
    {
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(done));
    }
    changed_.notify_all();
}

bool FileWriter::wait(std::optional<std::chrono::milliseconds> most) {
    std::unique_lock lock(mutex_);
    const auto done = [this] { return idle(); };
    if (most) return changed_.wait_for(lock, *most, done);
    changed_.wait(lock, done);
    return true;
}

FileWriter::News FileWriter::takeNews() {
    const std::lock_guard lock(mutex_);
    if (!news_.trouble.isEmpty()) waiting_.clear();
    return std::exchange(news_, {});
}

void FileWriter::saveCopy(const QString& path) {
    wait(std::nullopt);
    file_.saveCopy(path);
}

void FileWriter::work() {
    std::unique_lock lock(mutex_);
    while (true) {
        changed_.wait(lock, [this] { return quit_ || !idle(); });
        if (idle()) break;
        const auto& next = waiting_.front(); // a deque's front stays where it is while others join behind
        lock.unlock();
        QString trouble;
        try {
            file_.commit(next);
        } catch (...) {
            trouble = caughtWords();
        }
        lock.lock();
        news_.trouble = trouble;
        if (trouble.isEmpty()) {
            ++news_.written;
            waiting_.pop_front();
        }
        lock.unlock();
        changed_.notify_all();
        tell_();
        lock.lock();
    }
    file_.close(); // by the thread that used it last
}

} // namespace withy::ui
