// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/booking_page.h"

#include "ui/bookings/moved_line.h"
#include "ui/bookings/title_edit.h"
#include "ui/common/field_edit.h"
#include "ui/common/first_picture.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/paint/spacing.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace withy::ui {

BookingPage::BookingPage(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), tabs_(bookingTabs(bench)), shown_(tabs_.size()) {
    connect(&bench_, &Workbench::changed, this, &BookingPage::refresh);
    new FirstPicture(this, [this] { begin(); });
}

void BookingPage::begin() {
    make();
    showCurrentTab();
}

/// Head and tabs wait for the first picture, so that the list is there sooner; or for whoever asks.
void BookingPage::make() {
    if (outer_) return;
    outer_ = new QStackedWidget;
    auto* booking = new QWidget;
    auto* rows = new QVBoxLayout(booking);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    makeTabs();
    moved_ = new MovedLine(bench_);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(pageMargin(), grid(2), pageMargin(), 0);
    top->setSpacing(grid(1));
    top->addWidget(makeHead());
    top->addWidget(segments_);
    top->addWidget(new Rule(Rule::Kind::hair));
    top->addWidget(moved_);
    rows->addLayout(top);
    rows->addWidget(stack_, 1);
    outer_->addWidget(makeEmpty());
    outer_->addWidget(booking);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(outer_);
    connect(segments_, &Segments::chosen, this, [this](int tab) { showTab(tab); });
    connect(moved_, &MovedLine::undoAsked, this, [this] { Q_EMIT refused(bench_.undo()); });
    more_->setMenu(menu_);
    moved_->watch(id_);
    refresh();
}

QWidget* BookingPage::makeHead() {
    auto* head = new QWidget;
    title_ = new TitleEdit(tr("Title of the booking"));
    title_->setObjectName(QStringLiteral("booking.title"));
    standing_ = new QPushButton;
    standing_->setObjectName(QStringLiteral("booking.standingMenu")); // its field bears the other name
    auto* standings = new QMenu(standing_);
    connect(standings, &QMenu::aboutToShow, this, [this, standings] { fillStandings(standings); });
    standing_->setMenu(standings);
    more_ = new QPushButton(tr("More"));
    more_->setObjectName(QStringLiteral("booking.more"));
    more_->setAccessibleName(tr("More to do with this booking"));
    facts_ = new TextLabel(TypeRole::text, {}, Ink::second);
    facts_->setObjectName(QStringLiteral("booking.facts"));
    facts_->setWordWrap(true);
    auto* top = new QHBoxLayout;
    top->setSpacing(grid(2));
    top->addWidget(title_, 1);
    top->addWidget(standing_, 0, Qt::AlignTop);
    top->addWidget(more_, 0, Qt::AlignTop);
    auto* rows = new QVBoxLayout(head);
    rows->setContentsMargins(0, 0, 0, grid(1));
    rows->setSpacing(0);
    rows->addLayout(top);
    rows->addWidget(facts_);
    connect(title_, &TitleEdit::renamed, this, &BookingPage::rename);
    connect(title_, &QLineEdit::returnPressed, this, &BookingPage::enter);
    return head;
}

QWidget* BookingPage::makeEmpty() {
    auto* page = new QWidget;
    emptyWords_ = new TextLabel(TypeRole::title);
    emptyWords_->setObjectName(QStringLiteral("bookings.nothing"));
    emptyWords_->setWordWrap(true);
    emptyButtons_ = new QWidget;
    auto* start = new QPushButton(tr("New booking"));
    start->setObjectName(QStringLiteral("bookings.nothing.new"));
    start->setProperty("look", QStringLiteral("main"));
    auto* demo = new QPushButton(tr("Open the demo season"));
    demo->setObjectName(QStringLiteral("bookings.nothing.demo"));
    auto* buttons = new QHBoxLayout(emptyButtons_);
    buttons->setContentsMargins(0, grid(4), 0, 0);
    buttons->setSpacing(grid(2));
    buttons->addWidget(start);
    buttons->addWidget(demo);
    buttons->addStretch(1);
    auto* rows = new QVBoxLayout(page);
    rows->setContentsMargins(pageMargin(), grid(10), pageMargin(), pageMargin());
    rows->addWidget(emptyWords_);
    rows->addWidget(emptyButtons_);
    rows->addStretch(1);
    connect(start, &QPushButton::clicked, this, &BookingPage::newAsked);
    connect(demo, &QPushButton::clicked, this, &BookingPage::demoAsked);
    return page;
}

void BookingPage::makeTabs() {
    stack_ = new QStackedWidget;
    QStringList words;
    for (const auto& entry : tabs_) {
        words << entry.words;
        stack_->addWidget(new QWidget);
    }
    segments_ = new Segments(tr("Part of the booking"), words, Segments::Look::tabs);
    segments_->setObjectName(QStringLiteral("booking.tabs"));
    segments_->setCurrent(first_);
    stack_->setCurrentIndex(first_);
}

BookingTab& BookingPage::tab(int index) {
    auto& entry = tabs_[static_cast<std::size_t>(index)];
    if (entry.tab) return *entry.tab;
    entry.tab = entry.make();
    replaceIn(*stack_, index,
              entry.tab->scrollsItself() ? entry.tab : static_cast<QWidget*>(scrolledPage(entry.tab)));
    connect(entry.tab, &BookingTab::wanted, this, [this, index] {
        Q_EMIT wanted();
        showTab(index);
    });
    connect(entry.tab, &BookingTab::refused, this, &BookingPage::refused);
    connect(entry.tab, &BookingTab::said, this, &BookingPage::said);
    connect(entry.tab, &BookingTab::leadTo, this, &BookingPage::leadTo);
    if (actions_) entry.tab->addActions(*actions_);
    return *entry.tab;
}

bool BookingPage::makeNextTab() {
    if (!outer_) {
        begin();
        return true;
    }
    for (int i = 0; i < tabCount(); ++i) {
        if (tabs_[static_cast<std::size_t>(i)].tab) continue;
        tab(i);
        return true;
    }
    return false;
}

void BookingPage::addTabActions(Actions& actions) {
    actions_ = &actions;
    for (const auto& entry : tabs_)
        if (entry.tab) entry.tab->addActions(actions);
}

void BookingPage::setMenu(QMenu* more) {
    menu_ = more;
    if (more_) more_->setMenu(menu_);
}

void BookingPage::take(const model::Edit& edit) {
    Q_EMIT refused(bench_.apply(edit));
}

void BookingPage::rename(const QString& title) {
    if (!id_) return;
    take(edits::renameBooking(bench_.season(), *id_, utf8(title)));
    refresh();
}

void BookingPage::fillStandings(QMenu* menu) {
    menu->clear();
    const auto* b = id_ ? bench_.season().bookings.find(*id_) : nullptr;
    if (!b) return;
    auto* group = new QActionGroup(menu);
    for (int i = 0; i < static_cast<int>(model::Words<model::Standing>::list.size()); ++i) {
        const auto s = static_cast<model::Standing>(i);
        auto* action = menu->addAction(standingWords(s), this, [this, s] {
            if (id_) take(edits::setStanding(bench_.season(), *id_, s, bench_.today()));
        });
        action->setObjectName(QStringLiteral("booking.standing.%1").arg(i));
        action->setCheckable(true);
        action->setChecked(b->standing == s);
        group->addAction(action);
    }
}

void BookingPage::show(std::optional<Id<model::Booking>> id) {
    if (outer_ && id != id_) title_->finish(); // what was typed belongs to the one that goes
    id_ = id;
    if (!outer_) return;
    moved_->watch(id);
    refresh();
    showCurrentTab();
}

void BookingPage::refresh() {
    if (!outer_) return;
    const auto& season = bench_.season();
    const auto* b = id_ ? season.bookings.find(*id_) : nullptr;
    outer_->setCurrentIndex(b ? 1 : 0);
    const bool none = season.bookings.empty();
    emptyWords_->setText(
        none ? tr("Nothing booked yet. Start with a date, and the garden will say what it can give.")
             : tr("Choose a booking at the left."));
    emptyButtons_->setVisible(none);
    if (!b) return;
    title_->showTitle(text(b->title));
    facts_->setText(bookingFacts(season, *b).join(QStringLiteral("   ·   ")));
    const QString standing = capital(standingWords(*b));
    standing_->setText(standing);
    standing_->setAccessibleName(tr("Standing: %1").arg(standing));
}

int BookingPage::currentTab() const {
    return stack_ ? stack_->currentIndex() : first_;
}

void BookingPage::showTab(int index) {
    if (index < 0 || index >= tabCount()) return;
    make();
    if (index != currentTab() && !commitFocusedField(stack_->currentWidget())) {
        segments_->setCurrent(currentTab());
        return;
    }
    segments_->setCurrent(index);
    if (stack_->currentIndex() != index) moved_->clear();
    stack_->setCurrentIndex(index);
    showCurrentTab();
}

void BookingPage::showTab(const QString& id) {
    for (int i = 0; i < tabCount(); ++i) {
        if (id == QLatin1String(tabs_[static_cast<std::size_t>(i)].id)) showTab(i);
    }
}

void BookingPage::beginAt(const QString& id) {
    for (int i = 0; i < tabCount(); ++i)
        if (id == QLatin1String(tabs_[static_cast<std::size_t>(i)].id)) first_ = i;
}

QString BookingPage::currentTabId() const {
    return QString::fromLatin1(tabs_[static_cast<std::size_t>(currentTab())].id);
}

void BookingPage::stepTab(int by) {
    showTab((currentTab() + by + tabCount()) % tabCount());
    enter();
}

void BookingPage::showCurrentTab() {
    const auto at = static_cast<std::size_t>(currentTab());
    if (at >= tabs_.size() || (shown_[at] == id_ && id_)) return;
    shown_[at] = id_;
    tab(currentTab()).show(id_);
}

void BookingPage::editTitle() {
    make();
    title_->setFocus(Qt::OtherFocusReason);
    title_->selectAll();
}

void BookingPage::enter() {
    begin();
    if (id_) tab(currentTab()).enter();
}

} // namespace withy::ui
