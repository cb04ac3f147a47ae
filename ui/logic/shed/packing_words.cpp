// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/packing_words.h"

#include "core/plan/shed/shed_codes.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/shed/packing_scenes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct PackingWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Packing)
};

const plan::Finding* findingIn(const plan::BookingPacking& packed, plan::FindingCode code) {
    const auto found = std::find_if(packed.findings.begin(), packed.findings.end(),
                                    [&](const plan::Finding& f) { return f.code == code; });
    return found == packed.findings.end() ? nullptr : &*found;
}

int numberOf(const plan::Finding& finding, std::size_t i) {
    return i < finding.numbers.size() ? static_cast<int>(std::lround(finding.numbers[i])) : 0;
}

} // namespace

bool tooManyToLay(const plan::BookingPacking& packed) {
    return findingIn(packed, plan::ShedCode::loadTooMany) != nullptr;
}

QString tripsWords(const plan::BookingPacking& packed) {
    if (const auto* f = findingIn(packed, plan::ShedCode::loadTooMany))
        return PackingWordsSay::tr("%1 things are too many to be laid out at once: %n trip(s) at least.",
                                   nullptr, numberOf(*f, 2))
            .arg(whole(numberOf(*f, 0)));
    const auto* f = findingIn(packed, plan::ShedCode::loadNoRoom);
    if (!f) return {};
    const QString words =
        PackingWordsSay::tr("%n thing(s) (finds|find) no room on the floor", nullptr, numberOf(*f, 0));
    return numberOf(*f, 2) >= numberOf(*f, 0)
               ? words + QLatin1Char('.')
               : PackingWordsSay::tr("%1: %n trip(s) at least.", nullptr, numberOf(*f, 1)).arg(words);
}

Answer packingAnswer(const model::Season& season, const plan::BookingPacking* packed) {
    using Weight = AnswerPart::Weight;
    if (!packed || packed->entries.empty())
        return {
            {PackingWordsSay::tr("Nothing is to be packed yet. Add pieces, and the trays fill themselves.")}};
    int trays = 0;
    for (const auto& drop : packed->drops)
        trays += asCount(drop.trays.size());
    const bool unknown = std::any_of(packed->entries.begin(), packed->entries.end(),
                                     [](const plan::LoadEntry& e) { return !e.mass; });
    Answer answer{
        {PackingWordsSay::tr("%n tray(s), ", nullptr, trays), Weight::strong},
        {PackingWordsSay::tr("%1 in all.").arg(weightWords(packed->mass, unknown, season)), Weight::strong}};
    const double limit = season.theSettings().liftingLimitKg;
    const bool heavy = static_cast<double>(packed->heaviest.value) > limit * 1000;
    answer.push_back(
        {PackingWordsSay::tr(" Heaviest lift %1, limit %2.")
             .arg(weightWords(packed->heaviest, false, season),
                  Units(season).imperial() ? weightWords(limit, season) : QString::number(limit)),
         heavy ? Weight::asks : Weight::plain});
    if (const auto trips = tripsWords(*packed); !trips.isEmpty())
        answer.push_back({QLatin1Char(' ') + trips, Weight::asks});
    if (packed->load && packed->load->overPlate && packed->load->overPlate->value > 0)
        answer.push_back({PackingWordsSay::tr(" %1 over the plate.")
                              .arg(weightWords(*packed->load->overPlate, false, season)),
                          Weight::asks});
    return answer;
}

Scene traysScene(const model::Season& season, const plan::BookingPacking& packed, double width,
                 const SceneLook& look) {
    Scene all;
    double longest = 1;
    for (const auto& drop : packed.drops)
        for (const auto& tray : drop.trays)
            longest = std::max(longest, static_cast<double>(tray.length.value));
    const double gap = sized(look, 20, 20), least = sized(look, 170, 170);
    const int across = std::clamp(static_cast<int>((width + gap) / (least + gap)), 1, 5);
    const double each = (width - gap * (across - 1)) / across;
    const double k = std::min(each / longest, sized(look, 0.42, 0.42));
    double y = 0, deep = 0;
    int column = 0;
    QStringList words;
    for (std::size_t d = 0; d < packed.drops.size(); ++d)
        for (std::size_t t = 0; t < packed.drops[d].trays.size(); ++t) {
            if (column == across) {
                y += deep + gap / 2;
                deep = 0;
                column = 0;
            }
            const auto scene =
                trayScene(season, packed.drops[d].trays[t], trayNumber(packed, d, t), k, each, look);
            append(all, scene, {column * (each + gap), y});
            deep = std::max(deep, scene.size.height());
            words << scene.inWords;
            ++column;
        }
    all.size = {width, y + deep};
    all.inWords = words.join(QStringLiteral(". "));
    return all;
}

QString loadHead(const model::Season& season, const plan::BookingPacking* packed) {
    const auto* vehicle = packed && packed->vehicle ? season.vehicles.find(*packed->vehicle) : nullptr;
    return vehicle ? PackingWordsSay::tr("Into the %1, last drop first").arg(text(vehicle->name))
                   : PackingWordsSay::tr("What goes in, last drop first");
}

QString loadCaution() {
    return PackingWordsSay::tr(
        "Nothing loose. What may be carried, and how it is tied down, is for the vehicle's plate "
        "and the law of the road; lifting follows your local rules.");
}

std::vector<LoadLine> loadLines(const model::Season& season, const plan::BookingPacking& packed) {
    std::vector<LoadLine> lines;
    const auto order = loadOrder(packed);
    const bool tooMany = tooManyToLay(packed);
    for (std::size_t i = 0; i < std::min(order.size(), mostLoadLines); ++i) {
        const auto& entry = packed.entries[order[i]];
        LoadLine line;
        line.number = whole(asCount(i) + 1);
        line.words = entryWords(season, packed, order[i]);
        if (packed.drops.size() > 1) line.words += PackingWordsSay::tr(", drop %1").arg(entry.drop + 1);
        if (packed.load && !tooMany && i >= packed.load->loaded.size()) {
            line.words += PackingWordsSay::tr(", no room on the floor");
            line.asks = true;
        }
        line.weight =
            entry.mass ? weightWords(*entry.mass, false, season) : PackingWordsSay::tr("not weighed");
        if (entry.overLimit) {
            line.words += PackingWordsSay::tr(", over the lifting limit");
            line.asks = true;
        }
        lines.push_back(line);
    }
    if (order.size() > mostLoadLines)
        lines.push_back({{}, moreThings(asCount(order.size() - mostLoadLines)), {}, false});
    return lines;
}

QString moreThings(int count) {
    return PackingWordsSay::tr("and %n more thing(s)", nullptr, count);
}

QString carryWords(const plan::BookingPacking& packed, Units units) {
    return PackingWordsSay::tr("%1 to carry").arg(litresWords(packed.carryLitres, units));
}

QString checkWhen(const model::Booking& booking, LocalTime at, std::optional<Day> beside) {
    const QString when =
        beside == at.day ? planBy(at) : PackingWordsSay::tr("%1 on %2").arg(planBy(at), shortDay(at.day));
    return at < booking.eventEnd ? PackingWordsSay::tr("at %1").arg(when)
                                 : PackingWordsSay::tr("before you leave, by %1").arg(when);
}

std::vector<QString> waterLines(const model::Season& season, const plan::BookingPacking& packed) {
    std::vector<QString> out;
    const auto of = [&](Millilitres ml) { return millilitresWords(static_cast<double>(ml.value), season); };
    for (const auto& water : packed.waters) {
        const auto* line = season.lines.find(water.line);
        const auto* design = line ? season.designs.find(line->design) : nullptr;
        const auto* booking = line ? season.bookings.find(line->booking) : nullptr;
        if (!design || !booking) continue;
        QString words = text(design->name) + QStringLiteral(": ");
        words += water.travel.value > 0
                     ? PackingWordsSay::tr("travels with %1, %2 each poured in on arrival")
                           .arg(of(water.travel), of(water.topUp))
                     : PackingWordsSay::tr("travels dry, %1 each poured in on arrival").arg(of(water.topUp));
        if (water.checkAt)
            words += PackingWordsSay::tr("; check and top up %1").arg(checkWhen(*booking, *water.checkAt));
        if (water.dryAt)
            words += PackingWordsSay::tr("; left alone, the stem ends are dry at %1 on %2")
                         .arg(planBy(*water.dryAt), shortDay(water.dryAt->day));
        if (water.course.unknownDrinkers > 0)
            words += PackingWordsSay::tr("; %n plant(s) whose thirst is not known", nullptr,
                                         water.course.unknownDrinkers);
        out.push_back(words + QLatin1Char('.'));
    }
    return out;
}

} // namespace withy::ui
