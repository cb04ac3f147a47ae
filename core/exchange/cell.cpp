// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cell.h"

#include "core/base/colour.h"
#include "core/base/day.h"
#include "core/base/money.h"
#include "core/exchange/decimal.h"
#include "core/exchange/utf8.h"

#include <charconv>
#include <cmath>

namespace withy::exchange {

using model::FieldInfo;
using model::FieldKind;
using model::Value;

namespace {

using Read = Result<Value, CellTrouble>;

Read trouble(ProblemCode code, std::vector<std::string> details = {}) {
    return CellTrouble{code, std::move(details)};
}

/// A number no 64 bits can hold is past any limit the field has.
Read pastLimit(const FieldInfo& field, std::string_view text, int moneyDigits) {
    const bool low = text.starts_with('-');
    return trouble(low ? ProblemCode::belowLeast : ProblemCode::aboveMost,
                   {limitText(field, low ? field.least : field.most, moneyDigits), std::string(field.unit)});
}

Read readWhole(const FieldInfo& field, std::string_view text) {
    if (!isPlainDecimal(text)) return trouble(ProblemCode::notANumber, plainForms(text));
    const auto point = text.find('.');
    const auto fraction = point == std::string_view::npos ? std::string_view{} : text.substr(point + 1);
    if (fraction.find_first_not_of('0') != std::string_view::npos) return trouble(ProblemCode::notWhole);
    std::int64_t n = 0;
    const char* const end = text.data() + std::min(point, text.size());
    const auto [stopped, error] = std::from_chars(text.data(), end, n);
    if (error != std::errc{} || stopped != end) return pastLimit(field, text, 0);
    return Value(n);
}

Read readReal(const FieldInfo& field, std::string_view text) {
    if (!isPlainDecimal(text)) return trouble(ProblemCode::notANumber, plainForms(text));
    double x = 0;
    const auto [stopped, error] = std::from_chars(text.data(), text.data() + text.size(), x);
    if (error == std::errc{}) return Value(x);
    // Out of range is also said of numbers too near nought; those have no digit before the point.
    const auto whole = text.substr(0, text.find('.'));
    if (whole.find_first_not_of("-0") == std::string_view::npos) return Value(0.0);
    return pastLimit(field, text, 0);
}

Read readMoney(const FieldInfo& field, std::string_view text, int digits) {
    if (!isPlainDecimal(text)) return trouble(ProblemCode::notANumber, plainForms(text));
    const auto point = std::min(text.find('.'), text.size());
    // 14 digits and at most 4 decimals stay within 64 bits, whatever the currency.
    if (point > 14) return pastLimit(field, text, digits);
    const auto amount = parseAmount(text, digits);
    if (!amount) return trouble(ProblemCode::notWhole, {std::to_string(digits)});
    return Value(amount->minor);
}

Read readWord(const FieldInfo& field, std::string_view text) {
    const std::string wanted = folded(text);
    for (const auto word : field.words) {
        if (folded(word) == wanted) return Value(std::string(word));
    }
    return trouble(ProblemCode::notAWord, {field.words.begin(), field.words.end()});
}

Read readYesNo(std::string_view text) {
    const std::string word = folded(text);
    if (word == "yes") return Value(std::int64_t{1});
    if (word == "no") return Value(std::int64_t{0});
    return trouble(ProblemCode::notYesNo);
}

/// Day, time and colour alike: read by their own parser, kept in its own form.
template <class T>
Read readAs(std::string_view text, ProblemCode code, std::string (T::*form)() const) {
    const auto value = T::parse(text);
    if (!value) return trouble(code);
    return Value(((*value).*form)());
}

} // namespace

std::string cellText(const FieldInfo& field, const Value& value, int moneyDigits) {
    if (model::isBlank(value)) return {};
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* real = std::get_if<double>(&value)) return decimalText(*real);
    const std::int64_t n = std::get<std::int64_t>(value);
    if (field.kind == FieldKind::yesNo) return n != 0 ? "yes" : "no";
    if (field.kind == FieldKind::money) return plainAmount(Money{n}, moneyDigits);
    return std::to_string(n);
}

Result<Value, CellTrouble> readCell(const FieldInfo& field, std::string_view cell, int moneyDigits) {
    const std::string_view text = trimmed(cell);
    switch (field.kind) {
    case FieldKind::text:
        return Value(std::string(cell));
    case FieldKind::whole:
        return readWhole(field, text);
    case FieldKind::real:
        return readReal(field, text);
    case FieldKind::money:
        return readMoney(field, text, moneyDigits);
    case FieldKind::yesNo:
        return readYesNo(text);
    case FieldKind::word:
        return readWord(field, text);
    case FieldKind::day:
        return readAs<Day>(text, ProblemCode::notADate, &Day::iso);
    case FieldKind::localTime:
        return readAs<LocalTime>(text, ProblemCode::notATime, &LocalTime::iso);
    case FieldKind::colour:
        return readAs<Colour>(text, ProblemCode::notAColour, &Colour::hex);
    case FieldKind::reference:
        break;
    }
    return trouble(ProblemCode::unknownRecord);
}

std::string limitText(const FieldInfo& field, double limit, int moneyDigits) {
    const bool amount = field.kind == FieldKind::money && std::abs(limit) < 1e15;
    if (amount) return plainAmount(Money{std::llround(limit)}, moneyDigits);
    return decimalText(limit);
}

std::optional<std::int64_t> readId(std::string_view text) {
    std::int64_t n = 0;
    const char* const end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, n);
    if (error != std::errc{} || stopped != end || n < 1 || n > model::mostId) return std::nullopt;
    return n;
}

} // namespace withy::exchange
