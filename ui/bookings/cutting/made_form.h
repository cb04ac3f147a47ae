// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/base/quantity.h"
#endif

#include <QWidget>

#include <optional>

class QLineEdit;

namespace withy::ui {

class TextLabel;

/// How long the making took and who did it, when anybody looked at the clock; both may stay blank.
class MadeForm : public QWidget {
    Q_OBJECT

public:
    explicit MadeForm(QWidget* parent = nullptr);
    void clear();
    void enter();

    [[nodiscard]] QString byWhom() const;

Q_SIGNALS:
    void kept(std::optional<withy::Minutes> minutes);

private:
    void keep();

    QLineEdit* minutes_;
    QLineEdit* who_;
    TextLabel* says_;
};

} // namespace withy::ui
