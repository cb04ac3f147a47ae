// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/fit_working.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/best_plant.h"
#include "ui/logic/models/week_steps.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using model::TableKind;
using plan::Level;

class FitWorkingSay {
    Q_DECLARE_TR_FUNCTIONS(FitCheck)

public:
    explicit FitWorkingSay(const FitView& view) : view_(view), season_(view.season), answer_(view.answer) {}

    [[nodiscard]] SheetFigure stems() const {
        std::int64_t needed = 0, covered = 0;
        SheetFigure f;
        for (const auto& s : answer_.slots) {
            const auto given = s.covered[plan::indexOf(Level::cautious)].value;
            needed += s.needed.value;
            covered += given;
            auto line = lineOf(f.working.empty() ? Step::given : Step::plus, "covered, cautious", given,
                               Unit::stems, Basis::computed, {}, nameOf(s.slot));
            line.from = originOf(s.slot);
            f.working.push_back(std::move(line));
        }
        f.working.push_back(lineOf(Step::result, "covered, cautious", covered, Unit::stems));
        f.working.push_back(lineOf(Step::minus, "needed", needed, Unit::stems));
        close(covered - needed, Unit::stems, f.working);
        f.words = tr("%1 of %2").arg(whole(covered), whole(needed));
        f.means = tr("stems covered at the cautious level");
        return f;
    }

    [[nodiscard]] SheetFigure hours() const {
        const auto& w = answer_.work;
        SheetFigure f;
        const auto minutes = [](Step step, const char* what, Minutes m) {
            return lineOf(step, what, m.value, Unit::minutes);
        };
        f.working = {
            from(model::originInSettings(), minutes(Step::given, "free beside what is promised", w.free))};
        if (w.freeBesideAll < w.free) {
            f.working.push_back(minutes(Step::minus, "asked for by others", w.free - w.freeBesideAll));
            f.working.push_back(minutes(Step::result, "free beside all", w.freeBesideAll));
        }
        f.working.push_back(minutes(Step::minus, "work", w.work));
        close((w.freeBesideAll - w.work).value, Unit::minutes, f.working);
        f.words = tr("%1 of work, %2 free").arg(workWords(w.work), workWords(w.freeBesideAll));
        f.means = tr("beside all that is promised or asked for");
        return f;
    }

    [[nodiscard]] SheetFigure kit(const plan::FitKit& kit) const {
        SheetFigure f;
        const auto count = [](Step step, const char* what, std::int64_t n, Basis basis = Basis::computed) {
            return lineOf(step, what, n, Unit::count, basis);
        };
        const auto free = *kit.owned - kit.promised - kit.asked;
        const bool room = kit.kind == plan::FitKitKind::coolSpace;
        f.working = {from(originOf(kit), count(Step::given, room ? "buckets the cool store holds" : "owned",
                                               *kit.owned, Basis::counted))};
        if (kit.promised > 0) f.working.push_back(count(Step::minus, "promised", kit.promised));
        if (kit.asked > 0) f.working.push_back(count(Step::minus, "asked for by others", kit.asked));
        if (kit.promised + kit.asked > 0) f.working.push_back(count(Step::result, "free", free));
        f.working.push_back(count(Step::minus, "needed", kit.needed));
        close(free - kit.needed, Unit::count, f.working);
        f.words = tr("%1 needed, %2 free").arg(whole(kit.needed), whole(std::max<std::int64_t>(0, free)));
        f.means = tr("beside all that is promised or asked for");
        return f;
    }

private:
    static void close(std::int64_t left, Unit unit, Working& working) {
        working.push_back(left < 0 ? lineOf(Step::result, "short", -left, unit)
                                   : lineOf(Step::result, "left over", left, unit));
    }

    [[nodiscard]] std::string nameOf(Id<model::Slot> id) const {
        if (const auto* plant = plan::bestPlant(season_, id)) return plant->name;
        const auto* slot = season_.slots.find(id);
        return slot ? slot->label : std::string();
    }

    [[nodiscard]] Origin originOf(Id<model::Slot> id) const {
        if (const auto* plant = plan::bestPlant(season_, id))
            return model::originOf(TableKind::plants, plant->id.value);
        const auto* slot = season_.slots.find(id);
        return slot ? model::originOf(TableKind::designs, slot->design.value) : Origin{};
    }

    [[nodiscard]] Origin originOf(const plan::FitKit& kit) const {
        if (kit.container) return model::originOf(TableKind::containers, kit.container->value);
        if (kit.kind == plan::FitKitKind::coolSpace) return model::originInSettings();
        for (const auto& h : season_.holders)
            if (h.kind == model::HolderKind::bucket) return model::originOf(TableKind::holders, h.id.value);
        return {};
    }

    const FitView& view_;
    const model::Season& season_;
    const plan::FitAnswer& answer_;
};

} // namespace

void addFitFigures(const FitView& view, Sheet& sheet) {
    const FitWorkingSay say(view);
    for (auto& row : sheet.rows) {
        if (row.cells.size() < 2 || !row.cells[1].reach) continue; // asked for, not yet known
        if (row.key == QStringLiteral("stems"))
            row.cells[1].figure = say.stems();
        else if (row.key == QStringLiteral("hours"))
            row.cells[1].figure = say.hours();
        for (std::size_t i = 0; i < view.answer.kits.size(); ++i)
            if (row.key == QStringLiteral("kit%1").arg(i) && view.answer.kits[i].owned)
                row.cells[1].figure = say.kit(view.answer.kits[i]);
    }
}

} // namespace withy::ui
