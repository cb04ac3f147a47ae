// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/fit_ask.h"
#endif

#include <QWidget>

class QPushButton;

namespace withy::ui {

class Stepper;
class TextLabel;

/// One design that is asked for: how many, of what, and away with it.
class FitLineRow : public QWidget {
    Q_OBJECT

public:
    explicit FitLineRow(int index, QWidget* parent = nullptr);
    void showLine(const model::Season& season, const FitPieces& line);

    [[nodiscard]] Stepper* stepper() const { return count_; }

Q_SIGNALS:
    void counted(qint64 count);
    void removed();

private:
    Stepper* count_;
    TextLabel* name_;
    TextLabel* note_;
    QPushButton* away_;
};

} // namespace withy::ui
