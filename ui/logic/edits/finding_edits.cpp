// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/finding_edits.h"

namespace withy::ui::edits {

model::Edit acceptFinding(const model::Season& season, const ListedFinding& listed, Day day) {
    model::AcceptedFinding a;
    a.id = season.acceptedFindings.nextId();
    a.finding = findingKey(listed.finding, listed.booking);
    a.facts = findingFacts(listed.finding);
    a.acceptedOn = day;
    model::Edit edit("finding.accept", {std::string(plan::findingWord(listed.finding.code))});
    // What was accepted with other facts is out of date.
    for (const auto& old : season.acceptedFindings)
        if (old.finding == a.finding) edit.erase(old.id);
    return edit.put(a);
}

model::Edit askAgain(const model::Season& season, const ListedFinding& listed) {
    const auto key = findingKey(listed.finding, listed.booking);
    model::Edit edit("finding.ask", {std::string(plan::findingWord(listed.finding.code))});
    for (const auto& old : season.acceptedFindings)
        if (old.finding == key) edit.erase(old.id);
    return edit;
}

} // namespace withy::ui::edits
