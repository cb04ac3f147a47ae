// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/base/working.h"
#include "core/model/edit.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/format.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// A page of figures as data: an answer, and rows of cells that a page shows without knowing what they mean.
namespace withy::ui {

/// A figure that opens.
struct SheetFigure {
    QString words; ///< "80"
    QString means; ///< for screen readers: "stems of dahlia to cut"
    Working working;
    QStringList lines; ///< a line each, where a unit alone does not say it (money); else empty
    std::optional<model::Ref> leadsTo;
    QString leadWords;
};

/// A field of a record that is typed right in the row.
struct SheetField {
    model::TableKind table = model::TableKind::none;
    const char* name = "";
    std::int64_t id = 0; ///< for a reel (ribbonLengths) still to be measured: the ribbon's
    QString prompt;      ///< what a blank means: "not counted yet"
    friend bool operator==(const SheetField&, const SheetField&) = default;
};

/// Doubt against need, for a bar (ui/paint/reach_bar.h).
struct SheetReach {
    std::optional<Colour> colour; ///< the plant's; blank: none is known
    std::int64_t need = 0;
    std::int64_t cautious = 0; ///< covered
    std::int64_t likely = 0;   ///< covered
    std::int64_t thereCautious = 0;
    std::int64_t thereLikely = 0;
    std::optional<std::int64_t> thereHopeful;
    std::int64_t swapped = 0;           ///< of what is covered, by other plants
    std::optional<Colour> swapColour{}; ///< of the one that gives most
    bool known = true;
    QString inWords;
};

enum class SheetState { covered, tight, missing, unknown };

/// How well something is covered, for a small jar beside the cell's words.
struct SheetJar {
    SheetState state = SheetState::unknown;
    double share = 0; ///< really covered, 0 to 1
};

/// Where stems come from: own ones from a patch or the store, or such as are not our own.
enum class StemOrigin { patch, ownStore, boughtIn };

struct SheetSource {
    StemOrigin origin = StemOrigin::patch;
    QString mark; ///< the patch's number on the walk
    QString words;
    QString detail = {}; ///< round by round; empty when it is all one
};

struct SheetCell {
    enum class Tone { text, strong, second, asks };
    QString words;
    Tone tone = Tone::text;
    std::optional<SheetFigure> figure = std::nullopt;
    std::optional<SheetField> field = std::nullopt;
    std::optional<SheetReach> reach = std::nullopt;
    std::optional<SheetJar> jar = std::nullopt;
    std::vector<SheetSource> sources = {};
};

/// A way out of what is wrong with a row, taken by one press.
struct SheetWay {
    Answer words;
    bool dotted = false; ///< brings in a plant: shows its colour
    std::optional<Colour> dot;
    QString button;
    QString means; ///< for screen readers
    bool main = false;
};

/// Below a row: what is to be said of it, and the ways out.
struct SheetBelow {
    QStringList notes;
    std::vector<SheetWay> ways;
};

enum class RowLook {
    body,
    step,    ///< a step that needs hands: a heavy left edge
    head,    ///< names the group below it
    dayHead, ///< the same for a date, which the serif never carries
    busy,    ///< hours that are taken: hatched
    waiting, ///< needs nobody: a thread of water
    fixed,   ///< cannot move: solid ink
    total,   ///< a rule above
};

struct SheetRow {
    QString key; ///< tells rows apart when they change; unique on its sheet
    RowLook look = RowLook::body;
    bool dotted = false; ///< stands for a plant: shows its colour
    std::optional<Colour> dot = std::nullopt;
    QString name;  ///< strong
    QString rest;  ///< after the name
    QString under; ///< second line, smaller
    std::vector<SheetCell> cells = {};
    std::optional<SheetBelow> below = std::nullopt;
};

struct SheetColumn {
    QString title;
    bool right = false; ///< figures
    bool folds = false; ///< goes under the name where the page is narrow
    bool leads = false; ///< stands before the name: times
};

struct Sheet {
    QString firstTitle;
    std::vector<SheetColumn> columns;
    std::vector<SheetRow> rows;
};

/// The name of a record the plan speaks of; empty when it has just been taken out.
template <class R>
QString nameIn(const model::Table<R>& rows, Id<R> id) {
    const auto* record = rows.find(id);
    return record ? text(record->name) : QString();
}

} // namespace withy::ui
