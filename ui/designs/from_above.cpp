// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/from_above.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/logic/models/table_words.h"
#include "ui/paint/spacing.h"
#include "ui/paint/table_from_above.h"

#include <QPainter>

#include <algorithm>

namespace withy::ui {

FromAbove::FromAbove(Workbench& bench, QWidget* parent) : DrawnDesign(bench, nullptr, parent) {
    setObjectName(QStringLiteral("designs.fromAbove"));
}

QSize FromAbove::sizeHint() const {
    return {grid(110), grid(70)};
}

QSize FromAbove::minimumSizeHint() const {
    return {grid(70), grid(50)};
}

void FromAbove::redrawn() {
    if (!isThere()) return;
    const auto on = nextTableOf(bench().season(), *design(), bench().today());
    table_ = on.table;
    perTable_ = on.perTable;
    words_ = table_ ? onTableWords(*table_, perTable_, bench().season())
                    : offTableWords(acrossFromAbove(piece()), footFromAbove(piece()), bench().season());
    setAccessibleName(
        tr("%1 from above, to scale").arg(text(bench().season().designs.find(*design())->name)));
    setAccessibleDescription(words_);
}

void FromAbove::paintEvent(QPaintEvent*) {
    if (!isThere()) return;
    QPainter p(this);
    const auto& palette = currentPalette();
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    p.setPen(palette.of(Role::ink2));
    p.drawText(QRectF(grid(2), grid(1), width() - grid(4), metrics.height()), Qt::AlignLeft,
               metrics.elidedText(words_, Qt::ElideRight, width() - grid(4)));
    const QRectF area = QRectF(rect()).adjusted(grid(3), grid(3) + metrics.height(), -grid(3), -grid(2));
    if (area.width() < grid(5) || area.height() < grid(5)) return;
    // The piece is drawn beside the window's thread, once for all that stand on the table.
    p.setRenderHint(QPainter::SmoothPixmapTransform);
    p.translate(area.center());
    if (!table_) {
        const double k = std::min(area.width(), area.height()) / std::max(acrossFromAbove(piece()), 1.0);
        return paintPicture(p, picture(k, true), {}, k);
    }
    const auto top = tableTopOf(*table_);
    const packing::PlaceSetting setting;
    const QRectF mm = tableBoundsMm(top, false);
    const double k = std::min(area.width() / mm.width(), area.height() / mm.height());
    TablePlanLook look;
    look.palette = palette;
    paint(p, tableFromAbove(top, setting, k, look));
    const auto one = picture(k, true);
    for (const QPointF& at : piecePlaces(top, setting, perTable_, acrossFromAbove(piece())))
        paintPicture(p, one, at * k, k);
}

} // namespace withy::ui
