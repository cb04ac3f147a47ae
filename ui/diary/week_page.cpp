// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/week_page.h"

#include "ui/common/figure.h"
#include "ui/common/run_up_desk.h"
#include "ui/common/run_up_timeline.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_working.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

/// The week of today, or the nearest of the season.
Day firstWeek(const Workbench& bench) {
    const auto& s = bench.season().theSettings();
    return weekOf(std::clamp(bench.today().value_or(s.firstDay), s.firstDay, s.lastDay));
}

} // namespace

WeekPage::WeekPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , monday_(firstWeek(bench))
    , desk_(new RunUpDesk(bench, BoardStyle::week, QStringLiteral("diary.week")))
    , sum_(new QWidget)
    , work_(new FigureButton)
    , working_(new WorkingPanel)
    , todays_(new TextLabel(TypeRole::text))
    , key_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , week_(new TextLabel(TypeRole::strong))
    , tools_(new QWidget(this)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    auto* earlier = namedButton(tr("Ea&rlier"), "diary.week.earlier_button");
    auto* later = namedButton(tr("&Later"), "diary.week.later_button");
    auto* now = namedButton(tr("&This week"), "diary.week.now_button");
    for (auto* w : std::initializer_list<QWidget*>{week_, earlier, now, later})
        tools->addWidget(w);
    connect(earlier, &QPushButton::clicked, this, [this] { showWeek(monday_ - 7); });
    connect(later, &QPushButton::clicked, this, [this] { showWeek(monday_ + 7); });
    connect(now, &QPushButton::clicked, this, [this] { showWeek(firstWeek(bench_)); });

    work_->setObjectName(QStringLiteral("diary.week.work"));
    working_->hide();
    auto* sum = new QHBoxLayout(sum_);
    sum->setContentsMargins(0, 0, 0, 0);
    sum->setSpacing(grid(2));
    sum->addWidget(work_);
    sum->addWidget(new TextLabel(TypeRole::text, tr("of work this week"), Ink::second), 1);
    connect(work_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &SubPage::leadTo);
    todays_->setObjectName(QStringLiteral("diary.week.today"));
    key_->setObjectName(QStringLiteral("diary.week.key"));
    key_->setWordWrap(true);
    auto* page = new QWidget;
    auto* inside = new QVBoxLayout(page);
    inside->setContentsMargins(0, 0, 0, grid(4));
    inside->setSpacing(grid(3));
    inside->addWidget(todays_);
    inside->addWidget(sum_);
    inside->addWidget(working_);
    inside->addWidget(key_);
    inside->addWidget(desk_);
    inside->addStretch(1);
    connect(desk_, &RunUpDesk::leadTo, this, &SubPage::leadTo);
    connect(desk_, &RunUpDesk::told, this, &SubPage::said);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(scrolledPage(page), 1);
    const auto refreshSeen = [this] {
        if (isVisible()) refresh(); // otherwise when it is seen
    };
    connect(&bench, &Workbench::changed, this, refreshSeen);
    connect(&bench, &Workbench::planned, this, refreshSeen);
    refresh();
}

Answer WeekPage::answer() const {
    return weekAnswer(desk_->steps()->days(), bench_.season(), bench_.plan());
}

void WeekPage::addActions(Actions& actions) {
    actions.add({"diary.week.earlier", tr("Week &before"), Qt::ALT | Qt::Key_PageUp,
                 tr("The steps of the week before the one in view")},
                [this] {
                    Q_EMIT wanted();
                    showWeek(monday_ - 7);
                });
    actions.add({"diary.week.later", tr("Week &after"), Qt::ALT | Qt::Key_PageDown,
                 tr("The steps of the week after the one in view")},
                [this] {
                    Q_EMIT wanted();
                    showWeek(monday_ + 7);
                });
    actions.add({"diary.week.now", tr("&This week"), Qt::ALT | Qt::Key_Home, tr("Back to the week of today")},
                [this] {
                    Q_EMIT wanted();
                    showWeek(firstWeek(bench_));
                });
    actions.add({"diary.week.next_work", tr("Ne&xt week with work"), Qt::ALT | Qt::Key_End,
                 tr("Passes over the weeks in which nothing is to be done")},
                [this] {
                    Q_EMIT wanted();
                    showNextWork();
                });
}

void WeekPage::enter() {
    desk_->timeline()->setFocus(Qt::TabFocusReason);
}

QWidget* WeekPage::tools() const {
    return tools_;
}

void WeekPage::showWeek(Day anyDay) {
    monday_ = weekOf(anyDay);
    refresh();
}

void WeekPage::showNextWork() {
    const auto last = bench_.season().theSettings().lastDay;
    for (Day day = monday_ + 7; day <= last + 7; day = day + 7) {
        const auto days = stepsOfWeek(bench_.season(), bench_.plan(), day);
        if (std::any_of(days.begin(), days.end(), [](const WeekDay& d) { return d.work.value > 0; })) {
            showWeek(day);
            return;
        }
    }
    Q_EMIT said(tr("Nothing more to do this season."));
}

void WeekPage::refresh() {
    desk_->showWeek(monday_);
    week_->setText(tr("Week of %1").arg(shortDay(monday_)));
    const auto today = bench_.today();
    const QString todays =
        today && weekOf(*today) == monday_ ? todayWords(bench_.season(), bench_.plan(), *today) : QString();
    todays_->setText(todays);
    todays_->setVisible(!todays.isEmpty());
    const auto work = weekFigure(desk_->steps()->days());
    const FigureFacts facts{work.words, work.means, work.working, std::nullopt, {}, {}};
    work_->setFacts(facts);
    working_->setFacts(facts);
    sum_->setVisible(!work.words.isEmpty());
    QStringList key;
    for (const auto& [letter, booking] : desk_->timeline()->board().key)
        key << breakable(letter + QChar::Nbsp + QString(booking).replace(QLatin1Char(' '), QChar::Nbsp));
    key_->setText(key.join(QStringLiteral("   ·  ")));
    key_->setVisible(!key.isEmpty());
    Q_EMIT answerChanged();
}

void WeekPage::showEvent(QShowEvent* event) {
    SubPage::showEvent(event);
    refresh();
}

} // namespace withy::ui
