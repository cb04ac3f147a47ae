// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/store/kill_child.h"

#include "core/store/disk.h"
#include "core/store/season_file.h"

#include <QFile>
#include <QThread>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace withy::test {

namespace {

model::Client clientOf(int k) {
    model::Client client;
    client.id = Id<model::Client>(1 + k * 7 % 40);
    client.name = "Client " + std::to_string(k);
    client.note = std::string(static_cast<std::size_t>(k * 37 % 3000), 'n');
    return client;
}

} // namespace

model::Edit editNumber(const model::Season& season, int k) {
    model::Edit edit("test.edit");
    auto settings = season.theSettings();
    settings.terms = std::to_string(k);
    edit.put(settings);
    edit.put(clientOf(k));
    const Id<model::Client> other(1 + k * 13 % 40);
    if (k % 5 == 0 && season.clients.find(other) && other != clientOf(k).id) edit.erase(other);
    return edit;
}

int lastEdit(const model::Season& season) {
    return std::atoi(season.theSettings().terms.c_str());
}

int editUntilKilled(const QString& path, unsigned long restMs) {
    auto file = store::SeasonFile::open(path, store::SeasonFile::Mode::write);
    model::Season season = file.season();
    for (int k = lastEdit(season) + 1;; ++k) {
        auto applied = model::apply(season, editNumber(season, k));
        if (!applied.ok()) return 1;
        file.commit(applied->done);
        season = applied->season;
        std::printf("%d\n", k);
        std::fflush(stdout);
        if (restMs > 0) QThread::msleep(restMs);
    }
}

int holdPart(const QString& path) {
    const store::FileBeside part(path, {store::Attempt::create, path});
    std::printf("%s\n", QFile::encodeName(part.path()).constData());
    std::fflush(stdout);
    QThread::sleep(60);
    return 1;
}

} // namespace withy::test
