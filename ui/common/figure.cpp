// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/figure.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMetaMethod>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

QStringList linesOf(const FigureFacts& facts) {
    return facts.words.isEmpty() ? lines(facts.working, facts.units) : facts.words;
}

std::vector<WorkingGroup> groupsOf(const FigureFacts& facts) {
    return groups(linesOf(facts), facts.working);
}

/// What a line comes to is strong.
QWidget* lineOf(const QString& words) {
    auto* line = new AnswerLabel;
    line->setType(TypeRole::text);
    const auto at = words.lastIndexOf(QStringLiteral("= "));
    if (at < 0)
        line->setPhrases({{words, {}}});
    else
        line->setPhrases({{words.left(at), {}}, {words.mid(at), Phrase::Weight::strong}});
    return line;
}

} // namespace

FigureButton::FigureButton(QWidget* parent) : QToolButton(parent) {
    setProperty("look", QStringLiteral("figure"));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    connect(this, &QToolButton::toggled, this, &FigureButton::opened);
}

QSize FigureButton::sizeHint() const {
    ensurePolished();
    const QFontMetrics metrics(property("quiet").toBool() ? typeFont(TypeRole::text)
                                                          : typeFont(TypeRole::strong));
    return {metrics.horizontalAdvance(facts_.figure) + 2 * focusRing + 2, metrics.height() + 2 * focusRing};
}

void FigureButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QToolButton::keyPressEvent(event);
}

void FigureButton::hideEvent(QHideEvent* event) {
    QToolButton::hideEvent(event);
    if (event->spontaneous() || !isChecked()) return;
    // Once all is settled: what is only laid out anew is back by then, and what goes for good asks nothing.
    QTimer::singleShot(0, this, [this] {
        if (!isVisible()) setChecked(false);
    });
}

void FigureButton::setFacts(const FigureFacts& facts) {
    facts_ = facts;
    setText(asTyped(facts.figure));
    setAccessibleName(facts.means.isEmpty() ? facts.figure : tr("%1 %2").arg(facts.figure, facts.means));
    setAccessibleDescription(
        tr("Opens its working: %1").arg(grouped(linesOf(facts), facts.working).join(QStringLiteral(", "))));
    setToolTip(tr("How this came about"));
}

WorkingPanel::WorkingPanel(QWidget* parent) : QWidget(parent), rows_(new QVBoxLayout(this)) {
    setProperty("look", QStringLiteral("working"));
    rows_->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    rows_->setSpacing(grid(1));
}

void WorkingPanel::setFacts(const FigureFacts& facts) {
    facts_ = facts;
    made_ = false;
    if (isVisible()) make();
}

void WorkingPanel::showEvent(QShowEvent* event) {
    make();
    QWidget::showEvent(event);
}

QPushButton* WorkingPanel::lead() {
    make();
    return lead_;
}

std::vector<QPushButton*> WorkingPanel::leads() {
    make();
    auto all = lineLeads_;
    if (lead_) all.push_back(lead_);
    return all;
}

QPushButton* WorkingPanel::addLead(const QString& words, const QString& spoken, const model::Ref& place) {
    auto* button = new QPushButton(asTyped(words));
    button->setProperty("look", QStringLiteral("link"));
    button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    if (!spoken.isEmpty()) {
        button->setAccessibleName(spoken);
        button->setToolTip(tr("Go to where this can be changed"));
    }
    connect(button, &QPushButton::clicked, this, [this, place] { Q_EMIT leadTo(place); });
    return button;
}

void WorkingPanel::make() {
    if (made_) return;
    made_ = true;
    const auto now = groupsOf(facts_);
    const auto lead = facts_.leadsTo ? facts_.leadWords + QString::number(facts_.leadsTo->id) : QString();
    if (rows_->count() > 0 && shown_ == now && shownLead_ == lead) return; // so that the focus stays
    shown_ = now;
    shownLead_ = lead;
    clearLayout(*rows_);
    lineLeads_.clear();
    lead_ = nullptr;
    const bool leads = isSignalConnected(QMetaMethod::fromSignal(&WorkingPanel::leadTo));
    for (const auto& group : now) {
        auto* holder = new QWidget;
        auto* row = new QHBoxLayout(holder);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(grid(3));
        row->addWidget(lineOf(group.words), 1);
        for (const auto& way : group.leads) {
            if (facts_.leadsTo == way.place || !leads) continue; // the whole leads there; nothing listens
            lineLeads_.push_back(addLead(way.words, way.spoken, way.place));
            lineLeads_.back()->setObjectName(QStringLiteral("working.line.%1").arg(lineLeads_.size()));
            row->addWidget(lineLeads_.back(), 0, Qt::AlignTop);
        }
        rows_->addWidget(holder);
    }
    if (!facts_.leadsTo) return;
    lead_ = addLead(facts_.leadWords.isEmpty() ? tr("Change it") : facts_.leadWords, {}, *facts_.leadsTo);
    lead_->setObjectName(QStringLiteral("working.lead"));
    rows_->addWidget(lead_);
}

} // namespace withy::ui
