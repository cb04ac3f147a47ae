// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cutting/box_outside.h"

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace withy::cutting::tests {

namespace {

std::string term(std::int64_t factor, const std::string& name) {
    return (factor < 0 ? " - " : " + ") + std::to_string(std::abs(factor)) + " " + name + "\n";
}

/// One reel or end, for one unit of its count.
struct Length {
    bool reel;
    std::int64_t length;
};

struct BoxRows {
    std::string missing, waste, fromReels; ///< sums
    std::string rows, bounds, generals, binaries;

    explicit BoxRows(const RibbonBox& box) {
        std::vector<Length> lengths;
        for (const auto& on : box.onHand)
            lengths.insert(lengths.end(), static_cast<std::size_t>(on.count),
                           {on.kind == RibbonKind::reel, on.length.value});
        std::int64_t keepFrom = longestRoll;
        for (const auto& piece : box.pieces)
            keepFrom = std::min(keepFrom, piece.length.value);
        if (box.keepFrom) keepFrom = box.keepFrom->value;
        for (std::size_t p = 0; p < box.pieces.size(); ++p) {
            const auto i = std::to_string(p);
            std::string all;
            for (std::size_t s = 0; s < lengths.size(); ++s)
                all += term(1, "x" + i + "_" + std::to_string(s));
            rows +=
                " d" + i + ":" + all + term(1, "m" + i) + " = " + std::to_string(box.pieces[p].count) + "\n";
            generals += " m" + i + "\n";
            missing += term(box.pieces[p].length.value, "m" + i);
        }
        for (std::size_t s = 0; s < lengths.size(); ++s)
            writeLength(box, lengths[s], std::to_string(s), keepFrom);
    }

private:
    /// cut <= length x opened; kept = 1 only when keepFrom or more is left; waste >= left unless kept.
    void writeLength(const RibbonBox& box, const Length& length, const std::string& s,
                     std::int64_t keepFrom) {
        std::string cut;
        for (std::size_t p = 0; p < box.pieces.size(); ++p) {
            const auto x = "x" + std::to_string(p) + "_" + s;
            cut += term(box.pieces[p].length.value, x);
            if (length.reel) fromReels += term(box.pieces[p].length.value, x);
            generals += " " + x + "\n";
            bounds += " 0 <= " + x + " <= " + std::to_string(box.pieces[p].count) + "\n";
        }
        const auto full = std::to_string(length.length);
        rows += " o" + s + ":" + cut + term(-length.length, "y" + s) + " <= 0\n";
        if (keepFrom <= length.length)
            rows += " k" + s + ":" + cut + term(keepFrom, "k" + s + "b") + " <= " + full + "\n";
        else
            rows += " k" + s + ": 1 k" + s + "b = 0\n";
        // waste + cut + length x kept >= length x opened
        rows += " w" + s + ":" + cut + term(1, "w" + s + "v") + term(length.length, "k" + s + "b") +
                term(-length.length, "y" + s) + " >= 0\n";
        binaries += " y" + s + "\n k" + s + "b\n";
        waste += term(1, "w" + s + "v");
    }
};

/// Value of the objective, a whole number.
std::int64_t least(const std::string& sum, const BoxRows& rows, const std::string& fixed,
                   std::string& error) {
    const auto name =
        (std::filesystem::temp_directory_path() / ("withy-box-" + std::to_string(getpid()))).string();
    std::ofstream(name + ".lp") << "Minimize\n least: 0 nought" << sum << "Subject To\n"
                                << rows.rows << fixed << "Bounds\n"
                                << rows.bounds << "Generals\n"
                                << rows.generals << "Binaries\n"
                                << rows.binaries << "End\n";
    // Cuts are quicker, but GLPK 5.0 breaks off with them where its presolver leaves no columns.
    const auto run = [&](const std::string& cuts) {
        const auto command = "glpsol --lp " + name + ".lp " + cuts + "--pcost --tmlim 60 -w " + name +
                             ".out > " + name + ".log 2>&1";
        return std::system(command.c_str()) == 0;
    };
    std::int64_t value = -1;
    if (!run("--cuts ") && !run("")) error = "glpsol failed";
    std::ifstream in(name + ".out");
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line); // s mip ROWS COLUMNS STATUS VALUE, o: optimal
        std::string kind, mip, rowCount, columns, status;
        double found = 0;
        words >> kind;
        if (kind != "s") continue;
        words >> mip >> rowCount >> columns >> status >> found;
        if (mip != "mip" || status != "o") error = "not optimal: " + line;
        if (std::abs(found - std::round(found)) > 1e-4) error = "not whole: " + line;
        value = std::llround(found);
    }
    if (value < 0 && error.empty()) error = "glpsol gave no value";
    for (const char* end : {".lp", ".out", ".log"})
        std::filesystem::remove(name + end);
    return value;
}

} // namespace

bool glpsolIsThere() {
    return std::system("command -v glpsol > /dev/null 2>&1") == 0;
}

BoxCost bestByGlpsol(const RibbonBox& box, std::string& error) {
    const BoxRows rows(box);
    BoxCost best;
    std::string fixed;
    best.missing = least(rows.missing, rows, fixed, error);
    fixed += " fixMissing:" + rows.missing + " <= " + std::to_string(best.missing) + "\n";
    if (error.empty()) best.waste = least(rows.waste, rows, fixed, error);
    fixed += " fixWaste:" + rows.waste + " <= " + std::to_string(best.waste) + "\n";
    if (error.empty() && !rows.fromReels.empty()) best.fromReels = least(rows.fromReels, rows, fixed, error);
    return best;
}

} // namespace withy::cutting::tests
