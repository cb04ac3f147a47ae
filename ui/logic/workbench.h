// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#include "core/plan/plan.h"
#include "core/store/season_file.h"
#endif

#include <QObject>
#include <QString>

#include <optional>
#include <vector>

namespace withy::ui {

/// The one door for every change: validates an edit, stores it, keeps its inverse, replans and tells.
class Workbench : public QObject {
    Q_OBJECT

public:
    explicit Workbench(store::SeasonFile file, std::optional<Day> today = std::nullopt,
                       QObject* parent = nullptr);

    [[nodiscard]] const model::Season& season() const { return season_; }

    [[nodiscard]] const plan::Plan& plan() const { return plan_; }

    [[nodiscard]] const QString& path() const { return file_.path(); }

    [[nodiscard]] bool canWrite() const { return file_.mode() == store::SeasonFile::Mode::write; }

    [[nodiscard]] std::optional<Day> today() const { return options_.today; }

    /// On disk before it returns without a word; otherwise the sentence that says why not, and nothing
    /// has changed. An edit that changes nothing is not kept.
    QString apply(const model::Edit& edit);

    [[nodiscard]] bool canUndo() const { return !undo_.empty(); }

    [[nodiscard]] bool canRedo() const { return !redo_.empty(); }

    [[nodiscard]] model::EditName undoName() const;
    [[nodiscard]] model::EditName redoName() const;
    QString undo();
    QString redo();

    QString saveCopy(const QString& path) const;

Q_SIGNALS:
    /// The edit itself is the notice; undo and redo send it too.
    void changed(const withy::model::Edit& done);

private:
    QString step(std::vector<model::Edit>& from, std::vector<model::Edit>& to);
    /// Commits and shows; throws StoreError with nothing changed.
    void take(const model::Applied& applied);

    store::SeasonFile file_;
    model::Season season_;
    plan::PlanOptions options_;
    plan::Plan plan_;
    std::vector<model::Edit> undo_; ///< inverses, newest last
    std::vector<model::Edit> redo_;
};

} // namespace withy::ui
