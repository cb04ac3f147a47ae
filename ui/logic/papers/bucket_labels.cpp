// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/index.h"
#include "ui/logic/format.h"
#include "ui/logic/papers/cutting_outings.h"
#include "ui/logic/papers/cutting_vessels.h"
#include "ui/logic/papers/flower_in_line.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using papers::BucketLabel;

class LabelMaker {
    Q_DECLARE_TR_FUNCTIONS(BucketLabels)

public:
    explicit LabelMaker(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , index_(order.season)
        , vessels_(order.season)
        , booking_(*season_.bookings.find(*order.booking)) {}

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        d.key = utf8(shortDay(booking_.eventStart.day));
        outings_ = cuttingOutings(order_);
        for (const auto& outing : outings_)
            for (const auto& goal : outing.goals)
                addLabels(outing, goal);
        for (std::size_t i = 0; i < labels_.size(); ++i)
            labels_[i].number = utf8(tr("label %1 of %2").arg(i + 1).arg(labels_.size()));
        d.labels = std::move(labels_);
        if (d.labels.empty())
            d.body.push_back(papers::Block{papers::Paragraph{papers::plain(utf8(tr(
                "No stems are known of yet, so no bucket needs a label. Give the booking pieces, and their "
                "slots plants that have a patch.")))}});
        d.footWhat = booking_.title;
        return d;
    }

private:
    /// A row of the cutting list goes into the same vessels here; what fills several is shared evenly.
    void addLabels(const CuttingOuting& outing, const OutingRow& row) {
        const auto& goal = row.goal;
        const auto vessels = vessels_.deal(goal.goal(), goal.length, goal.personal);
        const std::size_t count = std::max<std::size_t>(1, vessels.names.size());
        std::int64_t left = goal.goal();
        for (std::size_t i = 0; i < count; ++i) {
            const auto rest = static_cast<std::int64_t>(count - i);
            const std::int64_t stems = (left + rest - 1) / rest;
            left -= stems;
            auto label = labelOf(outing, row);
            label.count = utf8(whole(stems));
            label.unit = utf8(count > 1 ? tr("of %1").arg(whole(goal.goal()))
                                        : tr("stem(s)", nullptr, static_cast<int>(stems)));
            if (i < vessels.names.size()) label.vessel = utf8(vessels.names[i]);
            labels_.push_back(std::move(label));
        }
    }

    [[nodiscard]] BucketLabel labelOf(const CuttingOuting& outing, const OutingRow& row) const {
        BucketLabel out;
        const auto* owner = season_.bookings.find(row.booking);
        if (owner) {
            out.name = owner->title;
            out.day = utf8(shortDay(owner->eventStart.day).section(QLatin1Char(' '), 0, 1));
        }
        const auto* plant = season_.plants.find(row.goal.plant);
        if (plant) {
            const QString name = text(plant->name);
            out.plant = utf8(name.section(QLatin1Char(','), 0, 0).trimmed());
            out.variety = utf8(name.section(QLatin1Char(','), 1).trimmed());
            if (plant->conditioningHoursMin)
                out.water = utf8(tr("%1 h or more").arg(QString::number(*plant->conditioningHoursMin)));
            out.flower = flowerInLine(*plant, 12);
            addCaution(*plant, out);
        }
        addBand(outing, row, out);
        out.round =
            utf8(outing.hours ? tr("round %1, %2").arg(shortDay(outing.day), planClock(outing.hours->first))
                              : tr("round %1").arg(shortDay(outing.day)));
        out.cutLabel = utf8(tr("cut, day\nand hour"));
        out.waterLabel = utf8(tr("deep water"));
        return out;
    }

    /// Apart what is for worn pieces; first what was cut on an earlier round than the plant's last.
    void addBand(const CuttingOuting& outing, const OutingRow& row, BucketLabel& out) const {
        if (row.goal.personal) {
            out.band = BucketLabel::Band::apart;
            out.bandWords = utf8(tr("Personal, leave alone"));
            return;
        }
        if (outing.day < lastCut(row)) {
            out.band = BucketLabel::Band::first;
            out.bandWords = utf8(tr("Use first"));
            return;
        }
        out.band = BucketLabel::Band::hold;
        const auto make = makeUpOf(row.booking);
        out.bandWords =
            utf8(make ? tr("Hold to %1 %2")
                            .arg(shortDay(make->day).section(QLatin1Char(' '), 0, 0), planClock(*make))
                      : tr("Hold"));
    }

    [[nodiscard]] Day lastCut(const OutingRow& row) const {
        Day last = row.goal.day;
        for (const auto& outing : outings_)
            for (const auto& other : outing.goals)
                if (other.booking == row.booking && other.goal.plant == row.goal.plant &&
                    other.goal.personal == row.goal.personal)
                    last = std::max(last, outing.day);
        return last;
    }

    [[nodiscard]] std::optional<LocalTime> makeUpOf(Id<model::Booking> booking) const {
        for (const auto& step : runUpSteps(season_, order_.plan, booking))
            if (step.key.step == plan::StepKind::make) return step.from;
        return std::nullopt;
    }

    void addCaution(const model::Plant& plant, BucketLabel& out) const {
        const auto cautions = plantCautions(season_, index_, {plant.id});
        const bool gloves = !cautions.gloves.isEmpty(), air = !cautions.air.isEmpty();
        const bool eaten = !cautions.eaten.isEmpty() || !cautions.pets.isEmpty();
        QStringList words;
        if (gloves) words << tr("gloves");
        const bool all = gloves && eaten && air; // then each in one word
        if (eaten) words << (all ? tr("harmful") : tr("harmful if eaten"));
        if (air) words << tr("pollen");
        out.caution = !words.isEmpty();
        out.cautionWords = utf8(words.join(QStringLiteral(", ")));
    }

    const PaperOrder& order_;
    const model::Season& season_;
    plan::Index index_;
    CuttingVessels vessels_;
    const model::Booking& booking_;
    std::vector<CuttingOuting> outings_;
    std::vector<BucketLabel> labels_;
};

} // namespace

papers::Document bucketLabels(const PaperOrder& order) {
    return LabelMaker(order).document();
}

} // namespace withy::ui
