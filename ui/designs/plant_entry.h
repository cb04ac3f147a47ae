// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QLineEdit>

class QCompleter;
class QStringListModel;

namespace withy::ui {

/// A plant found by typing any part of its name; Enter or a pick from the list takes it.
class PlantEntry : public QLineEdit {
    Q_OBJECT

public:
    PlantEntry(Workbench& bench, const QString& id, const QString& prompt, QWidget* parent = nullptr);

Q_SIGNALS:
    void took(qint64 plant);
    void refused(const QString& sentence);

protected:
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void takeNamed(const QString& name);

    Workbench& bench_;
    QStringListModel* names_;
};

} // namespace withy::ui
