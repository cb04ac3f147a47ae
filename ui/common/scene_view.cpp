// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/scene_view.h"

#include "ui/common/style.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QEvent>
#include <QMouseEvent>
#include <QPainter>

#include <cmath>

namespace withy::ui {

SceneView::SceneView(const QString& name, const QString& accessibleName, QWidget* parent) : QWidget(parent) {
    setObjectName(name);
    setAccessibleName(accessibleName);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SceneView::setMaker(Maker maker) {
    maker_ = std::move(maker);
    make();
}

void SceneView::remake() {
    make();
}

void SceneView::make() {
    scene_ = maker_ ? maker_(std::max(width(), grid(40)), {currentPalette(), false}) : Scene();
    setAccessibleDescription(scene_.inWords);
    const int tall = std::max(0, static_cast<int>(std::ceil(scene_.size.height())));
    if (minimumHeight() != tall) setFixedHeight(tall);
    update();
}

QSize SceneView::sizeHint() const {
    return {grid(100), std::max(0, static_cast<int>(std::ceil(scene_.size.height())))};
}

QSize SceneView::minimumSizeHint() const {
    return {grid(40), sizeHint().height()};
}

void SceneView::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    paint(p, scene_.sketch);
    const auto& palette = currentPalette();
    for (const auto& label : scene_.labels) {
        QFont font = typeFont(TypeRole::caption);
        if (label.strong) font.setWeight(QFont::Bold);
        p.setFont(font);
        const QFontMetricsF metrics(font);
        const double room = label.share == 0 ? width() - label.at.x() : 1e6;
        const QString words = metrics.elidedText(label.words, Qt::ElideRight, room);
        p.setPen(palette.of(label.role));
        p.drawText(QPointF(label.at.x() - label.share * metrics.horizontalAdvance(words),
                           label.at.y() + metrics.capHeight() / 2),
                   words);
    }
}

void SceneView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) make();
}

void SceneView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) make();
}

void SceneView::mousePressEvent(QMouseEvent* event) {
    Q_EMIT pressed(event->position());
}

} // namespace withy::ui
