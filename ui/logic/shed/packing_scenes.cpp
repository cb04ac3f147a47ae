// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/packing_scenes.h"

#include "ui/logic/format.h"
#include "ui/paint/piece_plan.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

struct PackingScenesSay {
    Q_DECLARE_TR_FUNCTIONS(Packing)
};

double trayMm(Millimetres v) {
    return static_cast<double>(v.value);
}

/// 1, 2, 3, 5: "1 to 3, 5".
QString runs(const std::set<std::int64_t>& numbers) {
    QStringList words;
    for (auto at = numbers.begin(); at != numbers.end();) {
        const auto from = *at;
        auto to = from;
        while (++at != numbers.end() && *at == to + 1)
            to = *at;
        words << (to == from       ? whole(from)
                  : to == from + 1 ? whole(from) + QStringLiteral(", ") + whole(to)
                                   : PackingScenesSay::tr("%1 to %2").arg(whole(from), whole(to)));
    }
    return words.join(QStringLiteral(", "));
}

/// On paper a plain ring, so that its table's number can be read.
Sketch pieceOf(const model::Season& season, const plan::PackedPiece& piece, double k, const SceneLook& look) {
    const double r = trayMm(piece.diameter) / 2 * k;
    if (look.lineOnly) return {{ellipseAt(0, 0, r, r), QColor(Qt::white), QColor(Qt::black), 1.4}};
    const auto* line = season.lines.find(piece.line);
    if (!line || !season.designs.find(line->design)) return {};
    return pieceFromAbove(pieceDrawing(season, line->design), k,
                          {look.palette, Collar::round, true, false, {}});
}

QString fillWords(const model::Season& season, const plan::PackedTray& tray) {
    std::map<Id<model::Design>, int> counts;
    for (const auto& piece : tray.pieces)
        if (const auto* line = season.lines.find(piece.line)) ++counts[line->design];
    QStringList words;
    for (const auto& [id, count] : counts)
        if (const auto* design = season.designs.find(id))
            words << PackingScenesSay::tr("%1 %2").arg(count).arg(text(design->name));
    return words.join(QStringLiteral(", "));
}

const plan::LoadEntry& entryOf(const plan::BookingPacking& packing, std::size_t i) {
    return packing.entries[i];
}

QString designOf(const model::Season& season, const plan::LoadEntry& entry) {
    const auto* line = entry.line ? season.lines.find(*entry.line) : nullptr;
    const auto* design = line ? season.designs.find(line->design) : nullptr;
    return design ? text(design->name) : QString();
}

} // namespace

QString weightWords(Grams weight, bool partlyKnown, Units units) {
    const QString words = weightWords(static_cast<double>(weight.value) / 1000, units);
    return partlyKnown ? PackingScenesSay::tr("at least %1").arg(words) : words;
}

QString tablesOfTray(const plan::PackedTray& tray) {
    std::set<std::int64_t> numbers;
    for (const auto& piece : tray.pieces)
        if (piece.tableNumber > 0) numbers.insert(piece.tableNumber);
    return runs(numbers);
}

int trayNumber(const plan::BookingPacking& packing, std::size_t drop, std::size_t tray) {
    std::size_t before = 0;
    for (std::size_t d = 0; d < drop; ++d)
        before += packing.drops[d].trays.size();
    return asCount(before + tray) + 1;
}

QString entryWords(const model::Season& season, const plan::BookingPacking& packing, std::size_t i) {
    const auto& e = entryOf(packing, i);
    switch (e.kind) {
    case plan::LoadKind::tray:
        return PackingScenesSay::tr("Tray %1").arg(trayNumber(packing, e.drop, *e.tray));
    case plan::LoadKind::bucket:
        return PackingScenesSay::tr("Bucket, %1 stem(s) for %2", nullptr, static_cast<int>(e.count))
            .arg(whole(e.count), designOf(season, e));
    case plan::LoadKind::container:
        return PackingScenesSay::tr("%1, its container").arg(designOf(season, e));
    case plan::LoadKind::piece:
        return PackingScenesSay::tr("%1, by itself").arg(designOf(season, e));
    case plan::LoadKind::waterCan:
        break;
    }
    return PackingScenesSay::tr("Water can, %1").arg(litresInShort(e.litres, season));
}

std::vector<std::size_t> loadOrder(const plan::BookingPacking& packing) {
    std::vector<std::size_t> order;
    if (packing.load) {
        for (const auto& loaded : packing.load->loaded)
            order.push_back(loaded.item);
        order.insert(order.end(), packing.load->notLoaded.begin(), packing.load->notLoaded.end());
        return order;
    }
    for (std::size_t i = 0; i < packing.entries.size(); ++i)
        order.push_back(i);
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return packing.entries[a].drop > packing.entries[b].drop; });
    return order;
}

Scene trayScene(const model::Season& season, const plan::PackedTray& tray, int number, double k, double room,
                const SceneLook& look) {
    Scene scene;
    const QSizeF size(trayMm(tray.length) * k, trayMm(tray.width) * k);
    const QColor ink = look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::ink);
    const QColor floor = look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::mist);
    addBox(scene.sketch, QRectF({0, 0}, size), floor, ink, 1.7, 8 * k);
    for (const auto& piece : tray.pieces) {
        const QPointF at(piece.centre.x * k, piece.centre.y * k);
        auto sketch = pieceOf(season, piece, k, look);
        transform(sketch, QTransform::fromTranslate(at.x(), at.y()));
        append(scene.sketch, std::move(sketch));
        if (look.lineOnly && piece.tableNumber > 0)
            scene.labels.push_back({at, whole(piece.tableNumber), 0.5, true, Role::ink});
    }
    const QString tables = tablesOfTray(tray);
    const double line = lineHeight(look);
    scene.labels.push_back({{0, size.height() + line * 0.8},
                            PackingScenesSay::tr("Tray %1, %2")
                                .arg(number)
                                .arg(weightWords(tray.weight, tray.partlyKnown, season)),
                            0,
                            true,
                            tray.overLimit ? Role::osier : Role::ink});
    bool isOne = false; // "4", not "1 to 4"
    tables.toInt(&isOne);
    const QString under = tables.isEmpty()
                              ? fillWords(season, tray)
                              : PackingScenesSay::tr("table(s) %1", nullptr, isOne ? 1 : 2).arg(tables);
    scene.labels.push_back({{0, size.height() + line * 1.85},
                            shortened(under, std::max(room, size.width()), look),
                            0,
                            false,
                            Role::ink2});
    scene.size = {size.width(), size.height() + line * 2.6};
    scene.inWords = PackingScenesSay::tr("Tray %1 holds %2, %3")
                        .arg(number)
                        .arg(fillWords(season, tray), weightWords(tray.weight, tray.partlyKnown, season));
    return scene;
}

Scene floorScene(const plan::BookingPacking& packing, const model::Vehicle& vehicle, double k,
                 const SceneLook& look) {
    Scene scene;
    const double line = sized(look, 60, 20);
    const QColor ink = look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::ink);
    const QColor edge = look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::edge);
    const QRectF floor(0, line, trayMm(*vehicle.floorWidth) * k, trayMm(*vehicle.floorLength) * k);
    addBox(scene.sketch, floor, look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::sheet), ink, 2, 4);
    scene.labels.push_back(
        {{floor.center().x(), line / 2}, PackingScenesSay::tr("front"), 0.5, true, Role::ink2});
    scene.labels.push_back({{floor.center().x(), floor.bottom() + line / 2},
                            PackingScenesSay::tr("doors"),
                            0.5,
                            true,
                            Role::ink2});
    addLine(scene.sketch, floor.bottomLeft(), floor.bottomRight(), ink, 4);
    QStringList words;
    int number = 0;
    const std::size_t last = packing.drops.empty() ? 0 : packing.drops.size() - 1;
    for (const auto& loaded : packing.load->loaded) {
        const auto& entry = packing.entries[loaded.item];
        const QRectF box = QRectF(trayMm(loaded.y) * k, floor.top() + trayMm(loaded.x) * k,
                                  trayMm(loaded.width) * k, trayMm(loaded.length) * k)
                               .adjusted(1, 1, -1, -1);
        addBox(scene.sketch, box, look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::mist), edge, 1.3,
               3);
        if (entry.drop < last) addHatch(scene.sketch, box, sized(look, 24, 7), edge);
        const double r = std::min({box.width(), box.height(), sized(look, 60.0, 22.0)}) / 2;
        scene.sketch.push_back({ellipseAt(box.center().x(), box.center().y(), r, r),
                                look.lineOnly ? QColor(Qt::white) : look.palette.of(Role::sheet), ink, 1});
        scene.labels.push_back({box.center(), whole(++number), 0.5, true, Role::ink});
        words << whole(number);
    }
    scene.size = {floor.width(), floor.bottom() + line};
    scene.inWords =
        PackingScenesSay::tr("The load floor of %1 from above, %n thing(s) on it", nullptr, number)
            .arg(text(vehicle.name));
    return scene;
}

} // namespace withy::ui
