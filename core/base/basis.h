// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace withy {

/// Where a value comes from; shown beside it everywhere (docs/guide).
enum class Basis {
    counted,        ///< counted in the garden or at the bench
    lastSeasons,    ///< from the grower's own past seasons
    published,      ///< a source was read; it is named
    commonPractice, ///< usual in the trade, no source
    fromMemory,     ///< remembered by whoever typed it in, no source
    mine,           ///< the grower's own figure: always wins
    computed,       ///< worked out from the lines above it
    notKnown,       ///< blank
};

} // namespace withy
