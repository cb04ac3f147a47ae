// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/catalogue_field.h"

#include "ui/logic/garden_words.h"
#include "ui/logic/plant_catalogue.h"
#include "ui/paint/spacing.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QStandardItemModel>
#include <QThreadPool>
#include <QTimer>

namespace withy::ui {

namespace {

constexpr int plantRole = Qt::UserRole + 1; ///< the id in the catalogue; 0: one of the grower's own
constexpr int nameRole = Qt::UserRole + 2;

} // namespace

CatalogueField::CatalogueField(Workbench& bench, QWidget* parent)
    : QLineEdit(parent)
    , bench_(bench)
    , offers_(new QStandardItemModel(this))
    , completer_(new QCompleter(offers_, this)) {
    setObjectName(QStringLiteral("garden.plants.catalogue"));
    setAccessibleName(tr("Add a plant: type its name"));
    setPlaceholderText(tr("Add a plant: type its name"));
    setMinimumWidth(grid(62));
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->setWidget(this);
    completer_->popup()->setProperty("look", QStringLiteral("popup"));
    completer_->popup()->setAccessibleName(tr("Plants of the catalogue"));
    connect(this, &QLineEdit::textEdited, this, &CatalogueField::offer);
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& shown) { choose(shown); });
    connect(this, &QLineEdit::returnPressed, this, [this] {
        if (offers_->rowCount() == 0 || text().trimmed().isEmpty()) return;
        const auto* popup = completer_->popup();
        const QModelIndex pointedAt = popup->isVisible() ? popup->currentIndex() : QModelIndex();
        choose(pointedAt.isValid() ? pointedAt : offers_->index(0, 0));
    });
}

void CatalogueField::offer(const QString& typed) {
    offers_->clear();
    const QString name = typed.simplified();
    if (name.isEmpty()) {
        completer_->popup()->hide();
        return;
    }
    for (const auto& o : catalogueOffers(bench_.season(), name)) {
        auto* item = new QStandardItem(tr("%1 (%2)").arg(o.name, offerWords(o.facts, o.cautions)));
        item->setData(qlonglong(o.plant.value), plantRole);
        item->setToolTip(o.botanicalName);
        offers_->appendRow(item);
    }
    auto* own = new QStandardItem(tr("New, of your own: %1").arg(name));
    own->setData(qlonglong(0), plantRole);
    own->setData(name, nameRole);
    offers_->appendRow(own);
    completer_->complete();
    completer_->popup()->setCurrentIndex(completer_->completionModel()->index(0, 0));
}

void CatalogueField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    QThreadPool::globalInstance()->start([] { plantCatalogue(); }); // so that the first key need not wait
}

void CatalogueField::choose(const QModelIndex& index) {
    if (chosen_) return;
    chosen_ = true;
    const auto plant = index.data(plantRole).toLongLong();
    const QString name = index.data(nameRole).toString();
    completer_->popup()->hide();
    // The completer still writes what was chosen into the field after this returns.
    QTimer::singleShot(0, this, [this, plant, name] {
        chosen_ = false;
        clear();
        offers_->clear();
        if (plant > 0)
            Q_EMIT taken(Id<model::Plant>(plant));
        else if (!name.isEmpty())
            Q_EMIT named(name);
    });
}

} // namespace withy::ui
