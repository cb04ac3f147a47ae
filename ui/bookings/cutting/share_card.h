// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/share_rows.h"
#endif

#include <QRadioButton>

namespace withy::ui {

/// One way to go on, as a card: what it is, what it does to every piece, and two figures at the right. A
/// radio button in every other respect: arrows move along, Enter takes it.
class ShareCard : public QRadioButton {
    Q_OBJECT

public:
    explicit ShareCard(const ShareChoice& choice, QWidget* parent = nullptr);

    [[nodiscard]] int way() const { return choice_.way; }

    [[nodiscard]] const ShareChoice& choice() const { return choice_; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void taken();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

    [[nodiscard]] bool hitButton(const QPoint& at) const override { return rect().contains(at); }

private:
    struct Rects {
        QRect head;
        QRect effect;
        QRect figure;
        QRect note;
        int height = 0;
    };

    [[nodiscard]] Rects rectsFor(int width) const;

    ShareChoice choice_;
};

} // namespace withy::ui
