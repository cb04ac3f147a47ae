// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/strip/strip_geometry.h"

#include "ui/logic/models/strip_words.h"
#include "ui/paint/spacing.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr double mostHeadroom = 1.3; ///< of the likely stems, for the hopeful line

double topStems(const StripFigures& f) {
    const auto likely = static_cast<double>(f.most());
    double hopeful = likely;
    for (int d = f.today.value_or(f.days); d < f.days; ++d)
        hopeful = std::max(hopeful, static_cast<double>(f.sums[static_cast<std::size_t>(d)].hopeful));
    return std::max(1.0, std::min(hopeful, likely * mostHeadroom));
}

bool meet(const StripLabel& a, const StripLabel& b) {
    return !a.words.isEmpty() && !b.words.isEmpty() && a.box.left() < b.box.right() + grid(2) &&
           b.box.left() < a.box.right() + grid(2);
}

} // namespace

int slimStripHeight() {
    return grid(13);
}

int lowStripHeight() {
    return grid(21);
}

int wholeStripHeight(QSize view) {
    if (view.height() < grid(140)) return grid(24);
    if (view.width() < grid(252) || view.height() < grid(150)) return grid(31.5);
    return view.width() >= grid(327) && view.height() >= grid(200) ? grid(50) : grid(41);
}

StripGeometry::StripGeometry(const StripFigures& figures, const StripSpan& shown, QSize size,
                             std::optional<Id<model::Booking>> id)
    : span(shown) {
    setPlot(figures, size);
    if (!slim) setMarks(figures, id);
    setLabels(figures);
}

void StripGeometry::setPlot(const StripFigures& figures, QSize size) {
    slim = size.height() < lowStripHeight();
    low = !slim && size.height() < grid(28);
    const double top = slim ? grid(4.75) : low ? grid(9) : grid(15.5);
    const double foot = slim ? grid(1.5) : low ? grid(6) : grid(6.5);
    plot =
        QRectF(grid(4), top, std::max(1, size.width() - grid(9)), std::max(1.0, size.height() - top - foot));
    firstRow = slim || low ? grid(2.75) : grid(4.5);
    dayWidth = plot.width() / std::max(1.0, span.days);
    stemHeight = plot.height() / topStems(figures);
}

void StripGeometry::setMarks(const StripFigures& figures, std::optional<Id<model::Booking>> id) {
    std::optional<std::size_t> chosenPin;
    for (std::size_t i = 0; i < figures.pins.size(); ++i)
        if (figures.pins[i].booking == id) chosenPin = i;
    const double high = low ? grid(4) : grid(5.5);
    const double wide = low ? grid(3.75) : grid(5);
    const double foot = low ? grid(9.5) : grid(14);
    for (std::size_t i = 0; i < figures.pins.size(); ++i) {
        const double at = noon(figures.pins[i].day);
        if (i == chosenPin || !isInView(at)) continue;
        const bool shares = !marks.empty() && at - marks.back().x < grid(3.75);
        if (!shares) marks.push_back({{}, at, QRectF(at - wide / 2, foot - high, wide, high), false});
        marks.back().pins.push_back(i);
    }
    if (!chosenPin || !isInView(noon(figures.pins[*chosenPin].day))) return;
    const double at = noon(figures.pins[*chosenPin].day);
    // Those beside it step aside, their stems stay where they were.
    for (auto& m : marks) {
        const double off = m.x - at;
        if (std::abs(off) < grid(4.75)) m.jar.translate((off < 0 ? -1 : 1) * grid(4.75) - off, 0);
    }
    const QRectF jar = low ? QRectF(at - grid(2.5), grid(5), grid(5), grid(5))
                           : QRectF(at - grid(3.25), grid(5.5), grid(6.5), grid(9));
    StripMark big{{*chosenPin}, at, jar, true};
    marks.push_back(big);
}

void StripGeometry::setLabels(const StripFigures& figures) {
    QFont strong = typeFont(TypeRole::caption);
    strong.setBold(true);
    const QFontMetricsF metrics(strong);
    const auto place = [&](const QString& words, double edge, Qt::Alignment side) {
        const double wide = std::ceil(metrics.horizontalAdvance(words)) + 1;
        const double left = side == Qt::AlignRight ? edge - wide : edge;
        return StripLabel{words, QRectF(left, firstRow - grid(2.5), wide, grid(5)), side};
    };
    const auto fits = [&](const StripLabel& l) {
        return l.box.left() >= plot.left() && l.box.right() <= plot.right();
    };
    std::vector<StripLabel> todays{{}};
    if (figures.today && isInView(noon(*figures.today))) {
        const double at = noon(*figures.today);
        const bool brief = slim || low || plot.width() < grid(200);
        const QString words = todayWords(figures.dayAt(*figures.today), brief);
        todays = {place(words, at - grid(1.75), Qt::AlignRight),
                  place(words, at + grid(1.75), Qt::AlignLeft)};
    }
    std::vector<StripLabel> names{{}};
    if (!marks.empty() && marks.back().chosen) {
        const auto& mark = marks.back();
        const QString words =
            metrics.elidedText(figures.pins[mark.pins.front()].title, Qt::ElideRight, plot.width() / 4);
        names = {place(words, mark.x - grid(1), Qt::AlignLeft),
                 place(words, mark.x + grid(1), Qt::AlignRight)};
    }
    for (const auto& name : names) {
        for (const auto& day : todays) {
            const bool dayFits = day.words.isEmpty() || fits(day);
            if (!dayFits || (!name.words.isEmpty() && !fits(name)) || meet(day, name)) continue;
            today = day;
            chosen = name;
            return;
        }
    }
    today = todays.size() > 1 && !fits(todays.front()) ? todays.back() : todays.front();
}

std::optional<std::size_t> StripGeometry::markAt(QPointF at) const {
    for (auto i = marks.size(); i-- > 0;) {
        if (marks[i].jar.adjusted(0, -grid(1), 0, grid(1)).contains(at)) return i;
    }
    return std::nullopt;
}

QRectF StripGeometry::readoutBox(double needed) const {
    std::vector<QRectF> taken;
    for (const auto* label : {&today, &chosen})
        if (!label->words.isEmpty()) taken.push_back(label->box);
    std::sort(taken.begin(), taken.end(), [](const auto& a, const auto& b) { return a.left() < b.left(); });
    QRectF best;
    double from = plot.left();
    const auto look = [&](double to) {
        const QRectF gap(from, firstRow - grid(2.5), std::max(0.0, to - from), grid(5));
        const bool enough = best.width() >= needed;
        if (!enough && gap.width() > best.width()) best = gap;
    };
    for (const auto& box : taken) {
        look(box.left() - grid(4));
        from = std::max(from, box.right() + grid(4));
    }
    look(plot.right());
    return best;
}

double stemsBetween(const StripBand& band, double day) {
    const double at = day - 0.5;
    const double below = std::floor(at);
    const auto value = [&](double i) {
        return i < 0 || i >= static_cast<double>(band.days.size())
                   ? 0.0
                   : static_cast<double>(band.days[static_cast<std::size_t>(i)].likely);
    };
    return value(below) * (1 - (at - below)) + value(below + 1) * (at - below);
}

std::optional<std::size_t> bandAt(const StripFigures& figures, const StripGeometry& geometry, QPointF at) {
    if (!geometry.isInView(at.x()) || at.y() > geometry.plot.bottom()) return std::nullopt;
    const double day = geometry.dayOf(at.x());
    double stems = 0;
    for (std::size_t i = 0; i < figures.bands.size(); ++i) {
        const double more = stemsBetween(figures.bands[i], day);
        stems += more;
        if (more > 0 && geometry.y(stems) <= at.y()) return i;
    }
    return std::nullopt;
}

} // namespace withy::ui
