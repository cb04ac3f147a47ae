// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/record_page.h"

#include "ui/common/blocked_notice.h"
#include "ui/common/list_and_detail.h"
#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

QVBoxLayout* columnOf(QWidget* widget) {
    auto* column = new QVBoxLayout(widget);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(2));
    return column;
}

} // namespace

RecordPage::RecordPage(Workbench& bench, RecordPageSpec spec, QWidget* parent)
    : SubPage(bench, parent)
    , spec_(std::move(spec))
    , table_(new RecordTable(bench, spec_.table))
    , list_(new QWidget)
    , tools_(new QWidget(this)) {
    const QString id = QString::fromLatin1(spec_.id);
    table_->setObjectName(id + QStringLiteral(".table"));
    table_->setAccessibleName(spec_.name);
    if (!spec_.answer) table_->setEmptyWords(spec_.emptyWords); // the answer above says it already
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    layList();
    auto* column = columnOf(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(list_, 1);
    connect(table_, &RecordTable::refused, this, &SubPage::refused);
    connect(table_, &RecordTable::chosen, this, &RecordPage::showChosen);
    // A page nobody looks at waits until it is seen.
    connect(&bench_, &Workbench::changed, this, [this] {
        if (!isVisible()) return;
        Q_EMIT answerChanged();
        chooseSomething();
    });
    connect(&bench_, &Workbench::planned, this, [this] {
        if (!isVisible()) return;
        table_->records().refreshComputed();
        Q_EMIT answerChanged();
    });
    if (!spec_.groups.empty()) layDetail();
    chooseSomething();
}

void RecordPage::layList() {
    auto* column = columnOf(list_);
    above_ = new QHBoxLayout;
    above_->setSpacing(grid(2));
    if (!spec_.findPrompt.isEmpty()) {
        find_ = new QLineEdit;
        find_->setObjectName(QString::fromLatin1(spec_.id) + QStringLiteral(".find"));
        find_->setAccessibleName(spec_.findPrompt);
        find_->setPlaceholderText(spec_.findPrompt);
        find_->setClearButtonEnabled(true);
        find_->setMaximumWidth(grid(70));
        above_->addWidget(find_, 1);
        connect(find_, &QLineEdit::textChanged, this, [this](const QString& words) {
            table_->records().setFind(words);
            chooseSomething();
        });
        connect(find_, &QLineEdit::returnPressed, table_, [this] { table_->setFocus(); });
    }
    above_->addStretch();
    column->addLayout(above_);
    column->addWidget(new BlockedNotice(*table_));
    column->addWidget(table_, 1);
}

void RecordPage::makeDetail() {
    if (detail_) return;
    detail_ = new QWidget;
    auto* column = columnOf(detail_);
    nothing_ = new TextLabel(TypeRole::text, tr("Choose a row, and all of it stands here."), Ink::second);
    nothing_->setWordWrap(true);
    inDetail_ = new QWidget;
    parts_ = columnOf(inDetail_);
    parts_->setSpacing(grid(3));
    column->setContentsMargins(grid(6), 0, grid(1), grid(2));
    column->addWidget(nothing_);
    column->addWidget(inDetail_);
    column->addStretch();
    both_ = new ListAndDetail(list_, detail_);
    layout()->addWidget(both_);
    both_->setObjectName(QString::fromLatin1(spec_.id) + QStringLiteral(".split"));
}

void RecordPage::layDetail() {
    makeDetail();
    form_ = new RecordForm(bench_, spec_.table.kind, spec_.groups);
    form_->setObjectName(QString::fromLatin1(spec_.id) + QStringLiteral(".form"));
    parts_->addWidget(form_);
    connect(form_, &RecordForm::refused, this, &SubPage::refused);
}

Answer RecordPage::answer() const {
    return spec_.answer ? spec_.answer() : Answer{};
}

void RecordPage::addActions(Actions& actions) {
    if (spec_.newWords.isEmpty()) return;
    const auto id = (QString::fromLatin1(spec_.id) + QStringLiteral(".new")).toLatin1();
    auto* action = actions.add({id.constData(), spec_.newWords}, [this] {
        Q_EMIT wanted();
        table_->setFocus();
        table_->startNewRow();
    });
    auto* button = new QPushButton(spec_.newWords);
    button->setObjectName(QString::fromLatin1(spec_.id) + QStringLiteral(".new_button"));
    button->setToolTip(action->toolTip());
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    addTool(button);
}

bool RecordPage::goTo(const model::Ref& ref) {
    if (ref.table == spec_.table.kind && ref.id == 0) return true; // the page itself: no record is meant
    if (ref.table == spec_.table.kind && model::hasRecord(bench_.season(), ref.table, ref.id)) {
        if (find_ && table_->records().rowOf(ref.id) < 0) find_->clear();
        table_->choose(ref.id);
        return true;
    }
    for (auto* part : partTables_) {
        const auto& spec = part->records().spec();
        if (spec.kind != ref.table || !spec.parent) continue;
        const auto owner = model::findRecord(bench_.season(), ref.table, ref.id);
        const auto* field = model::tableInfo(ref.table).field(spec.parent->first);
        if (!owner || !field) continue;
        const auto value = field->get(model::recordPointer(*owner));
        const auto* id = std::get_if<std::int64_t>(&value);
        if (!id || !goTo({spec_.table.kind, *id})) continue;
        part->choose(ref.id);
        return true;
    }
    return false;
}

void RecordPage::enter() {
    chooseSomething();
    table_->setFocus();
}

bool RecordPage::commit() {
    bool kept = table_->commitEditor();
    if (form_) kept = form_->commit() && kept;
    for (auto* part : partTables_)
        kept = part->commitEditor() && kept;
    return kept;
}

QWidget* RecordPage::tools() const {
    return tools_;
}

RecordTable* RecordPage::addPart(const QString& head, RecordTableSpec spec, const QString& emptyWords) {
    makeDetail();
    auto* part = new RecordTable(bench_, std::move(spec));
    part->setObjectName(
        QString::fromLatin1(spec_.id) + QLatin1Char('.') +
        QString::fromUtf8(model::tableInfo(part->records().spec().kind).name.data(),
                          static_cast<qsizetype>(model::tableInfo(part->records().spec().kind).name.size())));
    part->setAccessibleName(head);
    part->setEmptyWords(emptyWords);
    part->growWithRows(12);
    auto* box = new QWidget;
    auto* column = columnOf(box);
    column->setSpacing(grid(1));
    column->addWidget(new TextLabel(TypeRole::head, head));
    column->addWidget(new Rule);
    column->addWidget(new BlockedNotice(*part));
    column->addWidget(part);
    parts_->addWidget(box);
    partTables_.push_back(part);
    connect(part, &RecordTable::refused, this, &SubPage::refused);
    part->showParent(chosenId());
    return part;
}

void RecordPage::addToDetail(QWidget* widget, bool atTop) {
    makeDetail();
    parts_->insertWidget(atTop ? 0 : parts_->count(), widget);
}

void RecordPage::addBeside(QWidget* widget) {
    auto* side = new QWidget;
    auto* column = columnOf(side);
    column->setContentsMargins(grid(6), 0, grid(1), grid(2));
    column->addWidget(widget);
    column->addStretch();
    both_ = new ListAndDetail(list_, side);
    layout()->addWidget(both_);
}

void RecordPage::addTool(QWidget* tool) {
    tools_->layout()->addWidget(tool);
}

void RecordPage::setListShare(int percent) {
    if (both_) both_->setListShare(percent);
}

void RecordPage::showChosen(std::optional<std::int64_t> id) {
    // What could not be kept stays, with its sentence, until it can or Esc puts it back.
    const bool there = shown_ && model::hasRecord(bench_.season(), spec_.table.kind, *shown_);
    if (form_ && there && id != shown_ && !form_->commit()) return table_->choose(*shown_);
    shown_ = id;
    if (form_) form_->show(id);
    for (auto* part : partTables_)
        part->showParent(id);
    if (inDetail_) {
        inDetail_->setVisible(id.has_value());
        nothing_->setVisible(!id.has_value() && table_->records().idAt(0).has_value());
    }
    Q_EMIT chosen(id);
}

void RecordPage::showEvent(QShowEvent* event) {
    SubPage::showEvent(event);
    table_->records().refreshComputed();
    Q_EMIT answerChanged();
    chooseSomething();
}

void RecordPage::chooseSomething() {
    const auto& records = table_->records();
    if (!table_->chosenId() && !table_->hasFocus() && records.rowCount() > 0) {
        if (const auto first = records.idAt(0)) table_->choose(*first);
    }
    showChosen(table_->chosenId());
}

} // namespace withy::ui
