// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace withy::ui {

class PlantEntry;
class SlotDetail;
class SlotHead;
class Stepper;
class TextLabel;

/// A design's slots in making order, each with its count; the chosen one opens below itself.
class SlotList : public QWidget {
    Q_OBJECT

public:
    explicit SlotList(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);
    void open(std::optional<Id<model::Slot>> slot);
    void addSlot();

    [[nodiscard]] std::optional<Id<model::Slot>> opened() const { return open_; }

    void eraseOpened();

Q_SIGNALS:
    void refused(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Row {
        Id<model::Slot> slot;
        QWidget* line;
        SlotHead* head;
        Stepper* count;
    };

    void refresh();
    void rebuild(const std::vector<const model::Slot*>& slots);
    Row makeRow(Id<model::Slot> slot);
    void fill(Row& row, const model::Slot& slot, int number);
    void move(Id<model::Slot> slot, int by);
    void erase(Id<model::Slot> slot);
    void step(std::size_t from, int by);
    void focus(Id<model::Slot> slot);
    [[nodiscard]] Row* rowOf(Id<model::Slot> slot);

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    std::optional<Id<model::Slot>> open_;
    std::vector<Row> rows_;
    QVBoxLayout* column_;
    SlotDetail* detail_;
    PlantEntry* add_;
    TextLabel* empty_;
};

} // namespace withy::ui
