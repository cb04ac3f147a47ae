// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QPushButton;

namespace withy::ui {

class FindingRows;
class TextLabel;

/// What the whole season asks for, beside whatever page is shown. Shut until asked for.
class FindingsPanel : public QWidget {
    Q_OBJECT

public:
    explicit FindingsPanel(Workbench& bench, QWidget* parent = nullptr);
    void toggle();

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);
    void refused(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void refresh();

    Workbench& bench_;
    FindingRows* rows_;
    TextLabel* head_;
    QPushButton* shut_;
};

} // namespace withy::ui
