// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fit/fit_reply.h"

#include "ui/bookings/tabs/cover_cells.h"
#include "ui/bookings/tabs/flow_row.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/text_label.h"
#include "ui/logic/format.h"
#include "ui/logic/models/fit_working.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

TextLabel* wrapped(TypeRole type, Ink ink, const char* name) {
    auto* label = new TextLabel(type, {}, ink);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    return label;
}

} // namespace

FitReply::FitReply(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , jar_(new JarCell)
    , head_(new AnswerLabel)
    , reason_(wrapped(TypeRole::text, Ink::second, "fit.reason"))
    , sayBox_(new QWidget)
    , say_(wrapped(TypeRole::text, Ink::text, "fit.say"))
    , body_(new QWidget)
    , sheet_(new SheetTable(bench, QStringLiteral("fit.rows")))
    , most_(wrapped(TypeRole::strong, Ink::text, "fit.most"))
    , datesHead_(new TextLabel(TypeRole::head, tr("Nearest dates that fit")))
    , dates_(new QWidget)
    , dateRow_(new FlowRow(dates_))
    , leaning_(wrapped(TypeRole::text, Ink::second, "fit.leaning"))
    , buttons_(makeButtons())
    , freeHead_(new TextLabel(TypeRole::head, tr("Nearest Saturdays with nothing promised")))
    , before_(makeBefore()) {
    head_->setObjectName(QStringLiteral("fit.answer"));
    head_->setWordWrap(true);
    auto* top = new QHBoxLayout;
    top->setSpacing(grid(3));
    top->addWidget(jar_, 0, Qt::AlignTop);
    top->addWidget(head_, 1);
    sayBox_->setProperty("look", QStringLiteral("working"));
    auto* saying = new QHBoxLayout(sayBox_);
    saying->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    saying->setSpacing(grid(3));
    saying->addWidget(new TextLabel(TypeRole::caption, tr("To say"), Ink::caption));
    saying->addWidget(say_, 1);
    auto* parts = new QVBoxLayout(body_);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(grid(3));
    parts->addWidget(reason_);
    parts->addWidget(sayBox_);
    parts->addWidget(sheet_);
    parts->addWidget(most_);
    parts->addWidget(datesHead_);
    parts->addWidget(dates_);
    parts->addWidget(leaning_);
    parts->addWidget(buttons_);
    connect(sheet_, &SheetTable::refused, this, &FitReply::refused);
    connect(sheet_, &SheetTable::leadTo, this, &FitReply::leadTo);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(3));
    rows->addLayout(top);
    rows->addWidget(body_);
    rows->addWidget(before_);
    rows->addStretch(1);
}

QWidget* FitReply::makeBefore() {
    auto* before = new QWidget;
    auto* rows = new QVBoxLayout(before);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(grid(3));
    auto* buttons = new QWidget;
    freeRow_ = new FlowRow(buttons);
    rows->addWidget(freeHead_);
    rows->addWidget(buttons);
    auto* told = wrapped(TypeRole::text, Ink::second, "fit.told");
    told->setText(
        tr("The answer counts the stems you expect that week, what is already promised, the hours of "
           "those who make, and the containers and buckets that are in. It says how many fit, the words "
           "for the caller, and the nearest days when all of it would. Nothing is kept until you say so."));
    rows->addWidget(told);
    return before;
}

QWidget* FitReply::makeButtons() {
    auto* holder = new QWidget;
    auto* enquiry = new QPushButton(tr("Make it an enquir&y"));
    enquiry->setObjectName(QStringLiteral("fit.enquiry"));
    enquiry->setProperty("look", QStringLiteral("main"));
    hold_ = new QPushButton;
    hold_->setObjectName(QStringLiteral("fit.hold"));
    auto* leave = new QPushButton(tr("Not this &time"));
    leave->setObjectName(QStringLiteral("fit.leave"));
    auto* row = new FlowRow(holder);
    for (auto* button : {enquiry, hold_, leave})
        row->addWidget(button);
    connect(enquiry, &QPushButton::clicked, this, &FitReply::enquiryAsked);
    connect(hold_, &QPushButton::clicked, this, &FitReply::holdAsked);
    connect(leave, &QPushButton::clicked, this, &FitReply::leaveAsked);
    return holder;
}

void FitReply::showAnswer(const FitView& view, const QString& holdWords) {
    before_->setVisible(false);
    jar_->setVisible(true);
    jar_->setJar({fitState(view.answer.fit), 0.3});
    head_->setPhrases(phrasesOf(fitAnswer(view)));
    reason_->setText(breakable(fitReason(view)));
    say_->setText(breakable(fitToSay(view)));
    auto sheet = fitSheet(view);
    addFitFigures(view, sheet);
    sheet_->setSheet(sheet);
    most_->setText(breakable(fitMost(view).join(QLatin1Char('\n'))));
    most_->setVisible(!most_->text().isEmpty());
    showDates(view.answer.dates);
    leaning_->setText(breakable(fitLeaning(view)));
    hold_->setText(holdWords);
    body_->setVisible(true);
}

void FitReply::showDates(const std::vector<plan::FitDate>& dates) {
    shownDates_ = dates;
    while (dateButtons_.size() < dates.size()) {
        const auto index = dateButtons_.size();
        auto* button = new QPushButton;
        button->setObjectName(QStringLiteral("fit.date.%1").arg(index));
        dateRow_->addWidget(button);
        dateButtons_.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, index] {
            if (index < shownDates_.size()) Q_EMIT dayChosen(shownDates_[index].eventStart.day);
        });
    }
    for (std::size_t i = 0; i < dateButtons_.size(); ++i) {
        const bool there = i < dates.size();
        if (there) dateButtons_[i]->setText(fitDateWords(dates[i]));
        dateButtons_[i]->setVisible(there);
    }
    datesHead_->setVisible(!dates.empty());
    dates_->setVisible(!dates.empty());
    dateRow_->invalidate();
    dates_->updateGeometry();
}

void FitReply::showWords(const QString& words, const std::vector<Day>& free) {
    jar_->setVisible(false);
    body_->setVisible(false);
    before_->setVisible(true);
    shownFree_ = free;
    while (freeButtons_.size() < free.size()) {
        const auto index = freeButtons_.size();
        auto* button = new QPushButton;
        button->setObjectName(QStringLiteral("fit.free.%1").arg(index));
        freeRow_->addWidget(button);
        freeButtons_.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, index] {
            if (index < shownFree_.size()) Q_EMIT dayChosen(shownFree_[index]);
        });
    }
    for (std::size_t i = 0; i < freeButtons_.size(); ++i) {
        if (i < free.size()) freeButtons_[i]->setText(shortDay(free[i]));
        freeButtons_[i]->setVisible(i < free.size());
    }
    freeHead_->setVisible(!free.empty());
    freeRow_->invalidate();
    head_->setPhrases({{words, Phrase::Weight::plain}});
}

void FitReply::setThinking(bool thinking) {
    reason_->setInk(thinking ? Ink::caption : Ink::second);
}

} // namespace withy::ui
