// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/orders_page.h"

#include "ui/common/copy_rows.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/models/orders_model.h"
#include "ui/logic/table_files.h"
#include "ui/paint/spacing.h"
#include "ui/season/order_figures.h"
#include "ui/season/orders_delegate.h"
#include "ui/shell/actions.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace withy::ui {

OrdersPage::OrdersPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , model_(new OrdersModel(this))
    , view_(new QTableView)
    , figures_(new OrderFigures)
    , start_(new QPushButton(tr("New booking")))
    , tools_(new QWidget(this)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    start_->setObjectName(QStringLiteral("season.orders.start"));
    start_->setProperty("look", QStringLiteral("main"));
    view_->setModel(model_);
    view_->setObjectName(QStringLiteral("season.orders.table"));
    view_->setAccessibleName(tr("Orders of the season"));
    view_->setItemDelegate(new OrdersDelegate(view_));
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setShowGrid(false);
    view_->setTabKeyNavigation(false);
    view_->setSortingEnabled(true);
    view_->sortByColumn(OrdersModel::date, Qt::AscendingOrder);
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(tableRow());
    view_->horizontalHeader()->setHighlightSections(false);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view_->horizontalHeader()->setSectionResizeMode(OrdersModel::title, QHeaderView::Stretch);
    connect(view_, &QTableView::activated, this, &OrdersPage::follow);
    copiesRows(view_, [this](const QString& words) { Q_EMIT said(words); });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(start_, 0, Qt::AlignLeft);
    column->addWidget(view_, 3);
    column->addWidget(figures_);
    column->addStretch(0);
    connect(figures_, &OrderFigures::leadTo, this, &SubPage::leadTo);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &OrdersPage::showFigures);
    const auto refreshSeen = [this] {
        if (isVisible()) refresh(); // otherwise when it is seen
    };
    connect(&bench, &Workbench::changed, this, refreshSeen);
    connect(&bench, &Workbench::planned, this, refreshSeen);
    refresh();
}

Answer OrdersPage::answer() const {
    return ordersAnswer(bench_.season(), model_->orders());
}

void OrdersPage::addActions(Actions& actions) {
    auto* save = actions.add(
        {"season.orders.export", tr("E&xport the orders as CSV"), {}, tr("All bookings, for a spreadsheet")},
        [this] {
            Q_EMIT wanted();
            askAndExport();
        });
    auto* print = new QPushButton(tr("Pri&nt the season's orders"));
    print->setObjectName(QStringLiteral("season.orders.print"));
    auto* paper = actions.add({"season.orders.paper",
                               tr("&Print the season's orders"),
                               {},
                               tr("The same list on paper, with its sum")},
                              [this] {
                                  Q_EMIT wanted();
                                  Q_EMIT paperWanted();
                              });
    connect(print, &QPushButton::clicked, paper, &QAction::trigger);
    connect(start_, &QPushButton::clicked, this, [&actions] {
        if (auto* action = actions.find(QStringLiteral("booking.new"))) action->trigger();
    });
    auto* csv = new QPushButton(tr("E&xport CSV"));
    csv->setObjectName(QStringLiteral("season.orders.export_button"));
    connect(csv, &QPushButton::clicked, save, &QAction::trigger);
    tools_->layout()->addWidget(csv);
    tools_->layout()->addWidget(print);
}

void OrdersPage::enter() {
    if (start_->isVisibleTo(this)) return start_->setFocus();
    view_->setFocus();
    if (!view_->currentIndex().isValid() && model_->rowCount() > 0)
        view_->setCurrentIndex(model_->index(0, OrdersModel::title));
}

QWidget* OrdersPage::tools() const {
    return tools_;
}

QString OrdersPage::exportTo(const QString& path) const {
    bench_.waitForPlan();
    return writeOrders(bench_.season(), bench_.plan(), path);
}

void OrdersPage::askAndExport() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Export the orders as CSV"), tr("orders.csv"),
                                                      tr("CSV tables (*.csv)"));
    if (path.isEmpty()) return;
    const QString words = exportTo(path);
    if (words.isEmpty())
        Q_EMIT said(writtenWords(path));
    else
        Q_EMIT refused(words);
}

void OrdersPage::refresh() {
    const auto current = view_->currentIndex().data(OrdersModel::BookingRole);
    const int column = view_->currentIndex().column();
    model_->show(bench_.season(), bench_.plan());
    const bool none = bench_.season().bookings.empty();
    start_->setVisible(none);
    view_->setVisible(!none);
    if (current.isValid()) {
        const int row = model_->rowOf(Id<model::Booking>(current.toLongLong()));
        if (row >= 0) view_->setCurrentIndex(model_->index(row, column));
    }
    showFigures();
    Q_EMIT answerChanged();
}

void OrdersPage::showFigures() {
    const auto booking = view_->currentIndex().data(OrdersModel::BookingRole);
    const auto one =
        booking.isValid() ? std::optional(Id<model::Booking>(booking.toLongLong())) : std::nullopt;
    figures_->setSums(orderSums(bench_.season(), bench_.plan(), model_->orders(), one));
}

void OrdersPage::showEvent(QShowEvent* event) {
    SubPage::showEvent(event);
    refresh();
}

void OrdersPage::follow() {
    const auto booking = view_->currentIndex().data(OrdersModel::BookingRole);
    if (booking.isValid()) Q_EMIT leadTo({model::TableKind::bookings, booking.toLongLong()});
}

} // namespace withy::ui
