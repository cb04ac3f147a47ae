// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/actions.h"
#include "ui/shell/place.h"

#include <QVBoxLayout>

namespace withy::ui {

/// A page of the first, plain window as a place, until the place that stands for it is there.
template <class Page>
class OldPlace : public Place {
public:
    OldPlace(Workbench& bench, QWidget* parent) : Place(bench, parent), page_(new Page(bench, this)) {
        (new QVBoxLayout(this))->addWidget(page_);
        connect(page_, &Page::refused, this, &Place::refused);
    }

    bool goTo(const model::Ref&) override { return false; }

    [[nodiscard]] QString helpPage() const override { return QStringLiteral("README"); }

    void addActions(Actions&) override {}

protected:
    Page* page_;
};

} // namespace withy::ui
