// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/money_rows.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using model::TableKind;

class Sums {
    Q_DECLARE_TR_FUNCTIONS(MoneyPage)

public:
    Sums(const model::Season& season, const plan::BookingPlan& plan)
        : season_(season), plan_(plan), settings_(season.theSettings()) {}

    [[nodiscard]] Answer answer() const {
        if (plan_.lines.empty()) return {{tr("Nothing is ordered yet, so there is nothing to pay."), {}}};
        if (!plan_.money)
            return {{tr("The sums are too large to add up. Check prices and payments."),
                     AnswerPart::Weight::asks}};
        const auto& m = *plan_.money;
        Answer out;
        out.push_back({tr("%1 to pay").arg(in(m.owed.asked)), AnswerPart::Weight::strong});
        if (m.split.given.minor > 0) out.push_back({tr(", %1 given").arg(in(m.split.given)), {}});
        out.push_back(
            {m.owed.paid.minor != 0 ? tr(", %1 paid").arg(in(m.owed.paid)) : tr(", nothing paid yet"), {}});
        if (m.owed.overpaid.minor > 0)
            out.push_back({tr(": %1 to pay back.").arg(in(m.owed.overpaid)), AnswerPart::Weight::asks});
        else if (isLost())
            out.push_back({tr("; of a lost booking nothing is owed."), {}});
        else if (m.owed.owed.minor > 0)
            out.push_back({tr(", %1 still owed.").arg(in(m.owed.owed)), {}});
        else
            out.push_back({tr(", and nothing owed."), {}});
        if (m.income.unpriced > 0)
            out.push_back({tr(" %n kind(s) of piece (has|have) no price, so the true sum is higher.", nullptr,
                              m.income.unpriced),
                           AnswerPart::Weight::asks});
        return out;
    }

    [[nodiscard]] Sheet prices() const {
        Sheet sheet;
        sheet.firstTitle = tr("Piece");
        sheet.columns = {
            {tr("Pieces"), true, false}, {tr("Price for one"), true, false}, {tr("Together"), true, false}};
        for (const auto& lp : plan_.lines)
            if (const auto* line = season_.lines.find(lp.line)) sheet.rows.push_back(priceRow(*line));
        return sheet;
    }

    [[nodiscard]] Sheet sums() const {
        Sheet sheet;
        sheet.firstTitle = tr("What it comes to");
        sheet.columns = {{QString(), true, false}};
        if (!plan_.money) return sheet;
        const auto& m = *plan_.money;
        if (m.list.total != m.income.total) // said only where it differs
            sheet.rows.push_back(
                sumRow("list", tr("At list price"), {}, m.list.total, m.list.working, std::nullopt));
        sheet.rows.push_back(sumRow(
            "income", m.list.total == m.income.total ? tr("At list price") : tr("At the prices agreed"), {},
            m.income.total, m.income.working, std::nullopt));
        sheet.rows.push_back(
            sumRow("share", tr("Given of that"), {}, m.split.given, m.split.working, std::nullopt));
        sheet.rows.push_back(sumRow("asked", tr("To pay"), {}, m.split.asked, m.split.working, std::nullopt));
        sheet.rows.push_back(
            sumRow("paid", tr("Paid, less refunds"), {}, m.owed.paid, paidWorking(), std::nullopt));
        const bool over = m.owed.overpaid.minor > 0;
        if (over || !isLost()) {
            sheet.rows.push_back(sumRow("owed", over ? tr("To pay back") : tr("Owed"), {},
                                        over ? m.owed.overpaid : m.owed.owed, m.owed.working, std::nullopt));
            sheet.rows.back().look = RowLook::total;
        }
        if (m.gift.gift != m.split.given)
            sheet.rows.push_back(sumRow("gift", tr("Given in all"), tr("list price less what is paid for"),
                                        m.gift.gift, m.gift.working, std::nullopt));
        return sheet;
    }

private:
    [[nodiscard]] bool isLost() const {
        const auto* booking = season_.bookings.find(plan_.booking);
        return booking && booking->standing == model::Standing::lost;
    }

    [[nodiscard]] QString in(Money money) const { return amount(money, settings_); }

    [[nodiscard]] SheetRow priceRow(const model::Line& line) const {
        const auto* design = season_.designs.find(line.design);
        SheetRow row;
        row.key = QStringLiteral("line%1").arg(line.id.value);
        row.name = design ? text(design->name) : QString();
        if (line.sparePieces.value > 0)
            row.under = tr("and %n spare, not charged", nullptr, static_cast<int>(line.sparePieces.value));
        const std::optional<Money> own = design ? design->price : std::nullopt;
        SheetCell price;
        price.field =
            SheetField{TableKind::lines, "unit_price", line.id.value, own ? in(*own) : tr("no price")};
        if (own && !line.unitPrice)
            row.under = row.under.isEmpty() ? tr("list price") : tr("list price; %1").arg(row.under);
        const auto one = line.unitPrice ? line.unitPrice : own;
        row.cells = {{whole(line.pieces.value), {}}, std::move(price)};
        if (!one || !plan_.money) { // without a price, or too large to add up
            row.cells.push_back({tr("not known"), SheetCell::Tone::asks});
            return row;
        }
        const Money all{one->minor * line.pieces.value};
        SheetFigure f;
        f.words = in(all);
        f.means = tr("for all %1").arg(row.name);
        const auto pieces = model::originOf(TableKind::lines, line.id.value);
        f.working = {
            from(pieces, lineOf(Step::given, "pieces", line.pieces.value, Unit::pieces, Basis::mine)),
            lineOf(Step::times, "price a piece", one->minor, Unit::minorMoney, Basis::mine),
            lineOf(Step::result, "line", all.minor, Unit::minorMoney)};
        f.lines = lines(f.working, settings_);
        f.leadsTo = model::Ref{TableKind::designs, line.design.value};
        f.leadWords = tr("Change the design's own price");
        row.cells.push_back({{}, {}, std::move(f)});
        return row;
    }

    [[nodiscard]] SheetRow sumRow(const char* key, const QString& name, const QString& rest, Money value,
                                  const Working& working, std::optional<model::Ref> ref) const {
        SheetRow row;
        row.key = QString::fromLatin1(key);
        row.name = name;
        row.rest = rest;
        SheetFigure f;
        f.words = in(value);
        f.means = name;
        f.working = elsewhere(working);
        f.lines = lines(working, settings_);
        f.leadsTo = ref;
        row.cells = {{{}, {}, std::move(f)}};
        return row;
    }

    /// What is typed on this very page needs no way there.
    [[nodiscard]] Working elsewhere(Working working) const {
        for (auto& line : working)
            if (line.from == model::originOf(TableKind::bookings, plan_.booking.value)) line.from = {};
        return working;
    }

    [[nodiscard]] Working paidWorking() const {
        Working out;
        for (const auto& line : plan_.money->owed.working)
            if (line.what == "payment") {
                out.push_back(line);
                out.back().step = out.size() == 1 ? Step::given : Step::plus;
            }
        out.push_back(lineOf(Step::result, "paid", plan_.money->owed.paid.minor, Unit::minorMoney));
        return out;
    }

    const model::Season& season_;
    const plan::BookingPlan& plan_;
    const model::Settings& settings_;
};

} // namespace

Answer moneyAnswer(const model::Season& season, const plan::BookingPlan& plan) {
    return Sums(season, plan).answer();
}

Sheet priceSheet(const model::Season& season, const plan::BookingPlan& plan) {
    return Sums(season, plan).prices();
}

Sheet sumSheet(const model::Season& season, const plan::BookingPlan& plan) {
    return Sums(season, plan).sums();
}

} // namespace withy::ui
