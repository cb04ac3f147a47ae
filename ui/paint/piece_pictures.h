// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_painter.h"
#endif

#include <QHash>
#include <QImage>
#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <memory>

namespace withy::ui {

/// Pictures of pieces, drawn away from the window's thread and kept: a wall of forty pieces takes half a
/// second to draw, and the window may not stand still for it. One for a wall or a list.
///
/// Memory: beyond `mostBytes` those not asked for longest are forgotten, but never the last `alwaysKept`
/// asked for, which are in view.
class PiecePictures : public QObject {
    Q_OBJECT

public:
    static constexpr qsizetype usualBytes = qsizetype{48} << 20;
    static constexpr qsizetype alwaysKept = 64;

    explicit PiecePictures(QObject* parent = nullptr, qsizetype mostBytes = usualBytes);
    ~PiecePictures() override;

    /// Around the piece's bounds with 3 px to spare on each side, transparent outside it.
    struct Wanted {
        PieceDrawing piece;
        double scale = 1; ///< pixels a millimetre
        double devicePixelRatio = 1;
        Theme theme = Theme::light;
        bool lineOnly = false;
        bool fromAbove = false; ///< around its middle, which stands for the foot
        friend bool operator==(const Wanted&, const Wanted&) = default;
    };

    struct Picture {
        QImage image;     ///< null while it is being drawn
        QPointF foot{};   ///< where the middle of the foot is in it, in its own (logical) pixels
        double scale = 1; ///< it was drawn at: not the wanted one while that is being drawn
    };

    /// Of what it drew last for `key` until the new one is ready: nothing flickers after an edit.
    Picture picture(qint64 key, const Wanted& wanted);
    /// Drawn when nothing in view is waiting.
    void ahead(qint64 key, const Wanted& wanted);
    /// Forgets keys that are no longer shown.
    void keepOnly(const QList<qint64>& keys);

    [[nodiscard]] bool busy() const { return drawing_ > 0; }

    [[nodiscard]] qsizetype bytes() const { return bytes_; }

Q_SIGNALS:
    void ready(qint64 key);

private:
    using Given = std::shared_ptr<std::atomic<bool>>; ///< given up: not wanted any more

    struct Kept {
        Wanted wanted;
        Picture picture;
        Given given;        ///< of the drawing under way; null: none
        bool drawn = false; ///< picture is what is wanted
        bool ahead = false; ///< under way, but not in view
        quint64 asked = 0;  ///< when, in turns
    };

    void ask(qint64 key, Kept& kept, const Wanted& wanted, bool ahead);
    void take(qint64 key, const Given& given, const Picture& picture);
    void makeRoom();
    void forget(QHash<qint64, Kept>::iterator which);

    QThreadPool pool_;
    QHash<qint64, Kept> kept_;
    qsizetype mostBytes_;
    qsizetype bytes_ = 0;
    quint64 turns_ = 0;
    int drawing_ = 0;
};

/// Lays it down with the middle of its foot at `foot`, stretched when it was drawn at another scale.
void paintPicture(QPainter& painter, const PiecePictures::Picture& picture, QPointF foot, double scale);

} // namespace withy::ui
