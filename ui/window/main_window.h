// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/paper_shop.h"
#endif
#include "ui/logic/workbench.h"

#include <QMainWindow>

#include <memory>

class QTabWidget;

namespace withy::ui {

class BookingsPage;
class DesignsPage;

/// Arranges the pages and the actions; each page wires itself.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(std::unique_ptr<Workbench> bench);
    ~MainWindow() override;

    [[nodiscard]] Workbench& bench() { return *bench_; }

private:
    void addActions();
    void showHistory();
    void showPaper(PaperKind kind);

    std::unique_ptr<Workbench> bench_;
    QTabWidget* places_;
    BookingsPage* bookings_;
    DesignsPage* designs_;
    QAction* undo_ = nullptr;
    QAction* redo_ = nullptr;
};

} // namespace withy::ui
