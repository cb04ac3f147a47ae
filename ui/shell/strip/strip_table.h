// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTableView;

namespace withy::ui {

class StripTableModel;
class Workbench;

/// The bloom strip as a table of weeks and plants, to read and to copy. Blocks nothing, and follows every
/// new plan while it is open.
class StripTable : public QDialog {
    Q_OBJECT

public:
    StripTable(Workbench& bench, QWidget* parent);

    void open() override;

private:
    void refresh();
    void copy();

    Workbench& bench_;
    StripTableModel* model_;
    QTableView* view_;
};

} // namespace withy::ui
