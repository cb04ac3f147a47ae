// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/bookings_page.h"

#include "ui/logic/edits.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QComboBox>
#include <QDateTimeEdit>
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
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

QDateTime dateTime(LocalTime t) {
    return {QDate(t.day.year(), t.day.month(), t.day.dayOfMonth()), QTime(t.minute / 60, t.minute % 60),
            Qt::UTC};
}

LocalTime localTime(const QDateTime& t) {
    const QDate d = t.date();
    return {Day::fromYmd(d.year(), d.month(), d.day()).value_or(Day{}),
            t.time().hour() * 60 + t.time().minute()};
}

QTableWidget* table(const QStringList& heads, const QString& name) {
    auto* t = new QTableWidget(0, static_cast<int>(heads.size()));
    t->setObjectName(name);
    t->setAccessibleName(name);
    t->setHorizontalHeaderLabels(heads);
    t->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    t->verticalHeader()->hide();
    t->setShowGrid(false);
    t->setMinimumHeight(150);
    return t;
}

QTableWidgetItem* cell(const QString& words, bool figure = false) {
    auto* item = new QTableWidgetItem(words);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    if (figure) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    return item;
}

QDateTimeEdit* timeField(const QString& name) {
    auto* field = new QDateTimeEdit;
    field->setObjectName(name);
    field->setTimeSpec(Qt::UTC);
    field->setDisplayFormat(QStringLiteral("ddd d MMM yyyy, HH:mm"));
    field->setCalendarPopup(true);
    return field;
}

} // namespace

BookingsPage::BookingsPage(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("bookings"));
    list_->setAccessibleName(tr("Bookings"));
    list_->setMaximumWidth(320);
    auto* scroll = new QScrollArea;
    scroll->setWidget(makeForm());
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* row = new QHBoxLayout(this);
    row->addWidget(list_, 1);
    row->addWidget(scroll, 3);
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* now) {
        if (showing_ || !now) return;
        chosen_ = Id<model::Booking>(now->data(Qt::UserRole).toLongLong());
        showChosen();
    });
    connect(&bench_, &Workbench::changed, this, &BookingsPage::refresh);
    refresh();
    if (list_->count() > 0) list_->setCurrentRow(0);
}

QWidget* BookingsPage::makeForm() {
    form_ = new QWidget;
    title_ = new QLineEdit;
    title_->setObjectName(QStringLiteral("title"));
    start_ = timeField(QStringLiteral("start"));
    end_ = timeField(QStringLiteral("end"));
    standing_ = new QComboBox;
    standing_->setObjectName(QStringLiteral("standing"));
    for (const auto word : model::Words<model::Standing>::list)
        standing_->addItem(text(std::string(word)));
    answer_ = new QLabel;
    answer_->setObjectName(QStringLiteral("answer"));
    answer_->setWordWrap(true);
    pieces_ = table({tr("Piece"), tr("Pieces"), tr("Stems")}, QStringLiteral("pieces"));
    design_ = new QComboBox;
    design_->setObjectName(QStringLiteral("design"));
    design_->setAccessibleName(tr("Design to add"));
    count_ = new QSpinBox;
    count_->setObjectName(QStringLiteral("count"));
    count_->setAccessibleName(tr("How many"));
    count_->setRange(1, 10000);
    auto* add = new QPushButton(tr("&Add pieces"));
    add->setObjectName(QStringLiteral("add"));
    stems_ = table({tr("Plant"), tr("Need"), tr("Spare"), tr("To cut"), tr("When")}, QStringLiteral("stems"));
    kit_ = new QLabel;
    kit_->setWordWrap(true);
    auto* adding = new QHBoxLayout;
    adding->addWidget(count_);
    adding->addWidget(design_, 1);
    adding->addWidget(add);
    auto* fields = new QFormLayout(form_);
    fields->addRow(tr("&Title"), title_);
    fields->addRow(tr("&Guests from"), start_);
    fields->addRow(tr("&Until"), end_);
    fields->addRow(tr("&Standing"), standing_);
    fields->addRow(answer_);
    fields->addRow(pieces_);
    fields->addRow(adding);
    fields->addRow(stems_);
    fields->addRow(kit_);
    connect(title_, &QLineEdit::editingFinished, this, &BookingsPage::keepBrief);
    connect(start_, &QDateTimeEdit::editingFinished, this, &BookingsPage::keepBrief);
    connect(end_, &QDateTimeEdit::editingFinished, this, &BookingsPage::keepBrief);
    connect(standing_, &QComboBox::activated, this, &BookingsPage::keepBrief);
    connect(add, &QPushButton::clicked, this, &BookingsPage::addPiece);
    return form_;
}

void BookingsPage::take(const model::Edit& edit) {
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) showChosen();
}

void BookingsPage::choose(Id<model::Booking> id) {
    chosen_ = id;
    refresh();
}

void BookingsPage::newBooking() {
    Id<model::Booking> made;
    const Day day = bench_.today().value_or(bench_.season().theSettings().firstDay);
    const auto& s = bench_.season().theSettings();
    take(edits::newBooking(bench_.season(), utf8(tr("New booking")), std::clamp(day, s.firstDay, s.lastDay),
                           made));
    choose(made);
    title_->setFocus();
    title_->selectAll();
}

void BookingsPage::addPiece() {
    if (!chosen_ || design_->currentIndex() < 0) return;
    take(edits::addLine(bench_.season(), *chosen_, Id<model::Design>(design_->currentData().toLongLong()),
                        count_->value()));
}

void BookingsPage::keepBrief() {
    if (showing_ || !chosen_) return;
    const auto* old = bench_.season().bookings.find(*chosen_);
    if (!old) return;
    model::Booking b = *old;
    b.title = utf8(title_->text());
    b.eventStart = localTime(start_->dateTime());
    b.eventEnd = localTime(end_->dateTime());
    // A booking moved to another day keeps its length.
    if (b.eventEnd == old->eventEnd && b.eventStart != old->eventStart)
        b.eventEnd = b.eventStart + (old->eventEnd - old->eventStart);
    b.standing = static_cast<model::Standing>(standing_->currentIndex());
    take(edits::put("booking.change", b, {b.title}));
}

void BookingsPage::refresh() {
    bench_.waitForPlan();
    showList();
    showChosen();
}

void BookingsPage::showList() {
    showing_ = true;
    std::vector<const model::Booking*> order;
    for (const auto& b : bench_.season().bookings)
        order.push_back(&b);
    std::stable_sort(order.begin(), order.end(),
                     [](const auto* a, const auto* b) { return a->eventStart < b->eventStart; });
    list_->clear();
    for (const auto* b : order) {
        auto* item =
            new QListWidgetItem(text(b->title) + QLatin1Char('\n') + shortDay(b->eventStart.day) +
                                    QStringLiteral(", ") + text(std::string(model::wordOf(b->standing))),
                                list_);
        item->setData(Qt::UserRole, QVariant::fromValue<qlonglong>(b->id.value));
        if (chosen_ == b->id) list_->setCurrentItem(item);
    }
    design_->clear();
    for (const auto& d : bench_.season().designs)
        design_->addItem(text(d.name), QVariant::fromValue<qlonglong>(d.id.value));
    showing_ = false;
}

void BookingsPage::showChosen() {
    const auto* b = chosen_ ? bench_.season().bookings.find(*chosen_) : nullptr;
    form_->setEnabled(b != nullptr);
    showing_ = true;
    title_->setText(b ? text(b->title) : QString());
    pieces_->setRowCount(0);
    stems_->setRowCount(0);
    kit_->clear();
    if (!b) {
        answer_->setText(
            tr("Nothing booked yet. Start with a date, and the garden will say what it can give."));
    } else {
        const auto& plan = *bench_.plan().bookings.at(b->id);
        start_->setDateTime(dateTime(b->eventStart));
        end_->setDateTime(dateTime(b->eventEnd));
        standing_->setCurrentIndex(static_cast<int>(b->standing));
        answer_->setText(tr("%1 stems needed, %2 to cut. Make up from %3 %4.")
                             .arg(whole(plan.stemsNeeded.value), whole(plan.stemsToCut.value),
                                  shortDay(plan.makeUpStart.day), clock(plan.makeUpStart)));
        showPieces(plan);
        showStems(plan);
    }
    showing_ = false;
}

void BookingsPage::showPieces(const plan::BookingPlan& plan) {
    pieces_->setRowCount(static_cast<int>(plan.lines.size()));
    for (int row = 0; row < pieces_->rowCount(); ++row) {
        const auto& line = plan.lines[static_cast<std::size_t>(row)];
        const auto id = line.line;
        pieces_->setItem(row, 0, cell(text(bench_.season().designs.find(line.design)->name)));
        auto* count = new QSpinBox;
        count->setRange(0, 10000);
        count->setValue(static_cast<int>(bench_.season().lines.find(id)->pieces.value));
        count->setAccessibleName(tr("Pieces of %1").arg(pieces_->item(row, 0)->text()));
        count->setKeyboardTracking(false);
        // Queued: the edit rebuilds this table, and the box must have finished with its signal by then.
        connect(
            count, &QSpinBox::valueChanged, this,
            [this, id](int n) { take(edits::setPieces(bench_.season(), id, n)); }, Qt::QueuedConnection);
        pieces_->setCellWidget(row, 1, count);
        pieces_->setItem(row, 2, cell(whole(line.stems.value), true));
    }
}

void BookingsPage::showStems(const plan::BookingPlan& plan) {
    stems_->setRowCount(static_cast<int>(plan.needs.size()));
    for (int row = 0; row < stems_->rowCount(); ++row) {
        const auto& n = plan.needs[static_cast<std::size_t>(row)];
        stems_->setItem(row, 0, cell(text(bench_.season().plants.find(n.plant)->name)));
        stems_->setItem(row, 1, cell(whole(n.need.need.value), true));
        stems_->setItem(row, 2, cell(whole((n.need.spare + n.need.toBunches).value), true));
        stems_->setItem(row, 3, cell(whole(n.need.total.value), true));
        QString when = tr("no time fits");
        if (n.round >= 0) {
            const auto start = plan.rounds[static_cast<std::size_t>(n.round)].start;
            when = shortDay(start.day) + QLatin1Char(' ') + clock(start);
        }
        stems_->setItem(row, 4, cell(when));
        for (int column = 0; column < 5; ++column)
            stems_->item(row, column)->setToolTip(lines(n.need.working).join(QLatin1Char('\n')));
    }
    QStringList kit;
    for (const auto& c : plan.kit.containers)
        kit << tr("%1 %2").arg(whole(shed::wholeUnits(c.total.needed)),
                               text(bench_.season().containers.find(c.container)->name));
    for (const auto& r : plan.kit.ribbons)
        kit << tr("%1 of %2").arg(metres(r.needed), text(bench_.season().ribbons.find(r.ribbon)->name));
    if (plan.kit.water.total.value > 0) kit << tr("%1 litres of water").arg(litres(plan.kit.water.litres));
    QStringList words{tr("Kit: %1").arg(kit.join(QStringLiteral(", ")))};
    for (const auto& f : plan.findings)
        words << sentence(f);
    kit_->setTextFormat(Qt::PlainText);
    kit_->setText(words.join(QLatin1Char('\n')));
}

} // namespace withy::ui
