// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

namespace withy::ui {

class SubPages;

/// The season as a whole: its orders, settings, usual figures, backups, tables as files.
class SeasonPlace : public Place {
    Q_OBJECT

public:
    SeasonPlace(Workbench& bench, QWidget* parent);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;
    [[nodiscard]] QString helpPage() const override;
    void enter() override;

private:
    SubPages* pages_;
};

} // namespace withy::ui
