// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

#include <initializer_list>

namespace withy::ui {

/// The head of a group with a rule under it, a quiet remark at its right, and what belongs to it below.
class Group : public QWidget {
public:
    explicit Group(const QString& head, QWidget* parent = nullptr)
        : QWidget(parent), remark_(new TextLabel(TypeRole::caption, {}, Ink::caption)) {
        head_ = new TextLabel(TypeRole::head, head);
        remark_->setAlignment(Qt::AlignRight | Qt::AlignBottom);
        remark_->setWordWrap(true);
        auto* top = new QHBoxLayout;
        top->addWidget(head_);
        top->addWidget(remark_, 1);
        rows_ = new QVBoxLayout(this);
        rows_->setContentsMargins(0, 0, 0, grid(3));
        rows_->setSpacing(grid(1));
        rows_->addLayout(top);
        rows_->addWidget(new Rule(Rule::Kind::head));
    }

    void add(QWidget* widget) { rows_->addWidget(widget); }

    void setHead(const QString& words) { head_->setText(words); }

    void setRemark(const QString& words) { remark_->setText(words); }

private:
    TextLabel* head_;
    TextLabel* remark_;
    QVBoxLayout* rows_;
};

/// A caution or a remark below a field, over several lines.
inline TextLabel* remark(const QString& words = {}, Ink ink = Ink::second) {
    auto* label = new TextLabel(TypeRole::caption, words, ink);
    label->setWordWrap(true);
    return label;
}

} // namespace withy::ui
