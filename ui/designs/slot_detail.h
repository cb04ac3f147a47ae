// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QGridLayout;

namespace withy::ui {

class FieldEdit;
class PlantEntry;
class PlantOrder;
class Segments;
class Stepper;

/// What opens below the chosen slot: its plants, best first, and how it is used.
class SlotDetail : public QWidget {
    Q_OBJECT

public:
    explicit SlotDetail(Workbench& bench, QWidget* parent = nullptr);
    void showSlot(std::optional<Id<model::Slot>> slot);
    /// Where the keyboard begins: the plant if there is none yet, else the list.
    void enter();

Q_SIGNALS:
    void refused(const QString& sentence);
    void eraseAsked();

private:
    void refresh();
    void addRow(QGridLayout& rows, const QString& label, QWidget* control);

    Workbench& bench_;
    std::optional<Id<model::Slot>> slot_;
    PlantOrder* plants_;
    PlantEntry* add_;
    FieldEdit* label_;
    FieldEdit* purpose_;
    Segments* tier_;
    FieldEdit* clump_;
    Stepper* vary_;
};

} // namespace withy::ui
