// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"
#include "ui/logic/edits.h"

#include <QString>
#include <QStringList>

/// Edits of any record of any table, built on the model's own description.
namespace withy::ui::edits {

using model::Ref;
using model::TableKind;
using model::Value;

/// A field's name and the value to give it.
using Given = std::vector<std::pair<std::string_view, Value>>;

/// One field of one record. Undo says "must not of Library roof supper", or with its number where it is
/// a count: "48 owned of Honey jar". An empty edit when there is no such record or field, or when the
/// value has not the field's shape.
Edit setField(const Season& season, Ref record, std::string_view field, const Value& value);
/// Several fields of one record as one step, named after the first.
Edit setFields(const Season& season, Ref record, const Given& values);

/// Adds what `more` does to `edit`, which keeps its own name.
void join(Edit& edit, const Edit& more);

/// A new record; what is not given gets the model's defaults, and what must be there a sensible one: the
/// season's first day, the next free month, last in its order. References that must be there and are not
/// given stay unset, and the model then asks for them.
Edit addRecord(const Season& season, TableKind kind, const Given& given, std::int64_t& made);
/// The record addRecord would make.
model::Record newRecord(const Season& season, TableKind kind, const Given& given);

/// Whether a name is enough to make a record of this table while typing somewhere else.
bool canMakeNamed(TableKind kind);
/// A client, venue, container, plant, ribbon ... of this name; its other facts come later.
Edit addNamed(const Season& season, TableKind kind, const QString& name, std::int64_t& made);

/// What taking records out would mean.
struct ErasePlan {
    /// A record that refers to one of those taken out.
    struct User {
        Ref user;
        std::string_view field;
        Ref target;
    };

    std::vector<Ref> wanted;
    std::vector<Ref> goesWith;  ///< parts of what is taken out: a booking's lines, a design's slots
    std::vector<User> inTheWay; ///< may not be without it
    std::vector<User> mayBlank; ///< could be left without it
    QString sentence;           ///< what goes too, or what stands in the way and how to go on

    [[nodiscard]] bool free() const { return inTheWay.empty() && mayBlank.empty(); }

    /// Everything that still uses it could be left blank there.
    [[nodiscard]] bool blankingHelps() const { return inTheWay.empty() && !mayBlank.empty(); }
};

ErasePlan planErase(const Season& season, const std::vector<Ref>& wanted);
/// With all that belongs to them. The model refuses it while something else still uses them.
Edit eraseRecords(const Season& season, const std::vector<Ref>& wanted);
/// The same, leaving blank what may be blank.
Edit eraseAndBlank(const Season& season, const std::vector<Ref>& wanted);

/// Puts the record at `toIndex` among its siblings (those alike in `parentField`; all when it is empty),
/// renumbering only what is needed.
Edit moveRecord(const Season& season, Ref record, std::string_view orderField, int toIndex,
                std::string_view parentField = {});

/// Rows of text, as a spreadsheet gives them, into new records.
struct PasteReading {
    std::optional<Edit> edit;       ///< all rows or none
    std::vector<std::int64_t> made; ///< ids of the new records
    QString sentence;               ///< why not, by row and column
};

/// `columns` are the field names the cells belong to, in order; a first row of their heads, or of any of
/// the table's field names, is taken as the head. `given` goes into every record (its parent). `firstRow` is
/// what the first row is called where something is wrong with it.
PasteReading pasteRows(const Season& season, TableKind kind, const std::vector<std::string>& columns,
                       const Given& given, const QString& tsv, int firstRow = 1);
/// The table whose heads this row holds, `preferred` first; nothing when it is a row of values.
std::optional<TableKind> headsOf(TableKind preferred, const QStringList& row);
/// Splits tab-separated text as spreadsheets write it: quoted cells may hold tabs and line breaks.
std::vector<QStringList> splitTsv(const QString& tsv);
QString joinTsv(const std::vector<QStringList>& rows);

} // namespace withy::ui::edits
