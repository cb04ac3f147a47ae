// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/share_rows.h"

#include "core/model/schema.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/sheet.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using shareout::LineShare;
using shareout::ShareOut;
using shareout::Way;
using shareout::WayKind;

struct ShareRowsSay {
    Q_DECLARE_TR_FUNCTIONS(ShareRows)
};

const LineShare* sharedLine(const ShareOut& share, Id<model::Line> id) {
    for (const auto& line : share.lines)
        if (line.line == id) return &line;
    return nullptr;
}

/// Tables that the booking's pieces stand on; nought when nobody placed them.
std::int64_t tablesOf(const model::Season& season, const ShareOut& share) {
    std::set<std::int64_t> seen;
    std::int64_t tables = 0;
    for (const auto& p : season.placements) {
        if (!sharedLine(share, p.line) || !seen.insert(p.table.value).second) continue;
        if (const auto* table = season.venueTables.find(p.table)) tables += table->howMany;
    }
    return tables;
}

/// What tables go without when a line has so many pieces: "One table has one jar, one has none."
QString tablesWithout(const model::Season& season, Id<model::Line> line, std::int64_t pieces) {
    std::int64_t tables = 0;
    std::int64_t perTable = 0;
    for (const auto& p : season.placements) {
        if (p.line != line) continue;
        if (const auto* table = season.venueTables.find(p.table)) tables += table->howMany;
        perTable = std::max(perTable, p.perTable);
    }
    if (tables == 0 || perTable == 0) return {};
    const std::int64_t full = pieces / perTable;
    const std::int64_t part = pieces % perTable;
    const std::int64_t none = tables - full - (part > 0 ? 1 : 0);
    QStringList all;
    if (part > 0) all << ShareRowsSay::tr("one table has %1 of %2").arg(whole(part), whole(perTable));
    if (none > 0) all << ShareRowsSay::tr("%n table(s) (has|have) none", nullptr, static_cast<int>(none));
    QString words = all.join(QStringLiteral(", "));
    if (words.isEmpty()) return {};
    words[0] = words[0].toUpper();
    return words + QLatin1Char('.');
}

/// One choice put into words.
class ShareChoiceWords {
public:
    ShareChoiceWords(const model::Season& season, const ShareFound& found)
        : season_(season)
        , found_(found)
        , now_(found.ladder.now)
        , tallied_(talliedOf(found.plan, found.fromStore)) {}

    [[nodiscard]] ShareChoice asItIs() const {
        ShareChoice c = common(now_);
        c.head = ShareRowsSay::tr("%1 as the design allows").arg(sharedPieces(season_, now_));
        c.effect = thinnerWords(now_);
        c.kept = ShareRowsSay::tr("The booking stays as promised.");
        return c;
    }

    [[nodiscard]] ShareChoice of(int index) const {
        const Way& way = found_.ladder.ways[static_cast<std::size_t>(index)];
        ShareChoice c = common(way.share);
        c.way = index;
        say(way, c);
        if (c.effect.isEmpty()) c.effect = thinnerWords(way.share);
        return c;
    }

private:
    [[nodiscard]] ShareChoice common(const ShareOut& share) const {
        ShareChoice c;
        std::int64_t made = 0;
        std::int64_t was = 0;
        for (const auto& line : share.lines)
            made += line.pieces.value;
        for (const auto& line : found_.plan.share.lines)
            was += line.pieces.value;
        const std::int64_t tables = tablesOf(season_, share);
        if (made < was)
            c.figure = ShareRowsSay::tr("%n piece(s) fewer", nullptr, static_cast<int>(was - made));
        else if (tables > 0)
            c.figure = tables == 1 ? ShareRowsSay::tr("the one table")
                                   : ShareRowsSay::tr("all %n table(s)", nullptr, static_cast<int>(tables));
        else
            c.figure = made == 1 ? ShareRowsSay::tr("the one piece")
                                 : ShareRowsSay::tr("all %n piece(s)", nullptr, static_cast<int>(made));
        c.figureNote = sumsWords(shareSums(tallied_, share));
        c.whole =
            std::none_of(share.lines.begin(), share.lines.end(), [](const auto& l) { return isShort(l); });
        return c;
    }

    /// "8 jars have one stem less, 16 keep ten.": of every line that is still short.
    [[nodiscard]] QString thinnerWords(const ShareOut& share) const {
        QStringList all;
        for (const auto& line : share.lines) {
            if (!isShort(line)) continue;
            const auto fewer = thinner(line);
            const auto rest = line.pieces - fewer;
            QString words =
                ShareRowsSay::tr("%1 below the design").arg(sharedPieces(season_, line.line, fewer.value));
            if (rest.value > 0) words += ShareRowsSay::tr(", %1 keep it").arg(whole(rest.value));
            all << words;
        }
        if (all.isEmpty()) return ShareRowsSay::tr("Every piece is as designed.");
        return all.join(QStringLiteral("; ")) + QLatin1Char('.');
    }

    /// "7 dahlias"
    [[nodiscard]] QString plants(const Way& way) const {
        return countedPlant(season_, way.plant, way.stems.value);
    }

    /// "of the 8, 3 are still to be cut"
    [[nodiscard]] QString stillToCut(const Way& way) const {
        if (way.added.value == 0) return {};
        return ShareRowsSay::tr(" A note to cut and tally %1 stays in the brief.")
            .arg(countedPlant(season_, way.plant, way.added.value));
    }

    void say(const Way& way, ShareChoice& c) const {
        switch (way.kind) {
        case WayKind::spread:
            return spread(way, c);
        case WayKind::fewerPieces:
            c.head =
                ShareRowsSay::tr("%1 at full count").arg(sharedPieces(season_, way.line, way.pieces.value));
            c.effect = tablesWithout(season_, way.line, way.pieces.value);
            c.kept = ShareRowsSay::tr("The booking then has %1.")
                         .arg(sharedPieces(season_, way.line, way.pieces.value));
            return;
        case WayKind::oneLess:
            return oneLess(way, c);
        case WayKind::swap:
        case WayKind::freeStems:
            return standIn(way, c);
        case WayKind::release:
            c.head = ShareRowsSay::tr("%1 out of %2").arg(plants(way), text(titleOf(way.from)));
            c.effect =
                ShareRowsSay::tr("That booking stays as well covered as it is. ") + thinnerWords(way.share);
            c.kept = ShareRowsSay::tr("The later booking is not touched.") + stillToCut(way);
            return;
        case WayKind::buyIn:
            return buyIn(way, c);
        }
    }

    void spread(const Way& way, ShareChoice& c) const {
        QStringList all;
        for (const auto& line : way.share.lines) {
            if (!isShort(line)) continue;
            const auto fewer = thinner(line);
            all << ShareRowsSay::tr("%1, %2 of them with less")
                       .arg(sharedPieces(season_, line.line, line.pieces.value), whole(fewer.value));
        }
        c.head = all.isEmpty() ? sharedPieces(season_, way.share) : all.join(QStringLiteral("; "));
        c.effect = ShareRowsSay::tr("Nothing stands in. ") + thinnerWords(way.share);
        c.kept = ShareRowsSay::tr("The booking stays as it is; where a slot may vary, it no longer does.");
    }

    void oneLess(const Way& way, ShareChoice& c) const {
        const QString slot = text(model::nameOf(season_, model::TableKind::slots, way.slot.value));
        const auto* line = sharedLine(way.share, way.line);
        c.head = ShareRowsSay::tr("%1, %2 fewer of %3 in every one")
                     .arg(line ? sharedPieces(season_, way.line, line->pieces.value) : QString(),
                          numberWord(way.stems.value), slot.toLower());
        c.effect = ShareRowsSay::tr("All are alike.");
        c.kept =
            ShareRowsSay::tr("The design is changed; where others use it too, a copy is made for this one.");
    }

    void standIn(const Way& way, ShareChoice& c) const {
        c.head = way.stems.value == 1 ? ShareRowsSay::tr("%1 stands in").arg(plants(way))
                                      : ShareRowsSay::tr("%1 stand in").arg(plants(way));
        QStringList all;
        if (way.kind == WayKind::swap) all << ShareRowsSay::tr("Agreed with the client.");
        if (way.added.value > 0)
            all << ShareRowsSay::tr("%1 of them free in the garden or the store.")
                       .arg(whole(way.added.value));
        all << thinnerWords(way.share);
        c.effect = all.join(QLatin1Char(' '));
        c.kept = ShareRowsSay::tr("The design gets %1 as its last choice there.")
                     .arg(inPassing(season_, way.plant)) +
                 stillToCut(way);
    }

    void buyIn(const Way& way, ShareChoice& c) const {
        c.head = ShareRowsSay::tr("Buy %1 in %n bunch(es)", nullptr, static_cast<int>(way.bunches))
                     .arg(plants(way));
        const QString price =
            way.cost.minor > 0 ? amount(way.cost, season_.theSettings()) : ShareRowsSay::tr("cost not known");
        c.effect = way.inTime ? ShareRowsSay::tr("%1, ordered by %2. ").arg(price, shortDay(way.orderBy))
                              : ShareRowsSay::tr("%1; the usual day to order, %2, has passed. Ask first. ")
                                    .arg(price, shortDay(way.orderBy));
        c.effect += thinnerWords(way.share);
        c.tooLate = !way.inTime;
        c.kept = ShareRowsSay::tr("They stand in the store as bought in, never as our own.");
    }

    [[nodiscard]] std::string titleOf(Id<model::Booking> id) const {
        const auto* booking = season_.bookings.find(id);
        return booking ? booking->title : std::string();
    }

    const model::Season& season_;
    const ShareFound& found_;
    const ShareOut& now_;
    StemsByPlant tallied_;
};

/// All slots and plants a line's groups hold, in making order, plants best first.
std::vector<std::pair<Id<model::Slot>, Id<model::Plant>>> partsOf(const LineShare& line) {
    std::vector<std::pair<Id<model::Slot>, Id<model::Plant>>> parts;
    for (const auto& slot : line.slots)
        for (const auto& plant : slot.plants)
            if (plant.stems.value > 0) parts.emplace_back(slot.slot, plant.plant);
    return parts;
}

std::int64_t stemsIn(const shareout::PieceGroup& group, Id<model::Slot> slot, Id<model::Plant> plant) {
    for (const auto& p : group.portions)
        if (p.slot == slot && p.plant == plant) return p.stems.value;
    return 0;
}

bool dealtAlike(const ShareOut& a, const ShareOut& b) {
    return std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(), b.lines.end(),
                      [](const auto& x, const auto& y) { return x.groups == y.groups; });
}

ShareGroup groupOf(const model::Season& season, const LineShare& line, const shareout::PieceGroup& group) {
    const auto& first = line.groups.front();
    ShareGroup out;
    out.line = line.line;
    out.pieces = group.pieces.value;
    out.noun = pieceNoun(season, line.line, out.pieces);
    out.odd = &group != &first;
    QStringList words;
    for (const auto& [slot, plant] : partsOf(line)) {
        SharePart part;
        part.slot = slot;
        part.plant = plant;
        part.slotName = text(model::nameOf(season, model::TableKind::slots, slot.value));
        part.name = inPassing(season, plant);
        if (const auto* record = season.plants.find(plant)) part.dot = record->colour1;
        part.stems = stemsIn(group, slot, plant);
        part.differs = part.stems != stemsIn(first, slot, plant);
        part.varies =
            std::any_of(line.groups.begin(), line.groups.end(),
                        [&, s = slot, p = plant](const auto& g) { return stemsIn(g, s, p) != part.stems; });
        words << countedPlant(season, plant, part.stems);
        out.parts.push_back(std::move(part));
    }
    out.words = words.join(QStringLiteral(", "));
    out.means =
        ShareRowsSay::tr("%1 with %2 each").arg(sharedPieces(season, line.line, out.pieces), out.words);
    return out;
}

} // namespace

std::vector<ShareGroup> shareGroups(const model::Season& season, const LineShare& line) {
    std::vector<ShareGroup> all;
    for (const auto& group : line.groups)
        all.push_back(groupOf(season, line, group));
    return all;
}

std::vector<ShareGroup> shareGroups(const model::Season& season, const ShareOut& share) {
    std::vector<ShareGroup> all;
    for (const auto& line : share.lines)
        for (auto& group : shareGroups(season, line))
            all.push_back(std::move(group));
    return all;
}

const ShareOut& shareOf(const ShareFound& found, int way) {
    if (way < 0) return found.ladder.now;
    return found.ladder.ways[static_cast<std::size_t>(way)].share;
}

ShareView shareView(const model::Season& season, const ShareFound& found, const StemsByPlant& goals) {
    ShareView view;
    if (found.stop || (!found.tallied && found.ladder.now.lines.empty())) {
        view.empty = true;
        view.head = found.stop ? shareStopWords(season, *found.stop) : nothingTalliedWords();
        return view;
    }
    if (!found.waitsFor.empty()) {
        view.empty = true;
        view.head = stillToCountWords(season, found.waitsFor);
        return view;
    }
    view.small = cameInWords(season, found, goals);
    view.head = shareAnswer(season, found.ladder);
    view.notes = shareNotes(season, found);
    const ShareChoiceWords say(season, found);
    const auto& ways = found.ladder.ways;
    if (ways.empty()) return view;
    // What the design itself allows (plants of a slot, slots that may vary) is a choice beside the plain
    // spread.
    if (!dealtAlike(found.ladder.now, ways.front().share)) view.choices.push_back(say.asItIs());
    for (std::size_t i = 0; i < ways.size(); ++i)
        view.choices.push_back(say.of(static_cast<int>(i)));
    return view;
}

QString makeThese(const ShareOut& share) {
    std::int64_t pieces = 0;
    for (const auto& line : share.lines)
        pieces += line.pieces.value;
    return ShareRowsSay::tr("Ma&ke (this|these) %n", nullptr, static_cast<int>(pieces));
}

} // namespace withy::ui
