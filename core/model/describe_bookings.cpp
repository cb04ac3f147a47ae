// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/describe.h"
#include "core/model/fields.h"

namespace withy::model {

using namespace fields;

std::vector<TableInfo> describeBookings() {
    return {
        table<Client>("client", "name",
                      {
                          field("name", &Client::name, needed()),
                          field("contact", &Client::contact, text(500)),
                          field("address", &Client::address, text(2000)),
                          field("note", &Client::note, text(10000)),
                          field("consent_to_keep", &Client::consentToKeep),
                      }),
        table<Venue>("venue", "name",
                     {
                         field("name", &Venue::name, needed()),
                         field("address", &Venue::address, text(2000)),
                         field("door", &Venue::door, text(500)),
                         field("key_holder", &Venue::keyHolder, text(500)),
                         field("travel", &Venue::travel, number(0, 2880, "minutes")),
                         field("distance_km", &Venue::distanceKm, number(0, 5000, "km")),
                         field("in_from", &Venue::inFrom, number(0, 1440, "minute of the day")),
                         field("out_by", &Venue::outBy, number(0, 1440, "minute of the day")),
                         field("water", &Venue::water, text(500)),
                         field("stairs", &Venue::stairs, text(500)),
                         field("parking", &Venue::parking, text(500)),
                         field("fixing_rule", &Venue::fixingRule, text(1000)),
                         field("flame_rule", &Venue::flameRule, text(1000)),
                         field("who_moves", &Venue::whoMoves, text(500)),
                         field("notes", &Venue::notes, text(10000)),
                     }),
        table<VenueTable>("venue_table", "label",
                          {
                              field("venue", &VenueTable::venue),
                              field("label", &VenueTable::label, needed()),
                              field("shape", &VenueTable::shape),
                              field("length", &VenueTable::length, number(1, 100000, "mm")),
                              field("width", &VenueTable::width, number(1, 100000, "mm")),
                              field("covers", &VenueTable::covers, number(0, 1000)),
                              field("how_many", &VenueTable::howMany, number(1, 10000)),
                          }),
        table<Booking>("booking", "title",
                       {
                           field("title", &Booking::title, needed()),
                           field("kind", &Booking::kind),
                           field("client", &Booking::client),
                           field("venue", &Booking::venue),
                           field("event_start", &Booking::eventStart),
                           field("event_end", &Booking::eventEnd),
                           field("look_good_until", &Booking::lookGoodUntil),
                           field("make_from", &Booking::makeFrom),
                           field("standing", &Booking::standing),
                           field("held_until", &Booking::heldUntil),
                           field("wishes", &Booking::wishes, text(10000)),
                           field("must_have", &Booking::mustHave, text(10000)),
                           field("must_not", &Booking::mustNot, text(10000)),
                           field("allergies", &Booking::allergies, text(2000)),
                           field("scent", &Booking::scent, text(2000)),
                           field("animals", &Booking::animals, text(2000)),
                           field("candles", &Booking::candles, text(2000)),
                           field("budget", &Booking::budget, number(0, 1e11)),
                           field("gift_share", &Booking::giftShare, number(0, 100, "%")),
                           field("notes", &Booking::notes, text(10000)),
                       }),
        table<BookingColour>("booking_colour", "name",
                             {
                                 field("booking", &BookingColour::booking),
                                 field("colour", &BookingColour::colour),
                                 field("name", &BookingColour::name),
                                 field("share", &BookingColour::share, number(0, 100, "%")),
                             }),
        table<AgreedSwap>("agreed_swap", "",
                          {
                              field("booking", &AgreedSwap::booking),
                              field("position", &AgreedSwap::position, number(0, 100000)),
                              field("plant", &AgreedSwap::plant),
                              field("stand_in", &AgreedSwap::standIn),
                          }),
        table<Question>("question", "text",
                        {
                            field("booking", &Question::booking),
                            field("text", &Question::text, needed(1000)),
                            field("needed_by", &Question::neededBy),
                            field("answer", &Question::answer, text(10000)),
                        }),
        table<Drop>("drop", "place",
                    {
                        field("booking", &Drop::booking),
                        field("place", &Drop::place, needed(500)),
                        field("time", &Drop::time),
                        field("received_by", &Drop::receivedBy, text(500)),
                        field("cleared_at", &Drop::clearedAt),
                        field("cleared_by", &Drop::clearedBy, text(500)),
                    }),
        table<Line>("line", "",
                    {
                        field("booking", &Line::booking),
                        field("design", &Line::design),
                        field("pieces", &Line::pieces, number(0, 100000, "pieces")),
                        field("spare_pieces", &Line::sparePieces, number(0, 100000, "pieces")),
                        field("drop", &Line::drop),
                        field("note", &Line::note, text(1000)),
                        field("unit_price", &Line::unitPrice, number(0, 1e11)),
                    }),
        table<Placement>("placement", "",
                         {
                             field("line", &Placement::line),
                             field("table", &Placement::table),
                             field("per_table", &Placement::perTable, number(0, 1000, "pieces")),
                         }),
        table<Payment>("payment", "",
                       {
                           field("booking", &Payment::booking),
                           field("date", &Payment::date),
                           field("kind", &Payment::kind),
                           field("amount", &Payment::amount, number(-1e11, 1e11)),
                           field("note", &Payment::note, text(1000)),
                       }),
        table<SentVersion>("sent_version", "",
                           {
                               field("booking", &SentVersion::booking),
                               field("kind", &SentVersion::kind),
                               field("date", &SentVersion::date),
                               field("text", &SentVersion::text, text(100000)),
                           }),
    };
}

} // namespace withy::model
