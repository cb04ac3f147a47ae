// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/simplex.h"

#include <algorithm>
#include <cmath>

namespace withy::cutting {

namespace {

constexpr double leastPivot = 1e-9;
constexpr double mostDrift = 1e-8;
constexpr int pivotsBetweenChecks = 32;

} // namespace

Simplex::Simplex(const std::vector<double>& rhs, const std::vector<double>& startCost)
    : rows_(rhs.size())
    , rhs_(rhs)
    , inverse_(rhs.size() * rhs.size(), 0.0)
    , basis_(rhs.size())
    , ids_(rhs.size(), start) {
    std::uint32_t noise = 12345;
    for (std::size_t r = 0; r < rows_; ++r) {
        noise = noise * 1664525U + 1013904223U; // Numerical Recipes' linear congruence: always the same
        rhs_[r] += 1e-7 * (1 + static_cast<double>(noise >> 8) / (1U << 24));
        at(r, r) = 1;
        basis_[r] = {{{r, 1.0}}, startCost[r]};
    }
    recompute();
}

double Simplex::reducedCost(const LpColumn& column) const {
    double cost = column.cost;
    for (const auto& [row, value] : column.entries)
        cost -= duals_[row] * value;
    return cost;
}

double Simplex::value() const {
    double sum = 0;
    for (std::size_t r = 0; r < rows_; ++r)
        sum += basis_[r].cost * values_[r];
    return sum;
}

std::size_t Simplex::leaving(const std::vector<double>& direction) const {
    double least = -1;
    for (std::size_t r = 0; r < rows_; ++r) {
        if (direction[r] <= leastPivot) continue;
        const double ratio = (std::max(values_[r], 0.0) + 1e-10) / direction[r];
        if (least < 0 || ratio < least) least = ratio;
    }
    // Of the rows that hold back (nearly) first, the one with the largest pivot: Harris's two passes.
    std::size_t row = start;
    for (std::size_t r = 0; r < rows_; ++r) {
        if (direction[r] <= leastPivot || std::max(values_[r], 0.0) > least * direction[r]) continue;
        if (row == start || direction[r] > direction[row]) row = r;
    }
    return row;
}

void Simplex::pivot(std::size_t row, const std::vector<double>& direction) {
    double* const pivotRow = &at(row, 0);
    const double by = 1 / direction[row];
    for (std::size_t c = 0; c < rows_; ++c)
        pivotRow[c] *= by;
    values_[row] = std::max(values_[row], 0.0) * by;
    for (std::size_t r = 0; r < rows_; ++r) {
        const double factor = direction[r];
        if (r == row || factor == 0) continue;
        double* const line = &at(r, 0);
        for (std::size_t c = 0; c < rows_; ++c)
            line[c] -= factor * pivotRow[c];
        values_[r] -= factor * values_[row];
        work_ += static_cast<std::int64_t>(rows_);
    }
}

bool Simplex::enter(const LpColumn& column, std::size_t id) {
    std::vector<double> direction(rows_, 0.0);
    for (std::size_t r = 0; r < rows_; ++r) {
        for (const auto& [k, value] : column.entries)
            direction[r] += at(r, k) * value;
    }
    work_ += static_cast<std::int64_t>(rows_ * column.entries.size());
    const auto row = leaving(direction);
    if (row == start) return false;
    const double reduced = reducedCost(column);
    pivot(row, direction);
    basis_[row] = column;
    ids_[row] = id;
    for (std::size_t c = 0; c < rows_; ++c)
        duals_[c] += reduced * at(row, c);
    if (++sinceCheck_ < pivotsBetweenChecks) return true;
    sinceCheck_ = 0;
    return !drifted() || invert();
}

/// Whether the basis times its values misses the right-hand sides, or the duals miss the costs.
bool Simplex::drifted() const {
    std::vector<double> missed = rhs_;
    for (std::size_t r = 0; r < rows_; ++r) {
        for (const auto& [k, value] : basis_[r].entries)
            missed[k] -= value * values_[r];
        if (std::abs(reducedCost(basis_[r])) > mostDrift * (1 + std::abs(basis_[r].cost))) return true;
    }
    return std::any_of(missed.begin(), missed.end(), [](double m) { return std::abs(m) > mostDrift; });
}

/// Gauss-Jordan with partial pivoting, from the columns themselves.
bool Simplex::invert() {
    std::vector<double> matrix(rows_ * rows_, 0.0);
    for (std::size_t c = 0; c < rows_; ++c) {
        for (const auto& [r, value] : basis_[c].entries)
            matrix[r * rows_ + c] = value;
    }
    std::fill(inverse_.begin(), inverse_.end(), 0.0);
    for (std::size_t r = 0; r < rows_; ++r)
        at(r, r) = 1;
    for (std::size_t c = 0; c < rows_; ++c) {
        std::size_t best = c;
        for (std::size_t r = c + 1; r < rows_; ++r) {
            if (std::abs(matrix[r * rows_ + c]) > std::abs(matrix[best * rows_ + c])) best = r;
        }
        if (std::abs(matrix[best * rows_ + c]) < leastPivot) return false;
        for (std::size_t k = 0; k < rows_; ++k) {
            std::swap(matrix[c * rows_ + k], matrix[best * rows_ + k]);
            std::swap(at(c, k), at(best, k));
        }
        const double by = 1 / matrix[c * rows_ + c];
        for (std::size_t k = 0; k < rows_; ++k) {
            matrix[c * rows_ + k] *= by;
            at(c, k) *= by;
        }
        for (std::size_t r = 0; r < rows_; ++r) {
            const double factor = matrix[r * rows_ + c];
            if (r == c || factor == 0) continue;
            for (std::size_t k = 0; k < rows_; ++k) {
                matrix[r * rows_ + k] -= factor * matrix[c * rows_ + k];
                at(r, k) -= factor * at(c, k);
            }
            work_ += 2 * static_cast<std::int64_t>(rows_);
        }
    }
    recompute();
    return true;
}

void Simplex::recompute() {
    values_.assign(rows_, 0.0);
    duals_.assign(rows_, 0.0);
    for (std::size_t r = 0; r < rows_; ++r) {
        for (std::size_t c = 0; c < rows_; ++c) {
            values_[r] += at(r, c) * rhs_[c];
            duals_[c] += basis_[r].cost * at(r, c);
        }
    }
}

} // namespace withy::cutting
