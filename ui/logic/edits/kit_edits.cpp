// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/kit_edits.h"

#include "core/model/schema.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"

namespace withy::ui::edits {

std::optional<model::Edit> measureReel(const model::Season& season, Id<model::Ribbon> ribbon,
                                       const QString& typed, QString& sentence) {
    constexpr auto kind = model::TableKind::ribbonLengths;
    const auto reading = readField(season, kind, *model::tableInfo(kind).field("length"), typed);
    sentence = reading.sentence;
    if (!reading.ok() || model::isBlank(*reading.value)) return std::nullopt;
    std::int64_t made = 0;
    return addRecord(season, kind, {{"ribbon", model::Value(ribbon.value)}, {"length", *reading.value}},
                     made);
}

} // namespace withy::ui::edits
