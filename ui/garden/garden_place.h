// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

namespace withy::ui {

class SubPages;

/// What grows and what stands ready: patches, plants and their facts, walks, weather, past blooms, stock.
class GardenPlace : public Place {
    Q_OBJECT

public:
    GardenPlace(Workbench& bench, QWidget* parent);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;
    [[nodiscard]] QString helpPage() const override;
    void enter() override;

private:
    SubPages* pages_;
};

} // namespace withy::ui
