// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

#include <memory>
#include <optional>

class QPushButton;

namespace withy::ui {

class TextLabel;

/// After an edit, what it moved in the booking that is shown: "24 to 30 jars: 60 stems more ...", and the
/// way back. Compares the plans, so that it speaks whoever made the edit.
class MovedLine : public QWidget {
    Q_OBJECT

public:
    explicit MovedLine(Workbench& bench, QWidget* parent = nullptr);

    /// Watches this booking from now on.
    void watch(std::optional<Id<model::Booking>> id);
    void clear();
    [[nodiscard]] QString words() const;

Q_SIGNALS:
    void undoAsked();

private:
    void compare();
    [[nodiscard]] std::optional<int> countToMend() const;

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;

    struct Stood {
        model::Season season; ///< as it was when the plan was made
        std::shared_ptr<const plan::BookingPlan> plan;
    };

    Stood now_;
    /// What the last edit began from, until the shed and the run-up have said what they think of it.
    std::optional<Stood> was_;
    std::optional<int> toMend_; ///< by the last whole plan
    TextLabel* words_;
    QPushButton* undo_;
};

} // namespace withy::ui
