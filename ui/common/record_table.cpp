// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/record_table.h"

#include "ui/common/record_delegate.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/logic/fields/field_text.h"
#include "ui/paint/spacing.h"

#include <QGuiApplication>
#include <QHeaderView>
#include <QPainter>
#include <QResizeEvent>
#include <QScrollBar>

#include <set>

namespace withy::ui {

RecordTable::RecordTable(Workbench& bench, RecordTableSpec spec, QWidget* parent)
    : QTableView(parent)
    , model_(new RecordTableModel(bench, std::move(spec), this))
    , said_(new TextLabel(TypeRole::caption, {}, Ink::osier, viewport())) {
    const auto& table = model::tableInfo(model_->spec().kind).name;
    setObjectName(QString::fromLatin1(table.data(), static_cast<qsizetype>(table.size())) +
                  QStringLiteral(".table"));
    setAccessibleName(tableLabel(model_->spec().kind, 2));
    setModel(model_);
    auto* delegate = new RecordDelegate(*model_, this);
    setItemDelegate(delegate);
    setSelectionBehavior(SelectRows);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    setMouseTracking(true);
    setCornerButtonEnabled(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(
        model_->spec().orderField.empty()); // else the rows have an order of their own
    connect(horizontalHeader(), &QHeaderView::sectionClicked, this, [this](int column) {
        const auto* field = model_->fieldAt(column);
        if (!field || !commitEditor()) return;
        const bool again = model_->spec().sortField == field->name;
        model_->sortBy(std::string(field->name), again && !model_->spec().newestFirst);
    });
    if (!model_->spec().orderField.empty()) {
        setDragDropMode(InternalMove);
        setDragDropOverwriteMode(false);
        setDropIndicatorShown(true);
    }
    said_->setProperty("look", QStringLiteral("mist"));
    said_->setAutoFillBackground(true);
    said_->setWordWrap(true);
    said_->setMargin(grid(1));
    said_->hide();
    // What asks() for the grower may ask by the day.
    connect(&bench, &Workbench::dayTurned, viewport(), qOverload<>(&QWidget::update));
    connect(delegate, &RecordDelegate::enterPressed, this, [this] { goDown(); });
    connect(delegate, &RecordDelegate::tabPressed, this, [this](bool back) { goAcross(back); });
    connect(delegate, &RecordDelegate::judged, this,
            [this](const QModelIndex& at, const QString& words) { sayUnder(at, words); });
    connect(model_, &RecordTableModel::made, this, [this](qint64 id) { made_ = id; });
    connect(model_, &RecordTableModel::refused, this, [this](const QString& words) { tell(words); });
    connect(model_, &QAbstractItemModel::modelAboutToBeReset, this, [this] { kept_ = chosenId(); });
    connect(model_, &QAbstractItemModel::modelReset, this, [this] {
        if (kept_) choose(*kept_);
        rowsChanged();
    });
    connect(model_, &QAbstractItemModel::rowsInserted, this, [this] { rowsChanged(); });
    connect(model_, &QAbstractItemModel::rowsRemoved, this, [this] { rowsChanged(); });
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, [this] { sayUnder({}, {}); });
    dress();
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this] {
        const bool byHand = horizontalHeader()->underMouse() && QGuiApplication::mouseButtons();
        if (!fitting_ && byHand) fittedByHand_ = true;
    });
}

void RecordTable::dress() {
    verticalHeader()->setMinimumSectionSize(tableRow());
    verticalHeader()->setDefaultSectionSize(tableRow());
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setMinimumSectionSize(grid(12));
}

void RecordTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        dress();
        updateGeometry();
        fitColumnsSoon();
    }
}

void RecordTable::setEmptyWords(const QString& words) {
    emptyWords_ = words;
    viewport()->update();
}

void RecordTable::setAsks(std::function<bool(std::int64_t id, int column)> asks) {
    static_cast<RecordDelegate*>(itemDelegate())->asks = std::move(asks);
}

void RecordTable::showParent(std::optional<std::int64_t> id) {
    commitEditor();
    kept_.reset();
    model_->setParentId(id);
}

void RecordTable::choose(std::int64_t id) {
    const int row = model_->rowOf(id);
    if (row < 0) return;
    const int column = std::max(0, currentIndex().column());
    setCurrentIndex(model_->index(row, column));
    scrollTo(currentIndex());
}

std::optional<std::int64_t> RecordTable::chosenId() const {
    return model_->idAt(currentIndex().row());
}

std::vector<std::int64_t> RecordTable::chosenIds() const {
    std::set<int> rows;
    for (const auto& index : selectionModel()->selectedIndexes())
        rows.insert(index.row());
    std::vector<std::int64_t> ids;
    for (const int row : rows) {
        if (const auto id = model_->idAt(row)) ids.push_back(*id);
    }
    return ids;
}

bool RecordTable::commitEditor() {
    auto* delegate = static_cast<RecordDelegate*>(itemDelegate());
    if (!delegate->editor()) return true;
    const QPersistentModelIndex at = currentIndex();
    delegate->finish();
    return !at.isValid() || at.data(RecordTableModel::SentenceRole).toString().isEmpty();
}

void RecordTable::growWithRows(int mostRows) {
    mostRows_ = mostRows;
    setVerticalScrollBarPolicy(mostRows == 0 ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    rowsChanged();
}

void RecordTable::rowsChanged() {
    viewport()->update();
    if (mostRows_ >= 0) updateGeometry();
    fitColumnsSoon();
}

QSize RecordTable::sizeHint() const {
    const QSize usual = QTableView::sizeHint();
    if (mostRows_ < 0) return usual;
    const int rows = std::max(emptyWords_.isEmpty() ? 1 : 2, model_->rowCount());
    const int shown = mostRows_ == 0 ? rows : std::min(rows, mostRows_);
    return {usual.width(), shown * tableRow() + horizontalHeader()->sizeHint().height() + 2 * frameWidth()};
}

QSize RecordTable::minimumSizeHint() const {
    return mostRows_ < 0 ? QTableView::minimumSizeHint() : QSize(grid(40), sizeHint().height());
}

void RecordTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (model_->idAt(0) || emptyWords_.isEmpty()) return;
    QPainter p(viewport());
    p.setFont(typeFont(TypeRole::text));
    p.setPen(currentPalette().of(Role::ink2));
    const int top = model_->rowCount() * tableRow();
    p.drawText(viewport()->rect().adjusted(grid(2), top + grid(2), -grid(2), 0),
               static_cast<int>(Qt::AlignLeft | Qt::AlignTop) | Qt::TextWordWrap, emptyWords_);
}

void RecordTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width() && isVisible()) fitColumns();
    sayUnder({}, {});
}

void RecordTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    sayUnder(current, current.data(RecordTableModel::SentenceRole).toString());
    if (model_->idAt(current.row()) != model_->idAt(previous.row()) || !previous.isValid())
        Q_EMIT chosen(model_->idAt(current.row()));
}

void RecordTable::dataChanged(const QModelIndex& from, const QModelIndex& to, const QList<int>& roles) {
    QTableView::dataChanged(from, to, roles);
    fitColumnsSoon();
    if (!static_cast<RecordDelegate*>(itemDelegate())->editor())
        sayUnder(currentIndex(), currentIndex().data(RecordTableModel::SentenceRole).toString());
}

void RecordTable::sayUnder(const QModelIndex& index, const QString& sentence) {
    said_->setText(sentence);
    if (!index.isValid() || sentence.isEmpty()) return said_->hide();
    const QRect cell = visualRect(index);
    const int wide = std::min(viewport()->width() - grid(2), grid(110));
    const int tall = said_->heightForWidth(wide);
    const int left = std::max(0, std::min(cell.left(), viewport()->width() - wide));
    const bool below = cell.bottom() + tall < viewport()->height();
    said_->setGeometry(left, below ? cell.bottom() + 1 : std::max(0, cell.top() - tall), wide, tall);
    said_->raise();
    said_->show();
}

void RecordTable::tell(const QString& sentence) {
    if (!sentence.isEmpty()) Q_EMIT refused(sentence);
}

} // namespace withy::ui
