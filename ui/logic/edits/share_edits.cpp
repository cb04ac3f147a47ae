// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/share_edits.h"

#include "core/model/schema.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/share_words.h"
#include "ui/logic/models/sheet.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace withy::ui::edits {

namespace {

using shareout::LineAsk;
using shareout::SlotAsk;
using shareout::Way;
using shareout::WayKind;

struct ShareEditsSay {
    Q_DECLARE_TR_FUNCTIONS(ShareEdits)

public:
    static QString cutReleased() {
        return tr("Cut %1 %2 more, out of what was meant for %3; it stays covered.");
    }

    static QString cutFree() { return tr("Cut %1 %2 more, which nobody is promised."); }

    static QString tellClient() { return tr("Tell the client: %1"); }
};

/// Whether `words` are the sentence with anything in its places.
bool saysAs(const QString& sentence, const QString& words) {
    static const QRegularExpression place(QStringLiteral("%\\d"));
    const auto parts = sentence.split(place);
    qsizetype at = 0;
    for (const auto& part : parts) {
        const auto found = words.indexOf(part, at);
        if (found < 0 || (at == 0 && found > 0)) return false;
        at = found + part.size();
    }
    return parts.last().isEmpty() || words.endsWith(parts.last());
}

std::string titleOf(const Season& season, Id<model::Booking> booking) {
    return model::nameOf(season, TableKind::bookings, booking.value);
}

/// What a slot of one line is to become.
struct SlotChange {
    std::size_t place = 0; ///< in making order
    const SlotAsk* was = nullptr;
    const SlotAsk* now = nullptr;

    [[nodiscard]] std::vector<Id<model::Plant>> added() const {
        std::vector<Id<model::Plant>> plants;
        for (const auto& c : now->choices)
            if (std::none_of(was->choices.begin(), was->choices.end(),
                             [&](const auto& o) { return o.plant == c.plant; }))
                plants.push_back(c.plant);
        return plants;
    }

    [[nodiscard]] bool any() const {
        return was->count != now->count || was->mayVaryBy != now->mayVaryBy || !added().empty();
    }

    [[nodiscard]] bool sameAs(const SlotChange& o) const {
        return place == o.place && now->count == o.now->count && now->mayVaryBy == o.now->mayVaryBy &&
               added() == o.added();
    }
};

std::vector<SlotChange> changesOf(const LineAsk& was, const LineAsk& now) {
    std::vector<SlotChange> all;
    for (std::size_t i = 0; i < was.slots.size() && i < now.slots.size(); ++i) {
        const SlotChange change{i, &was.slots[i], &now.slots[i]};
        if (change.any()) all.push_back(change);
    }
    return all;
}

bool alike(const std::vector<SlotChange>& a, const std::vector<SlotChange>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const auto& x, const auto& y) { return x.sameAs(y); });
}

/// Writes one edit after the other on a season that goes along, and keeps them as one.
class Taker {
public:
    Taker(const Season& season, const ShareTaking& taking) : now_(season), taking_(taking) {
        after_ = taking.ways.empty() ? taking.before : taking.ways.back().problem;
        const bool spread = std::any_of(taking.ways.begin(), taking.ways.end(),
                                        [](const auto& w) { return w.kind == WayKind::spread; });
        if (!spread) keepVariance(); // full count says nothing of what a slot may vary by
    }

    Edit edit() {
        for (const auto& line : after_.lines)
            if (const auto* was = lineIn(taking_.before, line.line)) changeLine(*was, line);
        for (const auto& way : taking_.ways) {
            if (way.kind == WayKind::buyIn)
                buy(way);
            else if (way.added.value > 0)
                noteToCut(way);
        }
        whole_.rename(name());
        return whole_;
    }

private:
    static const LineAsk* lineIn(const shareout::ShareProblem& problem, Id<model::Line> id) {
        for (const auto& line : problem.lines)
            if (line.line == id) return &line;
        return nullptr;
    }

    void keepVariance() {
        for (auto& line : after_.lines) {
            const auto* was = lineIn(taking_.before, line.line);
            for (std::size_t i = 0; was && i < line.slots.size() && i < was->slots.size(); ++i)
                line.slots[i].mayVaryBy = was->slots[i].mayVaryBy;
        }
    }

    void add(const Edit& edit) {
        if (edit.empty()) return;
        auto done = model::apply(now_, edit);
        join(whole_, edit);
        if (done.ok()) now_ = done->season; // what cannot be is refused when the whole is taken
    }

    void changeLine(const LineAsk& was, const LineAsk& ask) {
        const auto* line = now_.lines.find(ask.line);
        if (!line) return;
        if (was.pieces != ask.pieces) {
            model::Line next = *line;
            next.pieces = std::min(line->pieces, ask.pieces);
            next.sparePieces = ask.pieces - next.pieces;
            add(put("line.pieces", next));
        }
        const auto changes = changesOf(was, ask);
        if (changes.empty()) return;
        const auto design = ownDesign(ask.line, changes);
        const auto slots = slotsOf(now_, design);
        std::vector<Id<model::Slot>> ids;
        for (const auto* slot : slots)
            ids.push_back(slot->id);
        for (const auto& change : changes)
            if (change.place < ids.size()) changeSlot(ids[change.place], change);
    }

    /// The line's design, when every line that uses it is of this booking and changes alike; else a copy.
    Id<model::Design> ownDesign(Id<model::Line> id, const std::vector<SlotChange>& changes) {
        const model::Line line = *now_.lines.find(id);
        const auto uses = usesOf(now_, line.design);
        const bool alone = std::all_of(uses.begin(), uses.end(), [&](const auto& use) {
            if (use.booking != taking_.booking) return false;
            const auto* was = lineIn(taking_.before, use.line);
            const auto* next = lineIn(after_, use.line);
            return was && next && alike(changesOf(*was, *next), changes);
        });
        if (alone) return line.design;
        Id<model::Design> made;
        add(duplicateDesign(now_, line.design, made));
        model::Line next = line;
        next.design = made;
        add(put("line.design", next));
        return made;
    }

    void changeSlot(Id<model::Slot> id, const SlotChange& change) {
        const auto* old = now_.slots.find(id);
        if (!old) return;
        model::Slot slot = *old;
        slot.count = change.now->count;
        slot.mayVaryBy = change.now->mayVaryBy;
        add(put("slot.count", slot));
        for (const auto plant : change.added())
            add(addSlotPlant(now_, id, plant));
    }

    void buy(const Way& way) {
        const auto* plant = now_.plants.find(way.plant);
        if (!plant) return;
        model::StockLot lot;
        lot.id = now_.stockLots.nextId();
        lot.plant = way.plant;
        lot.stems = way.stems;
        lot.origin = model::StockOrigin::boughtIn;
        lot.readyFrom = taking_.bench;
        lot.unitCost = plant->costPerStem;
        lot.homeGrown = false;
        add(put("cover.buy", lot));
    }

    void noteToCut(const Way& way) {
        const QString stems = whole(way.added.value);
        const QString plant = inPassing(now_, way.plant);
        QString words = way.kind == WayKind::release
                            ? ShareEditsSay::cutReleased().arg(stems, plant, text(titleOf(now_, way.from)))
                            : ShareEditsSay::cutFree().arg(stems, plant);
        model::Question note;
        note.id = now_.questions.nextId();
        note.booking = taking_.booking;
        note.text = utf8(words);
        note.neededBy = taking_.bench;
        add(put("question", note));
    }

    [[nodiscard]] model::EditName name() const {
        const std::string booking = titleOf(now_, taking_.booking);
        if (taking_.ways.size() != 1) return {"share.mix", {std::to_string(taking_.ways.size()), booking}};
        const Way& way = taking_.ways.front();
        const std::string plant = utf8(inPassing(now_, way.plant));
        const std::string stems = utf8(whole(way.stems.value));
        switch (way.kind) {
        case WayKind::spread:
            return {"share.spread", {booking}};
        case WayKind::fewerPieces:
            return {"share.fewer", {utf8(sharedPieces(now_, way.line, way.pieces.value)), booking}};
        case WayKind::oneLess:
            return {"share.less", {stems, model::nameOf(now_, TableKind::slots, way.slot.value), booking}};
        case WayKind::swap:
        case WayKind::freeStems:
            return {"share.swap", {stems, plant, booking}};
        case WayKind::release:
            return {"share.release", {stems, plant, titleOf(now_, way.from), booking}};
        case WayKind::buyIn:
            return {"cover.buy", {stems, plant, booking}};
        }
        return {"share.mix", {"1", booking}};
    }

    Season now_;
    const ShareTaking& taking_;
    shareout::ShareProblem after_;
    Edit whole_;
};

const model::JobNote* findJobNote(const Season& season, Id<model::Booking> booking) {
    for (const auto& note : season.jobNotes)
        if (note.booking == booking) return &note;
    return nullptr;
}

} // namespace

Edit takeWays(const Season& season, const ShareTaking& taking) {
    if (!season.bookings.find(taking.booking)) return Edit("share.mix");
    return Taker(season, taking).edit();
}

Edit noteMade(const Season& season, Id<model::Booking> booking, const std::vector<shareout::LineShare>& lines,
              std::optional<Minutes> minutes, const QString& byWhom) {
    std::int64_t all = 0;
    for (const auto& line : lines)
        all += line.pieces.value;
    Edit edit("share.made", {utf8(whole(all)), titleOf(season, booking)});
    auto id = season.made.nextId();
    std::int64_t piecesLeft = all;
    std::int64_t minutesLeft = minutes ? minutes->value : 0;
    for (const auto& line : lines) {
        if (line.pieces.value <= 0 || !season.lines.find(line.line)) continue;
        model::Made made;
        made.id = id;
        made.line = line.line;
        made.pieces = line.pieces;
        if (minutes) {
            const std::int64_t part = piecesLeft > 0 ? minutesLeft * line.pieces.value / piecesLeft : 0;
            made.minutes = Minutes(part);
            minutesLeft -= part;
        }
        piecesLeft -= line.pieces.value;
        made.byWhom = utf8(byWhom.trimmed());
        edit.put(made);
        ++id.value;
    }
    return edit;
}

Edit noteTold(const Season& season, Id<model::Booking> booking, const QString& words, std::optional<Day> told,
              Day neededBy) {
    const std::string all = utf8(ShareEditsSay::tellClient().arg(words.trimmed()));
    model::Question q;
    q.id = season.questions.nextId();
    q.booking = booking;
    for (const auto& old : season.questions)
        if (old.booking == booking && old.text == all) q = old;
    q.text = all;
    q.neededBy = neededBy;
    if (told) q.answer = utf8(ShareEditsSay::tr("told %1").arg(shortDay(*told)));
    return put("share.told", q, {titleOf(season, booking)});
}

bool isOfOneCutting(const model::Question& question) {
    const QString words = text(question.text);
    return saysAs(ShareEditsSay::tellClient(), words) || saysAs(ShareEditsSay::cutFree(), words) ||
           saysAs(ShareEditsSay::cutReleased(), words);
}

JobNoteAnswers jobNoteOf(const Season& season, Id<model::Booking> booking) {
    JobNoteAnswers answers;
    const auto* note = findJobNote(season, booking);
    if (!note) return answers;
    answers.drooped = text(note->drooped);
    answers.nextTime = text(note->nextTime);
    if (note->hoursMaking) answers.making = Minutes(static_cast<std::int64_t>(*note->hoursMaking * 60 + 0.5));
    for (const auto& p : season.jobNotePlants)
        if (p.note == note->id) answers.left.emplace_back(p.plant, p.left);
    return answers;
}

Edit noteJob(const Season& season, Id<model::Booking> booking, const JobNoteAnswers& answers) {
    const auto* old = findJobNote(season, booking);
    model::JobNote note = old ? *old : model::JobNote{};
    if (!old) {
        note.id = season.jobNotes.nextId();
        note.booking = booking;
    }
    note.drooped = utf8(answers.drooped.trimmed());
    note.nextTime = utf8(answers.nextTime.trimmed());
    // A figure that was typed in hours keeps its fraction unless the minutes say something else.
    if (answers.making != jobNoteOf(season, booking).making)
        note.hoursMaking =
            answers.making ? std::optional(static_cast<double>(answers.making->value) / 60) : std::nullopt;
    Edit edit("share.note", {titleOf(season, booking)});
    bool any = old || !note.drooped.empty() || !note.nextTime.empty() || note.hoursMaking;
    auto id = season.jobNotePlants.nextId();
    for (const auto& [plant, left] : answers.left) {
        const model::JobNotePlant* was = nullptr;
        for (const auto& p : season.jobNotePlants)
            if (old && p.note == old->id && p.plant == plant) was = &p;
        if (!was && !left) continue;
        model::JobNotePlant row = was ? *was : model::JobNotePlant{};
        if (!was) {
            row.id = id;
            ++id.value;
        }
        row.note = note.id;
        row.plant = plant;
        row.left = left;
        edit.put(row);
        any = true;
    }
    if (!any) return Edit("share.note");
    edit.put(note);
    return edit;
}

} // namespace withy::ui::edits
