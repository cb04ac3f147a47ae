// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/kit_working.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/shed/kit_through_time.h"

#include <algorithm>

namespace withy::ui {

namespace {

using model::TableKind;

/// Counts of one thing, in whole units.
class KitLines {
public:
    KitLines(const plan::ShedPlan& shed, const model::Ref& item, const KitOnDay& on) : on_(on) {
        const auto found = std::find_if(shed.kit.begin(), shed.kit.end(),
                                        [&](const plan::KitItem& i) { return i.item == item; });
        item_ = found == shed.kit.end() ? nullptr : &*found;
    }

    [[nodiscard]] const plan::KitItem* item() const { return item_; }

    [[nodiscard]] WorkingLine line(Step step, const char* what, std::int64_t amount,
                                   Basis basis = Basis::computed, const std::string& subject = {}) const {
        const double scale = item_ && item_->inThousandths ? 1000 : 1;
        return lineOf(step, what, static_cast<double>(amount) / scale, Unit::count, basis, {}, subject);
    }

    /// The first stands alone, the rest are added.
    [[nodiscard]] static Step next(const Working& before) {
        return before.empty() ? Step::given : Step::plus;
    }

    /// A line a booking where they come to what is out; what is late, and no more than there is, has but a
    /// sum.
    void addOthers(const model::Season& season, Id<model::Booking> booking, Working& to) const {
        if (!item_) return;
        const char* what = item_->usedUp ? "used" : "away";
        std::int64_t sum = 0;
        std::vector<std::pair<const plan::KitHold*, std::int64_t>> others;
        for (const auto& hold : item_->holds) {
            const auto gone = item_->usedUp ? 0 : hold.broken; // broken ones are told by themselves
            const auto away = plan::awayOn(hold, on_.day) - (plan::awayOn(hold, on_.day) > 0 ? gone : 0);
            if (hold.booking == booking || away <= 0) continue;
            others.emplace_back(&hold, away);
            sum += away;
        }
        if (sum == on_.others) {
            for (const auto& [hold, away] : others) {
                const auto* other = season.bookings.find(hold->booking);
                to.push_back(from(model::originOf(TableKind::bookings, hold->booking.value),
                                  line(next(to), what, away, hold->firm ? Basis::mine : Basis::notKnown,
                                       other ? other->title : std::string())));
            }
        } else if (on_.others > 0) {
            to.push_back(line(next(to), "with others then", on_.others));
        }
    }

    void addBroken(Working& to) const {
        if (on_.broken > 0) to.push_back(line(next(to), "broken", on_.broken, Basis::counted));
    }

private:
    const KitOnDay& on_;
    const plan::KitItem* item_ = nullptr;
};

WorkingLine dayLine(Day day) {
    return lineOf(Step::given, "on the day", std::int64_t{day.number} * 1440, Unit::time);
}

} // namespace

Working kitOthersWorking(const model::Season& season, const plan::ShedPlan& shed, const model::Ref& item,
                         Id<model::Booking> booking, const KitOnDay& on) {
    const KitLines lines(shed, item, on);
    Working working;
    lines.addOthers(season, booking, working);
    lines.addBroken(working);
    working.push_back(lines.line(Step::result, "not to be had then", on.others + on.broken));
    working.insert(working.begin(), dayLine(on.day));
    return working;
}

Working kitShortWorking(const model::Season& season, const plan::ShedPlan& shed, const model::Ref& item,
                        Id<model::Booking> booking, const KitOnDay& on) {
    const KitLines lines(shed, item, on);
    Working working{lines.line(Step::given, "needed", on.needed)};
    lines.addOthers(season, booking, working);
    lines.addBroken(working);
    const bool usedUp = lines.item() && lines.item()->usedUp;
    working.push_back(from(model::originOf(item),
                           lines.line(Step::minus, usedUp ? "on hand" : "owned", on.owned, Basis::counted)));
    const auto lacking = on.needed + on.others + on.broken - on.owned;
    working.push_back(lacking > 0 ? lines.line(Step::result, "short", lacking)
                                  : lines.line(Step::result, "left over", -lacking));
    working.insert(working.begin(), dayLine(on.day));
    return working;
}

} // namespace withy::ui
