// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/tray_fill.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/packing/tray_rows.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <map>
#include <set>

namespace withy::packing {

namespace {

std::optional<Problem> checkTray(const Tray& tray, Millimetres padding) {
    if (auto p = outside("tray_length", tray.length.value, 1, longestSide)) return p;
    if (auto p = outside("tray_width", tray.width.value, 1, longestSide)) return p;
    if (tray.tare) {
        if (auto p = outside("tare", tray.tare->value, 0, heaviestPiece)) return p;
    }
    if (tray.owned) {
        if (auto p = outside("trays_owned", *tray.owned, 0, mostTrayPieces)) return p;
    }
    return outside("padding", padding.value, 0, longestSide);
}

/// A piece with its padding must pass both sides.
std::optional<Problem> checkPiece(const Tray& tray, Millimetres padding, Millimetres diameter) {
    if (auto p = outside("piece_diameter", diameter.value, 1, longestSide)) return p;
    const bool widthIsLess = tray.width <= tray.length;
    const auto side = widthIsLess ? tray.width : tray.length;
    if (diameter + padding > side)
        return problemAt(
            ProblemCode::moreThan, "piece_diameter", std::to_string(diameter.value),
            {widthIsLess ? "tray_width" : "tray_length", std::to_string((side - padding).value)});
    return std::nullopt;
}

std::optional<Problem> checkTask(const TrayTask& task) {
    if (auto p = checkTray(task.tray, task.padding)) return p;
    if (task.liftingLimit) {
        if (auto p = outside("lifting_limit", task.liftingLimit->value, 1, heaviestPiece)) return p;
    }
    std::int64_t all = 0;
    for (const auto& piece : task.pieces) {
        if (auto p = outside("pieces", piece.count, 0, mostTrayPieces)) return p;
        all += piece.count;
        if (auto p = outside("pieces", all, 0, mostTrayPieces)) return p;
        if (auto p = checkPiece(task.tray, task.padding, piece.diameter)) return p;
        if (piece.weight) {
            if (auto p = outside("piece_weight", piece.weight->value, 0, heaviestPiece)) return p;
        }
    }
    return std::nullopt;
}

CircleRows rowsOf(const Tray& tray, Millimetres padding, Millimetres diameter) {
    return circleRows(static_cast<double>(tray.length.value), static_cast<double>(tray.width.value),
                      static_cast<double>((diameter + padding).value));
}

/// Pieces of one diameter, kind after kind, tray after tray; the last tray may have room left.
std::vector<FilledTray> oneSize(const TrayTask& task, Millimetres diameter, bool& lastIsFull) {
    const auto rows = task.rooms
                          ? task.rooms->rows(task.tray.length, task.tray.width, diameter + task.padding)
                          : rowsOf(task.tray, task.padding, diameter);
    std::vector<FilledTray> trays;
    Grams held;
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        const auto& piece = task.pieces[i];
        for (std::int64_t n = piece.diameter == diameter ? piece.count : 0; n > 0; --n) {
            const bool full = trays.empty() || trays.back().pieces.size() == rows.centres.size();
            if (full || !mayCarry(task, held, piece)) {
                trays.emplace_back();
                trays.back().stand = rows.stand;
                held = task.tray.tare.value_or(Grams{});
            }
            trays.back().pieces.push_back({i, rows.centres[trays.back().pieces.size()]});
            held += piece.weight.value_or(Grams{});
        }
    }
    lastIsFull = trays.empty() || trays.back().pieces.size() == rows.centres.size();
    return trays;
}

bool fewer(const std::vector<FilledTray>& a, const std::vector<FilledTray>& b) {
    return a.size() < b.size();
}

void move(std::vector<FilledTray>& from, std::vector<FilledTray>& to) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
    from.clear();
}

/// Each size by itself, widest first; the trays that are not full by themselves or mixed, whichever is fewer.
std::vector<FilledTray> sizeBySize(const TrayTask& task) {
    std::set<Millimetres, std::greater<>> sizes;
    for (const auto& piece : task.pieces) {
        if (piece.count > 0) sizes.insert(piece.diameter);
    }
    std::vector<FilledTray> trays, open;
    std::vector<std::int64_t> left(task.pieces.size(), 0);
    for (const auto size : sizes) {
        bool lastIsFull = false;
        auto filled = oneSize(task, size, lastIsFull);
        if (!lastIsFull) {
            for (const auto& placed : filled.back().pieces)
                ++left[placed.piece];
            open.push_back(std::move(filled.back()));
            filled.pop_back();
        }
        move(filled, trays);
    }
    for (const auto run : {RowsRun::along, RowsRun::across}) {
        if (auto mixed = mixedRows(task, left, run); open.size() > 1 && fewer(mixed, open))
            open = std::move(mixed);
    }
    move(open, trays);
    return trays;
}

void weigh(const TrayTask& task, FilledTray& tray) {
    const auto grams = [](Step step, std::string what, std::int64_t value, Basis basis,
                          const std::string& subject = {}) {
        return lineOf(step, std::move(what), value, Unit::grams, basis, {}, subject);
    };
    std::map<std::size_t, std::int64_t> counts;
    for (const auto& placed : tray.pieces)
        ++counts[placed.piece];
    const auto& tare = task.tray.tare;
    tray.weight = tare.value_or(Grams{});
    tray.partlyKnown = !tare;
    tray.working.push_back(tare ? grams(Step::given, "empty tray", tare->value, Basis::counted)
                                : grams(Step::given, "empty tray not known", 0, Basis::notKnown));
    for (const auto& [i, count] : counts) {
        const auto& piece = task.pieces[i];
        tray.working.push_back(
            lineOf(Step::given, "pieces", count, Unit::pieces, Basis::computed, {}, piece.subject));
        tray.partlyKnown = tray.partlyKnown || !piece.weight;
        if (!piece.weight) {
            tray.working.push_back(
                grams(Step::times, "piece weight not known", 0, Basis::notKnown, piece.subject));
            continue;
        }
        tray.weight += *piece.weight * count;
        tray.working.push_back(
            grams(Step::times, "weight of a piece", piece.weight->value, Basis::computed, piece.subject));
    }
    tray.working.push_back(grams(Step::result, "tray weight", tray.weight.value, Basis::computed));
    tray.overLimit = task.liftingLimit && tray.weight > *task.liftingLimit;
    if (task.liftingLimit)
        tray.working.push_back(grams(Step::given, "lifting limit", task.liftingLimit->value, Basis::mine));
}

} // namespace

CircleRows TrayRooms::rows(Millimetres length, Millimetres width, Millimetres diameter) {
    const std::scoped_lock lock(mutex_);
    const std::array key{length.value, width.value, diameter.value};
    if (const auto found = known_.find(key); found != known_.end()) return found->second;
    return known_[key] = circleRows(static_cast<double>(length.value), static_cast<double>(width.value),
                                    static_cast<double>(diameter.value));
}

Result<TrayFillPlan, Problem> fillTrays(const TrayTask& task) {
    if (const auto p = checkTask(task)) return *p;
    std::vector<std::int64_t> all;
    for (const auto& piece : task.pieces)
        all.push_back(piece.count);
    TrayFillPlan plan;
    plan.trays = sizeBySize(task);
    for (const auto run : {RowsRun::along, RowsRun::across}) {
        if (auto mixed = mixedRows(task, all, run); fewer(mixed, plan.trays)) plan.trays = std::move(mixed);
    }
    for (auto& tray : plan.trays) {
        weigh(task, tray);
        plan.overLimit += tray.overLimit ? 1 : 0;
    }
    if (task.tray.owned)
        plan.traysMissing =
            std::max<std::int64_t>(static_cast<std::int64_t>(plan.trays.size()) - *task.tray.owned, 0);
    return plan;
}

} // namespace withy::packing
