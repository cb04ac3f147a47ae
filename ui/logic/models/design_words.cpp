// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/design_words.h"

#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>

#include <set>

namespace withy::ui {

namespace {

struct DesignWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Designs)
};

QString nameOf(const model::Season& season, Id<model::Plant> plant) {
    const auto* p = season.plants.find(plant);
    return p ? text(p->name) : QString();
}

const model::Ribbon* ribbonOf(const model::Season& season, const model::Design& d) {
    for (const auto& part : season.ribbonMixParts) {
        if (d.ribbonMix == part.mix) return season.ribbons.find(part.ribbon);
    }
    return nullptr;
}

} // namespace

DesignGroup groupOf(model::PieceKind kind) {
    using model::PieceKind;
    switch (kind) {
    case PieceKind::table:
    case PieceKind::budVase:
    case PieceKind::basket:
        return DesignGroup::tables;
    case PieceKind::handTied:
    case PieceKind::buttonhole:
    case PieceKind::corsage:
    case PieceKind::crown:
    case PieceKind::pewEnd:
        return DesignGroup::hand;
    case PieceKind::pedestal:
    case PieceKind::sheaf:
    case PieceKind::spray:
    case PieceKind::garland:
    case PieceKind::wreath:
        return DesignGroup::large;
    }
    return DesignGroup::tables;
}

QString groupWords(DesignGroup group) {
    switch (group) {
    case DesignGroup::tables:
        return DesignWordsSay::tr("For tables");
    case DesignGroup::hand:
        return DesignWordsSay::tr("Hand and worn");
    case DesignGroup::large:
        return DesignWordsSay::tr("Large");
    }
    return {};
}

std::int64_t stemsOf(const model::Season& season, Id<model::Design> design) {
    std::int64_t sum = 0;
    for (const auto& slot : season.slots) {
        if (slot.design == design) sum += slot.count.value;
    }
    return sum;
}

QString stemsAndPrice(const model::Season& season, const model::Design& d) {
    const auto stems = stemsOf(season, d.id);
    const QString words = stems == 0 ? DesignWordsSay::tr("empty")
                                     : DesignWordsSay::tr("%n stem(s)", nullptr, static_cast<int>(stems));
    return d.price ? DesignWordsSay::tr("%1, %2").arg(words, amount(*d.price, season.theSettings())) : words;
}

QString containerlessWords(model::PieceKind kind) {
    return kind == model::PieceKind::table ? DesignWordsSay::tr("no container yet")
                                           : wordText(model::wordOf(kind));
}

QString standsInWords(const model::Season& season, const model::Design& d) {
    const auto* c = d.container ? season.containers.find(*d.container) : nullptr;
    const QString words = c ? text(c->name) : containerlessWords(d.kind);
    const auto* ribbon = d.finish == model::RibbonFinish::none ? nullptr : ribbonOf(season, d);
    return ribbon ? DesignWordsSay::tr("%1; %2 ribbon").arg(words, text(ribbon->name)) : words;
}

QString usedWords(const model::Season& season, Id<model::Design> design) {
    std::set<Id<model::Booking>> bookings;
    for (const auto& use : edits::usesOf(season, design))
        bookings.insert(use.booking);
    if (bookings.empty()) return DesignWordsSay::tr("No booking uses it yet.");
    return DesignWordsSay::tr("Used by %n booking(s) this season.", nullptr,
                              static_cast<int>(bookings.size()));
}

QString useWords(const edits::DesignUse& use, std::int64_t stems) {
    return DesignWordsSay::tr("× %1 for %2 = %3")
        .arg(whole(use.pieces), text(use.title), whole(use.pieces * stems));
}

QString stillUsedWords(const model::Season& season, Id<model::Design> design) {
    const auto* d = season.designs.find(design);
    const auto uses = edits::usesOf(season, design);
    if (!d || uses.empty()) return {};
    QStringList titles;
    for (const auto& use : uses) {
        if (!titles.contains(text(use.title))) titles << text(use.title);
    }
    const auto all = titles.size();
    constexpr qsizetype shown = 3;
    QString who = titles.mid(0, shown).join(DesignWordsSay::tr(", "));
    if (all > shown)
        who = DesignWordsSay::tr("%1 and %n more", nullptr, static_cast<int>(all - shown)).arg(who);
    return DesignWordsSay::tr("%1 is in %2. Take it out of there as well, or give them another design first.")
        .arg(text(d->name), who);
}

QString slotPlantsWords(const model::Season& season, Id<model::Slot> slot) {
    const auto plants = edits::plantsOf(season, slot);
    if (plants.empty()) return DesignWordsSay::tr("no plant yet");
    const QString best = nameOf(season, plants.front()->plant);
    if (plants.size() == 1) return best;
    return DesignWordsSay::tr("%1, or %n more", nullptr, static_cast<int>(plants.size()) - 1).arg(best);
}

QString slotWords(const model::Season& season, const model::Slot& slot, int number) {
    const QString stems = DesignWordsSay::tr("%n stem(s)", nullptr, static_cast<int>(slot.count.value));
    return DesignWordsSay::tr("Slot %1, %2: %3, %4")
        .arg(QString::number(number), text(slot.label), stems, slotPlantsWords(season, slot.id));
}

QString purposeWords(model::Purpose purpose) {
    using model::Purpose;
    switch (purpose) {
    case Purpose::focal:
        return DesignWordsSay::tr("A face");
    case Purpose::spike:
        return DesignWordsSay::tr("A spike");
    case Purpose::filler:
        return DesignWordsSay::tr("Filler");
    case Purpose::foliage:
        return DesignWordsSay::tr("Leaf");
    case Purpose::airy:
        return DesignWordsSay::tr("Something airy");
    case Purpose::trailing:
        return DesignWordsSay::tr("A trail");
    }
    return {};
}

QString tierWords(model::Tier tier) {
    switch (tier) {
    case model::Tier::low:
        return DesignWordsSay::tr("low");
    case model::Tier::middle:
        return DesignWordsSay::tr("middle");
    case model::Tier::tall:
        return DesignWordsSay::tr("tall");
    }
    return {};
}

QString stemLengthWords(const model::Plant& p, Units units) {
    if (p.stemLengthMin && p.stemLengthMax)
        return DesignWordsSay::tr("%1 to %2")
            .arg(tapeFigure(*p.stemLengthMin, units), tapeWords(*p.stemLengthMax, units));
    if (p.stemLengthMax) return DesignWordsSay::tr("up to %1").arg(tapeWords(*p.stemLengthMax, units));
    return {};
}

QString noPlantWords(const QString& typed, int alike) {
    if (alike == 0)
        return DesignWordsSay::tr("There is no plant “%1”. Add it in the Garden first.").arg(typed);
    return DesignWordsSay::tr(
               "%n plant(s) are called something like “%1”. Type a little more, or pick one from the list.",
               nullptr, alike)
        .arg(typed);
}

QString takenOutWords(const QString& name) {
    return DesignWordsSay::tr("%1 is taken out. Undo puts it back.").arg(name);
}

QString usedInWords(const QString& design, const QString& booking) {
    return DesignWordsSay::tr("One %1 is in %2 now.").arg(design, booking);
}

} // namespace withy::ui
