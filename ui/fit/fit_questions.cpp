// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fit/fit_questions.h"

#include "ui/bookings/quick_line.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/fit/fit_line_row.h"
#include "ui/logic/fields/day_reading.h"
#include "ui/logic/format.h"
#include "ui/logic/models/fit_words.h"
#include "ui/paint/spacing.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

QLineEdit* field(const char* name, const QString& accessible, const QString& prompt) {
    auto* line = new QLineEdit;
    line->setObjectName(QString::fromLatin1(name));
    line->setAccessibleName(accessible);
    line->setPlaceholderText(prompt);
    line->setMaxLength(200);
    return line;
}

TextLabel* troubleLabel() {
    auto* label = new TextLabel(TypeRole::caption, {}, Ink::osier);
    label->setWordWrap(true);
    label->hide();
    return label;
}

} // namespace

FitQuestions::FitQuestions(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , when_(field("fit.when", tr("When"), tr("25 sep")))
    , whenTrouble_(troubleLabel())
    , guests_(field("fit.guests", tr("Guests from"), tr("12:00")))
    , guestsTrouble_(troubleLabel())
    , what_(new QuickLine("fit.what", tr("What"), tr("16 tables of supper jar"),
                          [this](const QString& typed) { return addPieces(typed); }))
    , lines_(new QVBoxLayout)
    , venue_(new QComboBox)
    , title_(field("fit.title", tr("For whom or what"), tr("harvest lunch"))) {
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(3));
    makeWhen(rows);
    lines_->setContentsMargins(0, 0, 0, 0);
    lines_->setSpacing(0);
    rows->addWidget(labelled(tr("What"), what_));
    rows->addLayout(lines_);
    venue_->setObjectName(QStringLiteral("fit.venue"));
    venue_->setAccessibleName(tr("Where"));
    venue_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    venue_->setMinimumContentsLength(12);
    rows->addWidget(labelled(tr("Where"), venue_));
    rows->addWidget(labelled(tr("For"), title_));
    rows->addStretch(1);
    connect(when_, &QLineEdit::editingFinished, this, &FitQuestions::readDayTyped);
    connect(guests_, &QLineEdit::editingFinished, this, &FitQuestions::readGuests);
    connect(what_->field(), &QLineEdit::editingFinished, this, &FitQuestions::takeTyped);
    connect(title_, &QLineEdit::textEdited, this, [this](const QString& words) { draft_.title = words; });
    connect(venue_, &QComboBox::activated, this, [this](int index) {
        const auto id = venue_->itemData(index).toLongLong();
        draft_.venue = id > 0 ? std::optional(Id<model::Venue>(id)) : std::nullopt;
        Q_EMIT changed();
    });
    fillVenues();
}

QWidget* FitQuestions::labelled(const QString& words, QWidget* field) {
    auto* holder = new QWidget;
    auto* rows = new QVBoxLayout(holder);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(1));
    rows->addWidget(new TextLabel(TypeRole::caption, words, Ink::caption));
    rows->addWidget(field);
    return holder;
}

void FitQuestions::makeWhen(QVBoxLayout* rows) {
    auto* both = new QHBoxLayout;
    both->setSpacing(grid(3));
    both->addWidget(labelled(tr("When"), when_), 2);
    both->addWidget(labelled(tr("Guests from"), guests_), 1);
    rows->addLayout(both);
    rows->addWidget(whenTrouble_);
    rows->addWidget(guestsTrouble_);
}

void FitQuestions::say(TextLabel* where, QLineEdit* field, const QString& sentence) {
    where->setText(sentence);
    where->setVisible(!sentence.isEmpty());
    field->setAccessibleDescription(sentence);
    markAs(field, "wrong", !sentence.isEmpty());
}

void FitQuestions::readDayTyped() {
    if (when_->text().isEmpty() && !draft_.day) return say(whenTrouble_, when_, {}); // not asked yet
    if (draft_.day && when_->text() == shortDay(*draft_.day)) return;
    const auto read = readFitDay(bench_.season(), when_->text());
    say(whenTrouble_, when_, read.sentence);
    draft_.day = read.day;
    if (read.minute && *read.minute < 24 * 60) draft_.minute = *read.minute;
    if (read.day) showDay();
    Q_EMIT changed();
}

void FitQuestions::readGuests() {
    if (guests_->text().trimmed().isEmpty()) return showDay();
    const auto minute = readClock(guests_->text());
    const bool ok = minute && *minute < 24 * 60;
    say(guestsTrouble_, guests_, ok ? QString() : fitBadHour(guests_->text()));
    if (!ok || *minute == draft_.minute) return;
    draft_.minute = *minute;
    showDay();
    Q_EMIT changed();
}

void FitQuestions::showDay() {
    if (draft_.day) when_->setText(shortDay(*draft_.day));
    guests_->setText(clockOf(draft_.minute));
    say(guestsTrouble_, guests_, {});
}

void FitQuestions::setDay(Day day) {
    draft_.day = day;
    say(whenTrouble_, when_, {});
    showDay();
    Q_EMIT changed();
}

QString FitQuestions::addPieces(const QString& typed) {
    const auto current = draft_.lines.empty() ? std::nullopt : std::optional(draft_.lines.back().design);
    const auto read = readFitPieces(bench_.season(), typed, current);
    if (!read.pieces) return read.sentence;
    draft_.lines.push_back(*read.pieces);
    showLines();
    Q_EMIT changed();
    return {};
}

bool FitQuestions::takeTyped() {
    const QString typed = what_->field()->text();
    if (typed.trimmed().isEmpty()) return true;
    const QString why = addPieces(typed);
    if (why.isEmpty())
        what_->clear();
    else
        what_->say(why);
    return why.isEmpty();
}

void FitQuestions::setCount(std::size_t line, qint64 count) {
    if (line >= draft_.lines.size() || count < 1) return;
    draft_.lines[line] = withCount(draft_.lines[line], count);
    showLines();
    Q_EMIT changed();
}

void FitQuestions::leaveOut(std::size_t line) {
    if (line >= draft_.lines.size()) return;
    draft_.lines.erase(draft_.lines.begin() + static_cast<std::ptrdiff_t>(line));
    what_->field()->setFocus(Qt::OtherFocusReason);
    showLines();
    Q_EMIT changed();
}

/// Rows are kept and hidden, so that the focus stays in the count that is being changed.
void FitQuestions::showLines() {
    while (rows_.size() < draft_.lines.size()) {
        const auto index = rows_.size();
        auto* row = new FitLineRow(static_cast<int>(index));
        connect(row, &FitLineRow::counted, this, [this, index](qint64 n) { setCount(index, n); });
        connect(row, &FitLineRow::removed, this, [this, index] { leaveOut(index); });
        lines_->addWidget(row);
        rows_.push_back(row);
        // Tab goes on from what is typed to what it has become.
        QWidget::setTabOrder(index == 0 ? static_cast<QWidget*>(what_->field()) : rows_[index - 1], row);
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const bool there = i < draft_.lines.size();
        if (there) rows_[i]->showLine(bench_.season(), draft_.lines[i]);
        rows_[i]->setVisible(there);
    }
}

void FitQuestions::fillVenues() {
    const QSignalBlocker quiet(venue_);
    venue_->clear();
    venue_->addItem(tr("not said yet"), 0);
    for (const auto& v : bench_.season().venues)
        venue_->addItem(text(v.name), qlonglong(v.id.value));
    const int at = draft_.venue ? venue_->findData(qlonglong(draft_.venue->value)) : 0;
    venue_->setCurrentIndex(std::max(0, at));
    if (at < 0) draft_.venue.reset();
}

void FitQuestions::clear() {
    draft_ = {};
    when_->clear();
    guests_->clear();
    title_->clear();
    what_->clear();
    say(whenTrouble_, when_, {});
    say(guestsTrouble_, guests_, {});
    showLines();
    fillVenues();
    Q_EMIT changed();
}

void FitQuestions::refresh() {
    fillVenues();
    std::erase_if(draft_.lines,
                  [this](const FitPieces& l) { return !bench_.season().designs.find(l.design); });
    showLines();
}

void FitQuestions::enter() {
    when_->setFocus(Qt::OtherFocusReason);
    when_->selectAll();
}

} // namespace withy::ui
