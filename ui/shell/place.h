// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#include "core/store/backups.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

class Actions;
struct SeasonLook;

/// A place of the rail, or one that is reached by its key alone. A place wires itself to the workbench; the
/// shell only shows it, hears what it says and leads to it.
class Place : public QWidget {
    Q_OBJECT

public:
    Place(Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {}

    /// Its commands, with stable ids; called once.
    virtual void addActions(Actions& actions) = 0;
    /// Shows the record, if it belongs here; false otherwise.
    virtual bool goTo(const model::Ref& ref) = 0;
    /// The page of the guide that F1 opens: "bookings".
    [[nodiscard]] virtual QString helpPage() const = 0;

    /// Where the keyboard begins when the place is entered.
    virtual void enter() { setFocus(); }

    /// The record it shows now, for what stands around it; nothing when it shows many.
    [[nodiscard]] virtual std::optional<model::Ref> shown() const { return std::nullopt; }

    /// What it adds to how the season is looked at, to be found again the next time.
    virtual void addTo(SeasonLook&) const {}

    /// As it was looked at last time; before the first picture, which waits for as little as it did without.
    virtual void lookAsLast(const SeasonLook&) {}

    /// Whether it has work in view that wants the window's height: what stands above keeps slim.
    [[nodiscard]] virtual bool wantsHeight() const { return false; }

    /// Makes one of its parts that nobody has asked to see yet; false when all are there. The window
    /// shows before they are made, and makes them while nothing else is to be done.
    virtual bool makeNext() { return false; }

Q_SIGNALS:
    /// What was not taken, and its mend.
    void refused(const QString& sentence);
    /// Something worth a quiet line: "Kept a copy in ...".
    void said(const QString& sentence);
    /// Please show this record, wherever it lives.
    void leadTo(const withy::model::Ref& ref);
    /// shown() is another.
    void shownChanged();
    /// It is done with: please go back to where one came from.
    void left();
    /// One of its commands was asked for: please show this place.
    void wanted();
    /// Please close the season, put this backup in its place and open it anew.
    void restoreWanted(const withy::store::Backup& backup);

protected:
    Workbench& bench_;
};

} // namespace withy::ui
