// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/run_up_draft.h"
#include "core/runup/rates.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <sstream>

namespace withy::plan {

namespace {

using model::RateKind;
using model::TableKind;

constexpr Minutes travelIfUnknown{30};   ///< when the venue does not say (common practice, no source)
constexpr Minutes dropBeforeGuests{60};  ///< a drop nobody named: an hour before the guests
constexpr Minutes dropMayBeEarlier{240}; ///< such a drop (own choice)
constexpr Minutes leastRest{60};         ///< cool, before the water is checked (common practice, no source)
constexpr Minutes packingHours{18 * 60}; ///< before leaving, the packing may begin (own choice)
constexpr Minutes worthDrivingHome{30};  ///< at home between two drops (own choice)
constexpr std::int64_t piecesOnTray = 8; ///< until packing says better (common practice, no source)
constexpr int washedWithin = 2;          ///< days after fetching (own choice)

struct Stop {
    const model::Drop* drop = nullptr; ///< null: the event's start stands in
    std::string place;
    LocalTime arrive;
    std::vector<const LinePlan*> lines;
};

using Trip = std::vector<Stop>;

class Trips {
public:
    Trips(const RunUpFacts& facts, const BookingPlan& plan, RunUpDraft& out)
        : facts_(facts)
        , plan_(plan)
        , booking_(*facts.season.bookings.find(plan.booking))
        , out_(out)
        , group_(static_cast<int>(out.groups.size()) - 1)
        , venue_(booking_.venue ? facts.season.venues.find(*booking_.venue) : nullptr) {}

    void draft(const std::map<Id<model::Line>, std::size_t>& made) {
        const auto stops = stopsOf();
        if (stillToDo(booking_) != StillToDo::collectOnly) {
            findOpening(stops);
            for (const auto& trip : tripsOf(stops))
                if (!piecesOf(trip).empty()) deliver(trip, made);
        }
        fetchBack(stops);
    }

private:
    [[nodiscard]] Minutes travel() const {
        return venue_ && venue_->travel ? *venue_->travel : travelIfUnknown;
    }

    [[nodiscard]] std::vector<Stop> stopsOf() const {
        std::vector<Stop> stops;
        for (const auto* drop : Index::of(facts_.index.drops, booking_.id))
            stops.push_back({drop, drop->place, drop->time, {}});
        if (stops.empty()) stops.push_back({nullptr, {}, booking_.eventStart - dropBeforeGuests, {}});
        for (const auto& line : plan_.lines) {
            if (line.pieces.value == 0) continue;
            const auto drop = facts_.season.lines.find(line.line)->drop;
            const auto at = std::find_if(stops.begin(), stops.end(), [&](const Stop& s) {
                return drop && s.drop && s.drop->id == *drop;
            });
            (at == stops.end() ? stops.front() : *at).lines.push_back(&line);
        }
        return stops;
    }

    static std::vector<const LinePlan*> piecesOf(const Trip& trip) {
        std::vector<const LinePlan*> lines;
        for (const auto& stop : trip)
            lines.insert(lines.end(), stop.lines.begin(), stop.lines.end());
        return lines;
    }

    static std::int64_t countOf(const std::vector<const LinePlan*>& lines) {
        std::int64_t pieces = 0;
        for (const auto* line : lines)
            pieces += line->pieces.value;
        return pieces;
    }

    [[nodiscard]] Minutes rateMinutes(RateKind work, std::int64_t count) const {
        const double exact = runup::rateOf(facts_.season, work).minutes * static_cast<double>(count);
        return Minutes(static_cast<std::int64_t>(std::ceil(exact - 1e-9)));
    }

    [[nodiscard]] Minutes atStop(const Stop& stop) const {
        return rateMinutes(RateKind::placePiece, countOf(stop.lines)) + rateMinutes(RateKind::handOver, 1);
    }

    /// One way there and back for drops so close that nobody drives home between them.
    [[nodiscard]] std::vector<Trip> tripsOf(const std::vector<Stop>& stops) const {
        std::vector<Trip> trips;
        LocalTime done;
        for (const auto& stop : stops) {
            const LocalTime home = done + travel() + travel() + worthDrivingHome;
            const bool alone = trips.empty() || home <= stop.arrive;
            done = (alone ? stop.arrive : std::max(stop.arrive, done)) + atStop(stop);
            if (alone)
                trips.push_back({stop});
            else
                trips.back().push_back(stop);
        }
        return trips;
    }

    [[nodiscard]] std::optional<Id<model::Drop>> idOf(const Stop& stop) const {
        return stop.drop ? std::optional(stop.drop->id) : std::nullopt;
    }

    [[nodiscard]] RunUpStep leg(StepKind kind, const Stop& stop, Minutes minutes, std::int64_t number) const {
        RunUpStep step;
        step.key = {kind, booking_.id, {}, idOf(stop), {}, number};
        step.bookings = {booking_.id};
        step.minutes = minutes;
        return step;
    }

    [[nodiscard]] RunUpStep driveLeg(StepKind kind, const Stop& stop, std::int64_t number) const {
        RunUpStep step = leg(kind, stop, travel(), number);
        const bool known = venue_ && venue_->travel;
        step.working = {lineOf(Step::result, "travel", travel().value, Unit::minutes,
                               known ? Basis::mine : Basis::commonPractice, known ? "" : "no source")};
        return step;
    }

    [[nodiscard]] RunUpStep countedLeg(StepKind kind, RateKind work, const Stop& stop,
                                       std::int64_t count) const {
        RunUpStep step = leg(kind, stop, rateMinutes(work, count), 0);
        const auto rate = runup::rateOf(facts_.season, work);
        step.count = count;
        step.working = {lineOf(Step::given, "count", count, Unit::count),
                        runup::rateLine(rate, "minutes each"),
                        lineOf(Step::result, "minutes", step.minutes.value, Unit::minutes)};
        return step;
    }

    /// Puts a leg after those there are.
    static void append(Draft& trip, RunUpStep step) {
        trip.offsets.push_back(trip.minutes);
        trip.minutes += step.minutes;
        trip.legs.push_back(std::move(step));
    }

    void appendStop(Draft& trip, const Stop& stop) const {
        const auto pieces = countOf(stop.lines);
        auto place = countedLeg(StepKind::place, RateKind::placePiece, stop, pieces);
        if (place.minutes.value > 0) append(trip, std::move(place));
        auto over = countedLeg(StepKind::handOver, RateKind::handOver, stop, 1);
        if (over.minutes.value > 0) append(trip, std::move(over));
    }

    [[nodiscard]] Draft emptyTrip() const {
        Draft trip;
        trip.skill = Skill::drive;
        trip.workHours = trip.splittable = trip.together = trip.releaseMoves = trip.byPiece = false;
        trip.sameForAll = true;
        trip.waitsForToday = false;
        trip.group = group_;
        return trip;
    }

    /// On from one drop to the next: the time between them is the way there.
    void driveOn(Draft& trip, const Trip& stops, std::size_t i) {
        const LocalTime now = stops.front().arrive - travel() + trip.minutes;
        const Minutes between = stops[i].arrive - now;
        if (between.value > 0) {
            auto step = driveLeg(StepKind::drive, stops[i], 0);
            step.minutes = std::min(between, travel());
            step.working = {
                lineOf(Step::result, "travel", step.minutes.value, Unit::minutes, Basis::computed, "")};
            trip.minutes += between - step.minutes; // waits, then is there on time
            append(trip, std::move(step));
        } else if (between.value < 0 && stops[i].place != stops[i - 1].place) {
            find(FindingCode::dropsAtOneTime, Severity::warning, stops[i],
                 {stops[i].place, stops[i - 1].place}, {static_cast<double>(-between.value)});
        }
    }

    void deliver(const Trip& stops, const std::map<Id<model::Line>, std::size_t>& made) {
        Draft trip = emptyTrip();
        append(trip, driveLeg(StepKind::drive, stops.front(), 0));
        for (std::size_t i = 0; i < stops.size(); ++i) {
            if (i > 0) driveOn(trip, stops, i);
            appendStop(trip, stops[i]);
            findNight(stops[i], stops[i].arrive);
        }
        append(trip, driveLeg(StepKind::driveBack, stops.back(), 0));
        const LocalTime leave = stops.front().arrive - travel();
        trip.release = leave;
        trip.deadline = leave + trip.minutes;
        if (!stops.front().drop) trip.release = earliestWithoutDrop(leave);
        const auto at = out_.add(std::move(trip));
        getReady(stops, leave, made, at);
    }

    [[nodiscard]] LocalTime earliestWithoutDrop(LocalTime leave) const {
        LocalTime earliest = leave - dropMayBeEarlier;
        if (venue_ && venue_->inFrom) {
            const LocalTime open = LocalTime{(leave + travel()).day, 0} + Minutes(*venue_->inFrom) - travel();
            earliest = std::max(earliest, open);
        }
        return std::min(earliest, leave);
    }

    /// Resting cool, water, packing and loading, before the trip `at`.
    void getReady(const Trip& stops, LocalTime leave, const std::map<Id<model::Line>, std::size_t>& made,
                  std::size_t at) {
        const auto lines = piecesOf(stops);
        const auto pieces = countOf(lines);
        std::int64_t standing = 0;
        std::vector<std::size_t> before;
        for (const auto* line : lines) {
            if (facts_.season.designs.find(line->design)->container) standing += line->pieces.value;
            if (const auto m = made.find(line->line); m != made.end()) before.push_back(m->second);
        }
        std::vector<std::size_t> chain;
        const auto put = [&](StepKind kind, RateKind work, std::int64_t count, Skill skill) {
            auto draft = countedDraft(facts_, kind, work, count, booking_.id);
            if (!draft) return;
            draft->legs.front().key.drop = idOf(stops.front());
            draft->skill = skill;
            draft->workHours = false;
            draft->splittable = kind != StepKind::load;
            draft->release = leave - packingHours;
            draft->group = group_;
            chain.push_back(out_.add(std::move(*draft)));
        };
        put(StepKind::checkWater, RateKind::checkWaterPiece, standing, Skill::condition);
        put(StepKind::pack, RateKind::packPiece, pieces, Skill::bench);
        put(StepKind::load, RateKind::loadTray, (pieces + piecesOnTray - 1) / piecesOnTray, Skill::bench);
        chain.push_back(at);
        for (std::size_t i = 1; i < chain.size(); ++i)
            out_.follow(chain[i - 1], chain[i]);
        out_.followAll(before, chain.front(), leastRest);
        if (!before.empty()) restCool(stops, pieces, before, chain.front());
    }

    void restCool(const Trip& stops, std::int64_t pieces, const std::vector<std::size_t>& before,
                  std::size_t after) {
        RunUpStep rest = leg(StepKind::restCool, stops.front(), Minutes(0), 0);
        rest.count = pieces;
        out_.threads.push_back({std::move(rest), before, {after}});
    }

    [[nodiscard]] std::int64_t returnable(const Stop& stop) const {
        std::int64_t count = 0;
        for (const auto* line : stop.lines) {
            const auto container = facts_.season.designs.find(line->design)->container;
            const auto* record = container ? facts_.season.containers.find(*container) : nullptr;
            if (record && record->returnable) count += line->pieces.value;
        }
        return count;
    }

    void fetchBack(const std::vector<Stop>& stops) {
        std::int64_t containers = 0;
        std::vector<std::size_t> trips;
        LocalTime last;
        for (const auto& stop : stops) {
            const auto count = returnable(stop);
            if (!stop.drop || !stop.drop->clearedAt || count == 0) continue;
            containers += count;
            trips.push_back(fetch(stop, count));
            last = std::max(last, *stop.drop->clearedAt);
        }
        auto wash =
            countedDraft(facts_, StepKind::washBack, RateKind::washContainer, containers, booking_.id);
        if (!wash) return;
        wash->release = last;
        wash->releaseMoves = wash->byPiece = false;
        wash->hurry = last;
        wash->deadline = LocalTime{last.day + washedWithin, 0} + Minutes(facts_.season.theSettings().workTo);
        wash->group = group_;
        const auto at = out_.add(std::move(*wash));
        out_.followAll(trips, at);
    }

    std::size_t fetch(const Stop& stop, std::int64_t count) {
        Draft trip = emptyTrip();
        append(trip, driveLeg(StepKind::drive, stop, 1));
        append(trip, countedLeg(StepKind::collect, RateKind::collectPiece, stop, count));
        append(trip, driveLeg(StepKind::driveBack, stop, 1));
        trip.release = *stop.drop->clearedAt - travel();
        trip.deadline = *trip.release + trip.minutes;
        findNight(stop, *stop.drop->clearedAt);
        const LocalTime out = *trip.deadline - travel();
        if (isAtVenue(stop) && venue_->outBy && out.day == stop.drop->clearedAt->day &&
            *venue_->outBy < out.minute)
            find(FindingCode::collectAfterVenueCloses, Severity::warning, stop, {stop.place, venue_->name},
                 {static_cast<double>(*venue_->outBy)});
        return out_.add(std::move(trip));
    }

    /// A booking's only drop, or one whose place says a word of the venue's name: its hours bind no other
    /// place.
    [[nodiscard]] bool isAtVenue(const Stop& stop) const {
        if (!venue_) return false;
        if (Index::of(facts_.index.drops, booking_.id).size() < 2) return true;
        std::istringstream words(stop.place);
        for (std::string word; words >> word;) {
            while (!word.empty() && std::ispunct(static_cast<unsigned char>(word.back())) != 0)
                word.pop_back();
            if (word.size() > 3 && venue_->name.find(word) != std::string::npos) return true;
        }
        return false;
    }

    void findOpening(const std::vector<Stop>& stops) {
        if (!venue_ || !venue_->inFrom) return;
        for (const auto& stop : stops)
            if (stop.drop && isAtVenue(stop) && stop.arrive.minute < *venue_->inFrom)
                find(FindingCode::dropBeforeVenueOpens, Severity::warning, stop, {stop.place, venue_->name},
                     {static_cast<double>(*venue_->inFrom)});
    }

    void findNight(const Stop& stop, LocalTime at) {
        constexpr int late = 22 * 60, early = 5 * 60; // own choice
        if (stop.drop && (at.minute >= late || at.minute < early))
            find(FindingCode::workInTheNight, Severity::note, stop, {stop.place, at.iso()}, {});
    }

    void find(FindingCode code, Severity severity, const Stop& stop, std::vector<std::string> subjects,
              std::vector<double> numbers) {
        const model::Ref place = stop.drop ? model::Ref{TableKind::drops, stop.drop->id.value}
                                           : model::Ref{TableKind::bookings, booking_.id.value};
        out_.findings.push_back({code, severity, place, std::move(subjects), std::move(numbers)});
    }

    const RunUpFacts& facts_;
    const BookingPlan& plan_;
    const model::Booking& booking_;
    RunUpDraft& out_;
    int group_;
    const model::Venue* venue_;
};

} // namespace

void draftTrips(const RunUpFacts& facts, const BookingPlan& plan,
                const std::map<Id<model::Line>, std::size_t>& made, RunUpDraft& out) {
    Trips(facts, plan, out).draft(made);
}

} // namespace withy::plan
