// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/cover_rows.h"

#include <algorithm>
#include <cstdlib>
#include <map>

namespace withy::cover::tests {

namespace {

class Judge {
public:
    Judge(const CoverProblem& problem, const Allocation& a) : problem_(problem), a_(a) {}

    std::vector<std::string> judge() {
        for (const auto& piece : a_.pieces)
            judgePiece(piece);
        judgeSupplies();
        judgeDemands();
        if (!(recounted_ == a_.objectives)) say("objectives do not add up");
        return wrong_;
    }

private:
    void say(const std::string& what) { wrong_.push_back(what); }

    void judgePiece(const Piece& p) {
        if (p.demand >= a_.problem.demands.size()) return say("no such demand");
        const auto& demand = a_.problem.demands[p.demand];
        if (p.choice >= demand.choices.size()) return say("no such choice");
        const auto& choice = demand.choices[p.choice];
        if (p.stems.value < 1) say("a piece of nothing");
        if (choice.plant != p.plant) say("another plant than chosen");
        byChoice_[{p.demand, p.choice}] += p.stems.value;
        taken_[{p.source, p.from, p.source == Source::patch ? p.ready : Day{}}] += p.stems.value;
        if (p.source != Source::patch) {
            if (p.cut != demand.bench) say("taken from the store on another day than the bench's");
            return;
        }
        if (p.cut < choice.from || choice.to < p.cut) say("cut outside the window");
        const auto patch = std::find_if(problem_.patches.begin(), problem_.patches.end(),
                                        [&](const auto& row) { return row.patch.value == p.from; });
        if (patch == problem_.patches.end() || patch->plant != p.plant)
            return say("no such patch, or another plant's");
        if (p.cut < p.ready || p.cut > p.ready + patch->holdDays)
            say("cut before ready or past its hold days");
        recounted_.keeping +=
            p.stems.value * ((p.cut - p.ready) + 2 * std::abs(choice.best.value_or(choice.to) - p.cut));
        if (choice.storeOnly) say("cut for a choice that takes from the store alone");
    }

    [[nodiscard]] std::int64_t taken(Source source, std::int64_t id, Day day = {}) const {
        const auto found = taken_.find({source, id, day});
        return found == taken_.end() ? 0 : found->second;
    }

    void judgeSupplies() {
        std::int64_t known = 0, all = 0;
        for (const auto& patch : problem_.patches) {
            for (std::size_t i = 0; i < patch.ready.size(); ++i) {
                const auto n = taken(Source::patch, patch.patch.value, patch.first + static_cast<int>(i));
                if (n > patch.ready[i]) say("more than the patch has ready that day");
                known += n;
            }
        }
        for (const auto& lot : problem_.lots) {
            if (taken(Source::lot, lot.lot.value) > lot.stems.value) say("more than the lot holds");
            known += taken(Source::lot, lot.lot.value);
        }
        for (const auto& offer : problem_.offers) {
            const auto n = taken(Source::offer, offer.id);
            if (n > offer.bunch.value * offer.bunches) say("more than is offered");
            recounted_.price += n * offer.pricePerStem.minor;
            known += n;
        }
        for (const auto& [key, n] : taken_)
            all += n;
        if (known != all) say("stems from nowhere");
        for (const auto& p : a_.pieces)
            judgeStore(p);
    }

    void judgeStore(const Piece& p) {
        const Day bench = a_.problem.demands[p.demand].bench;
        const auto fit = [&](Id<model::Plant> plant, Day from, std::optional<Day> useBy) {
            if (plant != p.plant) say("the store's plant is another");
            if (bench < from || (useBy && *useBy < bench)) say("not fit on the bench day");
        };
        for (const auto& lot : problem_.lots) {
            if (p.source == Source::lot && lot.lot.value == p.from) fit(lot.plant, lot.readyFrom, lot.useBy);
        }
        for (const auto& offer : problem_.offers) {
            if (p.source == Source::offer && offer.id == p.from)
                fit(offer.plant, offer.readyFrom, offer.useBy);
        }
    }

    void judgeDemands() {
        for (std::size_t d = 0; d < a_.problem.demands.size(); ++d) {
            const auto& demand = a_.problem.demands[d];
            std::int64_t sum = a_.unmet[d].value;
            for (std::size_t c = 0; c < demand.choices.size(); ++c) {
                const auto found = byChoice_.find({d, c});
                const std::int64_t n = found == byChoice_.end() ? 0 : found->second;
                const auto& wanted = demand.choices[c].wanted;
                const auto place = static_cast<std::int64_t>(c);
                recounted_.places +=
                    wanted ? std::max<std::int64_t>(0, n - wanted->value) * (place + 1) : n * place;
                sum += n;
            }
            if (a_.unmet[d].value < 0 || sum != demand.stems.value) say("a demand does not balance");
            recounted_.unmet[static_cast<std::size_t>(demand.claim)] += a_.unmet[d].value;
        }
    }

    const CoverProblem& problem_;
    const Allocation& a_;
    std::vector<std::string> wrong_;
    std::map<std::pair<std::size_t, std::size_t>, std::int64_t> byChoice_;
    std::map<std::tuple<Source, std::int64_t, Day>, std::int64_t> taken_;
    Objectives recounted_;
};

} // namespace

std::vector<std::string> wrongWith(const CoverProblem& problem, const Allocation& allocation) {
    return Judge(problem, allocation).judge();
}

} // namespace withy::cover::tests
