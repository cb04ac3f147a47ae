// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

/// Findings as a list to work through: worst first, what the grower has accepted last.
namespace withy::ui {

struct ListedFinding {
    plan::Finding finding;
    std::optional<Id<model::Booking>> booking; ///< whose plan says so; blank: a design's own, in any booking
    bool accepted = false;
};

/// What a finding is told by: its word, its place, and the booking it is about (two bookings may miss the
/// same jars by different numbers). At most 200 characters.
std::string findingKey(const plan::Finding& finding, std::optional<Id<model::Booking>> of = std::nullopt);
/// Subjects and numbers in one text of at most 1000 characters: when it changes, acceptance ends.
std::string findingFacts(const plan::Finding& finding);

/// Seen, accepted, and still the same facts.
bool accepted(const model::Season& season, const plan::Finding& finding,
              std::optional<Id<model::Booking>> of = std::nullopt);

/// Of one booking, the shed's and the run-up's about it among them; empty when the plan does not know it
/// (yet). Whoever tells or counts what is wrong with a booking asks here.
std::vector<ListedFinding> findingsOf(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> booking);
/// Of one design: what its plan noticed, and sizes that contradict each other.
std::vector<ListedFinding> findingsOfDesign(const model::Season& season, const plan::Plan& plan,
                                            Id<model::Design> design);
/// How many of a booking's findings want mending, rather than being worth a word; without those accepted.
int toMend(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking);
/// Of the garden: walks, weather, patches and what is known of the plants' heat.
std::vector<ListedFinding> findingsOfGarden(const model::Season& season, const plan::Plan& plan);
/// Of all bookings but those that are over or lost, of all designs (a design's own are told
/// once), and of the garden.
std::vector<ListedFinding> findingsOfSeason(const model::Season& season, const plan::Plan& plan);

/// "Library roof supper: 3 buckets needed, ...": the sentence with whose it is.
QString sentence(const model::Season& season, const ListedFinding& listed);

/// How many are open and at least a warning.
int countAsking(const std::vector<ListedFinding>& list);

} // namespace withy::ui
