// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/shelf_rows.h"
#endif

#include <QWidget>

namespace withy::ui {

/// What is free of one thing, day by day, as a stepped line: full at the top, short below the line.
class FreeGraph : public QWidget {
public:
    explicit FreeGraph(QWidget* parent = nullptr);
    void setGraph(const ShelfGraph& graph, std::optional<Day> today, const QString& inWords);
    /// Its days at its own foot, where no axis stands above it.
    void setDated(bool dated);

    /// Grows with the text.
    [[nodiscard]] QSize sizeHint() const override;

    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double xOf(Day day) const;

    ShelfGraph graph_;
    std::optional<Day> today_;
    bool dated_ = false;
};

/// The weeks above the graphs, today marked.
class FreeAxis : public QWidget {
public:
    explicit FreeAxis(QWidget* parent = nullptr);
    void setSpan(const ShelfSpan& span);

    [[nodiscard]] QSize sizeHint() const override;

    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ShelfSpan span_;
};

} // namespace withy::ui
