// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/plan/shed_plan.h"
#endif
#include "ui/bookings/booking_tab.h"

class QBoxLayout;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class FigureButton;
class SceneView;
class TextLabel;
class WorkingPanel;

/// How the booking is packed: trays from above, what goes onto the floor in which order, water to carry.
class PackingPart : public BookingTab {
    Q_OBJECT

public:
    explicit PackingPart(Workbench& bench, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;
    void enter() override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void fillLoad();
    void fillWater();

    std::optional<Id<model::Booking>> booking_;
    std::shared_ptr<const plan::BookingPacking> packed_;
    AnswerLabel* answer_;
    TextLabel* traysHead_;
    SceneView* trays_;
    TextLabel* loadHead_;
    QBoxLayout* both_;
    SceneView* floor_;
    QVBoxLayout* load_;
    FigureButton* carry_;
    WorkingPanel* working_;
    TextLabel* waterHead_;
    QVBoxLayout* water_;
    TextLabel* caution_;
};

} // namespace withy::ui
