// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

/// Small seasons for tests of the model.
namespace withy::model::sample {

inline Day day(int y, int m, int d) {
    return *Day::fromYmd(y, m, d);
}

inline LocalTime at(int y, int m, int d, int hour, int minute = 0) {
    return LocalTime{day(y, m, d), hour * 60 + minute};
}

inline Settings settings() {
    Settings s;
    s.seasonName = "2027";
    s.firstDay = day(2027, 3, 1);
    s.lastDay = day(2027, 10, 31);
    s.placeName = "Wren Bank";
    s.latitude = 52.4;
    s.longitude = -2.7;
    s.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    return s;
}

inline Season season() {
    const auto applied = apply(Season{}, Edit("season.new").put(settings()));
    return applied.value().season;
}

inline Plant plant(std::int64_t id, const std::string& name) {
    Plant p;
    p.id = Id<Plant>(id);
    p.name = name;
    return p;
}

inline Booking booking(std::int64_t id, const std::string& title) {
    Booking b;
    b.id = Id<Booking>(id);
    b.title = title;
    b.eventStart = at(2027, 9, 11, 18, 30);
    b.eventEnd = at(2027, 9, 11, 22, 30);
    return b;
}

} // namespace withy::model::sample
