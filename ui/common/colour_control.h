// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/line_control.h"

class QAction;

namespace withy::ui {

class ColourLine;

/// A colour with a swatch that opens the chooser: called by its name, and spelt only while it is typed in.
class ColourControl : public LineControl {
public:
    explicit ColourControl(QWidget* parent);
    [[nodiscard]] QString text() const override;
    void setText(const QString& text) override;

    [[nodiscard]] bool isPopupOpen() const override { return choosing_; }

    void openPopup() override;

private:
    void showSwatch();

    ColourLine* colour_;
    QAction* swatch_;
    bool choosing_ = false;
};

} // namespace withy::ui
