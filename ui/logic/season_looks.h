// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/season.h"
#endif

#include <QSettings>
#include <QString>

#include <optional>
#include <vector>

namespace withy::ui {

/// Where one last stood in a season on this computer. Words that nobody knows any more mean nothing.
struct SeasonLook {
    QString place; ///< the command that goes there: "go.designs"
    std::optional<Id<model::Booking>> booking;
    QString tab;  ///< of the booking: "pieces"
    QString sort; ///< of the list of bookings: sortWord()
    friend bool operator==(const SeasonLook&, const SeasonLook&) = default;
};

/// The looks of the seasons opened lately, by the paths of their files; not part of a season.
class SeasonLooks {
public:
    static constexpr int most = 20;

    explicit SeasonLooks(QSettings& settings) : settings_(settings) {}

    /// Empty for a season that was not looked at here yet, or long ago.
    [[nodiscard]] SeasonLook of(const QString& path) const;
    void keep(const QString& path, const SeasonLook& look);

private:
    using Kept = std::vector<std::pair<QString, SeasonLook>>; ///< newest first
    [[nodiscard]] Kept all() const;

    QSettings& settings_;
};

} // namespace withy::ui
