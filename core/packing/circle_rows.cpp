// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/circle_rows.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>

namespace withy::packing {

namespace {

constexpr double slack = 1e-9; ///< shares of the diameter

/// Rows in a rectangle `across` wide and `deep`, circles of diameter 1.
struct Rows {
    std::size_t inRow = 0;  ///< circles of the first row
    std::size_t inNext = 0; ///< of every other row
    double step = 1;        ///< within a row
    double shift = 0;       ///< of every other row
    double height = 1;      ///< from a row to a shifted one
    std::size_t rows = 0;
    std::size_t repeats = 0; ///< rows set squarely behind a first-kind row

    [[nodiscard]] std::size_t count() const {
        const std::size_t shifted = rows == 0 ? 0 : (rows - repeats) / 2;
        return rows * inRow - shifted * (inRow - inNext);
    }
};

std::size_t stepsIn(double room, double step) {
    return room < -slack ? 0 : static_cast<std::size_t>((room + slack) / step) + 1;
}

/// Rows whose circles lie `shift` beside those of the row before; two rows on they stand behind each other.
double rowHeight(double shift) {
    return std::max(std::sqrt(std::max(1 - shift * shift, 0.0)), 0.5);
}

void keepBest(const Rows& rows, Rows& best) {
    if (rows.count() > best.count()) best = rows;
}

Rows squareRows(double across, double deep) {
    Rows rows;
    rows.inRow = rows.inNext = stepsIn(across - 1, 1);
    rows.rows = stepsIn(deep - 1, 1);
    rows.repeats = rows.rows == 0 ? 0 : rows.rows - 1;
    return rows;
}

/// All rows of n: the odd ones against one side, the even ones against the other.
void tryEven(std::size_t n, double across, double deep, Rows& best) {
    Rows rows;
    rows.inRow = rows.inNext = n;
    const double room = across - 1, steps = static_cast<double>(n) - 1;
    rows.step = std::max(1.0, room / (steps + 0.5));
    rows.shift = std::max(std::min(rows.step / 2, room - steps * rows.step), 0.0);
    rows.height = rowHeight(rows.shift);
    rows.rows = stepsIn(deep - 1, rows.height);
    keepBest(rows, best);
}

/// Rows of n and n - 1 in turn. Room to spare in the depth lets rows of n follow each other squarely.
void tryUneven(std::size_t n, double across, double deep, Rows& best) {
    Rows rows;
    rows.inRow = n;
    rows.inNext = n - 1;
    rows.step = (across - 1) / (static_cast<double>(n) - 1);
    if (rows.step < 1 - slack) return;
    rows.shift = rows.step / 2;
    rows.height = rowHeight(rows.shift);
    const auto most = stepsIn(deep - 1, rows.height);
    for (std::size_t repeats = 0; repeats < most; ++repeats) {
        const double left = deep - 1 - static_cast<double>(repeats);
        if (left < -slack) break;
        rows.repeats = repeats;
        rows.rows = repeats + stepsIn(left, rows.height);
        keepBest(rows, best);
    }
}

Rows bestStaggered(double across, double deep) {
    Rows best;
    const auto most = stepsIn(across - 1, 1);
    for (std::size_t n = 1; n <= most && deep >= 1 - slack; ++n) {
        tryEven(n, across, deep, best);
        if (n > 1) tryUneven(n, across, deep, best);
    }
    return best;
}

/// Centres for circles of diameter 1.
std::vector<Place> laid(const Rows& rows) {
    std::vector<Place> places;
    double y = 0.5;
    bool shifted = false;
    std::size_t repeats = rows.repeats;
    for (std::size_t r = 0; r < rows.rows; ++r) {
        for (std::size_t i = 0; i < (shifted ? rows.inNext : rows.inRow); ++i)
            places.push_back({0.5 + static_cast<double>(i) * rows.step + (shifted ? rows.shift : 0), y});
        if (!shifted && repeats > 0) {
            --repeats;
            y += 1;
            continue;
        }
        shifted = !shifted;
        y += rows.height;
    }
    return places;
}

/// How far along a line of steps `by` from `from` one stays within 0 and `room`.
void limit(double from, double by, double room, double& first, double& last) {
    if (std::abs(by) < 1e-12) {
        if (from < -slack || from > room + slack) last = first - 1;
        return;
    }
    const double low = (-slack - from) / by, high = (room + slack - from) / by;
    first = std::max(first, std::min(low, high));
    last = std::min(last, std::max(low, high));
}

struct Grid {
    double ux, uy, vx, vy; ///< a step within a row, and to the next row
};

Grid turnedGrid(double step, double shift, double angle) {
    const double height = rowHeight(shift), c = std::cos(angle), s = std::sin(angle);
    return {step * c, step * s, shift * c - height * s, shift * s + height * c};
}

/// The grid's points in a rectangle `a` by `b`, one of them at f, g of a step from the near left corner.
std::size_t gridPoints(const Grid& grid, double a, double b, double f, double g, std::vector<Place>* places) {
    const auto reach = static_cast<int>((a + b) / 0.8) + 3;
    std::size_t count = 0;
    // Only rows that cross the rectangle: its corners, measured across the rows, in steps from row to row.
    const double across = grid.ux * grid.vy - grid.uy * grid.vx;
    const double ends[] = {0.0, -a * grid.uy / across, b * grid.ux / across,
                           (b * grid.ux - a * grid.uy) / across};
    const auto [low, high] = std::minmax_element(std::begin(ends), std::end(ends));
    const int lowest = std::max(-reach, static_cast<int>(std::floor(*low - g)) - 1);
    const int highest = std::min(reach, static_cast<int>(std::ceil(*high - g)) + 1);
    for (int j = lowest; j <= highest; ++j) {
        const double x = (j + g) * grid.vx + f * grid.ux, y = (j + g) * grid.vy + f * grid.uy;
        double first = -2 * reach, last = 2 * reach;
        limit(x, grid.ux, a, first, last);
        limit(y, grid.uy, b, first, last);
        for (double i = std::ceil(first); i <= last; ++i) {
            ++count;
            if (places != nullptr)
                places->push_back(
                    {0.5 + std::clamp(x + i * grid.ux, 0.0, a), 0.5 + std::clamp(y + i * grid.uy, 0.0, b)});
        }
    }
    return count;
}

/// The most points a turned grid can have in a rectangle, wherever it starts: rows that cross it, and points
/// on the longest chord along them.
std::size_t mostPoints(double step, double shift, double angle, double a, double b) {
    const double c = std::abs(std::cos(angle)), s = std::abs(std::sin(angle));
    const double chord = std::min(a / std::max(c, 1e-9), b / std::max(s, 1e-9));
    return (stepsIn(a * s + b * c, rowHeight(shift))) * (stepsIn(chord, step));
}

/// Turned grids that hold more than `than`: a few stretches, shifts, angles of 3 degrees, places to start.
std::vector<Place> bestTurned(double a, double b, std::size_t than) {
    std::vector<Place> places;
    for (const double step : {1.0, 1.05, 1.1, 1.2}) {
        for (const double shift : {0.0, 0.25, 0.5}) {
            for (int degrees = 3; degrees < 180; degrees += 3) {
                const double angle = degrees * std::numbers::pi / 180;
                if (mostPoints(step, shift * step, angle, a, b) <= than) continue;
                const auto grid = turnedGrid(step, shift * step, angle);
                for (int start = 0; start < 36; ++start) {
                    const double f = (start % 6) / 6.0, g = (start / 6) / 6.0;
                    if (gridPoints(grid, a, b, f, g, nullptr) <= than) continue;
                    places.clear();
                    than = gridPoints(grid, a, b, f, g, &places);
                }
            }
        }
    }
    return places;
}

constexpr std::size_t fewCircles = 16; ///< with more, the sides matter too little for turning to help

} // namespace

CircleRows circleRows(double length, double width, double diameter, std::size_t most) {
    const double a = length / diameter, b = width / diameter;
    CircleRows best;
    if (a < 1 - slack || b < 1 - slack || a * b > 1.3 * static_cast<double>(most) + 10) return best;
    const auto offer = [&](std::vector<Place> places, RowsStand stand, RowsRun run) {
        if (places.size() <= best.centres.size() || places.size() > most) return;
        if (run == RowsRun::across)
            for (auto& p : places)
                std::swap(p.x, p.y);
        best = {std::move(places), stand, run};
    };
    offer(laid(squareRows(a, b)), RowsStand::square, RowsRun::along);
    offer(laid(bestStaggered(a, b)), RowsStand::staggered, RowsRun::along);
    offer(laid(bestStaggered(b, a)), RowsStand::staggered, RowsRun::across);
    if (best.centres.size() <= fewCircles)
        offer(bestTurned(a - 1, b - 1, best.centres.size()), RowsStand::turned, RowsRun::along);
    for (auto& p : best.centres)
        p = {p.x * diameter, p.y * diameter};
    return best;
}

} // namespace withy::packing
