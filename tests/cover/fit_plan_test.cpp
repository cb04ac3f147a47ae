// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/fit_plan.h"
#include "tests/cover/ninety_season.h"

#include <gtest/gtest.h>

namespace withy::plan::tests {

namespace {

struct Ground {
    model::Season season;
    std::int64_t cautiousPercent;
    Plan plan = plan::plan(season);
    CoverPlan cover = coverPlan(season, plan, simpleSupply(season, cautiousPercent));

    Ground(model::Season s, std::int64_t percent) : season(std::move(s)), cautiousPercent(percent) {}

    [[nodiscard]] FitAnswer check(std::int64_t jars, const FitOptions& options = {}) const {
        auto answer = fitCheck(season, plan, cover, ask(jars), options);
        EXPECT_TRUE(answer.ok());
        return std::move(answer).value();
    }

    static FitAsk ask(std::int64_t jars) {
        FitAsk a;
        a.eventStart = model::sample::at(2027, 9, 11, 18, 30);
        a.eventEnd = model::sample::at(2027, 9, 11, 22, 30);
        a.lines = {{jar, Pieces(jars)}};
        return a;
    }
};

Ground oneSupper(std::int64_t stems, std::int64_t percent = 100, std::optional<std::int64_t> owned = 70) {
    auto e = ninetyRecords(stems);
    addSupper(e, bookedSupper, model::Standing::booked, 30);
    auto season = applied({}, e);
    auto c = *season.containers.begin();
    c.owned = owned;
    return {applied(season, model::Edit("t").put(c)), percent};
}

/// The season with the trial really in it: is everybody covered at the likely level, those there before as
/// they were?
bool holdsWhenBooked(const Ground& ground, std::int64_t jars) {
    model::Edit e("t");
    addSupper(e, askedSupper, model::Standing::enquiry, jars);
    const auto season = applied(ground.season, e);
    const auto cover = coverPlan(season, plan::plan(season), simpleSupply(season, ground.cautiousPercent));
    EXPECT_EQ(cover.bookings.at(bookedSupper).covered, ground.cover.bookings.at(bookedSupper).covered);
    return cover.bookings.at(askedSupper).shortBy(Level::likely).value == 0;
}

} // namespace

/// 150 stems, 90 promised, 3 a jar: twenty jars and no more. The number is planned, and one more.
TEST(FitPlan, MostThatFitsFitsAndOneMoreDoesNot) {
    for (const std::int64_t stems : {93, 150, 151, 152, 190}) {
        SCOPED_TRACE(stems);
        const auto ground = oneSupper(stems);
        const auto answer = ground.check(16);
        const auto most = answer.most.at(0).likely.value;
        EXPECT_EQ(most, (stems - 90) / 3);
        EXPECT_EQ(answer.stems, most >= 16 ? Fit::yes : Fit::no);
        EXPECT_TRUE(holdsWhenBooked(ground, most));
        EXPECT_FALSE(holdsWhenBooked(ground, most + 1));
        EXPECT_NE(ground.check(most).fit, Fit::no);
        EXPECT_EQ(ground.check(most + 1).fit, Fit::no);
    }
}

TEST(FitPlan, TightAtTheLikelyLevelAlone) {
    const auto ground = oneSupper(260, 60); // 156 at the cautious level, by days rounded down
    const auto few = ground.check(10), many = ground.check(40);
    EXPECT_EQ(few.stems, Fit::yes);
    EXPECT_EQ(many.stems, Fit::tight);
    ASSERT_EQ(many.slots.size(), 1u);
    EXPECT_EQ(many.slots[0].needed.value, 120);
    EXPECT_EQ(many.slots[0].covered[1].value, 120);
    EXPECT_LT(many.slots[0].covered[0].value, 120);
    ASSERT_FALSE(many.slots[0].competitors.empty());
    EXPECT_EQ(many.slots[0].competitors[0].booking, bookedSupper);
    EXPECT_EQ(many.leaning, std::vector{bookedSupper});
}

/// 70 jars, 30 out on the same evening: 40 are there.
TEST(FitPlan, JarsOutOnTheSameDayAreCounted) {
    const struct {
        std::optional<std::int64_t> owned;
        std::int64_t jars;
        Fit kit;
    } rows[] = {{70, 40, Fit::yes}, {70, 41, Fit::no}, {std::nullopt, 41, Fit::tight}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.jars);
        const auto answer = oneSupper(500, 100, row.owned).check(row.jars);
        ASSERT_FALSE(answer.kits.empty());
        EXPECT_EQ(answer.kits[0].fit, row.kit);
        EXPECT_EQ(answer.kits[0].needed, row.jars);
        EXPECT_EQ(answer.kits[0].promised, 30);
        EXPECT_EQ(answer.kits[0].others, std::vector{bookedSupper});
    }
}

/// A count that nobody has made stops nothing: it is asked for, and the stems alone say how many fit. 500
/// less 90 at three a jar are 136.
TEST(FitPlan, ALimitNobodyToldIsLeftOutOfForSure) {
    auto ground = oneSupper(500, 100, std::nullopt);
    const auto answer = ground.check(20);
    EXPECT_EQ(answer.kit, Fit::yes);
    EXPECT_EQ(answer.kits.at(0).fit, Fit::tight) << "still said in its row";
    ASSERT_EQ(answer.stems, Fit::yes);
    EXPECT_EQ(answer.fit, answer.hours);
    for (const auto& slot : answer.slots) {
        EXPECT_EQ(slot.covered[0], slot.needed);
        EXPECT_EQ(slot.there[0], std::min(slot.needed * fitReach, Stems(500 - 90)))
            << "not capped at the need";
    }
}

/// Forty minutes a jar: the thirty booked ones take 20 of the 26 working hours from the morning before to the
/// evening, sixteen more want 10 h 40. An enquiry's hours are in the way of a "yes" alone.
TEST(FitPlan, TheOthersWorkTakesTheHours) {
    const struct {
        double minutes;
        model::Standing standing;
        Fit hours;
    } rows[] = {{6, model::Standing::booked, Fit::yes},
                {40, model::Standing::booked, Fit::no},
                {40, model::Standing::quoted, Fit::tight}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.minutes);
        auto ground = oneSupper(500);
        auto design = *ground.season.designs.find(jar);
        design.minutes = row.minutes;
        auto booking = *ground.season.bookings.find(bookedSupper);
        booking.standing = row.standing;
        const Ground changed(applied(ground.season, model::Edit("t").put(design).put(booking)), 100);
        const auto answer = changed.check(16);
        EXPECT_EQ(answer.hours, row.hours);
        EXPECT_GE(answer.work.work.value, static_cast<std::int64_t>(16 * row.minutes));
        EXPECT_EQ(answer.work.others, std::vector{bookedSupper});
    }
}

/// A grower who is away every day before has the work pushed back until the flowers would not keep.
TEST(FitPlan, BusyHoursPushTheWorkBeyondTheFlowers) {
    const auto ground = oneSupper(500);
    EXPECT_EQ(ground.check(16).fit, Fit::yes);
    model::BusyHours away;
    away.id = Id<model::BusyHours>(1);
    away.from = model::sample::at(2027, 6, 1, 0);
    away.to = model::sample::at(2027, 6, 1, 23, 59);
    away.label = "Away";
    away.repeats = model::Repeat::daily;
    away.repeatsUntil = model::sample::day(2027, 9, 11);
    const Ground busy(applied(ground.season, model::Edit("t").put(away)), 100);
    EXPECT_EQ(busy.check(16).fit, Fit::no);
}

/// Every bed is over by the 12th; a booking for October is sent back to the days when there are stems.
TEST(FitPlan, NearestDatesFit) {
    const auto ground = oneSupper(500);
    auto ask = Ground::ask(10);
    ask.eventStart = model::sample::at(2027, 10, 1, 18, 30);
    ask.eventEnd = model::sample::at(2027, 10, 1, 22, 30);
    const auto answer = fitCheck(ground.season, ground.plan, ground.cover, ask);
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->fit, Fit::no);
    ASSERT_FALSE(answer->dates.empty());
    for (const auto& date : answer->dates) {
        SCOPED_TRACE(date.eventStart.iso());
        auto then = ask;
        then.eventStart = date.eventStart;
        then.eventEnd = date.eventStart + Minutes(240);
        const auto there = fitCheck(ground.season, ground.plan, ground.cover, then);
        ASSERT_TRUE(there.ok());
        EXPECT_EQ(there->fit, date.fit);
        EXPECT_NE(there->fit, Fit::no);
    }
    // Nothing nearer was passed by.
    const int away = ask.eventStart.day - answer->dates[0].eventStart.day;
    for (int days = 1; days < std::abs(away); ++days) {
        auto then = ask;
        then.eventStart.day = ask.eventStart.day - days;
        then.eventEnd.day = ask.eventEnd.day - days;
        EXPECT_EQ(fitCheck(ground.season, ground.plan, ground.cover, then)->fit, Fit::no);
    }
}

TEST(FitPlan, RefusesWhatItCannotPlan) {
    const auto ground = oneSupper(200);
    const auto fieldOf = [&](auto change) {
        auto ask = Ground::ask(5);
        change(ask);
        const auto answer = fitCheck(ground.season, ground.plan, ground.cover, ask);
        return answer.ok() ? std::string() : answer.error().field;
    };
    EXPECT_EQ(fieldOf([](FitAsk& a) { a.lines.clear(); }), "lines");
    EXPECT_EQ(fieldOf([](FitAsk& a) { a.lines[0].design = Id<model::Design>(99); }), "lines");
    EXPECT_EQ(fieldOf([](FitAsk& a) { a.lines[0].pieces = Pieces(0); }), "pieces");
    EXPECT_EQ(fieldOf([](FitAsk& a) { a.eventEnd.day = a.eventStart.day - 1; }), "event_end");
    const auto answer = fitCheck(ground.season, ground.plan, CoverPlan{}, Ground::ask(5));
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.error().field, "cover");
}

} // namespace withy::plan::tests
