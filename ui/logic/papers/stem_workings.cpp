// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

bool wants(const PaperOrder& order, PaperKind kind, PaperPart part) {
    const auto parts = order.parts ? *order.parts : usualParts(kind);
    return parts.count(part) > 0;
}

std::vector<papers::Block> stemWorkings(const model::Season& season, const plan::BookingPlan& plan) {
    std::vector<papers::Block> out;
    if (plan.needs.empty()) return out;
    const QString head = QCoreApplication::translate("Papers", "How the stems were counted");
    out.push_back(papers::Block{papers::SectionHead{utf8(head), {}}});
    for (const auto& need : plan.needs) {
        const auto* plant = season.plants.find(need.plant);
        if (!plant) continue;
        const QString working = lines(need.need.working, season.theSettings()).join(QStringLiteral(" · "));
        out.push_back(papers::Block{
            papers::Paragraph{papers::strong(plant->name) + papers::plain(": " + utf8(working)), true}});
    }
    return out;
}

} // namespace withy::ui
