// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/brief_tab.h"

#include "ui/bookings/brief_colours.h"
#include "ui/bookings/brief_questions.h"
#include "ui/bookings/brief_venue.h"
#include "ui/bookings/quick_line.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/record_form.h"
#include "ui/common/record_table.h"
#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/booking_words.h"
#include "ui/paint/icons.h"
#include "ui/shell/actions.h"

#include <QEvent>

namespace withy::ui {

namespace {

using model::TableKind;

RecordTableSpec ofBooking(TableKind kind, std::vector<std::string> columns) {
    RecordTableSpec spec;
    spec.kind = kind;
    spec.columns = std::move(columns);
    spec.parent = std::pair{std::string("booking"), std::int64_t{0}};
    return spec;
}

RecordTableSpec sorted(RecordTableSpec spec, const char* field) {
    spec.sortField = field;
    return spec;
}

RecordTableSpec ordered(RecordTableSpec spec, const char* field) {
    spec.orderField = field;
    return spec;
}

} // namespace

BriefTab::BriefTab(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , answer_(new AnswerLabel)
    , remark_(remark({}, Ink::second))
    , columns_(new QBoxLayout(QBoxLayout::LeftToRight)) {
    answer_->setObjectName(QStringLiteral("brief.answer"));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(pageMargin(), grid(3), pageMargin(), pageMargin());
    all->setSpacing(grid(2));
    all->addWidget(answer_);
    all->addWidget(remark_);
    all->addLayout(columns_);
    all->addStretch(1);
    columns_->addWidget(makeLeft(), 1);
    columns_->addWidget(makeRight(), 1);
    connect(&bench_, &Workbench::changed, this, &BriefTab::refresh);
    connect(&bench_, &Workbench::dayTurned, this, &BriefTab::refresh);
    arrange();
}

QWidget* BriefTab::makeLeft() {
    auto* column = new QWidget;
    auto* rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(3));
    questions_ = new BriefQuestions(bench_);
    forms_ = {
        new RecordForm(bench_, TableKind::bookings,
                       {{tr("Who and when"),
                         {"event_start", "event_end", "client", "venue", "kind", "look_good_until",
                          "make_from", "standing", "held_until"}}}),
        new RecordForm(bench_, TableKind::bookings,
                       {{tr("The flowers"),
                         {"wishes", "must_have", "must_not", "allergies", "scent", "animals", "candles"}}}),
        new RecordForm(bench_, TableKind::bookings,
                       {{tr("A sum in mind, and notes"), {"budget", "gift_share", "notes"}}})};
    rows->addWidget(questions_);
    rows->addWidget(forms_[0]);
    rows->addWidget(forms_[1]);
    rows->addWidget(makeCaution());
    rows->addWidget(forms_[2]);
    rows->addStretch(1);
    connect(questions_, &BriefQuestions::refused, this, &BriefTab::refused);
    for (auto* form : forms_) {
        form->setMostColumns(1);
        connect(form, &RecordForm::refused, this, &BriefTab::refused);
    }
    return column;
}

QWidget* BriefTab::makeCaution() {
    auto* row = new QWidget;
    auto* mark = new QLabel;
    dressAgain(mark, [mark] { mark->setPixmap(icon(IconName::caution, currentPalette()).pixmap(grid(5))); });
    mark->setAccessibleName(tr("Caution"));
    caution_ = remark({}, Ink::text);
    caution_->setObjectName(QStringLiteral("brief.candlesCaution"));
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(grid(2));
    across->addWidget(mark, 0, Qt::AlignTop);
    across->addWidget(caution_, 1);
    return row;
}

QWidget* BriefTab::addTable(const QString& head, const QString& words, RecordTable* table) {
    auto* group = new Group(head);
    group->setRemark(words);
    group->add(table);
    table->growWithRows();
    connect(table, &RecordTable::refused, this, &BriefTab::refused);
    connect(table, &RecordTable::blocked, this, &BriefTab::refused);
    return group;
}

QWidget* BriefTab::makeRight() {
    auto* column = new QWidget;
    auto* rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(3));
    colours_ = new BriefColours(bench_);
    swaps_ = new RecordTable(bench_,
                             ordered(ofBooking(TableKind::agreedSwaps, {"plant", "stand_in"}), "position"));
    swaps_->setEmptyWords(tr("No swaps agreed yet. What may stand in if something fails?"));
    drops_ = new RecordTable(bench_, sorted(ofBooking(TableKind::drops, {"time", "place", "received_by",
                                                                         "cleared_at", "cleared_by"}),
                                            "time"));
    drops_->setEmptyWords(tr("No drop yet: flowers are taken to be due an hour before the guests."));
    sent_ =
        new RecordTable(bench_, sorted(ofBooking(TableKind::sentVersions, {"date", "kind", "text"}), "date"));
    sent_->setEmptyWords(tr("The client has seen nothing yet."));
    venue_ = new BriefVenue(bench_);
    rows->addWidget(colours_);
    rows->addWidget(
        addTable(tr("Agreed swaps, in order"), tr("tried from the top; drag to reorder"), swaps_));
    rows->addWidget(addTable(tr("Drops"), tr("where, when and to whom"), drops_));
    rows->addWidget(venue_);
    rows->addWidget(addTable(tr("Sent to the client"), tr("as it then stood"), sent_));
    rows->addStretch(1);
    connect(colours_, &BriefColours::refused, this, &BriefTab::refused);
    connect(venue_, &BriefVenue::refused, this, &BriefTab::refused);
    return column;
}

void BriefTab::show(std::optional<Id<model::Booking>> id) {
    id_ = id;
    const auto raw = id ? std::optional(id->value) : std::nullopt;
    for (auto* form : forms_)
        form->show(raw);
    for (auto* table : {swaps_, drops_, sent_})
        table->showParent(raw);
    questions_->showBooking(id);
    colours_->showBooking(id);
    venue_->showBooking(id);
    refresh();
}

void BriefTab::enter() {
    if (auto* first = forms_.front()->field("event_start")) first->setFocus(Qt::TabFocusReason); // selects it
}

void BriefTab::addActions(Actions& actions) {
    const auto goTo = [this](QWidget* part) {
        Q_EMIT wanted();
        part->setFocus(Qt::ShortcutFocusReason);
    };
    actions.add({"booking.sayTables", tr("Say the &tables"), Qt::CTRL | Qt::SHIFT | Qt::Key_T,
                 tr("12 trestles of 8: makes the tables of the venue")},
                [this, goTo] { goTo(venue_->tablesLine()); });
    actions.add({"booking.sayColours", tr("Say the wished &colours"), Qt::CTRL | Qt::SHIFT | Qt::Key_C,
                 tr("plum 30, coral 30: with their shares")},
                [this, goTo] { goTo(colours_->line()); });
    actions.add({"booking.ask", tr("Note an open &question"), Qt::CTRL | Qt::SHIFT | Qt::Key_Q,
                 tr("What must still be asked, and by when")},
                [this, goTo] {
                    goTo(&questions_->open());
                    questions_->open().startNewRow();
                });
}

void BriefTab::refresh() {
    if (!id_) return;
    answer_->setPhrases(phrasesOf(openAnswer(bench_.season(), *id_, bench_.today())));
    const QString words = briefRemark(bench_.season(), *id_);
    remark_->setText(words);
    remark_->setVisible(!words.isEmpty());
    caution_->setText(candlesCaution(bench_.season(), *id_));
}

void BriefTab::arrange() {
    const bool wide = width() >= grid(190);
    columns_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    columns_->setSpacing(wide ? grid(10) : grid(3));
}

void BriefTab::resizeEvent(QResizeEvent* event) {
    BookingTab::resizeEvent(event);
    arrange();
}

void BriefTab::changeEvent(QEvent* event) {
    BookingTab::changeEvent(event);
    if (event->type() == QEvent::StyleChange) arrange();
}

} // namespace withy::ui
