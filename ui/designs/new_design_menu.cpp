// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/new_design_menu.h"

#include "ui/common/widget_parts.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

namespace withy::ui {

namespace {

using model::PieceKind;

constexpr PieceKind boundKinds[]{PieceKind::handTied, PieceKind::buttonhole, PieceKind::corsage,
                                 PieceKind::crown,    PieceKind::pewEnd,     PieceKind::sheaf,
                                 PieceKind::spray,    PieceKind::garland,    PieceKind::wreath};

QString kindWords(PieceKind kind) {
    return capital(wordText(model::wordOf(kind)));
}

} // namespace

NewDesignMenu::NewDesignMenu(Workbench& bench, QWidget* parent) : QMenu(parent), bench_(bench) {
    setObjectName(QStringLiteral("designs.new.menu"));
    connect(this, &QMenu::aboutToShow, this, &NewDesignMenu::fill);
    fill();
}

void NewDesignMenu::take(const model::Edit& edit, Id<model::Design> id) {
    if (bench_.take(edit)) Q_EMIT made(id.value);
}

void NewDesignMenu::fill() {
    clear();
    addSection(tr("In a container"));
    for (const auto& c : bench_.season().containers) {
        auto* action = addAction(asTyped(text(c.name)), this, [this, id = c.id] {
            const auto* container = bench_.season().containers.find(id);
            if (!container) return;
            Id<model::Design> made;
            const std::string called = utf8(tr("New %1").arg(text(container->name).toLower()));
            take(edits::newDesignOf(bench_.season(), called, PieceKind::table, id, made), made);
        });
        action->setObjectName(QStringLiteral("designs.new.container.%1").arg(c.id.value));
    }
    auto* jar = addAction(tr("A new &jar"), this, [this] {
        Id<model::Design> made;
        const auto edit =
            edits::newDesignInNewJar(bench_.season(), utf8(tr("New design")), utf8(tr("Jar")), made);
        take(edit, made);
    });
    jar->setObjectName(QStringLiteral("designs.new.jar"));
    addSection(tr("Bound or built"));
    for (const auto kind : boundKinds) {
        auto* action = addAction(kindWords(kind), this, [this, kind] {
            Id<model::Design> made;
            take(edits::newDesignOf(bench_.season(), utf8(kindWords(kind)), kind, std::nullopt, made), made);
        });
        action->setObjectName(QStringLiteral("designs.new.bound.%1").arg(static_cast<int>(kind)));
    }
    addSection(tr("With a container of its own"));
    for (const auto kind : {PieceKind::pedestal, PieceKind::basket, PieceKind::budVase}) {
        auto* action = addAction(kindWords(kind), this, [this, kind] {
            Id<model::Design> made;
            take(edits::newDesignOf(bench_.season(), utf8(kindWords(kind)), kind, std::nullopt, made), made);
        });
        action->setObjectName(QStringLiteral("designs.new.vessel.%1").arg(static_cast<int>(kind)));
    }
}

} // namespace withy::ui
