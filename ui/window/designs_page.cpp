// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/designs_page.h"

#include "ui/logic/edits.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTableWidget>

namespace withy::ui {

DesignsPage::DesignsPage(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    list_ = new QListWidget;
    list_->setAccessibleName(tr("Designs"));
    list_->setMaximumWidth(320);
    name_ = new QLineEdit;
    name_->setObjectName(QStringLiteral("name"));
    container_ = new QComboBox;
    container_->setObjectName(QStringLiteral("container"));
    price_ = new QLineEdit;
    price_->setObjectName(QStringLiteral("price"));
    price_->setPlaceholderText(tr("for one, such as 9.50"));
    connect(price_, &QLineEdit::editingFinished, this, &DesignsPage::keepPrice);
    table_ = new QTableWidget(0, 4);
    table_->setAccessibleName(tr("Slots, in making order"));
    table_->setHorizontalHeaderLabels({tr("Slot"), tr("Stems"), tr("Plant"), tr("Cut length")});
    table_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    label_ = new QLineEdit;
    label_->setObjectName(QStringLiteral("label"));
    label_->setPlaceholderText(tr("purpose, such as “small blue”"));
    label_->setAccessibleName(tr("Purpose of the new slot"));
    plant_ = new QComboBox;
    plant_->setObjectName(QStringLiteral("plant"));
    plant_->setAccessibleName(tr("Plant of the new slot"));
    // Typed, with completion anywhere in the name: "poppy" finds "Iceland poppy".
    plant_->setEditable(true);
    plant_->setInsertPolicy(QComboBox::NoInsert);
    plant_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    plant_->completer()->setFilterMode(Qt::MatchContains);
    count_ = new QSpinBox;
    count_->setObjectName(QStringLiteral("stems"));
    count_->setAccessibleName(tr("Stems of the new slot"));
    count_->setRange(1, 1000);
    auto* add = new QPushButton(tr("&Add slot"));
    add->setObjectName(QStringLiteral("addSlot"));
    numbers_ = new QLabel;
    numbers_->setWordWrap(true);
    numbers_->setTextFormat(Qt::PlainText);
    auto* adding = new QHBoxLayout;
    adding->addWidget(count_);
    adding->addWidget(label_, 1);
    adding->addWidget(plant_, 1);
    adding->addWidget(add);
    auto* sheet = new QWidget;
    auto* form = new QFormLayout(sheet);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Container"), container_);
    form->addRow(tr("Another"), containerRow());
    form->addRow(tr("&Price"), price_);
    form->addRow(table_);
    form->addRow(adding);
    form->addRow(numbers_);
    auto* row = new QHBoxLayout(this);
    row->addWidget(list_, 1);
    auto* scroll = new QScrollArea; // at large text the form is wider than a small screen
    scroll->setWidget(sheet);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    row->addWidget(scroll, 3);
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* now) {
        if (showing_ || !now) return;
        chosen_ = Id<model::Design>(now->data(Qt::UserRole).toLongLong());
        showChosen();
    });
    connect(name_, &QLineEdit::editingFinished, this, &DesignsPage::keepName);
    connect(container_, &QComboBox::activated, this, &DesignsPage::keepContainer);
    connect(add, &QPushButton::clicked, this, &DesignsPage::addSlot);
    connect(&bench_, &Workbench::changed, this, &DesignsPage::refresh);
    refresh();
}

QLayout* DesignsPage::containerRow() {
    auto size = [](const QString& id, const QString& name, int value) {
        auto* box = new QSpinBox;
        box->setObjectName(id);
        box->setAccessibleName(name);
        box->setRange(1, 5000);
        box->setValue(value);
        box->setPrefix(name + QLatin1Char(' '));
        box->setSuffix(tr(" mm"));
        return box;
    };
    jar_ = new QLineEdit;
    jar_->setObjectName(QStringLiteral("jar"));
    jar_->setAccessibleName(tr("Name of the new container"));
    jar_->setPlaceholderText(tr("name, such as “honey jar”"));
    rim_ = size(QStringLiteral("rim"), tr("inner rim"), 60);
    depth_ = size(QStringLiteral("depth"), tr("inner depth"), 115);
    auto* add = new QPushButton(tr("Add con&tainer"));
    add->setObjectName(QStringLiteral("addContainer"));
    connect(add, &QPushButton::clicked, this, &DesignsPage::addContainer);
    auto* row = new QHBoxLayout;
    row->addWidget(jar_, 1);
    row->addWidget(rim_);
    row->addWidget(depth_);
    row->addWidget(add);
    return row;
}

void DesignsPage::addContainer() {
    Id<model::Container> made;
    const auto before = bench_.season().containers.size();
    take(edits::newContainer(bench_.season(), utf8(jar_->text()), Millimetres(rim_->value()),
                             Millimetres(depth_->value()), made));
    if (bench_.season().containers.size() == before) return; // refused, and said why
    jar_->clear();
    container_->setCurrentIndex(container_->findData(QVariant::fromValue<qlonglong>(made.value)));
    keepContainer();
}

void DesignsPage::keepPrice() {
    if (showing_ || !chosen_) return;
    const auto edit = edits::setPrice(bench_.season(), *chosen_, utf8(price_->text().trimmed()));
    if (edit)
        take(*edit);
    else
        Q_EMIT refused(
            tr("“%1” is not a price. Write digits, such as 9.50, or leave it blank.").arg(price_->text()));
}

void DesignsPage::take(const model::Edit& edit) {
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) showChosen();
}

void DesignsPage::newDesign() {
    Id<model::Design> made;
    take(edits::newDesign(bench_.season(), utf8(tr("New design")), std::nullopt, made));
    chosen_ = made;
    refresh();
    name_->setFocus();
    name_->selectAll();
}

void DesignsPage::keepName() {
    const auto* old = chosen_ && !showing_ ? bench_.season().designs.find(*chosen_) : nullptr;
    if (!old) return;
    model::Design d = *old;
    d.name = utf8(name_->text());
    take(edits::put("design.change", d, {d.name}));
}

void DesignsPage::keepContainer() {
    const auto* old = chosen_ ? bench_.season().designs.find(*chosen_) : nullptr;
    if (!old) return;
    model::Design d = *old;
    const auto id = container_->currentData().toLongLong();
    d.container = id > 0 ? std::optional(Id<model::Container>(id)) : std::nullopt;
    take(edits::put("design.change", d, {d.name}));
}

void DesignsPage::addSlot() {
    if (!chosen_) return;
    const int at = plant_->findText(plant_->currentText().trimmed(), Qt::MatchFixedString);
    if (at < 0) {
        Q_EMIT refused(tr("There is no plant “%1”. Choose one from the list.").arg(plant_->currentText()));
        return;
    }
    const QString name = plant_->itemText(at);
    const QString label = label_->text().isEmpty() ? name : label_->text();
    take(edits::addSlot(bench_.season(), *chosen_, utf8(label),
                        Id<model::Plant>(plant_->itemData(at).toLongLong()), count_->value()));
    label_->clear();
}

void DesignsPage::refresh() {
    bench_.waitForPlan();
    showing_ = true;
    list_->clear();
    for (const auto& d : bench_.season().designs) {
        auto* item = new QListWidgetItem(text(d.name), list_);
        item->setData(Qt::UserRole, QVariant::fromValue<qlonglong>(d.id.value));
        if (chosen_ == d.id) list_->setCurrentItem(item);
    }
    container_->clear();
    container_->addItem(tr("none: tied in the hand"), QVariant::fromValue<qlonglong>(0));
    for (const auto& c : bench_.season().containers)
        container_->addItem(text(c.name), QVariant::fromValue<qlonglong>(c.id.value));
    plant_->clear();
    for (const auto& p : bench_.season().plants)
        plant_->addItem(text(p.name), QVariant::fromValue<qlonglong>(p.id.value));
    showing_ = false;
    showChosen();
}

void DesignsPage::showChosen() {
    const auto* d = chosen_ ? bench_.season().designs.find(*chosen_) : nullptr;
    showing_ = true;
    name_->setText(d ? text(d->name) : QString());
    name_->setEnabled(d != nullptr);
    const int digits = minorDigits(bench_.season().theSettings().currency).value_or(2);
    price_->setText(d && d->price ? text(plainAmount(*d->price, digits)) : QString());
    price_->setEnabled(d != nullptr);
    table_->setRowCount(0);
    numbers_->setText(tr("Choose a design, or draw your first piece."));
    showing_ = false;
    if (!d) return;
    container_->setCurrentIndex(std::max(
        0, container_->findData(QVariant::fromValue<qlonglong>(d->container ? d->container->value : 0))));
    const auto& plan = *bench_.plan().designs.at(d->id);
    table_->setRowCount(static_cast<int>(plan.slots.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const auto& sp = plan.slots[static_cast<std::size_t>(row)];
        const auto& slot = *bench_.season().slots.find(sp.slot);
        table_->setItem(row, 0, new QTableWidgetItem(text(slot.label)));
        auto* count = new QSpinBox;
        count->setRange(0, 1000);
        count->setValue(static_cast<int>(slot.count.value));
        count->setAccessibleName(tr("Stems of %1").arg(text(slot.label)));
        count->setKeyboardTracking(false);
        connect(
            count, &QSpinBox::valueChanged, this,
            [this, id = slot.id](int n) { take(edits::setCount(bench_.season(), id, n)); },
            Qt::QueuedConnection);
        table_->setCellWidget(row, 1, count);
        QStringList plants;
        for (const auto& [plant, share] : sp.fill)
            plants << text(bench_.season().plants.find(plant)->name);
        table_->setItem(row, 2, new QTableWidgetItem(plants.join(QStringLiteral(", "))));
        table_->setItem(
            row, 3,
            new QTableWidgetItem(sp.cutLength ? tr("%1 mm").arg(sp.cutLength->length.value) : QString()));
    }
    QStringList words{tr("%1 stems a piece").arg(plan.stemsPerPiece.value)};
    if (plan.water) words << tr("%1 ml of water").arg(plan.water->water.value);
    if (plan.ribbon) words << tr("%1 mm of ribbon").arg(plan.ribbon->length.value);
    if (plan.weight) words << tr("%1 g in all").arg(plan.weight->total.value);
    QString all = words.join(QStringLiteral(" · "));
    for (const auto& f : plan.findings)
        all += QLatin1Char('\n') + sentence(f);
    numbers_->setText(all);
}

} // namespace withy::ui
