// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/row_marks.h"

#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

namespace withy::ui {

namespace {

void drawDot(QPainter& p, QRectF at, const std::optional<Colour>& colour) {
    const auto& palette = currentPalette();
    if (colour) {
        const QColor bloom = Palette::bloom(*colour);
        p.setBrush(bloom);
        p.setPen(QPen(palette.bloomEdge(bloom), hairline));
    } else {
        p.setPen(QPen(palette.of(Role::edge), hairline, Qt::DashLine));
    }
    p.drawEllipse(at);
}

/// Two threads with water between them, down the whole row.
void drawThread(QPainter& p, QRectF at) {
    const auto& palette = currentPalette();
    p.fillRect(at, palette.of(Role::water));
    p.setPen(QPen(palette.of(Role::waterEdge), iconLine));
    p.drawLine(at.topLeft(), at.bottomLeft());
    p.drawLine(at.topRight(), at.bottomRight());
}

} // namespace

RowMark::RowMark(QWidget* parent) : QWidget(parent) {
    onGrid(this, &QWidget::setFixedWidth, 5);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void RowMark::showRow(const SheetRow& row) {
    look_ = row.look;
    dotted_ = row.dotted;
    dot_ = row.dot;
    update();
}

void RowMark::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const double size = grid(3);
    const QRectF square(hairline, (height() - size) / 2, size, size);
    if (dotted_) drawDot(p, square, dot_);
    if (look_ == RowLook::waiting) drawThread(p, QRectF(size / 2 - grid(0.5), 0, grid(1), height()));
    const QColor ink = currentPalette().of(Role::ink);
    if (look_ == RowLook::step) p.fillRect(QRectF(0, grid(1.5), grid(1), height() - grid(3)), ink);
    if (look_ == RowLook::fixed) p.fillRect(QRectF(0, grid(1.5), grid(4), height() - grid(3)), ink);
}

BusyBack::BusyBack(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void BusyBack::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(currentPalette().of(Role::line), hairline));
    const int gap = grid(2);
    for (int x = -height(); x < width(); x += gap)
        p.drawLine(QPointF(x, height()), QPointF(x + height(), 0));
}

ShareBar::ShareBar(QWidget* parent) : QWidget(parent) {
    onGrid(this, &QWidget::setFixedHeight, 3.5);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setObjectName(QStringLiteral("stems.shares"));
}

void ShareBar::setShares(std::vector<StemShare> shares) {
    shares_ = std::move(shares);
    setAccessibleName(tr("Stems by plant: %1").arg(sharesInWords(shares_)));
    setVisible(!shares_.empty());
    update();
}

QRectF ShareBar::part(std::size_t i) const {
    double all = 0;
    double before = 0;
    for (std::size_t k = 0; k < shares_.size(); ++k) {
        all += static_cast<double>(shares_[k].stems);
        if (k < i) before += static_cast<double>(shares_[k].stems);
    }
    const double width = this->width() - 1.0;
    return {0.5 + width * before / all, 0.5, width * static_cast<double>(shares_[i].stems) / all,
            height() - 1.0};
}

void ShareBar::paintEvent(QPaintEvent*) {
    QPainter p(this);
    const auto& palette = currentPalette();
    for (std::size_t i = 0; i < shares_.size(); ++i) {
        const QRectF at = part(i);
        if (shares_[i].colour) {
            const QColor bloom = Palette::bloom(*shares_[i].colour);
            p.setBrush(bloom);
            p.setPen(QPen(palette.bloomEdge(bloom), hairline));
        } else {
            p.setBrush(Qt::NoBrush);
            p.setPen(QPen(palette.of(Role::edge), hairline, Qt::DashLine));
        }
        p.drawRect(at);
    }
}

bool ShareBar::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    for (std::size_t i = 0; i < shares_.size(); ++i)
        if (part(i).contains(help->pos()))
            QToolTip::showText(help->globalPos(), sharesInWords({shares_[i]}).toHtmlEscaped(), this);
    return true;
}

} // namespace withy::ui
