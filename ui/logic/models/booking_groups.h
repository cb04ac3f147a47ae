// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

/// Which bookings are listed, in which order and under which heads.
namespace withy::ui {

enum class BookingSort { date, name, standing, owed };

/// The order's word where it is kept: "owed".
QString sortWord(BookingSort sort);
std::optional<BookingSort> sortOf(const QString& word);

/// What is asked of the list.
struct BookingChoice {
    BookingSort sort = BookingSort::date;
    std::optional<model::Standing> standing;
    std::optional<model::BookingKind> kind;
    QStringList find;        ///< folded words, all of which must occur
    bool goneByOpen = false; ///< unless folded words are looked for: then it is open anyway
};

struct BookingGroup {
    QString head;  ///< "This week"; empty: no head
    QString range; ///< "6–12 Sep" beside "This week"
    std::vector<Id<model::Booking>> bookings;
    bool goneBy = false; ///< before this week: folded away unless asked for
    /// The week or month it stands for; blank where it is no time.
    std::optional<std::pair<Day, Day>> days{};
};

/// `found` says whether a booking holds the words looked for. Empty groups are left out.
std::vector<BookingGroup> bookingGroups(const model::Season& season, const plan::Plan& plan,
                                        std::optional<Day> today, const BookingChoice& choice,
                                        const std::function<bool(const model::Booking&)>& found);

/// "6–12 Sep", "27 Sep–3 Oct".
QString weekSpanWords(Day monday);

/// Text as it is looked for: without case or accents.
QString foldedForFinding(const QString& text);
/// Everything of a booking that a search looks at, folded: title, client, venue, kind, standing, date.
QString findText(const model::Season& season, const model::Booking& booking);

} // namespace withy::ui
