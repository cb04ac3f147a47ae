// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <string>
#include <vector>

/// Invented designs, one of every kind of piece, which between them use every bloom shape, every profile of
/// container and every finish of a ribbon. What the kept pictures are made of.
namespace withy {

struct TestDesign {
    std::string name; ///< of its picture
    Id<model::Design> design;
};

struct TestDesigns {
    model::Season season;
    std::vector<TestDesign> all;
};

TestDesigns testDesigns();

} // namespace withy
