// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/colour_balance.h"

#include "ui/common/figure.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QGridLayout>
#include <QPainter>
#include <QPushButton>

#include <cmath>

namespace withy::ui {

namespace {

int barHeight() {
    return grid(6);
}

int barGap() {
    return grid(3);
}

int nameWidth() {
    return QFontMetrics(typeFont(TypeRole::caption)).horizontalAdvance(ColourBars::tr("wished")) + grid(3);
}

} // namespace

ColourBars::ColourBars(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ColourBars::setView(const ColourView& view) {
    view_ = view;
    setAccessibleName(view.wished ? tr("Colours wished and shown") : tr("Colours shown"));
    setAccessibleDescription(view.means);
    setToolTip(view.means);
    updateGeometry();
    update();
}

QSize ColourBars::sizeHint() const {
    return {grid(70), view_.wished ? 2 * barHeight() + barGap() + 1 : barHeight() + 1};
}

QSize ColourBars::minimumSizeHint() const {
    return {grid(30), sizeHint().height()};
}

std::vector<ColourBars::Part> ColourBars::parts(bool wished) const {
    double all = wished ? 0 : view_.other;
    for (const auto& band : view_.bands)
        all += wished ? band.wished.value_or(0) : band.shown;
    all = std::max(all, 100.0);
    std::vector<Part> out;
    double at = 0;
    for (const auto& band : view_.bands) {
        const double share = (wished ? band.wished.value_or(0) : band.shown) / all;
        out.push_back({at, at + share, &band});
        at += share;
    }
    if (!wished && view_.other > 0) out.push_back({at, at + view_.other / all, nullptr});
    return out;
}

void ColourBars::paintBar(QPainter& p, const QRectF& bar, bool wished) const {
    const auto& palette = currentPalette();
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    for (const auto& part : parts(wished)) {
        const QRectF box(bar.left() + part.from * bar.width(), bar.top(), (part.to - part.from) * bar.width(),
                         bar.height());
        if (box.width() < 0.5) continue;
        const QColor fill = part.band ? Palette::bloom(part.band->colour) : palette.of(Role::mist);
        p.setPen(QPen(part.band ? palette.bloomEdge(fill) : palette.of(Role::edge), hairline));
        p.setBrush(fill);
        p.drawRect(box);
        const double share =
            part.band ? (wished ? part.band->wished.value_or(0) : part.band->shown) : view_.other;
        const QString figure = tr("%1 %").arg(std::lround(share));
        const bool named = wished || !view_.wished;
        QString words = named && part.band ? tr("%1 %2").arg(part.band->name, figure) : figure;
        if (!part.band) words = tr("other %1").arg(figure);
        if (metrics.horizontalAdvance(words) + grid(3) > box.width()) words = figure;
        if (metrics.horizontalAdvance(words) + grid(2) > box.width()) continue;
        p.setPen(part.band ? Palette::textOn(fill) : palette.of(Role::ink2));
        p.drawText(box.adjusted(grid(1.5), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
    }
    if (wished) return;
    // What falls short is framed over its neighbours.
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(palette.of(Role::osier), 2));
    for (const auto& part : parts(false)) {
        if (!part.band || !part.band->asks) continue;
        const double w = std::max((part.to - part.from) * bar.width(), 3.0);
        p.drawRect(QRectF(bar.left() + part.from * bar.width(), bar.top(), w, bar.height()));
    }
}

void ColourBars::paintEvent(QPaintEvent*) {
    if (view_.empty()) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const double left = view_.wished ? nameWidth() : 0.5;
    const QRectF upper(left, 0.5, width() - left - 1.5, barHeight());
    if (!view_.wished) return paintBar(p, upper, false);
    const QRectF lower = upper.translated(0, barHeight() + barGap());
    p.setFont(typeFont(TypeRole::caption));
    p.setPen(palette.of(Role::ink2));
    p.drawText(QRectF(0, upper.top(), left, barHeight()), Qt::AlignLeft | Qt::AlignVCenter, tr("wished"));
    p.drawText(QRectF(0, lower.top(), left, barHeight()), Qt::AlignLeft | Qt::AlignVCenter, tr("shown"));
    const auto above = parts(true), below = parts(false);
    p.setPen(QPen(palette.of(Role::edge), hairline));
    for (std::size_t i = 0; i < above.size() && i < below.size(); ++i)
        p.drawLine(QPointF(upper.left() + above[i].to * upper.width(), upper.bottom()),
                   QPointF(lower.left() + below[i].to * lower.width(), lower.top()));
    paintBar(p, upper, true);
    paintBar(p, lower, false);
}

void ColourBars::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) updateGeometry();
}

ColourBalance::ColourBalance(const QString& id, QWidget* parent)
    : QWidget(parent)
    , id_(id)
    , title_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , bars_(new ColourBars)
    , figures_(new QWidget)
    , working_(new WorkingPanel)
    , words_(new TextLabel(TypeRole::text))
    , mend_(linkButton({})) {
    title_->setWordWrap(true);
    bars_->setObjectName(id + QStringLiteral(".colourBars"));
    words_->setObjectName(id + QStringLiteral(".colourWords"));
    words_->setWordWrap(true);
    mend_->setObjectName(id + QStringLiteral(".colourMend"));
    working_->hide();
    auto* cells = new QGridLayout(figures_);
    cells->setContentsMargins(0, 0, 0, 0);
    cells->setHorizontalSpacing(grid(3));
    cells->setVerticalSpacing(0);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    column->addWidget(title_);
    column->addWidget(bars_);
    column->addWidget(figures_);
    column->addWidget(working_);
    column->addWidget(words_);
    column->addWidget(mend_, 0, Qt::AlignLeft);
    connect(mend_, &QPushButton::clicked, this, [this] {
        if (view_.mend) Q_EMIT mendAsked(view_.mend->edit);
    });
}

void ColourBalance::setView(const ColourView& view) {
    view_ = view;
    setVisible(!view.empty() || !view.sentences.isEmpty());
    title_->setText(view.title);
    bars_->setVisible(!view.empty());
    bars_->setView(view);
    words_->setText(view.sentences.join(QLatin1Char('\n')));
    words_->setVisible(!view.sentences.isEmpty());
    mend_->setVisible(view.mend.has_value());
    if (view.mend) {
        mend_->setText(asTyped(view.mend->words));
        mend_->setToolTip(tr("Changes the design; undo puts it back"));
    }
    fillFigures();
}

void ColourBalance::fillFigures() {
    while (buttons_.size() < view_.bands.size()) {
        auto* button = new FigureButton(figures_); // shown before it has its place, never as a window
        const auto which = buttons_.size();
        button->setObjectName(QStringLiteral("%1.colour.%2").arg(id_).arg(which));
        connect(button, &FigureButton::opened, this, [this, which](bool on) { open(which, on); });
        buttons_.push_back(button);
        columns_ = 0;
    }
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        const bool there = i < view_.bands.size();
        buttons_[i]->setVisible(there);
        if (!there) continue;
        const auto& band = view_.bands[i];
        buttons_[i]->setFacts({tr("%1 %2 %").arg(band.name).arg(std::lround(band.shown)),
                               band.means,
                               band.working,
                               std::nullopt,
                               {},
                               {},
                               view_.units});
        if (buttons_[i]->isChecked()) working_->setFacts(buttons_[i]->facts());
    }
    arrange();
}

/// As many side by side as there is room for.
void ColourBalance::arrange() {
    int widest = grid(20);
    for (const auto* button : buttons_)
        widest = std::max(widest, button->sizeHint().width() + grid(3));
    const int columns = std::max(1, width() / widest);
    if (columns == columns_) return;
    columns_ = columns;
    auto* cells = static_cast<QGridLayout*>(figures_->layout());
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        const int at = static_cast<int>(i);
        cells->addWidget(buttons_[i], at / columns, at % columns, Qt::AlignLeft);
    }
    for (int c = 0; c <= columns; ++c)
        cells->setColumnStretch(c, 0);
    cells->setColumnStretch(columns, 1);
}

void ColourBalance::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void ColourBalance::open(std::size_t which, bool on) {
    if (on) {
        // One at a time: they share the room below the bars.
        for (std::size_t i = 0; i < buttons_.size(); ++i) {
            if (i != which) buttons_[i]->setChecked(false);
        }
        working_->setFacts(buttons_[which]->facts());
    }
    working_->setVisible(on);
}

} // namespace withy::ui
