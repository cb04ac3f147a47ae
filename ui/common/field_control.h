// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"

#include <QString>

#include <functional>
#include <memory>

class QWidget;

namespace withy::ui {

class Workbench;

/// What a person types or picks a field's value with: one kind of control behind one face, so that forms
/// and tables share them. The widget belongs to its parent.
class FieldControl {
public:
    virtual ~FieldControl() = default;

    /// What takes the focus.
    [[nodiscard]] virtual QWidget* widget() const = 0;
    [[nodiscard]] virtual QString text() const = 0;
    /// Never tells.
    virtual void setText(const QString& text) = 0;
    /// For good: a season is open for reading as long as it is open.
    virtual void setReadOnly() = 0;

    virtual void setPrompt(const QString&) {}

    /// A list or calendar of the control's own is open: losing the focus to it is not leaving.
    [[nodiscard]] virtual bool isPopupOpen() const { return false; }

    /// Enter belongs to the text.
    [[nodiscard]] virtual bool takesEnter() const { return false; }

    virtual void openPopup() {}

    std::function<void()> edited;                       ///< a key was typed
    std::function<void()> picked;                       ///< a choice was made: keep it at once
    std::function<void(const QString& name)> makeAsked; ///< "Make Marrowby Hall" was chosen
};

/// The right control for the field.
std::unique_ptr<FieldControl> makeControl(Workbench& bench, const model::FieldInfo& field, QWidget* parent);

} // namespace withy::ui
