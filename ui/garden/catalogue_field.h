// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QLineEdit>

class QCompleter;
class QStandardItemModel;

namespace withy::ui {

/// Type a plant's name: the catalogue offers what the season has not, and last a new one of one's own.
class CatalogueField : public QLineEdit {
    Q_OBJECT

public:
    explicit CatalogueField(Workbench& bench, QWidget* parent = nullptr);

Q_SIGNALS:
    void taken(withy::Id<withy::model::Plant> inCatalogue);
    void named(const QString& name);

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    void offer(const QString& typed);
    void choose(const QModelIndex& index);

    Workbench& bench_;
    QStandardItemModel* offers_;
    QCompleter* completer_;
    bool chosen_ = false; ///< until it has been told of: the completer tells of Enter a second time
};

} // namespace withy::ui
