// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/booking_pieces.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

class QGridLayout;
class QPushButton;

namespace withy::ui {

class DrawnDesign;
class FigureButton;
class PieceDetails;
class Stepper;
class TextLabel;
class WorkingPanel;

/// One design of a booking: how many, where, what it takes and is worth. Its working and its details open
/// below it, one at a time.
class PieceRowView : public QWidget {
    Q_OBJECT

public:
    PieceRowView(Workbench& bench, Id<model::Line> line, QWidget* parent = nullptr);

    /// Never writes; what is being typed stays.
    void refresh();
    void setNarrow(bool narrow);
    void setPicture(DrawnDesign* picture);

    [[nodiscard]] Id<model::Line> line() const { return line_; }

    void openDetails(bool open);

Q_SIGNALS:
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);

private:
    void makeParts();
    void connectParts();
    void arrange();
    void openWorking(FigureButton* figure, bool open);
    void shutOthers(QWidget* but);
    void take(const model::Edit& edit);

    Workbench& bench_;
    Id<model::Line> line_;
    Id<model::Design> design_;
    QGridLayout* grid_;
    DrawnDesign* picture_ = nullptr;
    QPushButton* name_ = nullptr;
    TextLabel* stands_ = nullptr;
    Stepper* pieces_ = nullptr;
    Stepper* spare_ = nullptr;
    FigureButton* stems_ = nullptr;
    TextLabel* stemsWords_ = nullptr;
    FigureButton* making_ = nullptr;
    QPushButton* where_ = nullptr;
    TextLabel* worth_ = nullptr;
    TextLabel* priced_ = nullptr;
    WorkingPanel* working_ = nullptr;
    PieceDetails* details_ = nullptr;
    bool narrow_ = false;
};

/// Widths shared by the head and its rows.
struct PieceColumns {
    static int picture();
    static int count();
    static int worth();
    static int gap();
};

} // namespace withy::ui
