// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/share_group_view.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

int planSide() {
    return grid(16);
}

int countWidth() {
    return grid(24);
}

constexpr int mostDots = 80; ///< more are one patch of colour

} // namespace

ShareGroupView::ShareGroupView(ShareGroup group, QWidget* parent)
    : QWidget(parent), group_(std::move(group)) {
    setAccessibleName(group_.means);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

std::vector<ShareGroupView::Word> ShareGroupView::wordsFor(int width, double& bottom) const {
    const QFontMetricsF plain(typeFont(TypeRole::text));
    const QFontMetricsF strong(typeFont(TypeRole::strong));
    const double left = countWidth() + planSide() + grid(4);
    const double line = plain.height() + grid(1);
    std::vector<Word> all;
    double x = left;
    double y = grid(3);
    for (std::size_t i = 0; i < group_.parts.size(); ++i) {
        const auto& part = group_.parts[i];
        const QString words = whole(part.stems) + QLatin1Char(' ') + part.name +
                              (i + 1 < group_.parts.size() ? QStringLiteral(",") : QString());
        const double dot = plain.height() * 0.75;
        const double wide = dot + grid(1) + (part.varies ? strong : plain).horizontalAdvance(words) + grid(3);
        if (x > left && x + wide > width) {
            x = left;
            y += line;
        }
        all.push_back({QRectF(x, y, wide, plain.height()), words, part.varies});
        x += wide;
    }
    bottom = y + line;
    return all;
}

int ShareGroupView::heightForWidth(int width) const {
    double bottom = 0;
    (void)wordsFor(width, bottom);
    return std::max(static_cast<int>(std::ceil(bottom)), planSide()) + grid(3);
}

QSize ShareGroupView::sizeHint() const {
    return {grid(120), heightForWidth(grid(120))};
}

QSize ShareGroupView::minimumSizeHint() const {
    return {grid(70), heightForWidth(std::max(width(), grid(70)))};
}

/// Stems from above on a sunflower's spiral (Vogel 1979), so that any number sits evenly.
void ShareGroupView::paintPlan(QPainter& p, const QRectF& box) const {
    const Palette palette = currentPalette();
    p.setPen(QPen(palette.of(group_.odd ? Role::ink : Role::edge), group_.odd ? 2 : 1.3));
    p.setBrush(palette.of(Role::sheet));
    group_.odd ? p.drawRect(box) : p.drawEllipse(box);
    std::vector<QColor> dots;
    for (const auto& part : group_.parts)
        for (std::int64_t i = 0; i < part.stems && dots.size() < mostDots; ++i)
            dots.push_back(part.dot ? Palette::bloom(*part.dot) : palette.of(Role::edge));
    if (dots.empty()) return;
    const auto n = static_cast<double>(dots.size());
    const double reach = box.width() / 2 - grid(2);
    const double r = std::min(reach * 0.85 / std::sqrt(n), static_cast<double>(grid(1.5)));
    const double golden = std::numbers::pi * (3 - std::sqrt(5.0));
    for (std::size_t i = 0; i < dots.size(); ++i) {
        const double out = reach * std::sqrt((static_cast<double>(i) + 0.5) / n);
        const QPointF at = box.center() + QPointF(std::cos(static_cast<double>(i) * golden),
                                                  std::sin(static_cast<double>(i) * golden)) *
                                              out;
        p.setPen(QPen(palette.bloomEdge(dots[i]), 1));
        p.setBrush(dots[i]);
        p.drawEllipse(at, r, r);
    }
}

void ShareGroupView::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const Palette palette = currentPalette();
    p.setFont(typeFont(TypeRole::tally));
    p.setPen(palette.of(Role::ink));
    const QString count = whole(group_.pieces);
    const QRectF at(0, 0, countWidth(), height() - grid(1));
    const double wide = QFontMetricsF(p.font()).horizontalAdvance(count);
    p.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, count);
    p.setFont(typeFont(TypeRole::text));
    p.drawText(at.adjusted(wide + grid(1.5), grid(2), -grid(1), 0),
               Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, group_.noun); // "hand-tied / posy"
    paintPlan(p, QRectF(countWidth(), grid(1), planSide(), planSide()).adjusted(1, 1, -1, -1));
    double bottom = 0;
    const auto words = wordsFor(width(), bottom);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const double d = words[i].at.height() * 0.75;
        const auto& dot = group_.parts[i].dot;
        const QColor bloom = dot ? Palette::bloom(*dot) : palette.of(Role::edge);
        p.setPen(QPen(palette.bloomEdge(bloom), 1));
        p.setBrush(bloom);
        p.drawEllipse(QRectF(words[i].at.left(), words[i].at.center().y() - d / 2, d, d));
        p.setFont(typeFont(words[i].strong ? TypeRole::strong : TypeRole::text));
        p.setPen(palette.of(Role::ink));
        p.drawText(words[i].at.adjusted(d + grid(1), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                   words[i].words);
    }
    p.setPen(palette.of(Role::line));
    p.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace withy::ui
