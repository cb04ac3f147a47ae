// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_entry_page.h"

#include "core/model/schema.h"
#include "ui/common/field_control.h"
#include "ui/common/list_and_detail.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/garden/walk_changes.h"
#include "ui/garden/walk_entry_table.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/models/walk_entry_model.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

const model::FieldInfo& dateField() {
    return *model::tableInfo(model::TableKind::walks).field("date");
}

Day startingDay(const Workbench& bench) {
    const auto& s = bench.season().theSettings();
    return std::clamp(bench.today().value_or(s.firstDay), s.firstDay, s.lastDay);
}

QString dayWords(const Workbench& bench, Day day) {
    return fieldText(bench.season(), model::TableKind::walks, dateField(), day.iso());
}

} // namespace

WalkEntryPage::WalkEntryPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , model_(new WalkEntryModel(bench, startingDay(bench), this))
    , daySays_(new TextLabel(TypeRole::caption, {}, Ink::osier))
    , cellSays_(new TextLabel(TypeRole::text, {}, Ink::osier))
    , table_(new WalkEntryTable(*model_))
    , fold_(linkButton({}, "garden.walk_entry.fold"))
    , changes_(new WalkChanges(bench))
    , patchButton_(new QPushButton(tr("&Write down a patch")))
    , tools_(new QWidget) {
    patchButton_->setObjectName(QStringLiteral("garden.walk_entry.patch"));
    patchButton_->setProperty("look", QStringLiteral("main"));
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->addWidget(patchButton_);
    layPage();
    connect(model_, &QAbstractItemModel::modelReset, this, &WalkEntryPage::showWhetherAny);
    connect(model_, &WalkEntryModel::answerChanged, this, &SubPage::answerChanged);
    connect(model_, &WalkEntryModel::answerChanged, this, &WalkEntryPage::sayCell);
    connect(model_, &WalkEntryModel::refused, this, &SubPage::refused);
    connect(table_, &WalkEntryTable::cellChanged, this, [this] {
        sayCell();
        showChanges();
    });
    auto* want = new WhenSeen(this, [this] { model_->askExpected(); });
    connect(model_, &WalkEntryModel::expectedWanted, want, &WhenSeen::ask);
    want->ask();
    auto* seen = new WhenSeen(this, [this] { showChanges(); });
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
    connect(model_, &WalkEntryModel::expectedChanged, seen, &WhenSeen::ask);
    connect(model_, &WalkEntryModel::answerChanged, this, &WalkEntryPage::foldRows);
    connect(model_, &QAbstractItemModel::modelReset, this, &WalkEntryPage::foldRows);
    connect(fold_, &QPushButton::clicked, this, [this] {
        folded_ = !folded_;
        foldRows();
    });
    sayDay(walkDayCaution(model_->day(), bench.today()), false);
    showChanges();
    showWhetherAny();
}

void WalkEntryPage::showWhetherAny() {
    const bool any = model_->rowCount() > 0;
    both_->setVisible(any);
    patchButton_->setVisible(!any);
}

void WalkEntryPage::foldRows() {
    const int resting = model_->restingRows();
    const bool folds = resting > 0 && resting < model_->rowCount();
    table_->fold(folded_);
    fold_->setVisible(folds);
    fold_->setText(folded_ ? tr("%n patch(es) not in bloom: show", nullptr, resting)
                           : tr("Fold the %n patch(es) not in bloom", nullptr, resting));
}

WalkEntryPage::~WalkEntryPage() = default;

QWidget* WalkEntryPage::makeTop() {
    auto* top = new QWidget;
    date_ = makeControl(bench_, dateField(), top);
    auto* line = date_->widget();
    line->setObjectName(QStringLiteral("garden.walk_entry.date"));
    line->setAccessibleName(tr("Walked on"));
    onGrid(line, &QWidget::setFixedWidth, 44);
    date_->setText(dayWords(bench_, model_->day()));
    date_->picked = [this] { takeDay(); };
    if (auto* edit = qobject_cast<QLineEdit*>(line)) {
        connect(edit, &QLineEdit::editingFinished, this, &WalkEntryPage::takeDay);
        connect(edit, &QLineEdit::returnPressed, this, [this] {
            if (takeDay()) table_->begin();
        });
    }
    auto* label = new QLabel(tr("Walked &on"));
    label->setBuddy(line);
    daySays_->setObjectName(QStringLiteral("garden.walk_entry.day_says"));
    daySays_->setWordWrap(true);
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    row->addWidget(label);
    row->addWidget(line);
    row->addWidget(daySays_, 1);
    row->addStretch(0);
    return top;
}

void WalkEntryPage::layPage() {
    auto* list = new QWidget;
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(0, grid(2), grid(2), 0);
    column->setSpacing(grid(1));
    column->addWidget(makeTop());
    column->addWidget(table_, 1);
    column->addWidget(fold_, 0, Qt::AlignLeft);
    fold_->hide();
    cellSays_->setObjectName(QStringLiteral("garden.walk_entry.says"));
    cellSays_->setWordWrap(true);
    cellSays_->hide();
    column->addWidget(cellSays_);
    auto* keys =
        new TextLabel(TypeRole::caption,
                      tr("Enter goes on · arrows move · = takes the last walk's figure · 4+30+6 is added "
                         "up · a blank is not a nought · “of 54”: so many were expected"),
                      Ink::caption);
    keys->setWordWrap(true);
    column->addWidget(keys);
    auto* both = new ListAndDetail(list, changes_);
    both->setListShare(74);
    both_ = both;
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(both, 1);
    whole->addStretch(0); // takes the room while there is no patch to walk
}

Answer WalkEntryPage::answer() const {
    return model_->answer();
}

void WalkEntryPage::addActions(Actions& actions) {
    actions.add({"garden.walk", tr("&Key in a walk"), Qt::CTRL | Qt::SHIFT | Qt::Key_W,
                 tr("All patches in walking order, by keyboard alone")},
                [this] {
                    Q_EMIT wanted();
                    table_->begin();
                });
    connect(patchButton_, &QPushButton::clicked, this, [&actions] {
        for (const auto* id : {"page.garden.patches", "garden.patches.new"}) // the second comes with the page
            if (auto* action = actions.find(QString::fromLatin1(id))) action->trigger();
    });
}

void WalkEntryPage::enter() {
    model_->rowCount() > 0 ? date_->widget()->setFocus() : patchButton_->setFocus();
}

bool WalkEntryPage::commit() {
    return takeDay() && table_->keep();
}

void WalkEntryPage::sayDay(const QString& sentence, bool wrong) {
    daySays_->setText(sentence);
    daySays_->setVisible(!sentence.isEmpty());
    markAs(date_->widget(), "wrong", wrong);
}

bool WalkEntryPage::takeDay() {
    if (date_->text() == dayWords(bench_, model_->day())) {
        sayDay(walkDayCaution(model_->day(), bench_.today()), false);
        return true;
    }
    const auto reading =
        readField(bench_.season(), model::TableKind::walks, dateField(), date_->text(), model_->day().iso());
    const auto* iso = reading.ok() ? std::get_if<std::string>(&*reading.value) : nullptr;
    const auto day = iso ? Day::parse(*iso) : std::nullopt;
    if (!day) {
        sayDay(reading.sentence.isEmpty() ? tr("Which day was it? Write it as 6 Sep.") : reading.sentence,
               true);
        return false;
    }
    if (const QString why = walkDayRefusal(bench_.season(), *day); !why.isEmpty()) {
        sayDay(why, true);
        return false;
    }
    if (!table_->keep()) return false;
    model_->setDay(*day);
    date_->setText(dayWords(bench_, *day));
    sayDay(walkDayCaution(*day, bench_.today()), false);
    showChanges();
    return true;
}

void WalkEntryPage::sayCell() {
    const auto at = table_->currentIndex();
    QString words = at.data(WalkEntryModel::SentenceRole).toString();
    if (words.isEmpty()) words = at.data(WalkEntryModel::CautionRole).toString();
    if (words.isEmpty() && at.isValid())
        words = at.siblingAtColumn(WalkEntryModel::RemarkColumn).data(WalkEntryModel::CautionRole).toString();
    cellSays_->setText(words);
    cellSays_->setVisible(!words.isEmpty());
}

void WalkEntryPage::showChanges() {
    const auto at = table_->currentIndex();
    changes_->show(model_->day(), model_->expected(),
                   at.isValid() ? std::optional(model_->patchAt(at.row())) : std::nullopt);
}

} // namespace withy::ui
