// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/season_looks.h"

#include "core/store/disk.h"

#include <algorithm>

namespace withy::ui {

namespace {

const auto looksKey = QStringLiteral("seasonLooks");
const auto pathKey = QStringLiteral("path");
const auto placeKey = QStringLiteral("place");
const auto bookingKey = QStringLiteral("booking");
const auto tabKey = QStringLiteral("tab");
const auto sortKey = QStringLiteral("sort");

} // namespace

SeasonLooks::Kept SeasonLooks::all() const {
    Kept kept;
    const int n = std::clamp(settings_.beginReadArray(looksKey), 0, most);
    for (int i = 0; i < n; ++i) {
        settings_.setArrayIndex(i);
        SeasonLook look;
        look.place = settings_.value(placeKey).toString();
        look.tab = settings_.value(tabKey).toString();
        look.sort = settings_.value(sortKey).toString();
        if (const auto id = settings_.value(bookingKey).toLongLong(); id > 0)
            look.booking = Id<model::Booking>(id);
        kept.emplace_back(settings_.value(pathKey).toString(), std::move(look));
    }
    settings_.endArray();
    return kept;
}

SeasonLook SeasonLooks::of(const QString& path) const {
    const QString whole = store::truePath(path);
    for (auto& [kept, look] : all())
        if (kept == whole) return look;
    return {};
}

void SeasonLooks::keep(const QString& path, const SeasonLook& look) {
    const QString whole = store::truePath(path);
    auto kept = all();
    std::erase_if(kept, [&](const auto& one) { return one.first == whole; });
    kept.insert(kept.begin(), {whole, look});
    if (kept.size() > most) kept.resize(most);
    settings_.remove(looksKey);
    settings_.beginWriteArray(looksKey, static_cast<int>(kept.size()));
    for (int i = 0; i < static_cast<int>(kept.size()); ++i) {
        const auto& [at, one] = kept[static_cast<std::size_t>(i)];
        settings_.setArrayIndex(i);
        settings_.setValue(pathKey, at);
        settings_.setValue(placeKey, one.place);
        settings_.setValue(bookingKey, qlonglong(one.booking ? one.booking->value : 0));
        settings_.setValue(tabKey, one.tab);
        settings_.setValue(sortKey, one.sort);
    }
    settings_.endArray();
}

} // namespace withy::ui
