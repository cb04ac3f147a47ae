// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/models/cover_facts.h"

#include <QString>

#include <optional>
#include <vector>

/// What a booking is called in lists, heads and answer sentences.
namespace withy::ui {

/// "booked", "held to 10 Sep".
QString standingWords(const model::Booking& booking);
/// "held"
QString standingWords(model::Standing standing);
/// "wedding".
QString bookingKindWords(model::BookingKind kind);
/// "24 jars": the noun of the design's vessel or kind of piece, "piece" when nothing says more.
QString countedPieces(const model::Season& season, const model::Design& design, std::int64_t n);
/// "6 jars", or "6 of Stone cup" where the name holds no noun we know.
QString countedVessels(const model::Container& vessel, std::int64_t n);
/// "24 jars and 2 more", "no pieces yet"; the kind with most pieces leads.
QString piecesWords(const model::Season& season, const std::vector<const model::Line*>& lines);

/// A booking's pieces, as they are counted everywhere: what was asked for, and what is made besides for what
/// breaks.
struct PieceCount {
    std::int64_t pieces = 0;
    std::int64_t spare = 0;
};

PieceCount pieceCount(const model::Season& season, const plan::BookingPlan& plan);
/// "24 pieces", "24 pieces and 2 spare".
QString pieceCountWords(const PieceCount& count);
/// "24 jars and 2 spare"; without spare ones what was counted alone.
QString andSpare(const QString& counted, std::int64_t spare);
/// "24 + 2", "24": for columns, whose head says what is added.
QString pieceFigure(const PieceCount& count);
/// "24 jars and 2 more, 2 spare": behind words that have an "and" already.
QString alsoSpare(const QString& several, std::int64_t spare);

/// What the list says at the right of a booking.
struct BookingState {
    QString words;
    bool asks = false;   ///< something is short or to mend, or a hold ends within a week
    bool strong = false; ///< worth a second look: covered, if the season is kind

    friend bool operator==(const BookingState&, const BookingState&) = default;
};

/// The booking need not be in `plan`: it lags an edit behind now and then. What is short comes before what is
/// to mend, and that before how well the rest is covered.
BookingState bookingState(const model::Season& season, const model::Booking& booking, const plan::Plan& plan,
                          std::optional<Day> today, const std::optional<CoverFacts>& cover = std::nullopt);

/// "Sat 11 Sep, guests from 18:30", "Village Hall, 12 trestles, 1 top table", "116 guests", "booked": each
/// left out while it is not known.
QStringList bookingFacts(const model::Season& season, const model::Booking& booking);

/// "Four things are still open. Two are needed by Wednesday."
Answer openAnswer(const model::Season& season, Id<model::Booking> booking, std::optional<Day> today);
/// What is still to come: "£40.00"; "£40.00 to pay back" where more came than was to be paid; "–" of a lost
/// booking, which owes nothing.
QString owedWords(const model::Settings& settings, model::Standing standing, Money owed, Money overpaid);
/// "13 of 17 answered, client saw the quote of 14 Aug"; empty while neither is known.
QString briefRemark(const model::Season& season, Id<model::Booking> booking);
/// The usual caution beside candles, deferring to the venue's rule and to those who know.
QString candlesCaution(const model::Season& season, Id<model::Booking> booking);
/// What a booking's pieces hold, that with the spare, and that in the bunches it is cut in: "295 stems, 329
/// with the spare, 355 to cut in whole bunches". The same on every page and paper; what does not add is left
/// out.
QString stemCounts(const plan::BookingPlan& plan);
/// "26 pieces, 295 stems, 329 with the spare, 355 to cut in whole bunches. "
Answer stemCountsAnswer(const model::Season& season, const plan::BookingPlan& plan);
/// The same, and where they stand: "Two jars on each of 12 trestles."
Answer piecesAnswer(const model::Season& season, Id<model::Booking> booking, const plan::BookingPlan* plan);

/// Numbers under thirteen in words, as one writes them: "four"; "14".
QString numberWord(std::int64_t n);
/// "Wednesday" within a week of today, "Wed 8 Sep" otherwise.
QString dayWords(Day day, std::optional<Day> today);

} // namespace withy::ui
