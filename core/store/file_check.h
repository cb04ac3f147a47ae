// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/schema_versions.h"

namespace withy::store {

/// What the first 100 bytes say; read without SQLite and without taking any lock.
/// Format: https://www.sqlite.org/fileformat2.html, section 1.3.
struct FileHeader {
    int version = 0;          ///< user_version
    bool interrupted = false; ///< a journal lies beside it: a writer is at work, or died at it
};

/// Throws notThere, isDirectory, cannotRead, empty, notASeason, damaged or laterVersion.
FileHeader inspectHeader(const QString& path, int latestVersion, const Doing& doing);

/// Version, tables as they should be, pages sound, references kept. Gives the version.
/// Throws laterVersion or damaged; never writes. Hold a read transaction around it.
int checkStructure(Connection& connection, const SchemaVersions& versions);

/// The same on a file, which is opened for reading only. Gives the version.
int checkFile(const QString& path, const SchemaVersions& versions, const Doing& doing);

/// Writes a compact copy of what `from` now holds (VACUUM INTO), checks it and only then gives it its
/// name; `from` is only read. Throws alreadyThere when `to` exists.
void copyVerified(const QString& from, const QString& to, const SchemaVersions& versions, const Doing& doing);

} // namespace withy::store
