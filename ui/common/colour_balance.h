// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/colour_view.h"
#endif

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class FigureButton;
class TextLabel;
class WorkingPanel;

/// Two bars, wished over shown, each colour's parts joined by a line; what falls short is framed.
class ColourBars : public QWidget {
    Q_OBJECT

public:
    explicit ColourBars(QWidget* parent = nullptr);
    void setView(const ColourView& view);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Part {
        double from, to;                  ///< share of the width
        const ColourBand* band = nullptr; ///< null: other colours
    };

    [[nodiscard]] std::vector<Part> parts(bool wished) const;
    void paintBar(QPainter& painter, const QRectF& bar, bool wished) const;

    ColourView view_;
};

/// The bars, each colour's share as a figure that opens its working, what is short and the press that mends
/// it.
class ColourBalance : public QWidget {
    Q_OBJECT

public:
    /// `id` begins the names of its parts: "designs", "pieces".
    explicit ColourBalance(const QString& id, QWidget* parent = nullptr);
    void setView(const ColourView& view);

Q_SIGNALS:
    void mendAsked(const withy::model::Edit& edit);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fillFigures();
    void arrange();
    void open(std::size_t which, bool on);

    QString id_;
    ColourView view_;
    TextLabel* title_;
    ColourBars* bars_;
    QWidget* figures_;
    std::vector<FigureButton*> buttons_;
    WorkingPanel* working_;
    TextLabel* words_;
    QPushButton* mend_;
    int columns_ = 0;
};

} // namespace withy::ui
