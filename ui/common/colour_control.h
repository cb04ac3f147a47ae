// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/line_control.h"

class QAction;

namespace withy::ui {

/// A colour by name or number, with a swatch that opens the chooser.
class ColourControl : public LineControl {
public:
    explicit ColourControl(QWidget* parent);
    void setText(const QString& text) override;

    [[nodiscard]] bool isPopupOpen() const override { return choosing_; }

    void openPopup() override;

private:
    void showSwatch();

    QAction* swatch_;
    bool choosing_ = false;
};

} // namespace withy::ui
