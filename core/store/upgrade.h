// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/schema_versions.h"

namespace withy::store {

/// Brings a sound file of version `from` to the latest in one transaction; afterwards the tables are
/// as they should be and no reference leads nowhere, or nothing has changed. The caller has a backup.
void upgrade(Connection& connection, const SchemaVersions& versions, int from);

} // namespace withy::store
