// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_words.h"

#include "core/plan/shed/shed_codes.h"
#include "ui/logic/format.h"
#include "ui/logic/models/finding_list.h"

#include <QCoreApplication>

#include <array>

namespace withy::ui {

namespace {

using plan::FindingCode;

class BookingWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Booking)

public:
    /// A vessel's noun, looked for in what the grower calls it.
    static const char* vesselNoun(const QString& name) {
        static constexpr std::array<std::pair<const char*, const char*>, 10> nouns{{
            {"jar", QT_TR_NOOP("%n jar(s)")},
            {"bowl", QT_TR_NOOP("%n bowl(s)")},
            {"vase", QT_TR_NOOP("%n vase(s)")},
            {"tin", QT_TR_NOOP("%n tin(s)")},
            {"jug", QT_TR_NOOP("%n jug(s)")},
            {"bottle", QT_TR_NOOP("%n bottle(s)")},
            {"urn", QT_TR_NOOP("%n urn(s)")},
            {"trough", QT_TR_NOOP("%n trough(s)")},
            {"tumbler", QT_TR_NOOP("%n tumbler(s)")},
            {"bucket", QT_TR_NOOP("%n bucket(s)")},
        }};
        const auto words = name.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
        for (const auto& [word, source] : nouns) {
            for (QString w : words) {
                while (!w.isEmpty() && !w.back().isLetter())
                    w.chop(1);
                if (w == QLatin1String(word)) return source;
            }
        }
        return nullptr;
    }

    static const char* kindNoun(model::PieceKind kind) {
        using model::PieceKind;
        switch (kind) {
        case PieceKind::table:
            return QT_TR_NOOP("%n table piece(s)");
        case PieceKind::handTied:
            return QT_TR_NOOP("%n hand-tied (posy|posies)");
        case PieceKind::buttonhole:
            return QT_TR_NOOP("%n buttonhole(s)");
        case PieceKind::corsage:
            return QT_TR_NOOP("%n corsage(s)");
        case PieceKind::crown:
            return QT_TR_NOOP("%n crown(s)");
        case PieceKind::pedestal:
            return QT_TR_NOOP("%n pedestal(s)");
        case PieceKind::sheaf:
            return QT_TR_NOOP("%n (sheaf|sheaves)");
        case PieceKind::spray:
            return QT_TR_NOOP("%n spray(s)");
        case PieceKind::garland:
            return QT_TR_NOOP("%n garland(s)");
        case PieceKind::wreath:
            return QT_TR_NOOP("%n wreath(s)");
        case PieceKind::pewEnd:
            return QT_TR_NOOP("%n pew end(s)");
        case PieceKind::budVase:
            return QT_TR_NOOP("%n bud vase(s)");
        case PieceKind::basket:
            return QT_TR_NOOP("%n basket(s)");
        }
        return QT_TR_NOOP("%n piece(s)");
    }

    static const char* kindWords(model::BookingKind kind) {
        static constexpr std::array<const char*, 8> words{
            QT_TR_NOOP("wedding"),       QT_TR_NOOP("charity"), QT_TR_NOOP("funeral"), QT_TR_NOOP("party"),
            QT_TR_NOOP("regular order"), QT_TR_NOOP("fair"),    QT_TR_NOOP("church"),  QT_TR_NOOP("other")};
        return words[static_cast<std::size_t>(kind)];
    }

    static const char* standing(model::Standing standing) {
        static constexpr std::array<const char*, 8> words{
            QT_TR_NOOP("enquiry"), QT_TR_NOOP("held"),      QT_TR_NOOP("quoted"),  QT_TR_NOOP("booked"),
            QT_TR_NOOP("made"),    QT_TR_NOOP("delivered"), QT_TR_NOOP("settled"), QT_TR_NOOP("lost")};
        return words[static_cast<std::size_t>(standing)];
    }

    /// One finding alone in a word or two.
    static QString lone(const plan::Finding& f) {
        if (f.code == plan::ShedCode::kitRunsShort) return tr("kit short");
        if (f.code == plan::ShedCode::ribbonRunsOut) return tr("ribbon short");
        switch (f.code) {
        case FindingCode::containerShort:
            if (f.numbers.size() > 1)
                return tr("%n short", nullptr, static_cast<int>(f.numbers[0] - f.numbers[1]));
            return tr("containers short");
        case FindingCode::stemsTooShort:
            return tr("stems too short");
        case FindingCode::ribbonShort:
            return tr("ribbon short");
        case FindingCode::sundryShort:
            return tr("sundries short");
        case FindingCode::bucketsShort:
            return tr("buckets short");
        case FindingCode::noCutWindow:
            return tr("will not last");
        case FindingCode::dayTooLong:
        case FindingCode::workTooMuch:
            return tr("day too long");
        case FindingCode::cutInHeat:
            return tr("cut in heat");
        default:
            return tr("1 to mend");
        }
    }

    static QString countOf(std::int64_t n, const QString& name) { return tr("%1 of %2").arg(whole(n), name); }

    static QString out(std::int64_t n) { return tr("%n out", nullptr, static_cast<int>(n)); }

    static QString heldTo(Day day) {
        return tr("held to %1").arg(shortDay(day).section(QLatin1Char(' '), 1));
    }

    static QString toMend(int n) { return tr("%n to mend", nullptr, n); }

    static QString toPayBack(const QString& sum) { return tr("%1 to pay back").arg(sum); }

    static QString ready() { return tr("ready"); }

    static QString noPieces() { return tr("no pieces yet"); }

    static QString pieces(std::int64_t n) {
        return tr("%1 piece(s)", nullptr, static_cast<int>(n)).arg(whole(n));
    }

    static QString spare(const QString& counted, std::int64_t n) {
        return tr("%1 and %2 spare").arg(counted, whole(n));
    }

    static QString alsoSpare(const QString& several, std::int64_t n) {
        return tr("%1, %2 spare").arg(several, whole(n));
    }

    static QString andMore(const QString& first, int more) {
        return more > 0 ? tr("%1 and %n more", nullptr, more).arg(first) : first;
    }
};

/// Pieces lent out and neither home nor broken.
std::int64_t stillOut(const model::Season& season, Id<model::Booking> booking) {
    std::int64_t n = 0;
    for (const auto& r : season.returns) {
        if (r.booking == booking) n += r.out - r.back.value_or(0) - r.broken.value_or(0);
    }
    return n;
}

bool isShort(const std::optional<CoverFacts>& cover) {
    return cover && cover->standing == plan::CoverStanding::shortOf;
}

/// How well it is covered, in words; `otherwise` while that is not known.
BookingState covered(model::Standing standing, const std::optional<CoverFacts>& cover,
                     const BookingState& otherwise) {
    const QString words = coverWords(standing, cover);
    if (words.isEmpty()) return otherwise;
    return {words, isShort(cover), cover->standing == plan::CoverStanding::tight};
}

BookingState planned(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                     const std::optional<CoverFacts>& cover) {
    const auto own = plan.bookings.find(booking);
    if (own == plan.bookings.end()) return {};
    if (own->second->lines.empty()) return {BookingWordsSay::noPieces(), false};
    const auto findings = findingsOf(season, plan, booking); // what asks comes first
    const int n = countAsking(findings);
    if (n == 0 || isShort(cover))
        return covered(model::Standing::booked, cover, {BookingWordsSay::ready(), false});
    if (n > 1) return {BookingWordsSay::toMend(n), true};
    return {BookingWordsSay::lone(findings.front().finding), true};
}

} // namespace

QString standingWords(const model::Booking& booking) {
    if (booking.standing == model::Standing::held && booking.heldUntil)
        return BookingWordsSay::heldTo(*booking.heldUntil);
    return standingWords(booking.standing);
}

QString standingWords(model::Standing standing) {
    return BookingWordsSay::tr(BookingWordsSay::standing(standing));
}

QString owedWords(const model::Settings& settings, model::Standing standing, Money owed, Money overpaid) {
    if (overpaid.minor > 0) return BookingWordsSay::toPayBack(amount(overpaid, settings));
    return standing == model::Standing::lost ? QStringLiteral("–") : amount(owed, settings);
}

QString bookingKindWords(model::BookingKind kind) {
    return BookingWordsSay::tr(BookingWordsSay::kindWords(kind));
}

QString countedPieces(const model::Season& season, const model::Design& design, std::int64_t n) {
    const char* source = nullptr;
    if (design.kind == model::PieceKind::table) {
        source = BookingWordsSay::vesselNoun(text(design.name));
        const auto* vessel = design.container ? season.containers.find(*design.container) : nullptr;
        if (!source && vessel) source = BookingWordsSay::vesselNoun(text(vessel->name));
    }
    return BookingWordsSay::tr(source ? source : BookingWordsSay::kindNoun(design.kind), nullptr,
                               static_cast<int>(n));
}

QString countedVessels(const model::Container& vessel, std::int64_t n) {
    if (const char* noun = BookingWordsSay::vesselNoun(text(vessel.name)))
        return BookingWordsSay::tr(noun, nullptr, static_cast<int>(n));
    return BookingWordsSay::countOf(n, text(vessel.name));
}

QString piecesWords(const model::Season& season, const std::vector<const model::Line*>& lines) {
    const model::Line* most = nullptr;
    std::int64_t all = 0;
    std::int64_t spare = 0;
    for (const auto* line : lines) {
        all += line->pieces.value;
        spare += line->sparePieces.value;
        if (!most || line->pieces > most->pieces) most = line;
    }
    const auto* design = most ? season.designs.find(most->design) : nullptr;
    if (!design || all == 0) return BookingWordsSay::noPieces();
    const QString first = countedPieces(season, *design, most->pieces.value);
    const int more = static_cast<int>(all - most->pieces.value);
    if (more == 0) return andSpare(first, spare);
    return alsoSpare(BookingWordsSay::andMore(first, more), spare);
}

PieceCount pieceCount(const model::Season& season, const plan::BookingPlan& plan) {
    PieceCount count;
    for (const auto& line : plan.lines) {
        // The plan may be an edit older than the season.
        const auto* record = season.lines.find(line.line);
        if (!record) continue;
        count.pieces += record->pieces.value;
        count.spare += record->sparePieces.value;
    }
    return count;
}

QString pieceCountWords(const PieceCount& count) {
    return andSpare(BookingWordsSay::pieces(count.pieces), count.spare);
}

QString andSpare(const QString& counted, std::int64_t spare) {
    return spare > 0 ? BookingWordsSay::spare(counted, spare) : counted;
}

QString pieceFigure(const PieceCount& count) {
    if (count.spare == 0) return whole(count.pieces);
    return QStringLiteral("%1 + %2").arg(whole(count.pieces), whole(count.spare));
}

QString alsoSpare(const QString& several, std::int64_t spare) {
    return spare > 0 ? BookingWordsSay::alsoSpare(several, spare) : several;
}

BookingState bookingState(const model::Season& season, const model::Booking& booking, const plan::Plan& plan,
                          std::optional<Day> today, const std::optional<CoverFacts>& cover) {
    using model::Standing;
    switch (booking.standing) {
    case Standing::held: {
        const bool ends = today && booking.heldUntil && *booking.heldUntil <= *today + 7;
        const BookingState held{standingWords(booking), ends};
        return ends && !isShort(cover) ? held : covered(booking.standing, cover, held);
    }
    case Standing::enquiry:
    case Standing::quoted:
        return covered(booking.standing, cover, {standingWords(booking), false});
    case Standing::lost:
        return {standingWords(booking), false};
    case Standing::delivered:
    case Standing::settled:
        if (const auto n = stillOut(season, booking.id); n > 0) return {BookingWordsSay::out(n), false};
        return {standingWords(booking), false};
    case Standing::made:
        return {standingWords(booking), false};
    case Standing::booked:
        break;
    }
    return planned(season, plan, booking.id, cover);
}

} // namespace withy::ui
