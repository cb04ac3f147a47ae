// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/workbench.h"
#endif

#include <QWidget>

class QPlainTextEdit;

namespace withy::ui {

/// A drafted sentence for the client: to change, to copy, and to note as told or as still to be told.
class ClientNote : public QWidget {
    Q_OBJECT

public:
    explicit ClientNote(Workbench& bench, QWidget* parent = nullptr);
    /// The draft of a share-out; what the grower has changed in it stays until the booking changes.
    void setDraft(Id<model::Booking> booking, Day bench, const QString& draft);
    void enter();

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);

private:
    void keep(bool told);

    Workbench& bench_;
    Id<model::Booking> booking_;
    Day needed_;
    QString draft_;
    QPlainTextEdit* words_;
};

} // namespace withy::ui
