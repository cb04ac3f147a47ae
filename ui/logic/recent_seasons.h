// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>
#include <QString>

#include <vector>

namespace withy::ui {

struct RecentSeason {
    QString path;
    bool there = true; ///< false: moved, removed, or its disk is away; shown as gone
};

/// The seasons last opened, newest first, as the settings keep them between sessions.
class RecentSeasons {
public:
    static constexpr int most = 10;

    /// The settings outlive this.
    explicit RecentSeasons(QSettings& settings) : settings_(settings) {}

    [[nodiscard]] std::vector<RecentSeason> list() const;
    /// Puts it first; each file is listed once, whatever links led to it.
    void add(const QString& path);
    void forget(const QString& path);
    /// Paths of those that are there.
    [[nodiscard]] QStringList there() const;

    /// The newest of them; empty when there is none.
    [[nodiscard]] QString last() const { return there().value(0); }

private:
    [[nodiscard]] QStringList paths() const;
    void keep(const QStringList& paths);

    QSettings& settings_;
};

} // namespace withy::ui
