// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/run_up_timeline.h"

#include "ui/common/run_up_paint.h"
#include "ui/common/style.h"
#include "ui/paint/spacing.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr int stillMoving = 600; ///< ms between two presses of a key that are one move
constexpr int step5 = 5;

bool canMove(const BoardBox& box) {
    return box.step && box.mine && !box.done && (box.look == BoardLook::step || box.look == BoardLook::round);
}

} // namespace

RunUpTimeline::RunUpTimeline(BoardStyle style, const QString& name, QWidget* parent)
    : QWidget(parent), style_(style) {
    setObjectName(name);
    setAccessibleName(tr("The work drawn by day and hour"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    settle_.setSingleShot(true);
    settle_.setInterval(stillMoving);
    connect(&settle_, &QTimer::timeout, this, &RunUpTimeline::settle);
}

void RunUpTimeline::setBoard(Board board) {
    settle_.stop();
    moving_ = 0;
    board_ = std::move(board);
    if (chosen_ && !boxOf(*chosen_)) chosen_.reset();
    layOut();
}

void RunUpTimeline::layOut() {
    layout_ = RunUpLayout(board_, style_, width());
    setFixedHeight(std::max(1, static_cast<int>(std::ceil(layout_.height()))));
    updateGeometry();
    update();
}

QSize RunUpTimeline::sizeHint() const {
    return {grid(200), static_cast<int>(std::ceil(layout_.height()))};
}

const BoardBox& RunUpTimeline::boxAt(const LaidBox& laid) const {
    const auto& at = laid.place;
    return board_.days[at.day].lanes[at.lane].boxes[at.box];
}

const BoardBox* RunUpTimeline::boxOf(std::size_t step) const {
    for (const auto& day : board_.days)
        for (const auto& lane : day.lanes)
            for (const auto& box : lane.boxes)
                if (box.step == step) return &box;
    return nullptr;
}

QRect RunUpTimeline::rectOf(std::size_t step) const {
    for (const auto& laid : layout_.boxes())
        if (boxAt(laid).step == step) return laid.box.toAlignedRect();
    return {};
}

/// As they are read: day by day, each once.
std::vector<std::size_t> RunUpTimeline::stepsInOrder() const {
    std::vector<std::size_t> steps;
    for (const auto& day : board_.days) {
        std::vector<const BoardBox*> boxes;
        for (const auto& lane : day.lanes)
            for (const auto& box : lane.boxes)
                if (box.step && box.mine) boxes.push_back(&box);
        std::stable_sort(boxes.begin(), boxes.end(),
                         [](const auto* a, const auto* b) { return a->from < b->from; });
        for (const auto* box : boxes)
            if (std::find(steps.begin(), steps.end(), *box->step) == steps.end()) steps.push_back(*box->step);
    }
    return steps;
}

void RunUpTimeline::choose(std::optional<std::size_t> step) {
    if (step == chosen_) return;
    settle();
    chosen_ = step;
    const auto* box = step ? boxOf(*step) : nullptr;
    setAccessibleDescription(box ? box->spoken : QString());
    QAccessibleEvent told(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
    update();
}

void RunUpTimeline::chooseNext(int by) {
    const auto steps = stepsInOrder();
    if (steps.empty()) return;
    const auto at = chosen_ ? std::find(steps.begin(), steps.end(), *chosen_) : steps.end();
    auto next = static_cast<std::ptrdiff_t>(0);
    if (at != steps.end())
        next = std::clamp<std::ptrdiff_t>(at - steps.begin() + by, 0,
                                          static_cast<std::ptrdiff_t>(steps.size()) - 1);
    choose(steps[static_cast<std::size_t>(next)]);
    Q_EMIT chose(chosen_);
}

void RunUpTimeline::shift(int minutes) {
    const auto* box = chosen_ ? boxOf(*chosen_) : nullptr;
    if (!box || !canMove(*box)) return;
    moving_ += minutes;
    settle_.start();
    update();
}

void RunUpTimeline::settle() {
    settle_.stop();
    const auto by = std::exchange(moving_, 0);
    if (by != 0 && chosen_) Q_EMIT moved(*chosen_, static_cast<int>(by));
    update();
}

bool RunUpTimeline::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    auto* help = static_cast<QHelpEvent*>(event);
    const auto* laid = layout_.at(board_, help->pos());
    if (laid)
        QToolTip::showText(help->globalPos(), boxAt(*laid).spoken, this, laid->box.toAlignedRect());
    else
        QToolTip::hideText();
    return true;
}

void RunUpTimeline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paintRunUp(painter, board_, layout_, style_, currentPalette(), {chosen_, hasFocus(), moving_});
    if (!hasFocus() || chosen_) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(currentPalette().of(Role::green), focusRing));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void RunUpTimeline::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) layOut();
}

void RunUpTimeline::keyPressEvent(QKeyEvent* event) {
    const int by = event->modifiers() & Qt::ShiftModifier ? 60 : step5;
    switch (event->key()) {
    case Qt::Key_Down:
        return chooseNext(1);
    case Qt::Key_Up:
        return chooseNext(-1);
    case Qt::Key_Right:
        return shift(by);
    case Qt::Key_Left:
        return shift(-by);
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        settle();
        if (chosen_) Q_EMIT ticked(*chosen_);
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        settle();
        if (chosen_) Q_EMIT letGo(*chosen_);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void RunUpTimeline::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    const auto* laid = layout_.at(board_, event->position());
    const auto* box = laid ? &boxAt(*laid) : nullptr;
    choose(box ? box->step : std::nullopt);
    Q_EMIT chose(chosen_);
    if (box && canMove(*box)) grabbed_ = event->position().x();
}

void RunUpTimeline::mouseMoveEvent(QMouseEvent* event) {
    if (!grabbed_) {
        const auto* laid = layout_.at(board_, event->position());
        setCursor(laid && canMove(boxAt(*laid)) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        return;
    }
    const double perHour = layout_.xOfHour(1) - layout_.xOfHour(0);
    const double minutes = (event->position().x() - *grabbed_) * 60 / std::max(1.0, perHour);
    moving_ = std::llround(minutes / step5) * step5;
    update();
}

void RunUpTimeline::mouseReleaseEvent(QMouseEvent* event) {
    if (!grabbed_) return QWidget::mouseReleaseEvent(event);
    grabbed_.reset();
    settle();
}

void RunUpTimeline::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (!chosen_ && event->reason() != Qt::MouseFocusReason) chooseNext(0);
    update();
}

void RunUpTimeline::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    settle();
}

void RunUpTimeline::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) layOut();
}

} // namespace withy::ui
