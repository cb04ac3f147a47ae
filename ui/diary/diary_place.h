// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

namespace withy::ui {

class SubPages;

/// The week of all bookings; busy hours, helpers, and what was written down as it went.
class DiaryPlace : public Place {
    Q_OBJECT

public:
    DiaryPlace(Workbench& bench, QWidget* parent);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;
    [[nodiscard]] QString helpPage() const override;
    void enter() override;

private:
    SubPages* pages_;
};

} // namespace withy::ui
