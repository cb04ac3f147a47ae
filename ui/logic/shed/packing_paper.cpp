// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/shed/packing_scenes.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/logic/shed/shed_papers.h"
#include "ui/logic/work_hours.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;

constexpr double packingPx = 10; // of a scene to a millimetre of paper

/// Scales that a rule can read off.
double niceScale(double least) {
    for (const double s : {5.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 27.0, 32.0, 40.0, 50.0})
        if (s >= least) return s;
    return std::ceil(least);
}

class Packing {
    Q_DECLARE_TR_FUNCTIONS(PackingSheet)

public:
    explicit Packing(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , booking_(*season_.bookings.find(*order.booking))
        , plan_(*order.plan.bookings.at(*order.booking)) {
        if (order.plan.shed) {
            const auto found = order.plan.shed->packing.find(*order.booking);
            if (found != order.plan.shed->packing.end()) packed_ = found->second.get();
        }
    }

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        const LocalTime leave = workHours(season_, order_.plan, booking_.id).driveStart;
        d.key = utf8(shortDay(leave.day));
        d.keyNote = utf8(tr("leave by %1").arg(planBy(leave)));
        if (!packed_) {
            d.body.push_back(
                Block{papers::Paragraph{plain(utf8(tr("Nothing is packed for this booking.")))}});
            return d;
        }
        addFacts(d);
        addTrays(d.body);
        addLoad(d.body);
        addWater(d.body);
        addCautions(d.body);
        if (wants(order_, PaperKind::packingSheet, PaperPart::writeHere))
            d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(
            tr("%1, trays 1 : %2, floor 1 : %3").arg(text(booking_.title)).arg(trayScale_).arg(floorScale_));
        return d;
    }

private:
    void addFacts(papers::Document& d) const {
        d.facts.push_back(strong(utf8(pieceCountWords(pieceCount(season_, plan_)))) + plain(", ") +
                          strong(utf8(whole(asCount(packed_->drops.size())))) +
                          plain(utf8(packed_->drops.size() == 1 ? tr(" drop") : tr(" drops"))));
        d.facts.push_back(plain(utf8(tr("load "))) +
                          strong(utf8(weightWords(packed_->mass, anyUnknown(), season_))));
        d.facts.push_back(plain(utf8(tr("heaviest lift "))) +
                          strong(utf8(weightWords(packed_->heaviest, false, season_))) +
                          plain(utf8(tr(", limit %1").arg(liftingLimit()))));
        d.facts.push_back(plain(utf8(tr("carry "))) +
                          strong(utf8(litresWords(packed_->carryLitres, season_))));
    }

    /// Beside a weight with its unit.
    [[nodiscard]] QString liftingLimit() const {
        const double kg = season_.theSettings().liftingLimitKg;
        return Units(season_).imperial() ? weightWords(kg, season_) : QString::number(kg);
    }

    [[nodiscard]] QString waterOf(Millilitres ml) const {
        return millilitresWords(static_cast<double>(ml.value), season_);
    }

    [[nodiscard]] QString canOf(std::int64_t ml) const {
        return litresInShort(static_cast<double>(ml) / 1000, season_);
    }

    [[nodiscard]] bool anyUnknown() const {
        return std::any_of(packed_->entries.begin(), packed_->entries.end(),
                           [](const plan::LoadEntry& e) { return !e.mass; });
    }

    /// Trays that are filled alike are drawn one by one all the same: each is packed by its picture.
    void addTrays(std::vector<Block>& body) {
        double longest = 0;
        int trays = 0;
        for (const auto& drop : packed_->drops)
            for (const auto& tray : drop.trays) {
                longest = std::max(longest, static_cast<double>(tray.length.value));
                ++trays;
            }
        if (trays == 0) return;
        body.push_back(Block{papers::SectionHead{utf8(tr("How each is filled, from above")),
                                                 plain(utf8(tr("a number in a ring is its table")))}});
        const int across = trays > 3 ? 4 : 3;
        const double width = 184, gap = 6;
        trayScale_ = niceScale(longest / ((width - gap * (across - 1)) / across));
        std::vector<Scene> row;
        const auto close = [&] {
            if (row.empty()) return;
            Scene all;
            double x = 0;
            QStringList words;
            for (const auto& scene : row) {
                append(all, scene, {x, 0});
                x += (width - gap * (across - 1)) / across * packingPx + gap * packingPx;
                words << scene.inWords;
            }
            all.size.setWidth(width * packingPx);
            all.inWords = words.join(QStringLiteral(". "));
            body.push_back(Block{onPaper(all, packingPx)});
            row.clear();
        };
        for (std::size_t d = 0; d < packed_->drops.size(); ++d)
            for (std::size_t t = 0; t < packed_->drops[d].trays.size(); ++t) {
                row.push_back(trayScene(
                    season_, packed_->drops[d].trays[t], trayNumber(*packed_, d, t), packingPx / trayScale_,
                    (width - gap * (across - 1)) / across * packingPx, {Palette{}, true}));
                if (static_cast<int>(row.size()) == across) close();
            }
        close();
    }

    void addLoad(std::vector<Block>& body) {
        if (packed_->entries.empty()) return;
        const auto* vehicle = packed_->vehicle ? season_.vehicles.find(*packed_->vehicle) : nullptr;
        body.push_back(Block{papers::SectionHead{vehicle ? utf8(tr("Into the %1").arg(text(vehicle->name)))
                                                         : utf8(tr("Into the vehicle")),
                                                 plain(utf8(tr("last drop goes in first")))}});
        std::vector<Block> rows;
        const auto order = loadOrder(*packed_);
        const bool tooMany = tooManyToLay(*packed_);
        for (std::size_t i = 0; i < std::min(order.size(), mostLoadLines); ++i) {
            const auto& entry = packed_->entries[order[i]];
            papers::Text words = strong(utf8(whole(asCount(i) + 1))) + plain("  ") +
                                 strong(utf8(entryWords(season_, *packed_, order[i])));
            if (packed_->drops.size() > 1) words = words + plain(utf8(tr(", drop %1").arg(entry.drop + 1)));
            if (packed_->load && !tooMany && i >= packed_->load->loaded.size())
                words = words + plain(utf8(tr(", no room on the floor")));
            const QString kg = entry.mass ? weightWords(*entry.mass, false, season_) : tr("not weighed");
            rows.push_back(Block{papers::TickRow{words, strong(utf8(kg)), true}});
        }
        if (order.size() > mostLoadLines)
            rows.push_back(Block{
                papers::Paragraph{plain(utf8(moreThings(asCount(order.size() - mostLoadLines)))), true}});
        const QString trips = tripsWords(*packed_);
        if (!trips.isEmpty()) body.push_back(Block{papers::Paragraph{strong(utf8(trips))}});
        if (!vehicle || !packed_->load || tooMany) {
            if (!tooMany)
                body.push_back(Block{papers::Paragraph{
                    plain(utf8(tr("No vehicle has its load floor measured, so the order alone is given."))),
                    true}});
            body.insert(body.end(), rows.begin(), rows.end());
            return;
        }
        papers::Columns columns;
        columns.split = papers::Split::Halves;
        floorScale_ = niceScale(std::max(static_cast<double>(vehicle->floorWidth->value) / 80,
                                         static_cast<double>(vehicle->floorLength->value) / 62));
        columns.left.push_back(Block{
            onPaper(floorScene(*packed_, *vehicle, packingPx / floorScale_, {Palette{}, true}), packingPx)});
        addDrops(columns.left);
        columns.right = std::move(rows);
        body.push_back(Block{std::move(columns)});
    }

    void addDrops(std::vector<Block>& rows) const {
        for (std::size_t d = 0; d < packed_->drops.size(); ++d) {
            const auto& drop = packed_->drops[d];
            const auto* record = drop.drop ? season_.drops.find(*drop.drop) : nullptr;
            const QString place = record ? text(record->place) : tr("the venue");
            const QString hatch =
                packed_->drops.size() > 1 && d + 1 < packed_->drops.size() ? tr(", hatched") : QString();
            rows.push_back(
                Block{papers::Paragraph{strong(utf8(tr("Drop %1").arg(d + 1))) +
                                            plain(utf8(tr(": %1, %2%3").arg(place, clock(drop.at), hatch))),
                                        true}});
        }
    }

    void addWater(std::vector<Block>& body) const {
        if (packed_->waters.empty()) return;
        body.push_back(Block{papers::SectionHead{
            utf8(tr("Water")),
            strong(utf8(tr("carry %1").arg(litresWords(packed_->carryLitres, season_))))}});
        for (const auto& water : packed_->waters) {
            const auto* line = season_.lines.find(water.line);
            const auto* design = line ? season_.designs.find(line->design) : nullptr;
            if (!design) continue;
            papers::Text words = strong(design->name);
            if (water.travel.value > 0)
                words = words + plain(utf8(tr(" travels with %1; ").arg(waterOf(water.travel))));
            else
                words = words + plain(utf8(tr(" travels dry; ")));
            words = words + plain(utf8(tr("pour in ")));
            words = words + strong(utf8(waterOf(water.topUp))) +
                    plain(utf8(tr(" each on arrival = %1").arg(canOf(water.topUp.value * water.pieces))));
            if (water.checkAt)
                words = words + plain(utf8(tr("; check "))) +
                        strong(utf8(checkWhen(booking_, *water.checkAt, water.placed.day))) +
                        plain(utf8(tr(", %1 for all").arg(canOf(water.course.toCarry.value))));
            body.push_back(Block{papers::Paragraph{words}});
        }
        const auto* venue = booking_.venue ? season_.venues.find(*booking_.venue) : nullptr;
        if (venue && !venue->water.empty())
            body.push_back(
                Block{papers::Paragraph{plain(utf8(tr("Water there: %1").arg(text(venue->water)))), true}});
    }

    void addCautions(std::vector<Block>& body) const {
        papers::Cautions cautions;
        cautions.items.push_back(
            {utf8(tr("Nothing loose.")),
             utf8(tr("Strap or wedge what could slide. What may be carried, and how it is tied, is "
                     "for the vehicle's plate and the law of the road."))});
        cautions.items.push_back(
            {utf8(tr("Lifting.")),
             utf8(tr("Two hands, bent knees, nobody over %1; local rules on lifting come first.")
                      .arg(weightWords(season_.theSettings().liftingLimitKg, season_, -1)))});
        if (packed_->load && packed_->load->overPlate && packed_->load->overPlate->value > 0)
            cautions.items.push_back(
                {utf8(tr("Over the plate")),
                 utf8(tr("by %1: drive more than once.")
                          .arg(weightWords(*packed_->load->overPlate, false, season_)))});
        body.push_back(Block{std::move(cautions)});
    }

    [[nodiscard]] static papers::WriteHere writeHere() {
        return {utf8(tr("Write here,\ntype in later")),
                {{utf8(tr("loaded at")), 30},
                 {utf8(tr("what shifted or spilt")), 0},
                 {utf8(tr("water left over")), 36}}};
    }

    const PaperOrder& order_;
    const model::Season& season_;
    const model::Booking& booking_;
    const plan::BookingPlan& plan_;
    const plan::BookingPacking* packed_ = nullptr;
    double trayScale_ = 10;
    double floorScale_ = 25;
};

} // namespace

papers::Document packingSheet(const PaperOrder& order) {
    return Packing(order).document();
}

} // namespace withy::ui
