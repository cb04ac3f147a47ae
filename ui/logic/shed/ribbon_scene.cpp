// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/ribbon_scene.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace withy::ui {

namespace {

struct RibbonSceneSay {
    Q_DECLARE_TR_FUNCTIONS(Ribbon)
};

double ribbonMm(Millimetres v) {
    return static_cast<double>(v.value);
}

QString shortLength(Millimetres v, Units units) {
    return v.value >= 1000 ? reelWords(v, units) : lengthWords(v, units);
}

/// Thousands of cuts are a tint with its ends, not thousands of lines.
constexpr double leastCut = 3;

void addBar(const plan::RibbonBar& bar, QRectF box, double k, const QColor& colour, const SceneLook& look,
            Sketch& out) {
    const QColor ink = look.lineOnly ? QColor(Qt::black) : look.palette.of(Role::ink);
    const QColor fill = look.lineOnly ? QColor(Qt::white) : colour;
    const QColor edge = look.lineOnly ? QColor(Qt::black) : look.palette.bloomEdge(colour);
    addBox(out, box, {}, ink, 1, 0, Qt::DashLine); // what stays shows through
    double x = box.left();
    for (const auto& cut : bar.cuts) {
        const double one = ribbonMm(cut.each) * k;
        addBox(out, {x, box.top(), one * static_cast<double>(cut.count), box.height()}, fill, edge, 1);
        for (std::int64_t i = 1; one >= leastCut && i < cut.count; ++i)
            addLine(out, {x + one * static_cast<double>(i), box.top()},
                    {x + one * static_cast<double>(i), box.bottom()}, edge);
        x += one * static_cast<double>(cut.count);
    }
    if (!bar.keep && bar.left.value > 0)
        addHatch(out, {x, box.top(), box.right() - x, box.height()}, box.height() / 3, ink);
}

} // namespace

QString cutWords(const model::Season& season, const std::vector<plan::RibbonPieces>& cuts) {
    QStringList words;
    for (const auto& cut : cuts) {
        const auto* line = season.lines.find(cut.line);
        const auto* design = line ? season.designs.find(line->design) : nullptr;
        words << RibbonSceneSay::tr("%1 × %2 %3")
                     .arg(whole(cut.count), lengthWords(cut.each, season),
                          design ? text(design->name) : QString())
                     .trimmed();
    }
    return words.join(QStringLiteral(", "));
}

QString barWords(const plan::RibbonBar& bar, Units units) {
    const QString kind = bar.from.kind == model::RibbonPieceKind::reel
                             ? RibbonSceneSay::tr("reel %1").arg(shortLength(bar.from.length, units))
                             : RibbonSceneSay::tr("end %1").arg(shortLength(bar.from.length, units));
    return bar.from.dyeLot.empty() ? kind : kind + QStringLiteral(", ") + text(bar.from.dyeLot);
}

QString leftWords(const plan::RibbonBar& bar, Units units) {
    if (bar.left.value == 0) return RibbonSceneSay::tr("nothing left");
    return bar.keep ? RibbonSceneSay::tr("%1 goes back").arg(shortLength(bar.left, units))
                    : RibbonSceneSay::tr("%1 waste").arg(shortLength(bar.left, units));
}

Scene ribbonScene(const model::Season& season, const plan::RibbonCutPlan& plan, const RibbonSceneRoom& room,
                  const SceneLook& look) {
    Scene scene;
    const auto* ribbon = season.ribbons.find(plan.ribbon);
    const QColor colour =
        ribbon && ribbon->colour ? Palette::bloom(*ribbon->colour) : look.palette.of(Role::edge);
    double longest = 1;
    for (const auto& bar : plan.bars)
        if (!bar.cuts.empty()) longest = std::max(longest, ribbonMm(bar.from.length));
    const double k = std::max(1.0, room.width - room.lead - 4) / longest;
    double y = 0;
    QStringList words;
    for (const auto& bar : plan.bars) {
        if (bar.cuts.empty()) continue;
        const QRectF box(room.lead, y + room.row * 0.18, ribbonMm(bar.from.length) * k, room.row * 0.64);
        addBar(bar, box, k, colour, look, scene.sketch);
        const double middle = box.center().y();
        scene.labels.push_back({{0, middle}, barWords(bar, season), 0, true, Role::ink});
        const QString after = cutWords(season, bar.cuts) + QStringLiteral("; ") + leftWords(bar, season);
        y += room.row;
        for (const auto& line : wrapped(after, room.width - room.lead, look)) {
            scene.labels.push_back({{room.lead, y + lineHeight(look) * 0.4}, line, 0, false, Role::ink2});
            y += lineHeight(look);
        }
        y += room.row * 0.2;
        words << barWords(bar, season) + QStringLiteral(": ") + after;
    }
    scene.size = {room.width, y};
    scene.inWords = words.join(QStringLiteral(". "));
    return scene;
}

} // namespace withy::ui
