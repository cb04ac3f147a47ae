// SPDX-License-Identifier: GPL-3.0-or-later
// Opens mutated bytes as a season file, for reading. Whatever they are, opening ends in a season that
// keeps the model's rules or in a StoreError, and the file is as it was.
//
// Bytes that begin like an SQLite file are taken as they are. Others are read as patches of a sound
// season: two bytes say where (in sixteens of the file), one how far into that, one how long, then the
// bytes themselves; so that a short input reaches deep.
#include "core/store/season_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

using withy::store::SeasonFile;

struct Place {
    int argc = 1;
    char name[12] = "season_fuzz";
    char* argv[2] = {name, nullptr};
    QCoreApplication application{argc, argv}; // for the QSQLITE plugin
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("a.withy"));
    QByteArray sound;
};

withy::model::Season smallSeason() {
    using namespace withy;
    model::Settings settings;
    settings.seasonName = "2027";
    settings.firstDay = *Day::fromYmd(2027, 3, 1);
    settings.lastDay = *Day::fromYmd(2027, 10, 31);
    settings.placeName = "Wren Bank";
    settings.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    model::Plant plant;
    plant.id = Id<model::Plant>(1);
    plant.name = "Zinnia";
    model::Booking booking;
    booking.id = Id<model::Booking>(1);
    booking.title = "Supper";
    booking.eventStart = {*Day::fromYmd(2027, 9, 11), 18 * 60};
    booking.eventEnd = {*Day::fromYmd(2027, 9, 11), 22 * 60};
    const model::Edit edit = model::Edit("x").put(settings).put(plant).put(booking);
    return model::apply({}, edit).value().season;
}

Place& place() {
    static auto* made = [] {
        auto* p = new Place; // as long as the process
        SeasonFile::create(p->path, smallSeason()).close();
        QFile file(p->path);
        if (file.open(QIODevice::ReadOnly)) p->sound = file.readAll();
        return p;
    }();
    return *made;
}

QByteArray patched(const std::uint8_t* data, std::size_t size) {
    QByteArray bytes = place().sound;
    while (size >= 5) {
        const auto blocks = static_cast<std::size_t>(bytes.size() / 16);
        const std::size_t at = (data[0] * 256u + data[1]) % blocks * 16 + data[2] % 16;
        const std::size_t length = std::min<std::size_t>(data[3] % 16 + 1u, size - 4);
        for (std::size_t i = 0; i < length && at + i < static_cast<std::size_t>(bytes.size()); ++i)
            bytes[static_cast<qsizetype>(at + i)] = static_cast<char>(data[4 + i]);
        data += 4 + length;
        size -= 4 + length;
    }
    return bytes;
}

void promise(bool kept, const char* what) {
    if (kept) return;
    std::fprintf(stderr, "broken: %s\n", what);
    std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const QByteArray raw(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
    const QByteArray bytes = raw.startsWith("SQLite format 3") ? raw : patched(data, size);
    QFile file(place().path);
    promise(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size(), "the file is written");
    file.close();
    try {
        const auto season = SeasonFile::open(place().path, SeasonFile::Mode::read);
        promise(withy::model::check(season.season()).empty(), "what opens keeps the rules");
    } catch (const withy::store::StoreError& error) {
        promise(!error.technical.empty(), "every refusal says what happened");
    }
    promise(file.open(QIODevice::ReadOnly) && file.readAll() == bytes, "reading leaves the file as it is");
    return 0;
}
