// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/booking_list.h"

#include "ui/bookings/booking_delegate.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/booking_list_model.h"
#include "ui/logic/models/booking_words.h"
#include "ui/paint/icons.h"
#include "ui/paint/spacing.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <ranges>
#include <utility>

namespace withy::ui {

namespace {

/// A row keeps its height whatever it says; Qt's list would lay out all anew for one that changed.
class BookingRows : public QListView {
protected:
    void dataChanged(const QModelIndex& from, const QModelIndex& to, const QVector<int>& roles) override {
        QAbstractItemView::dataChanged(from, to, roles);
    }
};

QListView* makeView(BookingListModel* model, BookingDelegate* delegate) {
    auto* view = new BookingRows;
    view->setObjectName(QStringLiteral("bookings.list"));
    view->setProperty("look", QStringLiteral("list")); // its rows show the focus, not a frame around them
    view->setModel(model);
    view->setItemDelegate(delegate);
    view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setResizeMode(QListView::Adjust);
    view->setMouseTracking(true);
    return view;
}

/// One choice of a menu; `set` when it is taken.
template <class Set>
void addChoice(QMenu* menu, QActionGroup* group, const QString& words, bool now, Set set) {
    auto* action = menu->addAction(words, menu, set);
    action->setCheckable(true);
    action->setChecked(now);
    group->addAction(action);
}

/// Of a list whose rows stand one under another: the first and the last.
std::pair<int, int> rowsInView(const QListView& view) {
    const auto rows = std::views::iota(0, view.model()->rowCount());
    const auto rectOf = [&](int row) { return view.visualRect(view.model()->index(row, 0)); };
    const int height = view.viewport()->height();
    const auto first = std::ranges::partition_point(rows, [&](int row) { return rectOf(row).bottom() < 0; });
    const auto past = std::ranges::partition_point(rows, [&](int row) { return rectOf(row).top() < height; });
    return {static_cast<int>(first - rows.begin()), static_cast<int>(past - rows.begin()) - 1};
}

} // namespace

BookingList::BookingList(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , model_(new BookingListModel(bench, this))
    , delegate_(new BookingDelegate(this))
    , view_(makeView(model_, delegate_))
    , empty_(new TextLabel(TypeRole::text, {}, Ink::second)) {
    view_->setAccessibleName(tr("Bookings"));
    empty_->setObjectName(QStringLiteral("bookings.empty"));
    empty_->setWordWrap(true);
    empty_->setMargin(grid(4));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, grid(2), 0, 0);
    rows->setSpacing(grid(1));
    rows->addWidget(makeTop());
    rows->addWidget(empty_);
    rows->addWidget(view_, 1);
    rows->addWidget(makeFoot());
    view_->installEventFilter(this);
    view_->viewport()->installEventFilter(this);
    find_->installEventFilter(this);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        if (!marking_) pickCurrent();
    });
    model_->rowsInView = [this] { return withy::ui::rowsInView(*view_); };
    connect(model_, &QAbstractItemModel::modelReset, this, [this] { choose(chosen_); });
    connect(model_, &QAbstractItemModel::dataChanged, this, &BookingList::showFoot);
    showParts();
    showFoot();
}

QWidget* BookingList::makeTop() {
    auto* top = new QWidget;
    find_ = new QLineEdit;
    find_->setObjectName(QStringLiteral("bookings.find"));
    find_->setPlaceholderText(tr("Find a booking"));
    find_->setAccessibleName(tr("Find a booking"));
    find_->setToolTip(tr("By title, client, place, standing or date (Ctrl+F)"));
    find_->setClearButtonEnabled(true);
    new_ = new QPushButton(tr("New booking"));
    new_->setObjectName(QStringLiteral("bookings.new"));
    new_->setToolTip(tr("Starts a booking (Ctrl+N)"));
    findNarrow_ = narrowButton("bookings.findNarrow", tr("Find a booking"));
    newNarrow_ = narrowButton("bookings.newNarrow", tr("New booking"));
    auto* row = new QHBoxLayout(top);
    row->addWidget(find_, 1);
    row->addWidget(new_);
    row->addWidget(findNarrow_);
    row->addWidget(newNarrow_);
    connect(find_, &QLineEdit::textChanged, model_, &BookingListModel::setFind);
    connect(new_, &QPushButton::clicked, this, &BookingList::newAsked);
    connect(findNarrow_, &QToolButton::clicked, this, &BookingList::findAsked);
    connect(newNarrow_, &QToolButton::clicked, this, &BookingList::newAsked);
    top_ = row;
    return top;
}

/// Only an icon, for the list without words; its name is said and shown as a tip.
QToolButton* BookingList::narrowButton(const char* name, const QString& words) {
    auto* button = new QToolButton;
    button->setObjectName(QString::fromLatin1(name));
    button->setProperty("look", QStringLiteral("quiet"));
    button->setAccessibleName(words);
    button->setToolTip(words);
    button->setFocusPolicy(Qt::StrongFocus);
    button->hide();
    return button;
}

QWidget* BookingList::makeFoot() {
    foot_ = new QWidget;
    goneBy_ = linkButton({}, "bookings.goneBy");
    order_ = linkButton({}, "bookings.order");
    auto* menu = new QMenu(order_);
    connect(menu, &QMenu::aboutToShow, this, [this, menu] { fillMenu(menu); });
    order_->setMenu(menu);
    auto* rows = new QVBoxLayout(foot_);
    rows->setContentsMargins(0, 0, 0, grid(1));
    rows->setSpacing(grid(1));
    rows->addWidget(new Rule(Rule::Kind::hair));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(grid(3), 0, grid(3), 0);
    row->addWidget(goneBy_);
    row->addStretch(1);
    row->addWidget(order_);
    rows->addLayout(row);
    connect(goneBy_, &QPushButton::clicked, this,
            [this] { model_->openGoneBy(!model_->choice().goneByOpen); });
    return foot_;
}

void BookingList::fillMenu(QMenu* menu) {
    menu->clear();
    const auto& now = model_->choice();
    auto* sorts = new QActionGroup(menu);
    const std::pair<BookingSort, QString> orders[] = {{BookingSort::date, tr("By &date")},
                                                      {BookingSort::name, tr("By &name")},
                                                      {BookingSort::standing, tr("By &standing")},
                                                      {BookingSort::owed, tr("By what is &owed")}};
    for (const auto& [sort, words] : orders)
        addChoice(menu, sorts, words, now.sort == sort, [this, s = sort] { model_->setSort(s); });
    menu->addSeparator();
    auto* standings = new QActionGroup(menu);
    addChoice(menu, standings, tr("Whatever they stand at"), !now.standing,
              [this] { model_->setStanding({}); });
    for (int i = 0; i < static_cast<int>(model::Words<model::Standing>::list.size()); ++i) {
        const auto s = static_cast<model::Standing>(i);
        addChoice(menu, standings, tr("Only: %1").arg(standingWords(s)), now.standing == s,
                  [this, s] { model_->setStanding(s); });
    }
    auto* kinds = menu->addMenu(tr("&Kind"));
    auto* group = new QActionGroup(menu);
    addChoice(kinds, group, tr("Every kind"), !now.kind, [this] { model_->setKind({}); });
    for (int i = 0; i < static_cast<int>(model::Words<model::BookingKind>::list.size()); ++i) {
        const auto k = static_cast<model::BookingKind>(i);
        addChoice(kinds, group, bookingKindWords(k), now.kind == k, [this, k] { model_->setKind(k); });
    }
}

void BookingList::choose(std::optional<Id<model::Booking>> id) {
    chosen_ = id;
    marking_ = true;
    const int row = id ? model_->rowOf(*id) : -1;
    const QModelIndex at = row < 0 ? QModelIndex() : model_->index(row);
    if (view_->currentIndex() != at) view_->setCurrentIndex(at);
    if (at.isValid()) view_->scrollTo(at);
    marking_ = false;
    showFoot();
}

void BookingList::pickCurrent() {
    const auto id = model_->idAt(view_->currentIndex().row());
    if (!id || chosen_ == id) return;
    chosen_ = id;
    Q_EMIT chose(id->value);
}

void BookingList::showFoot() {
    const QString empty = model_->emptyWords();
    empty_->setText(empty);
    // Without any booking the page beside it says so, with the button that mends it.
    empty_->setVisible(!empty.isEmpty() && !narrow_ && model_->hasAny());
    goneBy_->setVisible(model_->goneBy() > 0);
    goneBy_->setText(model_->choice().goneByOpen ? tr("Fold %n gone by", nullptr, model_->goneBy())
                                                 : tr("%n gone by", nullptr, model_->goneBy()));
    order_->setText(model_->choiceWords());
    order_->setAccessibleName(tr("What is listed, and how: %1").arg(model_->choiceWords()));
    foot_->setVisible(!narrow_);
}

void BookingList::setNarrow(bool narrow) {
    narrow_ = narrow;
    delegate_->setNarrow(narrow);
    showParts();
    showFoot();
    view_->doItemsLayout();
}

void BookingList::showParts() {
    find_->setVisible(!narrow_);
    new_->setVisible(!narrow_);
    findNarrow_->setVisible(narrow_);
    newNarrow_->setVisible(narrow_);
    findNarrow_->setIcon(icon(IconName::search, currentPalette()));
    newNarrow_->setIcon(icon(IconName::add, currentPalette()));
    for (auto* button : {findNarrow_, newNarrow_})
        button->setIconSize({grid(4), grid(4)});
    const int side = narrow_ ? grid(1) : grid(4);
    top_->setContentsMargins(side, 0, side, 0);
    top_->setSpacing(narrow_ ? 0 : grid(2));
    view_->doItemsLayout();
}

void BookingList::beginFinding() {
    find_->setFocus(Qt::ShortcutFocusReason);
    find_->selectAll();
}

void BookingList::enter() {
    view_->setFocus(Qt::OtherFocusReason);
}

bool BookingList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == view_->viewport() && event->type() == QEvent::MouseButtonPress) {
        const auto at = view_->indexAt(static_cast<QMouseEvent*>(event)->pos());
        if (at.data(BookingListModel::FoldRole).isValid()) {
            model_->openGoneBy(!model_->choice().goneByOpen);
            return true;
        }
    }
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (watched == view_ && (key == Qt::Key_Return || key == Qt::Key_Enter)) {
        Q_EMIT left();
        return true;
    }
    if (watched != find_) return QWidget::eventFilter(watched, event);
    if (key == Qt::Key_Escape && !find_->text().isEmpty()) {
        find_->clear();
        return true;
    }
    if (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter) {
        if (const auto first = model_->neighbour(std::nullopt, 1);
            first && model_->rowOf(chosen_.value_or(Id<model::Booking>{})) < 0)
            view_->setCurrentIndex(model_->index(model_->rowOf(*first)));
        if (key == Qt::Key_Down)
            view_->setFocus();
        else
            Q_EMIT left();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BookingList::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) showParts();
}

} // namespace withy::ui
