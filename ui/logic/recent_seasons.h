// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>
#include <QStringList>

namespace withy::ui {

/// The seasons last opened, newest first, as the settings keep them between sessions.
class RecentSeasons {
public:
    static constexpr int most = 10;

    /// The settings outlive this.
    explicit RecentSeasons(QSettings& settings) : settings_(settings) {}

    /// Puts it first; each file is listed once, whatever links led to it.
    void add(const QString& path);
    /// Paths of those that are there; one that is gone comes back when its disk does.
    [[nodiscard]] QStringList there() const;

    /// The newest of them; empty when there is none.
    [[nodiscard]] QString last() const { return there().value(0); }

private:
    [[nodiscard]] QStringList paths() const;
    void keep(const QStringList& paths);

    QSettings& settings_;
};

} // namespace withy::ui
