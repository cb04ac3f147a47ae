// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/drawn_design.h"

namespace withy::ui {

/// The piece from above: on its table among the place settings where it is placed on one, else alone.
class FromAbove : public DrawnDesign {
    Q_OBJECT

public:
    explicit FromAbove(Workbench& bench, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void redrawn() override;

private:
    /// The table it is next placed on, and how many stand there.
    const model::VenueTable* table_ = nullptr;
    std::int64_t perTable_ = 1;
    QString words_;
};

} // namespace withy::ui
