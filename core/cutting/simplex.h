// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace withy::cutting {

/// A column of a linear programme, by its entries that are not nought.
struct LpColumn {
    std::vector<std::pair<std::size_t, double>> entries; ///< row, value
    double cost = 0;
};

/// min c x, A x = b, x >= 0, b >= 0: the revised primal simplex method with the inverse of the basis held in
/// full (V. Chvatal, Linear Programming, Freeman 1983, chapters 7 and 13), columns handed in one by one. The
/// right-hand sides are moved by up to two ten-millionths each, always alike, which keeps ties in the ratio
/// test from going round in circles; a bound must therefore be drawn from the duals, not from value().
class Simplex {
public:
    /// Starts from one unit column for each row, with these costs.
    Simplex(const std::vector<double>& rhs, const std::vector<double>& startCost);

    [[nodiscard]] const std::vector<double>& duals() const { return duals_; }

    [[nodiscard]] double reducedCost(const LpColumn& column) const;

    /// Brings the column in. False when no row holds it back or the basis has become singular.
    bool enter(const LpColumn& column, std::size_t id);

    /// Column in each row's place, `start` for a starting column, and its value.
    [[nodiscard]] const std::vector<std::size_t>& ids() const { return ids_; }

    [[nodiscard]] const std::vector<double>& values() const { return values_; }

    [[nodiscard]] double value() const;

    /// Multiplications so far, roughly.
    [[nodiscard]] std::int64_t work() const { return work_; }

    static constexpr std::size_t start = static_cast<std::size_t>(-1);

private:
    [[nodiscard]] double& at(std::size_t row, std::size_t column) { return inverse_[row * rows_ + column]; }

    [[nodiscard]] double at(std::size_t row, std::size_t column) const {
        return inverse_[row * rows_ + column];
    }

    [[nodiscard]] std::size_t leaving(const std::vector<double>& direction) const;
    void pivot(std::size_t row, const std::vector<double>& direction);
    [[nodiscard]] bool drifted() const;
    bool invert();
    void recompute();

    std::size_t rows_ = 0;
    std::vector<double> rhs_;
    std::vector<double> inverse_;
    std::vector<LpColumn> basis_;
    std::vector<std::size_t> ids_;
    std::vector<double> values_;
    std::vector<double> duals_;
    std::int64_t work_ = 0;
    int sinceCheck_ = 0;
};

} // namespace withy::cutting
