// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QBoxLayout;
class QScrollArea;

namespace withy::ui {

class DesignNumbers;
class DesignMiddle;
class FieldEdit;
class RecordForm;
class SlotList;
class TextLabel;
class TrialPicture;

/// The bench: slots at the left, the piece to scale in the middle, its figures at the right. In a narrow
/// window the figures go below the piece.
class DesignEditor : public QWidget {
    Q_OBJECT

public:
    explicit DesignEditor(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);

    [[nodiscard]] std::optional<Id<model::Design>> design() const { return design_; }

    void openSlot(Id<model::Slot> slot);
    void editName();
    /// Keeps what is being typed; false when it was refused.
    bool commit();

    [[nodiscard]] SlotList& slotList() const { return *slots_; }

Q_SIGNALS:
    void backAsked();
    void useAsked(qint64 design);
    void copyAsked(qint64 design);
    void eraseAsked(qint64 design);
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeBar();
    QWidget* makeLeft();
    void refresh();
    void arrange();

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    FieldEdit* name_;
    FieldEdit* kind_;
    TextLabel* used_;
    SlotList* slots_;
    RecordForm* form_;
    DesignMiddle* middle_;
    QScrollArea* middleArea_;
    TrialPicture* picture_;
    DesignNumbers* numbers_;
    QScrollArea* left_;
    QScrollArea* right_;
    QBoxLayout* columns_;
    QBoxLayout* rightColumn_;
    bool narrow_ = false;
};

} // namespace withy::ui
