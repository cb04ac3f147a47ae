// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QStackedWidget;

namespace withy::ui {

class ColourBalance;
class DesignView;
class FromAbove;
class Segments;
class WaterPanel;

/// The middle of the bench: the piece from the side or from above on its table, and under it how its water
/// falls and which colours it shows.
class DesignMiddle : public QWidget {
    Q_OBJECT

public:
    explicit DesignMiddle(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);

    [[nodiscard]] DesignView& view() const { return *view_; }

    /// In a narrow window it has a height of its own.
    void setNarrow(bool narrow);

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void refresh();

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    Segments* sides_;
    QStackedWidget* drawings_;
    DesignView* view_;
    FromAbove* above_;
    ColourBalance* colours_;
    WaterPanel* water_;
};

} // namespace withy::ui
