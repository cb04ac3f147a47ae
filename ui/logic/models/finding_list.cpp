// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/finding_list.h"

#include "core/model/schema.h"
#include "core/plan/forecast_plan.h"
#include "core/plan/run_up_plan.h"
#include "core/plan/shed_plan.h"
#include "core/plan/size_faults.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <string_view>

namespace withy::ui {

namespace {

constexpr std::size_t longestFacts = 1000;

/// FNV-1a, 64 bits (the hash's own published parameters): keeps facts told apart beyond the field's length.
std::string hashOf(std::string_view words) {
    std::uint64_t h = 14695981039346656037ULL;
    for (const char c : words)
        h = (h ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return QString::number(h, 16).toStdString();
}

std::string shortened(const std::string& facts) {
    // Names may be long and of many bytes a letter: what does not fit is kept as its hash alone.
    return facts.size() <= longestFacts ? facts : "# " + hashOf(facts);
}

bool isDesigns(const plan::Finding& finding) {
    return finding.place.table == model::TableKind::designs || plan::sizeFaultOf(finding.code);
}

bool isOver(const model::Booking& b) {
    using model::Standing;
    return b.standing == Standing::delivered || b.standing == Standing::settled ||
           b.standing == Standing::lost;
}

bool isNew(const std::vector<ListedFinding>& out, const plan::Finding& finding) {
    return std::none_of(out.begin(), out.end(), [&](const ListedFinding& l) {
        return l.finding.code == finding.code && l.finding.place == finding.place &&
               l.finding.numbers == finding.numbers;
    });
}

void add(std::vector<ListedFinding>& out, const model::Season& season, const plan::Finding& finding,
         std::optional<Id<model::Booking>> of) {
    if (isDesigns(finding)) of.reset();
    // Two designs may stand in one container, whose sizes are told once.
    if (plan::sizeFaultOf(finding.code) && !isNew(out, finding)) return;
    out.push_back({finding, of, accepted(season, finding, of)});
}

/// The booking a finding of the run-up is about; nothing for hands, hours and the place.
std::optional<Id<model::Booking>> bookingBehind(const model::Season& season, const plan::Finding& finding) {
    using model::TableKind;
    if (finding.place.table == TableKind::bookings) return Id<model::Booking>(finding.place.id);
    if (finding.place.table == TableKind::drops) {
        const auto* drop = season.drops.find(Id<model::Drop>(finding.place.id));
        return drop ? std::optional(drop->booking) : std::nullopt;
    }
    if (finding.place.table == TableKind::stepMarks) {
        const auto* mark = season.stepMarks.find(Id<model::StepMark>(finding.place.id));
        return mark ? mark->booking : std::nullopt;
    }
    return std::nullopt;
}

/// The run-up of all bookings knows better than one booking alone whether a day is too long.
bool saidByRunUp(const plan::Plan& plan, const plan::Finding& finding) {
    return plan.runUp && finding.code == plan::FindingCode::dayTooLong;
}

void addRunUp(std::vector<ListedFinding>& out, const model::Season& season, const plan::Plan& plan,
              std::optional<Id<model::Booking>> only) {
    if (!plan.runUp) return;
    for (const auto& f : plan.runUp->findings) {
        const auto of = bookingBehind(season, f);
        if (!only || of == only) add(out, season, f, of);
    }
}

void sortList(std::vector<ListedFinding>& list) {
    std::stable_sort(list.begin(), list.end(), [](const ListedFinding& a, const ListedFinding& b) {
        if (a.accepted != b.accepted) return b.accepted;
        return a.finding.severity > b.finding.severity;
    });
}

} // namespace

std::string findingKey(const plan::Finding& finding, std::optional<Id<model::Booking>> of) {
    std::string key(plan::findingWord(finding.code));
    key += ", ";
    if (finding.place.table != model::TableKind::none) {
        key += model::tableInfo(finding.place.table).name;
        key += ' ' + std::to_string(finding.place.id);
    }
    const bool placeSays = isDesigns(finding) || finding.place.table == model::TableKind::bookings;
    if (of && !placeSays) key += ", booking " + std::to_string(of->value);
    return key;
}

std::string findingFacts(const plan::Finding& finding) {
    std::string facts;
    for (const auto& s : finding.subjects)
        facts += (facts.empty() ? "" : "; ") + s;
    for (const double n : finding.numbers)
        facts += (facts.empty() ? "" : "; ") + QString::number(n, 'g', 10).toStdString();
    return shortened(facts);
}

bool accepted(const model::Season& season, const plan::Finding& finding,
              std::optional<Id<model::Booking>> of) {
    if (season.acceptedFindings.empty()) return false;
    const auto key = findingKey(finding, of);
    const auto facts = findingFacts(finding);
    return std::any_of(season.acceptedFindings.begin(), season.acceptedFindings.end(),
                       [&](const auto& a) { return a.finding == key && a.facts == facts; });
}

std::vector<ListedFinding> findingsOf(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> booking) {
    std::vector<ListedFinding> out;
    const auto found = plan.bookings.find(booking);
    if (found == plan.bookings.end()) return out;
    for (const auto& f : found->second->findings)
        if (!saidByRunUp(plan, f)) add(out, season, f, booking);
    if (plan.shed)
        for (const auto& f : plan.shed->findings)
            if (f.booking == booking) add(out, season, f.finding, booking);
    addRunUp(out, season, plan, booking);
    sortList(out);
    return out;
}

std::vector<ListedFinding> findingsOfDesign(const model::Season& season, const plan::Plan& plan,
                                            Id<model::Design> design) {
    std::vector<ListedFinding> out;
    const auto found = plan.designs.find(design);
    if (found == plan.designs.end() || !found->second) return out;
    for (const auto& f : found->second->findings)
        add(out, season, f, std::nullopt);
    sortList(out);
    return out;
}

int toMend(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking) {
    return countAsking(findingsOf(season, plan, booking));
}

std::vector<ListedFinding> findingsOfGarden(const model::Season& season, const plan::Plan& plan) {
    std::vector<ListedFinding> out;
    if (plan.garden)
        for (const auto& f : plan.garden->findings)
            add(out, season, f, std::nullopt);
    sortList(out);
    return out;
}

std::vector<ListedFinding> findingsOfSeason(const model::Season& season, const plan::Plan& plan) {
    std::vector<ListedFinding> out;
    for (const auto& [id, booked] : plan.bookings) {
        const auto* booking = season.bookings.find(id);
        if (!booking || isOver(*booking)) continue;
        for (const auto& f : booked->findings)
            if (!isDesigns(f) && !saidByRunUp(plan, f)) add(out, season, f, id);
    }
    if (plan.shed)
        for (const auto& f : plan.shed->findings) {
            const auto* booking = f.booking ? season.bookings.find(*f.booking) : nullptr;
            if (!booking || !isOver(*booking) || f.finding.place.table == model::TableKind::containers)
                add(out, season, f.finding, f.booking);
        }
    for (const auto& [id, design] : plan.designs)
        for (const auto& f : design->findings)
            add(out, season, f, std::nullopt);
    if (plan.garden)
        for (const auto& f : plan.garden->findings)
            add(out, season, f, std::nullopt);
    addRunUp(out, season, plan, std::nullopt);
    sortList(out);
    return out;
}

QString sentence(const model::Season& season, const ListedFinding& listed) {
    const QString words = sentence(listed.finding, season);
    const auto* booking = listed.booking ? season.bookings.find(*listed.booking) : nullptr;
    return booking ? QCoreApplication::translate("Finding", "%1: %2").arg(text(booking->title), words)
                   : words;
}

int countAsking(const std::vector<ListedFinding>& list) {
    return static_cast<int>(std::count_if(list.begin(), list.end(), [](const auto& f) {
        return !f.accepted && f.finding.severity != plan::Severity::note;
    }));
}

} // namespace withy::ui
