// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/shelf_rows.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class TextLabel;

/// The ribbon that is cut on one day: each reel and end as a bar with its cuts, what is left, and whether it
/// is proved. What stays can be written back to the stock, the earliest day first.
class RibbonDayView : public QWidget {
    Q_OBJECT

public:
    explicit RibbonDayView(Workbench& bench, QWidget* parent = nullptr);
    void refresh();

    [[nodiscard]] QPushButton* writeBack() const { return writeBack_; }

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);
    void refused(const QString& sentence);
    void said(const QString& sentence);

private:
    [[nodiscard]] const plan::RibbonDay* day() const;
    void fillDays();
    void fillRibbons();
    void takeBack();

    Workbench& bench_;
    QComboBox* days_;
    QPushButton* writeBack_;
    QVBoxLayout* rows_;
    TextLabel* none_;
};

} // namespace withy::ui
