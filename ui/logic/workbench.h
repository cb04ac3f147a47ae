// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#include "core/plan/plan.h"
#include "core/store/season_file.h"
#include "ui/logic/file_writer.h"
#include "ui/logic/plan_runner.h"
#endif

#include <QObject>
#include <QString>

#include <chrono>
#include <optional>
#include <vector>

namespace withy::ui {

/// The one door for every change: validates an edit, stores it, keeps its inverse and tells; the plan is
/// made anew on another thread and told of when it is there.
class Workbench : public QObject {
    Q_OBJECT

public:
    explicit Workbench(store::SeasonFile file, std::optional<Day> today = std::nullopt,
                       QObject* parent = nullptr, PlanRunner::Planners planners = {});
    ~Workbench() override;

    [[nodiscard]] const model::Season& season() const { return season_; }

    /// The newest plan there is: empty until the first one, and after an edit the older one for a moment,
    /// so look records up with find. The reference holds until planned() is about to be sent.
    [[nodiscard]] const plan::Plan& plan() const { return run_->plan; }

    /// The plan is that of season() as it stands, garden and cover with it.
    [[nodiscard]] bool planIsCurrent() const { return bookingsAreCurrent() && run_->whole; }

    /// Designs and bookings are; who gets which stems may follow. Not after a fault: the plan is an older
    /// one.
    [[nodiscard]] bool bookingsAreCurrent() const {
        return run_->turn == runner_.asked() && run_->fault.isEmpty();
    }

    /// Waits until it is, and sends planned() if that brought a new one. For papers, and whatever must not
    /// work from an older plan.
    void waitForPlan();

    [[nodiscard]] const QString& path() const { return writer_.path(); }

    [[nodiscard]] bool canWrite() const { return writer_.mode() == store::SeasonFile::Mode::write; }

    [[nodiscard]] std::optional<Day> today() const { return options_.today; }

    /// Midnight has passed: plans anew, and changes nothing else. Sends dayTurned().
    void setToday(std::optional<Day> today);

    /// How long an edit waits for the disk: as long as it takes, unless set. A window waits a moment only,
    /// and shows nothing new while isWriting().
    void setPatience(std::optional<std::chrono::milliseconds> patience) { patience_ = patience; }

    /// Some of season() is not on the disk yet. written() follows, or takenBack().
    [[nodiscard]] bool isWriting() const { return !unwritten_.empty(); }

    /// Until it is, or is taken back; whether all of it is. For who leaves the season.
    bool waitForFile();

    /// On disk when it returns without a word, or isWriting(); otherwise the sentence that says why not, and
    /// nothing has changed. An edit that changes nothing is not kept.
    QString apply(const model::Edit& edit);
    /// As apply(), and sends refused() with the sentence; whether it was taken.
    bool take(const model::Edit& edit);

    [[nodiscard]] bool canUndo() const { return !undo_.empty(); }

    [[nodiscard]] bool canRedo() const { return !redo_.empty(); }

    [[nodiscard]] model::EditName undoName() const;
    [[nodiscard]] model::EditName redoName() const;
    QString undo();
    QString redo();

    QString saveCopy(const QString& path);

Q_SIGNALS:
    /// The edit itself is the notice; undo and redo send it too. It is not yet planned.
    void changed(const withy::model::Edit& done);
    /// All of season() is on the disk now, of which some was not a moment ago.
    void written();
    /// What could not be written after all is undone, each edit with its own changed(). `redo`: redo() brings
    /// it again.
    void takenBack(const QString& sentence, bool redo);
    /// A new plan() is there; planIsCurrent() says whether an edit has come since it began.
    void planned();
    /// today() is another day.
    void dayTurned();
    void refused(const QString& sentence);

private:
    /// What became of the stacks by an edit that is not in the file yet.
    struct Step {
        enum class Kind { edit, undo, redo } kind;
        model::Edit edit;    ///< as given, or as it stood on its stack
        model::Edit inverse; ///< of what it did
        model::Season before;
    };

    QString step(Step::Kind kind);
    QString keep(Step step, const model::Applied& applied);
    /// Why an edit could not be written; empty: none failed.
    QString hearWriter();
    void takeBack(const QString& trouble);
    void showPlan(std::shared_ptr<const PlanRunner::Run> run);
    void show(const model::Season& season, const model::Edit& done);

    std::optional<std::chrono::milliseconds> patience_;
    std::vector<Step> unwritten_; ///< oldest first
    model::Season season_;
    plan::PlanOptions options_;
    std::vector<model::Edit> undo_; ///< inverses, newest last
    std::vector<model::Edit> redo_;
    std::shared_ptr<const PlanRunner::Run> run_; ///< never null
    FileWriter writer_;                          // last two: their threads use what is above
    PlanRunner runner_;
};

} // namespace withy::ui
