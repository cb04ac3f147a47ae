// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/design_words.h"
#endif

#include <QWidget>

namespace withy::ui {

class FigureButton;
class TextLabel;
class WorkingPanel;

/// A label, its figure, a note below and the working that opens below both.
class FigureRow : public QWidget {
    Q_OBJECT

public:
    enum class Look { line, leading }; ///< leading: the large figure a page begins with
    explicit FigureRow(const QString& id, Look look = Look::line, QWidget* parent = nullptr);
    void setFigure(const DesignFigure& figure, model::UnitSystem units);

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);

private:
    TextLabel* label_;
    FigureButton* figure_;
    TextLabel* note_;
    WorkingPanel* working_;
    Look look_;
};

} // namespace withy::ui
