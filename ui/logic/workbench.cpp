// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/workbench.h"

#include "ui/logic/wording.h"

#include <QTimer>

#include <utility>

namespace withy::ui {

namespace {

void askOnce(PlanRunner& runner, const model::Season& season, const plan::PlanOptions& options) {
    if (runner.asked() == 0) runner.ask(season, options);
}

} // namespace

Workbench::Workbench(store::SeasonFile file, std::optional<Day> today, QObject* parent)
    : QObject(parent), file_(std::move(file)), season_(file_.season()), options_{today, {}}, runner_([this] {
        QMetaObject::invokeMethod(
            this, [this] { showPlan(runner_.finished()); }, Qt::QueuedConnection);
    }) {
    const auto none = std::make_shared<PlanRunner::Run>();
    none->turn = ~std::uint64_t{0}; // no plan is of this season yet
    run_ = none;
    // After the first picture: until then the window needs the processors for itself.
    QTimer::singleShot(0, this, [this] { askOnce(runner_, season_, options_); });
}

Workbench::~Workbench() = default;

void Workbench::waitForPlan() {
    askOnce(runner_, season_, options_);
    showPlan(runner_.wait());
}

void Workbench::showPlan(std::shared_ptr<const PlanRunner::Run> run) {
    if (run == run_) return;
    runner_.takeBack(std::exchange(run_, std::move(run)));
    Q_EMIT planned();
}

void Workbench::setToday(std::optional<Day> today) {
    if (today == options_.today) return;
    options_.today = today;
    runner_.ask(season_, options_);
}

void Workbench::tell(const model::Applied& applied) {
    season_ = applied.season;
    runner_.ask(season_, options_);
    Q_EMIT changed(applied.done);
}

QString Workbench::apply(const model::Edit& edit) {
    if (!canWrite())
        return tr("This season is open for reading only, so nothing was changed. Save a copy to work on.");
    const auto applied = model::apply(season_, edit);
    if (!applied.ok()) return sentences(applied.error());
    if (applied->done.empty()) return {};
    try {
        file_.commit(applied->done);
    } catch (const store::StoreError& e) {
        return sentence(e);
    }
    undo_.push_back(applied->inverse);
    redo_.clear();
    tell(applied.value());
    return {};
}

bool Workbench::take(const model::Edit& edit) {
    const QString trouble = apply(edit);
    if (!trouble.isEmpty()) Q_EMIT refused(trouble);
    return trouble.isEmpty();
}

QString Workbench::step(std::vector<model::Edit>& from, std::vector<model::Edit>& to) {
    if (from.empty()) return {};
    const auto applied = model::apply(season_, from.back());
    if (!applied.ok()) return sentences(applied.error());
    try {
        file_.commit(applied->done);
    } catch (const store::StoreError& e) {
        return sentence(e);
    }
    from.pop_back();
    to.push_back(applied->inverse);
    tell(applied.value());
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
