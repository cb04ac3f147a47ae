// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/forecast_page.h"

#include "ui/common/figure.h"
#include "ui/common/finding_rows.h"
#include "ui/common/list_and_detail.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/garden/forecast_delegate.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/forecast_rows.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr int daysBack = 21;
constexpr int daysOn = 42;
constexpr int fortnight = 14;

TextLabel* wrapped(TypeRole type, const QString& words = {}, Ink ink = Ink::text) {
    auto* label = new TextLabel(type, words, ink);
    label->setWordWrap(true);
    return label;
}

} // namespace

ForecastPage::ForecastPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , model_(new ForecastModel(this))
    , delegate_(new ForecastDelegate(this))
    , heads_(new ForecastHeads(nullptr))
    , table_(new QTableView)
    , legend_(wrapped(TypeRole::caption,
                      tr("Line: likely · band: cautious to hopeful · dotted: a usual year · dot: a walk"),
                      Ink::caption))
    , fold_(linkButton({}, "garden.forecast.fold"))
    , lead_(new FigureButton)
    , leadWorking_(new WorkingPanel)
    , warmth_(wrapped(TypeRole::text, {}, Ink::second))
    , zoom_(new Segments(tr("Days shown"), {tr("Around today"), tr("All the season")}))
    , name_(wrapped(TypeRole::title))
    , plant_(wrapped(TypeRole::text, {}, Ink::second))
    , facts_(new QPushButton(tr("Patch &facts")))
    , range_(wrapped(TypeRole::text))
    , datesHead_(wrapped(TypeRole::strong))
    , dates_(new WorkingPanel)
    , stemsHead_(wrapped(TypeRole::strong))
    , stems_(new WorkingPanel)
    , findings_(new FindingRows(bench, QStringLiteral("garden.forecast.findings")))
    , tools_(new QWidget)
    , patchButton_(new QPushButton(tr("&Write down a patch")))
    , walkButton_(new QPushButton(tr("&Key in a walk")))
    , sheetButton_(new QPushButton(tr("Print &walk sheet"))) {
    auto* both = new ListAndDetail(makeList(), makeDetail());
    both->setListShare(70);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(both);
    walkButton_->setObjectName(QStringLiteral("garden.forecast.walk"));
    walkButton_->setProperty("look", QStringLiteral("main"));
    sheetButton_->setObjectName(QStringLiteral("garden.forecast.sheet"));
    patchButton_->setObjectName(QStringLiteral("garden.forecast.patch"));
    patchButton_->setProperty("look", QStringLiteral("main"));
    auto* row = new QHBoxLayout(tools_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    for (auto* button : {patchButton_, sheetButton_, walkButton_})
        row->addWidget(button);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    connect(&bench, &Workbench::changed, seen, &WhenSeen::ask);
    connect(findings_, &FindingRows::leadTo, this, &SubPage::leadTo);
    connect(findings_, &FindingRows::refused, this, &SubPage::refused);
    dress();
    seen->ask();
}

QWidget* ForecastPage::makeLead() {
    auto* line = new QWidget;
    lead_->setObjectName(QStringLiteral("garden.forecast.lead"));
    leadWorking_->setObjectName(QStringLiteral("garden.forecast.lead_working"));
    leadWorking_->hide();
    zoom_->setObjectName(QStringLiteral("garden.forecast.days"));
    zoom_->setCurrent(1);
    connect(lead_, &FigureButton::opened, leadWorking_, &QWidget::setVisible);
    for (auto* panel : {leadWorking_, dates_, stems_})
        connect(panel, &WorkingPanel::leadTo, this, &SubPage::leadTo);
    connect(zoom_, &Segments::chosen, this, &ForecastPage::showAxis);
    auto* column = new QVBoxLayout(line);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    row->addWidget(lead_);
    row->addWidget(warmth_, 1);
    row->addWidget(zoom_);
    column->addLayout(row);
    column->addWidget(leadWorking_);
    return line;
}

QWidget* ForecastPage::makeList() {
    table_->setObjectName(QStringLiteral("garden.forecast.table"));
    table_->setAccessibleName(tr("Forecast of each patch"));
    table_->setModel(model_);
    table_->setHorizontalHeader(heads_);
    table_->setItemDelegate(delegate_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->viewport()->installEventFilter(this);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ForecastPage::showChosen);
    auto* list = new QWidget;
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(0, grid(2), grid(2), 0);
    column->setSpacing(grid(2));
    column->addWidget(makeLead());
    column->addWidget(table_, 1);
    column->addWidget(fold_, 0, Qt::AlignLeft);
    column->addWidget(legend_);
    column->addStretch(0);
    connect(fold_, &QPushButton::clicked, this, [this] {
        folded_ = !folded_;
        foldRows();
    });
    return list;
}

QWidget* ForecastPage::makeDetail() {
    auto* detail = new QWidget;
    auto* column = new QVBoxLayout(detail);
    column->setContentsMargins(grid(4), grid(2), grid(1), grid(2));
    column->setSpacing(grid(1));
    auto* head = new QHBoxLayout;
    head->addWidget(name_, 1);
    facts_->setObjectName(QStringLiteral("garden.forecast.facts"));
    head->addWidget(facts_, 0, Qt::AlignTop);
    column->addLayout(head);
    column->addWidget(plant_);
    column->addWidget(range_);
    column->addSpacing(grid(1));
    dates_->setObjectName(QStringLiteral("garden.forecast.dates"));
    stems_->setObjectName(QStringLiteral("garden.forecast.stems"));
    for (auto* part : std::initializer_list<QWidget*>{datesHead_, dates_, stemsHead_, stems_, findings_})
        column->addWidget(part);
    column->addStretch(1);
    connect(facts_, &QPushButton::clicked, this, [this] {
        const auto at = table_->currentIndex();
        if (at.isValid()) Q_EMIT leadTo({model::TableKind::patches, model_->at(at.row()).patch.value});
    });
    return detail;
}

Answer ForecastPage::answer() const {
    return forecastAnswer(bench_.season(), bench_.plan());
}

void ForecastPage::addActions(Actions& actions) {
    const auto press = [this, &actions](QPushButton* button, const char* id) {
        connect(button, &QPushButton::clicked, this, [&actions, id] {
            if (auto* action = actions.find(QString::fromLatin1(id))) action->trigger();
        });
    };
    press(walkButton_, "garden.walk");
    press(sheetButton_, "paper.walk");
    press(patchButton_, "page.garden.patches");
    press(patchButton_, "garden.patches.new"); // there once its page is
}

void ForecastPage::enter() {
    if (!table_->currentIndex().isValid() && model_->rowCount() > 0) table_->selectRow(0);
    table_->setFocus();
}

int ForecastPage::firstInFlower() const {
    for (int r = 0; r < model_->rowCount(); ++r)
        if (const auto& today = model_->at(r).today; !today.isEmpty() && today != QLatin1String("0"))
            return r;
    return 0;
}

void ForecastPage::refresh() {
    const auto at = table_->currentIndex();
    const auto chosen = at.isValid() ? std::optional(model_->at(at.row()).patch) : std::nullopt;
    model_->setRows(forecastRows(bench_.season(), bench_.plan(), bench_.today()));
    const bool any = model_->rowCount() > 0;
    const bool none = bench_.season().patches.empty();
    patchButton_->setVisible(none);
    walkButton_->setVisible(!none);
    sheetButton_->setVisible(!none);
    table_->setVisible(any);
    legend_->setVisible(any);
    zoom_->setVisible(any);
    const auto& garden = bench_.plan().garden;
    const bool leads = garden && garden->lead;
    lead_->setVisible(leads);
    warmth_->setVisible(leads);
    leadWorking_->setVisible(leads && lead_->isChecked());
    if (leads) {
        FigureFacts facts;
        facts.figure = leadFigure(bench_.plan());
        facts.means = tr("is how the warmth stands against a usual year");
        facts.working = garden->lead->working;
        facts.units = bench_.season().theSettings().units;
        lead_->setFacts(facts);
        leadWorking_->setFacts(facts);
        warmth_->setText(leadWarmth(bench_.season(), bench_.plan()));
    }
    showAxis();
    const int row = chosen ? model_->rowOf(*chosen) : -1;
    if (any) table_->selectRow(row >= 0 ? row : firstInFlower());
    foldRows();
    showChosen();
    settle();
    QMetaObject::invokeMethod( // once the page has its width
        this,
        [this] {
            findings_->setFindings(findingsOfGarden(bench_.season(), bench_.plan()));
            settle();
            QMetaObject::invokeMethod(this, &ForecastPage::settle, Qt::QueuedConnection);
        },
        Qt::QueuedConnection);
    Q_EMIT answerChanged();
}

/// Something to cut from today on, within a fortnight, as likely as not.
bool ForecastPage::isNear(const ForecastRow& row) const {
    const auto today = bench_.today();
    if (!today) return true;
    for (std::size_t i = 0; i < row.curve.likely.size(); ++i) {
        const int ahead = row.curve.from + static_cast<int>(i) - *today;
        if (0 <= ahead && ahead <= fortnight && row.curve.likely[i] >= 0.5) return true;
    }
    return false;
}

/// What does not bloom now is folded away, so that the first screen holds what can be cut.
void ForecastPage::foldRows() {
    int away = 0;
    for (int r = 0; r < model_->rowCount(); ++r)
        away += isNear(model_->at(r)) ? 0 : 1;
    const bool folds = away > 0 && away < model_->rowCount();
    for (int r = 0; r < model_->rowCount(); ++r)
        table_->setRowHidden(r,
                             folds && folded_ && !isNear(model_->at(r)) && r != table_->currentIndex().row());
    fold_->setVisible(folds);
    fold_->setText(folded_ ? tr("%n patch(es) not in bloom: show", nullptr, away)
                           : tr("Fold the %n patch(es) not in bloom", nullptr, away));
}

/// Wrapped words changed while nothing was laid out yet: from the innermost outwards, so that each row gets
/// the height its words take at the width it has.
void ForecastPage::settle() {
    for (QWidget* inner : std::initializer_list<QWidget*>{findings_, warmth_->parentWidget()})
        for (QWidget* w = inner; w && w != this; w = w->parentWidget())
            if (w->layout()) {
                w->layout()->invalidate();
                w->layout()->activate();
                w->updateGeometry();
            }
}

void ForecastPage::showAxis() {
    const auto span = model_->span();
    const auto& s = bench_.season().theSettings();
    ForecastAxis axis{span ? span->first : s.firstDay, span ? span->second : s.lastDay, bench_.today()};
    const auto today = bench_.today();
    const bool near = today && axis.from <= *today && *today <= axis.to;
    if (near && zoom_->current() == 0) {
        axis.from = *today - daysBack;
        axis.to = *today + daysOn;
    }
    delegate_->setAxis(axis);
    heads_->setAxis(axis);
    table_->viewport()->update();
}

void ForecastPage::showChosen() {
    const auto at = table_->currentIndex();
    const auto* row = at.isValid() ? &model_->at(at.row()) : nullptr;
    const plan::PatchOutlook* outlook = nullptr;
    if (row && bench_.plan().garden) {
        const auto found = bench_.plan().garden->patches.find(row->patch);
        if (found != bench_.plan().garden->patches.end()) outlook = &found->second;
    }
    const bool dated = outlook && outlook->dates;
    const bool borne = outlook && outlook->forecast;
    for (QWidget* w : std::initializer_list<QWidget*>{name_, plant_, facts_})
        w->setVisible(row != nullptr);
    for (QWidget* w : std::initializer_list<QWidget*>{range_, datesHead_, dates_})
        w->setVisible(dated);
    for (QWidget* w : std::initializer_list<QWidget*>{stemsHead_, stems_})
        w->setVisible(borne);
    if (!row) return;
    name_->setText(breakable(row->name));
    plant_->setText(breakable(plantAndWalk(row->plant, row->lastWalk)));
    if (dated) {
        range_->setText(rangeWords(*outlook));
        datesHead_->setText(whyHead(*outlook));
        FigureFacts facts;
        facts.working = outlook->datesWorking;
        facts.units = bench_.season().theSettings().units;
        dates_->setFacts(facts);
    }
    if (!borne) return;
    stemsHead_->setText(
        tr("%1 stem(s) expected", nullptr, static_cast<int>(std::llround(outlook->forecast->expected)))
            .arg(whole(std::llround(outlook->forecast->expected))));
    FigureFacts facts;
    facts.working = outlook->forecast->working;
    facts.units = bench_.season().theSettings().units;
    stems_->setFacts(facts);
}

void ForecastPage::dress() {
    const QFontMetrics name(typeFont(TypeRole::name));
    const QFontMetrics plain(typeFont(TypeRole::text));
    const QFontMetrics caption(typeFont(TypeRole::caption));
    const int high = std::max(listRow(), name.height() + plain.height() + grid(2));
    table_->verticalHeader()->setMinimumSectionSize(high);
    table_->verticalHeader()->setDefaultSectionSize(high);
    const Day widest = Day::fromYmd(2027, 5, 26).value_or(Day{}); // Wed 26 May: letters wide as any
    const int figure = grid(13);
    const int early = std::max(grid(15), plain.horizontalAdvance(earlyWords(0)) + grid(3));
    const int first =
        std::max(grid(23), caption.horizontalAdvance(tr("usual %1").arg(shortDay(widest))) + grid(4));
    const int room = table_->viewport()->width();
    const int patch = std::clamp(room / 4, grid(34), grid(44));
    table_->setColumnWidth(ForecastModel::PatchColumn, patch);
    table_->setColumnWidth(ForecastModel::FirstColumn, first);
    table_->setColumnWidth(ForecastModel::EarlyColumn, early);
    for (const int c : {ForecastModel::StemsColumn, ForecastModel::TodayColumn, ForecastModel::WeekColumn})
        table_->setColumnWidth(c, figure);
    // Where there is little room the dates are in the detail alone; curves and stems stay in sight.
    const bool narrow = room > 0 && patch + first + early + 3 * figure + grid(40) > room;
    table_->setColumnHidden(ForecastModel::FirstColumn, narrow);
    table_->setColumnHidden(ForecastModel::EarlyColumn, narrow);
    const int others = patch + (narrow ? 0 : first + early) + 3 * figure;
    table_->setColumnWidth(ForecastModel::CurveColumn, std::max(grid(40), room - others));
}

bool ForecastPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_->viewport() && event->type() == QEvent::Resize) dress();
    return SubPage::eventFilter(watched, event);
}

void ForecastPage::changeEvent(QEvent* event) {
    SubPage::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) dress();
}

} // namespace withy::ui
