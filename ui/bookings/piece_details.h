// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "ui/logic/models/booking_pieces.h"
#endif

#include <QWidget>

class QComboBox;
class QVBoxLayout;

namespace withy::ui {

class FieldEdit;
class Stepper;

/// What opens below a row of pieces: its tables, drop, note and price, and taking it out.
class PieceDetails : public QWidget {
    Q_OBJECT

public:
    PieceDetails(Workbench& bench, Id<model::Line> line, QWidget* parent = nullptr);

    void refresh();
    /// Puts the keyboard where one begins.
    void begin();

Q_SIGNALS:
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);

private:
    QWidget* makeRest();
    void layTables(const model::Line& line);
    void fillDrops(const model::Line& line);
    void take(const model::Edit& edit);

    struct TableRow {
        Id<model::VenueTable> table;
        QWidget* row;
        Stepper* perTable;
    };

    Workbench& bench_;
    Id<model::Line> line_;
    QWidget* offers_;
    QWidget* tables_;
    std::vector<TableRow> rows_;
    QStringList offered_;
    QComboBox* drop_ = nullptr;
    FieldEdit* note_ = nullptr;
    FieldEdit* price_ = nullptr;
};

} // namespace withy::ui
