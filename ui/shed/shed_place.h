// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

namespace withy::ui {

class SubPages;

/// What stands on the shelves: containers, ribbons, sundries, trays and buckets, vehicles.
class ShedPlace : public Place {
    Q_OBJECT

public:
    ShedPlace(Workbench& bench, QWidget* parent);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;
    [[nodiscard]] QString helpPage() const override;
    void enter() override;

private:
    SubPages* pages_;
};

} // namespace withy::ui
