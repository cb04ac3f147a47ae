// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/walk_edits.h"

#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

namespace withy::ui::edits {

namespace {

struct WalkEditsSay {
    Q_DECLARE_TR_FUNCTIONS(Walk)
};

std::optional<Stems>& slotOf(model::Walk& walk, WalkCount count) {
    switch (count) {
    case WalkCount::readyNow:
        return walk.readyNow;
    case WalkCount::withinThreeDays:
        return walk.withinThreeDays;
    case WalkCount::withinWeek:
        break;
    }
    return walk.withinWeek;
}

/// The day's walk to be changed, or a new one.
model::Walk walkToChange(const Season& season, Day day, Id<model::Patch> patch) {
    if (const auto* there = walkOf(season, patch, day)) return *there;
    model::Walk walk;
    walk.id = season.walks.nextId();
    walk.date = day;
    walk.patch = patch;
    return walk;
}

bool saysNothing(const model::Walk& walk) {
    return !walk.readyNow && !walk.withinThreeDays && !walk.withinWeek && walk.remark.empty();
}

/// Nothing is made only to be blank.
Edit kept(const Season& season, Edit edit, const model::Walk& walk) {
    if (!saysNothing(walk)) return edit.put(walk);
    if (season.walks.find(walk.id)) edit.erase(walk.id);
    return edit;
}

} // namespace

std::string_view fieldOf(WalkCount count) {
    switch (count) {
    case WalkCount::readyNow:
        return "ready_now";
    case WalkCount::withinThreeDays:
        return "within_three_days";
    case WalkCount::withinWeek:
        break;
    }
    return "within_week";
}

std::optional<Stems> countOf(const model::Walk& walk, WalkCount count) {
    auto copy = walk;
    return slotOf(copy, count);
}

const model::Walk* walkOf(const Season& season, Id<model::Patch> patch, Day day) {
    const model::Walk* found = nullptr;
    for (const auto& w : season.walks)
        if (w.patch == patch && w.date == day) found = &w;
    return found;
}

Edit setWalkCount(const Season& season, Day day, Id<model::Patch> id, WalkCount count,
                  std::optional<Stems> stems) {
    const auto* patch = season.patches.find(id);
    if (!patch) return Edit("walk.blank");
    auto walk = walkToChange(season, day, id);
    slotOf(walk, count) = stems;
    const std::string field(fieldOf(count));
    Edit edit = stems ? Edit("field.count", {"walk", field, patch->label, std::to_string(stems->value)})
                      : Edit("walk.blank", {patch->label});
    return kept(season, std::move(edit), walk);
}

Edit setWalkRemark(const Season& season, Day day, Id<model::Patch> id, const QString& remark) {
    const auto* patch = season.patches.find(id);
    if (!patch) return Edit("walk.blank");
    auto walk = walkToChange(season, day, id);
    walk.remark = utf8(remark.trimmed());
    return kept(season, Edit("field.set", {"walk", "remark", patch->label}), walk);
}

CountReading readCount(const Season& season, WalkCount count, const QString& typed,
                       std::optional<Stems> last) {
    QString words = typed.simplified();
    if (words.isEmpty()) return {};
    if (words == QLatin1String("=")) {
        if (last) return {last, {}};
        return {std::nullopt,
                WalkEditsSay::tr("There is no earlier walk to take the figure from. Type the count.")};
    }
    const auto& table = model::tableInfo(TableKind::walks);
    const auto* field = table.field(fieldOf(count));
    std::int64_t sum = 0;
    for (const auto& part : words.split(QLatin1Char('+'))) {
        if (part.trimmed().isEmpty())
            return {
                std::nullopt,
                WalkEditsSay::tr("“%1” ends in the middle of a sum. Type the last figure too.").arg(words)};
        const auto reading = readField(season, TableKind::walks, *field, part);
        if (!reading.ok()) return {std::nullopt, reading.sentence};
        sum += std::get<std::int64_t>(*reading.value);
    }
    const auto whole = readField(season, TableKind::walks, *field, QString::number(sum));
    if (!whole.ok()) return {std::nullopt, whole.sentence};
    return {Stems(sum), {}};
}

} // namespace withy::ui::edits
