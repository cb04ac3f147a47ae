// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"
#include "ui/shell/strip/strip_geometry.h"

#ifndef Q_MOC_RUN
#include "ui/logic/models/strip_design.h"
#include "ui/paint/bloom_bands.h"
#endif

#include <QPixmap>
#include <QWidget>

namespace withy::ui {

/// The season from left to right: every plant a band in its own bloom colour, as thick as the stems ready
/// that day; today a line; bookings as jars on their days. A read-out follows the mouse or the arrow keys.
class BloomStrip : public QWidget {
    Q_OBJECT

public:
    explicit BloomStrip(Workbench& bench, QWidget* parent = nullptr);

    /// Whole, or slim beside other work.
    void setWhole(bool whole);
    /// Of the view it stands in: its height follows.
    void setRoom(QSize view);
    /// The booking in view below: its jar is larger and named.
    void setChosen(std::optional<Id<model::Booking>> booking);

    /// The design in view below: its bands stand out, and a bracket spans the days when all its slots bloom.
    void setDesign(std::optional<Id<model::Design>> design);

    [[nodiscard]] const StripDesign& heldDesign() const { return held_; }

    [[nodiscard]] const StripFigures& figures() const { return figures_; }

    [[nodiscard]] const StripGeometry& laidOut() const { return geometry_; }

    [[nodiscard]] const StripSpan& span() const { return span_; }

    /// What the read-out says, as a whole.
    [[nodiscard]] QString readout() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// A jar or a band was pressed.
    void leadTo(const withy::model::Ref& ref);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    /// What the read-out is of.
    struct Reading {
        std::optional<int> day;
        std::optional<std::size_t> band;
        std::vector<std::size_t> pins;

        friend bool operator==(const Reading&, const Reading&) = default;
    };

    void refresh();
    void keepReading(const Reading& was, Day wasFrom, std::optional<Id<model::Plant>> plant);
    void holdDesign();
    void layOut();
    void setSpan(const StripSpan& span);
    void read(Reading reading);
    void sayIt();
    void paintReading(QPainter& p) const;
    void paintReadout(QPainter& p) const;
    void paintEmpty(QPainter& p) const;

    [[nodiscard]] Reading readingAt(QPointF at) const;
    [[nodiscard]] int startDay() const;
    void stepDay(int by);
    void stepBand(int by);
    void stepPin(int by);
    void zoom(double factor, std::optional<double> about);
    void showAll();
    void lead(const Reading& reading);
    bool takeKey(int key, Qt::KeyboardModifiers modifiers);

    Workbench& bench_;
    StripFigures figures_;
    QString emptyWords_;
    StripSpan span_;
    StripGeometry geometry_;
    std::vector<BloomBand> bands_;
    QPixmap picture_; ///< null: to be painted anew
    bool whole_ = true;
    QSize room_;
    std::optional<Id<model::Booking>> chosen_;
    std::optional<Id<model::Design>> design_;
    StripDesign held_; ///< design_, in figures_
    Reading reading_;
    std::optional<QPointF> pressed_;
    StripSpan spanPressed_;
    bool dragging_ = false;
    bool ringed_ = false; ///< the keyboard works here, and so it is shown
};

} // namespace withy::ui
