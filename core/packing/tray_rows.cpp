// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/tray_rows.h"

#include <algorithm>
#include <numeric>

namespace withy::packing {

namespace {

struct OpenRow {
    std::int64_t base = 0;
    std::int64_t depth = 0;
    std::int64_t used = 0;
};

struct OpenTray {
    FilledTray tray;
    std::vector<OpenRow> rows;
    std::int64_t used = 0; ///< depth of all rows
    Grams weight;
};

class Mixing {
public:
    Mixing(const TrayTask& task, RowsRun run)
        : task_(task), run_(run), along_(task.tray.length.value), deep_(task.tray.width.value) {
        if (run == RowsRun::across) std::swap(along_, deep_);
    }

    void put(std::size_t piece) {
        const auto size = task_.pieces[piece].diameter.value + task_.padding.value;
        for (auto& tray : trays_) {
            if (!mayCarry(task_, tray.weight, task_.pieces[piece])) continue;
            if (putIn(tray, piece, size)) return;
        }
        trays_.emplace_back();
        trays_.back().tray.mixed = true;
        trays_.back().weight = task_.tray.tare.value_or(Grams{});
        putIn(trays_.back(), piece, size);
    }

    std::vector<FilledTray> take() {
        std::vector<FilledTray> filled;
        for (auto& open : trays_)
            filled.push_back(std::move(open.tray));
        return filled;
    }

private:
    bool putIn(OpenTray& tray, std::size_t piece, std::int64_t size) {
        const auto fits = [&](const OpenRow& row) { return row.used + size <= along_ && size <= row.depth; };
        auto row = std::find_if(tray.rows.begin(), tray.rows.end(), fits);
        if (row == tray.rows.end()) {
            if (tray.used + size > deep_ || size > along_) return false;
            tray.rows.push_back({tray.used, size, 0});
            tray.used += size;
            row = tray.rows.end() - 1;
        }
        Place centre{static_cast<double>(row->used) + static_cast<double>(size) / 2,
                     static_cast<double>(row->base) + static_cast<double>(size) / 2};
        if (run_ == RowsRun::across) std::swap(centre.x, centre.y);
        tray.tray.pieces.push_back({piece, centre});
        row->used += size;
        tray.weight += task_.pieces[piece].weight.value_or(Grams{});
        return true;
    }

    const TrayTask& task_;
    RowsRun run_;
    std::int64_t along_, deep_;
    std::vector<OpenTray> trays_;
};

} // namespace

bool mayCarry(const TrayTask& task, Grams held, const TrayPiece& piece) {
    return !task.keepToLimit || !task.liftingLimit ||
           held + piece.weight.value_or(Grams{}) <= *task.liftingLimit;
}

std::vector<FilledTray> mixedRows(const TrayTask& task, const std::vector<std::int64_t>& counts,
                                  RowsRun run) {
    std::vector<std::size_t> order(task.pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return task.pieces[a].diameter > task.pieces[b].diameter; });
    Mixing mixing(task, run);
    for (const auto piece : order) {
        for (std::int64_t n = 0; n < counts[piece]; ++n)
            mixing.put(piece);
    }
    return mixing.take();
}

} // namespace withy::packing
