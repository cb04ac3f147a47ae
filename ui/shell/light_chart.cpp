// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/light_chart.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr int daysShown = 365;

QString clockWords(double hours) {
    return clockOf(static_cast<int>(std::lround(hours * 60)));
}

double dayX(const QRectF& box, int day) {
    return box.left() + box.width() * day / daysShown;
}

double hourY(const QRectF& box, double hours) {
    return box.top() + box.height() * std::clamp(hours, 0.0, 24.0) / 24;
}

} // namespace

LightChart::LightChart(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    sayIt();
}

QSize LightChart::sizeHint() const {
    return {grid(150), grid(76)};
}

QSize LightChart::minimumSizeHint() const {
    return {grid(70), grid(76)};
}

void LightChart::setPlace(const std::optional<Place>& place) {
    place_ = place;
    samples_.clear();
    if (place_) {
        year_ = place_->last.year();
        const Day newYear = *Day::fromYmd(year_, 1, 1);
        for (int day = 0; day < daysShown; ++day) {
            const auto sun = garden::sunOn(newYear + day, place_->at);
            if (!sun.ok()) continue;
            Sample s;
            s.day = day;
            s.allDay = sun->status == garden::SunStatus::allDay;
            s.allNight = sun->status == garden::SunStatus::allNight;
            s.rise = sun->rise ? garden::clockHours(place_->zone, newYear + day, *sun->rise)
                               : (s.allNight ? 12 : 0);
            s.set = sun->set ? garden::clockHours(place_->zone, newYear + day, *sun->set)
                             : (s.allNight ? 12 : 24);
            samples_.push_back(s);
        }
    }
    sayIt();
    update();
}

void LightChart::sayIt() {
    if (samples_.empty()) return setAccessibleName(tr("The light of the year: no place yet"));
    const auto longest =
        *std::max_element(samples_.begin(), samples_.end(),
                          [](const auto& a, const auto& b) { return a.set - a.rise < b.set - b.rise; });
    const Day day = *Day::fromYmd(year_, 1, 1) + longest.day;
    setAccessibleName(longest.allDay
                          ? tr("The light of the year: about %1 the sun does not set").arg(shortDay(day))
                          : tr("The light of the year: the longest day is %1, sunrise %2, sunset %3")
                                .arg(shortDay(day), clockWords(longest.rise), clockWords(longest.set)));
}

void LightChart::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setFont(typeFont(TypeRole::caption));
    const auto& palette = currentPalette();
    const QRectF box(grid(10), grid(1), width() - grid(11), height() - grid(18));
    p.fillRect(box, palette.of(Role::night));
    if (!samples_.empty()) {
        paintLight(p, box);
    } else {
        p.setFont(typeFont(TypeRole::text));
        p.setPen(palette.of(Role::ink2));
        p.drawText(box.adjusted(grid(4), 0, -grid(4), 0), Qt::AlignCenter | Qt::TextWordWrap,
                   tr("Type a county or region, and the light of its year stands here."));
        p.setFont(typeFont(TypeRole::caption));
    }
    p.setPen(QPen(palette.of(Role::edge), hairline));
    p.drawLine(box.bottomLeft(), box.bottomRight());
    p.setPen(palette.of(Role::ink3));
    for (int hour = 6; hour <= 18; hour += 6)
        p.drawText(QRectF(0, hourY(box, hour) - grid(2.5), grid(9), grid(5)),
                   Qt::AlignRight | Qt::AlignVCenter,
                   QStringLiteral("%1:00").arg(hour, 2, 10, QLatin1Char('0')));
    for (int month = 1; month <= 12; ++month) {
        const int day = Day::fromYmd(year_, month, 1)->dayOfYear() - 1;
        p.drawText(QRectF(dayX(box, day), box.bottom() + grid(0.5), box.width() / 12, grid(5)),
                   Qt::AlignCenter, QLocale().standaloneMonthName(month, QLocale::ShortFormat));
    }
    if (place_) paintSeason(p, box);
}

void LightChart::paintLight(QPainter& p, const QRectF& box) const {
    const auto& palette = currentPalette();
    QPolygonF day;
    for (const auto& s : samples_)
        day << QPointF(dayX(box, s.day), hourY(box, s.rise));
    for (auto s = samples_.rbegin(); s != samples_.rend(); ++s)
        day << QPointF(dayX(box, s->day), hourY(box, s->set));
    p.setPen(QPen(palette.of(Role::ink3), hairline));
    p.setBrush(palette.of(Role::sheet));
    p.drawPolygon(day);
    const auto longest =
        *std::max_element(samples_.begin(), samples_.end(),
                          [](const auto& a, const auto& b) { return a.set - a.rise < b.set - b.rise; });
    p.setPen(palette.of(Role::ink));
    if (longest.allDay) {
        p.drawText(box, Qt::AlignCenter, tr("about the longest day the sun does not set"));
        return;
    }
    p.setBrush(palette.of(Role::ink));
    const auto mark = [&](double hours, const QString& words, bool below) {
        const QPointF at(dayX(box, longest.day), hourY(box, hours));
        p.drawEllipse(at, grid(0.8), grid(0.8));
        const double wide = grid(60);
        const double left = std::clamp(at.x() - wide / 2, box.left(), box.right() - wide);
        p.drawText(QRectF(left, below ? at.y() + grid(1) : at.y() - grid(6), wide, grid(5)), Qt::AlignCenter,
                   words);
    };
    const Day date = *Day::fromYmd(year_, 1, 1) + longest.day;
    mark(longest.rise, tr("sunrise %1, %2").arg(clockWords(longest.rise), shortDay(date)), true);
    mark(longest.set, tr("sunset %1").arg(clockWords(longest.set)), false);
}

void LightChart::paintSeason(QPainter& p, const QRectF& box) const {
    const auto& palette = currentPalette();
    const Day newYear = *Day::fromYmd(year_, 1, 1);
    const double from = dayX(box, std::clamp(place_->first - newYear, 0, daysShown));
    const double to = dayX(box, std::clamp(place_->last - newYear, 0, daysShown));
    const double y = box.bottom() + grid(7);
    p.setPen(QPen(palette.of(Role::ink), jarLine));
    p.drawLine(QPointF(from, y), QPointF(to, y));
    for (const double x : {from, to})
        p.drawLine(QPointF(x, y), QPointF(x, y - grid(1.5)));
    p.setFont(typeFont(TypeRole::strong));
    const int weeks = (place_->last - place_->first + 1) / 7;
    p.drawText(QRectF(box.left(), y + grid(1), box.width(), grid(7)), Qt::AlignHCenter | Qt::AlignTop,
               tr("you cut for %n week(s)", nullptr, weeks));
}

} // namespace withy::ui
