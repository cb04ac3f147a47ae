// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"

#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

namespace withy::ui::edits {

namespace {

using model::FieldInfo;
using model::FieldKind;

/// Whether the value can be handed to the field at all.
bool hasShape(const FieldInfo& field, const Value& value) {
    if (model::isBlank(value)) return field.optional;
    switch (field.kind) {
    case FieldKind::real:
        return !std::holds_alternative<std::string>(value);
    case FieldKind::whole:
    case FieldKind::yesNo:
    case FieldKind::money:
    case FieldKind::reference:
        return std::holds_alternative<std::int64_t>(value);
    default:
        return std::holds_alternative<std::string>(value);
    }
}

bool setOn(model::Record& record, const FieldInfo& field, const Value& value) {
    return hasShape(field, value) && field.set(model::recordPointer(record), value);
}

bool isCount(const FieldInfo& field) {
    return field.kind == FieldKind::whole &&
           (field.unit.empty() || field.unit == "stems" || field.unit == "pieces");
}

model::EditName nameFor(const Season& season, Ref ref, const FieldInfo& field, const Value& value) {
    std::vector<std::string> args{std::string(model::tableInfo(ref.table).name), std::string(field.name),
                                  utf8(recordWords(season, ref.table, ref.id))};
    if (!isCount(field) || model::isBlank(value)) return {"field.set", args};
    args.push_back(utf8(fieldText(season, ref.table, field, value)));
    return {"field.count", args};
}

} // namespace

Edit setField(const Season& season, Ref ref, std::string_view name, const Value& value) {
    return setFields(season, ref, {{name, value}});
}

/// A booking moved to another time takes its end along, and until when it must look well.
static void keepLength(const model::Booking& was, model::Booking& now) {
    if (now.eventStart == was.eventStart || now.eventEnd != was.eventEnd) return;
    const auto by = now.eventStart - was.eventStart;
    now.eventEnd = was.eventEnd + by;
    if (was.lookGoodUntil && now.lookGoodUntil == was.lookGoodUntil)
        now.lookGoodUntil = *was.lookGoodUntil + by;
}

Edit setFields(const Season& season, Ref ref, const Given& values) {
    if (ref.table == TableKind::none || values.empty()) return Edit("field.set");
    const auto& info = model::tableInfo(ref.table);
    auto record = model::findRecord(season, ref.table, ref.id);
    const auto* first = info.field(values.front().first);
    if (!record || !first) return Edit("field.set");
    for (const auto& [name, value] : values) {
        const auto* field = info.field(name);
        if (!field || !setOn(*record, *field, value)) return Edit("field.set");
    }
    if (auto* booking = std::get_if<model::Booking>(&*record))
        keepLength(*season.bookings.find(booking->id), *booking);
    Edit edit(nameFor(season, ref, *first, values.front().second));
    edit.put(*record);
    if (const auto* plant = std::get_if<model::Plant>(&*record)) markAsMine(season, edit, *plant);
    return edit;
}

void join(Edit& edit, const Edit& more) {
    for (const auto& record : more.puts())
        edit.put(record);
    for (const auto& ref : more.erases())
        edit.erase(ref);
}

Edit addRecord(const Season& season, TableKind kind, const Given& given, std::int64_t& made) {
    const model::Record record = newRecord(season, kind, given);
    made = model::idOf(record);
    const auto& info = model::tableInfo(kind);
    std::string name;
    if (const auto* field = info.field(info.nameField)) {
        const Value v = field->get(model::recordPointer(record));
        if (const auto* s = std::get_if<std::string>(&v)) name = *s;
    }
    return Edit("record.add", {std::string(info.name), name}).put(record);
}

bool canMakeNamed(TableKind kind) {
    switch (kind) {
    case TableKind::clients:
    case TableKind::venues:
    case TableKind::containers:
    case TableKind::plants:
    case TableKind::ribbons:
    case TableKind::ribbonMixes:
    case TableKind::sundries:
    case TableKind::helpers:
    case TableKind::designs:
        return true;
    default:
        return false;
    }
}

Edit addNamed(const Season& season, TableKind kind, const QString& name, std::int64_t& made) {
    return addRecord(season, kind, {{model::tableInfo(kind).nameField, Value(utf8(name.trimmed()))}}, made);
}

} // namespace withy::ui::edits
