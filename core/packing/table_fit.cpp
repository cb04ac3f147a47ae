// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/table_fit.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::packing {

namespace {

constexpr std::int64_t longestTable = 100'000;
constexpr std::int64_t mostCoversAsked = 1'000;
constexpr std::int64_t mostOnTable = 200;
constexpr std::int64_t fromHereOneInside = 7; ///< pieces on a round table

WorkingLine mm(Step step, std::string what, double value, Basis basis = Basis::computed) {
    return lineOf(step, std::move(what), value, Unit::millimetres, basis);
}

double real(Millimetres length) {
    return static_cast<double>(length.value);
}

std::optional<Problem> checkTable(const TableTop& table, const PlaceSetting& setting) {
    if (auto p = outside("table_length", table.length.value, 1, longestTable)) return p;
    if (table.form == TableForm::rectangular) {
        if (!table.width) return problemAt(ProblemCode::required, "table_width", "");
        if (auto p = outside("table_width", table.width->value, 1, longestTable)) return p;
    }
    if (auto p = outside("covers", table.covers, 0, mostCoversAsked)) return p;
    if (auto p = outside("covers_at_ends", table.coversAtEnds, 0, table.covers)) return p;
    if (auto p = outside("setting_width", setting.width.value, 1, longestTable)) return p;
    return outside("setting_depth", setting.depth.value, 0, longestTable);
}

void roundMiddle(const TableTop& table, const PlaceSetting& setting, FreeMiddle& middle) {
    const double ratio = real(setting.width) / real(table.length);
    middle.mostCovers =
        ratio >= 1 ? 1 : static_cast<std::int64_t>(std::numbers::pi / std::asin(ratio) + 1e-9);
    middle.tooManyCovers = table.covers > middle.mostCovers;
    const auto taken = table.covers > 0 ? 2 * setting.depth : Millimetres{};
    middle.length = middle.width = table.length - taken;
    middle.working = {mm(Step::given, "table diameter", real(table.length), Basis::mine),
                      mm(Step::minus, "place settings", real(taken), Basis::commonPractice),
                      mm(Step::result, "free middle", real(middle.width))};
}

void straightMiddle(const TableTop& table, const PlaceSetting& setting, FreeMiddle& middle) {
    const auto longSide = table.length.value / setting.width.value;
    const auto shortSide = table.width->value / setting.width.value;
    const auto atSides = table.covers - table.coversAtEnds;
    middle.mostCovers = 2 * longSide + (table.coversAtEnds > 0 ? 2 * shortSide : 0);
    middle.tooManyCovers = atSides > 2 * longSide || table.coversAtEnds > 2 * shortSide;
    // One cover alone sits at one side; two and more face each other.
    const auto deep = [&](std::int64_t covers) { return std::min<std::int64_t>(covers, 2) * setting.depth; };
    middle.length = table.length - deep(table.coversAtEnds);
    middle.width = *table.width - deep(atSides);
    middle.working = {mm(Step::given, "table width", real(*table.width), Basis::mine),
                      mm(Step::minus, "place settings", real(deep(atSides)), Basis::commonPractice),
                      mm(Step::result, "free middle", real(middle.width))};
}

/// Room each piece has on each side when `count` of them share it evenly.
double eachSideOf(const TableTop& table, const FreeMiddle& middle, const PiecesOnTable& pieces) {
    const double footprint = real(pieces.footprint), width = real(middle.width);
    const auto count = static_cast<double>(pieces.count);
    if (table.form == TableForm::rectangular)
        return std::min((width - footprint) / 2, (real(middle.length) - count * footprint) / (2 * count));
    if (pieces.count == 1) return (width - footprint) / 2;
    // A ring of n circles of diameter D in a circle of diameter W: W = D (1 + 1 / sin(pi / n)); from seven on
    // one stands inside, and six or more in the ring leave it room.
    const double ring = pieces.count >= fromHereOneInside ? count - 1 : count;
    const double widest = width / (1 + 1 / std::sin(std::numbers::pi / ring));
    return (widest - footprint) / 2;
}

std::optional<Problem> checkPieces(const PiecesOnTable& pieces) {
    if (auto p = outside("footprint", pieces.footprint.value, 1, longestTable)) return p;
    if (auto p = outside("pieces", pieces.count, 1, mostOnTable)) return p;
    return outside("clearance", pieces.clearance.value, 0, longestTable);
}

} // namespace

Result<FreeMiddle, Problem> freeMiddle(const TableTop& table, const PlaceSetting& setting) {
    if (const auto p = checkTable(table, setting)) return *p;
    FreeMiddle middle;
    if (table.form == TableForm::round)
        roundMiddle(table, setting, middle);
    else
        straightMiddle(table, setting, middle);
    return middle;
}

Result<TableFitAnswer, Problem> fitOnTable(const TableTop& table, const PlaceSetting& setting,
                                           const PiecesOnTable& pieces) {
    auto middle = freeMiddle(table, setting);
    if (!middle.ok()) return middle.error();
    if (const auto p = checkPieces(pieces)) return *p;
    TableFitAnswer answer;
    answer.middle = std::move(middle).value();
    answer.eachSide = eachSideOf(table, answer.middle, pieces);
    const double clearance = real(pieces.clearance);
    answer.fit = answer.eachSide < 0                  ? TableFit::tooBig
                 : answer.eachSide < clearance - 1e-9 ? TableFit::tight
                                                      : TableFit::fits;
    answer.working = answer.middle.working;
    answer.working.push_back(lineOf(Step::given, "pieces", pieces.count, Unit::pieces, Basis::mine));
    answer.working.push_back(mm(Step::minus, "footprint", real(pieces.footprint), Basis::mine));
    answer.working.push_back(mm(Step::given, "clearance wanted", clearance, Basis::mine));
    answer.working.push_back(mm(Step::result, "room on each side", answer.eachSide));
    return answer;
}

Result<std::optional<std::size_t>, Problem> largestThatFits(const TableTop& table,
                                                            const PlaceSetting& setting,
                                                            const PiecesOnTable& pieces,
                                                            const std::vector<Millimetres>& footprints) {
    std::optional<std::size_t> largest;
    for (std::size_t i = 0; i < footprints.size(); ++i) {
        const auto answer = fitOnTable(table, setting, {footprints[i], pieces.count, pieces.clearance});
        if (!answer.ok()) return answer.error();
        if (answer->fit != TableFit::fits) continue;
        if (!largest || footprints[i] > footprints[*largest]) largest = i;
    }
    return largest;
}

Result<SightlineAnswer, Problem> sightline(const SightlineAsked& asked) {
    if (const auto p = outside("top", asked.top.value, 0, longestTable)) return *p;
    if (asked.underside) {
        if (const auto p = outside("underside", asked.underside->value, 0, longestTable)) return *p;
        if (*asked.underside > asked.top)
            return problemAt(ProblemCode::moreThan, "underside", std::to_string(asked.underside->value),
                             {"top", std::to_string(asked.top.value)});
    }
    if (const auto p = outside("eye_line", asked.eyeLine.value, 1, longestTable)) return *p;
    if (const auto p = outside("eye_band", asked.eyeBand.value, 0, 2 * asked.eyeLine.value)) return *p;
    const auto half = asked.eyeBand.value / 2;
    const Millimetres low = asked.eyeLine - Millimetres(half), high = asked.eyeLine + Millimetres(half);
    SightlineAnswer answer;
    if (asked.top < low) {
        answer.sight = Sightline::below;
        answer.spare = low - asked.top;
    } else if (asked.underside && *asked.underside > high) {
        answer.sight = Sightline::above;
        answer.spare = *asked.underside - high;
    } else {
        answer.sight = Sightline::inTheWay;
        answer.lowerBy = asked.top - low + Millimetres(1);
        if (asked.underside) answer.raiseBy = high - *asked.underside + Millimetres(1);
    }
    answer.working = {mm(Step::given, "eye line over the table", real(asked.eyeLine), Basis::commonPractice),
                      mm(Step::given, "top of the piece", real(asked.top)),
                      mm(Step::result, answer.sight == Sightline::inTheWay ? "too high by" : "clear by",
                         real(answer.sight == Sightline::inTheWay ? answer.lowerBy : answer.spare))};
    return answer;
}

} // namespace withy::packing
