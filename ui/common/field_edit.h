// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "core/model/schema.h"
#endif

#include <QWidget>

#include <memory>

class QKeyEvent;
class QLabel;
class QTimer;

namespace withy::ui {

class FieldControl;

/// One field of one record, typed freely: the right control for its kind, its sentence below it in osier
/// while it cannot be kept. Enter and leaving keep what was typed, Esc puts back what was there.
/// Object name "<table>.<field>"; accessible name is the field's label.
class FieldEdit : public QWidget {
    Q_OBJECT

public:
    FieldEdit(Workbench& bench, model::TableKind kind, const char* field, QWidget* parent = nullptr);

    ~FieldEdit() override;

    /// Nothing: blank and disabled.
    void show(std::optional<std::int64_t> id);
    using QWidget::show;

    /// Keeps what was typed; false when it was refused (the words stay, with the sentence).
    bool commit();
    /// Puts back what the model holds.
    void putBack();
    /// Typed and not yet kept.
    [[nodiscard]] bool isDirty() const;

    [[nodiscard]] QString label() const;
    [[nodiscard]] QString typed() const;
    void setTyped(const QString& text); ///< as if typed; not yet kept
    [[nodiscard]] QString sentence() const;

    [[nodiscard]] std::optional<std::int64_t> id() const { return id_; }

    [[nodiscard]] model::TableKind kind() const { return kind_; }

    [[nodiscard]] const model::FieldInfo& field() const { return *field_; }

    [[nodiscard]] QWidget* control() const; ///< what takes the focus
    void setPrompt(const QString& prompt);  ///< instead of the field's own
    /// A line in the third ink below the control: where the value comes from; `tip` says more of it.
    void setCaption(const QString& words, const QString& tip = {});
    /// With a border always; otherwise the border comes when one points at it or writes in it.
    void setBoxed(bool on);

Q_SIGNALS:
    void refused(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refill();
    void typing();
    void judge();
    void say(const QString& sentence);
    /// The value typed, or nothing and its sentence is shown.
    std::optional<model::Value> read();
    bool keep(const model::Edit& edit);
    void makeNamed(const QString& name);
    bool handleKey(const QKeyEvent& key);

    Workbench& bench_;
    model::TableKind kind_;
    const model::FieldInfo* field_;
    std::optional<std::int64_t> id_;
    std::unique_ptr<FieldControl> control_;
    QLabel* caption_ = nullptr;
    QLabel* sentence_;
    QTimer* rest_;
    QString shown_;
    bool mayMake_ = false; ///< what was read last names a record that could be made
};

/// Keeps what is being typed anywhere in `window`, in a field or a table; false when it was refused.
/// Called before the window closes, before undo and before the page changes.
bool commitFocusedField(QWidget* window);

} // namespace withy::ui
