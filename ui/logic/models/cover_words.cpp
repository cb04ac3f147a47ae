// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cover_words.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr double closeColour = 12; ///< CIEDE2000: seen apart side by side, not across a table (own choice)
constexpr std::size_t mostCompetitors = 3;

class CoverWordsSay {
    Q_DECLARE_TR_FUNCTIONS(CoverWords)

public:
    CoverWordsSay(const CoverView& view, const plan::SlotCover& slot)
        : view_(view)
        , season_(view.season)
        , slot_(slot)
        , level_(slot.at[static_cast<std::size_t>(promiseLevel(view.season))]) {}

    [[nodiscard]] QStringList notes() const {
        QStringList all;
        if (!level_.supplyKnown)
            all << tr("None of its plants has a patch with usual dates and expected stems, nor stems in "
                      "store.");
        const auto likely = shortBy(slot_);
        if (likely.value > 0 && level_.shortBy > likely)
            all << tr("%1 short even if the likely number comes, and %2 more not sure. The ways out make all "
                      "%3 sure.")
                       .arg(whole(likely.value), whole((level_.shortBy - likely).value),
                            whole(level_.shortBy.value));
        addCompetitors(all);
        if (const QString worth = oneMore(); !worth.isEmpty()) all << worth;
        for (const auto& out : slot_.leftOut)
            all << leftOut(out);
        return all;
    }

    [[nodiscard]] SheetWay way(const plan::Mend& mend) const {
        switch (mend.kind) {
        case plan::MendKind::swap:
            return swap(mend);
        case plan::MendKind::buy:
            return buy(mend);
        case plan::MendKind::fewerPieces:
            return fewer(mend);
        }
        return {};
    }

private:
    [[nodiscard]] QString booking(Id<model::Booking> id) const {
        const auto* b = season_.bookings.find(id);
        return b ? tr("%1 (%2)").arg(text(b->title), shortDay(b->eventStart.day)) : tr("another booking");
    }

    void addCompetitors(QStringList& all) const {
        const auto& list = level_.competitors;
        for (std::size_t i = 0; i < std::min(list.size(), mostCompetitors); ++i)
            all << tr("%1 has %2 %3.")
                       .arg(booking(list[i].booking), whole(list[i].stems.value),
                            inPassing(season_, list[i].plant));
        if (list.size() > mostCompetitors)
            all << tr("And %n more.", nullptr, static_cast<int>(list.size() - mostCompetitors));
    }

    /// What one more stem of the first plant for which it would do anything would do.
    [[nodiscard]] QString oneMore() const {
        const auto& allocation = view_.all.allocations[static_cast<std::size_t>(promiseLevel(season_))];
        for (std::size_t i = 0; i < level_.oneMore.size() && i < slot_.choices.size(); ++i) {
            if (!level_.oneMore[i]) continue;
            return worth(*level_.oneMore[i], inPassing(season_, slot_.choices[i].plant),
                         allocation ? allocation->problem.demands : std::vector<cover::Demand>());
        }
        if (level_.shortBy.value > 0 && !level_.oneMore.empty())
            return tr("One more stem in time would change nothing.");
        return {};
    }

    [[nodiscard]] QString worth(const cover::Worth& w, const QString& plant,
                                const std::vector<cover::Demand>& demands) const {
        if (w.goesTo && *w.goesTo < demands.size()) {
            const auto& to = demands[*w.goesTo];
            if (to.line == slot_.line && to.slot == slot_.slot)
                return {}; // one stem, one less short: that goes without saying
            if (to.booking == view_.cover.booking)
                return tr("One more %1 would go to another slot of this booking first.").arg(plant);
            return tr("One more %1 would go to %2 first.").arg(plant, booking(to.booking));
        }
        if (w.saved > 0)
            return tr("One more %1 would save %2.").arg(plant, amount(Money{w.saved}, season_.theSettings()));
        return tr("One more %1 would only let a plant higher in the order, or fresher, be used.").arg(plant);
    }

    [[nodiscard]] QString leftOut(const plan::LeftOut& out) const {
        const QString plant = nameIn(season_.plants, out.plant);
        return out.reason == plan::LeftOutReason::tooShort
                   ? tr("%1 is %2 too short for it.").arg(plant, lengthWords(out.missing, season_))
                   : tr("%1 has no day on which it may be cut for this.").arg(plant);
    }

    /// What is still short when a way is taken; empty when nothing is.
    [[nodiscard]] QString after(Stems mended) const {
        const Stems left = level_.shortBy - mended;
        return left.value > 0 ? tr(" It leaves %1 short.").arg(whole(left.value)) : QString();
    }

    [[nodiscard]] SheetWay swap(const plan::Mend& mend) const {
        SheetWay way;
        const auto* plant = season_.plants.find(mend.plant);
        const QString name = nameIn(season_.plants, mend.plant);
        way.dotted = true;
        if (plant) way.dot = plant->colour1;
        way.words = {
            {tr("Swap in %1 %2").arg(whole(mend.stems.value), name), AnswerPart::Weight::strong},
            {(mend.lengthKnown ? tr(", long enough, free, %1.") : tr(", free, %1; the length is not known."))
                     .arg(nearness(mend)) +
                 after(mend.stems),
             {}}};
        way.button = tr("Take the swap");
        way.means = tr("Take the swap: %1 %2").arg(whole(mend.stems.value), name);
        return way;
    }

    [[nodiscard]] static QString nearness(const plan::Mend& mend) {
        if (!mend.colourDifference) return tr("its colour not known");
        return *mend.colourDifference <= closeColour ? tr("close in colour") : tr("near in colour");
    }

    [[nodiscard]] SheetWay buy(const plan::Mend& mend) const {
        SheetWay way;
        const QString name = inPassing(season_, mend.plant);
        const int bunches = static_cast<int>(mend.bunches);
        const QString what =
            mend.bunch.value > 1
                ? tr("%n bunch(es) of %1 %2", nullptr, bunches).arg(whole(mend.bunch.value), name)
                : tr("%n stem(s) of %1", nullptr, bunches).arg(name);
        const auto bought = mend.bunch.value * mend.bunches;
        const QString why =
            bought > mend.stems.value
                ? tr(" (%1 for the %2: whole bunches are sold)").arg(whole(bought), whole(mend.stems.value))
                : QString();
        way.words = {{tr("Buy %1").arg(what), AnswerPart::Weight::strong},
                     {why + price(mend) + order(mend), {}}};
        if (mend.orderLate) way.words.push_back({tr(" That day has passed."), AnswerPart::Weight::asks});
        way.words.push_back({after(mend.stems), {}});
        way.button = tr("Buy them");
        way.means = tr("Buy %1").arg(what);
        return way;
    }

    [[nodiscard]] QString price(const plan::Mend& mend) const {
        return mend.price ? tr(", %1").arg(amount(*mend.price, season_.theSettings()))
                          : tr(", their cost not known");
    }

    [[nodiscard]] static QString order(const plan::Mend& mend) {
        return tr(", ordered by %1.").arg(shortDay(mend.orderBy));
    }

    [[nodiscard]] SheetWay fewer(const plan::Mend& mend) const {
        SheetWay way;
        const auto* line = season_.lines.find(slot_.line);
        const auto* design = line ? season_.designs.find(line->design) : nullptr;
        const QString pieces =
            design ? countedPieces(season_, *design, mend.pieces.value) : whole(mend.pieces.value);
        way.words = {{tr("Make %1 fewer").arg(pieces), AnswerPart::Weight::strong}};
        way.words.push_back(
            {line ? tr(": %1 in place of %2.")
                            .arg(whole(line->pieces.value - mend.pieces.value), whole(line->pieces.value)) +
                        after(mend.stems)
                  : QString(),
             {}});
        way.button = tr("Make fewer");
        way.means = tr("Make %1 fewer").arg(pieces);
        return way;
    }

    const CoverView& view_;
    const model::Season& season_;
    const plan::SlotCover& slot_;
    const plan::SlotLevel& level_;
};

} // namespace

plan::Level promiseLevel(const model::Season& season) {
    return season.theSettings().promiseLevel == model::ForecastLevel::likely ? plan::Level::likely
                                                                             : plan::Level::cautious;
}

Stems shortBy(const plan::SlotCover& slot) {
    return slot.at[static_cast<std::size_t>(plan::Level::likely)].shortBy;
}

std::optional<Id<model::Plant>> leadingPlant(const plan::SlotCover& slot) {
    if (!slot.choices.empty()) return slot.choices.front().plant;
    if (!slot.leftOut.empty()) return slot.leftOut.front().plant;
    return std::nullopt;
}

QStringList coverNotes(const CoverView& view, const plan::SlotCover& slot) {
    return CoverWordsSay(view, slot).notes();
}

std::vector<SheetWay> coverWays(const CoverView& view, const plan::SlotCover& slot) {
    const CoverWordsSay say(view, slot);
    std::vector<SheetWay> all;
    for (const auto& mend : slot.mends)
        all.push_back(say.way(mend));
    return all;
}

} // namespace withy::ui
