// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/store/season_file.h"

#include <QString>

#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>

class QThread;

namespace withy::ui {

/// Writes edits to a season's file on a thread of its own, one after the other, so that a slow disk keeps
/// nobody waiting who does not want to. An edit that cannot be written takes with it those that wait behind
/// it, which were made on top of it. All functions belong to the thread that made it.
class FileWriter {
public:
    /// `tell` is called on the writer's thread, after each edit that was written or could not be.
    FileWriter(store::SeasonFile file, std::function<void()> tell);
    /// Writes what waits.
    ~FileWriter();

    FileWriter(const FileWriter&) = delete;
    FileWriter& operator=(const FileWriter&) = delete;

    [[nodiscard]] const QString& path() const { return file_.path(); }

    [[nodiscard]] store::SeasonFile::Mode mode() const { return file_.mode(); }

    /// An edit that apply() has accepted (Applied::done). Precondition: open for writing.
    void write(model::Edit done);
    /// Until all is written or one could not be, at most so long; nullopt: as long as it takes. Whether it
    /// is.
    bool wait(std::optional<std::chrono::milliseconds> most);

    struct News {
        std::size_t written = 0; ///< edits, since it was last asked for
        QString trouble;         ///< why the next could not be
    };

    /// Drops the edit that could not be written and those behind it; until then none is tried again.
    News takeNews();

    /// As SeasonFile::saveCopy, once nothing waits.
    void saveCopy(const QString& path);

private:
    void work();
    [[nodiscard]] bool idle() const; ///< with the mutex held

    store::SeasonFile file_; ///< the thread's, while something waits
    std::function<void()> tell_;
    mutable std::mutex mutex_; // guards what follows
    std::condition_variable changed_;
    std::deque<model::Edit> waiting_; ///< the first may be going on
    News news_;
    bool quit_ = false;
    std::unique_ptr<QThread> thread_; ///< none when only reading
};

} // namespace withy::ui
