// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <utility>
#include <variant>

namespace withy {

/// Either a value or an expected "no" (bad input, nothing available). Mistakes of the programmer
/// are assertions, failures of the outside world are exceptions (core/store); see docs/architecture.md.
template <class T, class E>
class [[nodiscard]] Result {
public:
    Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}

    Result(E error) : held_(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return held_.index() == 0; }

    explicit operator bool() const { return ok(); }

    /// Precondition: ok().
    const T& value() const& {
        assert(ok());
        return *std::get_if<0>(&held_);
    }

    T&& value() && {
        assert(ok());
        return std::move(*std::get_if<0>(&held_));
    }

    const T& operator*() const& { return value(); }

    const T* operator->() const { return &value(); }

    /// Precondition: !ok().
    const E& error() const {
        assert(!ok());
        return *std::get_if<1>(&held_);
    }

private:
    std::variant<T, E> held_;
};

} // namespace withy
