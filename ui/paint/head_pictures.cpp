// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/head_pictures.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

/// Diameters go up by a twelfth of an octave, 6 %: lines keep their widths to 3 %.
constexpr double stepsAnOctave = 12;
/// Larger heads (device pixels) are drawn as paths: there are few of them, and their pictures are large.
constexpr double largestKept = 400;
/// A picture's pixels a device pixel, so that it is laid down between pixels without a blur.
constexpr double fine = 1.5;
constexpr double headLineRoom = 3;

int stepOf(double diameter) {
    return static_cast<int>(std::lround(std::log2(diameter) * stepsAnOctave));
}

double diameterOf(int step) {
    return std::exp2(step / stepsAnOctave);
}

/// As large as the head, in its colour: for the moment until its picture is made.
void paintPlain(QPainter& painter, const Head& head, const QColor& edge) {
    QRectF box = headOutline(head.form, head.diameter, 0);
    box = box.adjusted(box.width() * 0.06, box.height() * 0.06, -box.width() * 0.06, -box.height() * 0.06);
    painter.setPen(QPen(edge, 1));
    painter.setBrush(head.bloom);
    painter.drawEllipse(box);
}

/// Qt shares pictures of 96 rows and more out to threads of its own and waits for them, which takes longer
/// than it saves and much longer while a plan is being made: they are laid down in lower bands.
void lay(QPainter& painter, QPoint corner, const QImage& image) {
    constexpr int mostRows = 90;
    const auto to = painter.deviceTransform();
    const QRect box = to.mapRect(QRectF(corner, image.size())).toAlignedRect();
    const QRect seen = box.intersected({0, 0, painter.device()->width(), painter.device()->height()});
    if (seen.height() <= mostRows) return painter.drawImage(corner, image);
    const auto drawn = painter.worldTransform();
    const auto ratio = painter.device()->devicePixelRatioF();
    for (int top = seen.top(); top <= seen.bottom(); top += mostRows) {
        painter.save();
        painter.resetTransform();
        painter.setClipRect(QRectF(seen.left() / ratio, top / ratio, seen.width() / ratio, mostRows / ratio),
                            Qt::IntersectClip);
        painter.setWorldTransform(drawn);
        painter.drawImage(corner, image);
        painter.restore();
    }
}

} // namespace

size_t qHash(const HeadKey& key, size_t seed) {
    const auto& l = key.look;
    return qHashMulti(seed, static_cast<int>(l.form), l.bloom.rgb(), l.eye.rgb(), l.edge.rgb(), l.turn,
                      l.left, key.size, key.percent);
}

HeadPictures::HeadPictures(qsizetype mostBytes) : kept_(mostBytes) {}

HeadPictures& HeadPictures::ofProgram() {
    static HeadPictures pictures;
    return pictures;
}

bool HeadPictures::paint(QPainter& painter, const PieceParts& parts, Theme theme, QDeadlineTimer until) {
    withy::ui::paint(painter, parts.behind);
    painter.save();
    // A picture's edge is clear, so it needs no antialiasing, which takes three times as long.
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const double ratio = painter.device()->devicePixelRatioF();
    const auto from = painter.worldTransform();
    bool all = true;
    for (const auto& placed : parts.heads) {
        painter.setWorldTransform(from);
        painter.translate(placed.at);
        painter.rotate(turnedBy(placed.head) + placed.turned);
        all &= paintHead(painter, placed, theme, ratio, until);
    }
    painter.restore();
    withy::ui::paint(painter, parts.front);
    return all;
}

bool HeadPictures::paintHead(QPainter& painter, const PlacedHead& placed, Theme theme, double ratio,
                             const QDeadlineTimer& until) {
    const Head& head = placed.head;
    if (!(head.diameter > 0)) return true;
    const HeadLook look = lookOf(head, theme);
    if (head.diameter * ratio > largestKept) {
        withy::ui::paint(painter, uprightHead(look, head.diameter));
        return true;
    }
    const HeadKey key{look, stepOf(head.diameter), static_cast<int>(std::lround(ratio * 100))};
    auto picture = find(key);
    bool own = !picture.image.isNull();
    if (!own && !until.hasExpired()) {
        picture = make(key);
        own = true;
    }
    if (!own) picture = ofOtherSize(key);
    if (picture.image.isNull()) {
        paintPlain(painter, head, look.edge);
        return false;
    }
    const double k = head.diameter / picture.diameter;
    painter.scale(k, k);
    lay(painter, picture.corner, picture.image);
    return own;
}

HeadPictures::Picture HeadPictures::find(const HeadKey& key) const {
    const std::lock_guard lock(mutex_);
    const auto* kept = kept_.object(key);
    return kept ? *kept : Picture();
}

/// The nearest within an octave either way.
HeadPictures::Picture HeadPictures::ofOtherSize(HeadKey key) const {
    const std::lock_guard lock(mutex_);
    const int wanted = key.size;
    for (int apart = 1; apart <= static_cast<int>(stepsAnOctave); ++apart) {
        for (const int side : {1, -1}) {
            key.size = wanted + side * apart;
            if (const auto* kept = kept_.object(key)) return *kept;
        }
    }
    return {};
}

HeadPictures::Picture HeadPictures::make(const HeadKey& key) {
    const double scale = fine * key.percent / 100;
    const double diameter = diameterOf(key.size);
    const Sketch sketch = uprightHead(key.look, diameter);
    const QRectF box = boundsOf(sketch).adjusted(-headLineRoom, -headLineRoom, headLineRoom, headLineRoom);
    const QRect pixels = QRectF(box.topLeft() * scale, box.size() * scale).toAlignedRect();
    Picture made{QImage(pixels.size(), QImage::Format_ARGB32_Premultiplied), pixels.topLeft(),
                 diameter * scale};
    made.image.fill(Qt::transparent);
    QPainter painter(&made.image);
    painter.translate(-pixels.topLeft());
    painter.scale(scale, scale);
    withy::ui::paint(painter, sketch);
    painter.end();
    const std::lock_guard lock(mutex_);
    kept_.insert(key, new Picture(made), made.image.sizeInBytes());
    return made;
}

void HeadPictures::clear() {
    const std::lock_guard lock(mutex_);
    kept_.clear();
}

qsizetype HeadPictures::bytes() const {
    const std::lock_guard lock(mutex_);
    return kept_.totalCost();
}

qsizetype HeadPictures::count() const {
    const std::lock_guard lock(mutex_);
    return kept_.count();
}

} // namespace withy::ui
