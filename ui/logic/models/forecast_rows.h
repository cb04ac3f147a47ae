// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/forecast_plan.h"
#include "core/plan/plan.h"
#include "ui/logic/answers/answer.h"
#endif

#include <QAbstractTableModel>
#include <QColor>
#include <QString>

#include <optional>
#include <utility>
#include <vector>

/// The garden's forecast as rows: every patch in walking order with what is drawn and said of it.
namespace withy::ui {

/// Stems standing ready by day, if nothing is cut; and what walks found.
struct ForecastCurve {
    Day from; ///< of every line's first value
    std::vector<double> usual;
    std::vector<double> cautious;
    std::vector<double> likely;
    std::vector<double> hopeful;
    std::vector<std::pair<Day, double>> walks;
};

struct ForecastRow {
    Id<model::Patch> patch;
    QString number; ///< on the walk; empty for a further row of the same place
    QString name;
    QString plant;
    QColor bloom; ///< invalid: none given
    QString firstUsual;
    QString firstNow;
    QString early; ///< "6 early", "2 late", "as usual"
    QString by;    ///< what moved the dates: "by warmth"
    QString stems; ///< expected, after the walks
    QString today; ///< standing likely
    QString week;  ///< coming within the week, likely
    QString lastWalk;
    ForecastCurve curve;
};

/// Nothing while there is no plan.
std::vector<ForecastRow> forecastRows(const model::Season& season, const plan::Plan& plan,
                                      std::optional<Day> today);

/// "Warmth is 6 days ahead. 8 patches, in walking order."
Answer forecastAnswer(const model::Season& season, const plan::Plan& plan);
/// "6 days ahead", "as in a usual year"; empty without a lead.
QString leadFigure(const plan::Plan& plan);
/// "Warmth since Mon 1 Mar: 1,318 °C days, and 1,244 in a usual year by now. 158 days measured, 7 forecast."
QString leadWarmth(const model::Season& season, const plan::Plan& plan);
/// "Why 6 days early", "Why its dates stand"; empty for a patch without dates.
QString whyHead(const plan::PatchOutlook& outlook);
/// "First stems between 3 and 12 July in six years of ten."
QString rangeWords(const plan::PatchOutlook& outlook);
/// "6 early", "2 late", "as usual".
QString earlyWords(int daysEarly);

/// The rows for a view.
class ForecastModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        PatchColumn,
        CurveColumn,
        FirstColumn,
        EarlyColumn,
        StemsColumn,
        TodayColumn,
        WeekColumn,
        Columns
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<ForecastRow> rows);

    [[nodiscard]] const ForecastRow& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }

    [[nodiscard]] int rowOf(Id<model::Patch> patch) const;
    /// First and last day on which any curve stands above nought, with a week about it.
    [[nodiscard]] std::optional<std::pair<Day, Day>> span() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] static QString words(const ForecastRow& row, int column);
    std::vector<ForecastRow> rows_;
};

} // namespace withy::ui
