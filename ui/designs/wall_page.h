// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/designs_model.h"
#endif

#include <QWidget>

class QBoxLayout;
class QGridLayout;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace withy::ui {

class DesignPanel;
class DesignsWall;
class Segments;
class TextLabel;

/// The wall with its filters, the chosen design beside it, and what stands there before the first one.
class WallPage : public QWidget {
    Q_OBJECT

public:
    explicit WallPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] DesignsWall& wall() const { return *wall_; }

    [[nodiscard]] QPushButton& newButton() const { return *new_; }

    void enter();
    void find();
    /// Shows all shelves if a filter hides it.
    void choose(Id<model::Design> design);

Q_SIGNALS:
    void openAsked(qint64 design);
    void useAsked(qint64 design);
    void newAsked(QWidget* at);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void refreshWeek();
    void arrange();
    QWidget* makeEmpty();

    Workbench& bench_;
    DesignsModel model_;
    TextLabel* title_;
    TextLabel* answer_; ///< how many can be made this week
    Segments* groups_;
    Segments* bloom_;
    QLineEdit* find_;
    QPushButton* new_;
    DesignsWall* wall_;
    TextLabel* none_;
    QWidget* empty_;
    DesignPanel* panel_;
    QScrollArea* side_;
    QWidget* line_;
    QGridLayout* head_;
    QBoxLayout* row_;
};

} // namespace withy::ui
