// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/record_table_spec.h"
#include "ui/logic/workbench.h"

#include <QWidget>

class QVBoxLayout;

namespace withy::ui {

/// A plant's cautions, each with the ink triangle: what, then what to do. Never says that all is safe.
class CautionRows : public QWidget {
    Q_OBJECT

public:
    explicit CautionRows(Workbench& bench, QWidget* parent = nullptr);
    void show(Id<model::Plant> plant);
    using QWidget::show;

private:
    Workbench& bench_;
    QVBoxLayout* rows_;
    QString shown_;
};

/// The cautions as rows to be edited.
RecordTableSpec hazardSpec();

} // namespace withy::ui
