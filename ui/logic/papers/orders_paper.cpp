// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/orders.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using papers::Align;
using papers::plain;

QString say(const char* words) {
    return QCoreApplication::translate("OrdersPaper", words);
}

bool isLostOrder(const model::Season& season, const review::OrderRow& row) {
    const auto* booking = season.bookings.find(row.booking);
    return booking && booking->standing == model::Standing::lost;
}

QString owedOf(const model::Season& season, const review::OrderRow& row) {
    const auto* booking = season.bookings.find(row.booking);
    return booking ? owedWords(season.theSettings(), booking->standing, row.owed, row.overpaid)
                   : amount(row.owed, season.theSettings());
}

papers::TableRow rowOf(const model::Season& season, const review::OrderRow& row, const std::string& first,
                       const std::string& title, const std::string& standing, papers::RowKind kind) {
    const auto& s = season.theSettings();
    const std::string mark = row.unpriced > 0 ? "+?" : "";
    return {{plain(first), plain(title), plain(standing),
             plain(utf8(pieceFigure({row.pieces.value, row.spare.value}))),
             plain(utf8(whole(row.stems.value))), plain(utf8(amount(row.income, s)) + mark),
             plain(utf8(owedOf(season, row))), plain(utf8(amount(row.gift, s)))},
            kind};
}

} // namespace

papers::Document ordersPaper(const PaperOrder& order) {
    const auto orders = review::seasonOrders(order.season, order.plan);
    const auto& s = order.season.theSettings();
    papers::Document d;
    d.name = s.placeName.empty() ? s.seasonName : s.placeName;
    d.key = s.seasonName;
    const auto lost = std::count_if(orders.rows.begin(), orders.rows.end(),
                                    [&](const auto& row) { return isLostOrder(order.season, row); });
    const auto taken = static_cast<int>(std::ssize(orders.rows) - lost);
    papers::Text bookings =
        papers::strong(std::to_string(taken)) + plain(utf8(taken == 1 ? say(" booking") : say(" bookings")));
    if (lost > 0) bookings = bookings + plain(utf8(say(", %1 lost").arg(lost)));
    d.facts = {std::move(bookings),
               plain(utf8(say("to pay "))) + papers::strong(utf8(amount(orders.sum.income, s))),
               plain(utf8(say("owed "))) + papers::strong(utf8(amount(orders.sum.owed, s))),
               plain(utf8(say("given "))) + papers::strong(utf8(amount(orders.sum.gift, s)))};
    papers::Table t;
    t.small = true;
    t.columns = {
        {utf8(say("day")), Align::Left, 0, false},      {utf8(say("booking")), Align::Left, 1, false},
        {utf8(say("standing")), Align::Left, 0, false}, {utf8(say("pieces")), Align::Right, 0, true},
        {utf8(say("stems")), Align::Right, 0, true},    {utf8(say("to pay")), Align::Right, 0, true},
        {utf8(say("owed")), Align::Right, 0, true},     {utf8(say("given")), Align::Right, 0, true}};
    for (const auto& row : orders.rows) {
        const auto& b = *order.season.bookings.find(row.booking);
        t.rows.push_back(rowOf(order.season, row, utf8(shortDay(b.eventStart.day)), b.title,
                               utf8(standingWords(b.standing)), papers::RowKind::Body));
    }
    t.rows.push_back(rowOf(order.season, orders.sum, utf8(say("all")), utf8(say("lost ones left out")), "",
                           papers::RowKind::Total));
    d.body.push_back(papers::Block{std::move(t)});
    if (orders.sum.unpriced > 0)
        d.body.push_back(papers::Block{papers::Paragraph{
            plain(utf8(say("+? some pieces have no price yet: the true sum is higher."))), true}});
    if (orders.sum.spare.value > 0)
        d.body.push_back(papers::Block{papers::Paragraph{
            plain(utf8(say("Behind a + among the pieces: spare ones, made for what breaks."))), true}});
    d.footWhat = s.seasonName;
    return d;
}

} // namespace withy::ui
