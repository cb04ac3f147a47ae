// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/answers/walk_answers.h"
#endif
#include "ui/logic/workbench.h"

#include <QAbstractTableModel>
#include <QThreadPool>

#include <map>
#include <vector>

namespace withy::ui {

/// The walk of one day as a sheet to fill in: a row for each patch in walking order, three counts and a
/// remark. A row is a record only once something stands in it. What cannot be taken stays in its cell
/// with the sentence that says why.
class WalkEntryModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { PatchColumn, LastColumn, ReadyColumn, ThreeDaysColumn, WeekColumn, RemarkColumn, Columns };

    enum Role {
        NumberRole = Qt::UserRole + 1, ///< "3"; empty for a further row of the same place on the walk
        PlantRole,                     ///< "Zinnia, coral"
        ColourRole,                    ///< QColor of the plant's bloom
        ExpectedRole,                  ///< "54" beside a count; empty: no forecast
        CautionRole,                   ///< odd but taken
        SentenceRole,                  ///< not taken, and why
        CountedRole                    ///< the row has a count
    };

    WalkEntryModel(Workbench& bench, Day day, QObject* parent = nullptr);
    ~WalkEntryModel() override;

    void setDay(Day day);

    [[nodiscard]] Day day() const { return day_; }

    [[nodiscard]] Answer answer() const { return walkEntryAnswer(bench_.season(), day_, expected_); }

    [[nodiscard]] const WalkExpectations& expected() const { return expected_; }

    [[nodiscard]] Id<model::Patch> patchAt(int row) const {
        return rows_[static_cast<std::size_t>(row)].patch;
    }

    /// Nothing is expected there within a fortnight, and nothing was found.
    [[nodiscard]] bool isResting(int row) const;
    [[nodiscard]] int restingRows() const;
    /// First row without a count where something is expected; none: any without one; none: -1.
    [[nodiscard]] int firstBlankRow() const;

    [[nodiscard]] static bool isCount(int column) { return column >= ReadyColumn && column <= WeekColumn; }

    /// The expectations of this day are there.
    [[nodiscard]] bool knowsExpected() const { return knows_; }

    /// Reckons what is expected on another thread; expectedChanged tells. For when the sheet is seen.
    void askExpected();
    /// Forgets what was refused there, so that what is kept shows again; false when nothing was.
    bool putBack(const QModelIndex& index);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

Q_SIGNALS:
    /// What was expected is another: askExpected() when someone looks.
    void expectedWanted();
    /// The sentence of what was not taken; empty when it was.
    void refused(const QString& sentence);
    void answerChanged();
    void expectedChanged();

private:
    struct Row {
        Id<model::Patch> patch;
        QString number;
        std::optional<model::Walk> walk;   ///< of the day
        std::optional<model::Walk> before; ///< the last counted one before it

        friend bool operator==(const Row& a, const Row& b) { return a.patch == b.patch; }
    };

    struct Refused {
        QString typed;
        QString sentence;
    };

    [[nodiscard]] std::vector<Row> rowsNow() const;
    void refresh();
    void takeExpected(int turn, const WalkExpectations& expected);
    void seasonChanged(const model::Edit& done);
    [[nodiscard]] QVariant patchData(const Row& row, int role) const;
    [[nodiscard]] QVariant countData(const QModelIndex& index, int role) const;
    [[nodiscard]] QString cautionOf(const Row& row, edits::WalkCount count) const;
    [[nodiscard]] const Refused* refusedAt(const QModelIndex& index) const;
    bool say(const QModelIndex& index, const QString& typed, const QString& sentence);
    bool setCount(const QModelIndex& index, const QString& typed);

    Workbench& bench_;
    Day day_;
    std::vector<Row> rows_;
    std::map<std::pair<std::int64_t, int>, Refused> refused_; ///< by patch and column
    WalkExpectations expected_;
    bool knows_ = false;
    int turn_ = 0; ///< of askExpected: older answers are dropped
    QThreadPool pool_;
};

} // namespace withy::ui
