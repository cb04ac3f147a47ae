// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

#include <map>
#include <set>

namespace withy::ui::edits {

namespace {

/// Records that are part of another and go with it, by table and the field that names their owner.
bool isPartBy(TableKind part, std::string_view field) {
    static const std::set<std::pair<TableKind, std::string_view>> parts{
        {TableKind::plantFacts, "plant"},
        {TableKind::plantHazards, "plant"},
        {TableKind::walks, "patch"},
        {TableKind::ribbonLengths, "ribbon"},
        {TableKind::ribbonMixParts, "mix"},
        {TableKind::slots, "design"},
        {TableKind::slotPlants, "slot"},
        {TableKind::designSundries, "design"},
        {TableKind::venueTables, "venue"},
        {TableKind::placements, "table"},
        {TableKind::placements, "line"},
        {TableKind::lines, "booking"},
        {TableKind::bookingColours, "booking"},
        {TableKind::agreedSwaps, "booking"},
        {TableKind::questions, "booking"},
        {TableKind::drops, "booking"},
        {TableKind::payments, "booking"},
        {TableKind::sentVersions, "booking"},
        {TableKind::returns, "booking"},
        {TableKind::jobNotes, "booking"},
        {TableKind::jobNotePlants, "note"},
        {TableKind::roundBookings, "booking"},
        {TableKind::roundBookings, "round"},
        {TableKind::stepMarks, "booking"},
        {TableKind::stepMarks, "line"},
        {TableKind::stepMarks, "drop"},
        {TableKind::tallies, "round"},
        {TableKind::made, "line"},
        {TableKind::helperHours, "helper"},
        // Left blank, a helper's busy hours would become the grower's own.
        {TableKind::busyHours, "helper"},
        {TableKind::pastBlooms, "plant"},
    };
    return parts.contains({part, field});
}

/// The record people know this one by: the design of a slot's plant, the booking of a line.
Ref knownBy(const Season& season, Ref ref) {
    static const std::set<std::pair<TableKind, std::string_view>> inside{
        {TableKind::slotPlants, "slot"},       {TableKind::slots, "design"},
        {TableKind::designSundries, "design"}, {TableKind::lines, "booking"},
        {TableKind::agreedSwaps, "booking"},   {TableKind::returns, "booking"},
        {TableKind::jobNotePlants, "note"},    {TableKind::jobNotes, "booking"},
        {TableKind::ribbonMixParts, "mix"},    {TableKind::tallies, "round"},
        {TableKind::placements, "line"},
    };
    for (const auto& [kind, field] : inside) {
        if (kind != ref.table) continue;
        const Value v = valueOf(season, ref, field);
        const auto* id = std::get_if<std::int64_t>(&v);
        if (id) return knownBy(season, {model::tableInfo(kind).field(field)->refersTo, *id});
    }
    return ref;
}

class Planner {
public:
    Planner(const Season& season, const std::vector<Ref>& wanted)
        : season_(season), going_(wanted.begin(), wanted.end()) {
        plan_.wanted = wanted;
    }

    ErasePlan plan() {
        gatherParts();
        for (const auto& info : model::allTables()) {
            for (const auto& field : info.fields) {
                if (field.kind == model::FieldKind::reference) findUsers(info, field);
            }
        }
        return plan_;
    }

private:
    void gatherParts() {
        for (bool grew = true; grew;) {
            grew = false;
            for (const auto& info : model::allTables()) {
                for (const auto& field : info.fields) {
                    if (isPartBy(info.kind, field.name)) grew = gatherBy(info, field) || grew;
                }
            }
        }
    }

    [[nodiscard]] std::optional<Ref> targetOf(const model::FieldInfo& field, const void* record) const {
        const Value v = field.get(record);
        const auto* id = std::get_if<std::int64_t>(&v);
        if (!id || !going_.contains({field.refersTo, *id})) return std::nullopt;
        return Ref{field.refersTo, *id};
    }

    bool gatherBy(const model::TableInfo& info, const model::FieldInfo& field) {
        std::vector<Ref> found;
        model::forEachRecord(season_, info.kind, [&](std::int64_t id, const void* record) {
            if (!going_.contains({info.kind, id}) && targetOf(field, record))
                found.push_back({info.kind, id});
        });
        going_.insert(found.begin(), found.end());
        plan_.goesWith.insert(plan_.goesWith.end(), found.begin(), found.end());
        return !found.empty();
    }

    void findUsers(const model::TableInfo& info, const model::FieldInfo& field) {
        model::forEachRecord(season_, info.kind, [&](std::int64_t id, const void* record) {
            if (going_.contains({info.kind, id})) return;
            const auto target = targetOf(field, record);
            if (!target) return;
            auto& list = field.optional ? plan_.mayBlank : plan_.inTheWay;
            list.push_back({{info.kind, id}, field.name, *target});
        });
    }

    const Season& season_;
    std::set<Ref> going_;
    ErasePlan plan_;
};

class ErasePlanSay {
    Q_DECLARE_TR_FUNCTIONS(Erase)

public:
    static QString sentence(const Season& season, const ErasePlan& plan) {
        if (plan.wanted.empty()) return {};
        const QString who = whoGoes(season, plan);
        if (plan.free()) return alsoGoes(plan);
        const QString where = users(season, plan);
        QString words = plan.wanted.size() == 1 ? tr("%1 is in %2.").arg(who, where)
                                                : tr("%1 are in %2.").arg(who, where);
        words += QLatin1Char(' ');
        return words + (plan.blankingHelps() ? tr("Take it out there first, or leave it blank there.")
                                             : tr("Take it out there first."));
    }

private:
    static QString whoGoes(const Season& season, const ErasePlan& plan) {
        const auto& first = plan.wanted.front();
        if (plan.wanted.size() == 1) return recordWords(season, first.table, first.id);
        const int n = static_cast<int>(plan.wanted.size());
        return QString::number(n) + QLatin1Char(' ') + tableLabel(first.table, n);
    }

    static QString list(const std::map<TableKind, int>& counts) {
        QStringList parts;
        for (const auto& [kind, n] : counts)
            parts << QString::number(n) + QLatin1Char(' ') + tableLabel(kind, n);
        if (parts.size() < 2) return parts.join(QString());
        const QString last = parts.takeLast();
        return tr("%1 and %2").arg(parts.join(QStringLiteral(", ")), last);
    }

    static QString goes(const ErasePlan& plan) {
        std::map<TableKind, int> counts;
        for (const auto& ref : plan.goesWith)
            ++counts[ref.table];
        return list(counts);
    }

    static QString alsoGoes(const ErasePlan& plan) {
        if (plan.goesWith.empty()) return {};
        return plan.wanted.size() == 1 ? tr("It takes %1 with it.").arg(goes(plan))
                                       : tr("They take %1 with them.").arg(goes(plan));
    }

    static QString users(const Season& season, const ErasePlan& plan) {
        std::set<Ref> seen;
        for (const auto* part : {&plan.inTheWay, &plan.mayBlank}) {
            for (const auto& user : *part)
                seen.insert(knownBy(season, user.user));
        }
        if (seen.size() == 1) return recordWords(season, seen.begin()->table, seen.begin()->id);
        std::map<TableKind, int> counts;
        for (const auto& ref : seen)
            ++counts[ref.table];
        return list(counts);
    }
};

Edit named(const Season& season, const std::vector<Ref>& wanted) {
    if (wanted.size() == 1)
        return Edit("record.erase", {utf8(recordWords(season, wanted.front().table, wanted.front().id))});
    const std::string table = wanted.empty() ? "" : std::string(model::tableInfo(wanted.front().table).name);
    return Edit("records.erase", {table, std::to_string(wanted.size())});
}

Edit erasing(const Season& season, const ErasePlan& plan) {
    Edit edit = named(season, plan.wanted);
    for (const auto& ref : plan.wanted)
        edit.erase(ref);
    for (const auto& ref : plan.goesWith)
        edit.erase(ref);
    return edit;
}

} // namespace

ErasePlan planErase(const Season& season, const std::vector<Ref>& wanted) {
    ErasePlan plan = Planner(season, wanted).plan();
    plan.sentence = ErasePlanSay::sentence(season, plan);
    return plan;
}

Edit eraseRecords(const Season& season, const std::vector<Ref>& wanted) {
    return erasing(season, Planner(season, wanted).plan());
}

Edit eraseAndBlank(const Season& season, const std::vector<Ref>& wanted) {
    const ErasePlan plan = Planner(season, wanted).plan();
    Edit edit = erasing(season, plan);
    std::map<Ref, model::Record> changed; // one record may refer to several that go
    for (const auto& user : plan.mayBlank) {
        auto found = changed.find(user.user);
        if (found == changed.end())
            found =
                changed.emplace(user.user, *model::findRecord(season, user.user.table, user.user.id)).first;
        model::tableInfo(user.user.table)
            .field(user.field)
            ->set(model::recordPointer(found->second), Value{});
    }
    for (const auto& [ref, record] : changed)
        edit.put(record);
    return edit;
}

} // namespace withy::ui::edits
