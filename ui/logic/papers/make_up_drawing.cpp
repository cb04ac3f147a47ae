// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/make_up_drawing.h"

#include "core/base/conversion.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/papers/sketch_on_paper.h"
#include "ui/paint/piece_layout.h"
#include "ui/paint/piece_painter.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace withy::ui {

namespace {

constexpr double drawnPxPerMm = 6;  // of paper; the sketch's own pixels, so that lines come out thin
constexpr double sketchLine = 0.25; // mm
constexpr double helpLine = 0.15;
constexpr double ruleRoom = 15;  // left of the piece, with its figures
constexpr double rightRoom = 17; // for the names of the tiers
constexpr double topRoom = 4;
constexpr std::array scales{1.0, 1.5,  2.0,  2.5,  3.0,  4.0,  5.0,  6.0,
                            8.0, 10.0, 12.5, 15.0, 20.0, 25.0, 40.0, 50.0};

struct MakeUpDrawingSay {
    Q_DECLARE_TR_FUNCTIONS(MakeUpCard)
};

using Kind = papers::Drawing::Point::Kind;
using DrawnFill = papers::Drawing::Fill;

/// Numbered slots stand in two columns beside the piece.
struct Callout {
    int number = 0;
    QPointF head;
};

class PieceOnPaper {
public:
    PieceOnPaper(const PieceDrawing& piece, double width, double height, Units units)
        : piece_(piece), mm_(pieceBoundsMm(piece)), units_(units) {
        const double across = width - ruleRoom - rightRoom;
        for (const double s : scales) {
            over_ = s;
            if (mm_.width() / s <= across && mm_.height() / s <= height - topRoom - 1) break;
        }
        out_.width = width;
        out_.height = std::ceil(mm_.height() / over_ + topRoom + 2);
        middle_ = ruleRoom + across / 2 - mm_.center().x() / over_;
        ground_ = topRoom + 1 - mm_.top() / over_;
    }

    papers::Drawing drawn() {
        addRule();
        addTiers();
        addSketch();
        addGround();
        addCallouts();
        return std::move(out_);
    }

    [[nodiscard]] double over() const { return over_; }

private:
    /// From millimetres of the piece around the middle of its foot to millimetres of paper.
    [[nodiscard]] QPointF onPaper(QPointF mm) const {
        return {middle_ + mm.x() / over_, ground_ + mm.y() / over_};
    }

    void line(QPointF from, QPointF to, double width) {
        out_.shapes.push_back(
            {{{Kind::move, from.x(), from.y()}, {Kind::line, to.x(), to.y()}}, DrawnFill::none, width});
    }

    void addSketch() {
        const double k = drawnPxPerMm / over_;
        const Sketch sketch = inLine(pieceSketch(piece_, k, Palette{}), {Qt::white, Qt::black, 0, 1.1});
        addToPaper(out_, sketch, QTransform(1 / (k * over_), 0, 0, 1 / (k * over_), middle_, ground_),
                   sketchLine);
    }

    void addGround() { line({ruleRoom - 4, ground_}, {out_.width - rightRoom + 4, ground_}, 0.4); }

    /// Ticks every ten millimetres or half inch of the piece, figures where they have room.
    void addRule() {
        const double high = -mm_.top();
        const bool inches = units_.imperial();
        const double step = inches ? millimetresInInch * (high > 700 ? 4 : 0.5) : high > 700 ? 100 : 10;
        const int figures = inches ? 4 : 5;
        for (int tick = 0; tick * step <= high; ++tick) {
            const double mm = tick * step;
            const double y = ground_ - mm / over_;
            const bool named = tick % figures == 0;
            line({ruleRoom - (named ? 6.0 : 5.0), y}, {ruleRoom - 4, y}, helpLine);
            if (!named || tick == 0) continue;
            const QString figure = inches ? lengthFigure(mm, units_) : QString::number(std::llround(mm));
            out_.labels.push_back({ruleRoom - 6.5, y, utf8(figure), 1, false});
        }
        line({ruleRoom - 4, ground_ - high / over_}, {ruleRoom - 4, ground_}, helpLine);
    }

    [[nodiscard]] double rim() const {
        return piece_.vessel ? piece_.vessel->height + piece_.vessel->stand : 0;
    }

    void addTiers() {
        if (!piece_.vessel) return;
        const std::array<std::pair<double, QString>, 4> tiers{
            {{piece_.tall, MakeUpDrawingSay::tr("tall")},
             {piece_.middle, MakeUpDrawingSay::tr("middle")},
             {piece_.low, MakeUpDrawingSay::tr("low")},
             {0, MakeUpDrawingSay::tr("rim")}}};
        double before = -100;
        for (const auto& [above, name] : tiers) {
            const double y = ground_ - (rim() + above) / over_;
            if (y < topRoom / 2) continue; // no stem of it stands so high
            for (double x = ruleRoom; x < out_.width - rightRoom; x += 2)
                line({x, y}, {x + 0.6, y}, helpLine);
            if (y - before < 5) continue; // two names would lie on each other
            out_.labels.push_back({out_.width - rightRoom + 5.5, y, utf8(name), 0, above > 0});
            before = y;
        }
    }

    /// The outermost stem of each slot, in millimetres of the piece. Bound pieces are told by the list alone.
    [[nodiscard]] std::vector<Callout> callouts() const {
        std::vector<Callout> all;
        if (!piece_.vessel) return all;
        const auto placed = placeStems(piece_);
        for (std::size_t i = 0; i < piece_.slots.size(); ++i) {
            const PlacedStem* best = nullptr;
            for (const auto& p : placed)
                if (p.slot == &piece_.slots[i] && (!best || std::abs(p.x) > std::abs(best->x))) best = &p;
            if (best) all.push_back({static_cast<int>(i) + 1, onPaper({best->x, -(rim() + best->height)})});
        }
        return all;
    }

    void addCallouts() {
        auto all = callouts();
        std::stable_sort(all.begin(), all.end(),
                         [](const auto& a, const auto& b) { return a.head.y() < b.head.y(); });
        double left = -100;
        double right = -100;
        for (const auto& c : all) {
            const bool atLeft = c.head.x() < middle_ || (c.head.x() == middle_ && left <= right);
            double& last = atLeft ? left : right;
            const double x = atLeft ? ruleRoom + 2 : out_.width - rightRoom - 1;
            const double y = std::max(c.head.y(), last + 7.5);
            last = y;
            const QPointF at(x, y);
            line(c.head, at, sketchLine);
            addDisc(c.head, 0.8, DrawnFill::black);
            addDisc(at, 3, DrawnFill::white);
            out_.labels.push_back({x, y, std::to_string(c.number), 0.5, true});
        }
    }

    void addDisc(QPointF at, double r, DrawnFill fill) {
        constexpr double bend = 0.5523; // of the radius: a quarter of a circle as a curve
        const auto point = [&](Kind kind, double x, double y) {
            return papers::Drawing::Point{kind, at.x() + x * r, at.y() + y * r};
        };
        out_.shapes.push_back(
            {{point(Kind::move, 1, 0), point(Kind::curve, 1, bend), point(Kind::line, bend, 1),
              point(Kind::line, 0, 1), point(Kind::curve, -bend, 1), point(Kind::line, -1, bend),
              point(Kind::line, -1, 0), point(Kind::curve, -1, -bend), point(Kind::line, -bend, -1),
              point(Kind::line, 0, -1), point(Kind::curve, bend, -1), point(Kind::line, 1, -bend),
              point(Kind::line, 1, 0)},
             fill,
             fill == DrawnFill::black ? 0 : 0.35});
    }

    const PieceDrawing& piece_;
    QRectF mm_;
    Units units_;
    double over_ = 1;
    double middle_ = 0;
    double ground_ = 0;
    papers::Drawing out_;
};

} // namespace

MakeUpDrawing makeUpDrawing(const model::Season& season, Id<model::Design> design, double width,
                            double height) {
    const auto piece = pieceDrawing(season, design);
    PieceOnPaper paper(piece, width, height, season);
    MakeUpDrawing made;
    made.scale = MakeUpDrawingSay::tr("1 : %1").arg(paper.over());
    made.drawing = paper.drawn();
    const QSizeF size = pieceSizeMm(piece);
    made.drawing.inWords =
        utf8(MakeUpDrawingSay::tr("Drawn %1: %2 high, %3 wide.")
                 .arg(made.scale, lengthWords(size.height(), season), lengthWords(size.width(), season)));
    return made;
}

} // namespace withy::ui
