// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/answer.h"

namespace withy::ui::tests {

/// The demo season as planned on a day before its first supper, worked out once.
class PlannedDemo : public testing::Test {
protected:
    static const model::Season& season() {
        static const model::Season demo = demoSeason();
        return demo;
    }

    static const plan::Plan& plan() {
        static const plan::Plan whole = [] {
            plan::PlanOptions options;
            options.today = Day::fromYmd(2027, 9, 6);
            return plan::plan(season(), options);
        }();
        return whole;
    }

    static const plan::BookingPlan& ofSupper() { return *plan().bookings.at(theSupper); }

    static QString wordsOf(const Answer& answer) { return plainWords(answer); }

    static constexpr Id<model::Booking> theSupper{1};
};

} // namespace withy::ui::tests
