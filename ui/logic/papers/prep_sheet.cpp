// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/day_heat.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed_words.h"
#include "ui/logic/work_hours.h"

#include <QCoreApplication>

#include <cmath>
#include <set>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;

class Prep {
    Q_DECLARE_TR_FUNCTIONS(PrepSheet)

public:
    explicit Prep(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , plan_(*order.plan.bookings.at(*order.booking))
        , all_(order.plan)
        , booking_(*season_.bookings.find(*order.booking))
        , hours_(workHours(order.season, order.plan, *order.booking)) {}

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        d.key = utf8(shortDay(day()));
        d.keyNote = utf8(keyNote());
        d.facts = facts();
        papers::Columns columns;
        columns.left = prepSteps(order_, day());
        columns.left.push_back(Block{papers::Spacer{4}});
        addCautions(columns.left);
        fillRight(columns.right);
        d.body.push_back(Block{std::move(columns)});
        if (has(PaperPart::workings))
            for (auto& block : stemWorkings(season_, plan_))
                d.body.push_back(std::move(block));
        if (has(PaperPart::writeHere)) d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(
            tr("%1, %2, guests %3")
                .arg(text(booking_.title), shortDay(booking_.eventStart.day), clock(booking_.eventStart)));
        return d;
    }

private:
    /// The day the make-up begins.
    [[nodiscard]] Day day() const { return hours_.makeUpStart.day; }

    [[nodiscard]] QString keyNote() const {
        const int ahead = booking_.eventStart.day - day();
        if (ahead == 0) return tr("the same day");
        return ahead == 1 ? tr("the day before") : tr("%n day(s) before", nullptr, ahead);
    }

    [[nodiscard]] std::vector<papers::Text> facts() const {
        std::vector<papers::Text> out;
        out.push_back(plain(utf8(stemCounts(plan_))));
        plan::PlaceDays days(season_);
        const auto& heatOfDay = days.on(day());
        const auto& heat = heatOfDay.garden.heat;
        if (heat.sunrise)
            out.push_back(plain(utf8(tr("sunrise "))) + strong(hourText(*heat.sunrise)));
        else
            out.push_back(
                plain(utf8(heatOfDay.garden.sun == garden::SunStatus::allDay ? tr("the sun does not set")
                                                                             : tr("the sun does not rise"))));
        if (heatOfDay.basis) {
            const double limit = season_.theSettings().heatLimitCelsius;
            const auto over = garden::firstHourAbove(heat, limit);
            const QString degrees = temperatureWords(limit, season_);
            if (over.ok() && *over)
                out.push_back(plain(utf8(tr("over %1 from ").arg(degrees))) + strong(hourText(**over)));
            else
                out.push_back(plain(utf8(tr("not over %1").arg(degrees))));
        }
        out.push_back(plain(utf8(tr("made by "))) + strong(utf8(planBy(hours_.makeUpEnd))));
        return out;
    }

    static std::string hourText(double hour) {
        return LocalTime::fromMinutes(((std::llround(hour * 60) % 1440) + 1440) % 1440).clock();
    }

    void fillRight(std::vector<Block>& right) {
        std::set<std::int64_t> seen;
        for (const auto& line : plan_.lines) {
            if (seen.insert(line.design.value).second) addDesign(line, right);
        }
        addLayOut(right);
        addWater(right);
        addRibbon(right);
        if (has(PaperPart::conditioning)) addConditioning(right);
    }

    void addDesign(const plan::LinePlan& line, std::vector<Block>& right) const {
        const auto& design = *season_.designs.find(line.design);
        const auto& dp = *all_.designs.at(line.design);
        right.push_back(Block{papers::SectionHead{
            design.name, plain(utf8(tr("%n stem(s)", nullptr, static_cast<int>(dp.stemsPerPiece.value))))}});
        std::vector<std::pair<model::Tier, QString>> lengths;
        QStringList once; // a piece made once needs no list to come back to
        for (const auto& slot : dp.slots) {
            const auto& record = *season_.slots.find(slot.slot);
            std::string plants;
            for (const auto& [plant, share] : slot.fill)
                plants += (plants.empty() ? "" : ", ") + season_.plants.find(plant)->name;
            if (line.pieces.value > 1)
                right.push_back(
                    Block{papers::CountRow{std::to_string(record.count.value), record.label, plants}});
            else
                once << tr("%1 %2 %3").arg(record.count.value).arg(text(record.label), text(plants));
            if (!slot.cutLength) continue;
            const QString length =
                tr("%1 %2")
                    .arg(tierWords(record.tier))
                    .arg(lengthFigure(static_cast<double>(slot.cutLength->length.value), season_));
            const std::pair at{record.tier, length};
            if (std::find(lengths.begin(), lengths.end(), at) == lengths.end()) lengths.push_back(at);
        }
        std::stable_sort(lengths.begin(), lengths.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        QStringList fromLow;
        for (const auto& [tier, words] : lengths)
            fromLow << words;
        if (!once.isEmpty())
            right.push_back(Block{papers::Paragraph{plain(utf8(once.join(QStringLiteral(" · ")))), true}});
        if (!fromLow.isEmpty())
            right.push_back(Block{papers::Paragraph{
                plain(utf8(tr("Cut %1 %2").arg(fromLow.join(QStringLiteral(", ")), lengthUnit(season_)))),
                true}});
    }

    void addLayOut(std::vector<Block>& right) const {
        const auto& kit = plan_.kit;
        if (kit.containers.empty() && kit.sundries.empty() && !kit.buckets) return;
        right.push_back(Block{papers::SectionHead{utf8(tr("Lay out")), {}}});
        for (const auto& c : kit.containers)
            tick(right, whole(shed::wholeUnits(c.total.needed)),
                 text(season_.containers.find(c.container)->name));
        if (kit.buckets) tick(right, whole(kit.buckets->total), tr("clean buckets"));
        for (const auto& s : kit.sundries) {
            const auto& sundry = *season_.sundries.find(s.sundry);
            tick(right, sundryAmount(&sundry, s.total.needed), text(sundry.name));
        }
    }

    static void tick(std::vector<Block>& right, const QString& count, const QString& what) {
        right.push_back(Block{papers::TickRow{strong(utf8(count)) + plain(" " + utf8(what)), {}, false}});
    }

    void addWater(std::vector<Block>& right) const {
        if (plan_.kit.water.total.value == 0) return;
        right.push_back(Block{papers::SectionHead{utf8(tr("Water")), {}}});
        for (const auto& line : plan_.lines) {
            const auto& water = all_.designs.at(line.design)->water;
            if (!water) continue;
            const double litresAll = static_cast<double>(water->water.value * line.pieces.value) / 1000;
            right.push_back(Block{papers::FigureLine{
                utf8(litresWords(litresAll, season_)),
                plain(utf8(tr("%1, %2 each")
                               .arg(text(season_.designs.find(line.design)->name),
                                    millilitresWords(static_cast<double>(water->water.value), season_))))}});
        }
    }

    void addRibbon(std::vector<Block>& right) const {
        const auto* shed = all_.shed.get();
        for (const auto& need : plan_.kit.ribbons) {
            const auto& ribbon = *season_.ribbons.find(need.ribbon);
            right.push_back(Block{
                papers::SectionHead{utf8(tr("Ribbon, %1").arg(text(ribbon.name))),
                                    plain(utf8(tr("%1 wide").arg(lengthWords(ribbon.width, season_))))}});
            for (const auto& cut : need.cuts)
                right.push_back(Block{papers::FigureLine{
                    utf8(tr("%1 × %2").arg(whole(cut.pieces.value), lengthWords(cut.each, season_))),
                    plain(season_.designs.find(season_.lines.find(cut.line)->design)->name)}});
            QString stock = need.onHand
                                ? tr("%1 on hand, in reels and ends.").arg(reelWords(*need.onHand, season_))
                                : tr("Not counted yet.");
            const auto lacking =
                need.missing ? ribbonLacking(season_, shed, plan_.booking, need) : need.missing;
            if (need.missing && !lacking) stock = tr("%1 How it is cut is not planned yet.").arg(stock);
            if (lacking && lacking->value > 0) {
                stock = tr("%1 missing: %2").arg(reelWords(*lacking, season_), stock);
                if (*need.missing < *lacking)
                    stock = tr("%1 Bookings cut before it take their share.").arg(stock);
            }
            right.push_back(Block{papers::Paragraph{plain(utf8(stock)), true}});
        }
    }

    void addConditioning(std::vector<Block>& right) const {
        std::vector<Block> rows;
        for (const auto& need : plan_.needs) {
            const auto& plant = *season_.plants.find(need.plant);
            if (plant.conditioning.empty() && !plant.conditioningHoursMin) continue;
            QString how = text(plant.conditioning);
            if (plant.conditioningHoursMin)
                how = tr("%1 h at least. ").arg(*plant.conditioningHoursMin) + how;
            rows.push_back(Block{papers::Paragraph{strong(plant.name) + plain(": " + utf8(how)), true}});
        }
        if (rows.empty()) return;
        right.push_back(Block{papers::SectionHead{utf8(tr("Conditioning")), {}}});
        right.insert(right.end(), rows.begin(), rows.end());
    }

    void addCautions(std::vector<Block>& right) const {
        papers::Cautions cautions;
        cautions.title = utf8(tr("Take care"));
        addPlants(plantCautions(season_, plantsOf(plan_)), cautions);
        cautions.items.push_back({utf8(tr("Decoration, not food.")),
                                  utf8(tr("Heads and water clear of plates; nobody drinks vase water."))});
        if (!booking_.candles.empty())
            cautions.items.push_back(
                {utf8(tr("Candles")),
                 utf8(tr("the venue's rule decides. Never unattended, never near dry stems."))});
        cautions.items.push_back(
            {utf8(tr("Lifting")),
             utf8(Units(season_).imperial()
                      ? tr("a bucket of three US gallons is 25 pounds of water. Half-fill, bend knees.")
                      : tr("a ten-litre bucket is ten kilos of water. Half-fill, bend knees."))});
        right.push_back(Block{std::move(cautions)});
    }

    [[nodiscard]] static papers::WriteHere writeHere() {
        return {utf8(tr("Write here,\ntype in later")),
                {{utf8(tr("minutes for all")), 36},
                 {utf8(tr("thrown away, which")), 0},
                 {utf8(tr("broken or chipped")), 36}}};
    }

    [[nodiscard]] bool has(PaperPart part) const { return wants(order_, PaperKind::prepSheet, part); }

    const PaperOrder& order_;
    const model::Season& season_;
    const plan::BookingPlan& plan_;
    const plan::Plan& all_;
    const model::Booking& booking_;
    WorkHours hours_;
};

} // namespace

papers::Document prepSheet(const PaperOrder& order) {
    return Prep(order).document();
}

} // namespace withy::ui
