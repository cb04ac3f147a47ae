// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/papers/cutting_hours.h"
#include "ui/logic/papers/cutting_outings.h"
#include "ui/logic/papers/cutting_vessels.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;

class CuttingListMaker {
    Q_DECLARE_TR_FUNCTIONS(CuttingList)

public:
    explicit CuttingListMaker(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , index_(order.season)
        , days_(order.season)
        , vessels_(order.season)
        , booking_(*season_.bookings.find(*order.booking))
        , outings_(cuttingOutings(order)) {
        std::vector<Id<model::Booking>> all;
        for (const auto& outing : outings_)
            all.insert(all.end(), outing.bookings.begin(), outing.bookings.end());
        letters_ = bookingLetters(season_, all);
    }

    papers::Document document() {
        papers::Document d;
        const bool one = outings_.size() == 1;
        d.name = one ? utf8(outingName(outings_.front())) : booking_.title;
        if (!outings_.empty()) d.key = utf8(shortDay(outings_.front().day));
        if (one)
            d.keyNote = utf8(outingHours(outings_.front()));
        else if (!outings_.empty() && outings_.front().day == outings_.back().day)
            d.keyNote = utf8(tr("%n round(s)", nullptr, asCount(outings_.size())));
        else if (!outings_.empty())
            d.keyNote = utf8(tr("and %n more round(s)", nullptr, asCount(outings_.size() - 1)));
        for (const auto& outing : outings_)
            addOuting(outing, !one, d.body);
        if (outings_.empty())
            d.body.push_back(Block{papers::Paragraph{plain(utf8(tr(
                "Nothing to cut is known of yet. Give the booking pieces, and their slots plants that have a "
                "patch.")))}});
        else
            d.body.push_back(Block{cautions()});
        if (wants(order_, PaperKind::cuttingList, PaperPart::writeHere) && !outings_.empty())
            d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(footWords());
        return d;
    }

private:
    static QString outingName(const CuttingOuting& outing) {
        const QString day = longDay(outing.day).section(QLatin1Char(' '), 0, 0);
        if (outing.why == garden::GoodHourWhy::dawn) return tr("Dawn cut, %1").arg(day);
        if (outing.why == garden::GoodHourWhy::evening) return tr("Evening cut, %1").arg(day);
        return tr("Cut on %1").arg(day);
    }

    /// "06:35 to 07:50, done before 09:00".
    QString outingHours(const CuttingOuting& outing) {
        if (!outing.hours) return tr("hours still to be chosen");
        const auto [from, to] = *outing.hours;
        QString words = to == from ? tr("from %1").arg(planClock(from)) : planHours(from, to);
        const auto limit = season_.theSettings().heatLimitCelsius;
        const QString warm = tooWarmFrom(days_.on(outing.day), limit, from.minute);
        const bool before = !warm.isEmpty() && clock(to) <= warm;
        return before ? tr("%1, done before %2").arg(words, warm) : words;
    }

    void addOuting(const CuttingOuting& outing, bool named, std::vector<Block>& body) {
        if (named)
            body.push_back(Block{papers::SectionHead{
                utf8(outingName(outing)),
                plain(utf8(tr("%1, %2").arg(shortDay(outing.day), outingHours(outing))))}});
        const auto& day = days_.on(outing.day);
        const auto from = outing.hours ? std::optional(outing.hours->first.minute) : std::nullopt;
        body.push_back(Block{cuttingHours(day, season_.theSettings().heatLimitCelsius, from, season_), true});
        if (const QString known = heatKnown(day); !known.isEmpty())
            body.push_back(Block{papers::Paragraph{plain(utf8(known)), true}, true});
        body.push_back(Block{keyOf(outing), true});
        Id<model::Patch> at;
        for (const auto& [booking, goal] : outing.goals) {
            const auto* patch = season_.patches.find(goal.patch);
            if (!patch) continue;
            if (at != goal.patch)
                body.push_back(Block{papers::PatchHead{utf8(walkingPlace(season_, goal.patch)), patch->label,
                                                       plain(patch->wayThere)}});
            at = goal.patch;
            body.push_back(Block{rowOf(booking, goal, outing.bookings.size() > 1)});
        }
        body.push_back(Block{papers::Spacer{4}});
    }

    static QString heatKnown(const plan::PlaceDay& day) {
        if (!day.basis) return tr("No temperatures are known of that day. Cut in the cool.");
        if (*day.basis == plan::HeatBasis::normals)
            return tr("Temperatures are the usual ones of the month.");
        return {};
    }

    papers::KeyRow keyOf(const CuttingOuting& outing) const {
        papers::KeyRow key;
        for (const auto id : outing.bookings)
            if (const auto* b = season_.bookings.find(id))
                key.items.push_back({utf8(letters_.at(id)),
                                     utf8(tr("%1, %2").arg(text(b->title), shortDay(b->eventStart.day)))});
        return key;
    }

    papers::TallyRow rowOf(Id<model::Booking> booking, const CuttingGoal& goal, bool marked) {
        papers::TallyRow row;
        row.count = utf8(whole(goal.goal()));
        row.unit = utf8(goal.orAll ? tr("or all") : tr("stem(s)", nullptr, static_cast<int>(goal.goal())));
        if (marked) row.mark = utf8(letters_.at(booking));
        const auto* plant = season_.plants.find(goal.plant);
        if (plant) {
            row.title = plant->name;
            row.detail = detailOf(*plant, goal);
        }
        row.bucket = utf8(vessels_.next(goal.goal(), goal.length, goal.personal));
        row.boxes = papers::tallyBoxes(static_cast<int>(std::min<std::int64_t>(goal.goal(), 100000)));
        row.writeLabel = utf8(tr("cut"));
        return row;
    }

    /// "just opening, 350 mm and up, bunch in tens, gloves".
    [[nodiscard]] papers::Text detailOf(const model::Plant& plant, const CuttingGoal& goal) const {
        std::string stage = plant.stageToCut; // a sentence there goes on in a list here
        while (!stage.empty() && (stage.back() == '.' || stage.back() == ' '))
            stage.pop_back();
        papers::Text words = strong(stage);
        QStringList rest;
        if (goal.length) rest << tr("%1 and up").arg(lengthWords(*goal.length));
        rest << (plant.method == model::HarvestMethod::pull ? tr("pull") : tr("cut"));
        rest << (plant.bunch ? tr("in bunches of %1").arg(plant.bunch->value) : tr("loose"));
        const QString more = rest.join(QStringLiteral(", "));
        words = words + plain(utf8(plant.stageToCut.empty() ? more : QStringLiteral(", ") + more));
        if (wantsGloves(plant.id)) words = words + plain(", ") + strong(utf8(tr("gloves")));
        return words;
    }

    [[nodiscard]] QString lengthWords(Millimetres length) const {
        const auto& field = *model::tableInfo(model::TableKind::plants).field("stem_length_min");
        return fieldText(season_, model::TableKind::plants, field, model::Value(length.value));
    }

    [[nodiscard]] bool wantsGloves(Id<model::Plant> plant) const {
        return !plantCautions(season_, index_, {plant}).gloves.isEmpty();
    }

    [[nodiscard]] papers::Cautions cautions() const {
        std::vector<Id<model::Plant>> plants;
        for (const auto& outing : outings_)
            for (const auto& row : outing.goals)
                plants.push_back(row.goal.plant);
        papers::Cautions out;
        out.title = utf8(tr("Take care"));
        addPlants(plantCautions(season_, index_, plants), out);
        out.items.push_back(
            {utf8(tr("Blades and wet ground.")),
             utf8(
                 tr("Cut away from the hand; sound shoes; carry half-full buckets, and no more than you lift "
                    "with ease."))});
        return out;
    }

    static papers::WriteHere writeHere() {
        return {utf8(tr("Write here,\ntype in later")),
                {{utf8(tr("cut by")), 34},
                 {utf8(tr("from")), 22},
                 {utf8(tr("to")), 22},
                 {utf8(tr("thrown away, which")), 0}}};
    }

    [[nodiscard]] QString footWords() const {
        std::int64_t stems = 0;
        for (const auto& outing : outings_)
            stems += outing.stems();
        return tr("%1, %2, %n stem(s) to cut", nullptr,
                  static_cast<int>(std::min<std::int64_t>(stems, 1000000000)))
            .arg(text(booking_.title), shortDay(booking_.eventStart.day));
    }

    const PaperOrder& order_;
    const model::Season& season_;
    plan::Index index_;
    plan::PlaceDays days_;
    CuttingVessels vessels_;
    const model::Booking& booking_;
    std::vector<CuttingOuting> outings_;
    std::map<Id<model::Booking>, QString> letters_;
};

} // namespace

papers::Document cuttingList(const PaperOrder& order) {
    return CuttingListMaker(order).document();
}

} // namespace withy::ui
