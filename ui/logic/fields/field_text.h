// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/model/schema.h"

#include <QString>

#include <optional>

/// Any field of any record in a grower's words: what it is called, how its value is shown, and how
/// what was typed is understood. Whatever fieldText shows, readField reads back to the same value.
namespace withy::ui {

/// "Must not", "Guests from", "Vase life, least".
QString fieldLabel(model::TableKind kind, const model::FieldInfo& field);
/// The same where the table is said already and room is dear; otherwise fieldLabel.
QString columnHead(model::TableKind kind, const model::FieldInfo& field);
/// "client" for one, "clients" otherwise.
QString tableLabel(model::TableKind kind, int n);
/// What stands in a blank field: "Who lets us in?", or an empty text where nothing need be said.
QString fieldPrompt(model::TableKind kind, const model::FieldInfo& field);
/// A word of the model's closed lists as it is shown: "hand-tied".
QString wordText(std::string_view word);
/// What people call a record, whatever its table: "Zinnia, coral", "24 Supper jar for Library roof
/// supper", "Fri 10 Sep 2027, 06:10".
QString recordWords(const model::Season& season, model::TableKind kind, std::int64_t id);

/// The value as shown and typed: "Sat 11 Sep 2027", "Sat 11 Sep 2027, 18:30", "£9.50", "75 mm",
/// "2.95 in", "5 days", "18:30"; empty when blank. In the season's system of units, fine enough that every
/// millimetre, gram and millilitre and a hundredth of a degree come back as they were when typed again.
QString fieldText(const model::Season& season, model::TableKind kind, const model::FieldInfo& field,
                  const model::Value& value);

/// The same as a grower reads it in a column: a colour by its name, temperatures to a tenth. What is typed
/// and copied stays exact.
QString shownText(const model::Season& season, model::TableKind kind, const model::FieldInfo& field,
                  const model::Value& value);

/// What was typed, understood; or the sentence that says why not, and what would mend it.
struct FieldReading {
    std::optional<model::Value> value; ///< nothing when it cannot be read or may not be
    QString sentence;                  ///< empty when all is well
    bool mayMake = false;              ///< names a record there is not, and a name is enough to make it

    [[nodiscard]] bool ok() const { return value.has_value(); }
};

/// Reads what a person types, judging range and length as well. Forgiving: "11 sep", "11/9",
/// "11.9.2027", "6.30pm", "£9.50", "10 cm", "3 in", "2 l"; what could mean two things is asked about.
/// A date without a year falls in the season. `now` is the present value: a time typed alone keeps its
/// day, a day typed alone its time, a name that several records bear its record.
FieldReading readField(const model::Season& season, model::TableKind kind, const model::FieldInfo& field,
                       const QString& typed, const model::Value& now = {});

/// The sentence for `mayMake` where Ctrl+Enter does it.
QString offerToMake(const model::FieldInfo& field, const QString& typed);

/// What the model says of the record with this value in it: the end before the start, a day outside
/// the season. Empty when all is well. Nothing is changed.
QString judgeField(const model::Season& season, model::Ref record, std::string_view field,
                   const model::Value& value);

/// Every problem worded beside its field, without the record's number: "Guests until: 10:00 is before ...".
/// The label is left out for `beside`, the field the sentence will stand at.
QString problemWords(const model::Season& season, const Problems& problems, std::string_view beside = {});

/// The value of a record's field as it is now; blank when there is no such record or field.
model::Value valueOf(const model::Season& season, model::Ref record, std::string_view field);
/// The field's text as it is now.
QString textOf(const model::Season& season, model::Ref record, std::string_view field);

/// Whether figures of this field stand at the right of a column.
bool isFigure(const model::FieldInfo& field);
/// A month, shown and read by its name: "March".
bool isMonth(model::TableKind kind, const model::FieldInfo& field);
/// "March" for 3; the number itself where there is no such month.
QString monthName(int month);
/// Text that may run over several lines.
bool isLongText(const model::FieldInfo& field);

} // namespace withy::ui
