// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/index.h"
#include "core/plan/piece_water.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/papers/drop_answers.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using papers::Align;
using papers::Block;
using papers::plain;
using papers::strong;

class HandOverMaker {
    Q_DECLARE_TR_FUNCTIONS(HandOver)

public:
    explicit HandOverMaker(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , index_(order.season)
        , plan_(*order.plan.bookings.at(*order.booking))
        , booking_(*season_.bookings.find(*order.booking))
        , venue_(booking_.venue ? season_.venues.find(*booking_.venue) : nullptr)
        , drops_(plan::Index::of(index_.drops, booking_.id)) {}

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        d.key = utf8(shortDay(booking_.eventStart.day));
        if (const auto left = leftWithYou())
            d.keyNote = utf8(tr("left with you at %1").arg(planClock(*left)));
        d.facts = facts();
        d.body.push_back(Block{papers::SectionHead{utf8(tr("What we leave, and where")), {}}});
        addWhatAndWhere(d.body);
        addWater(d.body);
        d.body.push_back(Block{papers::Spacer{2}});
        papers::Columns columns;
        columns.split = papers::Split::Halves;
        addPlease(columns.left);
        columns.right.push_back(Block{cautions()});
        d.body.push_back(Block{std::move(columns)});
        addComingHome(d.body);
        d.last.push_back(Block{signatures()});
        d.footWhat = utf8(tr("%1. One copy stays, one goes in the van").arg(text(booking_.title)));
        return d;
    }

private:
    [[nodiscard]] std::optional<LocalTime> leftWithYou() const {
        std::optional<LocalTime> left;
        for (const auto& step : runUpSteps(season_, order_.plan, booking_.id))
            if (step.key.step == plan::StepKind::place || step.key.step == plan::StepKind::handOver)
                if (step.to.day == booking_.eventStart.day) left = std::max(left.value_or(step.to), step.to);
        if (!left && !drops_.empty() && drops_.front()->time.day == booking_.eventStart.day)
            left = drops_.front()->time;
        return left;
    }

    [[nodiscard]] std::vector<papers::Text> facts() const {
        std::vector<papers::Text> out;
        if (venue_) out.push_back(plain(venue_->name));
        out.push_back(plain(utf8(tr("guests "))) +
                      strong(utf8(hoursWords(booking_.eventStart, booking_.eventEnd))));
        const auto& place = season_.theSettings().placeName;
        if (!place.empty()) out.push_back(plain(utf8(tr("questions: "))) + strong(place));
        return out;
    }

    void addWhatAndWhere(std::vector<Block>& body) const {
        const auto before = body.size();
        for (const auto* line : plan::Index::of(index_.lines, booking_.id)) {
            const auto* design = season_.designs.find(line->design);
            if (!design) continue;
            body.push_back(
                Block{papers::CountRow{utf8(whole(line->pieces.value)), design->name, utf8(whereOf(*line))}});
            if (line->sparePieces.value > 0)
                body.push_back(Block{papers::CountRow{utf8(whole(line->sparePieces.value)), design->name,
                                                      utf8(tr("spare, for what breaks"))}});
        }
        if (body.size() == before) body.push_back(Block{papers::Paragraph{plain(utf8(tr("Nothing yet.")))}});
    }

    [[nodiscard]] QString whereOf(const model::Line& line) const {
        QStringList words;
        if (const QString places = placesOf(season_, line.id); !places.isEmpty()) words << places;
        const auto* drop = line.drop        ? season_.drops.find(*line.drop)
                           : drops_.empty() ? nullptr
                                            : drops_.front();
        if (drop) words << text(drop->place);
        return words.join(QStringLiteral(", "));
    }

    /// The water in one of each, and what is known of how much is drunk in a day.
    void addWater(std::vector<Block>& body) const {
        std::vector<Block> rows;
        std::set<Id<model::Design>> seen;
        for (const auto* line : plan::Index::of(index_.lines, booking_.id)) {
            const auto found = order_.plan.designs.find(line->design);
            const auto* design = season_.designs.find(line->design);
            if (!design || found == order_.plan.designs.end() || !found->second->water) continue;
            if (!seen.insert(line->design).second) continue;
            papers::Text rest = plain(utf8(tr("in each "))) + strong(design->name);
            if (const auto drunk = drunkADay(*found->second))
                rest = rest + plain(utf8(tr(", which drinks about %1 a day at %2")
                                             .arg(millilitresWords(static_cast<double>(*drunk), season_),
                                                  temperatureWords(20, season_))));
            rows.push_back(Block{papers::FigureLine{
                utf8(millilitresWords(static_cast<double>(found->second->water->water.value), season_)),
                std::move(rest)}});
        }
        if (rows.empty()) return;
        body.push_back(Block{papers::SectionHead{utf8(tr("Water")), plain(utf8(tr("every day")))}});
        body.insert(body.end(), rows.begin(), rows.end());
        body.push_back(Block{papers::Paragraph{
            plain(
                utf8(tr("Filled when we leave. Look every day and top up with fresh water to where it stood; "
                        "sooner in a warm room."))),
            true}});
    }

    /// Blank unless it is known of every plant of the piece. To ten millilitres.
    [[nodiscard]] std::optional<std::int64_t> drunkADay(const plan::DesignPlan& design) const {
        double sum = 0;
        for (const auto& slot : design.slots) {
            const auto* record = season_.slots.find(slot.slot);
            if (!record || slot.fill.empty()) return std::nullopt;
            for (const auto& [id, share] : slot.fill) {
                const auto* plant = season_.plants.find(id);
                if (!plant || !plant->uptakeMlPerDay) return std::nullopt;
                sum += static_cast<double>(record->count.value) * share * *plant->uptakeMlPerDay;
            }
        }
        const auto tens = static_cast<std::int64_t>(sum / 10 + 0.5) * 10;
        return tens > 0 ? std::optional(tens) : std::nullopt;
    }

    void addPlease(std::vector<Block>& left) const {
        left.push_back(Block{papers::SectionHead{utf8(tr("Please")), {}}});
        const auto tick = [&](const QString& first, const QString& rest) {
            left.push_back(Block{papers::TickRow{strong(utf8(first)) + plain(utf8(rest)), {}, false}});
        };
        tick(tr("Lift by what they stand in,"), tr(" never by the flowers"));
        tick(tr("Cool and shady:"), tr(" out of the sun, off radiators, away from the fruit bowl"));
        tick(tr("Ways out stay clear;"), tr(" nothing stands in an aisle or by a fire door"));
        if (venue_ && !venue_->flameRule.empty())
            tick(tr("Flame:"), QStringLiteral(" ") + text(venue_->flameRule));
        else
            tick(tr("Candles:"), tr(" the venue's rule decides; never near the flowers, never left alone"));
    }

    [[nodiscard]] papers::Cautions cautions() const {
        papers::Cautions out;
        out.title = utf8(tr("Take care"));
        const auto add = [&](const QString& what, const QString& toDo) {
            out.items.push_back({utf8(what), utf8(toDo)});
        };
        const auto plants = plantCautions(season_, plantsOf(plan_));
        const QString between = QStringLiteral("; ");
        add(tr("Decoration, not food."), tr("Nothing of it belongs on a plate, in a drink or on the cake."));
        add(tr("The water is not for drinking."), tr("Tip it down a drain and wash your hands."));
        if (!plants.sap.isEmpty())
            add(tr("Sap can mark skin and cloth:"), plants.sap.join(between) + QLatin1Char('.'));
        QStringList eaten = plants.eaten;
        for (const auto& name : plants.pets)
            if (!eaten.contains(name)) eaten << name;
        if (!eaten.isEmpty())
            add(tr("Harmful if eaten:"),
                tr("%1. Keep from children and animals; if swallowed, ask a doctor or a vet at once.")
                    .arg(eaten.join(between)));
        if (!plants.air.isEmpty()) add(tr("Pollen or scent:"), plants.air.join(between) + QLatin1Char('.'));
        add(tr("Other flowers too"), tr("may upset people or animals: out of reach."));
        return out;
    }

    void addComingHome(std::vector<Block>& body) const {
        auto home = comingHome(season_, booking_);
        for (auto& each : home) // what was really counted out speaks first
            for (const auto& row : season_.returns)
                if (row.booking == booking_.id && row.container == each.container) each.out = row.out;
        papers::Text when;
        for (const auto* drop : drops_)
            if (drop->clearedAt && when.empty())
                when =
                    strong(utf8(tr("%1, %2").arg(shortDay(drop->clearedAt->day), clock(*drop->clearedAt))));
        if (home.empty()) {
            body.push_back(Block{
                papers::Paragraph{plain(utf8(tr("Nothing comes home to us: keep it all, and enjoy it.")))}});
            return;
        }
        body.push_back(Block{papers::SectionHead{utf8(tr("Coming home")), std::move(when)}});
        body.push_back(Block{returnsTable(home)});
        papers::Text words;
        for (const auto* drop : drops_)
            if (!drop->clearedBy.empty())
                words = words + strong(drop->place) + plain(": " + drop->clearedBy + ". ");
        const auto last = plan::looksGoodTo(booking_);
        words =
            words +
            strong(utf8(
                tr("The flowers may be given away after %1, %2. ").arg(shortDay(last.day), clock(last)))) +
            plain(
                utf8(tr("Fresh water, a finger's width off the ends. What they stand in comes home empty.")));
        body.push_back(Block{papers::Paragraph{std::move(words), true}});
    }

    [[nodiscard]] papers::Table returnsTable(const std::vector<ComingHome>& home) const {
        papers::Table t;
        t.columns = {{"", Align::Left, 1, false},
                     {utf8(tr("out")), Align::Right, 0, true},
                     {utf8(tr("back")), Align::Left, 0.42, false, papers::CellKind::Box},
                     {utf8(tr("broken")), Align::Left, 0.42, false, papers::CellKind::Box},
                     {utf8(tr("still out")), Align::Left, 0.42, false, papers::CellKind::Box},
                     {utf8(tr("if lost")), Align::Right, 0, false}};
        for (const auto& each : home) {
            const auto& container = *season_.containers.find(each.container);
            const QString lost =
                container.replacementPrice
                    ? tr("%1 each").arg(amount(*container.replacementPrice, season_.theSettings()))
                    : QString();
            t.rows.push_back(
                {{strong(container.name), strong(utf8(whole(each.out))), {}, {}, {}, plain(utf8(lost))},
                 papers::RowKind::Body});
        }
        return t;
    }

    static papers::WriteHere signatures() {
        return {"",
                {{utf8(tr("handed over by")), 38},
                 {utf8(tr("received by, name and signature")), 0},
                 {utf8(tr("at")), 20},
                 {utf8(tr("counted back by")), 38}}};
    }

    const PaperOrder& order_;
    const model::Season& season_;
    plan::Index index_;
    const plan::BookingPlan& plan_;
    const model::Booking& booking_;
    const model::Venue* venue_;
    const std::vector<const model::Drop*>& drops_;
};

} // namespace

papers::Document handOverSheet(const PaperOrder& order) {
    return HandOverMaker(order).document();
}

} // namespace withy::ui
