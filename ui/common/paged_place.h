// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_pages.h"
#include "ui/shell/place.h"

namespace withy::ui {

/// A place that is made of pages: it frames them and passes on what they are asked and what they say.
class PagedPlace : public Place {
    Q_OBJECT

public:
    void addActions(Actions& actions) override { pages_->addActions(actions); }

    bool goTo(const model::Ref& ref) override { return pages_->goTo(ref); }

    [[nodiscard]] QString helpPage() const override { return id_; }

    void enter() override { pages_->enter(); }

    bool makeNext() override { return pages_->makeNext(); }

protected:
    /// `id` names its objects, its actions and its page of the guide: "garden".
    PagedPlace(Workbench& bench, const char* id, const QString& title,
               const std::vector<SubPages::Named>& pages, QWidget* parent);

    [[nodiscard]] SubPages& pages() { return *pages_; }

private:
    QString id_;
    SubPages* pages_;
};

} // namespace withy::ui
