// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_out.h"

#include "core/exchange/utf8.h"
#include "core/model/words.h"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>

namespace withy::exchange {

namespace {

/// RFC 8259, section 7: quote, backslash and control characters must be escaped, nothing else.
void appendEscaped(std::string& out, char32_t c) {
    constexpr std::string_view hex = "0123456789abcdef";
    constexpr std::string_view named = "\"\\\b\f\n\r\t";
    constexpr std::string_view letters = "\"\\bfnrt";
    const auto at = c < 0x80 ? named.find(static_cast<char>(c)) : std::string_view::npos;
    if (at != std::string_view::npos) {
        out += '\\';
        out += letters[at];
    } else if (c < 0x20) {
        out += "\\u00";
        out += hex[c >> 4U];
        out += hex[c & 0xFU];
    } else {
        appendUtf8(out, c);
    }
}

std::string quoted(std::string_view text) {
    std::string out = "\"";
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint c = codePointAt(text, at);
        appendEscaped(out, c.bytes == 0 ? 0xFFFD : c.value);
        at += c.bytes == 0 ? 1 : c.bytes;
    }
    return out + '"';
}

std::string number(double x) {
    if (!std::isfinite(x)) return "null";
    if (x == 0) return "0"; // and not -0
    // Plain decimals where a person would write them, an exponent only for the very large and small.
    const double size = std::abs(x);
    const auto form = size >= 1e-6 && size < 1e15 ? std::chars_format::fixed : std::chars_format::scientific;
    std::array<char, 64> room{};
    const auto written = std::to_chars(room.data(), room.data() + room.size(), x, form);
    assert(written.ec == std::errc{});
    return std::string(room.data(), written.ptr);
}

} // namespace

std::string_view unitWord(Unit unit) {
    switch (unit) {
    case Unit::none:
        return "none";
    case Unit::stems:
        return "stems";
    case Unit::pieces:
        return "pieces";
    case Unit::millimetres:
        return "mm";
    case Unit::millilitres:
        return "ml";
    case Unit::grams:
        return "g";
    case Unit::minutes:
        return "minutes";
    case Unit::hours:
        return "hours";
    case Unit::days:
        return "days";
    case Unit::celsius:
        return "C";
    case Unit::percent:
        return "%";
    case Unit::minorMoney:
        return "minor units";
    case Unit::count:
        return "count";
    case Unit::time:
        return "minutes since 1970-01-01T00:00";
    }
    return "none";
}

std::string_view stepWord(Step step) {
    constexpr std::array<std::string_view, 6> words{"given", "plus", "minus", "times", "over", "result"};
    return words.at(static_cast<std::size_t>(step));
}

void JsonWriter::newLine() {
    if (layout_ == JsonLayout::compact) return;
    out_ += '\n';
    out_.append(2 * levels_.size(), ' ');
}

/// Comma and line break before the next key, or the next value of an array.
void JsonWriter::separate() {
    if (keyed_) {
        keyed_ = false;
        return;
    }
    if (levels_.empty()) {
        assert(out_.empty());
        return;
    }
    if (!levels_.back().empty) out_ += ',';
    levels_.back().empty = false;
    newLine();
}

JsonWriter& JsonWriter::raw(std::string_view text) {
    assert(keyed_ || levels_.empty() || levels_.back().close == ']');
    separate();
    out_ += text;
    return *this;
}

JsonWriter& JsonWriter::begin(char open, char close) {
    raw(std::string_view(&open, 1));
    levels_.push_back({close});
    return *this;
}

JsonWriter& JsonWriter::end(char close) {
    assert(!keyed_ && !levels_.empty() && levels_.back().close == close);
    const bool empty = levels_.back().empty;
    levels_.pop_back();
    if (!empty) newLine();
    out_ += close;
    return *this;
}

JsonWriter& JsonWriter::beginObject() {
    return begin('{', '}');
}

JsonWriter& JsonWriter::endObject() {
    return end('}');
}

JsonWriter& JsonWriter::beginArray() {
    return begin('[', ']');
}

JsonWriter& JsonWriter::endArray() {
    return end(']');
}

JsonWriter& JsonWriter::key(std::string_view name) {
    assert(!keyed_ && !levels_.empty() && levels_.back().close == '}');
    separate();
    out_ += quoted(name);
    out_ += layout_ == JsonLayout::compact ? ":" : ": ";
    keyed_ = true;
    return *this;
}

JsonWriter& JsonWriter::value(std::string_view text) {
    return raw(quoted(text));
}

JsonWriter& JsonWriter::value(double x) {
    return raw(number(x));
}

JsonWriter& JsonWriter::null() {
    return raw("null");
}

JsonWriter& JsonWriter::value(const WorkingLine& line) {
    return beginObject()
        .member("what", line.what)
        .member("value", line.value)
        .member("unit", unitWord(line.unit))
        .member("step", stepWord(line.step))
        .member("basis", model::wordOf(line.basis))
        .member("source", line.source)
        .member("subject", line.subject)
        .endObject();
}

JsonWriter& JsonWriter::value(const Figure& figure) {
    return beginObject()
        .member("value", figure.value)
        .member("unit", unitWord(figure.unit))
        .member("working", figure.working)
        .endObject();
}

std::string JsonWriter::text() const {
    assert(levels_.empty() && !keyed_ && !out_.empty());
    return layout_ == JsonLayout::compact ? out_ : out_ + '\n';
}

} // namespace withy::exchange
