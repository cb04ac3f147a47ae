// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/upgrade.h"

#include "core/store/file_check.h"

namespace withy::store {

void upgrade(Connection& connection, const SchemaVersions& versions, int from) {
    // A step may rebuild a table, which must not be taken for erasing what others refer to. The
    // pragma does nothing inside a transaction, hence before it.
    connection.exec(QStringLiteral("PRAGMA foreign_keys=OFF"));
    {
        Transaction whole(connection, Transaction::Kind::write);
        versions.run(connection, from);
        checkStructure(connection, versions);
        whole.commit();
    }
    connection.exec(QStringLiteral("PRAGMA foreign_keys=ON"));
}

} // namespace withy::store
