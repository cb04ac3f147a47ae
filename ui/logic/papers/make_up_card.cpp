// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/conversion.h"
#include "core/plan/index.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/share_rows.h"
#include "ui/logic/papers/make_up_drawing.h"
#include "ui/logic/papers/paper_cautions.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/work_hours.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using papers::Block;
using papers::plain;
using papers::strong;

constexpr double drawingWide = 114; // the left two thirds of either paper
constexpr double drawingHigh = 118;

struct MakeUpCardSay {
    Q_DECLARE_TR_FUNCTIONS(MakeUpCard)
};

/// One design's sheet.
class MakeUpSheet {
public:
    MakeUpSheet(const PaperOrder& order, const plan::BookingPlan& plan, const plan::Index& index,
                const model::Design& design, const plan::SharePlan* share, const StemsByPlant& tallied)
        : order_(order)
        , season_(order.season)
        , plan_(plan)
        , index_(index)
        , design_(design)
        , share_(share)
        , tallied_(tallied)
        , booking_(*season_.bookings.find(plan.booking)) {
        if (const auto at = order.plan.designs.find(design.id); at != order.plan.designs.end())
            facts_ = at->second.get();
        for (const auto& line : plan.lines)
            if (line.design == design.id) {
                pieces_ += line.pieces.value;
                if (const auto* record = season_.lines.find(line.line)) spare_ += record->sparePieces.value;
                lines_.push_back(line.line);
            }
    }

    papers::Document document() {
        papers::Document d;
        d.name = design_.name;
        const auto hours = workHours(season_, order_.plan, plan_.booking, design_.id);
        d.key = utf8(shortDay(hours.makeUpStart.day));
        d.keyNote = utf8(planHours(hours.makeUpStart, hours.makeUpEnd));
        d.facts = facts();
        const auto drawing = makeUpDrawing(season_, design_.id, drawingWide, drawingHigh);
        papers::Columns columns;
        columns.left.push_back(Block{drawing.drawing});
        fillRight(columns.right);
        d.body.push_back(Block{std::move(columns)});
        addGroups(d.body);
        addCautions(d.body);
        if (wants(order_, PaperKind::makeUpCard, PaperPart::conditioning)) addConditioning(d.body);
        if (!design_.makingNotes.empty())
            d.body.push_back(Block{papers::Paragraph{plain(design_.makingNotes), true}});
        if (wants(order_, PaperKind::makeUpCard, PaperPart::writeHere)) d.last.push_back(Block{writeHere()});
        d.footWhat = utf8(MakeUpCardSay::tr("%1, drawn %2").arg(text(booking_.title), drawing.scale));
        d.gauge = gauge();
        return d;
    }

private:
    [[nodiscard]] std::vector<papers::Text> facts() const {
        std::vector<papers::Text> out;
        const auto asked = std::max<std::int64_t>(0, pieces_ - spare_);
        out.push_back(strong(utf8(andSpare(countedPieces(season_, design_, asked), spare_))) +
                      plain(utf8(MakeUpCardSay::tr(" for %1").arg(text(booking_.title)))));
        out.push_back(strong(std::to_string(stemsOf(season_, design_.id))) +
                      plain(utf8(MakeUpCardSay::tr(" stem(s) each", nullptr,
                                                   static_cast<int>(stemsOf(season_, design_.id))))));
        if (design_.minutes)
            out.push_back(strong(utf8(QString::number(*design_.minutes))) +
                          plain(utf8(MakeUpCardSay::tr(" min each, "))) +
                          strong(utf8(whole(static_cast<std::int64_t>(
                              *design_.minutes * static_cast<double>(pieces_) + 0.5)))) +
                          plain(utf8(MakeUpCardSay::tr(" in all"))));
        return out;
    }

    [[nodiscard]] const plan::SlotPlan* slotPlan(Id<model::Slot> id) const {
        if (!facts_) return nullptr;
        for (const auto& s : facts_->slots)
            if (s.slot == id) return &s;
        return nullptr;
    }

    void fillRight(std::vector<Block>& right) const {
        right.push_back(Block{papers::SectionHead{utf8(MakeUpCardSay::tr("In this order")),
                                                  plain(utf8(MakeUpCardSay::tr("stems")))}});
        int number = 0;
        for (const auto* slot : edits::slotsOf(season_, design_.id)) {
            const auto* known = slotPlan(slot->id);
            papers::Text detail;
            if (known && known->cutLength)
                detail = strong(utf8(lengthWords(known->cutLength->length, season_))) +
                         plain(utf8(MakeUpCardSay::tr(", %1").arg(tierWords(slot->tier))));
            else
                detail = plain(utf8(tierWords(slot->tier)));
            if (slot->clump) detail = detail + plain(utf8(MakeUpCardSay::tr(", in a clump")));
            right.push_back(
                Block{papers::SlotRow{std::to_string(++number), std::to_string(slot->count.value),
                                      slot->label, utf8(slotPlantsWords(season_, slot->id)), detail}});
        }
        addWater(right);
        addRibbon(right);
    }

    void addWater(std::vector<Block>& right) const {
        if (!facts_ || !facts_->water) return;
        right.push_back(Block{papers::Spacer{2}});
        right.push_back(Block{papers::FigureLine{
            utf8(millilitresWords(static_cast<double>(facts_->water->water.value), season_)),
            plain(utf8(MakeUpCardSay::tr("water, %1 deep with the stems in")
                           .arg(lengthWords(facts_->water->level, season_))))}});
    }

    void addRibbon(std::vector<Block>& right) const {
        if (!facts_ || !facts_->ribbon || design_.finish == model::RibbonFinish::none) return;
        QStringList ribbons;
        for (const auto& part : season_.ribbonMixParts)
            if (design_.ribbonMix && part.mix == *design_.ribbonMix)
                if (const auto* ribbon = season_.ribbons.find(part.ribbon)) ribbons << text(ribbon->name);
        right.push_back(Block{papers::FigureLine{
            utf8(lengthWords(facts_->ribbon->length, season_)),
            plain(utf8(MakeUpCardSay::tr("ribbon, %n wrap(s)", nullptr, static_cast<int>(design_.wraps)) +
                       (ribbons.isEmpty()
                            ? QString()
                            : MakeUpCardSay::tr(", %1").arg(ribbons.join(QStringLiteral(", "))))))}});
    }

    [[nodiscard]] const shareout::LineShare* sharedLine(Id<model::Line> id) const {
        if (!share_) return nullptr;
        for (const auto& line : share_->share.lines)
            if (line.line == id) return &line;
        return nullptr;
    }

    void addGroups(std::vector<Block>& body) const {
        const QString head = share_ ? MakeUpCardSay::tr("What goes in each, after the share-out")
                                    : MakeUpCardSay::tr("What goes in each, as designed");
        const QString note = share_ ? MakeUpCardSay::tr("one tick a piece; black is what differs")
                                    : MakeUpCardSay::tr("not tallied yet; one tick a piece");
        body.push_back(Block{papers::SectionHead{utf8(head), plain(utf8(note))}});
        if (!share_) return designedGroup(body);
        for (const auto id : lines_) {
            const auto* line = sharedLine(id);
            if (!line) continue;
            const auto groups = shareGroups(season_, *line);
            for (const auto& group : groups)
                body.push_back(Block{groupRow(group, groups.size() > 1)});
        }
        if (const QString left = leftOverWords(season_, tallied_, share_->share); !left.isEmpty())
            body.push_back(Block{papers::Paragraph{plain(utf8(left)), true}});
    }

    [[nodiscard]] papers::PieceGroupRow groupRow(const ShareGroup& group, bool several) const {
        papers::PieceGroupRow row;
        row.count = std::to_string(group.pieces);
        row.unit = utf8(group.noun);
        row.pieces = static_cast<int>(group.pieces);
        if (several) {
            row.collar =
                group.odd ? papers::PieceGroupRow::Collar::square : papers::PieceGroupRow::Collar::round;
            row.collarWord = utf8(MakeUpCardSay::tr("collar"));
        }
        for (const auto& part : group.parts) {
            const auto same = std::count_if(group.parts.begin(), group.parts.end(),
                                            [&](const auto& p) { return p.slot == part.slot; });
            const QString label = same > 1 || part.slotName.isEmpty() ? part.name : part.slotName.toLower();
            row.cells.push_back({std::to_string(part.stems), utf8(label), part.differs});
        }
        return row;
    }

    void designedGroup(std::vector<Block>& body) const {
        papers::PieceGroupRow row;
        row.count = std::to_string(pieces_);
        row.unit = utf8(countedPieces(season_, design_, pieces_).section(QLatin1Char(' '), 1));
        row.pieces = static_cast<int>(pieces_);
        for (const auto* slot : edits::slotsOf(season_, design_.id))
            row.cells.push_back(
                {std::to_string(slot->count.value), utf8(text(slot->label).toLower()), false});
        body.push_back(Block{std::move(row)});
    }

    /// Plants that stand in the design's pieces, as they come out of the share-out or could.
    [[nodiscard]] std::vector<const model::Plant*> plants() const {
        std::set<Id<model::Plant>> seen;
        std::vector<const model::Plant*> all;
        const auto add = [&](Id<model::Plant> id) {
            if (const auto* plant = season_.plants.find(id); plant && seen.insert(id).second)
                all.push_back(plant);
        };
        for (const auto* slot : edits::slotsOf(season_, design_.id))
            for (const auto* choice : edits::plantsOf(season_, slot->id))
                add(choice->plant);
        for (const auto id : lines_)
            if (const auto* line = sharedLine(id))
                for (const auto& slot : line->slots)
                    for (const auto& p : slot.plants)
                        if (p.stems.value > 0) add(p.plant);
        return all;
    }

    void addCautions(std::vector<Block>& body) const {
        std::vector<Id<model::Plant>> ids;
        for (const auto* plant : plants())
            ids.push_back(plant->id);
        papers::Cautions cautions;
        addPlants(plantCautions(season_, index_, ids), cautions);
        cautions.items.push_back(
            {utf8(MakeUpCardSay::tr("Decoration, not food.")),
             utf8(MakeUpCardSay::tr("Heads and water clear of plates; nobody drinks vase water. Knives and "
                                    "wire: cut away from you."))});
        body.push_back(Block{std::move(cautions)});
    }

    void addConditioning(std::vector<Block>& body) const {
        papers::Text all;
        for (const auto* plant : plants()) {
            if (plant->conditioning.empty()) continue;
            if (!all.empty()) all = all + plain(" · ");
            all = all + strong(plant->name) + plain(": " + plant->conditioning);
        }
        if (!all.empty()) body.push_back(Block{papers::Paragraph{all, true}});
    }

    [[nodiscard]] papers::WriteHere writeHere() const {
        return {utf8(MakeUpCardSay::tr("Write here,\ntype in later")),
                {{utf8(MakeUpCardSay::tr("minutes for all %1").arg(pieces_)), 38},
                 {utf8(MakeUpCardSay::tr("left over, which")), 0},
                 {utf8(MakeUpCardSay::tr("made by")), 34}}};
    }

    [[nodiscard]] papers::CuttingGauge gauge() const {
        papers::CuttingGauge gauge;
        if (Units(season_).imperial()) gauge.tick = millimetresInInch / 2, gauge.ticksToLong = 2;
        std::set<std::pair<std::int64_t, model::Tier>> seen;
        for (const auto* slot : edits::slotsOf(season_, design_.id)) {
            const auto* known = slotPlan(slot->id);
            if (!known || !known->cutLength) continue;
            const auto mm = known->cutLength->length.value;
            if (!seen.insert({mm, slot->tier}).second) continue;
            gauge.marks.push_back(
                {static_cast<double>(mm),
                 utf8(MakeUpCardSay::tr("%1 %2").arg(tierWords(slot->tier),
                                                     lengthFigure(static_cast<double>(mm), season_)))});
        }
        gauge.words =
            utf8(MakeUpCardSay::tr("cutting gauge, true at 100 % only: stem foot at the foot of the sheet"));
        return gauge;
    }

    const PaperOrder& order_;
    const model::Season& season_;
    const plan::BookingPlan& plan_;
    const plan::Index& index_;
    const model::Design& design_;
    const plan::SharePlan* share_;
    StemsByPlant tallied_;
    const model::Booking& booking_;
    const plan::DesignPlan* facts_ = nullptr;
    std::int64_t pieces_ = 0; ///< spare ones included
    std::int64_t spare_ = 0;
    std::vector<Id<model::Line>> lines_;
};

/// A share-out with what of it came in by the tally.
struct SharedStems {
    plan::SharePlan plan;
    StemsByPlant tallied;
};

/// The share-out, once anything is tallied and as long as it can be made.
std::optional<SharedStems> shareFor(const PaperOrder& order, const plan::BookingPlan& plan) {
    if (!isTallied(order.season, plan.booking)) return std::nullopt;
    const Day bench = workHours(order.season, order.plan, plan.booking).makeUpStart.day;
    const auto store = storeFor(order.season, order.plan.cover.get(), plan.booking, bench);
    auto share = plan::planShare(order.season, plan.booking, store);
    if (!share.ok()) return std::nullopt;
    SharedStems out{std::move(share).value(), {}};
    out.tallied = talliedOf(out.plan, store);
    return out;
}

} // namespace

papers::Document makeUpCard(const PaperOrder& order) {
    const auto& plan = *order.plan.bookings.at(*order.booking);
    const plan::Index index(order.season);
    const auto share = shareFor(order, plan);
    std::vector<papers::Document> sheets;
    std::set<Id<model::Design>> seen;
    for (const auto& line : plan.lines) {
        const auto* design = order.season.designs.find(line.design);
        if (!design || !seen.insert(line.design).second) continue;
        sheets.push_back(MakeUpSheet(order, plan, index, *design, share ? &share->plan : nullptr,
                                     share ? share->tallied : StemsByPlant())
                             .document());
    }
    papers::Document d;
    if (sheets.empty()) {
        d.name = order.season.bookings.find(plan.booking)->title;
        d.body.push_back(
            Block{papers::Paragraph{plain(utf8(MakeUpCardSay::tr("No pieces are booked yet.")))}});
        return d;
    }
    d = std::move(sheets.front());
    sheets.erase(sheets.begin());
    d.sheets = std::move(sheets);
    return d;
}

} // namespace withy::ui
