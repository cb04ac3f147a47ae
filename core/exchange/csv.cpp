// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"

#include "core/exchange/utf8.h"

#include <algorithm>

namespace withy::exchange {

namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

std::string_view withoutMark(std::string_view text) {
    return text.starts_with(byteOrderMark) ? text.substr(byteOrderMark.size()) : text;
}

bool isBreak(char c) {
    return c == '\r' || c == '\n';
}

/// CRLF, LF and CR each count once.
int breaksIn(std::string_view text) {
    int n = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool firstOfTwo = text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (isBreak(text[i]) && !firstOfTwo) ++n;
    }
    return n;
}

/// What stands outside quotes in the first row: "semicolon" or "tab" when there is one of these and
/// no comma; empty otherwise.
std::string_view otherSeparator(std::string_view text) {
    std::string_view found;
    bool quoted = false;
    for (const char c : text.substr(std::min(text.find_first_not_of("\r\n"), text.size()))) {
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        if (c == ',') return {};
        if (isBreak(c)) break;
        if (c == ';') found = "semicolon";
        if (c == '\t' && found.empty()) found = "tab";
    }
    return found;
}

class Reader {
public:
    explicit Reader(std::string_view text) : text_(withoutMark(text)) {}

    Result<CsvRows, Problems> read();

private:
    [[nodiscard]] bool done() const { return at_ >= text_.size(); }

    [[nodiscard]] bool at(char c) const { return !done() && text_[at_] == c; }

    bool take(char c) {
        if (!at(c)) return false;
        ++at_;
        return true;
    }

    bool takeBreak() {
        const bool carriageReturn = take('\r');
        const bool lineFeed = take('\n');
        if (carriageReturn || lineFeed) ++line_;
        return carriageReturn || lineFeed;
    }

    void readRow();
    void readField(CsvField& field);
    void readBare(CsvField& field);
    void readQuoted(CsvField& field);
    void checkWidth(const CsvRow& row);
    void stop(ProblemCode code, const CsvField& where, std::string value);

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    bool stopped_ = false;
    CsvRows rows_;
    Problems problems_;
};

void Reader::stop(ProblemCode code, const CsvField& where, std::string value) {
    Problem p;
    p.code = code;
    p.value = std::move(value);
    p.line = where.line;
    p.column = where.column;
    problems_.push_back(std::move(p));
    stopped_ = true;
}

void Reader::readBare(CsvField& field) {
    const std::size_t end = std::min(text_.find_first_of("\",\r\n", at_), text_.size());
    field.text = text_.substr(at_, end - at_);
    at_ = end;
}

void Reader::readQuoted(CsvField& field) {
    ++at_;
    for (;;) {
        const std::size_t end = text_.find('"', at_);
        if (end == std::string_view::npos) {
            // Clipped before it is copied: an unclosed quote takes in the rest of the file.
            stop(ProblemCode::badQuote, field, clipped(text_.substr(at_)));
            return;
        }
        field.text += text_.substr(at_, end - at_);
        at_ = end + 1;
        if (!take('"')) break;
        field.text += '"';
    }
    line_ += breaksIn(field.text);
}

void Reader::readField(CsvField& field) {
    if (at('"'))
        readQuoted(field);
    else
        readBare(field);
    if (stopped_) return;
    if (!isUtf8(field.text) || field.text.find('\0') != std::string::npos)
        stop(ProblemCode::notText, field, {});
    else if (!done() && !at(',') && !isBreak(text_[at_]))
        stop(ProblemCode::badQuote, field, clipped(field.text));
}

void Reader::checkWidth(const CsvRow& row) {
    const std::size_t wanted = rows_.front().fields.size();
    const std::size_t found = row.fields.size();
    if (wanted == found) return;
    Problem p;
    p.code = ProblemCode::raggedRow;
    p.details = {std::to_string(wanted), std::to_string(found)};
    p.line = row.line;
    p.column = static_cast<int>(std::min(wanted, found)) + 1;
    problems_.push_back(std::move(p));
}

void Reader::readRow() {
    CsvRow row;
    row.line = line_;
    do {
        CsvField& field = row.fields.emplace_back();
        field.line = line_;
        field.column = static_cast<int>(row.fields.size());
        readField(field);
    } while (!stopped_ && take(','));
    if (stopped_) return;
    takeBreak();
    rows_.push_back(std::move(row));
    checkWidth(rows_.back());
}

Result<CsvRows, Problems> Reader::read() {
    while (takeBreak()) {
    }
    const CsvField first{{}, line_, 1};
    if (done()) {
        stop(ProblemCode::emptyFile, CsvField{}, {});
    } else if (const auto other = otherSeparator(text_); !other.empty()) {
        stop(ProblemCode::wrongSeparator, first, {});
        problems_.back().details = {std::string(other)};
    }
    while (!stopped_ && !done()) {
        if (!takeBreak()) readRow();
    }
    if (!problems_.empty()) return std::move(problems_);
    return std::move(rows_);
}

std::string inQuotes(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

} // namespace

Result<CsvRows, Problems> parseCsv(std::string_view text) {
    return Reader(text).read();
}

std::string csvField(std::string_view text) {
    const bool bare =
        text.find_first_of("\",\r\n") == std::string_view::npos && !text.starts_with(byteOrderMark);
    return bare ? std::string(text) : inQuotes(text);
}

std::string csvRow(const std::vector<std::string>& fields) {
    // With no comma beside it, an empty field would be no row and a semicolon look like the separator.
    const bool alone = fields.size() == 1;
    if (alone && (fields.front().empty() || fields.front().find_first_of(";\t") != std::string::npos))
        return inQuotes(fields.front()) + "\r\n";
    std::string out;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i > 0) out += ',';
        out += csvField(fields[i]);
    }
    return out + "\r\n";
}

} // namespace withy::exchange
