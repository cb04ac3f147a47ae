// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cut_times.h"

#include "core/plan/run_up_plan.h"
#include "ui/logic/format.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cstdlib>

namespace withy::ui {

namespace {

struct CutTimesSay {
    Q_DECLARE_TR_FUNCTIONS(CutTimes)
};

bool cutsFor(const plan::RoundPatch& row, Id<model::Booking> booking, Id<model::Plant> plant) {
    return row.plant == plant &&
           std::find(row.bookings.begin(), row.bookings.end(), booking) != row.bookings.end();
}

} // namespace

CutTimes::CutTimes(const plan::Plan& plan, Id<model::Booking> booking) : plan_(&plan), booking_(booking) {
    if (const auto own = plan.bookings.find(booking); own != plan.bookings.end()) own_ = own->second.get();
    laid_ = plan.runUp && isLaid(*plan.runUp, booking);
    if (laid_) {
        for (const auto i : runUpRounds(plan, booking)) {
            const auto& round = plan.runUp->rounds[i];
            all_.push_back({round.from, round.to, i, std::nullopt});
        }
    } else if (own_) {
        for (const auto& round : own_->rounds)
            all_.push_back({round.start, round.end, std::nullopt,
                            round.hour ? std::optional(round.hour->why) : std::nullopt});
    }
}

std::vector<std::pair<CutTime, std::int64_t>> CutTimes::stemsOf(Id<model::Patch> patch,
                                                                Id<model::Plant> plant) const {
    std::vector<std::pair<CutTime, std::int64_t>> out;
    for (const auto& time : all_) {
        if (!time.round) continue;
        std::int64_t stems = 0;
        for (const auto& row : plan_->runUp->rounds[*time.round].patches)
            if (cutsFor(row, booking_, plant) && (!row.patch || *row.patch == patch))
                stems += row.stems.value;
        if (stems > 0) out.emplace_back(time, stems);
    }
    return out;
}

std::optional<CutTime> CutTimes::of(Id<model::Patch> patch, Id<model::Plant> plant, Day foretold) const {
    const CutTime* nearest = nullptr;
    const auto apart = [&](const CutTime& t) { return std::abs(t.from.day - foretold); };
    const auto cutting = stemsOf(patch, plant);
    for (const auto& [time, stems] : cutting)
        if (!nearest || apart(time) < apart(*nearest)) nearest = &time;
    for (const auto& time : all_)
        if (!nearest && time.from.day == foretold) nearest = &time;
    return nearest ? std::optional(*nearest) : std::nullopt;
}

std::vector<CutTime> CutTimes::of(Id<model::Plant> plant) const {
    std::vector<CutTime> out;
    for (std::size_t i = 0; i < all_.size(); ++i) {
        bool cuts = false;
        if (all_[i].round) {
            const auto& rows = plan_->runUp->rounds[*all_[i].round].patches;
            cuts = std::any_of(rows.begin(), rows.end(),
                               [&](const auto& row) { return cutsFor(row, booking_, plant); });
        } else {
            cuts = std::any_of(own_->needs.begin(), own_->needs.end(), [&](const plan::PlantNeed& need) {
                return need.plant == plant && need.round == static_cast<int>(i);
            });
        }
        if (cuts) out.push_back(all_[i]);
    }
    return out;
}

std::int64_t CutTimes::stemsOf(std::size_t i) const {
    return all_[i].round ? plan_->runUp->rounds[*all_[i].round].stems.value : own_->rounds[i].stems.value;
}

std::optional<CutTime> CutTimes::on(Day day) const {
    std::optional<std::size_t> most;
    for (std::size_t i = 0; i < all_.size(); ++i)
        if (all_[i].from.day == day && (!most || stemsOf(i) > stemsOf(*most))) most = i;
    return most ? std::optional(all_[*most]) : std::nullopt;
}

QString cutWhen(const CutTimes& times, Id<model::Plant> plant) {
    const auto rounds = times.of(plant);
    if (rounds.empty()) return {};
    const auto& first = rounds.front().from;
    const QString at = CutTimesSay::tr("%1 %2").arg(shortDay(first.day), planClock(first));
    const int more = static_cast<int>(rounds.size()) - 1;
    return more == 0 ? at : CutTimesSay::tr("%1 and %n more round(s)", nullptr, more).arg(at);
}

} // namespace withy::ui
