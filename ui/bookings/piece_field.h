// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QLineEdit>

class QStringListModel;

namespace withy::ui {

/// "24 supper jar": a count and a design, proposed while it is typed. Enter asks for it.
class PieceField : public QLineEdit {
    Q_OBJECT

public:
    explicit PieceField(Workbench& bench, QWidget* parent = nullptr);

Q_SIGNALS:
    void asked(const QString& typed);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fill();

    Workbench& bench_;
    QStringListModel* names_;
    model::Table<model::Design> shown_;
};

} // namespace withy::ui
