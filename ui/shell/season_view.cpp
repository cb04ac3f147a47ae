// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/season_view.h"

#include "ui/common/field_edit.h"
#include "ui/shell/actions.h"
#include "ui/shell/findings_panel.h"
#include "ui/shell/places.h"
#include "ui/shell/rail.h"

#include <QHBoxLayout>
#include <QStackedWidget>

namespace withy::ui {

SeasonView::SeasonView(std::unique_ptr<Workbench> bench, Actions& actions, QWidget* parent)
    : QWidget(parent)
    , bench_(std::move(bench))
    , rail_(new Rail)
    , stack_(new QStackedWidget)
    , findings_(new FindingsPanel(*bench_)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(rail_);
    row->addWidget(stack_, 1);
    row->addWidget(findings_);
    addPlaces(actions);
    keepBackups();
    connect(findings_, &FindingsPanel::leadTo, this, &SeasonView::goTo);
    connect(findings_, &FindingsPanel::refused, this, &SeasonView::refused);
    connect(rail_, &Rail::chosen, this, &SeasonView::showPlace);
}

SeasonView::~SeasonView() {
    // These look at the workbench until they are gone.
    delete findings_;
    for (auto* place : places_)
        delete place;
}

void SeasonView::keepBackups() {
    if (!bench_->canWrite()) return;
    keeper_ = std::make_unique<BackupKeeper>(bench_->path());
    connect(bench_.get(), &Workbench::changed, keeper_.get(), &BackupKeeper::seasonChanged);
    connect(keeper_.get(), &BackupKeeper::failed, this, &SeasonView::said);
    keeper_->seasonOpened();
}

void SeasonView::addPlaces(Actions& actions) {
    actions.add({"view.findings", tr("What &needs looking at"), QKeySequence(Qt::Key_F8),
                 tr("What the whole season asks for, beside the page")},
                [this] { findings_->toggle(); });
    int index = 0;
    for (auto& entry : makePlaces(*bench_, stack_)) {
        rail_->addPlace(entry.words, entry.icon, entry.tip);
        stack_->addWidget(entry.place);
        places_.push_back(entry.place);
        connect(entry.place, &Place::refused, this, &SeasonView::refused);
        connect(entry.place, &Place::said, this, &SeasonView::said);
        connect(entry.place, &Place::leadTo, this, &SeasonView::goTo);
        connect(entry.place, &Place::restoreWanted, this, &SeasonView::restoreWanted);
        const int place = index++;
        connect(entry.place, &Place::wanted, this, [this, place] {
            if (stack_->currentIndex() != place) showPlace(place);
        });
        actions.add({entry.actionId, tr("Go to %1").arg(entry.words),
                     QKeySequence(Qt::CTRL | (Qt::Key_1 + place)), entry.tip},
                    [this, place] { showPlace(place); });
        entry.place->addActions(actions);
    }
}

Place* SeasonView::current() const {
    const auto index = static_cast<std::size_t>(stack_->currentIndex());
    return index < places_.size() ? places_[index] : nullptr;
}

void SeasonView::showPlace(int index) {
    if (index < 0 || index >= placeCount()) return;
    if (index != stack_->currentIndex() && !commitFocusedField(this))
        return rail_->setCurrent(stack_->currentIndex());
    stack_->setCurrentIndex(index);
    rail_->setCurrent(index);
    places_[static_cast<std::size_t>(index)]->enter();
    Q_EMIT placeChanged(index);
}

bool SeasonView::goTo(const model::Ref& ref) {
    if (!commitFocusedField(this)) return false;
    for (int i = 0; i < placeCount(); ++i) {
        if (!places_[static_cast<std::size_t>(i)]->goTo(ref)) continue;
        stack_->setCurrentIndex(i);
        rail_->setCurrent(i);
        Q_EMIT placeChanged(i);
        return true;
    }
    return false;
}

} // namespace withy::ui
