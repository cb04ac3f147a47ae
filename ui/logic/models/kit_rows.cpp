// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/kit_rows.h"

#include "core/base/working_lines.h"
#include "core/plan/shed_plan.h"

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
        out.columns = {{tr("Needed"), true, false}, {tr("On hand"), true, false}, {tr("Short"), true, false}};
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

    static QString thousandths(std::int64_t value) {
        return value % 1000 == 0 ? whole(value / 1000) : QString::number(static_cast<double>(value) / 1000);
    }

    std::vector<SheetRow> containers() {
        std::vector<SheetRow> rows;
        for (const auto& c : kit_.containers) {
            const QString name = nameIn(season_.containers, c.container);
            auto row = rowOf(QStringLiteral("container%1").arg(c.container.value), name, {});
            row.cells = {
                total(c.total, name, {TableKind::containers, c.container.value}),
                counted(c.total.onHand, {TableKind::containers, "owned", c.container.value, tr("count")}),
                missing(c.total.missing, name, model::Ref{TableKind::containers, c.container.value})};
            rows.push_back(std::move(row));
        }
        return rows;
    }

    std::vector<SheetRow> sundries() {
        std::vector<SheetRow> rows;
        for (const auto& s : kit_.sundries) {
            const auto* sundry = season_.sundries.find(s.sundry);
            const QString name = sundry ? text(sundry->name) : QString();
            auto row = rowOf(QStringLiteral("sundry%1").arg(s.sundry.value), name,
                             sundry ? tr("by the %1").arg(text(sundry->unit)) : QString());
            row.cells = {
                total(s.total, name, {TableKind::sundries, s.sundry.value}),
                counted(s.total.onHand, {TableKind::sundries, "on_hand", s.sundry.value, tr("count")}),
                missing(s.total.missing, name, model::Ref{TableKind::sundries, s.sundry.value})};
            rows.push_back(std::move(row));
        }
        return rows;
    }

    SheetCell total(const shed::KitTotal& t, const QString& name, model::Ref ref) {
        if (!t.onHand) ++uncounted_;
        SheetFigure f;
        f.words = thousandths(t.needed) + (t.unknownUses > 0 ? tr(" at least") : QString());
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

    /// Thousandths that the shelf lacks on a day this booking has some of the item, all bookings together.
    [[nodiscard]] std::int64_t shortBesideOthers(const model::Ref& ref) const {
        if (!shed_) return 0;
        std::int64_t most = 0;
        for (const auto& item : shed_->kit) {
            if (item.item != ref || !item.owned) continue;
            for (const auto& hold : item.holds) {
                if (hold.booking != booking_) continue;
                for (std::size_t i = 0; i < item.levels.size(); ++i) {
                    const bool before = i + 1 < item.levels.size() && item.levels[i + 1].from <= hold.from;
                    if (before || (hold.until && item.levels[i].from > *hold.until)) continue;
                    most =
                        std::max(most, (item.levels[i].away - *item.owned) * (item.inThousandths ? 1 : 1000));
                }
            }
        }
        return most;
    }

    SheetCell missing(const std::optional<std::int64_t>& value, const QString& name,
                      const std::optional<model::Ref>& ref = std::nullopt) {
        if (!value) return {tr("not known"), SheetCell::Tone::second};
        if (const auto beside = *value == 0 && ref ? shortBesideOthers(*ref) : 0; beside > 0) {
            beside_ << tr("%1 %2").arg(thousandths(beside), name);
            return {tr("%1, with what others have out then").arg(thousandths(beside)), SheetCell::Tone::asks};
        }
        if (*value == 0) return {tr("none"), SheetCell::Tone::second};
        short_ << tr("%1 %2").arg(thousandths(*value), name);
        return {thousandths(*value), SheetCell::Tone::asks};
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
                cuts << tr("%1 × %2 mm").arg(whole(cut.pieces.value), whole(cut.each.value));
            row.under = cuts.join(QStringLiteral(" · "));
            row.cells = {ribbonNeeded(need, name), ribbonOnHand(need), ribbonShort(need, name)};
            rows.push_back(std::move(row));
        }
        return rows;
    }

    static SheetCell ribbonNeeded(const plan::RibbonNeed& need, const QString& name) {
        SheetFigure f;
        f.words = metres(need.needed);
        f.means = tr("of %1 needed").arg(name);
        f.working = need.working;
        f.leadsTo = model::Ref{TableKind::ribbons, need.ribbon.value};
        f.leadWords = tr("Show its reels and ends");
        return {{}, {}, std::move(f)};
    }

    SheetCell ribbonOnHand(const plan::RibbonNeed& need) {
        if (need.onHand) return {metres(*need.onHand), {}};
        ++uncounted_;
        SheetCell cell{tr("nobody has measured it yet"), SheetCell::Tone::asks};
        cell.field =
            SheetField{TableKind::ribbonLengths, "length", need.ribbon.value, tr("a reel, such as 9.4 m")};
        return cell;
    }

    SheetCell ribbonShort(const plan::RibbonNeed& need, const QString& name) {
        if (!need.missing) return {tr("not known"), SheetCell::Tone::second};
        if (need.missing->value == 0) return {tr("none"), SheetCell::Tone::second};
        short_ << tr("%1 of %2").arg(metres(*need.missing), name);
        return {metres(*need.missing), SheetCell::Tone::asks};
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
        row.cells = {{{}, {}, std::move(f)}, std::move(onHand), missing(less, tr("buckets"))};
        return row;
    }

    SheetRow water() const {
        auto row = rowOf(QStringLiteral("water"), tr("Water for the pieces"), {});
        SheetFigure f;
        f.words = tr("%1 litres").arg(litres(kit_.water.litres)) +
                  (kit_.water.unknownUses > 0 ? tr(" at least") : QString());
        f.means = tr("of water to fill in");
        f.working = kit_.water.working;
        row.cells = {{{}, {}, std::move(f)}, {tr("from the tap"), SheetCell::Tone::second}, {}};
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
