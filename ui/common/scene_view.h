// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/scene.h"
#endif

#include <QWidget>

#include <functional>

namespace withy::ui {

/// Shows a drawing with its words, made anew for the width there is. What it shows it says in words too.
class SceneView : public QWidget {
    Q_OBJECT

public:
    using Maker = std::function<Scene(double width, const SceneLook& look)>;

    SceneView(const QString& name, const QString& accessibleName, QWidget* parent = nullptr);
    void setMaker(Maker maker);
    /// The drawing is made again: what it shows has changed.
    void remake();

    [[nodiscard]] const Scene& scene() const { return scene_; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// Pressed with the mouse at a place of the drawing.
    void pressed(QPointF at);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void make();

    Maker maker_;
    Scene scene_;
};

} // namespace withy::ui
