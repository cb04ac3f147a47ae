// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/schema.h"
#endif
#include "ui/common/record_form.h"
#include "ui/common/sub_page.h"

namespace withy::ui {

/// What holds for the whole season, in groups; beside each default where it comes from.
class SettingsPage : public SubPage {
    Q_OBJECT

public:
    explicit SettingsPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    bool goTo(const model::Ref& ref) override;
    void enter() override;
    bool commit() override;

private:
    void showBases();
    RecordForm* form_;
};

} // namespace withy::ui
