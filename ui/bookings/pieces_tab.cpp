// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/pieces_tab.h"

#include "ui/bookings/line_up.h"
#include "ui/bookings/piece_field.h"
#include "ui/bookings/piece_row_view.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/colour_balance.h"
#include "ui/common/drawn_design.h"
#include "ui/common/figure.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/share_search.h"
#include "ui/logic/work_hours.h"
#include "ui/paint/piece_pictures.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

const plan::BookingPlan* planInHand(const Workbench& bench, std::optional<Id<model::Booking>> id) {
    if (!id) return nullptr;
    const auto found = bench.plan().bookings.find(*id);
    return found == bench.plan().bookings.end() ? nullptr : found->second.get();
}

} // namespace

PiecesTab::PiecesTab(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , pictures_(new PiecePictures(this))
    , answer_(new AnswerLabel)
    , lineUp_(new LineUp(bench))
    , heads_(makeHeads())
    , rows_(new QVBoxLayout) {
    answer_->setObjectName(QStringLiteral("pieces.answer"));
    rows_->setSpacing(0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(pageMargin(), grid(3), pageMargin(), pageMargin());
    all->setSpacing(grid(2));
    all->addWidget(answer_);
    all->addWidget(lineUp_);
    all->addWidget(heads_);
    all->addLayout(rows_);
    all->addWidget(makeFoot());
    all->addWidget(makeAdd());
    all->addWidget(makeColours());
    all->addStretch(1);
    connect(&bench_, &Workbench::changed, this, &PiecesTab::refresh);
    connect(&bench_, &Workbench::planned, this, &PiecesTab::showFigures);
}

QWidget* PiecesTab::makeHeads() {
    auto* heads = new QWidget;
    auto* across = new QGridLayout(heads);
    across->setContentsMargins(0, 0, 0, 0);
    across->setHorizontalSpacing(PieceColumns::gap());
    across->setVerticalSpacing(grid(1));
    across->setColumnMinimumWidth(0, PieceColumns::picture());
    across->setColumnStretch(1, 1);
    across->addWidget(new TextLabel(TypeRole::caption, tr("Design, and where it stands"), Ink::caption), 0,
                      1);
    across->addWidget(new TextLabel(TypeRole::caption, tr("Pieces"), Ink::caption), 0, 2);
    across->addWidget(new TextLabel(TypeRole::caption, tr("Spare"), Ink::caption), 0, 3);
    auto* worth = new TextLabel(TypeRole::caption, tr("Worth"), Ink::caption);
    worth->setAlignment(Qt::AlignRight);
    across->addWidget(worth, 0, 4);
    for (const int c : {2, 3})
        across->setColumnMinimumWidth(c, PieceColumns::count());
    across->setColumnMinimumWidth(4, PieceColumns::worth());
    across->addWidget(new Rule(Rule::Kind::head), 1, 0, 1, 5);
    return heads;
}

QWidget* PiecesTab::makeAdd() {
    auto* row = new QWidget;
    add_ = new PieceField(bench_);
    auto* button = new QPushButton(tr("Add"));
    button->setObjectName(QStringLiteral("pieces.addNow"));
    button->setAccessibleName(tr("Add the piece"));
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(grid(2));
    across->addWidget(add_, 1);
    across->addWidget(button);
    across->addStretch(1);
    connect(add_, &PieceField::asked, this, &PiecesTab::add);
    connect(button, &QPushButton::clicked, this, [this] {
        if (!add_->text().trimmed().isEmpty()) add(add_->text());
        add_->setFocus();
    });
    return row;
}

QWidget* PiecesTab::makeFoot() {
    foot_ = new QWidget;
    spare_ = new TextLabel(TypeRole::text, {}, Ink::second);
    makeSpare_ = new QPushButton(tr("Make one spare"));
    makeSpare_->setObjectName(QStringLiteral("pieces.makeSpare"));
    makeSpare_->setProperty("look", QStringLiteral("link"));
    makeSpare_->setToolTip(tr("One more of what there is most of; it is not charged"));
    making_ = new FigureButton;
    making_->setObjectName(QStringLiteral("pieces.making"));
    worth_ = new FigureButton;
    worth_->setObjectName(QStringLiteral("pieces.worth"));
    worthWords_ = new TextLabel(TypeRole::text, tr("at list price"), Ink::second);
    working_ = new WorkingPanel;
    working_->hide();
    auto* across = new QHBoxLayout;
    across->setSpacing(grid(2));
    across->addWidget(spare_);
    across->addWidget(makeSpare_);
    across->addStretch(1);
    across->addWidget(new TextLabel(TypeRole::text, tr("in all"), Ink::second));
    across->addWidget(making_);
    across->addWidget(new TextLabel(TypeRole::text, tr("of making,"), Ink::second));
    across->addWidget(worth_);
    across->addWidget(worthWords_);
    auto* rows = new QVBoxLayout(foot_);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(1));
    rows->addLayout(across);
    rows->addWidget(working_);
    for (auto* figure : {making_, worth_})
        connect(figure, &FigureButton::opened, this, [this, figure](bool open) { openTotal(figure, open); });
    connect(working_, &WorkingPanel::leadTo, this, &PiecesTab::leadTo);
    connect(makeSpare_, &QPushButton::clicked, this, &PiecesTab::makeSpare);
    return foot_;
}

QWidget* PiecesTab::makeColours() {
    auto* both = new QWidget;
    colours_ = new ColourBalance(QStringLiteral("pieces"));
    counted_ = new ColourBalance(QStringLiteral("pieces.counted"));
    auto* column = new QVBoxLayout(both);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->setSpacing(grid(4));
    column->addWidget(new Rule(Rule::Kind::hair));
    colourOf_ = new QHBoxLayout;
    colourOf_->addStretch(1);
    column->addLayout(colourOf_);
    column->addWidget(colours_);
    column->addWidget(counted_);
    connect(colours_, &ColourBalance::mendAsked, this, &PiecesTab::take);
    return both;
}

/// All pieces, or one of the tables they stand on; nothing to choose while none is placed.
void PiecesTab::offerTables() {
    const auto& season = bench_.season();
    std::vector<Id<model::VenueTable>> tables;
    QStringList words{tr("All pieces")};
    for (const auto& placement : season.placements) {
        const auto* line = season.lines.find(placement.line);
        const auto* table = season.venueTables.find(placement.table);
        const bool known = std::find(tables.begin(), tables.end(), placement.table) != tables.end();
        if (!id_ || !line || !table || line->booking != *id_ || known) continue;
        tables.push_back(table->id);
        words << tr("One %1").arg(text(table->label));
    }
    if (tables == tables_ && whose_) return;
    tables_ = tables;
    if (whose_) whose_->deleteLater();
    whose_ = new Segments(tr("Colours of"), words);
    whose_->setObjectName(QStringLiteral("pieces.coloursOf"));
    colourOf_->insertWidget(0, whose_);
    connect(whose_, &Segments::chosen, this, &PiecesTab::showColours);
}

void PiecesTab::showColours() {
    const auto& season = bench_.season();
    offerTables();
    whose_->setVisible(!tables_.empty());
    const auto which = static_cast<std::size_t>(std::max(whose_->current(), 0));
    colours_->setView(!id_                                   ? ColourView{}
                      : which > 0 && which <= tables_.size() ? tableColours(season, tables_[which - 1], *id_)
                                                             : bookingColours(season, *id_));
    ColourView real;
    if (id_ && isTallied(season, *id_)) {
        const auto* plan = planInHand(bench_, id_);
        const auto store = plan ? storeFor(season, bench_.plan().cover.get(), *id_,
                                           workHours(season, bench_.plan(), *id_).makeUpStart.day)
                                : std::vector<shareout::TallyLine>{};
        const auto shared = plan::planShare(season, *id_, store);
        if (shared.ok()) real = bookingColours(season, *id_, &shared->share);
    }
    counted_->setView(real);
}

std::vector<const model::Line*> PiecesTab::lines() const {
    std::vector<const model::Line*> list;
    for (const auto& line : bench_.season().lines) {
        if (id_ && line.booking == *id_) list.push_back(&line);
    }
    return list;
}

void PiecesTab::show(std::optional<Id<model::Booking>> id) {
    id_ = id;
    refresh();
}

void PiecesTab::enter() {
    add_->setFocus(Qt::OtherFocusReason);
}

void PiecesTab::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    layRows();
    lineUp_->showBooking(id_);
    showFigures();
}

void PiecesTab::layRows() {
    const auto list = lines();
    const bool same = views_.size() == list.size() &&
                      std::equal(views_.begin(), views_.end(), list.begin(),
                                 [](const auto* view, const auto* line) { return view->line() == line->id; });
    if (same) return;
    std::vector<PieceRowView*> next;
    for (const auto* line : list) {
        const auto old = std::find_if(views_.begin(), views_.end(),
                                      [&](const auto* v) { return v && v->line() == line->id; });
        if (old != views_.end()) {
            next.push_back(*old);
            *old = nullptr;
            continue;
        }
        auto* view = new PieceRowView(bench_, line->id);
        auto* picture = new DrawnDesign(bench_, pictures_);
        picture->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        picture->setRoom({grid(15), grid(17)});
        view->setPicture(picture);
        connect(view, &PieceRowView::refused, this, &PiecesTab::refused);
        connect(view, &PieceRowView::leadTo, this, &PiecesTab::leadTo);
        next.push_back(view);
    }
    for (auto* gone : views_) {
        if (!gone) continue;
        gone->hide();
        rows_->removeWidget(gone);
        gone->deleteLater(); // its own button may have asked for this
    }
    views_ = next;
    for (std::size_t i = 0; i < views_.size(); ++i)
        rows_->insertWidget(static_cast<int>(i), views_[i]);
    arrange();
}

void PiecesTab::showEvent(QShowEvent* event) {
    BookingTab::showEvent(event);
    if (stale_) refresh();
}

void PiecesTab::showFigures() {
    stale_ = stale_ || !isVisible();
    if (stale_) return;
    const auto* plan = planInHand(bench_, id_);
    for (auto* view : views_)
        view->refresh();
    answer_->setPhrases(phrasesOf(id_ ? piecesAnswer(bench_.season(), *id_, plan) : Answer{}));
    arrange();
    foot_->setVisible(!views_.empty());
    std::int64_t spare = 0;
    for (const auto* line : lines())
        spare += line->sparePieces.value;
    spare_->setText(spareWords(spare));
    makeSpare_->setVisible(spare == 0);
    showTotals(plan);
    showColours();
}

void PiecesTab::showTotals(const plan::BookingPlan* plan) {
    const auto making = plan ? makingTotal(bench_.season(), *plan) : PieceFigure{};
    const auto worth = plan ? worthTotal(bench_.season(), *plan) : PieceFigure{};
    making_->setFacts({making.figure, making.means, making.working, std::nullopt, {}, {}});
    worth_->setFacts({worth.figure, worth.means, worth.working, std::nullopt, {}, worth.lines});
    worth_->setVisible(!worth.figure.isEmpty());
    worthWords_->setVisible(!worth.figure.isEmpty());
    for (auto* figure : {making_, worth_})
        if (figure->isChecked()) working_->setFacts(figure->facts());
}

void PiecesTab::openTotal(FigureButton* figure, bool open) {
    if (open) {
        for (auto* other : {making_, worth_})
            if (other != figure) other->setChecked(false);
        working_->setFacts(figure->facts());
    }
    working_->setVisible(open);
}

void PiecesTab::take(const model::Edit& edit) {
    Q_EMIT refused(bench_.apply(edit));
}

void PiecesTab::add(const QString& typed) {
    if (!id_) return;
    const auto asked = readPiece(bench_.season(), *id_, typed);
    if (!asked.ok()) {
        Q_EMIT refused(asked.sentence);
        return;
    }
    Id<model::Line> made;
    std::optional<edits::OnTables> on;
    if (asked.placement) on = {asked.placement->table, asked.placement->perTable};
    const QString trouble =
        bench_.apply(edits::addPieces(bench_.season(), *id_, *asked.design, asked.count, made, on));
    Q_EMIT refused(trouble);
    if (trouble.isEmpty()) add_->clear();
}

void PiecesTab::makeSpare() {
    const auto list = lines();
    const auto most = std::max_element(list.begin(), list.end(),
                                       [](const auto* a, const auto* b) { return a->pieces < b->pieces; });
    if (most == list.end()) return;
    take(edits::setSparePieces(bench_.season(), (*most)->id, (*most)->sparePieces.value + 1));
}

void PiecesTab::arrange() {
    const int least = PieceColumns::picture() + 2 * PieceColumns::count() + PieceColumns::worth() +
                      5 * PieceColumns::gap() + grid(45);
    const bool narrow = width() < least;
    heads_->setVisible(!narrow && !views_.empty());
    for (auto* view : views_)
        view->setNarrow(narrow);
}

void PiecesTab::resizeEvent(QResizeEvent* event) {
    BookingTab::resizeEvent(event);
    arrange();
}

void PiecesTab::changeEvent(QEvent* event) {
    BookingTab::changeEvent(event);
    if (event->type() == QEvent::StyleChange) arrange();
}

} // namespace withy::ui
