// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/garden_finding_wording.h"

#include "ui/logic/finding_parts.h"
#include "ui/logic/run_up_finding_wording.h"

#include <QCoreApplication>

#include <cmath>

namespace withy::ui {

namespace {

class GardenFindingWordingSay : FindingParts {
    Q_DECLARE_TR_FUNCTIONS(Finding)

public:
    using FindingParts::FindingParts;

    [[nodiscard]] QString walk() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::walkWithoutPatch:
            return tr("The walk of %1 counts a patch that is not there. Give it a patch, or take the row "
                      "out.")
                .arg(day(0));
        case FindingCode::walkBlank:
            return tr("%1, %2: nothing was counted, so nothing follows. Write the count, or take the row "
                      "out.")
                .arg(subject(0), day(1));
        case FindingCode::walkNegative:
            return tr("%1, %2: a count under nought is passed over. Write what was there, or leave it blank.")
                .arg(subject(0), day(1));
        case FindingCode::walkOutOfSeason:
            return tr("%1, %2: this walk is outside the season. It counts all the same; check the date.")
                .arg(subject(0), day(1));
        case FindingCode::walkOutsideFlowering:
            return tr("%1, %2: nothing is expected there anywhere near that day, so the walk moves nothing. "
                      "Check "
                      "its date, or the patch's first and last cut.")
                .arg(subject(0), day(1));
        case FindingCode::walkFarAboveExpected:
            return tr("%1, %2: %3 counted where %4 were expected. It is taken, and moves the forecast only "
                      "so far. "
                      "A digit too many, or too few stems expected of the patch?")
                .arg(subject(0), day(1), whole(std::llround(number(0))), whole(std::llround(number(1))));
        case FindingCode::walkWeekTooSmall:
            return tr("%1, %2: fewer within the week than within three days. Those belong to the week, so "
                      "the "
                      "larger is taken; check the two.")
                .arg(subject(0), day(1));
        case FindingCode::walkNotUsed:
            return tr("%1, %2: the walk corrects nothing, for the patch has no forecast. Give the patch its "
                      "first "
                      "and last cut and how many stems it bears.")
                .arg(subject(0), day(1));
        default:
            return weather();
        }
    }

private:
    /// Years are noted, but only those whose temperatures are known can be learnt from.
    [[nodiscard]] QString tooFewYears() const {
        const auto noted = static_cast<int>(std::lround(number(2)));
        if (noted <= count())
            return tr("%1: %n noted year(s) (is|are) too few to learn from; %2 are wanted. The usual dates "
                      "stand.",
                      nullptr, count())
                .arg(subject(0), whole(std::llround(number(1))));
        const QString wanted =
            tr("Import the weather of those years; %1 are wanted.").arg(whole(std::llround(number(1))));
        if (count() == 0)
            return tr("%1: %n year(s) noted, none with its weather, so the usual dates stand. %2", nullptr,
                      noted)
                .arg(subject(0), wanted);
        return tr("%1: %n year(s) noted, only %2 with its weather, so the usual dates stand. %3", nullptr,
                  noted)
            .arg(subject(0), whole(count()), wanted);
    }

    [[nodiscard]] QString weather() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::weatherMinAboveMax:
            return tr("%n day(s) (has|have) a minimum above the maximum, the first on %1, and (is|are) left "
                      "out. Put "
                      "the two right.",
                      nullptr, count())
                .arg(day(0));
        case FindingCode::weatherImpossible:
            return tr("%n day(s) (holds|hold) what no thermometer shows, the first on %1, and (is|are) left "
                      "out. "
                      "Correct what is written.",
                      nullptr, count())
                .arg(day(0));
        case FindingCode::weatherMissing:
            return tr("%n day(s) between others (has|have) no weather, the first is %1. A usual year stands "
                      "in; "
                      "type or import what is missing.",
                      nullptr, count())
                .arg(day(0));
        case FindingCode::weatherDoubled:
            return tr("%n day(s) (is|are) there twice, the first on %1. The later row stands; take the other "
                      "out.",
                      nullptr, count())
                .arg(day(0));
        case FindingCode::weatherLooksFahrenheit:
            return tr(
                "The weather reads like Fahrenheit in a Celsius column, so the calendar stands. Import it "
                "again and choose Fahrenheit.");
        case FindingCode::noWeather:
            return tr("No weather is written down, so the usual dates are used. Type, paste or import daily "
                      "lows and "
                      "highs.");
        case FindingCode::noNormals:
            return tr("%1 of 12 months have their usual temperatures, so the usual dates are used. Fill in "
                      "the "
                      "others "
                      "beside the weather.")
                .arg(whole(std::llround(number(0))));
        case FindingCode::normalsImpossible:
            return tr(
                "A month's usual temperatures cannot be right: a lowest above its highest, or no degrees "
                "Celsius. The calendar stands until they are.");
        case FindingCode::normalsOtherHemisphere:
            return tr(
                "The usual year is warmest when this place has its winter. Check the latitude, or the order "
                "of the months.");
        default:
            return patch();
        }
    }

    [[nodiscard]] QString patch() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::patchWithoutDates:
            return tr("About when is %1 first and last cut? Say so even roughly, and there is a forecast.")
                .arg(subject(0));
        case FindingCode::patchDatesOutOfOrder:
            return tr("%1: first cut %2, peak %3 and last cut %4 are out of order, so there is no forecast. "
                      "Put "
                      "them in order.")
                .arg(subject(0), day(1), day(2), day(3));
        case FindingCode::patchDatesOutOfSeason:
            return tr("%1 is cut from %2 to %3, partly outside the season. Check the dates, or the season's.")
                .arg(subject(0), day(1), day(2));
        case FindingCode::patchWithoutStems:
            return tr("%1 has its dates, and no number of stems. Give the stems, or its plants and the stems "
                      "of "
                      "one.")
                .arg(subject(0));
        case FindingCode::patchForecastImpossible:
            return tr("%1: no forecast can be made of %2 stem(s) over %3 days. Check its stems, plants and "
                      "dates.",
                      nullptr, static_cast<int>(std::llround(number(0))))
                .arg(subject(0), whole(std::llround(number(0))), whole(std::llround(number(1))));
        case FindingCode::heatFactsMissing:
            return tr("%1: %2 not known, so usual figures move its dates.").arg(subject(0), facts());
        case FindingCode::heatFactsImpossible:
            return tr("%1: the temperature where growth stops is not above the one where it starts. A usual "
                      "base "
                      "is taken; correct the two.")
                .arg(subject(0));
        case FindingCode::bloomYearLeftOut:
            return tr("%1: the first cut of %2 teaches nothing, for its year has no temperatures or a second "
                      "date. Import that year's weather, or take one out.")
                .arg(subject(0), longDay(Day::parse(f_.subjects[1]).value_or(Day{})));
        case FindingCode::bloomYearsTooFew:
            return tooFewYears();
        case FindingCode::regrowthTooLate:
            return tr("%1: after the hard cut of %2 there is no time for a second flush. Cut part of it, or "
                      "count "
                      "on no more.")
                .arg(subject(0), day(1));
        case FindingCode::hardCutNotUsed:
            return tr("%1: the hard cut of %2 is not reckoned with. The plant must be cut-and-come-again, "
                      "with its "
                      "days to come again.")
                .arg(subject(0), day(1));
        default:
            return runUpSentence(f_, units_);
        }
    }
};

} // namespace

QString gardenSentence(const plan::Finding& finding, Units units) {
    return GardenFindingWordingSay(finding, units).walk();
}

} // namespace withy::ui
