// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace withy::test {

/// The SQL of a fresh season, made from the description of the model (model::allTables()).
/// `store_tests --schema` prints it. A released version's file is never made anew: what changes
/// afterwards is a step of its own (002_what.sql).
std::string schemaText();

} // namespace withy::test
