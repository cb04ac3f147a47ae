// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/figure_pages.h"

#include "ui/common/text_label.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/paint/spacing.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

struct FigurePagesSay {
    Q_DECLARE_TR_FUNCTIONS(FigurePages)
};

/// What common practice stands in for, above the grower's own times; gone when all are the grower's.
class StandIns : public QWidget {
public:
    explicit StandIns(Workbench& bench)
        : bench_(bench)
        , works_(new TextLabel(TypeRole::caption, {}, Ink::caption))
        , minutes_(new TextLabel(TypeRole::caption, {}, Ink::caption)) {
        setObjectName(QStringLiteral("season.rates.stand_ins"));
        minutes_->setAlignment(Qt::AlignRight | Qt::AlignTop);
        auto* both = new QGridLayout(this);
        both->setContentsMargins(0, 0, 0, grid(3));
        both->setHorizontalSpacing(grid(4));
        both->setVerticalSpacing(grid(1));
        both->addWidget(
            new TextLabel(TypeRole::strong, FigurePagesSay::tr("Standing in, until you time them")), 0, 0, 1,
            3);
        both->addWidget(works_, 1, 0);
        both->addWidget(minutes_, 1, 1);
        both->setColumnStretch(2, 1);
        connect(&bench, &Workbench::changed, this, [this] { fill(); });
        fill();
    }

private:
    void fill() {
        QStringList works, minutes;
        for (const auto& time : standInTimes(bench_.season())) {
            works << time.work;
            minutes << time.minutes;
        }
        works_->setText(works.join(QLatin1Char('\n')));
        minutes_->setText(minutes.join(QLatin1Char('\n')));
        if (parentWidget()) setVisible(!works.isEmpty());
    }

    void showEvent(QShowEvent* event) override {
        QWidget::showEvent(event);
        fill();
    }

    Workbench& bench_;
    TextLabel* works_;
    TextLabel* minutes_;
};

} // namespace

RecordPage* ratesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "season.rates";
    spec.name = FigurePagesSay::tr("Times of work");
    spec.emptyWords = FigurePagesSay::tr("None of your own yet: common practice stands in for all of them.");
    spec.newWords = FigurePagesSay::tr("&New time");
    spec.answer = [&bench] { return ratesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::rates;
    spec.table.columns = {"work", "minutes", "basis", "note"};
    spec.table.sortField = "work";
    auto* page = new RecordPage(bench, spec);
    if (auto* column = qobject_cast<QVBoxLayout*>(page->layout()))
        column->insertWidget(0, new StandIns(bench));
    return page;
}

} // namespace withy::ui
