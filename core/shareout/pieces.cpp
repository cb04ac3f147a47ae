// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/pieces.h"

#include "core/shareout/clumps.h"
#include "core/shareout/even_pieces.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace withy::shareout {

namespace {

/// Stems in one piece by slot and choice, and how many pieces are like it.
using PieceCounts = std::vector<std::vector<std::int64_t>>;
using Likes = std::map<PieceCounts, std::int64_t, std::greater<>>;

bool stands(const SlotAsk& slot) {
    return slot.clump.value > 1;
}

/// Slots as rows, plants as columns. A slot in clumps is one cell of its own: only its total is spread here.
Table tableOf(const LineAsk& line, const PieceCounts& given) {
    Table table;
    table.rows = line.slots.size();
    std::map<Id<model::Plant>, std::size_t> columns;
    for (std::size_t s = 0; s < line.slots.size(); ++s) {
        if (stands(line.slots[s])) {
            const auto all = std::accumulate(given[s].begin(), given[s].end(), std::int64_t{0});
            table.cells.push_back({s, table.columns++, all});
            continue;
        }
        for (std::size_t c = 0; c < given[s].size(); ++c) {
            const auto [column, first] = columns.try_emplace(line.slots[s].choices[c].plant, table.columns);
            if (first) ++table.columns;
            table.cells.push_back({s, column->second, given[s][c]});
        }
    }
    return table;
}

/// From counts by cell back to slots and choices; a slot in clumps has its total in place of choices.
PieceCounts bySlot(const LineAsk& line, const std::vector<std::int64_t>& cells) {
    PieceCounts piece;
    auto cell = cells.begin();
    for (const auto& slot : line.slots) {
        const auto n = stands(slot) ? std::size_t{1} : slot.choices.size();
        piece.emplace_back(cell, cell + static_cast<std::ptrdiff_t>(n));
        cell += static_cast<std::ptrdiff_t>(n);
    }
    return piece;
}

std::vector<PieceCounts> oneByOne(const LineAsk& line, const std::vector<EvenGroup>& groups) {
    std::vector<PieceCounts> pieces;
    for (const auto& group : groups)
        pieces.insert(pieces.end(), static_cast<std::size_t>(group.pieces), bySlot(line, group.counts));
    return pieces;
}

/// Deals the plants of slot `s` in clumps; gives back how many are whole.
std::int64_t clump(const SlotAsk& ask, const std::vector<std::int64_t>& given, std::size_t s,
                   std::vector<PieceCounts>& pieces) {
    ClumpSlot slot{.size = ask.clump.value, .room = {}, .stems = given};
    for (const auto& piece : pieces)
        slot.room.push_back(piece[s].front());
    auto dealt = clumped(slot);
    for (std::size_t p = 0; p < pieces.size(); ++p)
        pieces[p][s] = std::move(dealt.counts[p]);
    return dealt.wholeClumps;
}

PieceGroup groupOf(const LineAsk& line, const PieceCounts& piece, std::int64_t pieces) {
    PieceGroup group;
    group.pieces = Pieces(pieces);
    for (std::size_t s = 0; s < piece.size(); ++s) {
        for (std::size_t c = 0; c < piece[s].size(); ++c) {
            if (piece[s][c] == 0) continue;
            group.portions.push_back(
                {line.slots[s].slot, line.slots[s].choices[c].plant, Stems(piece[s][c])});
            group.total += group.portions.back().stems;
        }
    }
    return group;
}

std::vector<PieceGroup> groupsOf(const LineAsk& line, const Likes& likes) {
    std::vector<PieceGroup> groups;
    for (const auto& [piece, pieces] : likes)
        groups.push_back(groupOf(line, piece, pieces));
    std::stable_sort(groups.begin(), groups.end(),
                     [](const auto& a, const auto& b) { return a.pieces > b.pieces; });
    return groups;
}

void widen(Stems& fewest, Stems& most, std::int64_t stems, bool first) {
    fewest = first ? Stems(stems) : std::min(fewest, Stems(stems));
    most = first ? Stems(stems) : std::max(most, Stems(stems));
}

SlotShare slotShareOf(const LineAsk& line, std::size_t s, const std::vector<std::int64_t>& given,
                      const Likes& likes) {
    const auto& ask = line.slots[s];
    SlotShare share;
    share.slot = ask.slot;
    share.asked = ask.count * line.pieces.value;
    for (std::size_t c = 0; c < given.size(); ++c) {
        share.plants.push_back({ask.choices[c].plant, Stems(given[c]), {}, {}});
        share.given += Stems(given[c]);
    }
    bool first = true;
    for (const auto& like : likes) {
        const auto& counts = like.first[s];
        widen(share.fewest, share.most, std::accumulate(counts.begin(), counts.end(), std::int64_t{0}),
              first);
        for (std::size_t c = 0; c < counts.size(); ++c)
            widen(share.plants[c].fewest, share.plants[c].most, counts[c], first);
        first = false;
    }
    return share;
}

} // namespace

LineShare piecesOf(const LineAsk& line, const PieceCounts& given) {
    const auto even = evenPieces(tableOf(line, given), line.pieces.value);
    auto pieces = oneByOne(line, even);
    std::vector<std::int64_t> wholeClumps(line.slots.size(), 0);
    for (std::size_t s = 0; s < line.slots.size(); ++s) {
        if (stands(line.slots[s])) wholeClumps[s] = clump(line.slots[s], given[s], s, pieces);
    }
    Likes likes;
    for (auto& piece : pieces)
        ++likes[std::move(piece)];
    LineShare share;
    share.line = line.line;
    share.pieces = line.pieces;
    share.target = line.target();
    share.missing = share.target * line.pieces.value;
    share.groups = groupsOf(line, likes);
    for (std::size_t s = 0; s < line.slots.size(); ++s) {
        share.slots.push_back(slotShareOf(line, s, given[s], likes));
        share.slots.back().wholeClumps = wholeClumps[s];
        share.missing -= share.slots.back().given;
    }
    return share;
}

} // namespace withy::shareout
