// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/finding_parts.h"
#include "ui/logic/garden_finding_wording.h"
#include "ui/logic/models/size_words.h"
#include "ui/logic/shed/shed_finding_wording.h"

#include <QCoreApplication>

#include <cmath>

namespace withy::ui {

namespace {

class FindingWordingSay : FindingParts {
    Q_DECLARE_TR_FUNCTIONS(Finding)

public:
    using FindingParts::FindingParts;

    [[nodiscard]] QString way() const {
        using model::TableKind;
        switch (f_.place.table) {
        case TableKind::designs:
            return tr("Go to the design");
        case TableKind::plants:
            return tr("Go to the plant");
        case TableKind::containers:
        case TableKind::ribbons:
        case TableKind::sundries:
        case TableKind::holders:
        case TableKind::vehicles:
            return tr("Go to the shed");
        case TableKind::settings:
            return tr("Go to the settings");
        case TableKind::patches:
            return tr("Go to the patch");
        case TableKind::walks:
            return tr("Go to the walk");
        case TableKind::weather:
            return tr("Go to the weather");
        case TableKind::monthNormals:
            return tr("Go to the usual year");
        case TableKind::pastBlooms:
            return tr("Go to the past years");
        case TableKind::busyHours:
            return tr("Go to the busy hours");
        case TableKind::helpers:
            return tr("Go to the helper");
        case TableKind::drops:
            return tr("Go to the drop");
        case TableKind::stepMarks:
            return tr("Go to the step");
        default:
            return tr("Go to the booking");
        }
    }

    [[nodiscard]] QString design() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::slotWithoutPlant:
            return tr("%1: no plant is named for “%2”. Add one to count its stems.")
                .arg(subject(0), subject(1));
        case FindingCode::designWithoutSlots:
            return tr("%1 has nothing in it yet. Add a slot.").arg(subject(0));
        case FindingCode::stemsTooShort:
            return reach();
        case FindingCode::neckOverfull:
            return tr("%1: the stems would fill %2 % of the neck and will not go in. Take some out, or use a "
                      "wider neck.")
                .arg(subject(0), figure(0));
        case FindingCode::neckLoose:
            return tr("%1: the stems fill only %2 % of the neck and will lean. Tie them, add leaf, or use a "
                      "narrower neck.")
                .arg(subject(0), figure(0));
        case FindingCode::sizesImpossible:
            return tr("%1: the %2 cannot be right. Check the sizes.")
                .arg(subject(0), fieldWords(f_.subjects.back()));
        case FindingCode::ribbonWithoutTail:
            return tr("%1: the knot has no tails. Give their length.").arg(subject(0));
        default:
            return kit();
        }
    }

private:
    [[nodiscard]] QString kit() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::ribbonShort:
            return tr("%1: %2 are missing. Buy a reel, or tie some with another.")
                .arg(subject(0), reelWords(Millimetres(std::llround(f_.numbers[0])), units_));
        case FindingCode::containerShort:
            return tr("%1: %2 needed, %3 on the shelf.").arg(subject(0), figure(0), figure(1));
        case FindingCode::containerNotCounted:
            return tr("%1: nobody has counted them yet.").arg(subject(0));
        case FindingCode::sundryShort:
            return tr("%1: %2 needed, %3 on hand.").arg(subject(0), figure(0), figure(1));
        case FindingCode::bucketsShort:
            return tr("%1 buckets needed, %2 owned. Share some, or cut in two rounds.")
                .arg(figure(0), figure(1));
        default:
            return garden();
        }
    }

    [[nodiscard]] QString garden() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::noCutWindow:
            return f_.numbers[1] == 0
                       ? tr("%1 will not last: its life is %2 day(s) too short. Make up later, store cooler, "
                            "or swap it.",
                            nullptr, oneDecimal(0) == QLatin1String("1") ? 1 : 2)
                             .arg(subject(0), oneDecimal(0))
                       : tr("%1 cannot be cut in time: %2 hour(s) (is|are) missing. Make up later, or swap "
                            "it.",
                            nullptr, oneDecimal(0) == QLatin1String("1") ? 1 : 2)
                             .arg(subject(0), oneDecimal(0));
        case FindingCode::openingLate:
            return tr("%1 will not be open by the event. Cut it further open, or bring it on somewhere warm.")
                .arg(subject(0));
        case FindingCode::cutInHeat:
            return tr("The coolest hour to cut is still %1, over the limit of %2. Start earlier, or "
                      "take shade with you.")
                .arg(temperatureWords(number(0), units_, 1), temperatureWords(number(1), units_, 1));
        case FindingCode::factsMissing:
            return tr("%1: %2 not known, so usual figures stand in.").arg(subject(0), facts());
        case FindingCode::noTemperatures:
            return tr("Neither weather nor usual temperatures are known, so hours go by the sun alone. Give "
                      "the place's monthly figures.");
        default:
            return booking();
        }
    }

    [[nodiscard]] QString booking() const {
        using plan::FindingCode;
        switch (f_.code) {
        case FindingCode::bookingWithoutLines:
            return tr("Nothing is ordered yet. Add a piece.");
        case FindingCode::noDrop:
            return tr("No drop is named: flowers are taken to be due an hour before the guests.");
        case FindingCode::noVenueTravel:
            return tr("The way to the venue is not known: %1 minutes are taken.").arg(figure(0));
        case FindingCode::dayTooLong:
            return tr("There (is|are) %n minute(s) too few to make it all. Start earlier, or ask a helper.",
                      nullptr, count());
        case FindingCode::unpricedLines:
            return tr("%n kind(s) of piece (has|have) no price yet, so the sum is too low.", nullptr,
                      count());
        case FindingCode::openQuestions:
            return tr("%n question(s) still open.", nullptr, count());
        case FindingCode::holdEnds:
            return tr("The hold ends on %1.").arg(day(0));
        default:
            return gardenSentence(f_, units_);
        }
    }

    [[nodiscard]] QString reach() const {
        QString s = tr("%1 is %2 too short for %3. ").arg(subject(0), length(0), subject(1));
        if (f_.numbers[1] > 0) return s + tr("Use a lower tier, or a jar no deeper than %1.").arg(length(1));
        return s + tr("Use a lower tier, or pull the stems instead of cutting.");
    }

    [[nodiscard]] QString figure(std::size_t i) const {
        return i < f_.numbers.size() ? thousandths(std::llround(f_.numbers[i] * 1000)) : QString();
    }

    [[nodiscard]] QString oneDecimal(std::size_t i) const {
        return i < f_.numbers.size() ? QString::number(f_.numbers[i], 'f', 1) : QString();
    }
};

} // namespace

QString sentence(const plan::Finding& finding, Units units) {
    if (const QString words = shedSentence(finding, units); !words.isEmpty()) return words;
    if (const QString words = sizeSentence(finding, units); !words.isEmpty()) return words;
    return FindingWordingSay(finding, units).design();
}

QString leadWords(const plan::Finding& finding) {
    return FindingWordingSay(finding, model::UnitSystem::metric).way(); // says no figure
}

} // namespace withy::ui
