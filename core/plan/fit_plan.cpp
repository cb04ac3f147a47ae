// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/fit_plan.h"

#include "core/base/range.h"
#include "core/cover/room.h"
#include "core/plan/booking_plan.h"
#include "core/plan/cover_demands.h"
#include "core/plan/fit_parts.h"

#include <algorithm>

namespace withy::plan {

namespace {

using cover::Claim;

/// The trial as planned once.
struct Tried {
    FitAnswer answer;
    std::vector<SlotDemand> slots;
    std::array<std::vector<Stems>, levelCount> covered; ///< by slot
};

class Checker {
public:
    Checker(const model::Season& season, const Plan& plan, const CoverPlan& cover, const FitAsk& ask,
            const FitOptions& options)
        : season_(season)
        , booking_(trialBooking(season, ask))
        , index_(withTrial(season_, booking_, ask))
        , plan_(plan)
        , cover_(cover)
        , ask_(ask)
        , options_(options)
        , days_(plan.days ? plan.days : std::make_shared<PlaceDays>(season))
        , beside_(allBeside(season, plan, options.today))
        , rooms_{cover::Room(*cover.allocations[0]), cover::Room(*cover.allocations[1])} {}

    FitAnswer check() {
        auto tried = attempt(piecesAsked(), 0);
        describe(tried);
        if (options_.most) findMost(tried.answer);
        if (options_.dates && tried.answer.fit != Fit::yes) findDates(tried.answer);
        return std::move(tried.answer);
    }

private:
    using Numbers = std::vector<std::int64_t>;

    static model::Booking trialBooking(const model::Season& season, const FitAsk& ask) {
        model::Booking b;
        b.id = season.bookings.nextId();
        b.eventStart = ask.eventStart;
        b.eventEnd = ask.eventEnd;
        b.venue = ask.venue;
        b.standing = model::Standing::enquiry;
        return b;
    }

    /// The season is a copy of ours that nobody else sees; its records are put without an edit.
    static Index withTrial(model::Season& season, const model::Booking& booking, const FitAsk& ask) {
        season.bookings.put(booking);
        const auto first = season.lines.nextId();
        for (std::size_t i = 0; i < ask.lines.size(); ++i) {
            model::Line line;
            line.id = Id<model::Line>(first.value + static_cast<std::int64_t>(i));
            line.booking = booking.id;
            line.design = ask.lines[i].design;
            line.pieces = ask.lines[i].pieces;
            season.lines.put(line);
        }
        return Index(season);
    }

    [[nodiscard]] Numbers piecesAsked() const {
        Numbers pieces;
        for (const auto& line : ask_.lines)
            pieces.push_back(line.pieces.value);
        return pieces;
    }

    /// Sets the trial's numbers and date; the index follows.
    void set(const Numbers& pieces, int daysLater) {
        const Minutes later(std::int64_t{1440} * daysLater);
        booking_.eventStart = ask_.eventStart + later;
        booking_.eventEnd = ask_.eventEnd + later;
        season_.bookings.put(booking_);
        auto& lines = index_.lines[booking_.id];
        for (std::size_t i = 0; i < lines.size(); ++i) {
            model::Line line = *lines[i];
            line.pieces = Pieces(pieces[i]);
            season_.lines.put(line);
            lines[i] = season_.lines.find(line.id);
        }
    }

    Tried attempt(const Numbers& pieces, int daysLater) {
        set(pieces, daysLater);
        Tried tried;
        auto plan =
            std::make_shared<const BookingPlan>(bookingPlan(index_, booking_, plan_.designs, *days_, {}));
        tried.answer.plan = plan;
        tried.answer.kits = fitKit(index_, *plan, booking_, beside_, plan_.shed.get());
        for (const auto& kit : tried.answer.kits)
            if (kit.owned) tried.answer.kit = std::max(tried.answer.kit, kit.fit);
        tried.answer.work = fitHours(index_, *plan, beside_);
        tried.answer.hours = tried.answer.work.fit;
        tryStems(*plan, tried);
        tried.answer.fit = std::max({tried.answer.stems, tried.answer.kit, tried.answer.hours});
        return tried;
    }

    void tryStems(const BookingPlan& plan, Tried& tried) {
        BookingWindows windows(index_, booking_, plan, *days_);
        tried.slots = slotDemands(index_, booking_, plan, Claim::enquiry, {}, windows);
        std::vector<cover::Demand> demands;
        for (const auto& slot : tried.slots)
            demands.push_back(slot.demand);
        for (std::size_t level = 0; level < levelCount; ++level) {
            tried.covered[level] = rooms_[level].forTrial(demands);
            const bool all = std::equal(demands.begin(), demands.end(), tried.covered[level].begin(),
                                        [](const cover::Demand& d, Stems stems) { return d.stems == stems; });
            if (all) return;
            tried.answer.stems = level == 0 ? Fit::tight : Fit::no;
        }
    }

    /// Who competes and who leans on the same patches; for the answer alone, not for every attempt.
    void describe(Tried& tried) {
        const auto& cautious = *cover_.allocations[0];
        const cover::Holders holders(cautious);
        std::map<Id<model::Booking>, Stems> leaning;
        std::vector<cover::Demand> plenty;
        for (const auto& slot : tried.slots) {
            plenty.push_back(slot.demand);
            plenty.back().stems = slot.demand.stems * fitReach;
        }
        const std::array<std::vector<Stems>, levelCount> there{rooms_[0].forTrial(plenty),
                                                               rooms_[1].forTrial(plenty)};
        const auto first = index_.lines[booking_.id].front()->id.value;
        for (std::size_t i = 0; i < tried.slots.size(); ++i) {
            const auto& demand = tried.slots[i].demand;
            FitStems slot;
            slot.line = Id<model::Line>(demand.line.value - first + 1);
            slot.slot = demand.slot;
            slot.needed = demand.stems;
            slot.leftOut = tried.slots[i].leftOut;
            slot.supplyKnown = cover::supplyKnown(cautious, demand);
            for (std::size_t level = 0; level < levelCount; ++level) {
                slot.there[level] = there[level][i];
                slot.covered[level] = tried.covered[level].empty() ? demand.stems : tried.covered[level][i];
                slot.there[level] = std::max(slot.there[level], slot.covered[level]);
            }
            const auto competitors = holders.competitorsOf(demand);
            for (const auto& c : competitors)
                leaning[c.booking] += c.stems;
            if (slot.covered[0] < slot.needed) slot.competitors = competitors;
            tried.answer.slots.push_back(std::move(slot));
        }
        std::vector<std::pair<Stems, Id<model::Booking>>> most;
        most.reserve(leaning.size());
        for (const auto& [booking, stems] : leaning)
            most.emplace_back(stems, booking);
        std::stable_sort(most.begin(), most.end(),
                         [](const auto& a, const auto& b) { return a.first > b.first; });
        for (const auto& [stems, booking] : most)
            tried.answer.leaning.push_back(booking);
    }

    /// By line: the answer to each number asked about so far.
    Fit fitOf(std::size_t line, std::int64_t pieces, std::map<std::int64_t, Fit>& known) {
        const auto found = known.find(pieces);
        if (found != known.end()) return found->second;
        Numbers numbers = piecesAsked();
        numbers[line] = pieces;
        return known[pieces] = attempt(numbers, 0).answer.fit;
    }

    /// The largest number whose answer is no worse than `worst`, by doubling and then halving the gap: one
    /// more is worse, unless it is beyond what is tried.
    Pieces mostOf(std::size_t line, Fit worst, std::map<std::int64_t, Fit>& known) {
        const auto fits = [&](std::int64_t n) { return fitOf(line, n, known) <= worst; };
        const std::int64_t asked = ask_.lines[line].pieces.value;
        std::int64_t low = 0, high = asked;
        while (high <= options_.mostPieces && fits(high)) {
            low = high;
            high *= 2;
        }
        if (low == 0 && !fits(0)) return Pieces(0);
        high = std::min(high, options_.mostPieces + 1);
        while (high - low > 1) {
            const std::int64_t middle = low + (high - low) / 2;
            (fits(middle) ? low : high) = middle;
        }
        return Pieces(low);
    }

    void findMost(FitAnswer& answer) {
        for (std::size_t line = 0; line < ask_.lines.size(); ++line) {
            std::map<std::int64_t, Fit> known{{ask_.lines[line].pieces.value, answer.fit}};
            FitMost most;
            most.sure = mostOf(line, Fit::yes, known);
            most.likely = std::max(most.sure, mostOf(line, Fit::tight, known));
            answer.most.push_back(most);
        }
    }

    void findDates(FitAnswer& answer) {
        const auto& s = season_.theSettings();
        const Day asked = ask_.eventStart.day;
        for (int away = 1; away <= options_.furthest && answer.dates.size() < options_.wantedDates; ++away) {
            for (const int days : {-away, away}) {
                const Day day = asked + days;
                if (day < s.firstDay || s.lastDay < day || (options_.today && day < *options_.today))
                    continue;
                const auto tried = attempt(piecesAsked(), days);
                if (tried.answer.fit == Fit::no || answer.dates.size() >= options_.wantedDates) continue;
                answer.dates.push_back({booking_.eventStart, tried.answer.fit});
            }
        }
    }

    model::Season season_;
    model::Booking booking_;
    Index index_;
    const Plan& plan_;
    const CoverPlan& cover_;
    const FitAsk& ask_;
    const FitOptions& options_;
    std::shared_ptr<PlaceDays> days_;
    std::vector<Beside> beside_;
    std::array<cover::Room, levelCount> rooms_;
};

std::optional<Problem> wrongWith(const model::Season& season, const Plan& plan, const CoverPlan& cover,
                                 const FitAsk& ask, const FitOptions& options) {
    if (ask.lines.empty()) return problemAt(ProblemCode::required, "lines", "");
    for (const auto& line : ask.lines) {
        const auto id = std::to_string(line.design.value);
        if (!season.designs.find(line.design) || !plan.designs.count(line.design))
            return problemAt(ProblemCode::unknownRecord, "lines", id, {"design"});
        if (auto p = outside("pieces", line.pieces.value, 1, options.mostPieces)) return p;
    }
    if (ask.eventEnd < ask.eventStart)
        return problemAt(ProblemCode::endBeforeStart, "event_end", ask.eventEnd.iso(),
                         {ask.eventStart.iso()});
    if (!cover.allocations[0] || !cover.allocations[1]) return problemAt(ProblemCode::required, "cover", "");
    return std::nullopt;
}

} // namespace

Result<FitAnswer, Problem> fitCheck(const model::Season& season, const Plan& plan, const CoverPlan& cover,
                                    const FitAsk& ask, const FitOptions& options) {
    if (auto problem = wrongWith(season, plan, cover, ask, options)) return *problem;
    return Checker(season, plan, cover, ask, options).check();
}

} // namespace withy::plan
