// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/run_up_layout.h"

#include <QTimer>
#include <QWidget>

namespace withy::ui {

/// The drawn run-up. Up and Down choose a step, Left and Right move it by five minutes (with Shift by an
/// hour), Space and Enter tick it off, Delete lets it go; the mouse drags it. It changes nothing itself.
class RunUpTimeline : public QWidget {
    Q_OBJECT

public:
    RunUpTimeline(BoardStyle style, const QString& name, QWidget* parent = nullptr);

    /// Keeps the chosen step where the new board has it still.
    void setBoard(Board board);

    [[nodiscard]] const Board& board() const { return board_; }

    /// Index into RunUpPlan::steps.
    void choose(std::optional<std::size_t> step);

    [[nodiscard]] std::optional<std::size_t> chosen() const { return chosen_; }

    /// Where a step is drawn; empty when it is not.
    [[nodiscard]] QRect rectOf(std::size_t step) const;

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void chose(std::optional<std::size_t> step);
    /// To be kept so many minutes later, or earlier with a minus.
    void moved(std::size_t step, int minutes);
    void ticked(std::size_t step);
    void letGo(std::size_t step);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] const BoardBox& boxAt(const LaidBox& laid) const;
    [[nodiscard]] std::vector<std::size_t> stepsInOrder() const;
    [[nodiscard]] const BoardBox* boxOf(std::size_t step) const;
    void layOut();
    void chooseNext(int by);
    void shift(int minutes);
    void settle();

    BoardStyle style_;
    Board board_;
    RunUpLayout layout_;
    std::optional<std::size_t> chosen_;
    std::int64_t moving_ = 0; ///< minutes, not yet told
    std::optional<double> grabbed_;
    QTimer settle_; ///< several presses of a key are one move
};

} // namespace withy::ui
