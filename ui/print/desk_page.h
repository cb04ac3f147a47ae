// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

#ifndef Q_MOC_RUN
#include "ui/logic/paper_shop.h"
#endif

namespace withy::ui {

class PaperDesk;

/// A page with one paper that belongs to no booking: looked at, printed, kept.
class DeskPage : public SubPage {
    Q_OBJECT

public:
    /// What the page begins with.
    DeskPage(Workbench& bench, PaperKind paper, Answer answer, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override { return answer_; }

    void enter() override;

private:
    PaperKind paper_;
    Answer answer_;
    PaperDesk* desk_;
};

} // namespace withy::ui
