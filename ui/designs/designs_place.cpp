// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/designs_place.h"

#include "ui/common/field_edit.h"
#include "ui/designs/design_editor.h"
#include "ui/designs/designs_wall.h"
#include "ui/designs/erase_bar.h"
#include "ui/designs/new_design_menu.h"
#include "ui/designs/slot_list.h"
#include "ui/designs/use_menu.h"
#include "ui/designs/wall_page.h"
#include "ui/logic/format.h"
#include "ui/shell/actions.h"

#include <QAction>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace withy::ui {

using model::TableKind;

DesignsPlace::DesignsPlace(Workbench& bench, QWidget* parent)
    : Place(bench, parent)
    , erase_(new EraseBar(bench))
    , pages_(new QStackedWidget)
    , wall_(new WallPage(bench)) {
    setObjectName(QStringLiteral("designs"));
    pages_->addWidget(wall_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(erase_);
    column->addWidget(pages_, 1);
    const auto id = [](qint64 value) { return Id<model::Design>(value); };
    connect(wall_, &WallPage::openAsked, this, [this, id](qint64 d) { open(id(d)); });
    connect(wall_, &WallPage::useAsked, this, [this, id](qint64 d) { use(id(d)); });
    connect(wall_, &WallPage::newAsked, this, &DesignsPlace::newDesign);
    connect(erase_, &EraseBar::erased, this,
            [this](const QString& name) { Q_EMIT said(takenOutWords(name)); });
    connect(erase_, &EraseBar::left, this, &DesignsPlace::enter);
    connect(&bench_, &Workbench::changed, this, &DesignsPlace::afterChange);
}

DesignEditor& DesignsPlace::editor() {
    if (editor_) return *editor_;
    editor_ = new DesignEditor(bench_);
    pages_->addWidget(editor_);
    const auto id = [](qint64 value) { return Id<model::Design>(value); };
    connect(editor_, &DesignEditor::backAsked, this, &DesignsPlace::back);
    connect(editor_, &DesignEditor::useAsked, this, [this, id](qint64 d) { use(id(d)); });
    connect(editor_, &DesignEditor::copyAsked, this, [this, id](qint64 d) { duplicate(id(d)); });
    connect(editor_, &DesignEditor::eraseAsked, this, [this, id](qint64 d) { erase(id(d)); });
    connect(editor_, &DesignEditor::refused, this, &Place::refused);
    connect(editor_, &DesignEditor::leadTo, this, [this](const model::Ref& ref) {
        if (!goTo(ref)) Q_EMIT leadTo(ref);
    });
    return *editor_;
}

bool DesignsPlace::makeNext() {
    const bool missing = !editor_;
    editor();
    return missing;
}

std::optional<Id<model::Design>> DesignsPlace::chosen() const {
    return atTheBench() ? editor_->design() : wall_->wall().chosen();
}

bool DesignsPlace::atTheBench() const {
    return editor_ && pages_->currentWidget() == editor_;
}

std::optional<model::Ref> DesignsPlace::shown() const {
    if (!atTheBench() || !editor_->design()) return std::nullopt;
    return model::Ref{model::TableKind::designs, editor_->design()->value};
}

void DesignsPlace::enter() {
    if (atTheBench())
        editor_->setFocus();
    else
        wall_->enter();
}

/// The design at the bench may have been taken out, by undo as well.
void DesignsPlace::afterChange() {
    if (atTheBench() && (!editor_->design() || !bench_.season().designs.find(*editor_->design()))) {
        pages_->setCurrentWidget(wall_);
        editor_->showDesign(std::nullopt);
        Q_EMIT shownChanged();
        wall_->enter();
    }
}

void DesignsPlace::open(Id<model::Design> design) {
    if (!bench_.season().designs.find(design)) return;
    if (atTheBench() && editor_->design() != design && !editor_->commit()) return;
    wall_->choose(design);
    editor().showDesign(design);
    pages_->setCurrentWidget(editor_);
    Q_EMIT shownChanged();
    editor_->setFocus();
}

void DesignsPlace::back() {
    if (!atTheBench() || !editor_->commit()) return;
    pages_->setCurrentWidget(wall_);
    Q_EMIT shownChanged();
    if (editor_->design()) wall_->choose(*editor_->design());
    wall_->enter();
}

void DesignsPlace::newDesign(QWidget* at) {
    auto* button = at ? at : &wall_->newButton();
    auto* menu = new NewDesignMenu(bench_, this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    connect(menu, &NewDesignMenu::made, this, [this](qint64 id) { showNew(Id<model::Design>(id)); });
    menu->popup(button->isVisible() ? button->mapToGlobal(QPoint(0, button->height()))
                                    : window()->mapToGlobal(window()->rect().center()));
}

void DesignsPlace::showNew(Id<model::Design> design) {
    if (!isVisible()) Q_EMIT leadTo({TableKind::designs, design.value});
    open(design);
    editor().editName();
}

void DesignsPlace::use(Id<model::Design> design) {
    auto* menu = new UseMenu(bench_, design, this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    connect(menu, &UseMenu::used, this, [this, design](qint64 booking) {
        const auto* d = bench_.season().designs.find(design);
        const auto* b = bench_.season().bookings.find(Id<model::Booking>(booking));
        if (d && b) Q_EMIT said(usedInWords(text(d->name), text(b->title)));
    });
    menu->popup(QCursor::pos());
}

void DesignsPlace::duplicate(Id<model::Design> design) {
    Id<model::Design> made;
    const auto edit = edits::duplicateDesign(bench_.season(), design, made);
    if (bench_.take(edit)) showNew(made);
}

void DesignsPlace::erase(Id<model::Design> design) {
    erase_->ask(design);
}

bool DesignsPlace::goTo(const model::Ref& ref) {
    const auto& s = bench_.season();
    switch (ref.table) {
    case TableKind::designs:
        if (!s.designs.find(Id<model::Design>(ref.id))) return false;
        open(Id<model::Design>(ref.id));
        return true;
    case TableKind::slots:
        if (const auto* slot = s.slots.find(Id<model::Slot>(ref.id))) {
            open(slot->design);
            editor().openSlot(slot->id);
            return true;
        }
        return false;
    case TableKind::slotPlants:
        if (const auto* choice = s.slotPlants.find(Id<model::SlotPlant>(ref.id)))
            return goTo({TableKind::slots, choice->slot.value});
        return false;
    case TableKind::designSundries:
        if (const auto* sundry = s.designSundries.find(Id<model::DesignSundry>(ref.id)))
            return goTo({TableKind::designs, sundry->design.value});
        return false;
    default:
        return false;
    }
}

void DesignsPlace::addActions(Actions& actions) {
    const auto withChosen = [this](void (DesignsPlace::*act)(Id<model::Design>)) {
        return [this, act] {
            if (const auto id = chosen()) (this->*act)(*id);
        };
    };
    actions.add({"design.new", tr("&New design"), Qt::CTRL | Qt::SHIFT | Qt::Key_N,
                 tr("In a container, or bound or built")},
                [this] { newDesign(); });
    actions.add({"design.open", tr("&Open at the bench"), {}, tr("Draw the chosen design")},
                withChosen(&DesignsPlace::open));
    actions.add({"design.back", tr("&Back to the wall"), {}, tr("All designs on their shelves")},
                [this] { back(); });
    actions.add({"design.find", tr("&Find a design"), Qt::CTRL | Qt::SHIFT | Qt::Key_F,
                 tr("By any part of its name")},
                [this] {
                    if (atTheBench()) back();
                    wall_->find();
                });
    actions.add({"design.use", tr("&Use the design in a booking"), Qt::CTRL | Qt::Key_U,
                 tr("One piece of it; change the number there")},
                withChosen(&DesignsPlace::use));
    actions.add(
        {"design.duplicate", tr("&Copy the design"), {}, tr("The same again under a name of its own")},
        withChosen(&DesignsPlace::duplicate));
    actions.add({"design.erase", tr("&Take the design out"), {}, tr("Says first who uses it")},
                withChosen(&DesignsPlace::erase));
    actions.add({"design.slot.add", tr("&Add a slot"), Qt::CTRL | Qt::SHIFT | Qt::Key_A,
                 tr("To the design at the bench")},
                [this] {
                    if (atTheBench()) editor_->slotList().addSlot();
                });
}

} // namespace withy::ui
