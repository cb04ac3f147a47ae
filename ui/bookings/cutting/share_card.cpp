// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/share_card.h"

#include "ui/common/style.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr int cardWords = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

int cardPad() {
    return grid(3);
}

int cardMark() {
    return grid(5);
}

} // namespace

ShareCard::ShareCard(const ShareChoice& choice, QWidget* parent) : QRadioButton(parent), choice_(choice) {
    setObjectName(QStringLiteral("share.way.%1").arg(choice.way));
    setAccessibleName(choice.head);
    setAccessibleDescription(
        QStringList{choice.effect, choice.figure, choice.figureNote, choice.kept}.join(QLatin1Char(' ')));
    setToolTip(choice.kept);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setCursor(Qt::PointingHandCursor);
}

ShareCard::Rects ShareCard::rectsFor(int width) const {
    const QFontMetrics head(typeFont(TypeRole::strong));
    const QFontMetrics text(typeFont(TypeRole::text));
    const QFontMetrics strong(typeFont(TypeRole::strong));
    const int left = cardPad() + cardMark() + grid(2);
    const int whole = std::max(width - left - cardPad(), grid(20));
    const int figures =
        std::max(strong.horizontalAdvance(choice_.figure), text.horizontalAdvance(choice_.figureNote)) +
        grid(1);
    const bool beside = whole - figures > grid(50); // else the figures go below
    const int room = beside ? whole - figures - grid(3) : whole;
    Rects r;
    r.head = head.boundingRect(QRect(left, cardPad(), room, 10000), cardWords, choice_.head);
    r.head.setWidth(room);
    r.effect =
        text.boundingRect(QRect(left, r.head.bottom() + grid(1), room, 10000), cardWords, choice_.effect);
    r.effect.setWidth(room);
    const int x = beside ? width - cardPad() - figures : left;
    const int y = beside ? cardPad() : r.effect.bottom() + grid(1);
    r.figure = QRect(x, y, beside ? figures : whole, strong.height());
    r.note = QRect(x, r.figure.bottom() + grid(0.5), r.figure.width(), text.height());
    r.height = std::max({r.effect.bottom(), r.note.bottom()}) + cardPad();
    return r;
}

int ShareCard::heightForWidth(int width) const {
    return std::max(rectsFor(width).height, grid(16));
}

QSize ShareCard::sizeHint() const {
    return {grid(120), heightForWidth(grid(120))};
}

QSize ShareCard::minimumSizeHint() const {
    return {grid(60), heightForWidth(std::max(width(), grid(60)))};
}

void ShareCard::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const Palette palette = currentPalette();
    const double line = isChecked() ? 2 : 1;
    const QRectF box = QRectF(rect()).adjusted(line / 2 + 2, line / 2 + 2, -line / 2 - 2, -line / 2 - 2);
    p.setPen(QPen(palette.of(isChecked() ? Role::green : Role::edge), line));
    p.setBrush(palette.of(underMouse() && !isChecked() ? Role::wash : Role::sheet));
    p.drawRoundedRect(box, corner, corner);
    if (hasFocus()) {
        p.setBrush(Qt::NoBrush);
        p.setPen(QPen(palette.of(Role::green), focusRing));
        p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), corner, corner);
    }
    const Rects r = rectsFor(width());
    const double d = cardMark() - 2;
    const QRectF mark(cardPad() + 1, r.head.top() + 1, d, d);
    p.setPen(QPen(palette.of(isChecked() ? Role::green : Role::edge), 1.7));
    p.setBrush(Qt::NoBrush);
    p.drawEllipse(mark);
    if (isChecked()) {
        p.setPen(Qt::NoPen);
        p.setBrush(palette.of(Role::green));
        p.drawEllipse(mark.adjusted(d / 4, d / 4, -d / 4, -d / 4));
    }
    const auto write = [&](const QRect& at, TypeRole type, Role role, int flags, const QString& words) {
        p.setFont(typeFont(type));
        p.setPen(palette.of(role));
        p.drawText(at, flags, words);
    };
    const bool beside = r.figure.top() <= r.head.top();
    const int flags = (beside ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
    write(r.head, TypeRole::strong, Role::ink, cardWords, choice_.head);
    write(r.effect, TypeRole::text, choice_.tooLate ? Role::osier : Role::ink2, cardWords, choice_.effect);
    write(r.figure, TypeRole::strong, Role::ink, flags, choice_.figure);
    write(r.note, TypeRole::text, Role::ink2, flags, choice_.figureNote);
}

void ShareCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter)
        return QRadioButton::keyPressEvent(event);
    setChecked(true);
    Q_EMIT taken();
}

} // namespace withy::ui
