// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using model::FieldInfo;
using model::Season;
using model::TableKind;
using model::Value;

/// A value that a complaint quotes in the model's form, in the form people see.
std::string inDisplayForm(const Season& season, TableKind kind, const FieldInfo* field,
                          const std::string& s) {
    if (const auto time = LocalTime::parse(s))
        return utf8(shortDay(time->day) + QStringLiteral(", ") + clock(*time));
    if (const auto day = Day::parse(s)) return utf8(shortDay(*day));
    if (!field || s.empty()) return s;
    bool number = false;
    const double x = text(s).toDouble(&number);
    if (!number) return s;
    if (field->kind == model::FieldKind::real) return utf8(fieldText(season, kind, *field, Value(x)));
    if (field->kind == model::FieldKind::whole || field->kind == model::FieldKind::money)
        return utf8(fieldText(season, kind, *field, Value(static_cast<std::int64_t>(x))));
    return s;
}

/// The complaint about a value in the words of the window: label, units and days as shown there.
Problem inDisplayForm(const Season& season, const Problem& p) {
    const auto* table = model::tableNamed(p.table);
    if (!table) return p;
    const auto* field = table->field(p.field);
    Problem out = p;
    out.value = inDisplayForm(season, table->kind, field, p.value);
    switch (p.code) {
    case ProblemCode::belowLeast:
    case ProblemCode::aboveMost: // the limit bears its unit now
        if (!out.details.empty())
            out.details = {inDisplayForm(season, table->kind, field, p.details.front())};
        break;
    case ProblemCode::lessThan:
    case ProblemCode::moreThan:
        if (p.details.size() < 2) break;
        if (const auto* other = table->field(p.details[0])) {
            out.details[0] = utf8(fieldLabel(table->kind, *other).toLower());
            out.details[1] = inDisplayForm(season, table->kind, other, p.details[1]);
        }
        break;
    case ProblemCode::endBeforeStart:
    case ProblemCode::outOfOrder:
    case ProblemCode::outsideSeason:
        for (auto& detail : out.details)
            detail = inDisplayForm(season, table->kind, field, detail);
        break;
    default:
        break;
    }
    return out;
}

QString oneProblem(const Season& season, const Problem& p, std::string_view beside) {
    Problem bare = inDisplayForm(season, p);
    bare.table.clear();
    bare.field.clear();
    bare.record = 0;
    const QString words = sentence(bare);
    const auto* table = model::tableNamed(p.table);
    const auto* field = table ? table->field(p.field) : nullptr;
    if (!field || p.field == beside) return capital(words);
    return fieldLabel(table->kind, *field) + QStringLiteral(": ") + words;
}

} // namespace

QString problemWords(const Season& season, const Problems& problems, std::string_view beside) {
    constexpr std::size_t shown = 4;
    QStringList all;
    for (std::size_t i = 0; i < problems.size() && i < shown; ++i)
        all << oneProblem(season, problems[i], beside);
    if (problems.size() > shown)
        all << QCoreApplication::translate("Problem", "And %n more like these.", nullptr,
                                           static_cast<int>(problems.size() - shown));
    return all.join(QLatin1Char('\n'));
}

QString judgeField(const Season& season, model::Ref record, std::string_view field, const Value& value) {
    const auto applied = model::apply(season, edits::setField(season, record, field, value));
    return applied.ok() ? QString() : problemWords(season, applied.error(), field);
}

} // namespace withy::ui
