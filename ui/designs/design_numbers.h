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
class FindingRows;
class FigureRow;
class TextLabel;

/// The figures of a design, each with its working; its own minutes and price; what wants looking at.
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
    void fillNotes();
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
    QVBoxLayout* notes_;
    QStringList said_;
    FindingRows* findings_;
};

} // namespace withy::ui
