// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"

/// Turns a member pointer into a FieldInfo. Only the describe_*.cpp files include this.
namespace withy::model::fields {

/// How a member type travels as a Value. Specialised for every type a record may hold.
template <class T>
struct Shape;

template <>
struct Shape<std::int64_t> {
    static constexpr FieldKind kind = FieldKind::whole;

    static Value get(std::int64_t v) { return v; }

    static std::optional<std::int64_t> from(const Value& v) { return std::get<std::int64_t>(v); }
};

template <>
struct Shape<double> {
    static constexpr FieldKind kind = FieldKind::real;

    static Value get(double v) { return v; }

    static std::optional<double> from(const Value& v) {
        if (const auto* whole = std::get_if<std::int64_t>(&v)) return static_cast<double>(*whole);
        return std::get<double>(v);
    }
};

template <>
struct Shape<bool> {
    static constexpr FieldKind kind = FieldKind::yesNo;

    static Value get(bool v) { return std::int64_t{v ? 1 : 0}; }

    static std::optional<bool> from(const Value& v) { return std::get<std::int64_t>(v) != 0; }
};

template <>
struct Shape<std::string> {
    static constexpr FieldKind kind = FieldKind::text;

    static Value get(const std::string& v) { return v; }

    static std::optional<std::string> from(const Value& v) { return std::get<std::string>(v); }
};

template <>
struct Shape<Day> {
    static constexpr FieldKind kind = FieldKind::day;

    static Value get(Day v) { return v.iso(); }

    static std::optional<Day> from(const Value& v) { return Day::parse(std::get<std::string>(v)); }
};

template <>
struct Shape<LocalTime> {
    static constexpr FieldKind kind = FieldKind::localTime;

    static Value get(LocalTime v) { return v.iso(); }

    static std::optional<LocalTime> from(const Value& v) {
        return LocalTime::parse(std::get<std::string>(v));
    }
};

template <>
struct Shape<Colour> {
    static constexpr FieldKind kind = FieldKind::colour;

    static Value get(Colour v) { return v.hex(); }

    static std::optional<Colour> from(const Value& v) { return Colour::parse(std::get<std::string>(v)); }
};

template <>
struct Shape<Money> {
    static constexpr FieldKind kind = FieldKind::money;

    static Value get(Money v) { return v.minor; }

    static std::optional<Money> from(const Value& v) { return Money{std::get<std::int64_t>(v)}; }
};

template <class U>
struct Shape<Quantity<U>> {
    static constexpr FieldKind kind = FieldKind::whole;

    static Value get(Quantity<U> v) { return v.value; }

    static std::optional<Quantity<U>> from(const Value& v) { return Quantity<U>(std::get<std::int64_t>(v)); }
};

template <class R>
struct Shape<Id<R>> {
    static constexpr FieldKind kind = FieldKind::reference;
    static constexpr TableKind refersTo = kindOf<R>;

    static Value get(Id<R> v) { return v.value; }

    static std::optional<Id<R>> from(const Value& v) { return Id<R>(std::get<std::int64_t>(v)); }
};

template <class E>
requires std::is_enum_v<E>

struct Shape<E> {
    static constexpr FieldKind kind = FieldKind::word;

    static Value get(E v) { return std::string(wordOf(v)); }

    static std::optional<E> from(const Value& v) { return fromWord<E>(std::get<std::string>(v)); }
};

template <class T>
struct Unwrapped {
    using Type = T;
    static constexpr bool optional = false;
};

template <class T>
struct Unwrapped<std::optional<T>> {
    using Type = T;
    static constexpr bool optional = true;
};

/// What the describe_*.cpp files say of a field beyond its type.
struct Limits {
    double least = std::numeric_limits<double>::lowest();
    double most = std::numeric_limits<double>::max();
    std::size_t longest = 200;
    bool required = false;
    std::string_view unit = {};
};

inline Limits number(double least, double most, std::string_view unit = {}) {
    return {.least = least, .most = most, .unit = unit};
}

inline Limits text(std::size_t longest) {
    return {.longest = longest};
}

inline Limits needed(std::size_t longest = 200) {
    return {.longest = longest, .required = true};
}

template <class R, class T>
FieldInfo field(std::string_view name, T R::*member, Limits limits = {}) {
    using Plain = typename Unwrapped<T>::Type;
    using S = Shape<Plain>;
    FieldInfo f;
    f.name = name;
    f.kind = S::kind;
    f.optional = Unwrapped<T>::optional;
    f.least = limits.least;
    f.most = limits.most;
    f.longest = limits.longest;
    f.required = limits.required;
    f.unit = limits.unit;
    if constexpr (S::kind == FieldKind::reference) f.refersTo = S::refersTo;
    if constexpr (S::kind == FieldKind::word) f.words = Words<Plain>::list;
    f.get = [member](const void* record) -> Value {
        const auto& value = static_cast<const R*>(record)->*member;
        if constexpr (Unwrapped<T>::optional)
            return value ? S::get(*value) : Value{};
        else
            return S::get(value);
    };
    f.set = [member](void* record, const Value& value) {
        auto& target = static_cast<R*>(record)->*member;
        if (isBlank(value)) {
            if constexpr (!Unwrapped<T>::optional) return false;
            target = T{};
            return true;
        }
        auto read = S::from(value);
        if (!read) return false;
        target = std::move(*read);
        return true;
    };
    return f;
}

template <class R>
TableInfo table(std::string_view name, std::string_view nameField, std::vector<FieldInfo> list,
                std::vector<std::string_view> unique = {}) {
    return TableInfo{kindOf<R>, name, nameField, std::move(list), std::move(unique)};
}

} // namespace withy::model::fields
