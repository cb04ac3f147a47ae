// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/tally_row_view.h"

#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/designs/bloom_dot.h"
#include "ui/paint/jar_mark.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

int tallyRowHeight() {
    return grid(25.5);
}

int tallyKeyHeight() {
    return grid(18.5);
}

int tallyKeyWidth() {
    return grid(13.5);
}

} // namespace

TallyRowView::TallyRowView(QWidget* parent)
    : QWidget(parent)
    , dot_(new BloomDot(QColor()))
    , name_(new TextLabel(TypeRole::strong))
    , place_(new TextLabel(TypeRole::text, {}, Ink::second))
    , stage_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , remark_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , standIn_(new QPushButton(tr("Let it stand in")))
    , offers_(new QMenu(this))
    , less_(makeKey("tally.less", -1))
    , count_(new QLineEdit)
    , against_(new TextLabel(TypeRole::caption))
    , more_(makeKey("tally.more", 1))
    , ten_(makeKey("tally.ten", 10))
    , bunch_(makeKey("tally.bunch", 0)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(grid(5), grid(1), grid(2), grid(1));
    row->setSpacing(grid(2));
    row->addWidget(dot_, 0, Qt::AlignVCenter);
    row->addWidget(makeWords(), 1);
    row->addWidget(less_);
    row->addWidget(makeCount());
    row->addWidget(more_);
    row->addWidget(ten_);
    row->addWidget(bunch_);
    dress();
}

QWidget* TallyRowView::makeWords() {
    auto* words = new QWidget;
    auto* column = new QVBoxLayout(words);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addStretch(1);
    for (auto* label : {name_, place_, stage_, remark_}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    standIn_->setObjectName(QStringLiteral("tally.stand_in"));
    standIn_->setMenu(offers_);
    column->addWidget(standIn_, 0, Qt::AlignLeft);
    column->addStretch(1);
    return words;
}

QWidget* TallyRowView::makeCount() {
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addStretch(1);
    count_->setObjectName(QStringLiteral("tally.count"));
    count_->setProperty("look", QStringLiteral("tally"));
    count_->setAlignment(Qt::AlignCenter);
    count_->setMaxLength(60);
    count_->setInputMethodHints(Qt::ImhPreferNumbers);
    count_->installEventFilter(this);
    connect(count_, &QLineEdit::editingFinished, this, [this] {
        if (isTyping()) Q_EMIT kept(0);
    });
    against_->setAlignment(Qt::AlignHCenter);
    against_->setWordWrap(true);
    column->addWidget(count_);
    column->addWidget(against_);
    column->addStretch(1);
    return whole;
}

QPushButton* TallyRowView::makeKey(const char* name, qint64 by) {
    auto* key = new QPushButton;
    key->setObjectName(QString::fromLatin1(name));
    key->setProperty("look", QStringLiteral("tally"));
    key->installEventFilter(this);
    connect(key, &QPushButton::clicked, this, [this, by] { Q_EMIT added(by == 0 ? middleStep() : by); });
    return key;
}

/// The plant's bunch; five where it has none of its own, so that every row has the same keys.
qint64 TallyRowView::middleStep() const {
    constexpr qint64 usual = 5, single = 1, ten = 10;
    const qint64 bunch = row_.bunch;
    return bunch > single && bunch != ten ? bunch : usual;
}

/// Sizes follow the size of the text.
void TallyRowView::dress() {
    setMinimumHeight(tallyRowHeight());
    dot_->setFixedSize(grid(4), grid(4));
    for (auto* key : {less_, more_, ten_, bunch_}) {
        key->setFont(typeFont(TypeRole::answer));
        key->setFixedSize(tallyKeyWidth(), tallyKeyHeight());
    }
    count_->setFont(typeFont(TypeRole::tally));
    count_->setFixedWidth(grid(27));
    count_->setFixedHeight(grid(12));
    against_->setFixedWidth(grid(27));
}

void TallyRowView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && count_->font() != typeFont(TypeRole::tally)) dress();
}

void TallyRowView::nameKeys() {
    const QString what = tr("%1, %2").arg(row_.name, row_.place);
    less_->setText(QStringLiteral("−"));
    more_->setText(QStringLiteral("+"));
    ten_->setText(QStringLiteral("+10"));
    bunch_->setText(QStringLiteral("+%1").arg(middleStep()));
    less_->setAccessibleName(tr("One less: %1").arg(what));
    more_->setAccessibleName(tr("One more: %1").arg(what));
    ten_->setAccessibleName(tr("Ten more: %1").arg(what));
    const bool isBunch = middleStep() == row_.bunch;
    bunch_->setAccessibleName(isBunch ? tr("A bunch of %1 more: %2").arg(row_.bunch).arg(what)
                                      : tr("%1 more: %2").arg(middleStep()).arg(what));
    bunch_->setToolTip(isBunch ? tr("A bunch") : QString());
    count_->setAccessibleName(throwing_ ? tr("Thrown away: %1").arg(what) : tr("Cut: %1").arg(what));
    standIn_->setAccessibleName(tr("Let it stand in: %1").arg(what));
}

void TallyRowView::showRow(const TallyRow& row, bool throwing) {
    row_ = row;
    const bool turned = throwing_ != throwing;
    throwing_ = throwing;
    dot_->setColour(row.colour ? Palette::bloom(*row.colour) : QColor());
    name_->setText(row.mark.isEmpty() ? row.name : tr("%1 · %2").arg(row.mark, row.name));
    place_->setText(row.place);
    stage_->setText(row.stage);
    stage_->setVisible(chosen_ && !row.stage.isEmpty());
    remark_->setText(row.remark);
    remark_->setVisible(!row.remark.isEmpty());
    const auto& stems = throwing ? row.thrownAway : row.cut;
    if (!isTyping() || turned) {
        count_->setText(stems ? QString::number(*stems) : QString());
        count_->setModified(false);
        setWrong(false);
    }
    markAs(count_, "blank", !stems.has_value());
    const QString below = throwing                    ? tr("thrown away")
                          : row.thrownWords.isEmpty() ? row.against
                                                      : tr("%1\n%2").arg(row.against, row.thrownWords);
    against_->setText(below);
    against_->setInk(throwing || row.asks ? Ink::osier : Ink::second);
    count_->setAccessibleDescription(row.stage.isEmpty() ? below : tr("%1. %2").arg(below, row.stage));
    auto* keys = static_cast<QHBoxLayout*>(layout()); // by size
    keys->removeWidget(bunch_);
    keys->insertWidget(keys->indexOf(ten_) + (middleStep() < 10 ? 0 : 1), bunch_);
    nameKeys();
    showOffers();
    update();
}

void TallyRowView::showOffers() {
    standIn_->setVisible(!row_.offers.empty());
    offers_->clear();
    for (const auto& offer : row_.offers) {
        const qint64 slot = offer.slot.value;
        offers_->addAction(asTyped(offer.words), this, [this, slot] { Q_EMIT standInAsked(slot); });
    }
}

void TallyRowView::setChosen(bool chosen) {
    if (chosen_ == chosen) return;
    chosen_ = chosen;
    stage_->setVisible(chosen && !row_.stage.isEmpty());
    update();
}

void TallyRowView::take() {
    count_->setFocus(Qt::TabFocusReason);
    count_->selectAll();
}

std::vector<QWidget*> TallyRowView::tabOrder() const {
    if (middleStep() < 10) return {standIn_, less_, count_, more_, bunch_, ten_};
    return {standIn_, less_, count_, more_, ten_, bunch_};
}

bool TallyRowView::isTyping() const {
    return count_->isModified();
}

QString TallyRowView::typed() const {
    return count_->text();
}

void TallyRowView::putBack() {
    count_->setModified(false);
    showRow(row_, throwing_);
    count_->selectAll();
}

void TallyRowView::setWrong(bool wrong) {
    markAs(count_, "wrong", wrong);
}

bool TallyRowView::handleKey(int key) {
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Down:
        Q_EMIT kept(1);
        return true;
    case Qt::Key_Up:
        Q_EMIT kept(-1);
        return true;
    case Qt::Key_Escape:
        if (!isTyping()) return false;
        putBack();
        return true;
    default:
        return false;
    }
}

bool TallyRowView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) Q_EMIT chosen();
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool arrow = key == Qt::Key_Up || key == Qt::Key_Down;
        if ((watched == count_ || arrow) && handleKey(key)) return true;
    }
    return QWidget::eventFilter(watched, event);
}

void TallyRowView::mousePressEvent(QMouseEvent* event) {
    QWidget::mousePressEvent(event);
    take();
}

void TallyRowView::paintEvent(QPaintEvent*) {
    QPainter p(this);
    const auto& palette = currentPalette();
    if (chosen_) p.fillRect(rect().adjusted(0, 0, 0, -1), palette.of(Role::wash));
    p.setPen(QPen(palette.of(Role::line), hairline));
    p.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
    if (chosen_)
        paintTie(p, QRectF(grid(1), height() / 2.0 - grid(3), grid(3), grid(6)), palette.of(Role::green));
}

} // namespace withy::ui
