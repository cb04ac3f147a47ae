// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

#include <optional>

namespace withy::ui {

class Actions;

/// One tab of a booking's page. It wires itself to the workbench (`changed` for its fields, `planned` for
/// its figures) and is told which booking to show; the page around it shows the head and the tabs.
class BookingTab : public QWidget {
    Q_OBJECT

public:
    explicit BookingTab(Workbench& bench, QWidget* parent = nullptr) : QWidget(parent), bench_(bench) {}

    /// Shows this booking, or nothing. Called whenever the choice changes, and before the tab is first
    /// seen; may be called again with the same booking, and then keeps its place.
    virtual void show(std::optional<Id<model::Booking>> id) = 0;

    /// Where the keyboard begins when the tab is chosen.
    virtual void enter() { setFocus(); }

    /// Whether it brings a scrolled area of its own.
    [[nodiscard]] virtual bool scrollsItself() const { return true; }

    /// Its commands, with stable ids; called once.
    virtual void addActions(Actions&) {}

Q_SIGNALS:
    /// What was not taken, and its mend; empty when the last edit was taken.
    void refused(const QString& sentence);
    /// Something worth a quiet line.
    void said(const QString& sentence);
    /// Please show this record, wherever it lives.
    void leadTo(const withy::model::Ref& ref);
    /// One of its commands was given while it is not seen: please show it.
    void wanted();

protected:
    Workbench& bench_;
};

} // namespace withy::ui
