// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

class QLineEdit;
class QPushButton;
class QTableView;

namespace withy::ui {

class OrderFigures;
class OrdersModel;

/// Every booking as an order, summed; sorted by any column. Enter leads to the booking. Below it
/// stand the figures of the chosen row, which open their workings.
class OrdersPage : public SubPage {
    Q_OBJECT

public:
    explicit OrdersPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

    /// The sentence that says why not, or an empty text.
    QString exportTo(const QString& path) const;

Q_SIGNALS:
    /// The same on paper is asked for.
    void paperWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void askAndExport();
    void follow();
    void showFigures();

    OrdersModel* model_;
    QTableView* view_;
    OrderFigures* figures_;
    QPushButton* start_;
    QWidget* tools_;
};

} // namespace withy::ui
