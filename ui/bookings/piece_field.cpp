// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/piece_field.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_pieces.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>

namespace withy::ui {

namespace {

/// Completes the name behind the count.
class DesignCompleter : public QCompleter {
public:
    using QCompleter::QCompleter;

    QStringList splitPath(const QString& typed) const override {
        count_ = splitCount(typed).first;
        return {splitCount(typed).second};
    }

    QString pathFromIndex(const QModelIndex& index) const override {
        const QString name = QCompleter::pathFromIndex(index);
        return count_ ? QStringLiteral("%1 %2").arg(QString::number(*count_), name) : name;
    }

private:
    mutable std::optional<std::int64_t> count_;
};

} // namespace

PieceField::PieceField(Workbench& bench, QWidget* parent)
    : QLineEdit(parent), bench_(bench), names_(new QStringListModel(this)) {
    auto* completer = new DesignCompleter(this);
    completer->setModel(names_);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    completer->setMaxVisibleItems(8);
    completer->popup()->setProperty("look", QStringLiteral("popup"));
    setCompleter(completer);
    setObjectName(QStringLiteral("pieces.add"));
    setAccessibleName(tr("Add a piece"));
    setPlaceholderText(tr("Add a piece: 24 supper jar"));
    setToolTip(tr("How many, a design's name, and on which tables if you like: 24 supper jar on trestles. "
                  "Enter adds it"));
    connect(&bench_, &Workbench::changed, this, &PieceField::fill);
    fill();
}

void PieceField::fill() {
    if (!shown_.empty() && shown_.sameRowsAs(bench_.season().designs)) return;
    shown_ = bench_.season().designs;
    QStringList names;
    for (const auto& d : shown_)
        names << ui::text(d.name);
    names.sort(Qt::CaseInsensitive);
    names_->setStringList(names);
}

void PieceField::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && !text().isEmpty() && !completer()->popup()->isVisible()) {
        clear();
        return;
    }
    QLineEdit::keyPressEvent(event);
    if (enter && !text().trimmed().isEmpty()) Q_EMIT asked(text());
}

} // namespace withy::ui
