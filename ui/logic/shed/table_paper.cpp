// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/logic/shed/shed_papers.h"
#include "ui/logic/shed/table_scenes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;

constexpr double tablePx = 10;      // of a scene to a millimetre of paper
constexpr double tableColumn = 183; // mm of the narrower sheet, A4

class TablePlan {
    Q_DECLARE_TR_FUNCTIONS(TablePlanPaper)

public:
    explicit TablePlan(const PaperOrder& order)
        : order_(order), season_(order.season), booking_(*season_.bookings.find(*order.booking)) {
        const auto& shed = order.plan.shed;
        if (shed && shed->tables.contains(booking_.id)) tables_ = shed->tables.at(booking_.id).get();
        if (shed && shed->packing.contains(booking_.id)) packed_ = shed->packing.at(booking_.id).get();
    }

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        d.key = utf8(shortDay(booking_.eventStart.day));
        d.keyNote = utf8(tr("guests %1").arg(clock(booking_.eventStart)));
        if (!tables_ || tables_->tables.empty()) {
            d.body.push_back(Block{papers::Paragraph{
                plain(utf8(tr("The venue has no tables yet, so there is nothing to place by.")))}});
            addCautions(d.body);
            return d;
        }
        addFacts(d);
        const Hall hall =
            hallScene(season_, *tables_, tableColumn * tablePx, std::nullopt, {Palette{}, true});
        d.body.push_back(Block{onPaper(hall.scene, tablePx)});
        d.body.push_back(Block{papers::Paragraph{plain(utf8(hallNote(season_, *tables_))), true}});
        for (std::size_t t = 0; t < tables_->tables.size(); ++t)
            if (tables_->tables[t].onEach > 0) addNear(t, d.body);
        addTicks(d.body);
        addCautions(d.body);
        if (wants(order_, PaperKind::tablePlan, PaperPart::writeHere)) d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(tr("%1, tables in rows 1 : %2")
                              .arg(text(booking_.title))
                              .arg(std::llround(hall.mmPerPx * tablePx)));
        return d;
    }

private:
    void addFacts(papers::Document& d) const {
        const auto* venue = booking_.venue ? season_.venues.find(*booking_.venue) : nullptr;
        if (venue) d.facts.push_back(plain(venue->name));
        std::int64_t tables = 0, covers = 0, pieces = 0;
        for (const auto& t : tables_->tables) {
            const auto* record = season_.venueTables.find(t.table);
            if (!record || t.onEach == 0) continue;
            tables += record->howMany;
            covers += record->howMany * record->covers;
            pieces += t.onEach * (record->howMany - t.without);
        }
        d.facts.push_back(strong(utf8(whole(tables))) + plain(utf8(tr(" tables, "))) +
                          strong(utf8(whole(covers))) + plain(utf8(tr(" settings"))));
        d.facts.push_back(strong(utf8(whole(pieces))) + plain(utf8(tr(" pieces on them"))));
    }

    void addNear(std::size_t t, std::vector<Block>& body) const {
        const auto& table = tables_->tables[t];
        const auto* record = season_.venueTables.find(table.table);
        if (!record) return;
        body.push_back(Block{
            papers::SectionHead{utf8(record->howMany > 1 ? tr("Each %1").arg(text(record->label).toLower())
                                                         : text(record->label)),
                                plain(utf8(tableSize(table, season_)))}});
        body.push_back(Block{
            onPaper(nearScene(season_, *tables_, t, tableColumn * tablePx, {Palette{}, true}), tablePx)});
        QStringList words{standingWords(season_, table), fitWords(table, season_)};
        if (table.sight) words << sightWords(table, season_);
        if (table.without > 0) words << tr("%n table(s) without", nullptr, static_cast<int>(table.without));
        body.push_back(
            Block{papers::Paragraph{plain(utf8(words.join(QStringLiteral("; ")) + QLatin1Char('.')))}});
    }

    /// One tick a table.
    void addTicks(std::vector<Block>& body) const {
        for (const auto& table : tables_->tables) {
            const auto* record = season_.venueTables.find(table.table);
            if (!record || table.onEach == 0) continue;
            papers::PieceGroupRow row;
            row.count = utf8(whole(record->howMany));
            row.unit = utf8(tr("placed"));
            row.pieces = static_cast<int>(std::min<std::int64_t>(record->howMany, 400));
            body.push_back(Block{std::move(row)});
        }
    }

    void addCautions(std::vector<Block>& body) const {
        papers::Cautions cautions;
        QString first = tr("Heads and water clear of plates; nobody drinks vase water.");
        if (!booking_.allergies.empty()) first += QLatin1Char(' ') + text(booking_.allergies);
        cautions.items.push_back({utf8(tr("Decoration, not food.")), utf8(first)});
        if (packed_ && packed_->checkAt)
            cautions.items.push_back(
                {utf8(tr("Water")), utf8(tr("check and top up %1; %2 are carried.")
                                             .arg(checkWhen(booking_, *packed_->checkAt),
                                                  litresWords(packed_->carryLitres, season_)))});
        if (!booking_.candles.empty())
            cautions.items.push_back(
                {utf8(tr("Candles")), utf8(text(booking_.candles) + QLatin1Char(' ') +
                                           tr("The venue's rule decides; never near dry stems."))});
        body.push_back(Block{std::move(cautions)});
    }

    [[nodiscard]] papers::WriteHere writeHere() const {
        return {
            utf8(tr("Write here,\ntype in later")),
            {{utf8(tr("placed at")), 28},
             {utf8(tr("what moved, which table")), 0},
             {utf8(Units(season_).imperial() ? tr("topped up, US quarts") : tr("topped up, litres")), 38}}};
    }

    const PaperOrder& order_;
    const model::Season& season_;
    const model::Booking& booking_;
    const plan::BookingTables* tables_ = nullptr;
    const plan::BookingPacking* packed_ = nullptr;
};

} // namespace

papers::Document tablePlanPaper(const PaperOrder& order) {
    return TablePlan(order).document();
}

} // namespace withy::ui
