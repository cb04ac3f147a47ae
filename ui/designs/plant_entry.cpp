// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/plant_entry.h"

#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>
#include <QTimer>

namespace withy::ui {

PlantEntry::PlantEntry(Workbench& bench, const QString& id, const QString& prompt, QWidget* parent)
    : QLineEdit(parent), bench_(bench), names_(new QStringListModel(this)) {
    setObjectName(id);
    setPlaceholderText(prompt);
    setAccessibleName(prompt);
    auto* completer = new QCompleter(names_, this);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    completer->popup()->setProperty("look", QStringLiteral("popup"));
    setCompleter(completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this,
            [this](const QString& name) { takeNamed(name); });
}

void PlantEntry::focusInEvent(QFocusEvent* event) {
    QStringList names;
    for (const auto& p : bench_.season().plants)
        names << ui::text(p.name);
    names.sort(Qt::CaseInsensitive);
    names_->setStringList(names);
    QLineEdit::focusInEvent(event);
}

void PlantEntry::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && !text().trimmed().isEmpty()) {
        takeNamed(text().trimmed());
        return;
    }
    if (event->key() == Qt::Key_Escape && !text().isEmpty()) {
        clear();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

/// The plant of that name; else the only one whose name holds the words.
void PlantEntry::takeNamed(const QString& name) {
    std::vector<Id<model::Plant>> exact, holding;
    for (const auto& p : bench_.season().plants) {
        const QString own = withy::ui::text(p.name);
        if (own.compare(name, Qt::CaseInsensitive) == 0) exact.push_back(p.id);
        if (own.contains(name, Qt::CaseInsensitive)) holding.push_back(p.id);
    }
    const auto& found = exact.empty() ? holding : exact;
    // The completer writes its own pick into the field after this; blank it once it has.
    QTimer::singleShot(0, this, [this, took = found.size() == 1] {
        if (took) clear();
    });
    if (found.size() == 1) {
        Q_EMIT took(found.front().value);
        return;
    }
    Q_EMIT refused(noPlantWords(name, static_cast<int>(found.size())));
}

} // namespace withy::ui
