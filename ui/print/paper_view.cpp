// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_view.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace withy::ui {

class PaperView::Sheets : public QWidget {
public:
    std::shared_ptr<const SetPaper> set;
    bool dimmed = false;
    double scale = 1; ///< screen pixels a millimetre

    [[nodiscard]] QSizeF sheetSize() const { return set ? paper::sheetOf(set->layout) * scale : QSizeF(); }

    [[nodiscard]] int count() const { return set ? static_cast<int>(set->pages.size()) : 0; }

    [[nodiscard]] double stride() const { return sheetSize().height() + grid(4); }

    void fit() {
        if (!set) {
            resize(1, 1);
            return;
        }
        resize(static_cast<int>(sheetSize().width()) + 2 * grid(2),
               static_cast<int>(stride() * count()) + grid(2));
        update();
    }

protected:
    void paintEvent(QPaintEvent* event) override {
        if (!set) return;
        QPainter p(this);
        p.setRenderHint(QPainter::SmoothPixmapTransform);
        for (int i = 0; i < count(); ++i) {
            const QRectF at(QPointF(grid(2), grid(2) + stride() * i), sheetSize());
            if (!at.intersects(event->rect())) continue;
            p.setOpacity(1);
            p.fillRect(at, Qt::white);
            p.setOpacity(dimmed ? 0.45 : 1);
            p.drawImage(at, set->pages[static_cast<std::size_t>(i)]);
            p.setOpacity(1);
            p.setPen(QPen(currentPalette().of(Role::edge), hairline));
            p.drawRect(at);
        }
    }
};

PaperView::PaperView(QWidget* parent) : QScrollArea(parent), sheets_(new Sheets) {
    setObjectName(QStringLiteral("paper.preview"));
    setWidget(sheets_);
    setAlignment(Qt::AlignHCenter);
    setFocusPolicy(Qt::StrongFocus);
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &PaperView::tell);
}

bool PaperView::isDimmed() const {
    return sheets_->dimmed;
}

void PaperView::setDimmed(bool dimmed) {
    if (sheets_->dimmed == dimmed) return;
    sheets_->dimmed = dimmed;
    sheets_->update();
}

void PaperView::setPaper(std::shared_ptr<const SetPaper> set) {
    const double at =
        sheets_->height() > 0 ? static_cast<double>(verticalScrollBar()->value()) / sheets_->height() : 0;
    const bool same = set && sheets_->set && set->document.name == sheets_->set->document.name &&
                      set->document.kind == sheets_->set->document.kind;
    sheets_->set = std::move(set);
    sheets_->dimmed = false;
    if (sheets_->set)
        sheets_->scale =
            dotsPerMm(sheets_->set->layout.paper, sheets_->set->layout.landscape) / devicePixelRatioF();
    sheets_->fit();
    verticalScrollBar()->setValue(same ? static_cast<int>(at * sheets_->height()) : 0);
    tell();
}

int PaperView::pages() const {
    return sheets_->count();
}

int PaperView::page() const {
    if (pages() == 0) return 0;
    const double middle = verticalScrollBar()->value() + viewport()->height() / 2.0;
    return std::clamp(static_cast<int>(middle / sheets_->stride()) + 1, 1, pages());
}

void PaperView::goTo(int page) {
    verticalScrollBar()->setValue(static_cast<int>(sheets_->stride() * (page - 1)));
}

void PaperView::tell() {
    if (sheets_->set) {
        setAccessibleName(
            tr("%1, page %2 of %3").arg(text(sheets_->set->document.kind)).arg(page()).arg(pages()));
        setAccessibleDescription(sheets_->set->words.join(QLatin1Char('\n')));
    } else {
        setAccessibleName(tr("No paper"));
        setAccessibleDescription({});
    }
    Q_EMIT pageChanged(page(), pages());
}

double PaperView::dotsPerMm(paper::PaperSize size, bool landscape) const {
    const QSizeF mm = landscape ? paper::sizeOf(size).transposed() : paper::sizeOf(size);
    const double air = 2 * grid(2) + 2;
    const QSizeF room(maximumViewportSize());
    // The bar is reckoned with, so that a page more does not make the others narrower.
    const double wide = (room.width() - air - verticalScrollBar()->sizeHint().width()) / mm.width();
    const double high = (room.height() - air) / mm.height();
    double scale = wide;
    if (zoom_ == Zoom::page) scale = std::min(wide, high);
    if (zoom_ == Zoom::full) scale = logicalDpiX() / 25.4;
    return std::clamp(scale, 0.5, 24.0) * devicePixelRatioF();
}

void PaperView::setZoom(Zoom zoom) {
    if (zoom == zoom_) return;
    zoom_ = zoom;
    Q_EMIT scaleChanged();
}

void PaperView::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (!sheets_->set) return;
    const double now =
        dotsPerMm(sheets_->set->layout.paper, sheets_->set->layout.landscape) / devicePixelRatioF();
    if (std::abs(now - sheets_->scale) < 1e-6) return;
    sheets_->scale = now; // the old picture, stretched, until the new one is there
    sheets_->fit();
    Q_EMIT scaleChanged();
}

void PaperView::keyPressEvent(QKeyEvent* event) {
    const auto go = [&](int to) { goTo(std::clamp(to, 1, std::max(1, pages()))); };
    switch (event->key()) {
    case Qt::Key_PageDown:
        return go(page() + 1);
    case Qt::Key_PageUp:
        return go(page() - 1);
    case Qt::Key_Home:
        return go(1);
    case Qt::Key_End:
        return go(pages());
    default:
        QScrollArea::keyPressEvent(event);
    }
}

} // namespace withy::ui
