// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/order_figures.h"

#include "ui/logic/models/booking_words.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using review::OrderFigure;

class OrderSumsSay {
    Q_DECLARE_TR_FUNCTIONS(OrderSums)

public:
    static QString all() { return tr("All bookings, lost ones left out"); }

    static QString name(OrderFigure figure) {
        switch (figure) {
        case OrderFigure::pieces:
            return tr("Pieces + spare");
        case OrderFigure::stems:
            return tr("Stems");
        case OrderFigure::asked:
            return tr("To pay");
        case OrderFigure::owed:
            return tr("Owed");
        case OrderFigure::given:
            break;
        }
        return tr("Given");
    }

    static QString means(const QString& name, const QString& whose) { return tr("%1, %2").arg(name, whose); }
};

/// As the row says it. `booking`: null for the sum.
QString wordsOf(const review::OrderRow& row, OrderFigure figure, const model::Settings& settings,
                const model::Booking* booking) {
    switch (figure) {
    case OrderFigure::pieces:
        return pieceFigure({row.pieces.value, row.spare.value});
    case OrderFigure::stems:
        return whole(row.stems.value);
    case OrderFigure::asked:
        return amount(row.income, settings) + (row.unpriced > 0 ? QStringLiteral(" +?") : QString());
    case OrderFigure::owed:
        return booking ? owedWords(settings, booking->standing, row.owed, row.overpaid)
                       : amount(row.owed, settings);
    case OrderFigure::given:
        break;
    }
    return amount(row.gift, settings);
}

} // namespace

OrderSums orderSums(const model::Season& season, const plan::Plan& plan, const review::Orders& orders,
                    std::optional<Id<model::Booking>> booking) {
    const auto row = std::find_if(orders.rows.begin(), orders.rows.end(),
                                  [&](const review::OrderRow& r) { return booking == r.booking; });
    const auto* record = booking ? season.bookings.find(*booking) : nullptr;
    const bool one = row != orders.rows.end() && record;
    const auto& settings = season.theSettings();
    OrderSums out;
    if (orders.rows.empty()) return out;
    out.whose = one ? text(record->title) : OrderSumsSay::all();
    for (const auto figure : {OrderFigure::pieces, OrderFigure::stems, OrderFigure::asked, OrderFigure::owed,
                              OrderFigure::given}) {
        SheetFigure f;
        const QString name = OrderSumsSay::name(figure);
        f.words = wordsOf(one ? *row : orders.sum, figure, settings, one ? record : nullptr);
        f.means = OrderSumsSay::means(name, out.whose);
        f.working = one ? review::orderWorking(season, plan, *booking, figure)
                        : review::sumWorking(season, orders, figure);
        f.lines = lines(f.working, settings);
        out.figures.emplace_back(name, std::move(f));
    }
    return out;
}

} // namespace withy::ui
