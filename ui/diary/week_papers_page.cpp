// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/week_papers_page.h"

#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/calendar_file.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/table_files.h"
#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"
#include "ui/shell/actions.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

WeekPapersPage::WeekPapersPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , monday_(nextWeekWithWork(bench.season(), bench.plan(), bench.today()))
    , desk_(new PaperDesk(bench, {PaperKind::weekBoard, PaperKind::helperSheet}))
    , week_(new TextLabel(TypeRole::strong))
    , tools_(new QWidget(this)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    auto* earlier = namedButton(tr("Ea&rlier"), "diary.papers.earlier");
    auto* later = namedButton(tr("La&ter"), "diary.papers.later");
    auto* calendar = namedButton(tr("&Calendar file"), "diary.papers.calendar");
    for (auto* w : std::initializer_list<QWidget*>{week_, earlier, later, calendar})
        tools->addWidget(w);
    connect(earlier, &QPushButton::clicked, this, [this] { showWeek(monday_ - 7); });
    connect(later, &QPushButton::clicked, this, [this] { showWeek(monday_ + 7); });
    connect(calendar, &QPushButton::clicked, this, &WeekPapersPage::askAndWriteCalendar);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(desk_);
    connect(desk_, &PaperDesk::refused, this, &SubPage::refused);
    connect(desk_, &PaperDesk::said, this, &SubPage::said);
    connect(desk_, &PaperDesk::wanted, this, &SubPage::wanted);
    turnTo(monday_);
    // Until somebody turns to another week, the next one with work: it may not have been planned yet.
    auto* seen = new WhenSeen(this, [this] {
        if (turned_) return;
        const Day next = nextWeekWithWork(bench_.season(), bench_.plan(), bench_.today());
        if (next != monday_) turnTo(next);
    });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
}

Answer WeekPapersPage::answer() const {
    return weekPapersAnswer();
}

void WeekPapersPage::addActions(Actions& actions) {
    actions.add({"season.calendar",
                 tr("Ca&lendar file…"),
                 {},
                 tr("Bookings, rounds and steps for any calendar; taken in again, it updates")},
                [this] {
                    Q_EMIT wanted();
                    askAndWriteCalendar();
                });
    actions.add({"diary.papers",
                 tr("Print the week b&oard"),
                 {},
                 tr("One sheet for the shed wall: all steps of the week")},
                [this] {
                    Q_EMIT wanted();
                    desk_->choose(PaperKind::weekBoard);
                });
}

void WeekPapersPage::enter() {
    desk_->enter();
}

QWidget* WeekPapersPage::tools() const {
    return tools_;
}

void WeekPapersPage::showWeek(Day anyDay) {
    turned_ = true;
    turnTo(weekOf(anyDay));
}

void WeekPapersPage::turnTo(Day monday) {
    monday_ = monday;
    week_->setText(tr("Week of %1").arg(shortDay(monday_)));
    desk_->setDay(monday_);
}

QString WeekPapersPage::writeCalendarTo(const QString& path) const {
    bench_.waitForPlan();
    return writeCalendar(bench_.season(), bench_.plan(), QDateTime::currentDateTimeUtc(), path);
}

void WeekPapersPage::askAndWriteCalendar() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Calendar file"), calendarFileName(bench_.season()), tr("Calendars (*.ics)"));
    if (path.isEmpty()) return;
    const QString words = writeCalendarTo(path);
    Q_EMIT refused(words);
    if (words.isEmpty()) Q_EMIT said(writtenWords(path));
}

} // namespace withy::ui
