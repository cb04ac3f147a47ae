// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/wall_page.h"

#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/designs/design_panel.h"
#include "ui/designs/designs_wall.h"
#include "ui/designs/empty_shelves.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>

namespace withy::ui {

namespace {

constexpr DesignGroup shelves[]{DesignGroup::tables, DesignGroup::hand, DesignGroup::large};

} // namespace

WallPage::WallPage(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , model_(bench)
    , title_(new TextLabel(TypeRole::title, tr("Designs")))
    , answer_(new TextLabel(TypeRole::text, {}, Ink::second))
    , groups_(new Segments(
          tr("Shelves"), {tr("All"), groupWords(shelves[0]), groupWords(shelves[1]), groupWords(shelves[2])}))
    , bloom_(new Segments(tr("In bloom"), {tr("Any week"), tr("In bloom now")}))
    , find_(new QLineEdit)
    , new_(new QPushButton(tr("&New design")))
    , wall_(new DesignsWall(bench, model_))
    , none_(new TextLabel(TypeRole::text, QString(), Ink::second))
    , panel_(new DesignPanel(bench))
    , side_(new QScrollArea)
    , line_(new QFrame) {
    groups_->setObjectName(QStringLiteral("designs.groups"));
    bloom_->setObjectName(QStringLiteral("designs.inBloom"));
    answer_->setObjectName(QStringLiteral("designs.answer"));
    answer_->setWordWrap(true);
    find_->setObjectName(QStringLiteral("designs.find"));
    find_->setPlaceholderText(tr("Find a design"));
    find_->setAccessibleName(tr("Find a design"));
    find_->setClearButtonEnabled(true);
    find_->installEventFilter(this);
    new_->setObjectName(QStringLiteral("designs.new"));
    empty_ = makeEmpty();
    head_ = new QGridLayout;
    head_->setHorizontalSpacing(grid(3));
    head_->setVerticalSpacing(grid(2));
    auto* top = new QHBoxLayout;
    top->setSpacing(grid(4));
    answer_->setContentsMargins(0, 0, 0, grid(1));
    top->addWidget(title_);
    top->addWidget(answer_, 1, Qt::AlignBottom);
    top->addWidget(new_);
    head_->addLayout(top, 0, 0, 1, 3);
    auto* main = new QVBoxLayout;
    main->setContentsMargins(pageMargin(), grid(3), 0, 0);
    main->setSpacing(grid(2));
    main->addLayout(head_);
    main->addWidget(none_);
    main->addWidget(wall_, 1);
    main->addWidget(empty_, 1);
    line_->setProperty("look", QStringLiteral("upright"));
    side_->setWidget(panel_);
    side_->setWidgetResizable(true);
    side_->setFrameShape(QFrame::NoFrame);
    side_->setFocusPolicy(Qt::NoFocus);
    side_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    row_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(0);
    row_->addLayout(main, 3);
    row_->addWidget(line_);
    row_->addWidget(side_, 2);
    connect(groups_, &Segments::chosen, this, [this](int i) {
        model_.setGroup(i == 0 ? std::nullopt : std::optional(shelves[i - 1]));
        refresh();
    });
    connect(bloom_, &Segments::chosen, this, [this](int i) {
        model_.setInBloomOnly(i == 1);
        refresh();
    });
    connect(find_, &QLineEdit::textChanged, this, [this](const QString& words) {
        model_.setWords(words);
        refresh();
    });
    connect(new_, &QPushButton::clicked, this, [this] { Q_EMIT newAsked(new_); });
    connect(wall_, &DesignsWall::openAsked, this, &WallPage::openAsked);
    connect(wall_, &DesignsWall::chose, this, [this](qint64 id) {
        panel_->showDesign(id > 0 ? std::optional(Id<model::Design>(id)) : std::nullopt);
    });
    connect(panel_, &DesignPanel::openAsked, this, &WallPage::openAsked);
    connect(panel_, &DesignPanel::useAsked, this, &WallPage::useAsked);
    connect(&bench_, &Workbench::changed, this, &WallPage::refresh);
    connect(&bench_, &Workbench::planned, this, &WallPage::refresh);
    arrange();
    refresh();
}

QWidget* WallPage::makeEmpty() {
    auto* box = new EmptyShelves;
    connect(box, &EmptyShelves::newAsked, this, &WallPage::newAsked);
    return box;
}

void WallPage::refresh() {
    const int all = model_.total();
    const bool any = all > 0, shown = model_.rowCount() > 0;
    groups_->setWords(0, tr("All %1").arg(all));
    empty_->setVisible(!any);
    wall_->setVisible(any && shown);
    none_->setVisible(any && !shown);
    groups_->setVisible(any);
    find_->setVisible(any);
    refreshWeek();
    side_->setVisible(any);
    line_->setVisible(any);
    if (shown && !wall_->currentIndex().isValid()) wall_->setCurrentIndex(model_.index(0));
}

void WallPage::refreshWeek() {
    const auto week = model_.monday();
    const QString words = designsInBloomWords(model_.blooms());
    answer_->setText(words);
    bloom_->setVisible(week && !words.isEmpty());
    if (week) bloom_->setWords(1, inBloomWords(*week));
    none_->setText(find_->text().isEmpty() ? tr("Nothing on this shelf is in bloom that week.")
                                           : tr("No design is called that. Esc shows all of them again."));
    panel_->setWeek(week, model_.blooms());
}

void WallPage::choose(Id<model::Design> design) {
    if (model_.rowOf(design) < 0) {
        find_->clear();
        groups_->setCurrent(0);
        bloom_->setCurrent(0);
        model_.setInBloomOnly(false);
        model_.setGroup(std::nullopt);
        refresh();
    }
    wall_->choose(design);
}

void WallPage::enter() {
    if (model_.total() == 0)
        empty_->setFocus();
    else
        wall_->setFocus();
}

void WallPage::find() {
    find_->setFocus();
    find_->selectAll();
}

bool WallPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != find_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape) {
        find_->clear();
        wall_->setFocus();
        return true;
    }
    if (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter) {
        wall_->setFocus();
        return true;
    }
    return false;
}

void WallPage::arrange() {
    const bool narrow = width() < grid(190);
    row_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    if (narrow) {
        side_->setMinimumWidth(0);
        side_->setMaximumWidth(QWIDGETSIZE_MAX);
    } else {
        side_->setFixedWidth(grid(78));
    }
    const bool tight = width() < grid(narrow ? 190 : 270); // what is in bloom goes below the shelves
    for (QWidget* w :
         {static_cast<QWidget*>(groups_), static_cast<QWidget*>(bloom_), static_cast<QWidget*>(find_)})
        head_->removeWidget(w);
    head_->addWidget(groups_, 1, 0, 1, tight ? 3 : 1, Qt::AlignLeft);
    head_->addWidget(bloom_, tight ? 2 : 1, tight ? 0 : 1, Qt::AlignLeft);
    head_->addWidget(find_, tight ? 2 : 1, tight ? 1 : 2, 1, tight ? 2 : 1);
    head_->setColumnStretch(2, 1);
    head_->setContentsMargins(0, 0, pageMargin(), 0);
}

void WallPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void WallPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && row_) arrange();
}

} // namespace withy::ui
