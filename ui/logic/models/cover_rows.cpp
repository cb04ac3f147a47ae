// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cover_rows.h"

#include "core/base/working_lines.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/cover_words.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace withy::ui {

namespace {

using plan::Level;

constexpr std::int64_t plentyTimes = 4; ///< of what is needed: beyond it a bar only says that there is plenty

class Rows {
    Q_DECLARE_TR_FUNCTIONS(CoverPage)

public:
    explicit Rows(const CoverView& view) : view_(view), season_(view.season) {
        for (const auto level : {Level::cautious, Level::likely})
            if (view.all.allocations[plan::indexOf(level)])
                free_[plan::indexOf(level)].emplace(*view.all.allocations[plan::indexOf(level)]);
    }

    Sheet sheet() {
        Sheet sheet;
        sheet.firstTitle = tr("Slot and plant");
        sheet.columns = {{tr("Needed"), true, false},
                         {tr("Covered by"), false, true},
                         {tr("Cautious to hopeful"), false, true},
                         {tr("State"), false, false}};
        for (const auto& line : view_.plan.lines)
            addLine(line, sheet);
        return sheet;
    }

private:
    void addLine(const plan::LinePlan& line, Sheet& sheet) {
        std::vector<const plan::SlotCover*> slots;
        for (const auto& slot : view_.cover.slots)
            if (slot.line == line.line) slots.push_back(&slot);
        if (slots.empty()) return;
        std::stable_sort(slots.begin(), slots.end(), [this](const auto* a, const auto* b) {
            return positionOf(a->slot) < positionOf(b->slot);
        });
        SheetRow head;
        head.key = QStringLiteral("line%1").arg(line.line.value);
        head.look = RowLook::head;
        head.name = nameIn(season_.designs, line.design);
        if (line.pieces.value != 1)
            head.rest = tr("%n of them", nullptr, static_cast<int>(line.pieces.value));
        sheet.rows.push_back(std::move(head));
        for (const auto* slot : slots)
            sheet.rows.push_back(row(line, *slot));
    }

    [[nodiscard]] std::int64_t positionOf(Id<model::Slot> id) const {
        const auto* slot = season_.slots.find(id);
        return slot ? slot->position : 0;
    }

    [[nodiscard]] SheetRow row(const plan::LinePlan& line, const plan::SlotCover& slot) {
        const auto* record = season_.slots.find(slot.slot);
        const auto plantId = leadingPlant(slot);
        const auto* plant = plantId ? season_.plants.find(*plantId) : nullptr;
        SheetRow row;
        row.key = coverKey(slot.line, slot.slot);
        row.dotted = true;
        if (plant) row.dot = plant->colour1;
        row.name = record ? text(record->label) : QString();
        row.rest = plant ? text(plant->name) : QString();
        row.cells = {neededCell(line, slot, record), sourcesCell(slot), reachCell(slot, plant),
                     stateCell(slot)};
        if (slot.at[plan::indexOf(promiseLevel(season_))].shortBy.value > 0 || shortBy(slot).value > 0)
            row.below = below(slot);
        return row;
    }

    [[nodiscard]] static SheetCell neededCell(const plan::LinePlan& line, const plan::SlotCover& slot,
                                              const model::Slot* record) {
        SheetFigure f;
        f.words = whole(slot.needed.value);
        f.means = tr("stems needed, with the spare");
        const std::int64_t each = record ? record->count.value : 0;
        const std::int64_t bare = each * line.pieces.value;
        f.working = {lineOf(Step::given, "pieces", line.pieces.value, Unit::pieces, Basis::mine),
                     lineOf(Step::times, "stems a piece", each, Unit::stems, Basis::mine),
                     lineOf(Step::result, "need", bare, Unit::stems)};
        if (slot.needed.value > bare) {
            f.working.push_back(lineOf(Step::plus, "spare", slot.needed.value - bare, Unit::stems));
            f.working.push_back(lineOf(Step::result, "total", slot.needed.value, Unit::stems));
        }
        f.leadsTo = model::Ref{model::TableKind::designs, line.design.value};
        f.leadWords = tr("Change the design");
        SheetCell cell;
        cell.figure = std::move(f);
        return cell;
    }

    [[nodiscard]] SheetCell sourcesCell(const plan::SlotCover& slot) const {
        SheetCell cell;
        const auto leading = leadingPlant(slot);
        auto rest = sourcesOf(season_, view_.times, slot);
        while (!rest.empty()) {
            const StemSource first = rest.front();
            const auto same = [&](const StemSource& s) {
                return s.plant == first.plant && s.origin == first.origin && s.from == first.from;
            };
            std::vector<StemSource> days;
            std::copy_if(rest.begin(), rest.end(), std::back_inserter(days), same);
            std::erase_if(rest, same);
            const bool told = leading && first.plant == *leading;
            cell.sources.push_back(
                {first.origin, first.mark,
                 told ? sourceWords(days)
                      : tr("%1: %2").arg(nameIn(season_.plants, first.plant), sourceWords(days)),
                 roundByRound(days)});
        }
        if (cell.sources.empty()) {
            cell.words = tr("nothing");
            cell.tone = SheetCell::Tone::second;
        }
        return cell;
    }

    /// Covered, and free besides on the days of the slot's plants.
    [[nodiscard]] std::int64_t there(const plan::SlotCover& slot, Level level) const {
        std::int64_t stems = slot.at[plan::indexOf(level)].covered.value;
        if (!free_[plan::indexOf(level)]) return stems;
        for (const auto& c : slot.choices)
            stems += free_[plan::indexOf(level)]->of(c.plant, c.from, c.to, view_.plan.makeUpStart.day).value;
        return stems;
    }

    /// What the hopeful level gives beyond the likely one on the slot's days.
    [[nodiscard]] std::optional<std::int64_t> hopefulBeyond(const plan::SlotCover& slot) const {
        if (!view_.garden) return std::nullopt;
        std::optional<std::int64_t> beyond;
        for (const auto& [id, outlook] : view_.garden->patches) {
            const auto* patch = season_.patches.find(id);
            if (!patch || !outlook.forecast) continue;
            for (const auto& c : slot.choices) {
                if (c.plant != patch->plant || c.storeOnly) continue;
                for (Day d = c.from - outlook.holdDays; d <= c.to; d = d + 1)
                    if (const auto* day = outlook.forecast->on(d))
                        beyond = beyond.value_or(0) + (day->supply.hopeful - day->supply.likely).value;
            }
        }
        return beyond;
    }

    [[nodiscard]] SheetCell reachCell(const plan::SlotCover& slot, const model::Plant* plant) const {
        SheetReach reach;
        if (plant) reach.colour = plant->colour1;
        reach.need = slot.needed.value;
        reach.cautious = slot.at[plan::indexOf(Level::cautious)].covered.value;
        reach.likely = std::max(reach.cautious, slot.at[plan::indexOf(Level::likely)].covered.value);
        reach.thereCautious = there(slot, Level::cautious);
        reach.thereLikely = std::max(reach.thereCautious, there(slot, Level::likely));
        if (const auto beyond = hopefulBeyond(slot))
            reach.thereHopeful = reach.thereLikely + std::max<std::int64_t>(0, *beyond);
        reach.known = slot.at[plan::indexOf(Level::likely)].supplyKnown || reach.likely > 0;
        reach.inWords = !reach.known         ? tr("not known")
                        : reach.thereHopeful ? tr("%1 needed; %2 cautious, %3 likely, %4 hopeful")
                                                   .arg(whole(reach.need), whole(reach.thereCautious),
                                                        whole(reach.thereLikely), whole(*reach.thereHopeful))
                                             : tr("%1 needed; %2 cautious, %3 likely")
                                                   .arg(whole(reach.need), whole(reach.thereCautious),
                                                        whole(reach.thereLikely));
        if (hasPlenty(slot)) reach.inWords += tr(": %1 times enough").arg(plentyTimes);
        const auto in = swappedIn(season_, view_.times, slot);
        const auto* swap = in.most ? season_.plants.find(*in.most) : nullptr;
        reach.swapped = std::min(in.stems, reach.likely);
        if (swap) reach.swapColour = swap->colour1;
        SheetCell cell;
        cell.reach = std::move(reach);
        return cell;
    }

    /// So much that its bar ends in two hooks.
    [[nodiscard]] bool hasPlenty(const plan::SlotCover& slot) const {
        return slot.needed.value > 0 && there(slot, Level::cautious) >= slot.needed.value * plentyTimes;
    }

    /// "zinnias" that stand in for others.
    [[nodiscard]] QString standIn(const SwappedIn& in) const {
        const QString name = inPassing(season_, *in.most);
        return in.stems == 1 ? name : pluralOf(name);
    }

    /// "covered", and by what, where it is not what the row is named after.
    [[nodiscard]] QString coveredWords(const plan::SlotCover& slot, const QString& state) const {
        const auto in = swappedIn(season_, view_.times, slot);
        if (in.stems > 0 && in.most)
            return in.alone ? tr("%1, %2 by %3").arg(state, whole(in.stems), standIn(in))
                            : tr("%1, %2 by other plants").arg(state, whole(in.stems));
        return hasPlenty(slot) ? tr("%1, %2 times enough").arg(state).arg(plentyTimes) : state;
    }

    [[nodiscard]] SheetCell stateCell(const plan::SlotCover& slot) const {
        const auto& likely = slot.at[plan::indexOf(Level::likely)];
        SheetCell cell;
        SheetJar jar;
        jar.share = slot.needed.value > 0
                        ? static_cast<double>(likely.covered.value) / static_cast<double>(slot.needed.value)
                        : 1;
        if (slot.at[plan::indexOf(Level::cautious)].shortBy.value == 0) {
            jar.state = SheetState::covered;
            cell.words = coveredWords(slot, tr("covered"));
        } else if (likely.shortBy.value == 0) {
            jar.state = SheetState::tight;
            cell.words = coveredWords(slot, tr("tight"));
            cell.tone = SheetCell::Tone::strong;
        } else if (!likely.supplyKnown) {
            cell.words = tr("not known");
            cell.tone = SheetCell::Tone::second;
        } else {
            jar.state = SheetState::missing;
            cell.words = tr("%n short", nullptr, static_cast<int>(likely.shortBy.value));
            cell.tone = SheetCell::Tone::asks;
        }
        cell.jar = jar;
        return cell;
    }

    [[nodiscard]] SheetBelow below(const plan::SlotCover& slot) {
        SheetBelow out;
        out.notes = coverNotes(view_, slot);
        if (shortBy(slot).value == 0)
            out.notes.prepend(
                tr("%n stem(s) of it (comes|come) only if the likely number does. To be sure of (it|them):",
                   nullptr, static_cast<int>(slot.at[plan::indexOf(promiseLevel(season_))].shortBy.value)));
        out.ways = coverWays(view_, slot);
        if (!out.ways.empty() && shortBy(slot).value > 0 && !std::exchange(mainGiven_, true))
            out.ways.front().main = true; // one solid button a page
        return out;
    }

    const CoverView& view_;
    const model::Season& season_;
    std::array<std::optional<cover::FreeStock>, plan::levelCount> free_;
    bool mainGiven_ = false;
};

class Answering {
    Q_DECLARE_TR_FUNCTIONS(CoverPage)

public:
    explicit Answering(const CoverView& view) : view_(view), cover_(view.cover) {}

    Answer answer() {
        if (view_.plan.lines.empty())
            return {{tr("Nothing is ordered yet. Add a piece on the Pieces page."), {}}};
        out_ = stemCountsAnswer(view_.season, view_.plan);
        state();
        if (const auto bought = boughtIn(sourcesOf(view_.season, view_.times, cover_)); bought > 0)
            plain(
                tr(" %1 of them (is|are) bought in.", nullptr, static_cast<int>(bought)).arg(whole(bought)));
        return std::move(out_);
    }

private:
    void state() {
        const auto uncertain = cover_.shortBy(Level::cautious).value;
        const auto known = knownShort();
        const auto dark = unknownShort();
        if (known.empty() && dark == 0) {
            if (uncertain == 0) {
                std::int64_t swapped = 0;
                for (const auto& slot : cover_.slots)
                    swapped += swappedIn(view_.season, view_.times, slot).stems;
                return plain(swapped > 0 ? tr("All are covered, %1 by other plants.").arg(whole(swapped))
                                         : tr("All are covered."));
            }
            plain(tr("All are covered if the garden gives the likely number; "));
            strong(tr("%1 (is|are) not sure", nullptr, static_cast<int>(uncertain)).arg(whole(uncertain)));
            return plain(tr("."));
        }
        const auto covered = cover_.covered[plan::indexOf(Level::likely)].value;
        plain(covered == 0 ? tr("None are covered")
                           : tr("Of the %1, %2 (is|are) covered", nullptr, static_cast<int>(covered))
                                 .arg(whole(cover_.needed.value), whole(covered)));
        for (std::size_t i = 0; i < known.size(); ++i) {
            plain(i == 0 ? tr(", ") : i + 1 == known.size() ? tr(" and ") : tr(", "));
            asks(known.size() == 1 || i + 1 == known.size()
                     ? tr("%1 %2 (is|are) short", nullptr, static_cast<int>(known[i].second))
                           .arg(whole(known[i].second), named(known[i]))
                     : tr("%1 %2").arg(whole(known[i].second), named(known[i])));
        }
        if (!known.empty()) plain(mend());
        plain(tr("."));
        if (dark > 0) plain(tr(" Of %1 nothing is known yet.").arg(whole(dark)));
    }

    /// By what the plant is called, in the order of the slots.
    [[nodiscard]] std::vector<std::pair<QString, std::int64_t>> knownShort() const {
        std::vector<std::pair<QString, std::int64_t>> all;
        for (const auto& slot : cover_.slots) {
            if (shortBy(slot).value == 0 || !slot.at[plan::indexOf(Level::likely)].supplyKnown) continue;
            const auto plant = leadingPlant(slot);
            const QString name = plant ? inPassing(view_.season, *plant) : QString();
            const auto same =
                std::find_if(all.begin(), all.end(), [&](const auto& p) { return p.first == name; });
            if (same == all.end())
                all.emplace_back(name, shortBy(slot).value);
            else
                same->second += shortBy(slot).value;
        }
        return all;
    }

    static QString named(const std::pair<QString, std::int64_t>& missing) {
        return missing.second == 1 ? missing.first : pluralOf(missing.first);
    }

    [[nodiscard]] std::int64_t unknownShort() const {
        std::int64_t sum = 0;
        for (const auto& slot : cover_.slots)
            if (!slot.at[plan::indexOf(Level::likely)].supplyKnown) sum += shortBy(slot).value;
        return sum;
    }

    /// The easiest way that mends every short slot.
    [[nodiscard]] QString mend() const {
        int slots = 0;
        int swaps = 0;
        int purchases = 0;
        int fewer = 0;
        for (const auto& slot : cover_.slots) {
            if (shortBy(slot).value == 0 || !slot.at[plan::indexOf(Level::likely)].supplyKnown) continue;
            ++slots;
            const auto has = [&](plan::MendKind kind) {
                return std::any_of(slot.mends.begin(), slot.mends.end(), [&](const plan::Mend& m) {
                    return m.kind == kind && m.stems >= shortBy(slot) && !m.orderLate;
                });
            };
            swaps += has(plan::MendKind::swap);
            purchases += has(plan::MendKind::buy);
            fewer += has(plan::MendKind::fewerPieces);
        }
        if (slots == 0) return {};
        if (swaps == slots)
            return slots == 1 ? tr(", and one swap would mend it")
                              : tr(", and %n swap(s) would mend it", nullptr, slots);
        if (purchases == slots) return tr(", and buying in would mend it");
        if (fewer == slots) return tr(", and fewer pieces would mend it");
        return {};
    }

    void plain(const QString& words) { out_.push_back({words, AnswerPart::Weight::plain}); }

    void strong(const QString& words) { out_.push_back({words, AnswerPart::Weight::strong}); }

    void asks(const QString& words) { out_.push_back({words, AnswerPart::Weight::asks}); }

    const CoverView& view_;
    const plan::BookingCover& cover_;
    Answer out_;
};

} // namespace

Answer coverAnswer(const CoverView& view) {
    return Answering(view).answer();
}

Sheet coverSheet(const CoverView& view) {
    return Rows(view).sheet();
}

QString coverKey(Id<model::Line> line, Id<model::Slot> slot) {
    return QStringLiteral("slot%1.%2").arg(line.value).arg(slot.value);
}

const plan::SlotCover* slotOf(const plan::BookingCover& cover, const QString& key) {
    for (const auto& slot : cover.slots)
        if (coverKey(slot.line, slot.slot) == key) return &slot;
    return nullptr;
}

} // namespace withy::ui
