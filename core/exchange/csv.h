// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

/// Comma-separated values as RFC 4180 has them, in UTF-8. Text in, text out; knows nothing of tables.
namespace withy::exchange {

struct CsvField {
    std::string text;
    int line = 0;   ///< where the field begins, counted in lines of the text from 1
    int column = 0; ///< counted in fields from 1
};

struct CsvRow {
    int line = 0; ///< where the row begins
    std::vector<CsvField> fields;
};

/// The header first. Never empty, and every row has as many fields as the header.
using CsvRows = std::vector<CsvRow>;

/// Reads a whole text in linear time. Beyond RFC 4180 it takes a byte-order mark, breaks of LF or CR
/// alone, and passes over lines with nothing on them (a row of one empty field is written "").
/// Spaces belong to the field; within quotes a line break is part of it.
///
/// Problems, each with line and column: emptyFile; wrongSeparator (detail: "semicolon" or "tab") when
/// the header has no comma but one of these; badQuote and notText, where reading stops; and every
/// raggedRow (details: fields wanted, fields found; column: the first that lacks or is too many).
Result<CsvRows, Problems> parseCsv(std::string_view text);

/// The field as it stands in a file: in quotes where it holds a comma, a quote or a line break, or
/// begins like a byte-order mark. Spaces and signs at its front stay as they are.
std::string csvField(std::string_view text);

/// One row with its CRLF. A field that is alone in its row is in quotes too when it is empty or holds a
/// semicolon or tab, so that it is read back as what it is.
std::string csvRow(const std::vector<std::string>& fields);

} // namespace withy::exchange
