// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QCoreApplication>
#include <QHash>

namespace withy::ui::edits {

namespace {

const QHash<QString, const char*>& patterns() {
    static const QHash<QString, const char*> words{
        {QStringLiteral("booking.add"), QT_TRANSLATE_NOOP("Edit", "new booking %1")},
        {QStringLiteral("booking.erase"), QT_TRANSLATE_NOOP("Edit", "%1 taken out")},
        {QStringLiteral("booking.change"), QT_TRANSLATE_NOOP("Edit", "change to %1")},
        {QStringLiteral("booking.duplicate"), QT_TRANSLATE_NOOP("Edit", "copy of %1")},
        {QStringLiteral("booking.standing"), QT_TRANSLATE_NOOP("Edit", "%1 marked %2")},
        {QStringLiteral("booking.colours"), QT_TRANSLATE_NOOP("Edit", "colours for %1")},
        {QStringLiteral("venue.tables"), QT_TRANSLATE_NOOP("Edit", "%1 at %2")},
        {QStringLiteral("line.spare"), QT_TRANSLATE_NOOP("Edit", "%1 spare of %2")},
        {QStringLiteral("line.drop"), QT_TRANSLATE_NOOP("Edit", "drop of %1")},
        {QStringLiteral("line.price"), QT_TRANSLATE_NOOP("Edit", "price of %1")},
        {QStringLiteral("line.note"), QT_TRANSLATE_NOOP("Edit", "note on %1")},
        {QStringLiteral("line.tables"), QT_TRANSLATE_NOOP("Edit", "tables of %1")},
        {QStringLiteral("line.add"), QT_TRANSLATE_NOOP("Edit", "%1 %2 for %3")},
        {QStringLiteral("line.pieces"), QT_TRANSLATE_NOOP("Edit", "%1 of %2")},
        {QStringLiteral("line.erase"), QT_TRANSLATE_NOOP("Edit", "%1 taken out")},
        {QStringLiteral("design.add"), QT_TRANSLATE_NOOP("Edit", "new design %1")},
        {QStringLiteral("design.change"), QT_TRANSLATE_NOOP("Edit", "change to %1")},
        {QStringLiteral("design.price"), QT_TRANSLATE_NOOP("Edit", "price of %1")},
        {QStringLiteral("container.add"), QT_TRANSLATE_NOOP("Edit", "new container %1")},
        {QStringLiteral("slot.add"), QT_TRANSLATE_NOOP("Edit", "%1 in %2")},
        {QStringLiteral("slot.count"), QT_TRANSLATE_NOOP("Edit", "%1 stems of %2")},
        {QStringLiteral("slot.erase"), QT_TRANSLATE_NOOP("Edit", "%1 taken out")},
        {QStringLiteral("design.copy"), QT_TRANSLATE_NOOP("Edit", "copy of %1")},
        {QStringLiteral("design.erase"), QT_TRANSLATE_NOOP("Edit", "%1 taken out")},
        {QStringLiteral("slot.more"), QT_TRANSLATE_NOOP("Edit", "%1 more of %2 in %3")},
        {QStringLiteral("slot.fewer"), QT_TRANSLATE_NOOP("Edit", "%1 fewer of %2 in %3")},
        {QStringLiteral("slot.plant"), QT_TRANSLATE_NOOP("Edit", "%1 for %2")},
        {QStringLiteral("slot.plant.erase"), QT_TRANSLATE_NOOP("Edit", "%1 no longer for %2")},
        {QStringLiteral("slot.plant.order"), QT_TRANSLATE_NOOP("Edit", "order of plants for %1")},
        {QStringLiteral("payment.add"), QT_TRANSLATE_NOOP("Edit", "payment for %1")},
        {QStringLiteral("finding.accept"), QT_TRANSLATE_NOOP("Edit", "“%1” left so")},
        {QStringLiteral("finding.ask"), QT_TRANSLATE_NOOP("Edit", "“%1” asked about again")},
        {QStringLiteral("cover.swap"), QT_TRANSLATE_NOOP("Edit", "%1 %2 stand in for %3")},
        {QStringLiteral("cover.buy"), QT_TRANSLATE_NOOP("Edit", "%1 %2 bought in for %3")},
        {QStringLiteral("cover.fewer"), QT_TRANSLATE_NOOP("Edit", "%1 fewer of %2")},
        {QStringLiteral("tally.more"), QT_TRANSLATE_NOOP("Edit", "%1 more %2 cut")},
        {QStringLiteral("tally.fewer"), QT_TRANSLATE_NOOP("Edit", "%1 fewer %2 cut")},
        {QStringLiteral("tally.cut"), QT_TRANSLATE_NOOP("Edit", "%1 %2 cut")},
        {QStringLiteral("tally.thrown"), QT_TRANSLATE_NOOP("Edit", "%1 %2 thrown away")},
        {QStringLiteral("tally.blank"), QT_TRANSLATE_NOOP("Edit", "count of %1 blanked")},
        {QStringLiteral("tally.found"), QT_TRANSLATE_NOOP("Edit", "%1 found in flower")},
        {QStringLiteral("tally.stand_in"), QT_TRANSLATE_NOOP("Edit", "%1 may stand in for %2")},
        {QStringLiteral("step.keep"), QT_TRANSLATE_NOOP("Edit", "%1 kept at %2")},
        {QStringLiteral("step.let_go"), QT_TRANSLATE_NOOP("Edit", "%1 free to move")},
        {QStringLiteral("step.give"), QT_TRANSLATE_NOOP("Edit", "who does it: %1")},
        {QStringLiteral("step.done"), QT_TRANSLATE_NOOP("Edit", "%1 ticked off")},
        {QStringLiteral("step.not_done"), QT_TRANSLATE_NOOP("Edit", "tick of %1 taken back")},
        {QStringLiteral("step.minutes"), QT_TRANSLATE_NOOP("Edit", "minutes of %1")},
        {QStringLiteral("share.mix"), QT_TRANSLATE_NOOP("Edit", "%1 ways out for %2")},
        {QStringLiteral("share.spread"), QT_TRANSLATE_NOOP("Edit", "%1 shared out as designed")},
        {QStringLiteral("share.fewer"), QT_TRANSLATE_NOOP("Edit", "%1 for %2")},
        {QStringLiteral("share.less"), QT_TRANSLATE_NOOP("Edit", "%1 fewer of %2 for %3")},
        {QStringLiteral("share.swap"), QT_TRANSLATE_NOOP("Edit", "%1 %2 standing in for %3")},
        {QStringLiteral("share.release"), QT_TRANSLATE_NOOP("Edit", "%1 %2 from %3 for %4")},
        {QStringLiteral("share.made"), QT_TRANSLATE_NOOP("Edit", "%1 made for %2")},
        {QStringLiteral("share.told"), QT_TRANSLATE_NOOP("Edit", "client told about %1")},
        {QStringLiteral("shed.return"), QT_TRANSLATE_NOOP("Edit", "%1 counted home from %2")},
        {QStringLiteral("shed.ribbon"), QT_TRANSLATE_NOOP("Edit", "ribbon cut on %1 written back")},
        {QStringLiteral("share.note"), QT_TRANSLATE_NOOP("Edit", "job note of %1")},
        {QStringLiteral("fit.enquiry"), QT_TRANSLATE_NOOP("Edit", "new enquiry %1")},
        {QStringLiteral("fit.hold"), QT_TRANSLATE_NOOP("Edit", "%1 held to %2")},
        {QStringLiteral("import"), QT_TRANSLATE_NOOP("Edit", "import of %1")},
        {QStringLiteral("field.set"), QT_TRANSLATE_NOOP("Edit", "%1 of %2")},
        {QStringLiteral("field.count"), QT_TRANSLATE_NOOP("Edit", "%1 %2 of %3")},
        {QStringLiteral("record.add"), QT_TRANSLATE_NOOP("Edit", "new %1 %2")},
        {QStringLiteral("record.erase"), QT_TRANSLATE_NOOP("Edit", "%1 taken out")},
        {QStringLiteral("records.erase"), QT_TRANSLATE_NOOP("Edit", "%1 %2 taken out")},
        {QStringLiteral("record.copy"), QT_TRANSLATE_NOOP("Edit", "%1, duplicated")},
        {QStringLiteral("plant.from_catalogue"), QT_TRANSLATE_NOOP("Edit", "%1 from the catalogue")},
        {QStringLiteral("walk.new"), QT_TRANSLATE_NOOP("Edit", "new walk of %1")},
        {QStringLiteral("weather.import"), QT_TRANSLATE_NOOP("Edit", "weather of %1 days read in")},
        {QStringLiteral("walk.blank"), QT_TRANSLATE_NOOP("Edit", "count of %1 blanked")},
        {QStringLiteral("finding.tell"), QT_TRANSLATE_NOOP("Edit", "asked again: %1")},
        {QStringLiteral("record.move"), QT_TRANSLATE_NOOP("Edit", "%1 moved")},
        {QStringLiteral("records.paste"), QT_TRANSLATE_NOOP("Edit", "%1 %2 pasted")},
        {QStringLiteral("cells.paste"), QT_TRANSLATE_NOOP("Edit", "%1 %2 pasted over")},
        {QStringLiteral("cells.blank"), QT_TRANSLATE_NOOP("Edit", "%1 %2 blanked")},
    };
    return words;
}

std::string lowerFirst(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toLower();
    return utf8(words);
}

/// {table, field, record, number}: "must not of Library roof supper", "48 in hand of Honey jar".
std::vector<std::string> fieldArgs(const std::vector<std::string>& args) {
    const auto* table = args.size() < 3 ? nullptr : model::tableNamed(args[0]);
    const auto* field = table ? table->field(args[1]) : nullptr;
    if (!field) return args;
    const std::string label = lowerFirst(fieldLabel(table->kind, *field));
    if (args.size() > 3) return {args[3], label, args[2]};
    return {label, args[2]};
}

/// {table, number}: "3 plants".
std::vector<std::string> countArgs(const std::vector<std::string>& args) {
    const auto* table = args.size() < 2 ? nullptr : model::tableNamed(args[0]);
    if (!table) return args;
    return {args[1], utf8(tableLabel(table->kind, text(args[1]).toInt()))};
}

std::vector<std::string> argsOf(const model::EditName& name) {
    if (name.key.starts_with("field.")) return fieldArgs(name.args);
    if (name.key.starts_with("records.") || name.key.starts_with("cells.")) return countArgs(name.args);
    if (name.key == "record.add" && !name.args.empty()) {
        auto args = name.args;
        if (const auto* table = model::tableNamed(args[0])) args[0] = utf8(tableLabel(table->kind, 1));
        return args;
    }
    return name.args;
}

/// Puts the arguments in all at once: a name may hold "%2" itself.
QString filled(const QString& pattern, const std::vector<std::string>& args) {
    QString out;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool mark =
            pattern[i] == QLatin1Char('%') && i + 1 < pattern.size() && pattern[i + 1].isDigit();
        if (!mark) {
            out += pattern[i];
            continue;
        }
        const auto n = static_cast<std::size_t>(pattern[++i].digitValue());
        if (n >= 1 && n <= args.size()) out += text(args[n - 1]);
    }
    return out.trimmed();
}

} // namespace

QString inWords(const model::EditName& name) {
    const auto found = patterns().find(text(name.key));
    if (found == patterns().end()) return text(name.key);
    return filled(QCoreApplication::translate("Edit", found.value()), argsOf(name));
}

} // namespace withy::ui::edits
