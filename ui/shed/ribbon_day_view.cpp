// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/ribbon_day_view.h"

#include "ui/common/figure.h"
#include "ui/common/scene_view.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/format.h"
#include "ui/logic/shed/return_words.h"
#include "ui/logic/shed/ribbon_scene.h"
#include "ui/paint/spacing.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// One ribbon of the day: words at the left, bars, the verdict below them.
QWidget* ribbonView(Workbench& bench, Day day, std::shared_ptr<const plan::RibbonCutPlan> plan,
                    const std::function<void(const model::Ref&)>& lead) {
    const auto row = ribbonRow(bench.season(), *plan, bench.plan().shed.get(), day);
    const QString id = QStringLiteral("shed.ribbon.%1").arg(plan->ribbon.value);
    auto* view = new QWidget;
    auto* grid_ = new QGridLayout(view);
    grid_->setContentsMargins(0, grid(1), 0, grid(1));
    grid_->setHorizontalSpacing(grid(2));
    grid_->setVerticalSpacing(grid(0.5));
    auto* name = new TextLabel(TypeRole::strong, breakable(row.name));
    name->setWordWrap(true);
    grid_->addWidget(name, 0, 0, 1, 2);
    auto* needs = new TextLabel(TypeRole::caption, row.needs, Ink::second);
    grid_->addWidget(needs, 0, 2, Qt::AlignLeft | Qt::AlignBottom);
    grid_->setColumnStretch(2, 1);
    auto* bars = new SceneView(id + QStringLiteral(".bars"),
                               RibbonDayView::tr("Reels and ends of %1 with their cuts").arg(row.name));
    bars->setMaker([&bench, plan](double width, const SceneLook& look) {
        const double lead_ = std::min(width * 0.25, double(grid(46)));
        const RibbonSceneRoom room{width, double(grid(6)), lead_};
        return ribbonScene(bench.season(), *plan, room, look);
    });
    grid_->addWidget(bars, 1, 0, 1, 3);
    auto* verdict = new TextLabel(TypeRole::strong, row.verdict, row.asks ? Ink::osier : Ink::text);
    grid_->addWidget(verdict, 2, 0);
    auto* figure = new FigureButton(view); // never seen without a place
    figure->setObjectName(id + QStringLiteral(".figure"));
    auto* working = new WorkingPanel;
    working->hide();
    const FigureFacts facts{row.figure,
                            RibbonDayView::tr("of %1").arg(row.name),
                            row.working,
                            model::Ref{model::TableKind::ribbons, plan->ribbon.value},
                            RibbonDayView::tr("Show its reels and ends"),
                            {},
                            bench.season().theSettings().units};
    figure->setFacts(facts);
    working->setFacts(facts);
    figure->setVisible(!row.figure.isEmpty());
    if (row.asks) figure->setProperty("asks", true);
    grid_->addWidget(figure, 2, 1, Qt::AlignLeft);
    auto* under = new TextLabel(TypeRole::caption, breakable(row.under), Ink::second);
    under->setWordWrap(true);
    grid_->addWidget(under, 2, 2);
    grid_->addWidget(working, 3, 0, 1, 3);
    QObject::connect(figure, &FigureButton::opened, working, &QWidget::setVisible);
    QObject::connect(working, &WorkingPanel::leadTo, view, lead);
    return view;
}

} // namespace

RibbonDayView::RibbonDayView(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , days_(new QComboBox)
    , writeBack_(namedButton(tr("Cut as planned: &write back what is left"), "shed.ribbon.write_back"))
    , rows_(new QVBoxLayout)
    , none_(new TextLabel(TypeRole::text, tr("No ribbon is to be cut."), Ink::second)) {
    days_->setObjectName(QStringLiteral("shed.ribbon.day"));
    days_->setAccessibleName(tr("Ribbon of which day"));
    days_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    days_->setMinimumContentsLength(12);
    writeBack_->setToolTip(
        tr("Shortens the reels and ends by what was cut, and takes out what is too short to keep"));
    auto* head = new QHBoxLayout;
    head->setSpacing(grid(2));
    head->addWidget(new TextLabel(TypeRole::head, tr("Ribbon")));
    head->addWidget(days_, 1);
    head->addWidget(writeBack_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(1));
    all->addLayout(head);
    all->addWidget(new Rule(Rule::Kind::head));
    all->addWidget(none_);
    all->addLayout(rows_);
    connect(days_, &QComboBox::activated, this, &RibbonDayView::fillRibbons);
    connect(writeBack_, &QPushButton::clicked, this, &RibbonDayView::takeBack);
}

const plan::RibbonDay* RibbonDayView::day() const {
    const auto& shed = bench_.plan().shed;
    const int at = days_->currentIndex();
    if (!shed || at < 0 || at >= static_cast<int>(shed->ribbon.size())) return nullptr;
    return shed->ribbon[static_cast<std::size_t>(at)].get();
}

void RibbonDayView::refresh() {
    fillDays();
    fillRibbons();
}

void RibbonDayView::fillDays() {
    const QVariant was = days_->currentData();
    days_->clear();
    const auto& shed = bench_.plan().shed;
    int chosen = -1;
    for (std::size_t i = 0; shed && i < shed->ribbon.size(); ++i) {
        const auto& one = *shed->ribbon[i];
        days_->addItem(ribbonDayWords(bench_.season(), one), one.day.number);
        if (was.isValid() && was.toInt() == one.day.number) chosen = static_cast<int>(i);
        if (!was.isValid() && chosen < 0 && (!shed->today || one.day >= *shed->today))
            chosen = static_cast<int>(i);
    }
    if (days_->count() > 0) days_->setCurrentIndex(std::max(0, chosen));
    days_->setVisible(days_->count() > 0);
    none_->setVisible(days_->count() == 0);
}

void RibbonDayView::fillRibbons() {
    clearLayout(*rows_);
    const auto* one = day();
    // A later day's reels are what the earlier ones leave: they are written back in their order.
    writeBack_->setVisible(one && days_->currentIndex() == 0);
    if (!one) return;
    for (const auto& plan : one->ribbons) {
        rows_->addWidget(
            ribbonView(bench_, one->day, plan, [this](const model::Ref& ref) { Q_EMIT leadTo(ref); }));
        rows_->addWidget(new Rule(Rule::Kind::hair));
    }
    for (const auto& shades : one->shades) {
        const QString words = shadeWords(bench_.season(), shades);
        const auto* line = bench_.season().lines.find(shades.line);
        const auto* design = line ? bench_.season().designs.find(line->design) : nullptr;
        if (words.isEmpty() || !design) continue;
        auto* label = new TextLabel(TypeRole::text, breakable(tr("%1: %2").arg(text(design->name), words)),
                                    Ink::second);
        label->setWordWrap(true);
        rows_->addWidget(label);
    }
}

void RibbonDayView::takeBack() {
    if (days_->currentIndex() != 0) return;
    bool written = false;
    Q_EMIT refused(writeRibbonBack(bench_, Day{days_->currentData().toInt()}, written));
    if (written) Q_EMIT said(ribbonIsBackWords());
}

} // namespace withy::ui
