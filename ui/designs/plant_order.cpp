// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/plant_order.h"

#include "ui/common/when_seen.h"
#include "ui/designs/bloom_dot.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/palette.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>
#include <QTimer>

namespace withy::ui {

namespace {

QIcon dotIcon(const model::Plant& p) {
    QPixmap pixmap(grid(4), grid(4));
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paintDot(painter, pixmap.rect(), p.colour1 ? Palette::bloom(*p.colour1) : QColor());
    return QIcon(pixmap);
}

} // namespace

PlantOrder::PlantOrder(Workbench& bench, QWidget* parent) : QListWidget(parent), bench_(bench) {
    setObjectName(QStringLiteral("designs.slot.plants"));
    setAccessibleName(tr("Plants for this slot, best first"));
    setToolTip(tr("Drag them, or Alt+Up and Alt+Down; Delete takes one off"));
    setDragDropMode(InternalMove);
    setDefaultDropAction(Qt::MoveAction);
    setSelectionMode(SingleSelection);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setTextElideMode(Qt::ElideRight);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
}

void PlantOrder::showSlot(Id<model::Slot> slot) {
    slot_ = slot;
    refresh();
}

QSize PlantOrder::sizeHint() const {
    const int rows = std::max(count(), 1);
    const int row = count() > 0 ? sizeHintForRow(0) : fontMetrics().height() + grid(2);
    return {grid(40), rows * row + 2 * frameWidth() + 2};
}

void PlantOrder::refresh() {
    const qint64 chosen = currentItem() ? currentItem()->data(Qt::UserRole).toLongLong() : 0;
    const auto& season = bench_.season();
    QSignalBlocker quiet(this);
    clear();
    for (const auto* choice : edits::plantsOf(season, slot_)) {
        const auto* p = season.plants.find(choice->plant);
        if (!p) continue;
        const QString length = stemLengthWords(*p, season);
        auto* item = new QListWidgetItem(
            dotIcon(*p), length.isEmpty() ? text(p->name) : tr("%1,  %2").arg(text(p->name), length));
        item->setData(Qt::UserRole, QVariant::fromValue<qlonglong>(choice->id.value));
        item->setData(Qt::AccessibleTextRole,
                      tr("%1, choice %2").arg(text(p->name), QString::number(count() + 1)));
        addItem(item);
        if (choice->id.value == chosen) setCurrentItem(item);
    }
    updateGeometry();
}

void PlantOrder::keepOrder() {
    std::vector<Id<model::SlotPlant>> order;
    for (int i = 0; i < count(); ++i)
        order.emplace_back(item(i)->data(Qt::UserRole).toLongLong());
    if (!bench_.take(edits::orderSlotPlants(bench_.season(), slot_, order))) refresh();
}

void PlantOrder::moveChosen(int by) {
    const int from = currentRow(), to = from + by;
    if (from < 0 || to < 0 || to >= count()) return;
    QSignalBlocker quiet(this);
    insertItem(to, takeItem(from));
    setCurrentRow(to);
    keepOrder();
}

void PlantOrder::dropEvent(QDropEvent* event) {
    QListWidget::dropEvent(event);
    // The list finishes its own move first.
    QTimer::singleShot(0, this, &PlantOrder::keepOrder);
}

void PlantOrder::keyPressEvent(QKeyEvent* event) {
    const bool alt = event->modifiers() & Qt::AltModifier;
    if (alt && event->key() == Qt::Key_Up) return moveChosen(-1);
    if (alt && event->key() == Qt::Key_Down) return moveChosen(1);
    if (event->key() == Qt::Key_Delete && currentItem()) {
        bench_.take(edits::eraseSlotPlant(
            bench_.season(), Id<model::SlotPlant>(currentItem()->data(Qt::UserRole).toLongLong())));
        return;
    }
    QListWidget::keyPressEvent(event);
}

} // namespace withy::ui
