// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/fit_words.h"

#include "core/plan/best_plant.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using plan::Fit;
using plan::Level;

constexpr int mostNames = 4;

class FitWordsSay {
    Q_DECLARE_TR_FUNCTIONS(FitCheck)

public:
    explicit FitWordsSay(const FitView& view) : view_(view), season_(view.season), answer_(view.answer) {}

    [[nodiscard]] Answer head() const {
        const auto weight = answer_.fit == Fit::no ? AnswerPart::Weight::asks : AnswerPart::Weight::strong;
        if (answer_.fit == Fit::yes) {
            Answer yes{{tr("Yes. %1 (fits|fit).", nullptr, fitting()).arg(all()), weight}};
            if (const auto* kit = untold())
                yes.push_back({tr(" %1: not known yet.").arg(kitName(*kit)), AnswerPart::Weight::plain});
            return yes;
        }
        if (answer_.fit == Fit::tight) return {{tr("Yes, but tight: %1.").arg(all()), weight}};
        if (const QString some = part(); !some.isEmpty())
            return {{tr("%1, yes. ").arg(some), AnswerPart::Weight::strong},
                    {tr("All %1, no.").arg(whole(countOf(line()))), weight}};
        return {{tr("No, not %1.").arg(all()), weight}};
    }

    [[nodiscard]] QString reason() const {
        if (answer_.fit == Fit::yes)
            return untold()
                       ? tr("Nothing that was counted stands in the way. What was not is asked for below.")
                       : tr("Nothing stands in the way.");
        const auto [hard, tight] = std::pair(tr("What stops it: %1. %2"), tr("What decides it: %1. %2"));
        const QString& how = answer_.fit == Fit::no ? hard : tight;
        if (answer_.stems == answer_.fit) return how.arg(tr("stems"), stemsReason());
        if (answer_.hours == answer_.fit) return how.arg(tr("hours"), hoursReason());
        for (const auto& kit : answer_.kits)
            if (kit.owned && kit.fit == answer_.fit) return how.arg(kitName(kit), kitReason(kit));
        return {};
    }

    [[nodiscard]] QString toSay() const {
        const QString day = view_.draft.day ? longDay(*view_.draft.day) : QString();
        if (answer_.fit == Fit::yes) return tr("%1 on %2, gladly.").arg(capital(all()), day);
        if (answer_.fit == Fit::tight)
            return tr("%1 on %2, if the garden keeps its word; a few stems may be swapped.")
                .arg(capital(all()), day);
        QStringList ways;
        if (const QString some = part(); !some.isEmpty())
            ways << tr("%1 on %2, gladly.").arg(capital(some), day);
        if (!answer_.dates.empty()) {
            const QString other = longDay(answer_.dates.front().eventStart.day);
            ways << (ways.isEmpty() ? tr("Not on %1, but all of it on %2.").arg(day, other)
                                    : tr("Or all of it on %1.").arg(other));
        }
        return ways.isEmpty() ? tr("Not on %1, and no day near it; shall I ring you back?").arg(day)
                              : ways.join(QLatin1Char(' '));
    }

    [[nodiscard]] Sheet sheet() const {
        Sheet sheet;
        sheet.firstTitle = tr("What it takes");
        sheet.columns = {{tr("Fits"), false, false}, {tr("Reach against need"), false, false}};
        sheet.rows.push_back(
            row(QStringLiteral("stems"), tr("Stems"), stemsReason(), answer_.stems, stems()));
        sheet.rows.push_back(
            row(QStringLiteral("hours"), tr("Hours"), hoursReason(), answer_.hours, hours()));
        int i = 0;
        for (const auto& kit : answer_.kits) {
            sheet.rows.push_back(
                row(QStringLiteral("kit%1").arg(i++), kitName(kit), kitReason(kit), kit.fit, reachOf(kit)));
            if (!kit.owned) askFor(kit, sheet.rows.back());
        }
        return sheet;
    }

    [[nodiscard]] QStringList most() const {
        QStringList out;
        const auto& lines = view_.draft.lines;
        for (std::size_t i = 0; i < std::min(lines.size(), answer_.most.size()); ++i) {
            const auto& m = answer_.most[i];
            const QString name = nameIn(season_.designs, lines[i].design);
            const QString sure = tablesOrPieces(lines[i], m.sure.value);
            const QString likely = tablesOrPieces(lines[i], m.likely.value);
            QString words = tr("The most of %1 that fits: %2").arg(name, sure);
            if (lines.size() > 1) words = tr("With the rest as asked, the most of %1: %2").arg(name, sure);
            words += likely != sure ? tr(" for sure, %1 if the likely stems come.").arg(likely) : tr(".");
            out << words;
        }
        return out;
    }

    [[nodiscard]] QString leaning() const {
        if (answer_.leaning.empty()) return tr("Nothing else leans on the same patches that week.");
        QStringList names;
        for (const auto id : answer_.leaning)
            if (const auto* b = season_.bookings.find(id))
                names << tr("%1 (%2)").arg(text(b->title), shortDay(b->eventStart.day));
        if (names.size() > mostNames) {
            const int more = static_cast<int>(names.size()) - mostNames;
            names = names.mid(0, mostNames) << tr("and %n more", nullptr, more);
        }
        return tr("Leaning on the same patches that week: %1.").arg(names.join(QStringLiteral(", ")));
    }

    static QString date(const plan::FitDate& date) {
        return (date.fit == Fit::tight ? tr("%1, tight") : tr("%1, fits")).arg(shortDay(date.eventStart.day));
    }

    static QString fault(const Problem& p) {
        if (p.field == "lines" && p.code == ProblemCode::required)
            return tr("What: nothing is asked for yet. Type how many of which design.");
        if (p.field == "lines") return tr("What: that design is gone. Name another.");
        if (p.field == "pieces") return tr("What: %1").arg(sentence(p));
        if (p.field == "event_end") return tr("Guests from: %1").arg(sentence(p));
        if (p.field == "cover")
            return tr(
                "The garden's stems cannot be shared out as they stand. What needs looking at says why.");
        return sentence(p);
    }

    static QString waiting(const FitDraft& draft) {
        if (!draft.day && draft.lines.empty()) return tr("A day and a number, and the garden answers.");
        return draft.day ? tr("And what do they want? 16 tables of a jar, say.") : tr("And on which day?");
    }

private:
    [[nodiscard]] const FitPieces& line() const { return view_.draft.lines.front(); }

    [[nodiscard]] QString all() const {
        QStringList parts;
        for (const auto& l : view_.draft.lines)
            parts << fitCount(season_, l, l.pieces);
        return parts.join(tr(" and "));
    }

    /// The most of the only line; empty when nothing of it fits, or several lines are asked for.
    [[nodiscard]] QString part() const {
        if (view_.draft.lines.size() != 1 || answer_.most.size() != 1) return {};
        const std::int64_t each = line().tables > 0 ? line().perTable : 1;
        const std::int64_t pieces = answer_.most.front().likely.value / each * each;
        if (pieces < 1 || pieces >= line().pieces) return {};
        return fitCount(season_, line(), pieces);
    }

    /// What "fits" or "fit" counts.
    [[nodiscard]] int fitting() const {
        return view_.draft.lines.size() == 1 ? static_cast<int>(countOf(line())) : 2;
    }

    [[nodiscard]] QString tablesOrPieces(const FitPieces& l, std::int64_t pieces) const {
        return l.tables > 0 ? fitCount(season_, l, pieces) : whole(pieces);
    }

    static SheetRow row(const QString& key, const QString& name, const QString& reason, Fit fit,
                        SheetReach reach) {
        SheetRow out;
        out.key = key;
        out.name = name;
        out.under = reason;
        SheetCell state;
        state.jar = SheetJar{fitState(fit), 0.3};
        state.words = fit == Fit::yes ? tr("yes") : fit == Fit::tight ? tr("tight") : tr("no");
        state.tone = fit == Fit::yes     ? SheetCell::Tone::text
                     : fit == Fit::tight ? SheetCell::Tone::strong
                                         : SheetCell::Tone::asks;
        SheetCell bar;
        reach.inWords = reason;
        bar.reach = std::move(reach);
        out.cells = {std::move(state), std::move(bar)};
        return out;
    }

    /// A limit that nobody told: neither yes nor no, and typed where it is missed.
    void askFor(const plan::FitKit& kit, SheetRow& row) const {
        row.cells[0].jar = SheetJar{SheetState::unknown, 0};
        row.cells[0].words = tr("not known");
        row.cells[0].tone = SheetCell::Tone::second;
        std::optional<SheetField> field;
        if (kit.kind == plan::FitKitKind::coolSpace)
            field = SheetField{model::TableKind::settings, "cool_buckets", season_.theSettings().id.value,
                               tr("how many buckets")};
        else if (kit.container)
            field = SheetField{model::TableKind::containers, "owned", kit.container->value, tr("count")};
        if (!field) return;
        row.cells[1] = {{}, {}, std::nullopt, field};
    }

    /// The first limit that nobody told.
    [[nodiscard]] const plan::FitKit* untold() const {
        const auto found =
            std::find_if(answer_.kits.begin(), answer_.kits.end(), [](const auto& k) { return !k.owned; });
        return found == answer_.kits.end() ? nullptr : &*found;
    }

    static SheetReach reachFrom(std::int64_t need, std::int64_t cautious, std::int64_t likely) {
        SheetReach r;
        r.need = need;
        r.thereCautious = std::max<std::int64_t>(0, cautious);
        r.thereLikely = std::max(r.thereCautious, likely);
        r.cautious = std::min(need, r.thereCautious);
        r.likely = std::min(need, r.thereLikely);
        return r;
    }

    [[nodiscard]] Stems sum(Stems plan::FitStems::*part) const {
        Stems all;
        for (const auto& s : answer_.slots)
            all += s.*part;
        return all;
    }

    [[nodiscard]] std::int64_t covered(Level level) const {
        std::int64_t all = 0;
        for (const auto& s : answer_.slots)
            all += s.covered[plan::indexOf(level)].value;
        return all;
    }

    /// What could be had: of a slot that is short no more than it is given.
    [[nodiscard]] std::int64_t there(Level level) const {
        std::int64_t all = 0;
        for (const auto& s : answer_.slots)
            all += s.there[plan::indexOf(level)].value;
        return covered(level) < sum(&plan::FitStems::needed).value ? covered(level) : all;
    }

    [[nodiscard]] SheetReach stems() const {
        auto r = reachFrom(sum(&plan::FitStems::needed).value, there(Level::cautious), there(Level::likely));
        r.known = std::all_of(answer_.slots.begin(), answer_.slots.end(),
                              [](const auto& s) { return s.supplyKnown; });
        return r;
    }

    /// The slot that lacks most at the level the answer is short at.
    [[nodiscard]] const plan::FitStems* worst(Level level) const {
        const plan::FitStems* most = nullptr;
        const auto missing = [&](const plan::FitStems& s) {
            return (s.needed - s.covered[plan::indexOf(level)]).value;
        };
        for (const auto& s : answer_.slots)
            if (missing(s) > 0 && (!most || missing(s) > missing(*most))) most = &s;
        return most;
    }

    [[nodiscard]] QString slotName(const plan::FitStems& s) const {
        const auto* slot = season_.slots.find(s.slot);
        if (const auto* plant = plan::bestPlant(season_, s.slot)) return inPassing(season_, plant->id);
        return slot ? text(slot->label) : QString();
    }

    /// "30 zinnias", by the slot's first plant.
    [[nodiscard]] QString slotCounted(const plan::FitStems& s, std::int64_t stems) const {
        return tr("%1 %2").arg(whole(stems), stems == 1 ? slotName(s) : pluralOf(slotName(s)));
    }

    [[nodiscard]] QString stemsReason() const {
        const auto needed = sum(&plan::FitStems::needed).value;
        if (needed > 0 && there(Level::cautious) >= needed * plan::fitReach)
            return tr("%1 needed; %2 times that could be had.").arg(whole(needed)).arg(plan::fitReach);
        QString words = tr("%1 needed; %2 cautious, %3 likely.")
                            .arg(whole(needed), whole(there(Level::cautious)), whole(there(Level::likely)));
        const auto* s = worst(Level::likely);
        const Level level = s ? Level::likely : Level::cautious;
        if (!s) s = worst(Level::cautious);
        if (!s) return words;
        const auto lacking = (s->needed - s->covered[plan::indexOf(level)]).value;
        if (!s->supplyKnown) return words + tr(" Of %1 nothing is known yet.").arg(slotCounted(*s, lacking));
        words += tr(" %1 (is|are) short.", nullptr, static_cast<int>(lacking)).arg(slotCounted(*s, lacking));
        if (s->competitors.empty()) return words;
        const auto& c = s->competitors.front();
        const auto* b = season_.bookings.find(c.booking);
        return b ? words + tr(" %1 (%2) has %3.")
                               .arg(text(b->title), shortDay(b->eventStart.day),
                                    countedPlant(season_, c.plant, c.stems.value))
                 : words;
    }

    [[nodiscard]] SheetReach hours() const {
        return reachFrom(answer_.work.work.value, answer_.work.freeBesideAll.value, answer_.work.free.value);
    }

    [[nodiscard]] QString hoursReason() const {
        const auto& w = answer_.work;
        QString words =
            tr("%1 of work; %2 free from %3 to %4 beside what is promised")
                .arg(workWords(w.work), workWords(w.free), shortDay(w.from.day), shortDay(w.to.day));
        return words + (w.freeBesideAll < w.free
                            ? tr(", %1 if what is asked for comes too.").arg(workWords(w.freeBesideAll))
                            : tr("."));
    }

    [[nodiscard]] QString kitName(const plan::FitKit& kit) const {
        if (kit.kind == plan::FitKitKind::bucket) return tr("Buckets");
        if (kit.kind == plan::FitKitKind::coolSpace) return tr("Cool space");
        return kit.container ? nameIn(season_.containers, *kit.container) : tr("Containers");
    }

    static SheetReach reachOf(const plan::FitKit& kit) {
        const std::int64_t owned = kit.owned.value_or(0);
        auto r = reachFrom(kit.needed, owned - kit.promised - kit.asked, owned - kit.promised);
        r.known = kit.owned.has_value();
        return r;
    }

    [[nodiscard]] QString kitReason(const plan::FitKit& kit) const {
        if (!kit.owned)
            return kit.kind == plan::FitKitKind::coolSpace
                       ? tr("%n bucket(s) to stand cool; how many does the store hold?", nullptr,
                            static_cast<int>(kit.needed))
                       : tr("%1 needed; how many there are is not counted yet.").arg(whole(kit.needed));
        QString words =
            tr("%1 needed; %2 of %3 free")
                .arg(whole(kit.needed), whole(std::max<std::int64_t>(0, *kit.owned - kit.promised)),
                     whole(*kit.owned));
        if (kit.asked > 0) words += tr(", %1 of them asked for").arg(whole(kit.asked));
        QStringList names;
        for (const auto id : kit.others)
            if (const auto* b = season_.bookings.find(id)) names << text(b->title);
        if (names.isEmpty()) return words + tr(".");
        if (names.size() > 2) {
            const int more = static_cast<int>(names.size()) - 2;
            names = names.mid(0, 2) << tr("%n more", nullptr, more);
        }
        return words + tr(", beside %1.").arg(names.join(QStringLiteral(", ")));
    }

    const FitView& view_;
    const model::Season& season_;
    const plan::FitAnswer& answer_;
};

} // namespace

Answer fitAnswer(const FitView& view) {
    return FitWordsSay(view).head();
}

QString fitReason(const FitView& view) {
    return FitWordsSay(view).reason();
}

QString fitToSay(const FitView& view) {
    return FitWordsSay(view).toSay();
}

Sheet fitSheet(const FitView& view) {
    return FitWordsSay(view).sheet();
}

QStringList fitMost(const FitView& view) {
    return FitWordsSay(view).most();
}

QString fitLeaning(const FitView& view) {
    return FitWordsSay(view).leaning();
}

QString fitDateWords(const plan::FitDate& date) {
    return FitWordsSay::date(date);
}

SheetState fitState(plan::Fit fit) {
    return fit == Fit::yes     ? SheetState::covered
           : fit == Fit::tight ? SheetState::tight
                               : SheetState::missing;
}

QString fitFault(const Problem& problem) {
    return FitWordsSay::fault(problem);
}

QString fitBadHour(const QString& typed) {
    return FitWordsSay::tr("Guests from: “%1” is not an hour. Type it as 12:30.").arg(typed);
}

QString fitWaiting(const FitDraft& draft) {
    return FitWordsSay::waiting(draft);
}

} // namespace withy::ui
