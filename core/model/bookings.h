// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/designs.h"

namespace withy::model {

struct Client {
    Id<Client> id;
    std::string name;
    std::string contact;
    std::string address;
    std::string note;
    bool consentToKeep = false;
};

struct Venue {
    Id<Venue> id;
    std::string name;
    std::string address;
    std::string door;
    std::string keyHolder;
    std::optional<Minutes> travel;
    std::optional<double> distanceKm;
    std::optional<std::int64_t> inFrom; ///< minutes after midnight
    std::optional<std::int64_t> outBy;  ///< minutes after midnight
    std::string water;
    std::string stairs;
    std::string parking;
    std::string fixingRule;
    std::string flameRule;
    std::string whoMoves;
    std::string notes;
};

struct VenueTable {
    Id<VenueTable> id;
    Id<Venue> venue;
    std::string label;
    TableShape shape = TableShape::rectangular;
    Millimetres length;               ///< a round table's diameter
    std::optional<Millimetres> width; ///< rectangular only
    std::int64_t covers = 0;
    std::int64_t howMany = 1;
};

/// One order for one event, from enquiry to settled.
struct Booking {
    Id<Booking> id;
    std::string title;
    BookingKind kind = BookingKind::other;
    std::optional<Id<Client>> client;
    std::optional<Id<Venue>> venue;
    LocalTime eventStart;
    LocalTime eventEnd;
    std::optional<LocalTime> lookGoodUntil; ///< blank: until the event's end
    std::optional<LocalTime> makeFrom;      ///< blank: worked back from the first drop
    Standing standing = Standing::enquiry;
    std::optional<Day> heldUntil;
    std::string wishes;
    std::string mustHave;
    std::string mustNot;
    std::string allergies;
    std::string scent;
    std::string animals;
    std::string candles;
    std::optional<Money> budget;
    double giftShare = 0; ///< percent of the list price that is given
    std::string notes;
};

struct BookingColour {
    Id<BookingColour> id;
    Id<Booking> booking;
    Colour colour;
    std::string name;
    std::optional<double> share; ///< percent
};

/// A swap the client has agreed to; the lowest position is tried first.
struct AgreedSwap {
    Id<AgreedSwap> id;
    Id<Booking> booking;
    std::int64_t position = 0;
    Id<Plant> plant;
    Id<Plant> standIn;
};

struct Question {
    Id<Question> id;
    Id<Booking> booking;
    std::string text;
    std::optional<Day> neededBy;
    std::string answer; ///< empty: still open
};

/// One place and time of delivery.
struct Drop {
    Id<Drop> id;
    Id<Booking> booking;
    std::string place;
    LocalTime time;
    std::string receivedBy;
    std::optional<LocalTime> clearedAt;
    std::string clearedBy;
};

/// So many pieces of one design.
struct Line {
    Id<Line> id;
    Id<Booking> booking;
    Id<Design> design;
    Pieces pieces{1};
    Pieces sparePieces{0};
    std::optional<Id<Drop>> drop;
    std::string note;
    std::optional<Money> unitPrice; ///< blank: the design's own price
};

/// Which tables of the venue a line's pieces stand on.
struct Placement {
    Id<Placement> id;
    Id<Line> line;
    Id<VenueTable> table;
    std::int64_t perTable = 1;
};

struct Payment {
    Id<Payment> id;
    Id<Booking> booking;
    Day date;
    PaymentKind kind = PaymentKind::deposit;
    Money amount;
    std::string note;
};

/// What the client was sent, as it then stood.
struct SentVersion {
    Id<SentVersion> id;
    Id<Booking> booking;
    SentKind kind = SentKind::quote;
    Day date;
    std::string text;
};

} // namespace withy::model
