// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/season_edits.h"

namespace withy::ui::edits {

Edit tellAgain(const Season& season, const std::vector<std::int64_t>& acceptedFindings) {
    std::string first;
    Edit edit("finding.tell");
    for (const auto id : acceptedFindings) {
        const auto* finding = season.acceptedFindings.find(Id<model::AcceptedFinding>(id));
        if (!finding) continue;
        if (first.empty()) first = finding->finding;
        edit.erase(finding->id);
    }
    edit.rename({"finding.tell", {first}});
    return edit;
}

} // namespace withy::ui::edits
