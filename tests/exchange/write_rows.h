// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"

namespace withy::exchange::tests {

/// Rows that were read, written row by row as tables are.
inline std::string writeRows(const CsvRows& rows) {
    std::string out;
    for (const CsvRow& row : rows) {
        std::vector<std::string> texts;
        for (const CsvField& field : row.fields)
            texts.push_back(field.text);
        out += csvRow(texts);
    }
    return out;
}

} // namespace withy::exchange::tests
