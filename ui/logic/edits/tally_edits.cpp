// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/tally_edits.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/outing_goals.h"
#include "ui/logic/models/stem_sources.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui::edits {

namespace {

constexpr std::int64_t mostTallied = 1'000'000; // the model's own limit for a tally

struct TallyEditsSay {
    Q_DECLARE_TR_FUNCTIONS(Tally)
};

TallyStep refused(const QString& sentence) {
    return {Edit(), sentence};
}

bool serves(const Season& season, Id<model::Round> round, Id<model::Booking> booking) {
    return std::any_of(season.roundBookings.begin(), season.roundBookings.end(),
                       [&](const auto& rb) { return rb.round == round && rb.booking == booking; });
}

const model::Tally* tallyIn(const Season& season, Id<model::Round> round, Id<model::Patch> patch) {
    for (const auto& t : season.tallies)
        if (t.round == round && t.patch == patch) return &t;
    return nullptr;
}

std::optional<Stems>& slotOf(model::Tally& tally, TallyCount count) {
    return count == TallyCount::cut ? tally.cut : tally.thrownAway;
}

const std::optional<Stems>& slotOf(const model::Tally& tally, TallyCount count) {
    return count == TallyCount::cut ? tally.cut : tally.thrownAway;
}

/// The booking and those that the same outing cuts for.
void serve(const Season& season, Id<model::Round> round, const Cutting& cutting, Edit& edit) {
    model::RoundBooking serving;
    serving.id = season.roundBookings.nextId();
    serving.round = round;
    std::vector<Id<model::Booking>> all{cutting.booking};
    all.insert(all.end(), cutting.others.begin(), cutting.others.end());
    for (const auto booking : all) {
        serving.booking = booking;
        edit.put(serving);
        ++serving.id.value;
    }
}

/// The day's tally to be changed, or a new one; what has to be made for it goes into `edit`.
model::Tally tallyToChange(const Season& season, const Cutting& cutting, Id<model::Patch> patch, Edit& edit) {
    model::Tally tally;
    tally.id = season.tallies.nextId();
    tally.patch = patch;
    if (const auto* round = roundOn(season, cutting.booking, cutting.day())) {
        if (const auto* there = tallyIn(season, round->id, patch)) return *there;
        tally.round = round->id;
        return tally;
    }
    model::Round round;
    round.id = season.rounds.nextId();
    round.from = cutting.from;
    round.to = std::max(cutting.from, cutting.to);
    edit.put(round);
    serve(season, round.id, cutting, edit);
    tally.round = round.id;
    return tally;
}

/// Why nothing of this patch may be noted for this booking; empty when it may.
QString refusal(const Season& season, const Cutting& cutting, Id<model::Patch> patch) {
    if (const QString closed = tallyClosed(season, cutting.booking); !closed.isEmpty()) return closed;
    if (!season.patches.find(patch))
        return TallyEditsSay::tr("That patch is no longer in the season. Choose another.");
    return {};
}

std::string plantOf(const Season& season, Id<model::Patch> patch) {
    const auto* p = season.patches.find(patch);
    return p ? utf8(inPassing(season, p->plant)) : std::string();
}

/// Why the day's two counts do not go together; empty when they do.
QString clash(const model::Tally& tally, TallyCount changed) {
    if (!tally.cut || !tally.thrownAway || *tally.thrownAway <= *tally.cut) return {};
    if (changed == TallyCount::thrownAway)
        return TallyEditsSay::tr("%n (was|were) cut that day, so no more can be thrown away. Count what was "
                                 "cut first.",
                                 nullptr, static_cast<int>(tally.cut->value));
    return TallyEditsSay::tr("%n of these (was|were) thrown away. Take that back first, or count more.",
                             nullptr, static_cast<int>(tally.thrownAway->value));
}

QString tooManyStems(std::int64_t stems) {
    if (stems >= 10 * mostTallied) // as far as sums are read
        return TallyEditsSay::tr("That is more stems than any patch gives. A digit too many?");
    return TallyEditsSay::tr("%1 stems are more than any patch gives. A digit too many?").arg(whole(stems));
}

/// Writes the day's count; the name tells what it came to.
TallyStep write(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                std::optional<std::int64_t> onDay, model::EditName name) {
    TallyStep step{Edit(std::move(name)), {}};
    auto tally = tallyToChange(season, cutting, patch, step.edit);
    slotOf(tally, count) = onDay ? std::optional(Stems(*onDay)) : std::nullopt;
    if (const QString why = clash(tally, count); !why.isEmpty()) return refused(why);
    const bool there = season.tallies.find(tally.id) != nullptr;
    if (tally.cut || tally.thrownAway)
        step.edit.put(tally);
    else if (there)
        step.edit.erase(tally.id); // nothing is kept only to be blank
    else
        step.edit = Edit();
    return step;
}

model::EditName tallyName(const Season& season, Id<model::Patch> patch, TallyCount count, const char* cut,
                          std::int64_t n) {
    const char* key = count == TallyCount::cut ? cut : "tally.thrown";
    return {key, {utf8(whole(n)), plantOf(season, patch)}};
}

/// Digits, with the commas that counts are shown with.
std::optional<std::int64_t> wholeNumber(const QString& words) {
    const QString digits = QString(words).remove(QLatin1Char(',')).trimmed();
    if (digits.isEmpty() || digits.size() > 12) return std::nullopt;
    if (std::any_of(digits.begin(), digits.end(), [](QChar c) { return c < u'0' || c > u'9'; }))
        return std::nullopt;
    return digits.toLongLong();
}

/// "12+10+8"; the sentence when it is no sum.
std::optional<std::int64_t> readSum(const QString& typed, QString& sentence) {
    std::int64_t sum = 0;
    for (const auto& part : typed.split(QLatin1Char('+'))) {
        if (part.trimmed().isEmpty()) {
            sentence =
                TallyEditsSay::tr("“%1” ends in the middle of a sum. Type the last figure too.").arg(typed);
            return std::nullopt;
        }
        const auto n = wholeNumber(part);
        if (!n) {
            sentence =
                TallyEditsSay::tr("“%1” is no count of stems. Type it as 64, or as 12+10+8.").arg(typed);
            return std::nullopt;
        }
        sum += std::min(*n, 10 * mostTallied);
    }
    return sum;
}

} // namespace

Cutting cuttingOn(const Season& season, const plan::Plan& plan, Id<model::Booking> booking, Day day) {
    Cutting cutting{booking, {day, static_cast<int>(season.theSettings().workFrom)}, {}, {}};
    cutting.to = cutting.from;
    if (const auto round = CutTimes(plan, booking).on(day)) {
        cutting.from = round->from;
        cutting.to = round->to;
    }
    // A booking with a round of its own that day keeps to it: what was counted there is its own.
    for (const auto other : outingWith(season, plan, booking, day))
        if (!roundOn(season, other, day) && tallyClosed(season, other).isEmpty())
            cutting.others.push_back(other);
    return cutting;
}

const model::Round* roundOn(const Season& season, Id<model::Booking> booking, Day day) {
    const model::Round* found = nullptr;
    for (const auto& round : season.rounds) {
        if (round.from.day != day || !serves(season, round.id, booking)) continue;
        if (!found || round.from < found->from) found = &round;
    }
    return found;
}

Tallied tallied(const Season& season, Id<model::Booking> booking, Id<model::Patch> patch, Day day,
                TallyCount count) {
    Tallied out;
    const auto* today = roundOn(season, booking, day);
    for (const auto& t : season.tallies) {
        if (t.patch != patch || !serves(season, t.round, booking)) continue;
        const auto& stems = slotOf(t, count);
        if (!stems) continue;
        out.all = out.all.value_or(0) + stems->value;
        if (today && t.round == today->id) out.onDay = stems->value;
    }
    return out;
}

TallyStep addStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                   std::int64_t by) {
    if (const QString why = refusal(season, cutting, patch); !why.isEmpty()) return refused(why);
    const auto now = tallied(season, cutting.booking, patch, cutting.day(), count);
    if (by < 0 && !now.onDay)
        return refused(now.all
                           ? TallyEditsSay::tr("All of these were noted on another day. Go to that day to "
                                               "take them back.")
                           : TallyEditsSay::tr("Nothing is counted yet, so nothing can go off it."));
    by = std::clamp(by, -100 * mostTallied, 100 * mostTallied);
    const std::int64_t sum = now.onDay.value_or(0) + by;
    if (sum < 0)
        return refused(
            TallyEditsSay::tr("Only %n (stem is|stems are) counted on that day, and a count never goes "
                              "below nought.",
                              nullptr, static_cast<int>(*now.onDay)));
    if (sum > mostTallied) return refused(tooManyStems(sum));
    const char* key = by < 0 ? "tally.fewer" : "tally.more";
    return write(season, cutting, patch, count, sum,
                 tallyName(season, patch, count, key, count == TallyCount::cut ? std::abs(by) : sum));
}

TallyStep setStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                   std::optional<Stems> stems) {
    if (const QString why = refusal(season, cutting, patch); !why.isEmpty()) return refused(why);
    if (!stems)
        return write(season, cutting, patch, count, std::nullopt, {"tally.blank", {plantOf(season, patch)}});
    if (stems->value < 0)
        return refused(TallyEditsSay::tr("A count cannot be less than nought. Type what came in."));
    if (stems->value > mostTallied) return refused(tooManyStems(stems->value));
    const auto other = tallied(season, cutting.booking, patch, cutting.day(), count).otherDays();
    if (stems->value < other)
        return refused(
            TallyEditsSay::tr("%1 of these were noted on other days, so it cannot be only %2 in all. "
                              "Go to that day to take some back.")
                .arg(whole(other), whole(stems->value)));
    return write(season, cutting, patch, count, stems->value - other,
                 tallyName(season, patch, count, "tally.cut", stems->value));
}

TallyStep typeStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                    const QString& typed) {
    const QString words = typed.simplified();
    if (words.isEmpty()) return setStems(season, cutting, patch, count, std::nullopt);
    const QChar sign = words.front();
    const bool off = sign == QLatin1Char('-') || sign == QChar(0x2212);
    const bool on = sign == QLatin1Char('+');
    QString sentence;
    const auto sum = readSum(off || on ? words.mid(1) : words, sentence);
    if (!sum) return refused(sentence);
    if (off || on) return addStems(season, cutting, patch, count, off ? -*sum : *sum);
    return setStems(season, cutting, patch, count, Stems(*sum));
}

TallyStep addFound(const Season& season, const Cutting& cutting, Id<model::Patch> patch) {
    if (const QString why = refusal(season, cutting, patch); !why.isEmpty()) return refused(why);
    TallyStep step{Edit("tally.found", {plantOf(season, patch)}), {}};
    const auto tally = tallyToChange(season, cutting, patch, step.edit);
    if (season.tallies.find(tally.id))
        return refused(TallyEditsSay::tr("That patch is in the tally already."));
    step.edit.put(tally);
    return step;
}

TallyStep addFoundPlant(const Season& season, const Cutting& cutting, Id<model::Plant> id) {
    if (const QString closed = tallyClosed(season, cutting.booking); !closed.isEmpty())
        return refused(closed);
    const auto* plant = season.plants.find(id);
    if (!plant) return refused(TallyEditsSay::tr("That plant is no longer in the season. Choose another."));
    model::Patch patch;
    patch.id = season.patches.nextId();
    patch.plant = id;
    patch.label = utf8(TallyEditsSay::tr("Found in flower"));
    for (const auto& other : season.patches)
        patch.place = std::max(patch.place, other.place + 1);
    TallyStep step{Edit("tally.found", {utf8(inPassing(season, id))}), {}};
    step.edit.put(patch);
    step.edit.put(tallyToChange(season, cutting, patch.id, step.edit));
    return step;
}

TallyStep letStandIn(const Season& season, Id<model::Booking> booking, Id<model::Slot> slot,
                     Id<model::Plant> plant) {
    if (const QString closed = tallyClosed(season, booking); !closed.isEmpty()) return refused(closed);
    const model::SlotPlant* first = nullptr;
    for (const auto& p : season.slotPlants)
        if (p.slot == slot && (!first || p.position < first->position)) first = &p;
    if (!first || !season.plants.find(plant))
        return refused(
            TallyEditsSay::tr("That slot names no plant yet, so nothing can stand in for it. Give it one "
                              "at the bench."));
    model::AgreedSwap swap;
    swap.id = season.agreedSwaps.nextId();
    swap.booking = booking;
    swap.plant = first->plant;
    swap.standIn = plant;
    for (const auto& other : season.agreedSwaps) {
        if (other.booking != booking) continue;
        if (other.plant == swap.plant && other.standIn == plant)
            return refused(TallyEditsSay::tr("That is agreed already."));
        swap.position = std::max(swap.position, other.position + 1);
    }
    TallyStep step{
        Edit("tally.stand_in", {utf8(inPassing(season, plant)), utf8(inPassing(season, first->plant))}), {}};
    step.edit.put(swap);
    return step;
}

QString tallyClosed(const Season& season, Id<model::Booking> id) {
    const auto* booking = season.bookings.find(id);
    if (!booking) return TallyEditsSay::tr("That booking is no longer in the season.");
    using enum model::Standing;
    const auto s = booking->standing;
    if (s != delivered && s != settled && s != lost) return {};
    return TallyEditsSay::tr("%1 is marked %2, so its tally is closed. Mark it booked to change it.")
        .arg(text(booking->title), standingWords(s));
}

} // namespace withy::ui::edits
