// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/table_scenes.h"

#include "core/base/conversion.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/table_from_above.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct TableScenesSay {
    Q_DECLARE_TR_FUNCTIONS(Tables)
};

constexpr std::int64_t mostTablesDrawn = 60;
constexpr double aisle = 700; // mm between two tables' chairs

double tableMm(Millimetres v) {
    return static_cast<double>(v.value);
}

QColor inkOf(const SceneLook& look) {
    return look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::ink);
}

/// What stands on a table, one piece after the other, each of its own design.
std::vector<const plan::TablePieces*> piecesInRow(const plan::PlacedTable& table) {
    std::vector<const plan::TablePieces*> row;
    for (const auto& p : table.pieces)
        for (std::int64_t i = 0; i < p.perTable && row.size() < 200; ++i)
            row.push_back(&p);
    return row;
}

Sketch tableSketch(const model::Season& season, const plan::PlacedTable& table, double k, bool near,
                   const SceneLook& look) {
    TablePlanLook top;
    top.palette = look.palette;
    top.chairs = !near;
    top.settings = near || !look.lineOnly;
    top.lineOnly = look.lineOnly;
    top.edgeWidth = near ? 2 : 1.4;
    if (asksForRoom(table)) {
        if (!look.lineOnly) top.edge = look.palette.of(Role::osier);
        top.edgeWidth = 2.2;
    }
    const packing::PlaceSetting setting;
    const auto row = piecesInRow(table);
    double widest = 0;
    for (const auto* p : row)
        widest = std::max(widest, tableMm(p->footprint));
    const auto places = piecePlaces(table.top, setting, asCount(row.size()), widest);
    std::vector<PieceDrawing> drawings;
    for (const auto* p : row)
        drawings.push_back(season.designs.find(p->design) ? pieceDrawing(season, p->design) : PieceDrawing());
    std::vector<PlannedPiece> planned;
    for (std::size_t i = 0; i < row.size() && i < places.size(); ++i) {
        FromAboveLook above{look.palette, Collar::round, near && !look.lineOnly, look.lineOnly, {}};
        planned.push_back({&drawings[i], places[i], above});
    }
    return tableWithPieces(table.top, setting, planned, k, top);
}

struct Cell {
    std::size_t kind;
    std::int64_t number;
    QRectF bounds; ///< mm around the table's middle
};

std::vector<Cell> cellsOf(const model::Season& season, const plan::BookingTables& tables) {
    std::vector<Cell> cells;
    for (std::size_t t = 0; t < tables.tables.size(); ++t) {
        const auto* record = season.venueTables.find(tables.tables[t].table);
        if (!record) continue;
        const auto many = std::min(record->howMany, mostTablesDrawn);
        for (std::int64_t n = 1; n <= many; ++n)
            cells.push_back({t, n, tableBoundsMm(tables.tables[t].top, true)});
    }
    return cells;
}

/// Rows of tables that fill the width best: each kind begins where the last one ended.
struct Rows {
    double width = 0;
    double height = 0;
    std::vector<QPointF> middles;
};

Rows layRows(const std::vector<Cell>& cells, double mostWide) {
    Rows rows;
    double x = 0, y = 0, deep = 0;
    std::size_t kind = 0;
    std::vector<std::size_t> inRow;
    const auto close = [&] {
        for (const auto i : inRow)
            rows.middles[i].setY(y + deep / 2);
        y += deep + aisle;
        x = deep = 0;
        inRow.clear();
    };
    rows.middles.resize(cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto& box = cells[i].bounds;
        if (!inRow.empty() && (x + box.width() > mostWide || cells[i].kind != kind)) close();
        kind = cells[i].kind;
        rows.middles[i].setX(x + box.width() / 2);
        x += box.width() + aisle;
        deep = std::max(deep, box.height());
        rows.width = std::max(rows.width, x - aisle);
        inRow.push_back(i);
    }
    if (!inRow.empty()) close();
    rows.height = std::max(0.0, y - aisle);
    return rows;
}

/// Twice as wide as deep and more, which is how a page has room for it.
double wideEnough(const std::vector<Cell>& cells) {
    double area = 0, widest = 0;
    for (const auto& c : cells) {
        area += (c.bounds.width() + aisle) * (c.bounds.height() + aisle);
        widest = std::max(widest, c.bounds.width());
    }
    return std::max({widest, std::sqrt(area * 4.5), 4000.0});
}

QString tableName(const model::Season& season, const plan::PlacedTable& table, std::int64_t number) {
    const auto* record = season.venueTables.find(table.table);
    if (!record) return {};
    return record->howMany > 1 ? TableScenesSay::tr("%1 %2").arg(text(record->label)).arg(number)
                               : text(record->label);
}

void addScaleBar(Scene& scene, double k, double y, const SceneLook& look, Units units) {
    const double metre = (units.imperial() ? millimetresInYard : 1000) * k;
    const double x = scene.size.width() - metre - sized(look, 120, 34);
    addDimension(scene.sketch, {x, y}, {x + metre, y}, inkOf(look));
    scene.labels.push_back({{x + metre + sized(look, 20, 8), y},
                            units.imperial() ? TableScenesSay::tr("3 ft") : TableScenesSay::tr("1 m"),
                            0,
                            false,
                            Role::ink2});
}

} // namespace

QString hallNote(const model::Season& season, const plan::BookingTables& tables) {
    QStringList words{
        TableScenesSay::tr("A sketch: tables of a kind stand in a row here. Where each stands in "
                           "the hall is for the venue's own plan.")};
    for (const auto& table : tables.tables)
        if (const auto* t = season.venueTables.find(table.table); t && t->howMany > mostTablesDrawn)
            words << TableScenesSay::tr("%1: %2 of %3 are drawn.")
                         .arg(text(t->label), whole(mostTablesDrawn), whole(t->howMany));
    return words.join(QLatin1Char(' '));
}

Hall hallScene(const model::Season& season, const plan::BookingTables& tables, double width,
               std::optional<std::size_t> chosen, const SceneLook& look) {
    Hall hall;
    const auto cells = cellsOf(season, tables);
    const double margin = sized(look, 40, 16), right = sized(look, 90, 34);
    const auto rows = layRows(cells, wideEnough(cells));
    const double k = cells.empty()
                         ? 0.05
                         : std::min((width - 2 * margin - right) / rows.width,
                                    look.lineOnly ? std::min(0.6, 800 / std::max(rows.height, 1.0)) : 0.09);
    hall.mmPerPx = 1 / k;
    auto& scene = hall.scene;
    const double foot = sized(look, 70, 26);
    scene.size = {width, std::max(rows.height * k + 2 * margin, sized(look, 300.0, 120.0)) + foot};
    addBox(scene.sketch, {1, 1, width - 2, scene.size.height() - foot - 2},
           look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::paper), inkOf(look), 2);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto& table = tables.tables[cells[i].kind];
        const QPointF at(margin + rows.middles[i].x() * k, margin + rows.middles[i].y() * k);
        const QRectF box = cells[i].bounds;
        const QRectF px(at + box.topLeft() * k, box.size() * k);
        if (chosen == cells[i].kind && !look.lineOnly)
            addBox(scene.sketch, px.adjusted(-5, -5, 5, 5), look.palette.of(Role::wash),
                   look.palette.of(Role::green), 2);
        auto sketch = tableSketch(season, table, k, false, look);
        transform(sketch, QTransform::fromTranslate(at.x(), at.y()));
        append(scene.sketch, std::move(sketch));
        const bool over = asksForRoom(table);
        const double r = sized(look, 26, 9);
        scene.sketch.push_back({ellipseAt(at.x(), at.y(), r, r),
                                look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::sheet),
                                over && !look.lineOnly ? look.palette.of(Role::osier) : inkOf(look), 1});
        scene.labels.push_back({at, whole(cells[i].number), 0.5, true, over ? Role::osier : Role::ink});
        if (table.fit)
            scene.labels.push_back(
                {{at.x() + tableBoundsMm(table.top, false).right() * k + sized(look, 14, 5),
                  at.y() - (table.top.coversAtEnds > 0 ? px.height() * 0.36 : 0)},
                 fitFigure(table, season),
                 0,
                 over,
                 over ? Role::osier : Role::ink2});
        QString words = tableName(season, table, cells[i].number);
        if (table.fit) words += QStringLiteral(", ") + fitWords(table, season);
        hall.tables.push_back({cells[i].kind, cells[i].number, px, words});
    }
    if (!cells.empty()) addScaleBar(scene, k, scene.size.height() - foot / 2, look, season);
    scene.labels.push_back(
        {{0, scene.size.height() - foot / 2},
         Units(season).imperial()
             ? TableScenesSay::tr("beside a table: inches between a piece and the nearest setting")
             : TableScenesSay::tr("beside a table: mm between a piece and the nearest setting"),
         0,
         false,
         Role::ink3});
    QStringList all;
    for (const auto& t : hall.tables)
        if (all.size() < 40) all << t.inWords;
    scene.inWords = all.join(QStringLiteral("; "));
    return hall;
}

Scene nearScene(const model::Season& season, const plan::BookingTables& tables, std::size_t kind,
                double width, const SceneLook& look) {
    Scene scene;
    const auto& table = tables.tables[kind];
    const double right = sized(look, 400, 92), top = sized(look, 90, 30);
    const QRectF box = tableBoundsMm(table.top, false);
    const double k = std::min((width - right) / box.width(), sized(look, 460.0, 330.0) / box.height());
    const QPointF middle(box.width() * k / 2 + 2, top + box.height() * k / 2);
    auto sketch = tableSketch(season, table, k, true, look);
    transform(sketch, QTransform::fromTranslate(middle.x(), middle.y()));
    append(scene.sketch, std::move(sketch));
    const QRectF px(middle + box.topLeft() * k, box.size() * k);
    addDimension(scene.sketch, {px.left(), top * 0.5}, {px.right(), top * 0.5}, inkOf(look));
    const QString size = tableSize(table, season);
    const double half = sized(look, 150, 56);
    addBox(scene.sketch, {px.center().x() - half, top * 0.5 - top * 0.3, 2 * half, top * 0.6},
           look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::paper), {}, 0);
    scene.labels.push_back({{px.center().x(), top * 0.5}, size, 0.5, false, Role::ink2});
    const auto free = freeMiddleOf(table.top, tables.setting);
    if (free && table.top.covers > 0) {
        const double x = px.right() + sized(look, 40, 12);
        addDimension(scene.sketch, {x, middle.y() + free->top() * k}, {x, middle.y() + free->bottom() * k},
                     inkOf(look));
        scene.labels.push_back({{x + sized(look, 30, 10), middle.y() - sized(look, 26, 9)},
                                TableScenesSay::tr("%1 free").arg(lengthFigure(free->height(), season)),
                                0,
                                false,
                                Role::ink2});
        if (table.fit)
            scene.labels.push_back({{x + sized(look, 30, 10), middle.y() + sized(look, 26, 9)},
                                    TableScenesSay::tr("%1 each side").arg(fitFigure(table, season)),
                                    0,
                                    true,
                                    asksForRoom(table) ? Role::osier : Role::ink});
    }
    scene.size = {width, px.bottom() + sized(look, 20, 8)};
    scene.inWords = standingWords(season, table) + QStringLiteral(", ") + fitWords(table, season);
    return scene;
}

Scene endScene(const model::Season& season, const plan::PlacedTable& table, double width, double height,
               const SceneLook& look) {
    Scene scene;
    scene.size = {width, height};
    const auto tallest = std::max_element(table.pieces.begin(), table.pieces.end(),
                                          [](const auto& a, const auto& b) { return a.top < b.top; });
    if (tallest == table.pieces.end() || !season.designs.find(tallest->design)) return scene;
    constexpr double eye = 400; // over the table: packing::SightlineAsked
    const auto piece = pieceDrawing(season, tallest->design);
    const double across = table.top.form == packing::TableForm::round
                              ? tableMm(table.top.length)
                              : tableMm(table.top.width.value_or(table.top.length));
    const double tall = std::max({eye, tableMm(tallest->top)}) + 60;
    const double words = sized(look, 420, 130);
    const double k = std::min((height - sized(look, 40, 40)) / (tall + 60), (width - words) / (across + 100));
    const double ground = tall * k + sized(look, 10, 10), x = (across / 2 + 50) * k;
    const QColor ink = inkOf(look), thin = look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::edge);
    addLine(scene.sketch, {x - across / 2 * k, ground + 1}, {x + across / 2 * k, ground + 1}, ink, 2);
    auto sketch = pieceSketch(piece, k, look.palette);
    if (look.lineOnly) sketch = inLine(std::move(sketch), {Qt::white, Qt::black, 0, 1.1});
    transform(sketch, QTransform::fromTranslate(x, ground));
    append(scene.sketch, std::move(sketch));
    const double eyeY = ground - eye * k, topY = ground - tableMm(tallest->top) * k;
    addLine(scene.sketch, {x - across / 2 * k, eyeY}, {x + across / 2 * k + sized(look, 10, 10), eyeY}, ink,
            1, Qt::DashLine);
    scene.labels.push_back({{x + across / 2 * k + sized(look, 18, 18), eyeY},
                            TableScenesSay::tr("eye line %1").arg(lengthFigure(eye, season)),
                            0,
                            false,
                            Role::ink2});
    if (table.sight) {
        const double at = x + across / 2 * k * 0.75;
        addLine(scene.sketch, {x, topY}, {at + sized(look, 6, 6), topY}, thin);
        addDimension(scene.sketch, {at, std::min(eyeY, topY)}, {at, std::max(eyeY, topY)}, ink);
        const bool over = table.sight->sight == packing::Sightline::inTheWay;
        scene.labels.push_back(
            {{at + sized(look, 30, 10), (eyeY + topY) / 2 + sized(look, 0, 2)},
             over ? TableScenesSay::tr("%1 too tall")
                        .arg(lengthFigure(static_cast<double>(table.sight->lowerBy.value), season))
                  : TableScenesSay::tr("%1 clear")
                        .arg(lengthFigure(static_cast<double>(table.sight->spare.value), season)),
             0,
             true,
             over ? Role::osier : Role::ink});
    }
    scene.size.setHeight(ground + sized(look, 12, 12));
    scene.inWords = sightWords(table, season);
    return scene;
}

} // namespace withy::ui
