// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/table_scenes.h"
#endif
#include "ui/bookings/booking_tab.h"

class QBoxLayout;
class QButtonGroup;
class QRadioButton;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class FigureButton;
class SceneView;
class TextLabel;
class WorkingPanel;

/// The table plan: the venue's tables from above with what stands on them, one kind near to and from its end.
class TablesPart : public BookingTab {
    Q_OBJECT

public:
    explicit TablesPart(Workbench& bench, QWidget* parent = nullptr);
    void show(std::optional<Id<model::Booking>> id) override;
    using QWidget::show;
    void enter() override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void fillKinds();
    void makeKinds(const std::vector<Id<model::VenueTable>>& ids);
    void choose(std::size_t kind);
    void showChosen();
    void makeNear(QVBoxLayout& column);

    [[nodiscard]] std::shared_ptr<const plan::BookingTables> tables() const;

    std::optional<Id<model::Booking>> booking_;
    std::shared_ptr<const plan::BookingTables> shown_;
    std::size_t chosen_ = 0;
    Hall hall_;
    AnswerLabel* answer_;
    QBoxLayout* both_;
    SceneView* hallView_;
    QWidget* side_;
    TextLabel* hallNote_;
    QVBoxLayout* kinds_;
    QButtonGroup* group_;
    std::vector<Id<model::VenueTable>> kindIds_; ///< of the buttons in `group_`
    TextLabel* nearHead_;
    SceneView* near_;
    SceneView* end_;
    FigureButton* fit_;
    TextLabel* facts_;
    WorkingPanel* working_;
};

} // namespace withy::ui
