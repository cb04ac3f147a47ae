// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_pictures.h"

#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr double room = 3;          ///< for lines, see fittingScale()
constexpr double mostPixels = 4000; ///< a side; larger pieces are cut off

PiecePictures::Picture drawn(const PiecePictures::Wanted& w) {
    const QRectF mm = pieceBoundsMm(w.piece);
    const QRectF px(mm.topLeft() * w.scale, mm.size() * w.scale);
    const QSizeF size(std::min(px.width() + 2 * room, mostPixels),
                      std::min(px.height() + 2 * room, mostPixels));
    QImage image((size * w.devicePixelRatio).toSize().expandedTo({1, 1}),
                 QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(w.devicePixelRatio);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    PiecePaintOptions options;
    options.palette = Palette{w.theme};
    options.scale = w.scale;
    options.lineOnly = w.lineOnly;
    paintPiece(painter, w.piece, QRectF(QPointF(), size), options);
    return {image, QPointF(size.width() / 2 - px.center().x(), size.height() - room - px.bottom())};
}

} // namespace

PiecePictures::PiecePictures(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

PiecePictures::~PiecePictures() {
    pool_.clear();
    pool_.waitForDone();
}

PiecePictures::Picture PiecePictures::picture(qint64 key, const Wanted& wanted) {
    auto& kept = kept_[key];
    if (kept.wanted == wanted && (!kept.picture.image.isNull() || drawing_ > 0)) return kept.picture;
    kept.wanted = wanted;
    ++drawing_;
    pool_.start([this, key, wanted] {
        const auto picture = drawn(wanted);
        QMetaObject::invokeMethod(
            this, [this, key, wanted, picture] { take(key, wanted, picture); }, Qt::QueuedConnection);
    });
    return kept.picture;
}

void PiecePictures::take(qint64 key, const Wanted& wanted, const Picture& picture) {
    --drawing_;
    const auto kept = kept_.find(key);
    if (kept == kept_.end() || !(kept->wanted == wanted)) return; // changed again meanwhile
    kept->picture = picture;
    Q_EMIT ready(key);
}

void PiecePictures::keepOnly(const QList<qint64>& keys) {
    for (auto it = kept_.begin(); it != kept_.end();)
        it = keys.contains(it.key()) ? std::next(it) : kept_.erase(it);
}

} // namespace withy::ui
