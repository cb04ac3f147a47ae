// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/kit_rows.h"

#include "core/base/working_lines.h"
#include "core/plan/shed/ribbon_days.h"
#include "core/plan/shed_plan.h"
#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/kit_working.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed_words.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using model::TableKind;

/// What one row says: how many are needed, there, missing.
enum class State { enough, isShort, notCounted };

class Kit {
    Q_DECLARE_TR_FUNCTIONS(KitPage)

public:
    Kit(const model::Season& season, const plan::BookingPlan& plan, const plan::ShedPlan* shed)
        : season_(season), kit_(plan.kit), booking_(plan.booking), shed_(shed) {}

    Sheet sheet() {
        Sheet out;
        out.firstTitle = tr("What");
        out.columns = {{tr("Needed"), true, false},
                       {tr("Owned"), true, false},
                       {tr("With others then"), true, false},
                       {tr("Short"), true, false}};
        add(out, tr("Containers"), containers());
        add(out, tr("Ribbons"), ribbons());
        add(out, tr("Sundries"), sundries());
        add(out, tr("Buckets and water"), wet());
        return out;
    }

    Answer answer() {
        if (sheet().rows.empty()) return {{tr("Nothing is needed from the shed yet."), {}}};
        Answer out;
        if (!beside_.isEmpty() && short_.isEmpty())
            out.push_back({tr("Short, with what others have out then: %1.").arg(fewOf(beside_)),
                           AnswerPart::Weight::asks});
        else if (short_.isEmpty() && !unwritten_.isEmpty())
            out.push_back({tr("Enough, if what nobody wrote back is home: %1. Say so under Returns.")
                               .arg(fewOf(unwritten_)),
                           AnswerPart::Weight::asks});
        else if (short_.isEmpty())
            out.push_back({uncounted_ == 0 ? tr("Everything is on the shelf.")
                                           : tr("Nothing that was counted is short."),
                           {}});
        else
            out.push_back({tr("Short: %1.").arg(fewOf(short_ + beside_)), AnswerPart::Weight::asks});
        if (uncounted_ > 0)
            out.push_back(
                {tr(" %n thing(s) nobody has counted yet.", nullptr, uncounted_), AnswerPart::Weight::asks});
        return out;
    }

private:
    /// The rest stands in the rows.
    static QString fewOf(const QStringList& all) {
        constexpr qsizetype most = 3;
        const QString few = all.mid(0, most).join(QStringLiteral(", "));
        return all.size() <= most
                   ? few
                   : tr("%1 and %n more", nullptr, static_cast<int>(all.size() - most)).arg(few);
    }

    static void add(Sheet& out, const QString& head, std::vector<SheetRow> rows) {
        if (rows.empty()) return;
        SheetRow top;
        top.key = head;
        top.look = RowLook::head;
        top.name = head;
        out.rows.push_back(std::move(top));
        for (auto& row : rows)
            out.rows.push_back(std::move(row));
    }

    /// Of what is reckoned in thousandths; a sundry in its unit.
    [[nodiscard]] QString amountOf(const model::Ref& ref, std::int64_t value) const {
        const bool isSundry = ref.table == TableKind::sundries;
        return isSundry ? sundryAmount(season_.sundries.find(Id<model::Sundry>(ref.id)), value)
                        : thousandths(value);
    }

    std::vector<SheetRow> containers() {
        std::vector<SheetRow> rows;
        for (const auto& c : kit_.containers) {
            const model::Ref ref{TableKind::containers, c.container.value};
            const QString name = nameIn(season_.containers, c.container);
            auto row = rowOf(QStringLiteral("container%1").arg(ref.id), name, {});
            row.cells = {total(c.total, name, ref),
                         counted(c.total.onHand, {ref.table, "owned", ref.id, tr("count")})};
            addShort(row, &c.total, c.total.missing, name, ref);
            rows.push_back(std::move(row));
        }
        return rows;
    }

    std::vector<SheetRow> sundries() {
        std::vector<SheetRow> rows;
        for (const auto& s : kit_.sundries) {
            const model::Ref ref{TableKind::sundries, s.sundry.value};
            const auto* sundry = season_.sundries.find(s.sundry);
            const QString name = sundry ? text(sundry->name) : QString();
            auto row = rowOf(QStringLiteral("sundry%1").arg(ref.id), name, {});
            row.cells = {total(s.total, name, ref), left(s.total, name, ref)};
            addShort(row, &s.total, s.total.missing, name, ref);
            rows.push_back(std::move(row));
        }
        return rows;
    }

    SheetCell total(const shed::KitTotal& t, const QString& name, model::Ref ref) {
        if (!t.onHand) ++uncounted_;
        SheetFigure f;
        f.words = amountOf(ref, t.needed) + (t.unknownUses > 0 ? tr(" at least") : QString());
        f.means = tr("of %1 needed").arg(name);
        f.working = t.working;
        f.leadsTo = ref;
        f.leadWords = tr("Show it in the shed");
        return {{}, {}, std::move(f)};
    }

    static SheetCell counted(const std::optional<std::int64_t>& onHand, const SheetField& field) {
        SheetCell cell;
        cell.field = field;
        if (!onHand) cell = {tr("nobody has counted them yet"), SheetCell::Tone::asks, std::nullopt, field};
        return cell;
    }

    /// Of what is used up: what is still on the shelf, as the shed has it.
    SheetCell left(const shed::KitTotal& t, const QString& name, model::Ref ref) const {
        if (!t.onHand) return counted(t.onHand, {ref.table, "on_hand", ref.id, tr("count")});
        const auto day = kitOnDay(shed_, ref, booking_);
        const std::int64_t there = day ? day->owned : *t.onHand;
        SheetFigure f;
        f.words = amountOf(ref, there);
        f.means = tr("of %1 on the shelf").arg(name);
        const auto line = [&](Step step, const char* what, std::int64_t amount, Basis basis) {
            return lineOf(step, what, static_cast<double>(amount) / 1000, Unit::count, basis);
        };
        f.working = {line(Step::given, "on hand", *t.onHand, Basis::counted)};
        if (there < *t.onHand) {
            f.working.push_back(line(Step::minus, "used", *t.onHand - there, Basis::computed));
            f.working.push_back(line(Step::result, "left", there, Basis::computed));
        }
        f.leadsTo = ref;
        f.leadWords = tr("Show it in the shed");
        return {{}, {}, std::move(f)};
    }

    /// With others then, and what that leaves short, as the shelves have it; alone until they are
    /// planned.
    void addShort(SheetRow& row, const shed::KitTotal* total, const std::optional<std::int64_t>& alone,
                  const QString& name, const model::Ref& ref) {
        const std::int64_t scale = ref.table == TableKind::sundries ? 1 : 1000;
        const auto day = kitOnDay(shed_, ref, booking_);
        row.cells.push_back(othersCell(day, name, ref, scale));
        const auto lacking = day ? std::optional(day->lacking * scale) : alone;
        if (!lacking) {
            row.cells.push_back({tr("not known"), SheetCell::Tone::second});
            return;
        }
        if (*lacking > 0)
            (day && day->needed <= day->owned ? beside_ : short_)
                << tr("%1 %2").arg(amountOf(ref, *lacking), name);
        if (*lacking == 0 && day && day->owned < day->needed + day->others + day->broken + day->unwritten)
            unwritten_ << tr("%1 %2").arg(amountOf(ref, day->unwritten * scale), name);
        const bool more = *lacking > 0 || (day && day->others + day->broken > 0);
        if (!more) { // what is needed and what is there stand beside it
            row.cells.push_back({tr("none"), SheetCell::Tone::second});
            return;
        }
        SheetFigure f;
        f.words = *lacking > 0 ? amountOf(ref, *lacking) : tr("none");
        f.means = tr("of %1 short").arg(name);
        if (day)
            f.working = kitShortWorking(season_, *shed_, ref, booking_, *day);
        else if (total)
            f.working = total->working;
        f.leadsTo = ref;
        f.leadWords = tr("Show it in the shed");
        row.cells.push_back(
            {{}, *lacking > 0 ? SheetCell::Tone::asks : SheetCell::Tone::second, std::move(f)});
    }

    SheetCell othersCell(const std::optional<KitOnDay>& day, const QString& name, const model::Ref& ref,
                         std::int64_t scale) const {
        QString words;
        if (day && day->others > 0) words = amountOf(ref, day->others * scale);
        if (day && day->broken > 0)
            words = words.isEmpty() ? tr("%1 broken").arg(whole(day->broken))
                                    : tr("%1, %2 broken").arg(words, whole(day->broken));
        if (words.isEmpty()) return {QStringLiteral("–"), SheetCell::Tone::second};
        SheetFigure f;
        f.words = words;
        f.means = tr("of %1 with others then").arg(name);
        f.working = kitOthersWorking(season_, *shed_, ref, booking_, *day);
        return {{}, {}, std::move(f)};
    }

    std::vector<SheetRow> ribbons() {
        std::vector<SheetRow> rows;
        for (const auto& need : kit_.ribbons) {
            const auto* ribbon = season_.ribbons.find(need.ribbon);
            const QString name = ribbon ? text(ribbon->name) : QString();
            auto row = rowOf(QStringLiteral("ribbon%1").arg(need.ribbon.value), name, {});
            row.dotted = ribbon && ribbon->colour.has_value();
            if (ribbon) row.dot = ribbon->colour;
            QStringList cuts;
            for (const auto& cut : need.cuts)
                cuts << tr("%1 × %2").arg(whole(cut.pieces.value), lengthWords(cut.each, season_));
            row.under = cuts.join(QStringLiteral(" · "));
            row.cells = {ribbonNeeded(need, name),
                         ribbonOnHand(need),
                         {QStringLiteral("–"), SheetCell::Tone::second},
                         ribbonShort(need, name)};
            rows.push_back(std::move(row));
        }
        return rows;
    }

    [[nodiscard]] SheetCell ribbonNeeded(const plan::RibbonNeed& need, const QString& name) const {
        SheetFigure f;
        f.words = reelWords(need.needed, season_);
        f.means = tr("of %1 needed").arg(name);
        f.working = need.working;
        f.leadsTo = model::Ref{TableKind::ribbons, need.ribbon.value};
        f.leadWords = tr("Show its reels and ends");
        return {{}, {}, std::move(f)};
    }

    SheetCell ribbonOnHand(const plan::RibbonNeed& need) {
        if (need.onHand) return {reelWords(*need.onHand, season_), {}};
        ++uncounted_;
        SheetCell cell{tr("nobody has measured it yet"), SheetCell::Tone::asks};
        cell.field = SheetField{TableKind::ribbonLengths, "length", need.ribbon.value,
                                tr("a reel, such as %1").arg(reelExample())};
        return cell;
    }

    [[nodiscard]] QString reelExample() const {
        return Units(season_).imperial() ? reelWords(Millimetres(9144), season_, 0)
                                         : reelWords(Millimetres(9400), season_, 1);
    }

    SheetCell ribbonShort(const plan::RibbonNeed& need, const QString& name) {
        if (!need.missing) return {tr("not known"), SheetCell::Tone::second};
        const auto lacking = ribbonLacking(season_, shed_, booking_, need);
        if (!lacking) return {tr("not planned"), SheetCell::Tone::second};
        if (lacking->value == 0) return {tr("none"), SheetCell::Tone::second};
        short_ << tr("%1 of %2").arg(reelWords(*lacking, season_), name);
        SheetFigure f;
        f.words = reelWords(*lacking, season_);
        f.means = tr("of %1 short").arg(name);
        const auto* cut = cutOf(need.ribbon);
        f.working = cut ? cut->working : need.working;
        f.leadsTo = model::Ref{TableKind::ribbons, need.ribbon.value};
        f.leadWords = tr("Show its reels and ends");
        return {{}, SheetCell::Tone::asks, std::move(f)};
    }

    /// Null: not on the shelf's day, or over.
    [[nodiscard]] const plan::RibbonCutPlan* cutOf(Id<model::Ribbon> ribbon) const {
        const auto* day = shed_ ? edits::ribbonDayOf(shed_, booking_) : nullptr;
        if (!day || plan::ribbonIsOver(season_, *day, shed_->today)) return nullptr;
        const auto found = std::find_if(day->ribbons.begin(), day->ribbons.end(),
                                        [&](const auto& cut) { return cut->ribbon == ribbon; });
        return found == day->ribbons.end() ? nullptr : found->get();
    }

    std::vector<SheetRow> wet() {
        std::vector<SheetRow> rows;
        if (kit_.buckets) rows.push_back(buckets(*kit_.buckets));
        if (kit_.water.total.value > 0 || kit_.water.unknownUses > 0) rows.push_back(water());
        return rows;
    }

    SheetRow buckets(const shed::Buckets& b) {
        auto row = rowOf(QStringLiteral("buckets"), tr("Clean buckets"), {});
        SheetFigure f;
        f.words = whole(b.total) + (b.partlyKnown ? tr(" at least") : QString());
        f.means = tr("buckets needed");
        f.working = b.working;
        const model::Holder* usual = nullptr;
        int kinds = 0;
        for (const auto& h : season_.holders) {
            if (h.kind != model::HolderKind::bucket) continue;
            ++kinds;
            if (!usual || h.owned.value_or(0) > usual->owned.value_or(0)) usual = &h;
        }
        if (usual) {
            f.leadsTo = model::Ref{TableKind::holders, usual->id.value};
            f.leadWords = tr("Show the buckets in the shed");
        }
        SheetCell onHand;
        if (kinds == 1) // of one kind only, so that one count says all
            onHand = counted(kit_.bucketsOwned, {TableKind::holders, "owned", usual->id.value, tr("count")});
        else if (kit_.bucketsOwned)
            onHand = {whole(*kit_.bucketsOwned), {}};
        else
            onHand = {tr("nobody has counted them yet"), SheetCell::Tone::asks};
        if (!kit_.bucketsOwned) ++uncounted_;
        std::optional<std::int64_t> less;
        if (kit_.bucketsOwned) less = std::max<std::int64_t>(0, b.total - *kit_.bucketsOwned) * 1000;
        row.cells = {{{}, {}, std::move(f)}, std::move(onHand)};
        model::Ref shelf{TableKind::holders, 0};
        for (std::size_t i = 0; shed_ && i < shed_->kit.size(); ++i) {
            const auto& ref = shed_->kit[i].item;
            const auto* holder =
                ref.table == TableKind::holders ? season_.holders.find(Id<model::Holder>(ref.id)) : nullptr;
            if (holder && holder->kind == model::HolderKind::bucket) shelf = ref;
        }
        addShort(row, nullptr, less, tr("buckets"), shelf);
        return row;
    }

    SheetRow water() const {
        auto row = rowOf(QStringLiteral("water"), tr("Water for the pieces"), {});
        SheetFigure f;
        f.words = litresWords(kit_.water.litres, season_) +
                  (kit_.water.unknownUses > 0 ? tr(" at least") : QString());
        f.means = tr("of water to fill in");
        f.working = kit_.water.working;
        row.cells = {{{}, {}, std::move(f)}, {tr("from the tap"), SheetCell::Tone::second}, {}, {}};
        return row;
    }

    static SheetRow rowOf(const QString& key, const QString& name, const QString& rest) {
        SheetRow row;
        row.key = key;
        row.name = name;
        row.rest = rest;
        return row;
    }

    const model::Season& season_;
    const plan::KitPlan& kit_;
    Id<model::Booking> booking_;
    const plan::ShedPlan* shed_; ///< null: not planned yet
    QStringList short_;
    QStringList beside_; ///< short only with what other bookings have out
    QStringList unwritten_; ///< what is there only if it has come home
    int uncounted_ = 0;
};

} // namespace

Answer kitAnswer(const model::Season& season, const plan::BookingPlan& plan, const plan::ShedPlan* shed) {
    return Kit(season, plan, shed).answer();
}

Sheet kitSheet(const model::Season& season, const plan::BookingPlan& plan, const plan::ShedPlan* shed) {
    return Kit(season, plan, shed).sheet();
}

} // namespace withy::ui
