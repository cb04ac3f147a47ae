// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/head_look.h"
#include "ui/paint/piece_parts.h"

#include <QCache>
#include <QDeadlineTimer>
#include <QImage>

#include <mutex>

class QPainter;

namespace withy::ui {

/// Heads with one key are drawn from one picture.
struct HeadKey {
    HeadLook look;
    int size = 0;    ///< step of its diameter
    int percent = 0; ///< device pixels a pixel
    friend bool operator==(const HeadKey&, const HeadKey&) = default;
};

size_t qHash(const HeadKey& key, size_t seed = 0);

/// Heads kept as small pictures, so that a piece is painted anew without drawing a petal. Heads of one look
/// and about one size share a picture: it is kept upright, finer than the screen's pixels, and laid down
/// smoothly at the head's own place, tilt and exact size. For screens; papers draw the paths.
///
/// Memory: at most `mostBytes` of pictures, those not used for longest are dropped first. Used from any
/// thread.
class HeadPictures {
public:
    static constexpr qsizetype usualBytes = qsizetype{32} << 20;

    explicit HeadPictures(qsizetype mostBytes = usualBytes);

    /// The pictures all drawings of the program share.
    static HeadPictures& ofProgram();

    /// Draws the piece on an image or a pixmap. Pictures that are not there yet are made until `until` has
    /// passed; heads that are still without one then are drawn from a picture of another size or else as a
    /// plain shape. True when all were drawn as they should be: if not, paint again when there is time.
    bool paint(QPainter& painter, const PieceParts& parts, Theme theme,
               QDeadlineTimer until = QDeadlineTimer::Forever);

    /// For measuring: the next drawings begin with none.
    void clear();

    [[nodiscard]] qsizetype bytes() const;
    [[nodiscard]] qsizetype count() const;

private:
    struct Picture {
        QImage image;
        QPoint corner;       ///< of the image from the head's origin, in its own pixels
        double diameter = 1; ///< of the head, in its own pixels
    };

    bool paintHead(QPainter& painter, const PlacedHead& placed, Theme theme, double ratio,
                   const QDeadlineTimer& until);
    Picture find(const HeadKey& key) const;
    Picture ofOtherSize(HeadKey key) const;
    Picture make(const HeadKey& key);

    mutable std::mutex mutex_;
    mutable QCache<HeadKey, Picture> kept_;
};

} // namespace withy::ui
