// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/order_figures.h"
#endif

#include <QWidget>

class QHBoxLayout;

namespace withy::ui {

class FigureButton;
class TextLabel;
class WorkingPanel;

/// The figures of the row that is chosen among the orders; each opens its working below them.
class OrderFigures : public QWidget {
    Q_OBJECT

public:
    explicit OrderFigures(QWidget* parent = nullptr);
    void setSums(const OrderSums& sums);

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);

private:
    void addFigure();
    void open(FigureButton* figure, bool on);

    TextLabel* whose_;
    QHBoxLayout* row_;
    WorkingPanel* working_;
    QWidget* room_; ///< the working may be long
    std::vector<std::pair<TextLabel*, FigureButton*>> figures_;
};

} // namespace withy::ui
