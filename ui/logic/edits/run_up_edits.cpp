// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/run_up_edits.h"

#include "ui/logic/format.h"
#include "ui/logic/run_up_finding_wording.h"

namespace withy::ui::edits {

namespace {

bool saysNothingOfStep(const model::StepMark& m) {
    return !m.pinned && !m.byHelper && !m.done && !m.minutes && m.note.empty();
}

model::StepMark markToChange(const Season& season, const plan::StepKey& key) {
    if (const auto* there = markOf(season, key)) return *there;
    model::StepMark mark;
    mark.id = season.stepMarks.nextId();
    mark.step = key.step;
    mark.booking = key.booking;
    mark.line = key.line;
    mark.drop = key.drop;
    mark.day = key.day;
    mark.number = key.number;
    return mark;
}

Edit markKept(const Season& season, Edit edit, const model::StepMark& mark) {
    if (!saysNothingOfStep(mark)) return edit.put(mark);
    if (season.stepMarks.find(mark.id)) edit.erase(mark.id);
    return edit;
}

std::vector<std::string> wordsOf(const plan::StepKey& key) {
    return {utf8(workWord(key.step))};
}

} // namespace

const model::StepMark* markOf(const Season& season, const plan::StepKey& key) {
    for (const auto& m : season.stepMarks)
        if (plan::StepKey{m.step, m.booking, m.line, m.drop, m.day, m.number} == key) return &m;
    return nullptr;
}

Edit keepStepAt(const Season& season, const plan::StepKey& key, LocalTime from) {
    auto mark = markToChange(season, key);
    mark.pinned = from;
    auto words = wordsOf(key);
    words.push_back(utf8(clock(from)));
    return markKept(season, Edit("step.keep", std::move(words)), mark);
}

Edit letStepGo(const Season& season, const plan::StepKey& key) {
    auto mark = markToChange(season, key);
    mark.pinned.reset();
    return markKept(season, Edit("step.let_go", wordsOf(key)), mark);
}

Edit giveStepTo(const Season& season, const plan::StepKey& key, std::optional<plan::Worker> who) {
    auto mark = markToChange(season, key);
    mark.byHelper = who.has_value();
    mark.helper = who ? who->helper : std::nullopt;
    return markKept(season, Edit("step.give", wordsOf(key)), mark);
}

Edit tickStepOff(const Season& season, const plan::StepKey& key, LocalTime at, std::optional<Minutes> took) {
    auto mark = markToChange(season, key);
    mark.done = at;
    mark.minutes = took;
    return markKept(season, Edit("step.done", wordsOf(key)), mark);
}

Edit takeTickBack(const Season& season, const plan::StepKey& key) {
    auto mark = markToChange(season, key);
    mark.done.reset();
    mark.minutes.reset();
    return markKept(season, Edit("step.not_done", wordsOf(key)), mark);
}

Edit setStepMinutes(const Season& season, const plan::StepKey& key, std::optional<Minutes> took) {
    auto mark = markToChange(season, key);
    mark.minutes = took;
    return markKept(season, Edit("step.minutes", wordsOf(key)), mark);
}

} // namespace withy::ui::edits
