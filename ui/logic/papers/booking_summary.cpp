// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <utility>

namespace withy::ui {

namespace {

using papers::Align;
using papers::Block;
using papers::plain;
using papers::strong;

class Summary {
    Q_DECLARE_TR_FUNCTIONS(BookingSummary)

public:
    explicit Summary(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , plan_(*order.plan.bookings.at(*order.booking))
        , times_(order.plan, *order.booking)
        , booking_(*season_.bookings.find(*order.booking)) {}

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        d.key = utf8(shortDay(booking_.eventStart.day));
        d.keyNote = utf8(tr("guests from %1").arg(clock(booking_.eventStart)));
        d.facts = {plain(utf8(standingWords(booking_.standing))), plain(utf8(piecesInWords(season_, plan_))),
                   plain(utf8(stemCounts(plan_)))};
        addWho(d);
        if (has(PaperPart::brief)) addBrief(d);
        d.body.push_back(Block{pieces()});
        d.body.push_back(Block{stems()});
        for (auto& block : stemOrigins(season_, times_, coverOf(order_.plan, plan_.booking)))
            d.body.push_back(std::move(block));
        addDrops(d);
        if (has(PaperPart::prices)) addMoney(d);
        if (has(PaperPart::toLookAt)) addFindings(d);
        if (has(PaperPart::workings))
            for (auto& block : stemWorkings(season_, plan_))
                d.body.push_back(std::move(block));
        d.footWhat = booking_.title;
        return d;
    }

private:
    void line(papers::Document& d, const QString& what, const std::string& words) {
        if (!words.empty())
            d.body.push_back(Block{papers::Paragraph{strong(utf8(what) + ": ") + plain(words), false}});
    }

    [[nodiscard]] bool has(PaperPart part) const { return wants(order_, PaperKind::bookingSummary, part); }

    void addWho(papers::Document& d) {
        const auto* client = booking_.client ? season_.clients.find(*booking_.client) : nullptr;
        const auto* venue = booking_.venue ? season_.venues.find(*booking_.venue) : nullptr;
        line(d, tr("For"), client ? client->name : std::string());
        line(d, tr("Where"), venue ? venue->name : std::string());
    }

    void addBrief(papers::Document& d) {
        line(d, tr("Wishes"), booking_.wishes);
        line(d, tr("Must have"), booking_.mustHave);
        line(d, tr("Must not"), booking_.mustNot);
        line(d, tr("Allergies"), booking_.allergies);
        line(d, tr("Animals"), booking_.animals);
        line(d, tr("Candles"), booking_.candles);
        for (const auto& q : season_.questions) {
            if (q.booking != booking_.id || !q.answer.empty()) continue;
            d.body.push_back(Block{papers::TickRow{
                plain(q.text),
                plain(q.neededBy ? utf8(tr("by %1").arg(shortDay(*q.neededBy))) : std::string()), true}});
        }
    }

    [[nodiscard]] papers::Table pieces() const {
        papers::Table t;
        t.title = utf8(tr("Pieces"));
        t.columns = {{utf8(tr("piece")), Align::Left, 1, false},
                     {utf8(tr("pieces")), Align::Right, 0, true},
                     {utf8(tr("spare")), Align::Right, 0, true},
                     {utf8(tr("stems")), Align::Right, 0, true}};
        for (const auto& l : plan_.lines) {
            const auto& record = *season_.lines.find(l.line);
            t.rows.push_back(
                {{plain(season_.designs.find(l.design)->name), plain(utf8(whole(record.pieces.value))),
                  plain(utf8(whole(record.sparePieces.value))), plain(utf8(whole(l.stems.value)))},
                 papers::RowKind::Body});
        }
        t.rows.push_back({{plain(utf8(tr("all"))), {}, {}, plain(utf8(whole(plan_.stemsNeeded.value)))},
                          papers::RowKind::Total});
        return t;
    }

    [[nodiscard]] papers::Table stems() const {
        papers::Table t;
        t.title = utf8(tr("Stems"));
        t.columns = {{utf8(tr("plant")), Align::Left, 1, false},
                     {utf8(tr("need")), Align::Right, 0, true},
                     {utf8(tr("spare")), Align::Right, 0, true},
                     {utf8(tr("to cut")), Align::Right, 0, true},
                     {utf8(tr("when")), Align::Left, 0, false}};
        for (const auto& n : plan_.needs) {
            const auto& spare = n.need.spare + n.need.toBunches;
            t.rows.push_back({{plain(season_.plants.find(n.plant)->name),
                               plain(utf8(whole(n.need.need.value))), plain(utf8(whole(spare.value))),
                               strong(utf8(whole(n.need.total.value))), plain(utf8(when(n)))},
                              papers::RowKind::Body});
        }
        return t;
    }

    [[nodiscard]] QString when(const plan::PlantNeed& n) const {
        if (const QString at = cutWhen(times_, n.plant); !at.isEmpty()) return at;
        return isCut(coverOf(order_.plan, plan_.booking), n.plant) ? tr("no time fits") : tr("not to cut");
    }

    void addDrops(papers::Document& d) {
        for (const auto& drop : season_.drops) {
            if (drop.booking != booking_.id) continue;
            std::string who = drop.receivedBy.empty() ? utf8(tr("nobody named yet")) : drop.receivedBy;
            line(d, tr("Drop, %1 %2").arg(shortDay(drop.time.day), clock(drop.time)),
                 drop.place + ". " + utf8(tr("Received by: ")) + who);
        }
    }

    void addMoney(papers::Document& d) {
        if (!plan_.money) return;
        const auto& s = season_.theSettings();
        const auto& m = *plan_.money;
        papers::Table t;
        t.title = utf8(tr("Money"));
        t.columns = {{"", Align::Left, 1, false}, {"", Align::Right, 0, true}};
        auto row = [&](const QString& what, Money v, papers::RowKind kind = papers::RowKind::Body) {
            t.rows.push_back({{plain(utf8(what)), plain(utf8(amount(v, s)))}, kind});
        };
        row(tr("At the prices agreed"), m.income.total);
        if (m.split.given.minor != 0) row(tr("Given"), m.split.given);
        row(tr("To pay"), m.split.asked);
        row(tr("Paid"), m.owed.paid);
        if (m.owed.overpaid.minor > 0)
            row(tr("To pay back"), m.owed.overpaid, papers::RowKind::Total);
        else if (booking_.standing != model::Standing::lost)
            row(tr("Owed"), m.owed.owed, papers::RowKind::Total);
        d.body.push_back(Block{std::move(t)});
    }

    void addFindings(papers::Document& d) {
        bool first = true;
        for (const auto& f : findingsOf(season_, order_.plan, plan_.booking)) {
            if (f.accepted) continue;
            if (std::exchange(first, false))
                d.body.push_back(Block{papers::SectionHead{utf8(tr("To look at")), {}}});
            d.body.push_back(Block{papers::TickRow{plain(utf8(sentence(f.finding, season_))), {}, false}});
        }
    }

    const PaperOrder& order_;
    const model::Season& season_;
    const plan::BookingPlan& plan_;
    CutTimes times_;
    const model::Booking& booking_;
};

} // namespace

papers::Document bookingSummary(const PaperOrder& order) {
    return Summary(order).document();
}

QString piecesInWords(const model::Season& season, const plan::BookingPlan& plan) {
    constexpr std::size_t named = 2; // of more than three the rest is counted
    QStringList all;
    PieceCount rest;
    for (std::size_t i = 0; i < plan.lines.size(); ++i) {
        const auto& record = *season.lines.find(plan.lines[i].line);
        if (i >= named && plan.lines.size() > 3) {
            rest.pieces += record.pieces.value;
            rest.spare += record.sparePieces.value;
            continue;
        }
        const QString words = whole(record.pieces.value) + QLatin1Char(' ') +
                              text(season.designs.find(plan.lines[i].design)->name);
        all << andSpare(words, record.sparePieces.value);
    }
    const QString words = all.join(QStringLiteral(", "));
    if (rest.pieces + rest.spare == 0) return words;
    const QString more =
        QCoreApplication::translate("Papers", " and %n more", nullptr, static_cast<int>(rest.pieces));
    return alsoSpare(words + more, rest.spare);
}

} // namespace withy::ui
