// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/begin/known_places.h"

#include "core/exchange/csv.h"
#include "ui/logic/format.h"

#include <QCoreApplication>
#include <QFile>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

struct KnownPlacesSay {
    Q_DECLARE_TR_FUNCTIONS(KnownPlaces)
};

std::vector<KnownPlace> read() {
    QFile file(QStringLiteral(":/withy/places/places.csv"));
    const bool there = file.open(QIODevice::ReadOnly);
    assert(there);
    const auto rows = exchange::parseCsv(there ? file.readAll().toStdString() : std::string());
    assert(rows.ok());
    std::vector<KnownPlace> places;
    for (std::size_t i = 1; i < rows->size(); ++i) {
        const auto& f = (*rows)[i].fields;
        places.push_back({text(f[0].text), text(f[1].text), std::stod(f[2].text), std::stod(f[3].text),
                          f[4].text, f[5].text});
    }
    return places;
}

/// Cosine of the angle between two points: larger is nearer.
double nearness(const KnownPlace& p, double latitude, double longitude) {
    constexpr double radian = std::numbers::pi / 180;
    return std::sin(p.latitude * radian) * std::sin(latitude * radian) +
           std::cos(p.latitude * radian) * std::cos(latitude * radian) *
               std::cos((p.longitude - longitude) * radian);
}

} // namespace

QString KnownPlace::words() const {
    return name + QStringLiteral(", ") + country;
}

const std::vector<KnownPlace>& knownPlaces() {
    static const auto places = read();
    return places;
}

const KnownPlace* nearestPlace(double latitude, double longitude) {
    const auto& places = knownPlaces();
    return &*std::max_element(places.begin(), places.end(), [&](const auto& a, const auto& b) {
        return nearness(a, latitude, longitude) < nearness(b, latitude, longitude);
    });
}

const KnownPlace* placeOf(const QString& words) {
    for (const auto& place : knownPlaces()) {
        if (place.words().compare(words.trimmed(), Qt::CaseInsensitive) == 0) return &place;
    }
    return nullptr;
}

QStringList placesWith(const QString& words) {
    QStringList all;
    for (const auto& place : knownPlaces())
        if (place.words().contains(words.trimmed(), Qt::CaseInsensitive)) all << place.words();
    return all;
}

QString nearTrouble(const QString& words, int matches) {
    if (words.isEmpty())
        return KnownPlacesSay::tr("Type a county or region near you, or its latitude and longitude.");
    if (matches == 0)
        return KnownPlacesSay::tr(
                   "No county or region is called “%1”. Take one from the list, or give latitude "
                   "and longitude.")
            .arg(words);
    return KnownPlacesSay::tr("%n place(s) hold “%1”. Choose one from the list.", nullptr, matches)
        .arg(words);
}

} // namespace withy::ui
