// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/base/zone.h"
#include "core/garden/sun.h"
#endif

#include <QWidget>

#include <optional>

namespace withy::ui {

/// The light of a year at one place: sunrise to sunset on the clock, with the days one cuts on below.
class LightChart : public QWidget {
    Q_OBJECT

public:
    explicit LightChart(QWidget* parent = nullptr);

    struct Place {
        garden::GeoPoint at;
        Zone zone = Zone::utc();
        Day first; ///< of the season
        Day last;
    };

    /// Nothing: a place is not known yet, and an empty year is drawn.
    void setPlace(const std::optional<Place>& place);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Sample {
        int day = 0; ///< of the year, from nought
        double rise = 0;
        double set = 0;
        bool allDay = false;
        bool allNight = false;
    };

    void paintLight(QPainter& p, const QRectF& box) const;
    void paintSeason(QPainter& p, const QRectF& box) const;
    void sayIt();

    std::optional<Place> place_;
    std::vector<Sample> samples_;
    int year_ = 2027;
};

} // namespace withy::ui
