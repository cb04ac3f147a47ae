// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/model/sample.h"

/// Six honey jars and the supper jar that stands in one, at 9.50; and bookings of it.
namespace withy::ui::tests {

inline void putSupperJar(model::Edit& edit) {
    model::Container jar;
    jar.id = Id<model::Container>(1);
    jar.name = "Honey jar";
    jar.innerRim = Millimetres(68);
    jar.innerDepth = Millimetres(100);
    jar.owned = 6;
    edit.put(jar);
    model::Design design;
    design.id = Id<model::Design>(1);
    design.name = "Supper jar";
    design.container = jar.id;
    design.price = Money{950};
    edit.put(design);
}

/// On the eleventh of that month, from 18:30 to 22:30, with a line of the same number.
inline void putSupper(model::Edit& edit, int number, const char* title, int month, std::int64_t pieces,
                      model::Standing standing = model::Standing::booked) {
    auto b = model::sample::booking(number, title);
    b.eventStart = model::sample::at(2027, month, 11, 18, 30);
    b.eventEnd = model::sample::at(2027, month, 11, 22, 30);
    b.standing = standing;
    edit.put(b);
    model::Line line;
    line.id = Id<model::Line>(number);
    line.booking = b.id;
    line.design = Id<model::Design>(1);
    line.pieces = Pieces(pieces);
    edit.put(line);
}

} // namespace withy::ui::tests
