// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/share_words.h"

#include "core/model/schema.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/sheet.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

using shareout::LineShare;
using shareout::ShareOut;
using shareout::Way;
using shareout::WayKind;

struct ShareWordsSay {
    Q_DECLARE_TR_FUNCTIONS(ShareWords)
};

QString named(const model::Season& season, model::TableKind kind, std::int64_t id) {
    return text(model::nameOf(season, kind, id));
}

const Way* wayOf(const shareout::Ladder& ladder, WayKind kind, Id<model::Line> line = {}) {
    for (const auto& way : ladder.ways)
        if (way.kind == kind && (line.value == 0 || way.line == line)) return &way;
    return nullptr;
}

const LineShare* lineOf(const ShareOut& share, Id<model::Line> line) {
    for (const auto& l : share.lines)
        if (l.line == line) return &l;
    return nullptr;
}

QString leadingName(const model::Season& season, const shareout::SlotShare& slot) {
    return slot.plants.empty() ? named(season, model::TableKind::slots, slot.slot.value)
                               : inPassing(season, slot.plants.front().plant);
}

/// "24 with one zinnia less in 8 of them", of a line that is made whole in number and short in stems.
QString spreadWords(const model::Season& season, const LineShare& line) {
    std::vector<const shareout::SlotShare*> slots;
    for (const auto& slot : line.slots)
        if (slot.given < slot.asked) slots.push_back(&slot);
    const QString all = whole(line.pieces.value);
    const auto fewer = thinner(line).value;
    const QString where = fewer == line.pieces.value ? ShareWordsSay::tr("in every one")
                                                     : ShareWordsSay::tr("in %1 of them").arg(whole(fewer));
    if (slots.size() != 1) return ShareWordsSay::tr("%1 with fewer stems %2").arg(all, where);
    const auto& slot = *slots.front();
    const std::int64_t asked = slot.asked.value / std::max<std::int64_t>(1, line.pieces.value);
    const std::int64_t most = asked - slot.fewest.value;
    const QString name = leadingName(season, slot);
    if (most == 1) return ShareWordsSay::tr("%1 with one %2 less %3").arg(all, name, where);
    const std::int64_t least = asked - slot.most.value;
    if (least == most)
        return ShareWordsSay::tr("%1 with %2 %3 less %4").arg(all, numberWord(most), pluralOf(name), where);
    return ShareWordsSay::tr("%1 with up to %2 %3 less %4").arg(all, numberWord(most), pluralOf(name), where);
}

QString faultOf(const model::Season& season, const shareout::ShareFault& f) {
    using enum shareout::ShareTrouble;
    switch (f.trouble) {
    case noTally:
        return nothingTalliedWords();
    case negative:
        return ShareWordsSay::tr("A figure is below nought (%1). Mend it in the tally or the design.")
            .arg(whole(f.value));
    case tooSmall:
        return ShareWordsSay::tr("A figure of %1 is too small to share out. Give the slot at least %2.")
            .arg(whole(f.value), whole(f.least));
    case tooLarge:
        return ShareWordsSay::tr(
                   "%1 is more than can be shared out; %2 is the most. Look for a slip of the keys.")
            .arg(whole(f.value), whole(f.most));
    case repeated:
        return ShareWordsSay::tr(
            "The same plant stands twice in one slot. Take one of the two out of the design.");
    case totalOutOfReach: {
        const auto* line = season.lines.find(Id<model::Line>(f.id));
        const QString name = line ? nameIn(season.designs, line->design) : ShareWordsSay::tr("A design");
        return ShareWordsSay::tr("%1: no mix of its slots comes to %2 stems; %3 to %4 can be had.")
            .arg(name, whole(f.value), whole(f.least), whole(f.most));
    }
    }
    return {};
}

QString faultOf(const model::Season& season, const shareout::TallyFault& f) {
    const QString patch = named(season, model::TableKind::patches, f.patch.value);
    const QString where = patch.isEmpty() ? inPassing(season, f.plant) : patch;
    using enum shareout::TallyTrouble;
    switch (f.trouble) {
    case negative:
        return ShareWordsSay::tr("%1: %2 is below nought. Mend the tally.").arg(where, whole(f.value));
    case tooLarge:
        return ShareWordsSay::tr("%1: %2 stems is more than any patch gives. Look for a slip of the keys.")
            .arg(where, whole(f.value));
    case moreThrownAway:
        return ShareWordsSay::tr("%1: %2 thrown away is more than the %3 cut. Mend one of the two.")
            .arg(where, whole(f.value), whole(f.most));
    }
    return {};
}

QString noteWords(const model::Season& season, const shareout::TallyNote& note) {
    const QString patch = named(season, model::TableKind::patches, note.patch.value);
    using enum shareout::TallyFinding;
    switch (note.finding) {
    case abovePatch:
        return ShareWordsSay::tr(
                   "%1: %2 cut, and %3 was the most it was thought to give. Counted all the same.")
            .arg(patch, whole(note.cut.value), whole(note.most.value));
    case patchNotCounted:
        return ShareWordsSay::tr("%1 is not counted yet; shared out without it.").arg(patch);
    case thrownWithoutTally:
        return ShareWordsSay::tr("%1: thrown away is noted, but not what was cut.").arg(patch);
    }
    return {};
}

QString noteWords(const model::Season& season, const shareout::ShareNote& note) {
    const auto* line = season.lines.find(note.line);
    const QString design = line ? nameIn(season.designs, line->design) : QString();
    using enum shareout::ShareFinding;
    switch (note.finding) {
    case plantInNoSlot:
        return ShareWordsSay::tr("%1 came in, and no slot uses (it|them).", nullptr,
                                 static_cast<int>(note.number))
            .arg(countedPlant(season, note.plant, note.number));
    case plantNotCounted:
        return ShareWordsSay::tr("%1 is not tallied yet; that is not nought, but none is shared out.")
            .arg(nameIn(season.plants, note.plant));
    case piecesEmpty:
        return ShareWordsSay::tr("%1: %n piece(s) would get no stem at all.", nullptr,
                                 static_cast<int>(note.number))
            .arg(design);
    case slotWithoutPlant:
        return ShareWordsSay::tr("%1: %2 names no plant. Give it one on the design's page.")
            .arg(design, named(season, model::TableKind::slots, note.slot.value));
    case lineWithoutSlots:
        return ShareWordsSay::tr("%1 has no stems in its design yet.").arg(design);
    }
    return {};
}

struct StopSentence {
    const model::Season& season;

    QString operator()(plan::ShareRefusal refusal) const {
        return refusal == plan::ShareRefusal::noSuchBooking
                   ? ShareWordsSay::tr("That booking is gone. Choose another.")
                   : ShareWordsSay::tr("It is delivered already; there is nothing left to share out.");
    }

    QString operator()(const shareout::TallyFault& f) const { return faultOf(season, f); }

    QString operator()(const shareout::ShareFault& f) const { return faultOf(season, f); }
};

std::int64_t inGroup(const shareout::PieceGroup& group, Id<model::Plant> plant) {
    std::int64_t stems = 0;
    for (const auto& p : group.portions)
        if (p.plant == plant) stems += p.stems.value;
    return stems;
}

} // namespace

QString nothingTalliedWords() {
    return ShareWordsSay::tr(
        "Nothing is tallied yet. Count the first bunch, and the jars are shared out as you go.");
}

QString stillToCountWords(const model::Season& season, const std::vector<Id<model::Plant>>& plants) {
    QStringList names;
    for (const auto plant : plants)
        names << inPassing(season, plant);
    return ShareWordsSay::tr("Still to count: %1. Where nothing was found, say 0.")
        .arg(names.join(QStringLiteral(", ")));
}

QString shareStopWords(const model::Season& season, const plan::ShareStop& stop) {
    return std::visit(StopSentence{season}, stop);
}

bool isShort(const LineShare& line) {
    return line.missing.value > 0 ||
           std::any_of(line.slots.begin(), line.slots.end(), [](const auto& s) { return s.given < s.asked; });
}

Pieces thinner(const LineShare& line) {
    Pieces fewer;
    for (const auto& group : line.groups) {
        const bool thin = group.total < line.target ||
                          std::any_of(line.slots.begin(), line.slots.end(), [&](const auto& slot) {
                              Stems there;
                              for (const auto& p : group.portions)
                                  if (p.slot == slot.slot) there += p.stems;
                              return there * line.pieces.value < slot.asked;
                          });
        if (thin) fewer += group.pieces;
    }
    return fewer;
}

QString sharedPieces(const model::Season& season, Id<model::Line> id, std::int64_t pieces) {
    const auto* line = season.lines.find(id);
    const auto* design = line ? season.designs.find(line->design) : nullptr;
    return design ? countedPieces(season, *design, pieces) : whole(pieces);
}

QString pieceNoun(const model::Season& season, Id<model::Line> line, std::int64_t pieces) {
    const QString all = sharedPieces(season, line, pieces);
    return all.section(QLatin1Char(' '), 1);
}

QString sharedPieces(const model::Season& season, const ShareOut& share) {
    QStringList all;
    for (const auto& line : share.lines)
        all << sharedPieces(season, line.line, line.pieces.value);
    if (all.size() < 2) return all.join(QString());
    const QString last = all.takeLast();
    return ShareWordsSay::tr("%1 and %2").arg(all.join(QStringLiteral(", ")), last);
}

QString shareAnswer(const model::Season& season, const shareout::Ladder& ladder) {
    const auto& now = ladder.now;
    const auto first = std::find_if(now.lines.begin(), now.lines.end(), isShort);
    if (now.lines.empty()) return ShareWordsSay::tr("No pieces are booked yet.");
    if (first == now.lines.end())
        return ShareWordsSay::tr("All %1 at full count").arg(sharedPieces(season, now));
    const auto* spread = wayOf(ladder, WayKind::spread);
    const auto* fewer = wayOf(ladder, WayKind::fewerPieces, first->line);
    const auto* line = lineOf(spread ? spread->share : now, first->line);
    QString words;
    if (fewer)
        words = ShareWordsSay::tr("%1 at full count, or %2")
                    .arg(sharedPieces(season, first->line, fewer->pieces.value), spreadWords(season, *line));
    else
        words = ShareWordsSay::tr("No %1 at full count; %2")
                    .arg(pieceNoun(season, first->line, 1), spreadWords(season, *line));
    const auto others = std::count_if(std::next(first), now.lines.end(), isShort);
    if (others > 0)
        words += ShareWordsSay::tr("; %n more design(s) (is|are) short", nullptr, static_cast<int>(others));
    return words;
}

namespace {

/// "Kept for The Ashby wedding, off the same round: 20 cornflowers, 8 bupleurum", a sentence a booking.
QStringList setAsideWords(const model::Season& season, const plan::SharePlan& plan) {
    QStringList all;
    for (auto first = plan.setAside.begin(); first != plan.setAside.end();) {
        QStringList plants;
        auto last = first;
        for (; last != plan.setAside.end() && last->booking == first->booking; ++last)
            plants << countedPlant(season, last->plant, last->stems.value);
        all << ShareWordsSay::tr("Kept for %1, off the same round: %2.")
                   .arg(named(season, model::TableKind::bookings, first->booking.value),
                        plants.join(QStringLiteral(", ")));
        first = last;
    }
    return all;
}

} // namespace

QStringList shareNotes(const model::Season& season, const ShareFound& found) {
    QStringList all;
    for (const auto& note : found.plan.tally.notes)
        all << noteWords(season, note);
    for (auto note : found.plan.share.notes) {
        if (note.finding == shareout::ShareFinding::plantInNoSlot)
            for (const auto& lot : found.fromStore)
                if (lot.plant == note.plant) note.number -= lot.cut.value_or(Stems(0)).value;
        const bool unwanted = note.finding == shareout::ShareFinding::plantNotCounted && found.cutFor &&
                              !found.cutFor->contains(note.plant);
        const bool inStore = note.finding == shareout::ShareFinding::plantInNoSlot && note.number <= 0;
        if (!unwanted && !inStore) all << noteWords(season, note);
    }
    all += setAsideWords(season, found.plan);
    return all;
}

QStringList shareWorkings(const model::Season& season, const ShareOut& share) {
    QStringList all;
    for (const auto& use : share.plants) {
        std::map<std::int64_t, std::int64_t, std::greater<>> byCount;
        for (const auto& line : share.lines)
            for (const auto& group : line.groups)
                if (const auto stems = inGroup(group, use.plant); stems > 0)
                    byCount[stems] += group.pieces.value;
        if (byCount.empty()) continue;
        QStringList parts;
        for (const auto& [stems, pieces] : byCount)
            parts << ShareWordsSay::tr("%1 × %2").arg(whole(pieces), whole(stems));
        if (use.left.value > 0) parts << ShareWordsSay::tr("%1 left").arg(whole(use.left.value));
        all << ShareWordsSay::tr("%1 = %2").arg(countedPlant(season, use.plant, use.counted.value),
                                                parts.join(QStringLiteral(" + ")));
    }
    return all;
}

QString mixedWords(const model::Season& season, const Way& way) {
    const QString stems = whole(way.stems.value);
    const QString plants = countedPlant(season, way.plant, way.stems.value);
    switch (way.kind) {
    case WayKind::spread:
        return ShareWordsSay::tr("nothing stands in");
    case WayKind::fewerPieces:
        return sharedPieces(season, way.line, way.pieces.value);
    case WayKind::oneLess:
        return ShareWordsSay::tr("%1 fewer of %2")
            .arg(stems, named(season, model::TableKind::slots, way.slot.value));
    case WayKind::swap:
    case WayKind::freeStems:
        return ShareWordsSay::tr("%1 standing in").arg(plants);
    case WayKind::release:
        return ShareWordsSay::tr("%1 from %2")
            .arg(plants, named(season, model::TableKind::bookings, way.from.value));
    case WayKind::buyIn:
        return ShareWordsSay::tr("%1 bought in").arg(plants);
    }
    return {};
}

QString chosenAlready(const QStringList& ways) {
    return ShareWordsSay::tr(
               "Chosen already: %1. What stands below comes on top; it is all one step to undo.")
        .arg(ways.join(QStringLiteral("; ")));
}

QString clientDraft(const model::Season& season, Id<model::Booking> id, const ShareOut& before,
                    const ShareOut& after) {
    const auto* booking = season.bookings.find(id);
    if (!booking) return {};
    QStringList what;
    for (const auto& line : after.lines) {
        const auto* was = lineOf(before, line.line);
        const QString pieces = sharedPieces(season, line.line, line.pieces.value);
        if (was && line.pieces < was->pieces)
            what
                << ShareWordsSay::tr("there will be %1 in place of %2").arg(pieces, whole(was->pieces.value));
        if (!isShort(line)) continue;
        const auto fewer = thinner(line);
        what << ShareWordsSay::tr("%1 of the %2 will hold a little less than we agreed")
                    .arg(whole(fewer.value), pieces);
    }
    const QString head = ShareWordsSay::tr("About %1 on %2: the garden gave a little less than we hoped")
                             .arg(text(booking->title), shortDay(booking->eventStart.day));
    if (what.isEmpty())
        return head +
               ShareWordsSay::tr(", and other flowers of ours stand in, so that every piece is whole.");
    return head + ShareWordsSay::tr(", so %1. They are shared out evenly, and nobody's table stands out.")
                      .arg(what.join(ShareWordsSay::tr(", and ")));
}

} // namespace withy::ui
