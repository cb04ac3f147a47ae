// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/cover_plan.h"
#endif

#include "ui/bookings/tabs/sheet_tab.h"

namespace withy::ui {

class FindingRows;
class ShareBar;

/// How many stems, of what, from where and how sure, cut when; what is short and what would mend it, taken by
/// one press. While the cover is not known, what is needed alone.
class StemsTab : public SheetTab {
    Q_OBJECT

public:
    explicit StemsTab(Workbench& bench, QWidget* parent = nullptr);
    void addActions(Actions& actions) override;

protected:
    void fill(const plan::BookingPlan& plan) override;

private:
    void fillCover(const plan::BookingPlan& plan);
    void take(const QString& row, int way);
    static const plan::Mend* mendNow(const plan::SlotCover& slot, const plan::Mend& pressed);

    Actions* actions_ = nullptr; ///< of the window
    ShareBar* bar_;
    SheetTable* cover_;
    QWidget* needsHead_;
    SheetTable* stems_;
    QWidget* roundsHead_;
    SheetTable* rounds_;
    FindingRows* findings_;
};

} // namespace withy::ui
