// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/workbench.h"

#include "ui/logic/wording.h"

namespace withy::ui {

Workbench::Workbench(store::SeasonFile file, std::optional<Day> today, QObject* parent)
    : QObject(parent)
    , file_(std::move(file))
    , season_(file_.season())
    , options_{today}
    , plan_(plan::plan(season_, options_)) {}

void Workbench::take(const model::Applied& applied) {
    file_.commit(applied.done);
    const auto next = plan::replan(applied.season, options_, season_, plan_, options_);
    season_ = applied.season;
    plan_ = next;
    Q_EMIT changed(applied.done);
}

QString Workbench::apply(const model::Edit& edit) {
    const auto applied = model::apply(season_, edit);
    if (!applied.ok()) return sentences(applied.error());
    if (applied->done.empty()) return {};
    try {
        undo_.push_back(applied->inverse);
        redo_.clear();
        take(applied.value());
    } catch (const store::StoreError& e) {
        undo_.pop_back();
        return sentence(e);
    }
    return {};
}

QString Workbench::step(std::vector<model::Edit>& from, std::vector<model::Edit>& to) {
    if (from.empty()) return {};
    const auto applied = model::apply(season_, from.back());
    if (!applied.ok()) return sentences(applied.error());
    const model::Edit back = from.back();
    try {
        from.pop_back();
        to.push_back(applied->inverse);
        take(applied.value());
    } catch (const store::StoreError& e) {
        to.pop_back();
        from.push_back(back);
        return sentence(e);
    }
    return {};
}

QString Workbench::undo() {
    return step(undo_, redo_);
}

QString Workbench::redo() {
    return step(redo_, undo_);
}

model::EditName Workbench::undoName() const {
    return undo_.empty() ? model::EditName{} : undo_.back().name();
}

model::EditName Workbench::redoName() const {
    return redo_.empty() ? model::EditName{} : redo_.back().name();
}

QString Workbench::saveCopy(const QString& path) const {
    try {
        file_.saveCopy(path);
    } catch (const store::StoreError& e) {
        return sentence(e);
    }
    return {};
}

} // namespace withy::ui
