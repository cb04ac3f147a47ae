// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/finding_rows.h"

#include "ui/bookings/tabs/flow_row.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/finding_edits.h"
#include "ui/logic/wording.h"
#include "ui/paint/icons.h"
#include "ui/paint/spacing.h"

#include <QDate>
#include <QGridLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

/// A triangle for what is wrong (the lidless jar is for stems that are short), a small ring for what is only
/// worth knowing.
class FindingMark : public QWidget {
public:
    FindingMark() {
        fixedOnGrid(this, 5, 5);
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }

    bool asks = false;

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter p(this);
        p.setRenderHint(QPainter::Antialiasing);
        const auto& palette = currentPalette();
        const double w = width();
        if (!asks) {
            p.setPen(QPen(palette.of(Role::edge), iconLine));
            p.drawEllipse(QRectF(w * 0.2, w * 0.3, w * 0.4, w * 0.4));
            return;
        }
        icon(IconName::caution, palette, Role::osier).paint(&p, rect());
    }
};

QPushButton* findingLink(const QString& words) {
    auto* button = linkButton(words);
    button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    return button;
}

} // namespace

FindingRows::FindingRows(Workbench& bench, const QString& name, QWidget* parent)
    : QWidget(parent), bench_(bench), all_(new QVBoxLayout(this)) {
    setObjectName(name);
    head_ = new TextLabel(TypeRole::head, tr("To look at"));
    more_ = findingLink({});
    more_->setObjectName(name + QStringLiteral(".more"));
    fold_ = findingLink({});
    fold_->setObjectName(name + QStringLiteral(".accepted"));
    all_->setContentsMargins(0, grid(2), 0, 0);
    all_->setSpacing(grid(1));
    all_->addWidget(head_);
    all_->addWidget(new Rule(Rule::Kind::head));
    all_->addWidget(more_);
    all_->addWidget(fold_);
    connect(more_, &QPushButton::clicked, this, [this] {
        most_ += 30;
        show();
    });
    connect(fold_, &QPushButton::clicked, this, [this] {
        unfolded_ = !unfolded_;
        show();
    });
}

void FindingRows::setFindings(std::vector<ListedFinding> list) {
    list_ = std::move(list);
    show();
}

FindingRows::Row FindingRows::makeRow(std::size_t index) {
    Row row;
    row.all = new QWidget;
    row.mark = new FindingMark;
    row.words = new TextLabel(TypeRole::text);
    row.words->setWordWrap(true);
    row.lead = findingLink({});
    row.lead->setObjectName(QStringLiteral("%1.%2.lead").arg(objectName()).arg(index));
    row.settle = findingLink({});
    row.settle->setObjectName(QStringLiteral("%1.%2.accept").arg(objectName()).arg(index));
    auto* cells = new QGridLayout(row.all);
    cells->setContentsMargins(0, grid(1), 0, grid(1));
    cells->setHorizontalSpacing(grid(2));
    cells->setVerticalSpacing(grid(1));
    cells->setColumnStretch(1, 1);
    cells->addWidget(row.mark, 0, 0, Qt::AlignTop);
    cells->addWidget(row.words, 0, 1);
    auto* ways = new QWidget;
    auto* flow = new FlowRow(ways);
    flow->addWidget(row.lead);
    flow->addWidget(row.settle);
    cells->addWidget(ways, 1, 1);
    connect(row.lead, &QPushButton::clicked, this, [this, index] {
        if (index < list_.size()) Q_EMIT leadTo(list_[index].finding.place);
    });
    connect(row.settle, &QPushButton::clicked, this, [this, index] { settle(index); });
    all_->insertWidget(all_->count() - 2, row.all);
    return row;
}

void FindingRows::settle(std::size_t index) {
    if (index >= list_.size()) return;
    const ListedFinding listed = list_[index]; // the list is filled anew by the edit
    const QDate now = QDate::currentDate();
    const Day today =
        bench_.today().value_or(Day::fromYmd(now.year(), now.month(), now.day()).value_or(Day{}));
    const auto edit = listed.accepted ? edits::askAgain(bench_.season(), listed)
                                      : edits::acceptFinding(bench_.season(), listed, today);
    if (const QString why = bench_.apply(edit); !why.isEmpty()) Q_EMIT refused(why);
}

void FindingRows::show() {
    int accepted = 0;
    for (const auto& listed : list_)
        accepted += listed.accepted ? 1 : 0;
    const auto open = static_cast<int>(list_.size()) - accepted;
    const std::size_t wanted = std::min(most_, static_cast<std::size_t>(unfolded_ ? open + accepted : open));
    for (std::size_t i = 0; i < wanted; ++i) {
        if (i == rows_.size()) rows_.push_back(makeRow(i));
        showRow(i);
    }
    for (std::size_t i = wanted; i < rows_.size(); ++i)
        rows_[i].all->hide();
    showFolds(accepted, open);
}

void FindingRows::showRow(std::size_t index) {
    const auto& listed = list_[index];
    auto& row = rows_[index];
    const QString words =
        names_ ? sentence(bench_.season(), listed) : sentence(listed.finding, bench_.season());
    static_cast<FindingMark*>(row.mark)->asks =
        listed.finding.severity != plan::Severity::note && !listed.accepted;
    row.mark->update();
    row.words->setText(breakable(words));
    row.words->setInk(listed.accepted ? Ink::second : Ink::text);
    row.lead->setText(leadWords(listed.finding));
    row.lead->setVisible(here_ != listed.finding.place);
    row.lead->setAccessibleName(tr("%1: %2").arg(row.lead->text(), words));
    row.settle->setText(listed.accepted ? tr("Ask again") : tr("Leave it so"));
    row.settle->setAccessibleName(tr("%1: %2").arg(row.settle->text(), words));
    row.settle->setToolTip(listed.accepted ? tr("Count it among what wants looking at")
                                           : tr("Says no more of it until its figures change"));
    row.all->show();
}

void FindingRows::showFolds(int accepted, int open) {
    const int all = unfolded_ ? open + accepted : open;
    const int below = all - static_cast<int>(std::min(most_, static_cast<std::size_t>(all)));
    more_->setVisible(below > 0);
    more_->setText(tr("%n more: show", nullptr, below));
    fold_->setVisible(accepted > 0);
    fold_->setText(unfolded_ ? tr("Hide what you left so") : tr("%n you left so: show", nullptr, accepted));
    setVisible(!list_.empty());
    head_->setText(open > 0 ? tr("To look at") : tr("Nothing to look at"));
}

} // namespace withy::ui
