// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_error.h"

#include <utility>

namespace withy::store {

StoreError::StoreError(StoreFault f, Attempt a, QString p, std::string t)
    : fault(f), attempted(a), path(std::move(p)), technical(std::move(t)) {}

const char* wordOf(StoreFault fault) {
    switch (fault) {
    case StoreFault::notThere:
        return "notThere";
    case StoreFault::isDirectory:
        return "isDirectory";
    case StoreFault::empty:
        return "empty";
    case StoreFault::notASeason:
        return "notASeason";
    case StoreFault::damaged:
        return "damaged";
    case StoreFault::dataAtFault:
        return "dataAtFault";
    case StoreFault::laterVersion:
        return "laterVersion";
    case StoreFault::readOnly:
        return "readOnly";
    case StoreFault::lockedBy:
        return "lockedBy";
    case StoreFault::diskFull:
        return "diskFull";
    case StoreFault::cannotRead:
        return "cannotRead";
    case StoreFault::cannotWrite:
        return "cannotWrite";
    case StoreFault::changedByAnother:
        return "changedByAnother";
    case StoreFault::alreadyThere:
        return "alreadyThere";
    }
    return "";
}

void Doing::fail(StoreFault fault, const std::string& technical) const {
    throw StoreError(fault, attempt, path, std::string(wordOf(fault)) + ": " + technical);
}

bool Doing::reads() const {
    return attempt == Attempt::openToRead || attempt == Attempt::openToWrite;
}

} // namespace withy::store
