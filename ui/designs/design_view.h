// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/drawn_design.h"

namespace withy::ui {

/// The piece from the side, to scale, with its heights, spread and water beside it.
class DesignView : public DrawnDesign {
    Q_OBJECT

public:
    explicit DesignView(Workbench& bench, QWidget* parent = nullptr);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void redrawn() override;
};

} // namespace withy::ui
