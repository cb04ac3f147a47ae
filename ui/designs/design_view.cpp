// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_view.h"

#include "ui/common/style.h"
#include "ui/common/when_seen.h"
#include "ui/designs/bench_handle.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/models/water_view.h"
#include "ui/paint/head_pictures.h"
#include "ui/paint/piece_layout.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace withy::ui {

namespace {

constexpr std::chrono::milliseconds headsSlice{5}; ///< of a frame's 16, for pictures of heads
/// Then it is drawn in one go: more heads than pictures are kept would never be done.
constexpr int mostSlices = 60;

} // namespace

DesignView::DesignView(Workbench& bench, QWidget* parent) : DrawnDesign(bench, nullptr, parent) {
    setObjectName(QStringLiteral("designs.drawing"));
    goOn_.setSingleShot(true);
    connect(&goOn_, &QTimer::timeout, this, qOverload<>(&DesignView::update));
    for (const auto handle : benchHandles) {
        auto* knob = new BenchKnob(handle, this);
        connect(knob, &BenchKnob::pulled, this, [this, handle](QPointF to) { pull(handle, to); });
        connect(knob, &BenchKnob::nudged, this, [this, handle](int mm) { nudge(handle, mm); });
        connect(knob, &BenchKnob::letGo, this, [this, handle] { keep(handle); });
        connect(knob, &BenchKnob::given, this, &DesignView::giveBack);
        knobs_.push_back(knob);
    }
    auto* seen = new WhenSeen(this, [this] {
        measureGrown();
        update();
    });
    connect(&DrawnDesign::bench(), &Workbench::planned, seen, &WhenSeen::ask);
}

QSize DesignView::sizeHint() const {
    return {grid(110), grid(110)};
}

QSize DesignView::minimumSizeHint() const {
    return {grid(70), grid(70)};
}

double DesignView::length(BenchHandle handle) const {
    return handleLength(shown(), handle);
}

Elevation DesignView::elevation() const {
    Elevation drawn(shown(), pulled_ ? frame_ : bounds(), rect(), currentPalette(), bench().season());
    drawn.setGrownTop(grownTop_);
    return drawn;
}

void DesignView::redrawn() {
    pulled_.reset();
    if (!isThere()) return;
    setAccessibleDescription(elevationWords(piece(), bench().season()));
    measureGrown();
    placeKnobs();
}

/// How long its stems stand in water the plan says, which comes after the edit.
void DesignView::measureGrown() {
    grownTop_ = 0;
    if (!isThere()) return;
    const auto stood = nextStanding(bench().season(), bench().plan(), *design(), bench().today());
    if (stood.empty()) return;
    double top = 0;
    for (const auto& stem : placeStems(grownPiece(bench().season(), *design(), stood)))
        top = std::max(top, stem.top());
    // Half a millimetre is nothing to speak of.
    if (top > piece().tall + 0.5) grownTop_ = top;
}

void DesignView::placeKnobs() {
    if (!isThere()) return;
    const auto drawn = elevation();
    for (auto* knob : knobs_) {
        const auto at = drawn.handleAt(knob->handle());
        knob->setVisible(at.has_value());
        if (!at) continue;
        knob->standAt(*at);
        knob->say(handleWords(shown(), knob->handle(), bench().season()));
    }
}

void DesignView::pull(BenchHandle handle, QPointF to) {
    if (isThere()) showLength(handle, static_cast<double>(elevation().lengthAt(handle, to)));
}

void DesignView::nudge(BenchHandle handle, int millimetres) {
    if (isThere()) showLength(handle, std::max(length(handle) + millimetres, 0.0));
}

void DesignView::showLength(BenchHandle handle, double millimetres) {
    if (!pulled_) {
        frame_ = bounds();
        pulled_ = piece();
    }
    setHandleLength(*pulled_, handle, millimetres);
    placeKnobs();
    update();
}

void DesignView::keep(BenchHandle handle) {
    if (!pulled_ || !isThere()) return;
    const auto mm = std::llround(handleLength(*pulled_, handle));
    const bool moved = mm != std::llround(handleLength(piece(), handle));
    if (moved) {
        const QString trouble =
            bench().apply(edits::setField(bench().season(), {model::TableKind::designs, design()->value},
                                          handleField(handle), model::Value(std::int64_t{mm})));
        Q_EMIT refused(trouble);
    }
    giveBack(); // refused: back to what it was; taken: the season's own drawing is there already
}

void DesignView::giveBack() {
    pulled_.reset();
    placeKnobs();
    update();
}

/// Painted once for what it shows: knobs that light up under the pointer do not draw it again.
const QPixmap& DesignView::drawnPiece(const Elevation& drawn) {
    const Kept now{shown(), drawn.scale(), drawn.foot(), size(), currentPalette().theme, devicePixelRatioF()};
    const bool same = kept_ == now;
    if (same && whole_) return picture_;
    if (!same) {
        kept_ = now;
        parts_ = pieceParts(shown(), drawn.scale(), currentPalette());
    }
    if (picture_.size() != size() * now.ratio) picture_ = QPixmap(size() * now.ratio);
    picture_.setDevicePixelRatio(now.ratio);
    picture_.fill(Qt::transparent);
    QPainter painter(&picture_);
    painter.translate(drawn.foot());
    slices_ = same ? slices_ + 1 : 0;
    const auto until = slices_ < mostSlices ? QDeadlineTimer(headsSlice) : QDeadlineTimer::Forever;
    whole_ = HeadPictures::ofProgram().paint(painter, parts_, now.theme, until);
    if (!whole_) goOn_.start();
    return picture_;
}

void DesignView::paintEvent(QPaintEvent*) {
    if (!isThere()) return;
    QPainter painter(this);
    const auto drawn = elevation();
    drawn.paintBehind(painter);
    painter.drawPixmap(0, 0, drawnPiece(drawn));
    drawn.paintNumbers(painter);
}

void DesignView::resizeEvent(QResizeEvent* event) {
    DrawnDesign::resizeEvent(event);
    placeKnobs();
}

void DesignView::changeEvent(QEvent* event) {
    DrawnDesign::changeEvent(event);
    if (event->type() == QEvent::StyleChange) placeKnobs();
}

} // namespace withy::ui
