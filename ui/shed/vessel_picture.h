// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/paint/vessel_sketch.h"

#include <QPainter>
#include <QWidget>

#include <algorithm>
#include <optional>

namespace withy::ui {

/// One container as it stands on the shelf, empty: to scale with its neighbours, a large one as it fits.
class VesselPicture : public QWidget {
public:
    explicit VesselPicture(QWidget* parent = nullptr) : QWidget(parent) { fixedOnGrid(this, 13, 11); }

    void setVessel(const std::optional<VesselDrawing>& vessel) {
        vessel_ = vessel;
        setVisible(vessel.has_value());
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override {
        if (!vessel_) return;
        constexpr double usualHeight = 130; // mm: a jar's, with air
        const double line = 2;
        const double across = std::max({vessel_->width, vessel_->rim, vessel_->base});
        const double up = vessel_->height + vessel_->stand;
        const double scale = std::min({(height() - 2 * line) / std::max(up, usualHeight),
                                       (width() - 2 * line) / std::max(across, 1.0)});
        auto sketch = vesselSketch(*vessel_, scale, PieceColours::of(currentPalette()), false);
        QPainter painter(this);
        painter.translate(width() / 2.0, height() - line);
        paint(painter, sketch.behind);
        paint(painter, sketch.front);
    }

private:
    std::optional<VesselDrawing> vessel_;
};

} // namespace withy::ui
