// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QLayout;
class QListWidget;
class QSpinBox;
class QTableWidget;

namespace withy::ui {

/// The designs on the left, the chosen one's slots with live counts on the right.
class DesignsPage : public QWidget {
    Q_OBJECT

public:
    explicit DesignsPage(Workbench& bench, QWidget* parent = nullptr);
    void newDesign();

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void refresh();
    void showChosen();
    void keepName();
    void keepContainer();
    QLayout* containerRow();
    void keepPrice();
    void addContainer();
    void addSlot();
    void take(const model::Edit& edit);

    Workbench& bench_;
    std::optional<Id<model::Design>> chosen_;
    bool showing_ = false;
    QListWidget* list_;
    QLineEdit* name_;
    QComboBox* container_;
    QLineEdit* price_;
    QLineEdit* jar_;
    QSpinBox* rim_;
    QSpinBox* depth_;
    QTableWidget* table_;
    QLineEdit* label_;
    QComboBox* plant_;
    QSpinBox* count_;
    QLabel* numbers_;
};

} // namespace withy::ui
