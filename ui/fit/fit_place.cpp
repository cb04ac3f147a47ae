// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fit/fit_place.h"

#include "ui/common/field_edit.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/fit/fit_questions.h"
#include "ui/fit/fit_reply.h"
#include "ui/logic/edits/fit_edits.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

FitPlace::FitPlace(Workbench& bench, QWidget* parent)
    : Place(bench, parent)
    , runner_([this] {
        QMetaObject::invokeMethod(
            this, [this] { showAnswer(); }, Qt::QueuedConnection);
    })
    , page_(new QWidget)
    , sides_(new QBoxLayout(QBoxLayout::LeftToRight))
    , questions_(new FitQuestions(bench))
    , reply_(new FitReply(bench)) {
    setObjectName(QStringLiteral("fit"));
    auto* left = new QWidget;
    auto* asked = new QVBoxLayout(left);
    asked->setContentsMargins(0, 0, 0, 0);
    asked->setSpacing(grid(3));
    asked->addWidget(new TextLabel(TypeRole::title, tr("Can I take it?")));
    asked->addWidget(questions_, 1);
    sides_->setSpacing(grid(6));
    sides_->addWidget(left, 2);
    sides_->addWidget(reply_, 5);
    auto* rows = new QVBoxLayout(page_);
    rows->setContentsMargins(pageMargin(), grid(4), pageMargin(), pageMargin());
    rows->addLayout(sides_);
    rows->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(page_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(scroll);
    connect(questions_, &FitQuestions::changed, this, &FitPlace::ask);
    connect(reply_, &FitReply::dayChosen, questions_, &FitQuestions::setDay);
    connect(reply_, &FitReply::enquiryAsked, this, [this] { keep(false); });
    connect(reply_, &FitReply::holdAsked, this, [this] { keep(true); });
    connect(reply_, &FitReply::refused, this, &Place::refused);
    connect(reply_, &FitReply::leadTo, this, &Place::leadTo);
    connect(reply_, &FitReply::leaveAsked, this, &Place::left);
    auto* seen = new WhenSeen(this, [this] {
        questions_->refresh();
        ask();
    });
    connect(&bench, &Workbench::changed, seen, &WhenSeen::ask);
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    ask();
}

void FitPlace::addActions(Actions& actions) {
    actions.add({"fit.clear", tr("Another &client"), {}, tr("Clears what was asked under Can I take it?")},
                [this] {
                    Q_EMIT wanted();
                    questions_->clear();
                    enter();
                });
}

void FitPlace::enter() {
    questions_->enter();
}

void FitPlace::ask() {
    const auto question = askOf(questions_->draft());
    if (!question || !bench_.plan().cover) {
        waiting_ = false;
        shown_.reset();
        const auto& draft = questions_->draft();
        return reply_->showWords(fitWaiting(draft), draft.day
                                                        ? std::vector<Day>{}
                                                        : freeSaturdays(bench_.season(), bench_.today(), 6));
    }
    if (!bench_.planIsCurrent()) { // planned() asks; an answer on its way is to an older question
        waiting_ = false;
        return reply_->setThinking(true);
    }
    plan::FitOptions options;
    options.today = bench_.today();
    waiting_ = true;
    reply_->setThinking(shown_ != nullptr);
    runner_.ask({bench_.season(), bench_.plan(), *question, options});
}

void FitPlace::showAnswer() {
    const auto run = runner_.finished();
    if (!waiting_ || !run || run->turn != runner_.asked()) return;
    waiting_ = false;
    reply_->setThinking(false);
    shown_ = run->fault.isEmpty() && run->answer.ok() ? run : nullptr;
    if (!run->fault.isEmpty()) return reply_->showWords(run->fault);
    if (!shown_) return reply_->showWords(fitFault(run->answer.error()));
    const auto& draft = questions_->draft();
    reply_->showAnswer({run->question->season, draft, *run->answer},
                       tr("Hold &until %1").arg(shortDay(edits::usualHold(draft, bench_.today()))));
}

void FitPlace::waitForAnswer() {
    bench_.waitForPlan();
    if (!waiting_) return;
    (void)runner_.wait();
    showAnswer();
}

void FitPlace::keep(bool hold) {
    commitFocusedField(this);
    if (!questions_->takeTyped()) return;
    if (waiting_ || !shown_) return; // what is asked now is answered first
    const auto& draft = questions_->draft();
    if (!askOf(draft)) return;
    Id<model::Booking> made;
    const auto edit =
        hold ? edits::holdOf(bench_.season(), draft, edits::usualHold(draft, bench_.today()), made)
             : edits::enquiryOf(bench_.season(), draft, made);
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) return;
    questions_->clear();
    Q_EMIT leadTo({model::TableKind::bookings, made.value});
}

void FitPlace::fold() {
    sides_->setDirection(width() < grid(210) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void FitPlace::resizeEvent(QResizeEvent* event) {
    Place::resizeEvent(event);
    fold();
}

void FitPlace::showEvent(QShowEvent* event) {
    Place::showEvent(event);
    fold();
}

void FitPlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return Q_EMIT left();
    Place::keyPressEvent(event);
}

} // namespace withy::ui
