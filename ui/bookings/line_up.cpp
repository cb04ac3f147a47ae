// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/line_up.h"

#include "core/plan/piece_water.h"
#include "ui/common/style.h"
#include "ui/common/when_seen.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/paint/scale_rule.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

// Common practice, no source: a table's height, and where the eyes of seated guests are.
constexpr double tableHeight = 740;
constexpr double eyeLine = 1200;
constexpr double tableTop = 28;     ///< thickness drawn
constexpr double usualTable = 1830; ///< mm, see usualTrestleLength
constexpr double smallTable = 600;  ///< for a piece that stands alone
constexpr double between = 180;     ///< mm between stands
constexpr double leastTop = 1350;   ///< so that the eye line is always in view

std::vector<designs::WaterPhase> standingFor(const Workbench& bench, Id<model::Booking> id) {
    const auto* booking = bench.season().bookings.find(id);
    const auto found = bench.plan().bookings.find(id);
    if (!booking || found == bench.plan().bookings.end() || !found->second) return {};
    const auto time = plan::standingTime(bench.season(), *booking, *found->second);
    return time ? time->phases : std::vector<designs::WaterPhase>{};
}

} // namespace

double LineUp::Stand::widthMm() const {
    return std::max({table, bounds.width(), 260.0});
}

double LineUp::Stand::topMm() const {
    return base - bounds.top();
}

LineUp::LineUp(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    setObjectName(QStringLiteral("pieces.lineUp"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&pictures_, &PiecePictures::ready, this, qOverload<>(&QWidget::update));
    // How far stems grow on hangs on the plan, which comes after the edit.
    auto* seen = new WhenSeen(this, [this] { showBooking(id_); });
    connect(&bench_, &Workbench::planned, seen, &WhenSeen::ask);
}

QSize LineUp::sizeHint() const {
    return {grid(150), stands_.empty() ? grid(14) : grid(58)};
}

QSize LineUp::minimumSizeHint() const {
    return {grid(40), sizeHint().height()};
}

void LineUp::showBooking(std::optional<Id<model::Booking>> id) {
    id_ = id;
    gather();
    say();
    updateGeometry();
    update();
}

void LineUp::gather() {
    stands_.clear();
    if (!id_) return;
    const auto& season = bench_.season();
    const auto stood = standingFor(bench_, *id_);
    std::map<Id<model::Design>, std::int64_t> pieces;
    std::map<Id<model::Design>, const model::Placement*> placed;
    for (const auto& line : season.lines) {
        if (line.booking != *id_ || !season.designs.find(line.design)) continue;
        pieces[line.design] += line.pieces.value + line.sparePieces.value;
        for (const auto& p : season.placements) {
            if (p.line == line.id && p.perTable > 0) placed.try_emplace(line.design, &p);
        }
    }
    for (const auto& [id, count] : pieces) {
        const auto& design = *season.designs.find(id);
        Stand s;
        s.design = id.value;
        // As tall as it stands by the event: some stems grow on in water.
        s.piece = grownPiece(season, id, stood);
        s.bounds = pieceBoundsMm(s.piece);
        s.name = text(design.name);
        if (design.kind != model::PieceKind::pedestal) {
            s.base = tableHeight;
            s.table = smallTable;
        }
        const auto at = placed.find(id);
        const auto* table = at == placed.end() ? nullptr : season.venueTables.find(at->second->table);
        if (table && s.base > 0) {
            s.table = static_cast<double>(table->length.value);
            s.drawn = static_cast<int>(std::min<std::int64_t>(at->second->perTable, 4));
        } else if (s.base > 0 && count > 2 && design.kind == model::PieceKind::table) {
            s.table = usualTable;
            s.drawn = 2;
        }
        if (count > s.drawn) s.more = tr("and %1 more").arg(numberWord(count - s.drawn));
        stands_.push_back(std::move(s));
    }
    // The tallest first, as in a photograph.
    std::stable_sort(stands_.begin(), stands_.end(),
                     [](const Stand& a, const Stand& b) { return a.topMm() > b.topMm(); });
}

void LineUp::say() {
    QStringList words;
    for (const auto& s : stands_) {
        QString one = tr("%1, top at %2")
                          .arg(s.name, tapeWords(Millimetres(std::llround(s.topMm())), bench_.season(), 0));
        if (!s.more.isEmpty()) one += QStringLiteral(", ") + s.more;
        words << one;
    }
    setAccessibleName(tr("The pieces side by side, drawn to scale"));
    setAccessibleDescription(words.isEmpty() ? tr("No pieces yet") : words.join(QStringLiteral("; ")));
}

double LineUp::scaleFor(const QRectF& area) const {
    double top = leastTop;
    double wide = 0;
    for (const auto& s : stands_) {
        top = std::max(top, s.topMm());
        wide += s.widthMm() + between;
    }
    return std::min(area.height() / (top + 40), area.width() / std::max(wide, 1.0));
}

void LineUp::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const QFontMetrics small(typeFont(TypeRole::caption));
    const double ground = height() - 2.4 * small.height() - grid(1);
    p.setPen(QPen(palette.of(Role::ink), jarLine));
    p.drawLine(QPointF(0, ground), QPointF(width(), ground));
    if (stands_.empty()) return;
    const QRectF area(grid(16), grid(1), width() - grid(16) - grid(28), ground - grid(1));
    const double scale = scaleFor(area);
    paintRule(p, {double(grid(2)), ground}, scale, area.height() - grid(3), palette,
              typeFont(TypeRole::caption), bench_.season().theSettings().units);
    double wide = 0;
    for (const auto& s : stands_)
        wide += (s.widthMm() + between) * scale;
    const double gap =
        std::min(between * scale + std::max(0.0, area.width() - wide) / static_cast<double>(stands_.size()),
                 between * scale * 4);
    double x = area.left();
    double tablesFrom = -1;
    double tablesTo = -1;
    for (const auto& s : stands_) {
        const double w = s.widthMm() * scale;
        if (s.base > 0) {
            if (tablesFrom < 0) tablesFrom = x;
            tablesTo = x + w;
        }
        paintStand(p, s, {x + w / 2, ground}, scale);
        paintWords(p, s, {x - gap / 2, ground + grid(1), w + gap, height() - ground});
        x += w + gap;
    }
    if (tablesFrom >= 0)
        paintEyeLine(p, tablesFrom, std::max(tablesTo, tablesFrom + grid(30)), ground, scale);
}

void LineUp::paintStand(QPainter& p, const Stand& stand, QPointF foot, double scale) {
    if (stand.base > 0) paintTable(p, stand, foot, scale);
    const auto picture = pictures_.picture(
        stand.design, {stand.piece, scale, devicePixelRatioF(), currentPalette().theme, false});
    const double step = stand.table * scale / stand.drawn;
    for (int i = 0; i < stand.drawn; ++i) {
        const double dx = (i + 0.5 - stand.drawn / 2.0) * step;
        paintPicture(p, picture, foot + QPointF(dx, -stand.base * scale), scale);
    }
}

void LineUp::paintTable(QPainter& p, const Stand& stand, QPointF foot, double scale) const {
    const auto& palette = currentPalette();
    const double half = stand.table * scale / 2;
    const double top = foot.y() - stand.base * scale;
    const double under = top + std::max(3.0, tableTop * scale);
    p.setPen(QPen(palette.of(Role::edge), hairline));
    for (const double side : {-1.0, 1.0}) {
        const double at = foot.x() + side * half * 0.68;
        const double lean = std::min(half * 0.16, 130 * scale);
        p.drawLine(QPointF(at, under), QPointF(at - lean, foot.y()));
        p.drawLine(QPointF(at, under), QPointF(at + lean, foot.y()));
    }
    p.setPen(QPen(palette.of(Role::ink), hairline));
    p.setBrush(palette.of(Role::paper));
    p.drawRect(QRectF(foot.x() - half, top, half * 2, under - top));
}

void LineUp::paintEyeLine(QPainter& p, double left, double right, double ground, double scale) const {
    const auto& palette = currentPalette();
    const double y = ground - eyeLine * scale;
    QPen pen(palette.of(Role::ink2), hairline);
    pen.setDashPattern({5, 4});
    p.setPen(pen);
    p.drawLine(QPointF(left, y), QPointF(right, y));
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    p.setPen(palette.of(Role::ink2));
    const QString words = tr("seated eye line");
    const double room = width() - right - grid(2);
    if (metrics.horizontalAdvance(words) < room)
        p.drawText(QPointF(right + grid(2), y + metrics.capHeight() / 2), words);
    else
        p.drawText(QPointF(right - metrics.horizontalAdvance(words), y - grid(1)), words);
}

void LineUp::paintWords(QPainter& p, const Stand& stand, const QRectF& below) const {
    const auto& palette = currentPalette();
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetrics metrics(p.font());
    const int wide = static_cast<int>(below.width());
    p.setPen(palette.of(Role::ink));
    p.drawText(below, Qt::AlignHCenter | Qt::AlignTop, metrics.elidedText(stand.name, Qt::ElideRight, wide));
    p.setPen(palette.of(Role::ink3));
    p.drawText(below.adjusted(0, metrics.lineSpacing(), 0, 0), Qt::AlignHCenter | Qt::AlignTop,
               metrics.elidedText(stand.more, Qt::ElideRight, wide));
}

void LineUp::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) {
        updateGeometry();
        update();
    }
}

} // namespace withy::ui
