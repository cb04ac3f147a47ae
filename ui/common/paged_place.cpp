// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/paged_place.h"

#include <QVBoxLayout>

namespace withy::ui {

PagedPlace::PagedPlace(Workbench& bench, const char* id, const QString& title,
                       const std::vector<SubPages::Named>& pages, QWidget* parent)
    : Place(bench, parent), id_(QString::fromLatin1(id)), pages_(new SubPages(id, title, pages)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(pages_);
    connect(pages_, &SubPages::refused, this, &Place::refused);
    connect(pages_, &SubPages::said, this, &Place::said);
    connect(pages_, &SubPages::leadTo, this, &Place::leadTo);
    connect(pages_, &SubPages::wanted, this, &Place::wanted);
}

} // namespace withy::ui
