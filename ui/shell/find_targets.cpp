// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/find_targets.h"

#include "ui/logic/format.h"
#include "ui/shell/season_view.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct FindTargetsSay {
    Q_DECLARE_TR_FUNCTIONS(FindTargets)
};

template <class R, class Name>
void add(std::vector<ActionFinder::Target>& to, SeasonView& view, const QString& kind, Name name) {
    for (const auto& record : model::tableOf<R>(view.bench().season())) {
        const model::Ref ref{model::kindOf<R>, record.id.value};
        to.push_back({name(record), kind, {}, [&view, ref] { view.goTo(ref); }});
    }
}

} // namespace

std::vector<ActionFinder::Target> findTargets(SeasonView& view) {
    std::vector<ActionFinder::Target> all;
    add<model::Booking>(all, view, FindTargetsSay::tr("booking"), [](const auto& b) {
        return text(b.title) + QStringLiteral(", ") + shortDay(b.eventStart.day);
    });
    const auto name = [](const auto& r) { return text(r.name); };
    add<model::Design>(all, view, FindTargetsSay::tr("design"), name);
    add<model::Plant>(all, view, FindTargetsSay::tr("plant"), name);
    add<model::Patch>(all, view, FindTargetsSay::tr("patch"), [](const auto& p) { return text(p.label); });
    add<model::Container>(all, view, FindTargetsSay::tr("container"), name);
    add<model::Ribbon>(all, view, FindTargetsSay::tr("ribbon"), name);
    return all;
}

} // namespace withy::ui
