// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/tray_fill.h"
#include "core/plan/shed/packing_plan.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

packing::Tray trayOf(const model::Holder& h) {
    return {*h.innerLength, *h.innerWidth, h.tare, std::nullopt};
}

bool goesIn(const model::Holder& h, Millimetres diameter) {
    return diameter + usualPadding <= std::min(*h.innerLength, *h.innerWidth);
}

PackedTray packedOf(const model::Holder& holder, packing::FilledTray&& filled,
                    const std::vector<TrayLine>& lines) {
    PackedTray tray{holder.id,     *holder.innerLength, *holder.innerWidth, {},
                    filled.weight, filled.partlyKnown,  filled.overLimit,   std::move(filled.working)};
    for (const auto& placed : filled.pieces) {
        const auto& line = lines[placed.piece];
        tray.partlyKnown = tray.partlyKnown || line.partlyKnown;
        tray.pieces.push_back({line.line, placed.centre, line.diameter, std::nullopt, 0});
    }
    return tray;
}

std::int64_t piecesIn(const std::vector<PackedTray>& trays) {
    std::int64_t pieces = 0;
    for (const auto& tray : trays)
        pieces += static_cast<std::int64_t>(tray.pieces.size());
    return pieces;
}

/// What is left of the lines once these trays are packed.
std::vector<TrayLine> without(std::vector<TrayLine> lines, const std::vector<PackedTray>& trays) {
    for (const auto& tray : trays)
        for (const auto& piece : tray.pieces)
            for (auto& line : lines)
                if (line.line == piece.line) {
                    --line.count;
                    break;
                }
    std::erase_if(lines, [](const TrayLine& line) { return line.count <= 0; });
    return lines;
}

} // namespace

TrayShelf::TrayShelf(const model::Season& season, packing::TrayRooms* rooms)
    : season_(season), rooms_(rooms) {
    for (const auto& h : season.holders)
        if (h.kind == model::HolderKind::tray && h.innerLength && h.innerWidth)
            kinds_.push_back({&h, h.owned});
}

const model::Holder* TrayShelf::widest() const {
    const model::Holder* widest = nullptr;
    const auto shortSide = [](const model::Holder& h) { return std::min(*h.innerLength, *h.innerWidth); };
    for (const auto& kind : kinds_)
        if (!widest || shortSide(*kind.holder) > shortSide(*widest)) widest = kind.holder;
    return widest;
}

bool TrayShelf::tooWide(Millimetres diameter) const {
    return std::none_of(kinds_.begin(), kinds_.end(),
                        [&](const Kind& kind) { return goesIn(*kind.holder, diameter); });
}

/// All that goes into trays of this kind; the rest comes back loose.
DropTrays TrayShelf::fillFrom(std::size_t kind, const std::vector<TrayLine>& lines) const {
    const auto& holder = *kinds_[kind].holder;
    DropTrays out;
    std::vector<TrayLine> in;
    for (const auto& line : lines) {
        const bool goes = goesIn(holder, line.diameter) && line.weight.value <= packing::heaviestPiece;
        (goes ? in : out.loose).push_back(line);
    }
    std::int64_t all = 0;
    for (const auto& line : in)
        all += line.count;
    if (all > packing::mostTrayPieces) return {{}, lines}; // each by itself, and far too many to be laid out
    out.trays = filled(holder, in);
    return out;
}

std::vector<PackedTray> TrayShelf::filled(const model::Holder& holder,
                                          const std::vector<TrayLine>& in) const {
    packing::TrayTask task;
    task.tray = trayOf(holder);
    task.padding = usualPadding;
    task.rooms = rooms_;
    for (const auto& line : in)
        task.pieces.push_back({line.diameter, line.count, line.weight, line.subject});
    // A limit of nought says that none was set, not that nothing may be lifted.
    if (const Grams limit(std::llround(season_.theSettings().liftingLimitKg * 1000)); limit.value > 0)
        task.liftingLimit = limit;
    auto fill = packing::fillTrays(task);
    std::vector<PackedTray> out;
    if (!fill.ok()) return out; // nothing that the model takes comes to this
    auto trays = std::move(fill).value().trays;
    for (auto& tray : trays)
        out.push_back(packedOf(holder, std::move(tray), in));
    return out;
}

/// Most pieces off the bench, then fewest trays.
std::optional<TrayShelf::Choice> TrayShelf::choose(const std::vector<TrayLine>& lines,
                                                   const std::vector<bool>& tried) const {
    std::optional<Choice> best;
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
        if (tried[k] || (kinds_[k].left && *kinds_[k].left <= 0)) continue;
        auto fill = fillFrom(k, lines);
        const auto packed = piecesIn(fill.trays);
        if (packed == 0) continue;
        const auto most = best ? piecesIn(best->fill.trays) : 0;
        if (packed > most || (packed == most && fill.trays.size() < best->fill.trays.size()))
            best = Choice{k, std::move(fill)};
    }
    return best;
}

/// Whether a kind that is still there could take any of them.
bool TrayShelf::otherTakes(std::size_t kind, const std::vector<TrayLine>& lines,
                           const std::vector<bool>& tried) const {
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
        if (k == kind || tried[k] || (kinds_[k].left && *kinds_[k].left <= 0)) continue;
        if (std::any_of(lines.begin(), lines.end(),
                        [&](const TrayLine& line) { return goesIn(*kinds_[k].holder, line.diameter); }))
            return true;
    }
    return false;
}

DropTrays TrayShelf::fill(const std::vector<TrayLine>& lines) {
    DropTrays out;
    std::vector<TrayLine> rest = lines;
    std::vector<bool> tried(kinds_.size(), false);
    const auto take = [&](std::vector<PackedTray>& trays) {
        rest = without(std::move(rest), trays);
        for (auto& tray : trays)
            out.trays.push_back(std::move(tray));
    };
    while (!rest.empty()) {
        auto choice = choose(rest, tried);
        if (!choice) break;
        tried[choice->kind] = true;
        auto& trays = choice->fill.trays;
        auto& left = kinds_[choice->kind].left;
        // What is over the number owned goes to another kind; the last one is short of trays, and the kit
        // says so.
        if (left && static_cast<std::int64_t>(trays.size()) > *left && otherTakes(choice->kind, rest, tried))
            trays.resize(static_cast<std::size_t>(*left));
        if (left) *left -= static_cast<std::int64_t>(trays.size());
        take(trays);
    }
    for (std::size_t k = 0; k < kinds_.size() && !rest.empty(); ++k) {
        auto fill = fillFrom(k, rest);
        take(fill.trays);
    }
    out.loose = std::move(rest);
    return out;
}

} // namespace withy::plan
