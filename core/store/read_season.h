// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "core/store/connection.h"
#include "core/store/schema_versions.h"

namespace withy::store {

/// Throws dataAtFault with every problem.
void mustBeLawful(const model::Season& season, const Doing& doing);

/// Reads everything and judges it by the model's rules; throws dataAtFault with every problem.
model::Season readLawful(Connection& connection);

/// Checks and reads a file without ever writing to it, in one view of it even while another writes.
/// What would need writing (a writer died half way, an earlier version) is done on a copy in the
/// system's temporary folder.
model::Season readSnapshot(const QString& path, const SchemaVersions& versions, const Doing& doing);

} // namespace withy::store
