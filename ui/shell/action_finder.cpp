// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/action_finder.h"

#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

/// As many as can be looked through; more typing finds the rest.
constexpr int mostShown = 40;

/// Smaller is better; below nought: does not match. All typed words must be there, in any order.
int rank(const QString& words, const QStringList& typed) {
    int sum = 0;
    for (const auto& part : typed) {
        const auto at = words.indexOf(part, 0, Qt::CaseInsensitive);
        if (at < 0) return -1;
        const bool startsWord = at == 0 || !words[at - 1].isLetterOrNumber();
        sum += static_cast<int>(at) + (startsWord ? 0 : 100);
    }
    return sum;
}

} // namespace

ActionFinder::ActionFinder(const Actions& actions, std::function<std::vector<Target>()> others, QWidget* over)
    : QFrame(over)
    , actions_(actions)
    , others_(std::move(others))
    , field_(new QLineEdit)
    , list_(new QListWidget) {
    setObjectName(QStringLiteral("finder"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setAccessibleName(tr("Find an action"));
    field_->setObjectName(QStringLiteral("finder.field"));
    field_->setAccessibleName(tr("Find an action, a booking, a design or a plant"));
    field_->setPlaceholderText(tr("What would you like to do?"));
    field_->setMaxLength(200);
    list_->setObjectName(QStringLiteral("finder.list"));
    list_->setAccessibleName(tr("Found"));
    list_->setFocusPolicy(Qt::NoFocus);
    list_->setUniformItemSizes(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(grid(3), grid(3), grid(3), grid(3));
    column->addWidget(field_);
    column->addWidget(list_);
    field_->installEventFilter(this);
    connect(field_, &QLineEdit::textChanged, this, &ActionFinder::filter);
    connect(list_, &QListWidget::itemClicked, this, &ActionFinder::take);
    hide();
}

void ActionFinder::open() {
    cameFrom_ = QApplication::focusWidget();
    gather();
    const int width = std::min(grid(140), parentWidget()->width() - grid(12));
    const int height = std::min(grid(110), parentWidget()->height() - grid(20));
    setGeometry((parentWidget()->width() - width) / 2, grid(10), width, height);
    field_->clear();
    filter({});
    show();
    raise();
    field_->setFocus();
}

void ActionFinder::gather() {
    targets_.clear();
    for (auto* action : actions_.all()) {
        if (!action->isEnabled() || !action->isVisible()) continue;
        targets_.push_back({withoutMnemonic(action->text()), tr("action"),
                            action->shortcut().toString(QKeySequence::NativeText),
                            [action] { action->trigger(); }});
    }
    auto more = others_ ? others_() : std::vector<Target>{};
    std::move(more.begin(), more.end(), std::back_inserter(targets_));
}

void ActionFinder::filter(const QString& typed) {
    const auto parts = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<std::pair<int, std::size_t>> found;
    for (std::size_t i = 0; i < targets_.size(); ++i) {
        const int r = rank(targets_[i].words, parts);
        if (r >= 0) found.emplace_back(r, i);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    list_->clear();
    for (std::size_t i = 0; i < found.size() && list_->count() < mostShown; ++i) {
        const auto& target = targets_[found[i].second];
        QString line = target.words;
        if (!target.keys.isEmpty()) line += QStringLiteral("    ") + target.keys;
        if (target.kind != tr("action")) line += QStringLiteral("    ") + target.kind;
        auto* item = new QListWidgetItem(line, list_);
        item->setData(Qt::UserRole, static_cast<qulonglong>(found[i].second));
        item->setSizeHint(QSize(0, grid(8)));
    }
    if (list_->count() > 0)
        list_->setCurrentRow(0);
    else
        new QListWidgetItem(tr("Nothing is called that."), list_);
}

void ActionFinder::take() {
    const auto* item = list_->currentItem();
    if (!item || !item->data(Qt::UserRole).isValid()) return;
    const auto go = targets_[item->data(Qt::UserRole).toULongLong()].go;
    put();
    go();
}

void ActionFinder::put() {
    hide();
    if (cameFrom_ && cameFrom_->isVisible()) cameFrom_->setFocus();
}

bool ActionFinder::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut && isVisible()) hide();
    if (event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    switch (key->key()) {
    case Qt::Key_Escape:
        put();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        take();
        return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
        QApplication::sendEvent(list_, event);
        return true;
    default:
        return QFrame::eventFilter(watched, event);
    }
}

} // namespace withy::ui
