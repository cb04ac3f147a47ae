// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/shed_finding_wording.h"

#include "core/plan/shed/shed_codes.h"
#include "ui/logic/finding_parts.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

class ShedFindingWordingSay : FindingParts {
    Q_DECLARE_TR_FUNCTIONS(Finding)

public:
    using FindingParts::FindingParts;

    [[nodiscard]] QString sentence() const {
        using plan::ShedCode;
        const auto c = f_.code;
        if (c == ShedCode::ribbonLengthNought)
            return tr("%1: a reel or end without a length is passed over. Measure it, or take it out.")
                .arg(subject(0));
        if (c == ShedCode::ribbonRunsOut)
            return tr("%1: by %2 earlier jobs leave %3 too little in pieces long enough. Buy a reel, or tie "
                      "some "
                      "with another.")
                .arg(subject(0), day(1), reelWords(Millimetres(std::llround(number(0))), units_));
        if (c == ShedCode::ribbonNotCut) return notCut();
        if (c == ShedCode::kitRunsShort)
            return tr("%1: %2 short on %3, when %n booking(s) (has|have) some at once. Get more, bring some "
                      "home "
                      "earlier, or use another.",
                      nullptr, static_cast<int>(std::lround(number(1))))
                .arg(subject(0), thousandths(std::llround(number(0) * 1000)), day(1));
        if (c == ShedCode::returnLate)
            return tr("%1: %2 were due home on %3, and nobody has counted them. Count what is back and what "
                      "broke.")
                .arg(subject(0), whole(std::llround(number(0))), day(1));
        return packing();
    }

private:
    [[nodiscard]] QString notCut() const {
        const QString most = whole(std::llround(number(0)));
        const std::string what = f_.subjects.size() > 2 ? f_.subjects[2] : std::string();
        if (what == "pieces")
            return tr("%1 on %2 is not planned: more than %3 pieces are asked of it in one day. Part the "
                      "make-up over several days.")
                .arg(subject(0), day(1), most);
        if (what == "kinds")
            return tr("%1 on %2 is not planned: more than %3 different lengths are asked of it in one day. "
                      "Tie more pieces alike.")
                .arg(subject(0), day(1), most);
        if (what == "lengths_on_hand")
            return tr("%1 on %2 is not planned: it has more than %3 reels and ends. Take the shortest ends "
                      "out.")
                .arg(subject(0), day(1), most);
        return tr("%1 on %2 is not planned: a piece of it would have no length, or more than %3. Check "
                  "the "
                  "wraps, loops and tails.")
            .arg(subject(0), day(1), length(0));
    }

    [[nodiscard]] QString packing() const {
        using plan::ShedCode;
        const auto c = f_.code;
        if (c == ShedCode::trayTooSmall)
            return tr("%1 is %2 at its short side, and %3 wants %4: it travels by itself. Measure the "
                      "tray "
                      "again, or get a wider one.")
                .arg(subject(0), length(0), subject(1), length(1));
        if (c == ShedCode::traysNotMeasured)
            return tr(
                "No tray has its sizes, so nothing says how the pieces are packed. Measure one inside.");
        if (c == ShedCode::vehicleNotMeasured)
            return tr(
                "No vehicle has its load floor, so nothing says what goes in. Measure its length and width.");
        if (c == ShedCode::liftTooHeavy)
            return tr("%1: one lift would be %2, over your limit of %3. Carry it by two, or fill it "
                      "where it "
                      "stands.")
                .arg(subject(0), weight(0), weight(1));
        if (c == ShedCode::loadNoRoom)
            return tr("%1: %n thing(s) (finds|find) no room on the floor. %2", nullptr, count())
                .arg(subject(0), trips());
        if (c == ShedCode::loadTooMany)
            return tr("%1: %2 things are too many to be laid out at once, which is done for %3. By their "
                      "size "
                      "and weight they are at least %4 trips: make a booking of each trip.")
                .arg(subject(0), counted(0), counted(1), counted(2));
        if (c == ShedCode::loadOverPlate)
            return tr("%1: the load is %2 over the plate's %3. Drive more than once; what may be "
                      "carried is for "
                      "the "
                      "plate and the law of the road.")
                .arg(subject(0), weight(0), weight(1));
        return tables();
    }

    [[nodiscard]] QString tables() const {
        using plan::ShedCode;
        const auto c = f_.code;
        if (c == ShedCode::tableSizesImpossible)
            return tr("%1: the %2 cannot be right, so nothing says what fits. Measure it again.")
                .arg(subject(0), fieldWords(f_.subjects.back()));
        if (c == ShedCode::tooManyCovers)
            return tr("%1: %2 cover(s), and its edge has room for %3 of %4. Check the table's size, or "
                      "seat fewer.",
                      nullptr, static_cast<int>(count()))
                .arg(subject(0), whole(count()), whole(std::llround(number(1))), lengthWords(600, units_));
        if (c == ShedCode::tablesWithoutPieces)
            return tr("%1 on %2: %3 piece(s) at %4 a table (does|do) not reach all %5. Add pieces, or put "
                      "fewer on each.",
                      nullptr, static_cast<int>(count()))
                .arg(subject(0), subject(1), whole(count()), whole(std::llround(number(1))),
                     whole(std::llround(number(2))));
        if (c == ShedCode::pieceTooBigForTable)
            return tr("%1 on %2: %3 too wide at each side. %4")
                .arg(subject(0), subject(1), length(0), largest());
        if (c == ShedCode::pieceTightOnTable)
            return tr("%1 on %2: only %3 at each side. Turn its widest stems along the table.")
                .arg(subject(0), subject(1), length(0));
        if (c == ShedCode::sightInTheWay)
            return tr("%1 on %2 stands in the way of the eyes. %3 lower would do.")
                .arg(subject(0), subject(1), length(0));
        return {};
    }

    [[nodiscard]] QString largest() const {
        return subject(2).isEmpty() ? tr("Spread it less, or put it elsewhere.")
                                    : tr("Spread it less, or use the %1.").arg(subject(2));
    }

    /// Those larger than the floor itself go in no trip.
    [[nodiscard]] QString trips() const {
        const auto larger = static_cast<int>(std::lround(number(2)));
        if (larger >= count())
            return tr("(It|They) (is|are) larger than the floor itself: take a larger vehicle.", nullptr,
                      larger);
        const QString drive = tr("Drive %n time(s) at least, or take a larger vehicle.", nullptr,
                                 static_cast<int>(std::lround(number(1))));
        return larger == 0 ? drive
                           : drive + QLatin1Char(' ') +
                                 tr("%n of them (is|are) larger than the floor itself.", nullptr, larger);
    }

    [[nodiscard]] QString counted(std::size_t i) const { return whole(std::llround(number(i))); }

    [[nodiscard]] QString weight(std::size_t i) const { return weightWords(number(i), units_); }
};

} // namespace

QString shedSentence(const plan::Finding& finding, Units units) {
    return ShedFindingWordingSay(finding, units).sentence();
}

} // namespace withy::ui
