// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/water_view.h"
#endif

#include <QWidget>

namespace withy::ui {

class FigureButton;
class TextLabel;
class WorkingPanel;

/// The water's level from the make-up to the last hour: the level falling, the stem ends as a line, the
/// moment to top up, and where it would run dry.
class WaterCurve : public QWidget {
    Q_OBJECT

public:
    explicit WaterCurve(QWidget* parent = nullptr);
    void setView(const WaterView& view);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF plot() const;
    [[nodiscard]] QPointF at(double hours, double mm) const;
    void paintLevel(QPainter& painter) const;
    void paintMoments(QPainter& painter) const;
    void paintFoot(QPainter& painter) const;

    WaterView view_;
};

/// The curve, what it says, and the litres to carry with their working.
class WaterPanel : public QWidget {
    Q_OBJECT

public:
    explicit WaterPanel(QWidget* parent = nullptr);
    void setView(const WaterView& view);

private:
    TextLabel* head_;
    FigureButton* litres_;
    WaterCurve* curve_;
    TextLabel* words_;
    WorkingPanel* working_;
};

} // namespace withy::ui
