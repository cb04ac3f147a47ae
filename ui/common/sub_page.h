// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/edit.h"
#endif
#include "ui/logic/answers/answer.h"
#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

class Actions;

/// One page of a place, behind one of its segments (see SubPages). It wires itself to the workbench.
class SubPage : public QWidget {
    Q_OBJECT

public:
    explicit SubPage(Workbench& bench, QWidget* parent = nullptr) : QWidget(parent), bench_(bench) {}

    /// What the page begins with; asked for again after answerChanged.
    [[nodiscard]] virtual Answer answer() const = 0;

    virtual void addActions(Actions&) {}

    /// Shows the record, if it belongs here; false otherwise.
    virtual bool goTo(const model::Ref&) { return false; }

    /// Where the keyboard begins when the page is chosen.
    virtual void enter() { setFocus(); }

    /// Keeps what is being typed; false when it was refused.
    virtual bool commit() { return true; }

    /// Buttons for the page's head; may be null.
    [[nodiscard]] virtual QWidget* tools() const { return nullptr; }

Q_SIGNALS:
    void answerChanged();
    /// What was not taken, and its mend; empty when the last edit was taken.
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);
    /// One of its commands was asked for from elsewhere: it should be seen.
    void wanted();

protected:
    Workbench& bench_;
};

} // namespace withy::ui
