// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/booking_plan.h"

#include "core/model/origin.h"
#include "core/plan/convert.h"
#include "core/plan/kit_plan.h"
#include "core/plan/needs_plan.h"
#include "core/plan/window_plan.h"
#include "core/plan/work_times.h"

#include <algorithm>

namespace withy::plan {

namespace {

using model::TableKind;

void planMoney(const Index& index, const model::Booking& booking, BookingPlan& plan) {
    const auto here = model::originOf(TableKind::bookings, booking.id.value);
    std::vector<bookings::PricedLine> lines;
    for (const auto* line : Index::of(index.lines, booking.id)) {
        const auto& design = *index.season.designs.find(line->design);
        lines.push_back({design.name, line->pieces.value, line->unitPrice, design.price,
                         model::originOf(TableKind::lines, line->id.value), here,
                         model::originOf(TableKind::designs, design.id.value)});
    }
    std::vector<bookings::PaymentLine> payments;
    for (const auto* p : Index::of(index.payments, booking.id)) {
        // A refund is typed as what was paid back, with or without a sign.
        const bool back = p->kind == model::PaymentKind::refund && p->amount.minor > 0;
        payments.push_back({std::string(model::wordOf(p->kind)), back ? Money{-p->amount.minor} : p->amount,
                            model::originOf(TableKind::payments, p->id.value)});
    }
    auto money = bookings::bookingMoney(lines, tenThousandths(booking.giftShare), payments, here);
    if (money.ok()) plan.money = std::move(money).value();
}

void find(BookingPlan& plan, FindingCode code, Severity severity, std::vector<double> numbers = {},
          std::vector<std::string> subjects = {}) {
    plan.findings.push_back(
        {code, severity, {TableKind::bookings, plan.booking.value}, std::move(subjects), std::move(numbers)});
}

int openQuestions(const Index& index, const model::Booking& booking) {
    const auto& questions = Index::of(index.questions, booking.id);
    return static_cast<int>(
        std::count_if(questions.begin(), questions.end(), [](const auto* q) { return q->answer.empty(); }));
}

void findAboutBooking(const Index& index, const model::Booking& booking, const WorkTimes& times,
                      const PlanOptions& options, BookingPlan& plan) {
    if (plan.lines.empty()) find(plan, FindingCode::bookingWithoutLines, Severity::note);
    if (!times.drives.front().drop) find(plan, FindingCode::noDrop, Severity::note);
    if (times.travelGuessed)
        find(plan, FindingCode::noVenueTravel, Severity::note, {static_cast<double>(times.travel.value)});
    if (plan.money && plan.money->income.unpriced > 0)
        find(plan, FindingCode::unpricedLines, Severity::note,
             {static_cast<double>(plan.money->income.unpriced)});
    if (const int open = openQuestions(index, booking); open > 0)
        find(plan, FindingCode::openQuestions, Severity::note, {static_cast<double>(open)});
    if (booking.standing == model::Standing::held && booking.heldUntil && options.today &&
        *booking.heldUntil <= *options.today + 7)
        find(plan, FindingCode::holdEnds, Severity::note, {}, {booking.heldUntil->iso()});
}

/// The make-up ran out of free hours: the sixty days the calendar looks back were not enough.
void findOverload(BookingPlan& plan) {
    Minutes making;
    for (const auto& s : plan.steps) {
        if (s.kind == StepKind::make) making += s.minutes;
    }
    const Minutes span = plan.makeUpEnd - plan.makeUpStart;
    if (span < making)
        find(plan, FindingCode::dayTooLong, Severity::warning, {static_cast<double>((making - span).value)});
}

void addDesignFindings(const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
                       BookingPlan& plan) {
    std::vector<Id<model::Design>> seen;
    for (const auto& line : plan.lines) {
        if (std::find(seen.begin(), seen.end(), line.design) != seen.end()) continue;
        seen.push_back(line.design);
        const auto& found = designs.at(line.design)->findings;
        plan.findings.insert(plan.findings.end(), found.begin(), found.end());
    }
}

} // namespace

BookingPlan bookingPlan(const Index& index, const model::Booking& booking,
                        const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
                        PlaceDays& days, const PlanOptions& options) {
    BookingPlan plan;
    plan.booking = booking.id;
    planNeeds(index, booking, designs, plan);
    planKit(index, designs, plan);
    planMoney(index, booking, plan);
    plan.busy = runup::growersBusySpans(index.season, booking.eventStart.day - 16, booking.eventStart.day);
    WorkTimes times = workTimes(index, booking, plan);
    planMakeUp(index, booking, designs, times, plan);
    findOverload(plan);
    planWindows(index, booking, times, days, plan);
    planRounds(index, days, plan);
    planBeforeMakeUp(index, designs, times, plan);
    std::stable_sort(plan.steps.begin(), plan.steps.end(),
                     [](const TimedStep& a, const TimedStep& b) { return a.from < b.from; });
    findAboutBooking(index, booking, times, options, plan);
    addDesignFindings(designs, plan);
    return plan;
}

} // namespace withy::plan
