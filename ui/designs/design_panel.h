// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/design_bloom.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class DrawnDesign;
class TextLabel;

/// The chosen design beside the wall: drawing, what goes in, what it takes, and the way to the bench.
class DesignPanel : public QWidget {
    Q_OBJECT

public:
    explicit DesignPanel(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);
    /// The week looked at, and what can be made in it.
    void setWeek(std::optional<Day> monday, const DesignBlooms& blooms);

protected:
    void changeEvent(QEvent* event) override;

Q_SIGNALS:
    void openAsked(qint64 design);
    void useAsked(qint64 design);

private:
    void refresh();
    void fillRows();
    void sayBloom();
    void addFact(const QString& label, const QString& figure);

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    TextLabel* name_;
    TextLabel* group_;
    DrawnDesign* picture_;
    QPushButton* open_;
    QPushButton* use_;
    QVBoxLayout* rows_;
    TextLabel* used_;
    TextLabel* bloom_; ///< why it is drawn in line only
    std::optional<Day> monday_;
    DesignBlooms blooms_;
};

} // namespace withy::ui
