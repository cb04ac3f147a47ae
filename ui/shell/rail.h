// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QToolButton>
#include <QWidget>

#include <functional>
#include <vector>

class QButtonGroup;
class QVBoxLayout;

namespace withy::ui {

/// One bud of the rail: an icon over a word; the current one is tied, washed and bold.
class RailButton : public QToolButton {
    Q_OBJECT

public:
    using IconMaker = std::function<QIcon()>;
    RailButton(const QString& words, IconMaker icon, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void dress();
    IconMaker icon_;
};

/// The places at the left: one long stem with a leaf bud for each, and undo at its foot.
class Rail : public QWidget {
    Q_OBJECT

public:
    explicit Rail(QWidget* parent = nullptr);
    void addPlace(const QString& words, RailButton::IconMaker icon, const QString& tip);
    void setCurrent(int place);
    /// The button at the foot; it shows and does what `undo` says.
    void setUndo(QAction* undo);

Q_SIGNALS:
    void chosen(int place);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QVBoxLayout* column_;
    QButtonGroup* group_;
    QToolButton* undo_;
};

} // namespace withy::ui
