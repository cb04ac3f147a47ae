// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cover_words.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

using papers::Align;
using papers::Block;
using papers::plain;
using papers::strong;

class Origins {
    Q_DECLARE_TR_FUNCTIONS(StemOrigins)

public:
    Origins(const model::Season& season, const CutTimes& times, const plan::BookingCover& cover,
            const std::vector<plan::RunUpStep>& steps)
        : season_(season), cover_(cover), steps_(steps), sources_(sourcesOf(season, times, cover)) {}

    [[nodiscard]] QString ofStep(const plan::RunUpStep& step) const {
        QStringList parts;
        for (const auto& s : sources_)
            if (cutBy(s) == &step) parts << place(s);
        return parts.isEmpty() ? QString() : tr("From %1.").arg(parts.join(QStringLiteral("; ")));
    }

    /// What no round of the plan brings in, and what is short.
    [[nodiscard]] std::vector<Block> beside() const {
        std::vector<Block> out;
        const auto say = [&](const QString& head, const QString& words) {
            out.push_back(Block{papers::Paragraph{strong(utf8(head)) + plain(" " + utf8(words)), true}});
        };
        for (const auto& s : sources_)
            if (s.origin != StemOrigin::patch)
                say(tr("From the store:"), place(s));
            else if (!cutBy(s))
                say(tr("Cut %1:").arg(shortDay(s.day)), place(s));
        for (const auto& slot : cover_.slots)
            if (shortBy(slot).value > 0)
                say(tr("Short:"), tr("%1 %2").arg(whole(shortBy(slot).value), leading(slot)));
        return out;
    }

    [[nodiscard]] Block table() const {
        papers::Table t;
        t.title = utf8(tr("From where"));
        t.columns = {{utf8(tr("place")), Align::Left, 1, false},
                     {utf8(tr("plant")), Align::Left, 1, false},
                     {utf8(tr("day")), Align::Left, 0, false},
                     {utf8(tr("stems")), Align::Right, 0, true}};
        for (const auto& s : sources_)
            t.rows.push_back(
                {{plain(utf8(where(s))), plain(nameOf(s.plant)),
                  plain(utf8(s.hour.isEmpty() ? shortDay(s.day) : tr("%1 %2").arg(shortDay(s.day), s.hour))),
                  strong(utf8(whole(s.stems)))},
                 papers::RowKind::Body});
        for (const auto& slot : cover_.slots)
            if (shortBy(slot).value > 0)
                t.rows.push_back({{plain(utf8(tr("short"))),
                                   plain(utf8(leading(slot))),
                                   {},
                                   strong(utf8(whole(shortBy(slot).value)))},
                                  papers::RowKind::Body});
        return Block{std::move(t)};
    }

    [[nodiscard]] bool any() const { return !sources_.empty(); }

private:
    /// The step that cuts it: on its day the one that cuts its plant, else the first of the day (a stand-in).
    [[nodiscard]] const plan::RunUpStep* cutBy(const StemSource& s) const {
        if (s.origin != StemOrigin::patch) return nullptr;
        const plan::RunUpStep* first = nullptr;
        for (const auto& step : steps_) {
            if (step.key.step == plan::StepKind::cut && s.round && step.round == s.round) return &step;
            if (step.key.step != plan::StepKind::cut || step.from.day != s.day) continue;
            if (!first) first = &step;
            if (std::any_of(step.stems.begin(), step.stems.end(),
                            [&](const auto& p) { return p.first == s.plant; }))
                return &step;
        }
        return first;
    }

    [[nodiscard]] QString where(const StemSource& s) const {
        return s.mark.isEmpty() ? s.place : tr("patch %1, %2").arg(s.mark, s.place);
    }

    [[nodiscard]] QString place(const StemSource& s) const {
        return tr("%1: %2 %3").arg(where(s), whole(s.stems), nameIn(season_.plants, s.plant));
    }

    [[nodiscard]] QString leading(const plan::SlotCover& slot) const {
        const auto plant = leadingPlant(slot);
        return plant ? nameIn(season_.plants, *plant) : QString();
    }

    [[nodiscard]] std::string nameOf(Id<model::Plant> id) const { return utf8(nameIn(season_.plants, id)); }

    const model::Season& season_;
    const plan::BookingCover& cover_;
    const std::vector<plan::RunUpStep>& steps_;
    std::vector<StemSource> sources_;
};

} // namespace

QString cutFrom(const model::Season& season, const CutTimes& times, const plan::BookingCover* cover,
                const std::vector<plan::RunUpStep>& steps, const plan::RunUpStep& step) {
    if (!cover) return {};
    const Origins origins(season, times, *cover, steps);
    const auto same =
        std::find_if(steps.begin(), steps.end(), [&](const auto& s) { return s.key == step.key; });
    return same == steps.end() ? QString() : origins.ofStep(*same);
}

std::vector<papers::Block> stemsBesideRounds(const model::Season& season, const CutTimes& times,
                                             const plan::BookingCover* cover,
                                             const std::vector<plan::RunUpStep>& steps) {
    return cover ? Origins(season, times, *cover, steps).beside() : std::vector<Block>();
}

std::vector<papers::Block> stemOrigins(const model::Season& season, const CutTimes& times,
                                       const plan::BookingCover* cover) {
    if (!cover) return {};
    const std::vector<plan::RunUpStep> none;
    const Origins origins(season, times, *cover, none);
    return origins.any() ? std::vector<Block>{origins.table()} : std::vector<Block>();
}

} // namespace withy::ui
