// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/use_menu.h"

#include "ui/common/widget_parts.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"

#include <algorithm>

namespace withy::ui {

UseMenu::UseMenu(Workbench& bench, Id<model::Design> design, QWidget* parent) : QMenu(parent) {
    setObjectName(QStringLiteral("designs.use.menu"));
    std::vector<const model::Booking*> bookings;
    for (const auto& b : bench.season().bookings) {
        if (b.standing != model::Standing::lost && b.standing != model::Standing::settled)
            bookings.push_back(&b);
    }
    std::stable_sort(bookings.begin(), bookings.end(),
                     [](const auto* a, const auto* b) { return a->eventStart < b->eventStart; });
    for (const auto* b : bookings) {
        const QString words = tr("%1, %2").arg(shortDay(b->eventStart.day), text(b->title));
        auto* action = addAction(asTyped(words), this, [this, &bench, design, id = b->id] {
            Id<model::Line> made;
            if (bench.take(edits::addPieces(bench.season(), id, design, 1, made))) Q_EMIT used(id.value);
        });
        action->setObjectName(QStringLiteral("designs.use.booking.%1").arg(b->id.value));
    }
    if (bookings.empty()) addAction(tr("No booking to use it in yet"))->setEnabled(false);
}

} // namespace withy::ui
