// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_pictures.h"

#include "ui/paint/head_pictures.h"
#include "ui/paint/piece_plan.h"

#include <QPainter>
#include <QSet>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr double room = 3;          ///< for lines, see fittingScale()
constexpr double mostPixels = 4000; ///< a side; larger pieces are cut off
constexpr int inView = 1, notInView = 0;

void paintWanted(QPainter& painter, const PiecePictures::Wanted& w, const QSizeF& size, QPointF foot) {
    PiecePaintOptions options;
    options.palette = Palette{w.theme};
    options.scale = w.scale;
    options.lineOnly = w.lineOnly;
    if (w.lineOnly) return paintPiece(painter, w.piece, QRectF(QPointF(), size), options);
    painter.translate(foot);
    if (w.fromAbove) {
        FromAboveLook look;
        look.palette = options.palette;
        return paint(painter, pieceFromAbove(w.piece, w.scale, look));
    }
    HeadPictures::ofProgram().paint(painter, pieceParts(w.piece, w.scale, options.palette), w.theme);
}

QRectF boundsFromAbove(const PieceDrawing& piece) {
    const double across = acrossFromAbove(piece);
    return {-across / 2, -across / 2, across, across};
}

PiecePictures::Picture drawn(const PiecePictures::Wanted& w) {
    const QRectF mm = w.fromAbove ? boundsFromAbove(w.piece) : pieceBoundsMm(w.piece);
    const QRectF px(mm.topLeft() * w.scale, mm.size() * w.scale);
    const QSizeF size(std::min(px.width() + 2 * room, mostPixels),
                      std::min(px.height() + 2 * room, mostPixels));
    QImage image((size * w.devicePixelRatio).toSize().expandedTo({1, 1}),
                 QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(w.devicePixelRatio);
    image.fill(Qt::transparent);
    const QPointF foot(size.width() / 2 - px.center().x(), size.height() - room - px.bottom());
    QPainter painter(&image);
    paintWanted(painter, w, size, foot);
    return {image, foot, w.scale};
}

} // namespace

PiecePictures::PiecePictures(QObject* parent, qsizetype mostBytes) : QObject(parent), mostBytes_(mostBytes) {
    pool_.setMaxThreadCount(1);
}

PiecePictures::~PiecePictures() {
    pool_.clear();
    pool_.waitForDone();
}

PiecePictures::Picture PiecePictures::picture(qint64 key, const Wanted& wanted) {
    auto& kept = kept_[key];
    kept.asked = ++turns_;
    const bool same = kept.wanted == wanted;
    if (!(same && (kept.drawn || (kept.given && !kept.ahead)))) ask(key, kept, wanted, false);
    return kept.picture;
}

void PiecePictures::ahead(qint64 key, const Wanted& wanted) {
    auto& kept = kept_[key];
    if (kept.wanted == wanted && (kept.drawn || kept.given)) return;
    kept.asked = ++turns_;
    ask(key, kept, wanted, true);
}

void PiecePictures::ask(qint64 key, Kept& kept, const Wanted& wanted, bool ahead) {
    if (kept.given) *kept.given = true;
    kept.wanted = wanted;
    kept.drawn = false;
    kept.ahead = ahead;
    kept.given = std::make_shared<std::atomic<bool>>(false);
    ++drawing_;
    const auto draw = [this, key, wanted, given = kept.given] {
        const auto picture = *given ? Picture() : drawn(wanted);
        QMetaObject::invokeMethod(
            this, [this, key, given, picture] { take(key, given, picture); }, Qt::QueuedConnection);
    };
    pool_.start(draw, ahead ? notInView : inView);
}

void PiecePictures::take(qint64 key, const Given& given, const Picture& picture) {
    --drawing_;
    const auto kept = kept_.find(key);
    if (kept == kept_.end() || kept->given != given) return; // changed again meanwhile
    bytes_ += picture.image.sizeInBytes() - kept->picture.image.sizeInBytes();
    kept->picture = picture;
    kept->drawn = true;
    kept->given.reset();
    makeRoom();
    Q_EMIT ready(key);
}

void PiecePictures::makeRoom() {
    while (bytes_ > mostBytes_ && kept_.size() > alwaysKept) {
        auto oldest = kept_.end();
        for (auto it = kept_.begin(); it != kept_.end(); ++it) {
            if (it->given || it->picture.image.isNull()) continue;
            if (oldest == kept_.end() || it->asked < oldest->asked) oldest = it;
        }
        if (oldest == kept_.end()) return;
        forget(oldest);
    }
}

void PiecePictures::forget(QHash<qint64, Kept>::iterator which) {
    bytes_ -= which->picture.image.sizeInBytes();
    if (which->given) *which->given = true;
    kept_.erase(which);
}

void PiecePictures::keepOnly(const QList<qint64>& keys) {
    const QSet<qint64> shown(keys.begin(), keys.end());
    for (const auto key : kept_.keys()) {
        if (!shown.contains(key)) forget(kept_.find(key));
    }
}

void paintPicture(QPainter& painter, const PiecePictures::Picture& picture, QPointF foot, double scale) {
    if (picture.image.isNull()) return;
    const double k = scale / picture.scale;
    if (std::abs(k - 1) < 1e-9) return painter.drawImage(foot - picture.foot, picture.image);
    painter.drawImage(QRectF(foot - picture.foot * k, picture.image.deviceIndependentSize() * k),
                      picture.image);
}

} // namespace withy::ui
