// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/record_table_spec.h"
#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "ui/logic/edits/record_edits.h"
#endif

#include <QAbstractTableModel>
#include <QHash>

#include <map>

namespace withy::ui {

/// Records of one table as rows that are edited in place. Every change goes through the workbench; what
/// is refused is kept with its sentence in the cell until it is mended or left. Rows are added, taken out
/// and repainted one by one when the season changes, so that choice and open editors survive.
class RecordTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Role {
        IdRole = Qt::UserRole + 1, ///< the record's id; invalid in the blank row
        SentenceRole,              ///< why what was typed was refused; empty when all is well
        TypedRole,                 ///< what was typed and refused, or the shown text
        BlankRole,                 ///< true when the cell holds nothing
        ColourRole,                ///< the QColor of a colour cell, or of a plant it names
    };

    RecordTableModel(Workbench& bench, RecordTableSpec spec, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    Qt::DropActions supportedDropActions() const override;
    bool canDropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                         const QModelIndex& parent) const override;
    bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                      const QModelIndex& parent) override;

    [[nodiscard]] const RecordTableSpec& spec() const { return spec_; }

    [[nodiscard]] Workbench& bench() const { return bench_; }

    /// The field of a column; null for computed ones.
    [[nodiscard]] const model::FieldInfo* fieldAt(int column) const;
    [[nodiscard]] int columnOf(const std::string& field) const; ///< -1 when it is not shown
    /// Nothing in the blank row.
    [[nodiscard]] std::optional<std::int64_t> idAt(int row) const;
    [[nodiscard]] int rowOf(std::int64_t id) const; ///< -1 when it is not shown
    [[nodiscard]] bool isAddRow(int row) const;
    /// The value as it is; of the blank row what was typed there so far.
    [[nodiscard]] model::Value valueAt(const QModelIndex& index) const;

    void setParentId(std::optional<std::int64_t> id); ///< no rows when there is none
    /// Only rows in which every word occurs in a shown cell, whatever its case.
    void setFind(const QString& words);
    void sortBy(const std::string& field, bool newestFirst);
    /// Repaints the computed columns: their figures have come.
    void refreshComputed();

    // Commands. Each returns the sentence that says why not, or an empty text.
    QString add(std::int64_t& made);
    QString erase(const std::vector<std::int64_t>& ids);
    QString eraseAndBlank(const std::vector<std::int64_t>& ids);
    [[nodiscard]] edits::ErasePlan planErase(const std::vector<std::int64_t>& ids) const;
    QString move(std::int64_t id, int toRow);
    /// Writes a block of cells over rows from `at`, and new rows below the last; all or none.
    QString paste(const QModelIndex& at, const QString& tsv);
    /// What copying puts on the clipboard: plain text for spreadsheets, and for our own tables whose rows
    /// they are.
    [[nodiscard]] QMimeData* mimeForCopy(const QModelIndexList& indexes) const;
    /// Rows of our own are added; a block of cells goes over those from `at`.
    QString pasteMime(const QModelIndex& at, const QMimeData& data);
    /// Makes a record of this name in the table the cell refers to, and names it there.
    QString makeInPlace(const QModelIndex& index, const QString& name);
    [[nodiscard]] QString addPrompt() const; ///< "New plant"
    [[nodiscard]] QString copied(const QModelIndexList& indexes, bool withHeads = false) const;
    /// Blanks the chosen cells; all or none.
    QString blank(const QModelIndexList& indexes);
    /// Forgets what was typed into the cell and refused, or into the blank row.
    void forget(const QModelIndex& index);

Q_SIGNALS:
    void refused(const QString& sentence);
    void made(qint64 id); ///< a record was made by typing into the blank row

private:
    struct Row {
        std::int64_t id = 0;
        const void* record = nullptr; ///< lives in season_
    };

    struct Refusal {
        QString typed;
        QString sentence;
    };

    /// Of a cell of the blank row: its value, or the name of a record that is made together with the row.
    struct Drafted {
        model::Value value;
        QString makes;
    };

    struct Column {
        const model::FieldInfo* field = nullptr;
        const ComputedColumn* computed = nullptr;
    };

    using Rows = std::vector<Row>;

    void layColumns();
    void take();
    [[nodiscard]] Rows wantedRows() const;
    void goTo(Rows wanted);
    void repaintChanged(const Rows& wanted);
    [[nodiscard]] const QString& findKey(const Row& row) const;
    [[nodiscard]] bool shownNamesChanged(const model::Season& next) const;
    [[nodiscard]] edits::Given givenToNew() const;
    bool setCell(const QModelIndex& index, const QString& typed);
    bool setDraft(const QModelIndex& index, const Drafted& cell, const QString& typed);
    [[nodiscard]] model::Edit draftEdit(std::int64_t& id) const;
    [[nodiscard]] QString draftedName(const QModelIndex& index) const;
    bool refuse(const QModelIndex& index, const QString& typed, const QString& sentence);
    QVariant computedData(const ComputedColumn& column, const Row& row, int role) const;

    Workbench& bench_;
    RecordTableSpec spec_;
    bool parentGone_ = false;
    const model::TableInfo& info_;
    std::vector<Column> columns_;
    model::Season season_; ///< as shown; shares its rows with the workbench
    Rows rows_;
    std::map<std::pair<std::int64_t, int>, Refusal> refusals_; ///< by id (0: blank row) and column
    std::map<std::string, Drafted, std::less<>> draft_;        ///< typed into the blank row so far
    QStringList find_;
    mutable QHash<const void*, QString> keys_; ///< case-folded text of each record
};

} // namespace withy::ui
