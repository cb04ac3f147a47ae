// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/figure.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/wording.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

QStringList wordsOf(const FigureFacts& facts) {
    return facts.words.isEmpty() ? grouped(lines(facts.working, facts.units), facts.working) : facts.words;
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
    setAccessibleDescription(tr("Opens its working: %1").arg(wordsOf(facts).join(QStringLiteral(", "))));
    setToolTip(tr("How this came about"));
}

WorkingPanel::WorkingPanel(QWidget* parent) : QWidget(parent), rows_(new QVBoxLayout(this)) {
    setProperty("look", QStringLiteral("working"));
    rows_->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    rows_->setSpacing(grid(1));
}

void WorkingPanel::setFacts(const FigureFacts& facts) {
    const auto words = wordsOf(facts);
    const auto leads = facts.leadsTo ? facts.leadWords + QString::number(facts.leadsTo->id) : QString();
    if (rows_->count() > 0 && shown_ == words + QStringList{leads}) return; // so that the focus stays
    shown_ = words + QStringList{leads};
    clearLayout(*rows_);
    lead_ = nullptr;
    for (const auto& line : words)
        rows_->addWidget(lineOf(line));
    if (!facts.leadsTo) return;
    lead_ = new QPushButton(facts.leadWords.isEmpty() ? tr("Change it") : asTyped(facts.leadWords));
    lead_->setObjectName(QStringLiteral("working.lead"));
    lead_->setProperty("look", QStringLiteral("link"));
    lead_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(lead_, &QPushButton::clicked, this, [this, ref = *facts.leadsTo] { Q_EMIT leadTo(ref); });
    rows_->addWidget(lead_);
}

} // namespace withy::ui
