// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/run_up_board.h"
#include "ui/logic/papers/cutting_hours.h"
#include "ui/logic/papers/drop_answers.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/papers/run_sheet_strip.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;
using plan::RunUpStep;
using plan::StepKind;

constexpr double stripWidth = 184; // fits A4 and Letter

bool isOnTheRoad(StepKind kind) {
    using enum StepKind;
    return kind == checkWater || kind == pack || kind == load || kind == drive || kind == place ||
           kind == handOver || kind == driveBack || kind == collect;
}

class RunSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(RunSheet)

public:
    explicit RunSheetMaker(const PaperOrder& order)
        : order_(order)
        , season_(order.season)
        , index_(order.season)
        , plan_(*order.plan.bookings.at(*order.booking))
        , booking_(*season_.bookings.find(*order.booking)) {
        for (auto& step : runUpSteps(season_, order.plan, booking_.id))
            if (isOnTheRoad(step.key.step)) steps_.push_back(std::move(step));
        number();
    }

    papers::Document document() {
        papers::Document d;
        d.name = booking_.title;
        const Day day = roadDay();
        d.key = utf8(shortDay(day));
        d.keyNote = utf8(driverWords());
        d.facts = facts(day);
        addStrip(day, d.body);
        d.body.push_back(Block{papers::TimeHead{
            utf8(tr("plan")), hasLatest() ? utf8(tr("latest")) : std::string(),
            utf8(hasLatest() ? tr("each latest time still meets the guests; times snap to five minutes")
                             : tr("times snap to five minutes"))}});
        addSteps(day, d.body);
        if (wants(order_, PaperKind::runSheet, PaperPart::writeHere)) d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(tr("%1. Read it standing, never driving").arg(text(booking_.title)));
        return d;
    }

private:
    /// Drops in the order in which they are reached.
    void number() {
        for (const auto& step : steps_)
            if (isDelivery(step) && !isDrop(step.key.drop)) drops_.push_back(step.key.drop);
        if (!drops_.empty()) return;
        for (const auto* drop : plan::Index::of(index_.drops, booking_.id))
            drops_.emplace_back(drop->id);
        if (drops_.empty()) drops_.emplace_back();
    }

    /// A drive after which something is placed or handed over there on the same day; any other fetches back.
    [[nodiscard]] bool isDelivery(const RunUpStep& drive) const {
        if (drive.key.step != StepKind::drive) return false;
        if (!hasLatest()) return true; // a booking's own plan has no way back
        return std::any_of(steps_.begin(), steps_.end(), [&](const auto& step) {
            return isAtDrop(step.key.step) && step.key.drop == drive.key.drop &&
                   step.from.day == drive.to.day && step.from >= drive.to;
        });
    }

    [[nodiscard]] bool isDrop(const std::optional<Id<model::Drop>>& drop) const {
        return std::find(drops_.begin(), drops_.end(), drop) != drops_.end();
    }

    [[nodiscard]] const RunUpStep* firstOf(StepKind kind) const {
        const auto found =
            std::find_if(steps_.begin(), steps_.end(), [&](const auto& s) { return s.key.step == kind; });
        return found == steps_.end() ? nullptr : &*found;
    }

    [[nodiscard]] Day roadDay() const {
        const auto* drive = firstOf(StepKind::drive);
        return drive ? drive->from.day : booking_.eventStart.day;
    }

    [[nodiscard]] bool hasLatest() const { return order_.plan.runUp != nullptr; }

    [[nodiscard]] QString driverWords() const {
        const auto* drive = firstOf(StepKind::drive);
        const QString who = drive ? whoWords(season_, *drive) : QString();
        return who.isEmpty() ? tr("driver to be named") : tr("driver: %1").arg(who);
    }

    /// Until a step must have begun, so that its end still holds.
    [[nodiscard]] static LocalTime latestStart(const RunUpStep& step) {
        return std::max(step.from, step.latest - (step.to - step.from));
    }

    [[nodiscard]] std::optional<Minutes> inHand() const {
        if (!hasLatest()) return std::nullopt;
        std::optional<Minutes> least;
        for (const auto& step : steps_) {
            if (isFetching(step) || step.key.step == StepKind::driveBack) continue;
            const Minutes slack = latestStart(step) - step.from;
            if (!least || slack < *least) least = slack;
        }
        return least;
    }

    [[nodiscard]] std::vector<papers::Text> facts(Day day) const {
        std::vector<papers::Text> out;
        out.push_back(plain(utf8(tr("first guest "))) + strong(booking_.eventStart.clock()));
        if (const auto hand = inHand())
            out.push_back(hand->value < 5 ? strong(utf8(tr("no time in hand")))
                                          : strong(utf8(tr("%1 min").arg(hand->value / 5 * 5))) +
                                                plain(utf8(tr(" in hand"))));
        papers::Text drops = strong(std::to_string(drops_.size())) +
                             plain(utf8(drops_.size() == 1 ? tr(" drop") : tr(" drops")));
        const auto* venue = booking_.venue ? season_.venues.find(*booking_.venue) : nullptr;
        if (venue && venue->distanceKm)
            drops = drops + plain(utf8(tr(", %1 out").arg(distanceWords(*venue->distanceKm, season_))));
        out.push_back(std::move(drops));
        plan::PlaceDays days(season_);
        const double limit = season_.theSettings().heatLimitCelsius;
        const QString warm = tooWarmFrom(days.on(day), limit, std::nullopt);
        if (!warm.isEmpty())
            out.push_back(plain(utf8(tr("over %1 from ").arg(temperatureWords(limit, season_)))) +
                          strong(utf8(warm)));
        return out;
    }

    [[nodiscard]] static std::string stripWords(const RunUpStep& step, std::size_t drop) {
        switch (step.key.step) {
        case StepKind::checkWater:
            return utf8(tr("water"));
        case StepKind::pack:
            return utf8(tr("pack"));
        case StepKind::load:
            return utf8(tr("load"));
        case StepKind::place:
        case StepKind::handOver:
            return std::to_string(drop);
        default:
            return {};
        }
    }

    void addStrip(Day day, std::vector<Block>& body) const {
        std::vector<StripBox> boxes;
        for (const auto& step : steps_) {
            const auto kind = step.key.step;
            if (step.from.day != day || kind == StepKind::collect || step.to <= step.from) continue;
            const bool road = kind == StepKind::drive || kind == StepKind::driveBack;
            boxes.push_back({step.from, step.to, stripWords(step, numberOf(step.key.drop)),
                             road ? StripBox::Look::road : StripBox::Look::work});
        }
        if (boxes.empty()) return;
        boxes.push_back({booking_.eventStart, booking_.eventEnd,
                         utf8(tr("guests %1").arg(clock(booking_.eventStart))), StripBox::Look::guests});
        auto strip = roadStrip(boxes, stripWidth);
        body.push_back(Block{std::move(strip), true});
    }

    [[nodiscard]] std::size_t numberOf(const std::optional<Id<model::Drop>>& drop) const {
        const auto found = std::find(drops_.begin(), drops_.end(), drop);
        return found == drops_.end() ? 1 : static_cast<std::size_t>(found - drops_.begin()) + 1;
    }

    void addSteps(Day day, std::vector<Block>& body) {
        std::optional<Day> headed = day;
        for (const auto& step : steps_) {
            if (isAtDrop(step.key.step)) continue; // in the drop's own frame
            if (step.from.day != headed) {
                headed = step.from.day;
                body.push_back(
                    Block{papers::SectionHead{utf8(isFetching(step) ? tr("Coming home") : tr("Another day")),
                                              plain(utf8(shortDay(step.from.day)))}});
            }
            body.push_back(Block{task(step)});
            if (step.key.step == StepKind::load) body.push_back(Block{cautions()});
            if (isDelivery(step)) body.push_back(Block{card(step.key.drop, &step)});
        }
        if (!firstOf(StepKind::load)) body.push_back(Block{cautions()});
        if (firstOf(StepKind::drive)) return;
        // Nothing is planned on the road: what is known of the drops all the same.
        for (const auto& drop : drops_)
            body.push_back(Block{card(drop, nullptr)});
    }

    [[nodiscard]] bool isFetching(const RunUpStep& step) const {
        return step.key.step == StepKind::collect || (step.key.step == StepKind::drive && !isDelivery(step));
    }

    static bool isAtDrop(StepKind kind) { return kind == StepKind::place || kind == StepKind::handOver; }

    /// The planned time and the latest. The latest is never told later than it is, nor the plan after it:
    /// with nothing in hand both are the five minutes before.
    [[nodiscard]] std::pair<std::string, std::string> told(LocalTime at, LocalTime latest) const {
        if (!hasLatest()) return {utf8(planClock(at)), std::string()};
        const bool within = toFive(at).minutesSinceEpoch() <= latest.minutesSinceEpoch() / 5 * 5;
        return {utf8(within ? planClock(at) : planBy(at)), utf8(planBy(latest))};
    }

    [[nodiscard]] papers::TimedTask task(const RunUpStep& step) const {
        papers::TimedTask out;
        std::tie(out.time, out.latest) = told(step.from, latestStart(step));
        out.beside = true;
        out.title = utf8(stepTitle(season_, step));
        out.detail = plain(utf8(detailOf(step)));
        out.who = utf8(whoWords(season_, step));
        return out;
    }

    [[nodiscard]] QString detailOf(const RunUpStep& step) const {
        if (step.key.step != StepKind::drive && step.key.step != StepKind::driveBack)
            return stepDetail(season_, step);
        const auto* drop = step.key.drop ? season_.drops.find(*step.key.drop) : nullptr;
        const auto* venue = venueOfDrop(season_, booking_, drop);
        const QString minutes = tr("%n min", nullptr, static_cast<int>((step.to - step.from).value));
        const bool home = step.key.step == StepKind::driveBack;
        QStringList words;
        if (venue && venue->distanceKm) words << distanceWords(*venue->distanceKm, season_);
        words << minutes;
        if (home) words << tr("home %1").arg(planClock(step.to));
        return words.join(QStringLiteral(", "));
    }

    [[nodiscard]] papers::DropCard card(const std::optional<Id<model::Drop>>& id,
                                        const RunUpStep* drive) const {
        const auto* drop = id ? season_.drops.find(*id) : nullptr;
        const auto* venue = venueOfDrop(season_, booking_, drop);
        papers::DropCard out;
        out.number = std::to_string(numberOf(id));
        if (drive) {
            std::tie(out.time, out.latest) = told(drive->to, std::max(drive->to, drive->latest));
        } else if (drop) {
            out.time = drop->time.clock();
        }
        out.name = drop ? drop->place : venue ? venue->name : booking_.title;
        const LocalTime wanted = drop ? drop->time : booking_.eventStart;
        out.note = plain(utf8(drop ? tr("wanted by ") : tr("guests "))) + strong(wanted.clock());
        out.answers = dropAnswers(season_, plan_, booking_, drop);
        out.items = itemsOf(id);
        out.handedTo = utf8(tr("handed to"));
        out.at = utf8(tr("at"));
        return out;
    }

    /// Lines without a drop are carried in at the first.
    [[nodiscard]] std::vector<papers::DropCard::Item>
    itemsOf(const std::optional<Id<model::Drop>>& id) const {
        std::vector<papers::DropCard::Item> out;
        for (const auto* line : plan::Index::of(index_.lines, booking_.id)) {
            const bool here = line->drop ? line->drop == id : id == drops_.front();
            const auto* design = season_.designs.find(line->design);
            if (!here || !design) continue;
            papers::Text words = strong(design->name);
            const QString where = line->note.empty() ? placesOf(season_, line->id) : text(line->note);
            if (!where.isEmpty()) words = words + plain(" " + utf8(where));
            out.push_back({utf8(whole(line->pieces.value)), std::move(words)});
            if (line->sparePieces.value > 0)
                out.push_back({utf8(whole(line->sparePieces.value)),
                               strong(design->name) + plain(utf8(tr(" spare, for what breaks")))});
        }
        return out;
    }

    [[nodiscard]] papers::Cautions cautions() const {
        // In one, beside the work; a helper's sheet says it at length.
        return {"",
                {{utf8(tr("Load and lift:")),
                  utf8(tr("low, tied and wedged, nothing loose behind the seats; over %1 two people. The "
                          "vehicle's plate and the rules of the road decide how much.")
                           .arg(weightWords(season_.theSettings().liftingLimitKg, season_, -1)))}}};
    }

    [[nodiscard]] papers::WriteHere writeHere() const {
        papers::WriteHere out;
        out.title = utf8(tr("Write here,\ntype in later"));
        out.boxes.push_back({utf8(tr("left home")), 24});
        for (std::size_t i = 0; i < drops_.size() && i < 3; ++i)
            out.boxes.push_back({utf8(tr("left drop %1").arg(i + 1)), 24});
        out.boxes.push_back({utf8(tr("what was missing")), 0});
        return out;
    }

    const PaperOrder& order_;
    const model::Season& season_;
    plan::Index index_;
    const plan::BookingPlan& plan_;
    const model::Booking& booking_;
    std::vector<RunUpStep> steps_;
    std::vector<std::optional<Id<model::Drop>>> drops_;
};

} // namespace

papers::Document runSheet(const PaperOrder& order) {
    return RunSheetMaker(order).document();
}

} // namespace withy::ui
