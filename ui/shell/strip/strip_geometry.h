// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/bloom_strip_model.h"
#include "ui/logic/models/strip_span.h"
#endif

#include <QRectF>
#include <QSize>
#include <QString>

namespace withy::ui {

/// Bookings under one jar: those whose jars would lie on each other share one.
struct StripMark {
    std::vector<std::size_t> pins; ///< into StripFigures::pins; the chosen one first, else by day
    double x = 0;
    QRectF jar;
    bool chosen = false;
};

struct StripLabel {
    QString words; ///< empty: none
    QRectF box;
    Qt::Alignment side = Qt::AlignLeft;
};

/// Where everything of the strip stands, in pixels. Below a certain height it is slim: bands, today and a
/// line of words only.
struct StripGeometry {
    StripGeometry() = default;
    StripGeometry(const StripFigures& figures, const StripSpan& span, QSize size,
                  std::optional<Id<model::Booking>> chosen);

    [[nodiscard]] double x(double day) const { return plot.left() + (day - span.from) * dayWidth; }

    [[nodiscard]] double noon(int day) const { return x(day + 0.5); }

    [[nodiscard]] double dayOf(double x) const { return span.from + (x - plot.left()) / dayWidth; }

    [[nodiscard]] double y(double stems) const { return plot.bottom() - stems * stemHeight; }

    [[nodiscard]] bool isInView(double x) const { return x >= plot.left() && x <= plot.right(); }

    /// The mark at a point; the chosen one lies on top.
    [[nodiscard]] std::optional<std::size_t> markAt(QPointF at) const;
    /// Room for `needed` pixels of words in the first row: at the left if that will do, else the widest
    /// gap between the labels.
    [[nodiscard]] QRectF readoutBox(double needed) const;

    StripSpan span;
    bool slim = false;
    bool low = false; ///< whole, but with everything close together
    QRectF plot;
    double dayWidth = 1;
    double stemHeight = 0;
    double firstRow = 0; ///< middle of the row of words
    std::vector<StripMark> marks;
    StripLabel today;
    StripLabel chosen;

private:
    void setPlot(const StripFigures& figures, QSize size);
    void setMarks(const StripFigures& figures, std::optional<Id<model::Booking>> id);
    void setLabels(const StripFigures& figures);
};

/// Heights of the strip: slim, whole with everything close together, and whole in a view of this size.
int slimStripHeight();
int lowStripHeight();
int wholeStripHeight(QSize view);

/// The band under a point of the plot, as it is drawn there.
std::optional<std::size_t> bandAt(const StripFigures& figures, const StripGeometry& geometry, QPointF at);
/// Likely stems of a band between two noons, as it is drawn.
double stemsBetween(const StripBand& band, double day);

} // namespace withy::ui
