// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class ColourBalance;
class FigureButton;
class LineUp;
class PieceField;
class PiecePictures;
class PieceRowView;
class Segments;
class TextLabel;
class WorkingPanel;

/// The pieces of a booking: the answer, what they look like side by side, and a row for each.
class PiecesTab : public BookingTab {
    Q_OBJECT

public:
    explicit PiecesTab(Workbench& bench, QWidget* parent = nullptr);

    void show(std::optional<Id<model::Booking>> id) override;

    [[nodiscard]] bool scrollsItself() const override { return false; }

    void enter() override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeHeads();
    QWidget* makeAdd();
    QWidget* makeFoot();
    void refresh();
    void layRows();
    void showFigures();
    void showTotals(const plan::BookingPlan* plan);
    void openTotal(FigureButton* figure, bool open);
    QWidget* makeColours();
    void showColours();
    void offerTables();
    void add(const QString& typed);
    void makeSpare();
    void arrange();
    void take(const model::Edit& edit);
    [[nodiscard]] std::vector<const model::Line*> lines() const;

    std::optional<Id<model::Booking>> id_;
    PiecePictures* pictures_;
    AnswerLabel* answer_;
    LineUp* lineUp_;
    QWidget* heads_;
    QVBoxLayout* rows_;
    std::vector<PieceRowView*> views_;
    PieceField* add_ = nullptr;
    TextLabel* spare_ = nullptr;
    QPushButton* makeSpare_ = nullptr;
    FigureButton* making_ = nullptr; ///< of all pieces
    FigureButton* worth_ = nullptr;
    TextLabel* worthWords_ = nullptr;
    WorkingPanel* working_ = nullptr;
    QWidget* foot_ = nullptr;
    ColourBalance* colours_ = nullptr;
    QBoxLayout* colourOf_ = nullptr; ///< holds what to look at: all pieces, or one table
    Segments* whose_ = nullptr;
    std::vector<Id<model::VenueTable>> tables_;
    ColourBalance* counted_ = nullptr; ///< by what was cut; once something is tallied
    bool stale_ = true;                ///< not filled since it was last seen
};

} // namespace withy::ui
