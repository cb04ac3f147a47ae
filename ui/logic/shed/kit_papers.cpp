// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/shed/ribbon_scene.h"
#include "ui/logic/shed/shed_papers.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed_words.h"
#include "ui/logic/work_hours.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using model::TableKind;
using papers::Block;
using papers::plain;
using papers::strong;

struct KitPapersSay {
    Q_DECLARE_TR_FUNCTIONS(KitPapers)
};

constexpr double kitPx = 10; // of a scene to a millimetre of paper

papers::Column columnOf(const QString& title, bool figure, double weight = 0) {
    papers::Column c;
    c.title = utf8(title);
    c.align = figure ? papers::Align::Right : papers::Align::Left;
    c.numeric = figure;
    c.weight = weight;
    return c;
}

papers::TableRow groupRow(const QString& words) {
    return {{plain(utf8(words))}, papers::RowKind::Group};
}

std::string titleOf(const model::Season& season, Id<model::Booking> id) {
    const auto* b = season.bookings.find(id);
    return b ? b->title : std::string();
}

QString bookingsOf(const model::Season& season, const plan::BuyingLine& line) {
    QStringList words;
    for (const auto id : line.bookings) {
        const QString title = text(titleOf(season, id));
        if (!title.isEmpty() && !words.contains(title)) words << title;
    }
    return words.join(QStringLiteral(", "));
}

/// What is there on the day for this booking, the others having theirs.
struct KitNeed {
    QString name;
    QString need;
    QString there;
    QString others;
    QString lacking;
    QString by;
};

papers::TableRow rowOf(const KitNeed& n) {
    return {{plain(utf8(n.name)),
             strong(utf8(n.need)),
             plain(utf8(n.there)),
             plain(utf8(n.others)),
             strong(utf8(n.lacking)),
             plain(utf8(n.by)),
             {}},
            papers::RowKind::Body};
}

class KitList {
    Q_DECLARE_TR_FUNCTIONS(KitPapers)

public:
    explicit KitList(const PaperOrder& order)
        : season_(order.season)
        , booking_(*season_.bookings.find(*order.booking))
        , plan_(*order.plan.bookings.at(*order.booking))
        , shed_(order.plan.shed.get())
        , bench_(workHours(season_, order.plan, *order.booking).makeUpStart.day) {}

    papers::Table table() const {
        papers::Table t;
        t.columns = {columnOf(tr("what"), false, 1), columnOf(tr("needed"), true),
                     columnOf(tr("owned"), true),    columnOf(tr("with others"), true),
                     columnOf(tr("short"), true),    columnOf(tr("by"), false),
                     columnOf(tr("laid out"), true)};
        t.columns.back().cells = papers::CellKind::Box;
        addContainers(t);
        addRibbons(t);
        addSundries(t);
        addHolders(t);
        return t;
    }

private:
    [[nodiscard]] QString amountIn(model::Ref ref, std::int64_t amount) const {
        return ref.table == TableKind::sundries
                   ? sundryAmount(season_.sundries.find(Id<model::Sundry>(ref.id)), amount)
                   : whole(amount);
    }

    void add(papers::Table& t, const QString& name, const QString& need, model::Ref ref, Day from) const {
        KitNeed row{name, need, tr("not counted"), {}, {}, shortDay(from)};
        if (const auto day = kitOnDay(shed_, ref, booking_.id)) {
            row.there = amountIn(ref, day->owned);
            if (const auto away = day->others + day->broken; away > 0) row.others = amountIn(ref, away);
            row.lacking = day->lacking > 0 ? amountIn(ref, day->lacking) : tr("none");
        }
        t.rows.push_back(rowOf(row));
    }

    void addContainers(papers::Table& t) const {
        if (plan_.kit.containers.empty()) return;
        t.rows.push_back(groupRow(tr("Containers")));
        for (const auto& need : plan_.kit.containers) {
            const model::Ref ref{TableKind::containers, need.container.value};
            add(t, itemName(season_, ref), whole(shed::wholeUnits(need.total.needed)), ref, bench_);
        }
    }

    void addRibbons(papers::Table& t) const {
        if (plan_.kit.ribbons.empty()) return;
        t.rows.push_back(groupRow(tr("Ribbon")));
        for (const auto& need : plan_.kit.ribbons) {
            const QString there = need.onHand ? reelWords(*need.onHand, season_) : tr("not measured");
            QString lacking;
            if (need.onHand) {
                const auto less = ribbonLacking(season_, shed_, booking_.id, need);
                lacking = !less             ? tr("not planned")
                          : less->value > 0 ? reelWords(*less, season_)
                                            : tr("none");
            }
            t.rows.push_back(rowOf({itemName(season_, {TableKind::ribbons, need.ribbon.value}),
                                    reelWords(need.needed, season_),
                                    there,
                                    {},
                                    lacking,
                                    shortDay(bench_)}));
        }
    }

    void addSundries(papers::Table& t) const {
        if (plan_.kit.sundries.empty()) return;
        t.rows.push_back(groupRow(tr("Sundries")));
        for (const auto& need : plan_.kit.sundries) {
            const model::Ref ref{TableKind::sundries, need.sundry.value};
            add(t, itemName(season_, ref), amountIn(ref, need.total.needed), ref, bench_);
        }
    }

    void addHolders(papers::Table& t) const {
        if (!shed_) return;
        t.rows.push_back(groupRow(tr("Buckets, boxes and trays")));
        for (const auto& item : shed_->kit) {
            if (item.item.table != TableKind::holders) continue;
            for (const auto& hold : item.holds)
                if (hold.booking == booking_.id)
                    add(t, itemName(season_, item.item), whole(hold.amount), item.item, hold.from);
        }
    }

    const model::Season& season_;
    const model::Booking& booking_;
    const plan::BookingPlan& plan_;
    const plan::ShedPlan* shed_;
    Day bench_; ///< the day of the make-up, as the run-up has it
};

void addBuying(const model::Season& season, const std::vector<plan::BuyingLine>& lines,
               std::vector<Block>& body) {
    papers::Table t;
    t.columns = {columnOf(KitPapersSay::tr("by"), false), columnOf(KitPapersSay::tr("get"), true),
                 columnOf(KitPapersSay::tr("what"), false, 1), columnOf(KitPapersSay::tr("for"), false, 1.4),
                 columnOf(KitPapersSay::tr("about"), true)};
    for (const auto& line : lines) {
        QString who = bookingsOf(season, line);
        if (!line.firm) who = KitPapersSay::tr("if taken: %1").arg(who);
        t.rows.push_back({{strong(utf8(shortDay(line.neededBy))), strong(utf8(itemAmount(season, line))),
                           plain(utf8(itemName(season, line.item))), plain(utf8(who)),
                           plain(utf8(line.cost ? amount(*line.cost, season.theSettings()) : QString()))},
                          papers::RowKind::Body});
    }
    body.push_back(Block{std::move(t)});
}

} // namespace

papers::Document kitListPaper(const PaperOrder& order) {
    const auto& season = order.season;
    const auto& booking = *season.bookings.find(*order.booking);
    const auto& plan = *order.plan.bookings.at(*order.booking);
    papers::Document d;
    d.name = booking.title;
    d.key = utf8(shortDay(workHours(season, order.plan, booking.id).makeUpStart.day));
    d.keyNote = utf8(KitPapersSay::tr("laid out before the make-up"));
    d.facts.push_back(plain(utf8(piecesInWords(season, plan))));
    d.body.push_back(Block{KitList(order).table()});
    std::vector<plan::BuyingLine> own;
    if (order.plan.shed)
        for (const auto& line : order.plan.shed->buying)
            if (std::find(line.bookings.begin(), line.bookings.end(), booking.id) != line.bookings.end())
                own.push_back(line);
    d.body.push_back(Block{papers::SectionHead{utf8(KitPapersSay::tr("To get first")), {}}});
    if (own.empty())
        d.body.push_back(Block{papers::Paragraph{plain(utf8(KitPapersSay::tr("Nothing.")))}});
    else
        addBuying(season, own, d.body);
    if (wants(order, PaperKind::kitList, PaperPart::writeHere))
        d.last.push_back(Block{papers::WriteHere{utf8(KitPapersSay::tr("Write here,\ntype in later")),
                                                 {{utf8(KitPapersSay::tr("counted on the shelf")), 0},
                                                  {utf8(KitPapersSay::tr("broken or chipped")), 44}}}});
    d.footWhat =
        utf8(KitPapersSay::tr("%1, guests %2 %3")
                 .arg(text(booking.title), shortDay(booking.eventStart.day), clock(booking.eventStart)));
    return d;
}

papers::Document buyingListPaper(const PaperOrder& order) {
    const auto& season = order.season;
    papers::Document d;
    d.name = season.theSettings().seasonName;
    const auto* shed = order.plan.shed.get();
    const bool any = shed && !shed->buying.empty();
    d.key = any ? utf8(shortDay(shed->buying.front().neededBy)) : std::string();
    d.keyNote =
        utf8(any ? KitPapersSay::tr("the first day something is short") : KitPapersSay::tr("nothing to buy"));
    if (!any) {
        const bool counted =
            !season.containers.empty() || !season.ribbons.empty() || !season.sundries.empty();
        d.body.push_back(Block{papers::Paragraph{plain(
            utf8(counted ? KitPapersSay::tr("What is counted is enough for all that is booked and asked for.")
                         : KitPapersSay::tr("Nothing is counted yet, so nothing can be missing.")))}});
        return d;
    }
    Money sum;
    int unpriced = 0;
    for (const auto& line : shed->buying) {
        sum.minor += line.cost ? line.cost->minor : 0;
        unpriced += line.cost ? 0 : 1;
    }
    d.facts.push_back(
        strong(utf8(whole(asCount(shed->buying.size())))) +
        plain(utf8(KitPapersSay::tr(" thing(s) to get", nullptr, asCount(shed->buying.size())))));
    d.facts.push_back(plain(utf8(KitPapersSay::tr("about "))) +
                      strong(utf8(amount(sum, season.theSettings()))));
    if (unpriced > 0)
        d.facts.push_back(plain(utf8(KitPapersSay::tr("%n without a price", nullptr, unpriced))));
    addBuying(season, shed->buying, d.body);
    d.body.push_back(Block{papers::Paragraph{
        plain(utf8(KitPapersSay::tr(
            "Ribbon: one dye lot for one job. Ribbon is the length missing; a reel is longer."))),
        true}});
    d.footWhat = season.theSettings().seasonName;
    return d;
}

papers::Document ribbonPlanPaper(const PaperOrder& order) {
    const auto& season = order.season;
    const auto& booking = *season.bookings.find(*order.booking);
    papers::Document d;
    d.name = booking.title;
    const auto* day = edits::ribbonDayOf(order.plan.shed.get(), booking.id);
    d.key = utf8(shortDay(day ? day->day : workHours(season, order.plan, booking.id).makeUpStart.day));
    d.keyNote = utf8(KitPapersSay::tr("ends first, longest cut first"));
    if (!day) {
        d.body.push_back(Block{papers::Paragraph{plain(utf8(KitPapersSay::tr(
            "No ribbon is to be cut: none is asked for, or it is cut and written back already.")))}});
        return d;
    }
    d.facts.push_back(plain(utf8(ribbonDayWords(season, *day))));
    for (const auto& plan : day->ribbons) {
        const auto row = ribbonRow(season, *plan, order.plan.shed.get(), day->day);
        d.body.push_back(Block{papers::SectionHead{utf8(row.name), plain(utf8(row.needs))}});
        const RibbonSceneRoom room{183 * kitPx, 8 * kitPx, 46 * kitPx};
        const auto scene = ribbonScene(season, *plan, room, {Palette{}, true});
        if (scene.size.height() > 0) d.body.push_back(Block{onPaper(scene, kitPx)});
        papers::Text words =
            strong(utf8(row.verdict)) +
            plain(utf8(row.figure.isEmpty() ? QString() : QStringLiteral(": ") + row.figure));
        if (!row.under.isEmpty()) words = words + plain(utf8(QStringLiteral(", ") + row.under));
        d.body.push_back(Block{papers::Paragraph{words}});
        if (!plan->missing.empty())
            d.body.push_back(Block{papers::Paragraph{
                plain(utf8(KitPapersSay::tr("To buy for: %1").arg(cutWords(season, plan->missing))))}});
    }
    for (const auto& shades : day->shades) {
        const QString words = shadeWords(season, shades);
        const auto* line = season.lines.find(shades.line);
        const auto* design = line ? season.designs.find(line->design) : nullptr;
        if (words.isEmpty() || !design) continue;
        d.body.push_back(
            Block{papers::Paragraph{strong(design->name) + plain(utf8(QStringLiteral(": ") + words))}});
    }
    if (wants(order, PaperKind::ribbonPlan, PaperPart::writeHere))
        d.last.push_back(
            Block{papers::WriteHere{utf8(KitPapersSay::tr("Write here,\ntype in later")),
                                    {{utf8(KitPapersSay::tr("ends really left, with their lengths")), 0}}}});
    d.footWhat = utf8(KitPapersSay::tr("%1, each ribbon to its own scale").arg(text(booking.title)));
    return d;
}

} // namespace withy::ui
