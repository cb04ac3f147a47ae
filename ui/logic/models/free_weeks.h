// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/cover_plan.h"
#endif
#include "ui/logic/answers/answer.h"

#include <QAbstractTableModel>

#include <array>
#include <map>
#include <vector>

namespace withy::ui {

/// What is free to promise: a row for each plant, a column for each week in which some stem becomes ready.
/// A cell holds one figure at the cautious and the likely level; blank where the plant has nothing that week.
class FreeWeeksModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum class Figure { free, promised, asked, expected };

    enum Role {
        PlantRole = Qt::UserRole + 1,
        AmountRole ///< the cautious figure as a number; invalid in a blank cell
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// `cover` may be null: then there is nothing to show.
    void show(const model::Season& season, const plan::CoverPlan* cover, Figure figure);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

    /// Whether the row has a figure above nought in that column or a later one.
    [[nodiscard]] bool hasAnyFrom(int row, int column) const;
    /// The column of the week of `day`, or of the first one after it; the last one when all are over, -1
    /// when there is none.
    [[nodiscard]] int columnOf(Day day) const;
    /// All there is to say of a cell, at both levels.
    [[nodiscard]] QString sentence(const QModelIndex& index) const;
    /// "12 plants over 30 weeks. Most is free in the week of 6 Sep: 212 cautious, 340 likely." What is over
    /// cannot be promised: of the weeks from that of `today` on; blank: of all.
    [[nodiscard]] Answer answer(std::optional<Day> today = std::nullopt) const;
    /// As a spreadsheet takes it: a row for each plant, week and level, heads first, plain figures.
    [[nodiscard]] QString tsv() const;

private:
    struct Row {
        Id<model::Plant> plant;
        QString name;
    };

    using Levels = std::array<std::optional<cover::PlantWeek>, plan::levelCount>;

    [[nodiscard]] const Levels* at(int row, int column) const;

    std::vector<Row> rows_;  ///< by name
    std::vector<Day> weeks_; ///< Mondays
    std::map<std::pair<Id<model::Plant>, Day>, Levels> cells_;
    Figure figure_ = Figure::free;
};

/// "Free to promise", "Promised", "Asked for", "Expected".
QString figureWords(FreeWeeksModel::Figure figure);
/// What the page says while there is nothing to show.
QString nothingFreeWords();

} // namespace withy::ui
