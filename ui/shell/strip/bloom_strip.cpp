// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/strip/bloom_strip.h"

#include "ui/common/first_picture.h"
#include "ui/common/style.h"
#include "ui/common/when_seen.h"
#include "ui/logic/models/strip_words.h"
#include "ui/paint/spacing.h"
#include "ui/shell/strip/strip_painter.h"

#include <QEvent>
#include <QPainter>
#include <QPainterPath>
#include <QTimer>

#include <algorithm>
#include <cmath>

namespace withy::ui {

BloomStrip::BloomStrip(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    setObjectName(QStringLiteral("strip"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    setAccessibleDescription(
        tr("Left and right read day by day, up and down plant by plant, Page Up and Page Down booking by "
           "booking. Enter leads there. Plus and minus zoom, Home shows the whole season."));
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    // After what else a plan changes has been shown: a picture of its own takes some milliseconds.
    auto* later = new QTimer(this);
    later->setSingleShot(true);
    connect(later, &QTimer::timeout, seen, [seen] { seen->ask(); });
    connect(&bench_, &Workbench::planned, later, [later] { later->start(0); });
    new FirstPicture(this, [this] { refresh(); });
}

void BloomStrip::refresh() {
    const bool wasAll = figures_.days == 0 || span_ == StripSpan{0, static_cast<double>(figures_.days)};
    const Day from = figures_.first;
    const auto plantRead = reading_.band ? std::optional(figures_.bands[*reading_.band].plant) : std::nullopt;
    auto figures = stripFigures(bench_.season(), bench_.plan(), bench_.today());
    // Most edits move no stem in the garden, and a strip is not drawn anew for nothing.
    if (!design_ && figures.known && !picture_.isNull() && figures == figures_) return;
    figures_ = std::move(figures);
    bands_ = bloomBands(figures_, currentPalette());
    emptyWords_ = stripEmptyWords(bench_.season(), figures_);
    // The same days stay in view when the season grows at its ends.
    span_ = wasAll ? StripSpan{0, static_cast<double>(figures_.days)}
                   : within({span_.from + (from - figures_.first), span_.days}, figures_.days);
    keepReading(std::exchange(reading_, {}), from, plantRead);
    holdDesign();
    layOut();
}

/// What was read stays read through a new plan, as long as its day and band are still there.
void BloomStrip::keepReading(const Reading& was, Day wasFrom, std::optional<Id<model::Plant>> plant) {
    if (!was.day) return;
    const int day = *was.day + (wasFrom - figures_.first);
    if (day < 0 || day >= figures_.days) return;
    reading_.day = day;
    for (std::size_t i = 0; plant && i < figures_.bands.size(); ++i)
        if (figures_.bands[i].plant == *plant) reading_.band = i;
}

void BloomStrip::layOut() {
    geometry_ = StripGeometry(figures_, span_, size(), chosen_);
    picture_ = {};
    sayIt();
    update();
}

void BloomStrip::setWhole(bool whole) {
    if (std::exchange(whole_, whole) != whole) updateGeometry();
}

void BloomStrip::setRoom(QSize view) {
    if (std::exchange(room_, view) != view) updateGeometry();
}

void BloomStrip::setChosen(std::optional<Id<model::Booking>> booking) {
    if (std::exchange(chosen_, booking) != booking) layOut();
}

void BloomStrip::setDesign(std::optional<Id<model::Design>> design) {
    if (std::exchange(design_, design) == design) return;
    holdDesign();
    layOut();
}

void BloomStrip::holdDesign() {
    held_ = design_ ? stripDesign(bench_.season(), bench_.plan(), figures_, *design_) : StripDesign();
}

QSize BloomStrip::sizeHint() const {
    return {grid(200), whole_ ? wholeStripHeight(room_) : slimStripHeight()};
}

QSize BloomStrip::minimumSizeHint() const {
    return {grid(60), whole_ ? lowStripHeight() : slimStripHeight()};
}

void BloomStrip::setSpan(const StripSpan& span) {
    if (span == span_) return;
    span_ = span;
    layOut();
}

void BloomStrip::read(Reading reading) {
    if (reading == reading_) return;
    if (reading.band != reading_.band) picture_ = {};
    reading_ = std::move(reading);
    sayIt();
    update();
}

QString BloomStrip::readout() const {
    if (!emptyWords_.isEmpty() && reading_.pins.empty()) return emptyWords_;
    if (design_ && reading_ == Reading{}) {
        const QString held = stripDesignWords(bench_.season(), figures_, *design_, held_);
        if (!held.isEmpty()) return held;
    }
    return (reading_.pins.empty() ? stripReadout(figures_, reading_.day, reading_.band)
                                  : pinReadout(figures_, reading_.pins))
        .whole();
}

void BloomStrip::sayIt() {
    const QString said = readout();
    const QString name = said.isEmpty() ? tr("Bloom strip") : tr("Bloom strip. %1").arg(said);
    if (name != accessibleName()) setAccessibleName(name);
}

void BloomStrip::paintEvent(QPaintEvent*) {
    const auto& palette = currentPalette();
    if (figures_.days == 0) return QPainter(this).fillRect(rect(), palette.of(Role::paper));
    if (picture_.isNull())
        picture_ = StripPicture{figures_, geometry_, bands_, reading_.band, held_}.paint(
            size(), devicePixelRatioF(), palette);
    QPainter p(this);
    p.drawPixmap(0, 0, picture_);
    p.setRenderHint(QPainter::Antialiasing);
    paintReading(p);
    if (emptyWords_.isEmpty() || !reading_.pins.empty())
        paintReadout(p);
    else
        paintEmpty(p);
    p.setPen(QPen(palette.of(Role::line), hairline));
    p.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
    if (!hasFocus() || !ringed_) return;
    p.setPen(QPen(palette.of(Role::green), focusRing));
    p.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -3), corner, corner);
}

/// The line of the day, and the band's own stretch of it between two strokes.
void BloomStrip::paintReading(QPainter& p) const {
    if (!reading_.day || figures_.bands.empty()) return;
    const auto& g = geometry_;
    const double at = g.noon(*reading_.day);
    if (!g.isInView(at)) return;
    p.setPen(QPen(currentPalette().of(Role::ink), hairline));
    p.drawLine(QPointF(at, g.plot.top() - grid(g.slim ? 0 : 2)), QPointF(at, g.plot.bottom()));
    if (!reading_.band) return;
    double foot = 0;
    for (std::size_t i = 0; i < *reading_.band; ++i)
        foot += stemsBetween(figures_.bands[i], *reading_.day + 0.5);
    const double top = foot + stemsBetween(figures_.bands[*reading_.band], *reading_.day + 0.5);
    p.setPen(QPen(currentPalette().of(Role::ink), 1.8));
    for (const double y : {g.y(foot), g.y(top)})
        p.drawLine(QPointF(at - grid(1.25), y), QPointF(at + grid(1.25), y));
}

void BloomStrip::paintReadout(QPainter& p) const {
    auto said = reading_.pins.empty() ? stripReadout(figures_, reading_.day, reading_.band)
                                      : pinReadout(figures_, reading_.pins);
    if (design_ && reading_ == Reading{}) {
        const QString held = stripDesignWords(bench_.season(), figures_, *design_, held_);
        if (!held.isEmpty()) said = {held, {}};
    }
    if (said.strong.isEmpty()) return;
    const bool idle = reading_ == Reading{} && figures_.today && !geometry_.slim;
    QFont strong = typeFont(TypeRole::caption);
    strong.setBold(true);
    const QFontMetricsF strongMetrics(strong);
    const QFontMetricsF metrics(typeFont(TypeRole::caption));
    const double strongWidth = strongMetrics.horizontalAdvance(said.strong);
    QString rest = said.rest.isEmpty() ? QString() : QStringLiteral(", ") + said.rest;
    // Where it is too long its last clauses go, not the half of a word.
    const double most = geometry_.readoutBox(1e6).width() - strongWidth;
    while (rest.contains(QLatin1String(", ")) && metrics.horizontalAdvance(rest) + 1 > most)
        rest.truncate(rest.lastIndexOf(QLatin1String(", ")));
    const QString more = idle ? rest + QStringLiteral("   ·   ") + stripLegend() : rest;
    const double need = std::ceil(strongWidth + metrics.horizontalAdvance(rest)) + 1;
    const QRectF box = geometry_.readoutBox(need);
    p.setFont(strong);
    p.setPen(currentPalette().of(Role::ink));
    p.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
               strongMetrics.elidedText(said.strong, Qt::ElideRight, box.width()));
    const double left = box.width() - strongWidth;
    if (left < metrics.horizontalAdvance(QStringLiteral(", …"))) return;
    const bool legendFits = metrics.horizontalAdvance(more) + 1 <= left;
    p.setFont(typeFont(TypeRole::caption));
    p.setPen(currentPalette().of(Role::ink2));
    p.drawText(box.adjusted(strongWidth, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
               legendFits ? more : metrics.elidedText(rest, Qt::ElideRight, left));
}

void BloomStrip::paintEmpty(QPainter& p) const {
    const QFont font = typeFont(geometry_.slim ? TypeRole::caption : TypeRole::text);
    p.setFont(font);
    p.setPen(currentPalette().of(Role::ink2));
    const QFontMetricsF metrics(font);
    if (geometry_.slim) {
        const QRectF box = geometry_.readoutBox(metrics.horizontalAdvance(emptyWords_) + 1);
        p.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(emptyWords_, Qt::ElideRight, box.width()));
        return;
    }
    p.drawText(geometry_.plot, Qt::AlignCenter | Qt::TextWordWrap, emptyWords_);
}

void BloomStrip::resizeEvent(QResizeEvent*) {
    layOut();
}

void BloomStrip::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::PaletteChange &&
        event->type() != QEvent::FontChange)
        return;
    bands_ = bloomBands(figures_, currentPalette());
    layOut();
    updateGeometry();
}

} // namespace withy::ui
