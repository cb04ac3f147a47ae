// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace withy::ui {

/// A region to start from: about its middle, and its clock (resources/places/README.md).
struct KnownPlace {
    QString name;
    QString country;
    double latitude = 0;
    double longitude = 0;
    std::string zone;     ///< its name in the IANA database, for the record
    std::string zoneRule; ///< POSIX

    [[nodiscard]] QString words() const; ///< "Suffolk, England"
};

const std::vector<KnownPlace>& knownPlaces();
/// The place nearest to a point, for its clock; never null. Longitudes meet at 180.
const KnownPlace* nearestPlace(double latitude, double longitude);
/// The place of these words(), without regard to case; null when there is none.
const KnownPlace* placeOf(const QString& words);

/// Of all known places those that hold the words, as they are shown.
QStringList placesWith(const QString& words);
/// Why what was typed is no place: none holds it, or so many do. Blank words ask for one.
QString nearTrouble(const QString& words, int matches);

} // namespace withy::ui
