// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/size_words.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

class SizeWordsSay {
    Q_DECLARE_TR_FUNCTIONS(SizeFaults)

public:
    SizeWordsSay(const plan::SizeFinding& f, Units units) : f_(f), units_(units) {}

    [[nodiscard]] QString words() const {
        using plan::SizeFault;
        switch (f_.fault) {
        case SizeFault::deeperThanHigh:
            return say(tr("%1: %2 deep inside, but only %3 high outside. Measure both again."));
        case SizeFault::widerInsideThanOut:
            return say(tr("%1: %2 across inside, but only %3 outside. Measure both again."));
        case SizeFault::neckTallerThanJar:
            return say(tr("%1: a neck of %2 on a jar of %3. Give the height of the straight neck alone."));
        case SizeFault::ribbonWiderThanNeck:
            return say(tr("%1: %2 wide on a neck of %3, so it will ride over the rim or the shoulder. "
                          "Take a narrower one, or tie it lower."));
        case SizeFault::liftOverRim:
            return say(tr("%1: stem ends lifted by %2, but it is only %3 deep: they would hang over the rim. "
                          "Lift them less, or take a deeper jar."));
        case SizeFault::endsOverWater:
            return say(tr("%1: stem ends lifted by %2, the water stands at %3: they are dry from the start. "
                          "Fill it higher, or lift them less."));
        default:
            return heads();
        }
    }

private:
    [[nodiscard]] QString heads() const {
        using plan::SizeFault;
        switch (f_.fault) {
        case SizeFault::headsNarrowerThanJar:
            return say(
                tr("%1 is %2 across, wider than the heads' spread of %3: the jar decides how it fits."));
        case SizeFault::headWiderThanSpread:
            return say(tr("%1: one head is %2 across, wider than the spread of %3. Give the spread again."));
        case SizeFault::tiersOutOfOrder:
            return say(tr("%1: a lower tier stands at %2, the next one at %3. Put the heights in order."));
        case SizeFault::tailOverGround:
            return say(tr("%1: tails of %2 lie on the table: %3 are free below the knot. Shorten them, or "
                          "mean it."));
        default:
            return {};
        }
    }

    [[nodiscard]] QString say(const QString& pattern) const {
        return pattern.arg(text(f_.subject), number(f_.first), number(f_.second));
    }

    [[nodiscard]] QString number(double mm) const { return lengthWords(mm, units_); }

    const plan::SizeFinding& f_;
    Units units_;
};

} // namespace

QString sizeWords(const plan::SizeFinding& finding, Units units) {
    return SizeWordsSay(finding, units).words();
}

QString sizeSentence(const plan::Finding& finding, Units units) {
    const auto fault = plan::sizeFaultOf(finding.code);
    if (!fault || finding.subjects.size() < 2 || finding.numbers.size() < 2) return {};
    plan::SizeFinding size;
    size.fault = *fault;
    size.subject = finding.subjects.front();
    size.first = finding.numbers[0];
    size.second = finding.numbers[1];
    // A container's own sizes are wrong in whatever stands in it.
    const bool ofDesign = finding.place.table == model::TableKind::designs;
    if (ofDesign && finding.subjects[1] != size.subject)
        size.subject = finding.subjects[1] + ", " + size.subject;
    return sizeWords(size, units);
}

} // namespace withy::ui
