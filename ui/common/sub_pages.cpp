// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/sub_pages.h"

#include "ui/common/answer_phrases.h"
#include "ui/common/segments.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cstring>

namespace withy::ui {

namespace {

QStringList wordsOf(const std::vector<SubPages::Named>& pages) {
    QStringList words;
    for (const auto& p : pages)
        words << p.words;
    return words;
}

/// A stack no larger than the page that is shown.
class SnugStack : public QStackedWidget {
public:
    using QStackedWidget::QStackedWidget;

    QSize sizeHint() const override {
        return currentWidget() ? currentWidget()->sizeHint() : QStackedWidget::sizeHint();
    }

    QSize minimumSizeHint() const override {
        return currentWidget() ? currentWidget()->minimumSizeHint() : QStackedWidget::minimumSizeHint();
    }
};

} // namespace

SubPages::SubPages(const char* place, const QString& title, const std::vector<Named>& pages, QWidget* parent)
    : QWidget(parent)
    , place_(QString::fromLatin1(place))
    , pages_(pages)
    , title_(new TextLabel(TypeRole::title, title))
    , tools_(new SnugStack)
    , answer_(new AnswerLabel)
    , segments_(new Segments(tr("Page of %1").arg(title), wordsOf(pages), Segments::Look::tabs))
    , stack_(new SnugStack)
    , made_(pages.size()) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(pageMargin(), grid(2), pageMargin(), grid(2));
    column->setSpacing(grid(1));
    auto* head = new QHBoxLayout;
    head->setSpacing(grid(4));
    head->addWidget(title_);
    head->addStretch();
    head->addWidget(tools_);
    tools_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Maximum);
    answer_->setObjectName(place_ + QStringLiteral(".answer"));
    answer_->setWordWrap(true);
    segments_->setObjectName(place_ + QStringLiteral(".pages"));
    column->addLayout(head);
    column->addWidget(answer_);
    column->addWidget(segments_);
    column->addWidget(new Rule(Rule::Kind::hair));
    column->addWidget(stack_, 1);
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        stack_->addWidget(new QWidget);
        tools_->addWidget(new QWidget);
    }
    connect(segments_, &Segments::chosen, this, &SubPages::choose);
    turnTo(0);
}

SubPage& SubPages::at(int index) {
    auto& made = made_[static_cast<std::size_t>(index)];
    if (made) return *made;
    made = pages_[static_cast<std::size_t>(index)].make();
    wire(index, *made);
    if (actions_) made->addActions(*actions_);
    return *made;
}

bool SubPages::makeNext() {
    const auto missing = std::find(made_.begin(), made_.end(), nullptr);
    if (missing == made_.end()) return false;
    at(static_cast<int>(missing - made_.begin()));
    return true;
}

void SubPages::wire(int index, SubPage& page) {
    const auto& named = pages_[static_cast<std::size_t>(index)];
    page.setObjectName(place_ + QLatin1Char('.') + QString::fromLatin1(named.id));
    page.setAccessibleName(named.words);
    replaceIn(*stack_, index, &page);
    if (page.tools()) replaceIn(*tools_, index, page.tools());
    connect(&page, &SubPage::refused, this, &SubPages::refused);
    connect(&page, &SubPage::said, this, &SubPages::said);
    connect(&page, &SubPage::leadTo, this, &SubPages::leadTo);
    connect(&page, &SubPage::wanted, this, [this, index] {
        Q_EMIT wanted();
        show(index);
    });
    connect(&page, &SubPage::answerChanged, this, [this, index] {
        if (index == current()) showAnswer();
    });
}

void SubPages::addActions(Actions& actions) {
    actions_ = &actions;
    for (int i = 0; i < static_cast<int>(pages_.size()); ++i) {
        const auto& named = pages_[static_cast<std::size_t>(i)];
        const auto id = QStringLiteral("page.%1.%2").arg(place_, QString::fromLatin1(named.id)).toLatin1();
        actions.add({id.constData(), tr("%1: %2").arg(title_->text(), named.words)}, [this, i] {
            Q_EMIT wanted();
            show(i);
            enter();
        });
        if (auto* made = made_[static_cast<std::size_t>(i)]) made->addActions(actions);
    }
}

bool SubPages::goTo(const model::Ref& ref) {
    for (int i = 0; i < static_cast<int>(pages_.size()); ++i) {
        if (!at(i).goTo(ref)) continue;
        show(i);
        return true;
    }
    return false;
}

void SubPages::enter() {
    at(current()).enter();
}

void SubPages::show(int page) {
    segments_->setCurrent(page);
    choose(page);
}

void SubPages::show(const char* id) {
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        if (std::strcmp(pages_[i].id, id) == 0) show(static_cast<int>(i));
    }
    enter();
}

void SubPages::choose(int page) {
    const auto* now = made_[static_cast<std::size_t>(current())];
    if (page != current() && now && !at(current()).commit()) {
        segments_->setCurrent(current()); // what was typed is not lost: the page stays until it is mended
        return;
    }
    at(page);
    turnTo(page);
    showAnswer();
}

void SubPages::turnTo(int page) {
    stack_->setCurrentIndex(page);
    tools_->setCurrentIndex(page);
    tools_->updateGeometry();
    segments_->setCurrent(page);
}

int SubPages::current() const {
    return std::max(0, stack_->currentIndex());
}

void SubPages::showAnswer() {
    answer_->setPhrases(phrasesOf(at(current()).answer()));
}

void SubPages::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    showAnswer();
}

void SubPages::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    layout()->setContentsMargins(pageMargin(), grid(2), pageMargin(), grid(2));
}

} // namespace withy::ui
