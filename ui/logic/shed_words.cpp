// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed_words.h"

#include "core/designs/volume.h"
#include "core/plan/convert.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct ShedWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Shed)
};

} // namespace

VolumeWords containerVolume(const model::Season& season, Id<model::Container> id) {
    const auto* c = season.containers.find(id);
    if (!c) return {};
    const auto volume = designs::fullVolume(plan::shapeOf(*c));
    if (!volume.ok()) {
        return {{},
                {},
                ShedWordsSay::tr("not to be said: the sizes make no such shape. Measure %1 again.")
                    .arg(fieldWords(volume.error().field))};
    }
    VolumeWords words;
    words.figure = millilitresWords(static_cast<double>(volume->millilitres.value), season);
    words.working = volume->working;
    words.note = c->measuredVolume
                     ? ShedWordsSay::tr("from its sizes; the %1 written down count.")
                           .arg(millilitresWords(static_cast<double>(c->measuredVolume->value), season))
                     : ShedWordsSay::tr("from its sizes. Fill one from a jug to be sure.");
    return words;
}

QString volumeWords(const model::Season& season, Id<model::Container> id) {
    const auto* c = season.containers.find(id);
    if (c && c->measuredVolume)
        return ShedWordsSay::tr("%1, as noted")
            .arg(millilitresWords(static_cast<double>(c->measuredVolume->value), season));
    return containerVolume(season, id).figure;
}

QString mostNeededWords(const plan::Plan& plan, Id<model::Container> container) {
    const auto most = mostNeeded(plan, container);
    return most ? whole(*most) : QString();
}

QString sundryAmount(const model::Sundry* sundry, std::int64_t amount) {
    QString unit = sundry ? text(sundry->unit) : QString();
    if (unit == QStringLiteral("metre") || unit == QStringLiteral("metres")) unit = QStringLiteral("m");
    if (unit.isEmpty() || unit == QStringLiteral("piece") || unit == QStringLiteral("pieces"))
        return thousandths(amount);
    return thousandths(amount) + QChar::Nbsp + unit; // set close to its figure
}

QString ribbonOnHand(const model::Season& season, Id<model::Ribbon> ribbon) {
    std::int64_t length = 0;
    int pieces = 0;
    for (const auto& l : season.ribbonLengths) {
        if (l.ribbon != ribbon) continue;
        length += l.length.value;
        ++pieces;
    }
    if (pieces == 0) return ShedWordsSay::tr("none");
    return ShedWordsSay::tr("%1 in %n piece(s)", nullptr, pieces).arg(reelWords(Millimetres(length), season));
}

QString mixShares(const model::Season& season, Id<model::RibbonMix> mix) {
    double sum = 0;
    int parts = 0;
    for (const auto& p : season.ribbonMixParts) {
        if (p.mix != mix) continue;
        sum += p.share;
        ++parts;
    }
    if (parts == 0) return ShedWordsSay::tr("no ribbon yet");
    const QString percent = ShedWordsSay::tr("%1 %").arg(QString::number(sum, 'g', 6));
    if (sum > 99.99 && sum < 100.01) return percent;
    return ShedWordsSay::tr("%1, not 100").arg(percent);
}

} // namespace withy::ui
