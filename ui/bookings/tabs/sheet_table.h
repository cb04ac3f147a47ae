// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/sheet.h"
#endif

#include "ui/common/figure.h"
#include "ui/logic/workbench.h"

#include <QPointer>
#include <QWidget>

class QGridLayout;

namespace withy::ui {

class AnswerLabel;
class BelowPanel;
class BusyBack;
class JarCell;
class ReachCell;
class SourceRow;
class RowMark;
class TextLabel;

FigureFacts factsOf(const SheetFigure& figure);

/// Rows of a sheet. A figure opens its working below its row; where the page is narrow, the columns that may
/// go under the name. When only words change nothing is made anew, so that focus and open workings stay.
class SheetTable : public QWidget {
    Q_OBJECT

public:
    SheetTable(Workbench& bench, const QString& name, QWidget* parent = nullptr);
    void setSheet(const Sheet& sheet);

    [[nodiscard]] const Sheet& sheet() const { return sheet_; }

    /// The figure in a row, by the row's key and the column; null when there is none.
    [[nodiscard]] FigureButton* figure(const QString& key, int column) const;

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);
    void refused(const QString& sentence);
    /// The button of a way out below a row was pressed.
    void wayTaken(const QString& key, int way);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Cell {
        TextLabel* words = nullptr;
        TextLabel* title = nullptr; ///< the column's, when folded
        FigureButton* figure = nullptr;
        QWidget* field = nullptr;
        ReachCell* reach = nullptr;
        JarCell* jar = nullptr;
        std::vector<SourceRow*> sources = {};
    };

    struct Row {
        QString key;
        RowMark* mark = nullptr;
        AnswerLabel* name = nullptr;
        TextLabel* rest = nullptr; ///< of a head: beside its name
        TextLabel* under = nullptr;
        std::vector<Cell> cells;
        WorkingPanel* panel = nullptr;
        int open = -1; ///< the column whose working is open
        BelowPanel* below = nullptr;
    };

    [[nodiscard]] bool sameShape(const Sheet& sheet) const;
    [[nodiscard]] int leading() const;
    /// Where a column stands among the cells; the name stands at nameColumn().
    [[nodiscard]] int placeOf(int column) const;

    [[nodiscard]] int nameColumn() const { return 1 + leading(); }

    [[nodiscard]] int places() const { return static_cast<int>(sheet_.columns.size()) + 2; }

    [[nodiscard]] int widthNeeded() const;
    void rebuild();
    void addHeads(QGridLayout* grid);
    void addRow(QGridLayout* grid, std::size_t index, int line);
    void addName(QGridLayout* grid, const SheetRow& from, Row& row, int line);
    void addCell(QGridLayout* grid, std::size_t index, int column, int line, QLayout* below);
    void addBelow(QGridLayout* grid, std::size_t index, int line);
    void fillRow(std::size_t index);
    void fillCover(Cell& cell, const SheetCell& said);
    void openFigure(std::size_t index, int column, bool open);
    void keepPlace();
    void findPlace();

    Workbench& bench_;
    Sheet sheet_;
    std::vector<Row> rows_;
    QPointer<QWidget> content_;
    bool folded_ = false;
    bool marked_ = false; ///< some row has a mark, so all leave room for one
    QString placeKey_;    ///< where the focus was before the rows were made anew
    int placeColumn_ = -1;
    int placeWay_ = -1;
    std::vector<std::pair<QString, int>> wereOpen_;
};

} // namespace withy::ui
