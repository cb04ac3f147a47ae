// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/workbench.h"

#include "ui/logic/wording.h"

#include <QTimer>

#include <algorithm>
#include <cstddef>
#include <utility>

namespace withy::ui {

namespace {

void askOnce(PlanRunner& runner, const model::Season& season, const plan::PlanOptions& options) {
    if (runner.asked() == 0) runner.ask(season, options);
}

/// No plan is of any season yet.
std::shared_ptr<const PlanRunner::Run> noRun() {
    auto none = std::make_shared<PlanRunner::Run>();
    none->turn = ~std::uint64_t{0};
    return none;
}

} // namespace

Workbench::Workbench(store::SeasonFile file, std::optional<Day> today, QObject* parent,
                     PlanRunner::Planners planners)
    : QObject(parent)
    , season_(file.season())
    , options_{today, {}}
    , run_(noRun())
    , writer_(std::move(file),
              [this] { QMetaObject::invokeMethod(this, &Workbench::hearWriter, Qt::QueuedConnection); })
    , runner_(
          [this] {
              QMetaObject::invokeMethod(
                  this, [this] { showPlan(runner_.finished()); }, Qt::QueuedConnection);
          },
          std::move(planners)) {
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
    const auto was = std::exchange(run_, std::move(run));
    const bool fails = !run_->fault.isEmpty() && run_->fault != was->fault;
    runner_.takeBack(was);
    Q_EMIT planned();
    if (fails)
        Q_EMIT refused(tr("The plan could not be made anew, so it is the one before. %1").arg(run_->fault));
}

void Workbench::setToday(std::optional<Day> today) {
    if (today == options_.today) return;
    options_.today = today;
    runner_.ask(season_, options_);
    Q_EMIT dayTurned();
}

void Workbench::show(const model::Season& season, const model::Edit& done) {
    season_ = season;
    runner_.ask(season_, options_);
    Q_EMIT changed(done);
}

QString Workbench::apply(const model::Edit& edit) {
    if (!canWrite())
        return tr("This season is open for reading only, so nothing was changed. Save a copy to work on.");
    const auto applied = model::apply(season_, edit);
    if (!applied.ok()) return sentences(applied.error());
    if (applied->done.empty()) return {};
    return keep({Step::Kind::edit, edit, applied->inverse, season_}, applied.value());
}

/// A step is done on the screen as soon as it is in the file, or has waited long enough for that.
QString Workbench::keep(Step step, const model::Applied& applied) {
    writer_.write(applied.done);
    const bool heard = writer_.wait(patience_);
    if (heard) {
        if (const auto trouble = hearWriter(); !trouble.isEmpty()) return trouble;
    }
    switch (step.kind) {
    case Step::Kind::edit:
        undo_.push_back(step.inverse);
        redo_.clear();
        break;
    case Step::Kind::undo:
        undo_.pop_back();
        redo_.push_back(step.inverse);
        break;
    case Step::Kind::redo:
        redo_.pop_back();
        undo_.push_back(step.inverse);
        break;
    }
    if (!heard) unwritten_.push_back(std::move(step));
    show(applied.season, applied.done);
    return {};
}

QString Workbench::hearWriter() {
    const auto news = writer_.takeNews();
    const bool waited = isWriting();
    const auto known = std::min(news.written, unwritten_.size());
    unwritten_.erase(unwritten_.begin(), unwritten_.begin() + static_cast<std::ptrdiff_t>(known));
    if (!news.trouble.isEmpty() && isWriting()) takeBack(news.trouble);
    if (waited && !isWriting()) Q_EMIT written();
    return news.trouble;
}

void Workbench::takeBack(const QString& trouble) {
    auto steps = std::exchange(unwritten_, {});
    bool cleared = false; // a new edit left nothing to redo of what was undone before it
    int again = 0;        // wait in redo
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        if (step->kind == Step::Kind::undo) {
            if (!cleared) {
                redo_.pop_back();
                again = std::max(0, again - 1);
            }
            undo_.push_back(std::move(step->edit));
        } else {
            cleared = cleared || step->kind == Step::Kind::edit;
            undo_.pop_back();
            redo_.push_back(std::move(step->edit));
            ++again;
        }
        show(step->before, step->inverse);
    }
    const int count = static_cast<int>(steps.size());
    const QString words =
        again == count
            ? tr("%n change(s) (was|were) not in the file yet and (is|are) taken back; Redo brings "
                 "(it|them) again.",
                 nullptr, count)
            : tr("%n change(s) (was|were) not in the file yet and (is|are) taken back.", nullptr, count);
    Q_EMIT takenBack(trouble + QLatin1Char(' ') + words, again > 0);
}

bool Workbench::waitForFile() {
    writer_.wait(std::nullopt);
    return hearWriter().isEmpty();
}

bool Workbench::take(const model::Edit& edit) {
    const QString trouble = apply(edit);
    if (!trouble.isEmpty()) Q_EMIT refused(trouble);
    return trouble.isEmpty();
}

QString Workbench::step(Step::Kind kind) {
    const auto& from = kind == Step::Kind::undo ? undo_ : redo_;
    if (from.empty()) return {};
    const auto edit = from.back();
    const auto applied = model::apply(season_, edit);
    if (!applied.ok()) return sentences(applied.error());
    return keep({kind, edit, applied->inverse, season_}, applied.value());
}

QString Workbench::undo() {
    return step(Step::Kind::undo);
}

QString Workbench::redo() {
    return step(Step::Kind::redo);
}

model::EditName Workbench::undoName() const {
    return undo_.empty() ? model::EditName{} : undo_.back().name();
}

model::EditName Workbench::redoName() const {
    return redo_.empty() ? model::EditName{} : redo_.back().name();
}

QString Workbench::saveCopy(const QString& path) {
    try {
        writer_.saveCopy(path);
    } catch (const store::StoreError& e) {
        return sentence(e);
    }
    return {};
}

} // namespace withy::ui
