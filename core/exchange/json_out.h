// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/money.h"
#include "core/base/working.h"

#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// JSON (RFC 8259) as text, the same bytes for the same calls.
namespace withy::exchange {

/// The units of figures as files say them: "stems", "mm", "C", "%", "minor units", "none" ...
std::string_view unitWord(Unit unit);
/// "given", "plus", "minus", "times", "over", "result".
std::string_view stepWord(Step step);

enum class JsonLayout {
    indented, ///< two spaces a level, a line break at the end
    compact,  ///< no space at all
};

/// Writes one JSON text from the outside in. Calls that would not give JSON (a value without a key
/// within an object, an end without its begin) are mistakes of the programmer and asserted.
///
///     JsonWriter json;
///     json.beginObject().member("title", booking.title).figure("stems", need).key("drops").beginArray();
///     for (const auto& drop : drops) json.beginObject().member("time", drop.time).endObject();
///     const std::string text = json.endArray().endObject().text();
class JsonWriter {
public:
    explicit JsonWriter(JsonLayout layout = JsonLayout::indented) : layout_(layout) {}

    JsonWriter& beginObject();
    JsonWriter& endObject();
    JsonWriter& beginArray();
    JsonWriter& endArray();
    JsonWriter& key(std::string_view name);

    /// Bytes that are not UTF-8 become U+FFFD.
    JsonWriter& value(std::string_view text);
    /// The shortest decimals that read back to the same double; null when it is not finite.
    JsonWriter& value(double number);

    JsonWriter& value(Day day) { return value(std::string_view(day.iso())); }

    JsonWriter& value(LocalTime time) { return value(std::string_view(time.iso())); }

    JsonWriter& value(Colour colour) { return value(std::string_view(colour.hex())); }

    JsonWriter& value(Money amount) { return value(amount.minor); } ///< in minor units

    JsonWriter& null();

    JsonWriter& value(const char* text) { return value(std::string_view(text)); }

    template <std::integral N>
    JsonWriter& value(N number) {
        if constexpr (std::same_as<N, bool>)
            return raw(number ? "true" : "false");
        else
            return raw(std::to_string(number));
    }

    template <class U>
    JsonWriter& value(Quantity<U> quantity) {
        return value(quantity.value);
    }

    template <class R>
    JsonWriter& value(Id<R> id) {
        return value(id.value);
    }

    template <class T>
    JsonWriter& value(const std::optional<T>& maybe) {
        return maybe ? value(*maybe) : null();
    }

    template <class T>
    JsonWriter& value(const std::vector<T>& list) {
        beginArray();
        for (const T& item : list)
            value(item);
        return endArray();
    }

    template <class T>
    JsonWriter& member(std::string_view name, const T& content) {
        return key(name).value(content);
    }

    /// {"value":..,"unit":..,"working":[..]}
    JsonWriter& value(const Figure& figure);
    /// {"what":..,"value":..,"unit":..,"step":..,"basis":..,"source":..,"subject":..}
    JsonWriter& value(const WorkingLine& line);

    JsonWriter& figure(std::string_view name, const Figure& content) { return member(name, content); }

    /// Precondition: all that was begun has ended.
    [[nodiscard]] std::string text() const;

private:
    struct Level {
        char close;
        bool empty = true;
    };

    JsonWriter& begin(char open, char close);
    JsonWriter& end(char close);
    JsonWriter& raw(std::string_view text);
    void separate();
    void newLine();

    JsonLayout layout_;
    std::string out_;
    std::vector<Level> levels_;
    bool keyed_ = false; ///< a key waits for its value
};

} // namespace withy::exchange
