// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/fit_edits.h"

#include "ui/logic/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui::edits {

namespace {

class FitEditsSay {
    Q_DECLARE_TR_FUNCTIONS(FitEdits)

public:
    static std::string title(const FitDraft& draft) {
        const QString typed = draft.title.trimmed();
        return utf8(typed.isEmpty() ? tr("Enquiry for %1").arg(shortDay(*draft.day)) : typed);
    }

    static std::string tables(const FitPieces& line) {
        return utf8(tr("%1 on each of %2 table(s)", nullptr, static_cast<int>(line.tables))
                        .arg(whole(line.perTable), whole(line.tables)));
    }
};

model::Booking bookingOf(const Season& season, const FitDraft& draft) {
    const auto ask = *askOf(draft);
    model::Booking b;
    b.id = season.bookings.nextId();
    b.title = FitEditsSay::title(draft);
    b.venue = ask.venue;
    b.eventStart = ask.eventStart;
    b.eventEnd = ask.eventEnd;
    return b;
}

Edit withPieces(Edit edit, const Season& season, const FitDraft& draft, const model::Booking& booking) {
    edit.put(booking);
    std::int64_t next = season.lines.nextId().value;
    for (const auto& asked : draft.lines) {
        model::Line line;
        line.id = Id<model::Line>(next++);
        line.booking = booking.id;
        line.design = asked.design;
        line.pieces = Pieces(asked.pieces);
        if (asked.tables > 0) line.note = FitEditsSay::tables(asked);
        edit.put(line);
    }
    return edit;
}

} // namespace

Edit enquiryOf(const Season& season, const FitDraft& draft, Id<model::Booking>& made) {
    const auto booking = bookingOf(season, draft);
    made = booking.id;
    return withPieces(Edit("fit.enquiry", {booking.title}), season, draft, booking);
}

Edit holdOf(const Season& season, const FitDraft& draft, Day until, Id<model::Booking>& made) {
    auto booking = bookingOf(season, draft);
    made = booking.id;
    booking.standing = model::Standing::held;
    booking.heldUntil = until;
    return withPieces(Edit("fit.hold", {booking.title, utf8(shortDay(until))}), season, draft, booking);
}

Day usualHold(const FitDraft& draft, std::optional<Day> today) {
    return today ? std::max(*today, std::min(*today + 7, *draft.day)) : *draft.day - 7;
}

} // namespace withy::ui::edits
