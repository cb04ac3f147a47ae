// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/shelf_rows.h"
#include "ui/paint/piece_drawing.h"
#endif

#include <QWidget>

class QGridLayout;

namespace withy::ui {

class FigureButton;
class FreeGraph;
class TextLabel;
class VesselPicture;
class WorkingPanel;

/// One thing on the shelf: its figures, what is free through time, and the lowest of it, which opens. Where
/// it is narrow the graph stands below the figures.
class ShelfRowView : public QWidget {
    Q_OBJECT

public:
    explicit ShelfRowView(const QString& name, QWidget* parent = nullptr);
    void setRow(const ShelfRow& row, std::optional<Day> today);
    void setNarrow(bool narrow);
    /// Drawn before its name; blank: no container.
    void setVessel(const std::optional<VesselDrawing>& vessel);

    [[nodiscard]] const ShelfRow& row() const { return row_; }

    [[nodiscard]] FigureButton* figure() const { return lowest_; }

    /// Widths of the columns of figures, for the heads above them.
    static int nameWidth();
    static int figureWidth();
    static int lowestWidth();

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);

protected:
    void changeEvent(QEvent* event) override;

private:
    void dress();
    void lay();

    ShelfRow row_;
    bool narrow_ = false;
    QGridLayout* grid_;
    QWidget* names_;
    VesselPicture* vessel_;
    TextLabel* name_;
    TextLabel* under_;
    std::vector<TextLabel*> figures_;
    FreeGraph* graph_;
    QWidget* ends_;
    FigureButton* lowest_;
    TextLabel* because_;
    WorkingPanel* working_;
};

} // namespace withy::ui
