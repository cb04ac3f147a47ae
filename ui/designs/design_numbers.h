// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/design_words.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace withy::ui {

class FieldEdit;
class FigureRow;
class TextLabel;

/// The figures of a design, each with its working; its own minutes and price; what the plan noticed.
class DesignNumbers : public QWidget {
    Q_OBJECT

public:
    explicit DesignNumbers(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);

Q_SIGNALS:
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int useRoom() const;
    void refresh();
    void fillUses();
    void fillFigures();
    void fillFindings();
    QWidget* fieldRow(const QString& label, FieldEdit* field);
    FigureRow* figureRow(const QString& id);

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    FigureRow* stems_;
    QVBoxLayout* uses_;
    QVBoxLayout* figures_;
    std::vector<FigureRow*> rows_;
    FieldEdit* minutes_;
    FieldEdit* price_;
    QVBoxLayout* findings_;
    QStringList said_;
};

} // namespace withy::ui
