// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QColor>

namespace withy::ui {

/// A slot's line in the making order: its colour, number and name, and what may fill it. Pressed, it opens
/// below itself. Alt with the arrow keys moves it, Delete takes it out.
class SlotHead : public QAbstractButton {
    Q_OBJECT

public:
    explicit SlotHead(QWidget* parent = nullptr);
    void setWords(int number, const QString& label, const QString& plants, const QString& accessible);
    void setColour(const QColor& colour);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

Q_SIGNALS:
    void moveAsked(int by);
    void eraseAsked();
    /// The neighbour up (-1) or down (1) shall have the focus.
    void stepAsked(int by);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString label_;
    QString plants_;
    QColor colour_;
};

} // namespace withy::ui
