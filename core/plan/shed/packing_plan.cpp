// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/packing_plan.h"

#include "core/base/working_lines.h"
#include "core/plan/shed/load_entries.h"
#include "core/plan/shed/piece_sizes.h"
#include "core/plan/shed/water_plan.h"
#include "core/plan/work_times.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using model::TableKind;

/// The drops in the order they are driven to; one without a name where there are none.
std::vector<DropPacking> dropsOf(const ShedInput& in, const model::Booking& booking) {
    std::vector<DropPacking> drops;
    for (const auto* drop : Index::of(in.index.drops, booking.id)) {
        drops.emplace_back();
        drops.back().drop = drop->id;
        drops.back().at = drop->time;
    }
    if (drops.empty()) {
        drops.emplace_back();
        drops.back().at = booking.eventStart - beforeGuests;
    }
    return drops;
}

std::size_t dropOf(const std::vector<DropPacking>& drops, const model::Line& line) {
    for (std::size_t i = 0; i < drops.size(); ++i)
        if (line.drop && drops[i].drop == line.drop) return i;
    return 0;
}

Grams weightOf(const DesignPlan& design, const model::Container* container, Millilitres water, bool& known) {
    const auto weight = designs::pieceWeight(container ? container->emptyWeight : std::optional(Grams(0)),
                                             water, design.stemsPerPiece);
    known = weight.ok() && !weight->containerUnknown;
    return weight.ok() ? weight->total : Grams(0);
}

/// Tables of a placement one after the other, each as often as pieces stand on it.
class TableTeller {
public:
    TableTeller(const model::Season& season, Id<model::Line> line) {
        for (const auto& p : season.placements) {
            const auto* table = p.line == line ? season.venueTables.find(p.table) : nullptr;
            if (table) stands_.push_back({table->id, p.perTable, table->howMany});
        }
    }

    void tell(PackedPiece& piece) {
        for (; at_ < stands_.size(); ++at_, number_ = 1, on_ = 0) {
            const auto& s = stands_[at_];
            if (on_ >= s.perTable) {
                ++number_;
                on_ = 0;
            }
            if (s.perTable <= 0 || number_ > s.howMany) continue;
            ++on_;
            piece.table = s.table;
            piece.tableNumber = number_;
            return;
        }
    }

private:
    struct Stand {
        Id<model::VenueTable> table;
        std::int64_t perTable;
        std::int64_t howMany;
    };

    std::vector<Stand> stands_;
    std::size_t at_ = 0;
    std::int64_t number_ = 1;
    std::int64_t on_ = 0;
};

void tellTables(const model::Season& season, std::vector<DropPacking>& drops) {
    std::map<Id<model::Line>, TableTeller> tellers;
    for (auto& drop : drops)
        for (auto& tray : drop.trays)
            for (auto& piece : tray.pieces)
                tellers.try_emplace(piece.line, season, piece.line).first->second.tell(piece);
}

/// Puts one booking's packing together, step by step.
class Packer {
public:
    Packer(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan)
        : in_(in), booking_(booking), plan_(plan), shelf_(in.season(), in.rooms) {}

    BookingPacking packing() {
        out_.drops = dropsOf(in_, booking_);
        std::vector<PlacedLine> placed;
        for (const auto& line : plan_.lines) {
            const auto* record = in_.season().lines.find(line.line);
            const auto* design = in_.season().designs.find(line.design);
            if (!record || !design || line.pieces.value <= 0) continue;
            const auto drop = dropOf(out_.drops, *record);
            out_.drops[drop].lines.push_back(line.line);
            placed.push_back({line.line, out_.drops[drop].at,
                              pieceSize(in_.season(), *design).travel == PieceTravel::madeThere});
        }
        out_.waters = lineWaters(in_, booking_, placed);
        for (std::size_t d = 0; d < out_.drops.size(); ++d)
            packDrop(d);
        tellTables(in_.season(), out_.drops);
        sumWater();
        addTrayEntries(in_.season(), out_);
        addWaterCans(in_.season(), out_);
        loadEntries(in_, out_);
        findHeavy();
        return std::move(out_);
    }

private:
    const LinePlan& lineOfId(Id<model::Line> id) const {
        return *std::find_if(plan_.lines.begin(), plan_.lines.end(),
                             [&](const LinePlan& l) { return l.line == id; });
    }

    [[nodiscard]] const LineWater* waterOf(Id<model::Line> id) const {
        for (const auto& water : out_.waters)
            if (water.line == id) return &water;
        return nullptr;
    }

    void packDrop(std::size_t d) {
        std::vector<TrayLine> standing;
        for (const auto id : out_.drops[d].lines) {
            const auto& line = lineOfId(id);
            const auto& design = *in_.season().designs.find(line.design);
            const auto size = pieceSize(in_.season(), design);
            const auto* container =
                design.container ? in_.season().containers.find(*design.container) : nullptr;
            const auto* water = waterOf(id);
            bool known = true;
            const Grams weight = weightOf(*in_.plan.designs.at(line.design), container,
                                          water ? water->travel : Millilitres(0), known);
            if (size.travel == PieceTravel::madeThere) {
                addMadeThere(in_, line, *container, d, out_);
            } else if (size.travel == PieceTravel::flat) {
                addLoose(d, id, line.pieces.value, size.length, size.footprint, weight, known);
            } else {
                standing.push_back({id, size.footprint, line.pieces.value, weight, !known, design.name});
            }
        }
        auto filled = shelf_.fill(standing);
        out_.drops[d].trays = std::move(filled.trays);
        for (const auto& line : filled.loose) {
            addLoose(d, line.line, line.count, line.diameter, line.diameter, line.weight, !line.partlyKnown);
            if (shelf_.tooWide(line.diameter)) findTooWide(line);
        }
    }

    void addLoose(std::size_t d, Id<model::Line> line, std::int64_t count, Millimetres length,
                  Millimetres width, Grams weight, bool known) {
        for (std::int64_t i = 0; i < count; ++i) {
            LoadEntry entry;
            entry.kind = LoadKind::piece;
            entry.drop = d;
            entry.line = line;
            entry.count = 1;
            entry.length = length;
            entry.width = width;
            if (known) entry.mass = weight;
            out_.entries.push_back(entry);
        }
    }

    void sumWater() {
        for (const auto& water : out_.waters) {
            const auto* line = in_.season().lines.find(water.line);
            const auto* design = in_.season().designs.find(line->design);
            auto& drop = out_.drops[dropOf(out_.drops, *line)];
            const double topUp = static_cast<double>(water.topUp.value * water.pieces) / 1000;
            const double check = water.checkAt ? static_cast<double>(water.course.toCarry.value) / 1000 : 0.0;
            drop.topUpLitres += topUp;
            drop.checkLitres += check;
            out_.carryLitres += topUp + check;
            out_.carryWorking.push_back(
                lineOf(Step::given, "pieces", water.pieces, Unit::pieces, Basis::mine, {}, design->name));
            out_.carryWorking.push_back(lineOf(Step::times, "top-up on arrival, each", water.topUp.value,
                                               Unit::millilitres, Basis::commonPractice, "no source"));
            if (!water.checkAt) continue;
            append(out_.carryWorking, water.course.working);
            if (!out_.checkAt || *water.checkAt < *out_.checkAt) out_.checkAt = water.checkAt;
        }
        if (!out_.carryWorking.empty())
            out_.carryWorking.push_back(lineOf(Step::result, "water to carry",
                                               std::round(out_.carryLitres * 1000), Unit::millilitres));
    }

    void findTooWide(const TrayLine& line) {
        const auto* tray = shelf_.widest();
        if (!tray) return; // said once for the whole shed
        out_.findings.push_back(
            findingOf(ShedCode::trayTooSmall, Severity::warning, {TableKind::holders, tray->id.value},
                      {tray->name, line.subject},
                      {static_cast<double>(std::min(*tray->innerLength, *tray->innerWidth).value),
                       static_cast<double>((line.diameter + usualPadding).value)}));
    }

    void findHeavy() {
        const double limit = in_.season().theSettings().liftingLimitKg * 1000;
        std::vector<Id<model::Line>> said;
        for (auto& entry : out_.entries) {
            if (!entry.mass) continue;
            entry.overLimit = static_cast<double>(entry.mass->value) > limit;
            out_.mass += *entry.mass;
            out_.heaviest = std::max(out_.heaviest, *entry.mass);
            const auto line = entry.line ? entry.line : lineIn(entry);
            if (!entry.overLimit || !line || std::find(said.begin(), said.end(), *line) != said.end())
                continue;
            said.push_back(*line);
            const auto* design = in_.season().designs.find(in_.season().lines.find(*line)->design);
            out_.findings.push_back(findingOf(ShedCode::liftTooHeavy, Severity::warning,
                                              {TableKind::lines, line->value}, {design->name},
                                              {static_cast<double>(entry.mass->value) / 1000, limit / 1000}));
        }
    }

    [[nodiscard]] std::optional<Id<model::Line>> lineIn(const LoadEntry& entry) const {
        if (!entry.tray) return std::nullopt;
        const auto& pieces = out_.drops[entry.drop].trays[*entry.tray].pieces;
        return pieces.empty() ? std::nullopt : std::optional(pieces.front().line);
    }

    const ShedInput& in_;
    const model::Booking& booking_;
    const BookingPlan& plan_;
    TrayShelf shelf_;
    BookingPacking out_;
};

} // namespace

BookingPacking bookingPacking(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan) {
    return Packer(in, booking, plan).packing();
}

} // namespace withy::plan
