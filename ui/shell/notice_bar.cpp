// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/notice_bar.h"

#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QTimer>
#include <QToolButton>

#include <chrono>

namespace withy::ui {

using namespace std::chrono_literals;

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent)
    , words_(new TextLabel(TypeRole::text))
    , way_(new QPushButton)
    , shut_(new QToolButton)
    , away_(new QTimer(this)) {
    setProperty("look", QStringLiteral("mist"));
    setObjectName(QStringLiteral("notice"));
    words_->setWordWrap(true);
    words_->setObjectName(QStringLiteral("notice.words"));
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    way_->setObjectName(QStringLiteral("notice.way"));
    shut_->setObjectName(QStringLiteral("notice.shut"));
    shut_->setText(QStringLiteral("×"));
    shut_->setAccessibleName(tr("Shut this notice"));
    shut_->setToolTip(tr("Shut this notice (Esc)"));
    shut_->setProperty("look", QStringLiteral("button"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(pageMargin(), grid(1), grid(3), grid(1));
    row->addWidget(words_, 1);
    row->addWidget(way_);
    row->addWidget(shut_);
    away_->setSingleShot(true);
    connect(away_, &QTimer::timeout, this, &NoticeBar::clear);
    connect(shut_, &QToolButton::clicked, this, &NoticeBar::clear);
    connect(way_, &QPushButton::clicked, this, [this] {
        const auto act = act_;
        clear();
        if (act) act();
    });
    hide();
}

void NoticeBar::refuse(const QString& sentence, const WayOut& way) {
    put(sentence, true, way);
    away_->stop();
}

void NoticeBar::say(const QString& sentence, const WayOut& way) {
    put(sentence, false, way);
    // Long enough to be read twice; what offers a way out waits longer.
    const auto words = std::chrono::milliseconds(sentence.size() * 120);
    away_->start((way.act ? 12000ms : 5000ms) + words);
}

void NoticeBar::put(const QString& sentence, bool asks, const WayOut& way) {
    if (sentence.isEmpty()) return clear();
    words_->setText(sentence);
    words_->setInk(asks ? Ink::osier : Ink::text);
    way_->setText(way.words);
    way_->setVisible(static_cast<bool>(way.act));
    act_ = way.act;
    show();
    QAccessibleEvent told(words_, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void NoticeBar::clear() {
    away_->stop();
    words_->clear();
    hide();
}

QString NoticeBar::sentence() const {
    return words_->text();
}

void NoticeBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return clear();
    QWidget::keyPressEvent(event);
}

} // namespace withy::ui
