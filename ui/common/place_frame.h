// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_pages.h"
#include "ui/shell/place.h"

#include <QVBoxLayout>

namespace withy::ui {

/// Fills a place with its pages and passes on what they say.
inline void frame(Place& place, SubPages& pages) {
    auto* column = new QVBoxLayout(&place);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(&pages);
    QObject::connect(&pages, &SubPages::refused, &place, &Place::refused);
    QObject::connect(&pages, &SubPages::said, &place, &Place::said);
    QObject::connect(&pages, &SubPages::leadTo, &place, &Place::leadTo);
    QObject::connect(&pages, &SubPages::wanted, &place, &Place::wanted);
}

} // namespace withy::ui
