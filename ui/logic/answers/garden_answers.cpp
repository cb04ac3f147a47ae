// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/garden_answers.h"

#include "ui/logic/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

struct GardenAnswersSay {
    Q_DECLARE_TR_FUNCTIONS(Garden)
};

bool counted(const model::Walk& w) {
    return w.readyNow || w.withinThreeDays || w.withinWeek;
}

int withoutWalk(const model::Season& season) {
    std::set<std::int64_t> walked;
    for (const auto& w : season.walks) {
        if (counted(w)) walked.insert(w.patch.value);
    }
    int without = 0;
    for (const auto& p : season.patches)
        without += walked.contains(p.id.value) ? 0 : 1;
    return without;
}

template <class Rows, class Member>
int different(const Rows& rows, Member member) {
    std::set<std::int64_t> ids;
    for (const auto& r : rows)
        ids.insert((r.*member).value);
    return asCount(ids.size());
}

std::optional<Day> lastOf(const model::Season& season, model::WeatherKind kind) {
    std::optional<Day> last;
    for (const auto& w : season.weather) {
        if (w.kind == kind) last = std::max(last.value_or(w.date), w.date);
    }
    return last;
}

} // namespace

QString plainWords(const Answer& answer) {
    QString words;
    for (const auto& part : answer)
        words += part.words;
    return words;
}

std::vector<const model::Patch*> inWalkingOrder(const model::Season& season) {
    std::vector<const model::Patch*> patches;
    for (const auto& p : season.patches)
        patches.push_back(&p);
    std::stable_sort(patches.begin(), patches.end(),
                     [](const auto* a, const auto* b) { return a->place < b->place; });
    return patches;
}

Answer patchesAnswer(const model::Season& season) {
    if (season.patches.empty())
        return {{GardenAnswersSay::tr("No patch yet. Write down what grows where, in the order you walk.")}};
    const int patches = asCount(season.patches.size());
    const int plants = different(season.patches, &model::Patch::plant);
    const int without = withoutWalk(season);
    Answer answer{{GardenAnswersSay::tr("%n patch(es)", nullptr, patches), Weight::strong},
                  {GardenAnswersSay::tr(" of %n plant(s)", nullptr, plants)}};
    if (without == 0) {
        answer.push_back({GardenAnswersSay::tr(", and each has been walked.")});
        return answer;
    }
    answer.push_back({QStringLiteral("; ")});
    answer.push_back({without == patches
                          ? GardenAnswersSay::tr("none has a walk yet")
                          : GardenAnswersSay::tr("%n (has|have) no walk yet", nullptr, without),
                      Weight::strong});
    answer.push_back({QStringLiteral(".")});
    return answer;
}

Answer plantsAnswer(const model::Season& season) {
    if (season.plants.empty())
        return {{GardenAnswersSay::tr("No plants yet. Type a name to take one from the catalogue.")}};
    const int grown = different(season.patches, &model::Patch::plant);
    return {{GardenAnswersSay::tr("%n plant(s)", nullptr, asCount(season.plants.size())), Weight::strong},
            {grown == 0 ? GardenAnswersSay::tr(", none of them in a patch yet.")
                        : GardenAnswersSay::tr(", %n of them in a patch.", nullptr, grown)}};
}

Answer walksAnswer(const model::Season& season) {
    if (season.walks.empty())
        return {{GardenAnswersSay::tr(
            "No walk yet. Count what stands ready, even roughly; one walk is worth ten guesses.")}};
    Day last = season.walks.begin()->date;
    for (const auto& w : season.walks)
        last = std::max(last, w.date);
    int there = 0;
    for (const auto& w : season.walks)
        there += w.date == last && counted(w) ? 1 : 0;
    return {{GardenAnswersSay::tr("Last walked on ")},
            {shortDay(last), Weight::strong},
            {GardenAnswersSay::tr(": %n of %1 (has|have) a count.", nullptr, there)
                 .arg(GardenAnswersSay::tr("%n patch(es)", nullptr, asCount(season.patches.size())))}};
}

Answer weatherAnswer(const model::Season& season) {
    const auto measured = lastOf(season, model::WeatherKind::measured);
    const auto forecast = lastOf(season, model::WeatherKind::forecast);
    Answer answer;
    if (!measured && !forecast)
        answer.push_back(
            {season.monthNormals.empty()
                 ? GardenAnswersSay::tr("No weather yet. The twelve monthly figures do to begin with.")
                 : GardenAnswersSay::tr("No weather yet; the monthly figures stand in.")});
    if (measured) {
        answer.push_back({GardenAnswersSay::tr("Measured to ")});
        answer.push_back({shortDay(*measured), Weight::strong});
    }
    if (forecast) {
        answer.push_back(
            {measured ? GardenAnswersSay::tr(", forecast to ") : GardenAnswersSay::tr("Forecast to ")});
        answer.push_back({shortDay(*forecast), Weight::strong});
    }
    if (!answer.empty() && (measured || forecast)) answer.push_back({QStringLiteral(".")});
    return answer;
}

Answer pastBloomsAnswer(const model::Season& season) {
    if (season.pastBlooms.empty())
        return {{GardenAnswersSay::tr(
            "No past year yet. When was the first stem cut? One date a plant is a start.")}};
    return {
        {GardenAnswersSay::tr("%n first cut(s)", nullptr, asCount(season.pastBlooms.size())), Weight::strong},
        {GardenAnswersSay::tr(" of %n plant(s) written down.", nullptr,
                              different(season.pastBlooms, &model::PastBloom::plant))}};
}

Answer stockAnswer(const model::Season& season, std::optional<Day> today) {
    if (season.stockLots.empty()) return {{GardenAnswersSay::tr("Nothing stands in the store.")}};
    std::int64_t stems = 0;
    std::int64_t bought = 0;
    int past = 0;
    for (const auto& lot : season.stockLots) {
        stems += lot.stems.value;
        if (lot.origin == model::StockOrigin::boughtIn) bought += lot.stems.value;
        if (today && lot.useBy && *lot.useBy < *today) ++past;
    }
    Answer answer{{GardenAnswersSay::tr("%1 stem(s)", nullptr, static_cast<int>(stems)).arg(whole(stems)),
                   Weight::strong},
                  {GardenAnswersSay::tr(" in %n lot(s)", nullptr, asCount(season.stockLots.size()))},
                  {bought > 0 ? GardenAnswersSay::tr(", %1 of them bought in.").arg(whole(bought))
                              : QStringLiteral(".")}};
    if (past > 0)
        answer.push_back(
            {GardenAnswersSay::tr(" %n lot(s) past the day to use by.", nullptr, past), Weight::asks});
    return answer;
}

} // namespace withy::ui
