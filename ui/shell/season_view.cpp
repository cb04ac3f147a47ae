// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/season_view.h"

#include "ui/common/field_edit.h"
#include "ui/common/first_picture.h"
#include "ui/logic/season_looks.h"
#include "ui/shell/actions.h"
#include "ui/shell/findings_panel.h"
#include "ui/shell/rail.h"
#include "ui/shell/strip/bloom_strip.h"
#include "ui/shell/strip/strip_table.h"

#include <QHBoxLayout>
#include <QResizeEvent>
#include <QSettings>
#include <QStackedWidget>

#include <utility>

namespace withy::ui {

namespace {

constexpr auto stripKey = "view/strip"; ///< of this computer, not of a season

/// Asks for no more height than its pages need: the rest of the window is the strip's before theirs.
class Pages : public QStackedWidget {
public:
    [[nodiscard]] QSize sizeHint() const override { return minimumSizeHint(); }

    /// A layout takes the height for a width for the least there may be; pages scroll, and need less.
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }

    /// Only the page that is seen takes height from the strip.
    [[nodiscard]] QSize minimumSizeHint() const override {
        const QSize all = QStackedWidget::minimumSizeHint();
        return currentWidget() ? QSize(all.width(), currentWidget()->minimumSizeHint().height()) : all;
    }
};

} // namespace

SeasonView::SeasonView(std::unique_ptr<Workbench> bench, Actions& actions, QWidget* parent)
    : QWidget(parent)
    , bench_(std::move(bench))
    , rail_(new Rail)
    , strip_(new BloomStrip(*bench_))
    , stack_(new Pages)
    , beside_(new QHBoxLayout)
    , actions_(actions)
    , entries_(placesOf(*bench_))
    , places_(entries_.size()) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(rail_);
    beside_->setSpacing(0);
    beside_->addWidget(stack_, 1);
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addWidget(strip_);
    column->addLayout(beside_, 1);
    row->addLayout(column, 1);
    addPlaces();
    addStripActions();
    keepBackups();
    connect(strip_, &BloomStrip::leadTo, this, &SeasonView::goTo);
    connect(stack_, &QStackedWidget::currentChanged, this, &SeasonView::fitStrip);
    connect(rail_, &Rail::chosen, this, &SeasonView::showPlace);
    connect(&idle_, &QTimer::timeout, this, &SeasonView::makeWhileIdle);
    new FirstPicture(this, [this] {
        if (next_ > 0) showPlace(next_);
        idle_.start(0);
    });
}

SeasonView::~SeasonView() {
    stack_->disconnect(this);
    // These look at the workbench until they are gone.
    for (auto* place : places_) // before the strip: the page that comes to the fore is laid out under it
        delete place;
    delete stripTable_;
    delete strip_;
    delete findings_;
}

void SeasonView::keepBackups() {
    if (!bench_->canWrite()) return;
    keeper_ = std::make_unique<BackupKeeper>(bench_->path());
    connect(bench_.get(), &Workbench::changed, keeper_.get(), &BackupKeeper::seasonChanged);
    connect(keeper_.get(), &BackupKeeper::failed, this, &SeasonView::said);
    keeper_->seasonOpened();
}

void SeasonView::addPlaces() {
    actions_.add({"view.findings", tr("What &needs looking at"), QKeySequence(Qt::Key_F8),
                  tr("What the whole season asks for, beside the page")},
                 [this] { findings().toggle(); });
    for (int i = 0; i < placeCount(); ++i) {
        const auto& entry = entries_[static_cast<std::size_t>(i)];
        if (!entry.icon) {
            addHiddenPlace(i, entry);
            continue;
        }
        rail_->addPlace(entry.words, entry.icon, entry.tip);
        stack_->addWidget(new QWidget);
        actions_.add({entry.actionId, tr("&Go to %1").arg(entry.words),
                      QKeySequence(Qt::CTRL | (Qt::Key_1 + i)), entry.tip},
                     [this, i] { showPlace(i); });
    }
}

void SeasonView::addStripActions() {
    auto* shown = actions_.add({"view.strip", tr("&Bloom strip"), QKeySequence(Qt::Key_F7),
                                tr("Show the season's bloom across the top, or fold it away")},
                               [] {}); // below: however it is switched
    shown->setCheckable(true);
    shown->setChecked(QSettings().value(QLatin1String(stripKey), true).toBool());
    strip_->setVisible(shown->isChecked());
    connect(shown, &QAction::toggled, this, [this](bool on) {
        QSettings().setValue(QLatin1String(stripKey), on);
        strip_->setVisible(on);
    });
    actions_.add({"view.strip_table", tr("Bloom strip as a &table"), QKeySequence(Qt::SHIFT | Qt::Key_F7),
                  tr("What stands ready, week by week and plant by plant, to read and to copy")},
                 [this] {
                     if (!stripTable_) stripTable_ = new StripTable(*bench_, this);
                     stripTable_->open();
                 });
}

/// Whole where bookings are looked at, slim beside other work; the booking in view is the chosen one.
void SeasonView::fitStrip() {
    stack_->updateGeometry();
    const auto index = static_cast<std::size_t>(std::max(0, stack_->currentIndex()));
    const auto* place = current();
    strip_->setWhole(entries_[std::min(index, entries_.size() - 1)].wholeStrip &&
                     !(place && place->wantsHeight()));
    const auto shown = place ? place->shown() : std::nullopt;
    strip_->setDesign(shown && shown->table == model::TableKind::designs
                          ? std::optional(Id<model::Design>(shown->id))
                          : std::nullopt);
    if (shown && shown->table == model::TableKind::bookings)
        strip_->setChosen(Id<model::Booking>(shown->id));
    else
        strip_->setChosen(std::nullopt);
}

void SeasonView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    strip_->setRoom({width() - rail_->width(), height()});
    layout()->activate(); // at its height before the first picture
}

void SeasonView::addHiddenPlace(int index, const PlaceEntry& entry) {
    stack_->addWidget(new QWidget);
    actions_.add({entry.actionId, entry.words, entry.keys, entry.tip}, [this, index] { showPlace(index); });
}

Place& SeasonView::place(int index) {
    auto& made = places_[static_cast<std::size_t>(index)];
    if (made) return *made;
    made = entries_[static_cast<std::size_t>(index)].make();
    wire(index, *made);
    made->addActions(actions_);
    return *made;
}

void SeasonView::wire(int index, Place& place) {
    const bool wasCurrent = stack_->currentIndex() == index;
    auto* blank = stack_->widget(index);
    stack_->insertWidget(index, &place);
    if (wasCurrent) stack_->setCurrentIndex(index);
    delete blank;
    if (wasCurrent) fitStrip();
    connect(&place, &Place::refused, this, &SeasonView::refused);
    connect(&place, &Place::said, this, &SeasonView::said);
    connect(&place, &Place::leadTo, this, &SeasonView::goTo);
    connect(&place, &Place::shownChanged, this, &SeasonView::fitStrip);
    connect(&place, &Place::restoreWanted, this, &SeasonView::restoreWanted);
    connect(&place, &Place::left, this, [this] { showPlace(cameFrom_); });
    connect(&place, &Place::wanted, this, [this, index] {
        if (stack_->currentIndex() != index) showPlace(index);
    });
}

bool SeasonView::makeNext() {
    for (int i = 0; i < placeCount(); ++i) {
        if (!places_[static_cast<std::size_t>(i)]) {
            place(i);
            return true;
        }
        if (place(i).makeNext()) return true;
    }
    return false;
}

/// One part at a time, so that a key or a press waits for no more than that.
void SeasonView::makeWhileIdle() {
    if (makeNext()) return;
    idle_.stop();
    if (!std::exchange(complete_, true)) Q_EMIT complete();
}

void SeasonView::makeAll() {
    while (!complete_)
        makeWhileIdle();
}

FindingsPanel& SeasonView::findings() {
    if (findings_) return *findings_;
    findings_ = new FindingsPanel(*bench_);
    beside_->addWidget(findings_);
    connect(findings_, &FindingsPanel::leadTo, this, &SeasonView::goTo);
    connect(findings_, &FindingsPanel::refused, this, &SeasonView::refused);
    return *findings_;
}

Place* SeasonView::current() const {
    const auto index = static_cast<std::size_t>(stack_->currentIndex());
    return index < places_.size() ? places_[index] : nullptr;
}

void SeasonView::keepLook() const {
    SeasonLook look;
    look.place = QString::fromLatin1(entries_[static_cast<std::size_t>(cameFrom_)].actionId);
    for (const auto* place : places_)
        if (place) place->addTo(look);
    QSettings settings;
    SeasonLooks(settings).keep(bench_->path(), look);
}

void SeasonView::lookAsLast() {
    QSettings settings;
    const auto look = SeasonLooks(settings).of(bench_->path());
    for (auto* place : places_)
        if (place) place->lookAsLast(look);
    for (int i = 0; i < placeCount(); ++i) {
        const auto& entry = entries_[static_cast<std::size_t>(i)];
        if (entry.icon && look.place == QLatin1String(entry.actionId)) next_ = i;
    }
}

void SeasonView::showPlace(int index) {
    if (index < 0 || index >= placeCount()) return;
    next_ = 0;
    if (index != stack_->currentIndex() && !commitFocusedField(this)) return rail_->setCurrent(cameFrom_);
    place(index);
    stack_->setCurrentIndex(index);
    const bool inTheRail = static_cast<bool>(entries_[static_cast<std::size_t>(index)].icon);
    if (inTheRail) cameFrom_ = index;
    rail_->setCurrent(inTheRail ? index : 0); // what has no button of its own is a matter of bookings
    place(index).enter();
    Q_EMIT placeChanged(index);
}

bool SeasonView::goTo(const model::Ref& ref) {
    if (!commitFocusedField(this)) return false;
    next_ = 0;
    for (int i = 0; i < placeCount(); ++i) {
        if (!place(i).goTo(ref)) continue;
        stack_->setCurrentIndex(i);
        cameFrom_ = i;
        rail_->setCurrent(i);
        Q_EMIT placeChanged(i);
        return true;
    }
    return false;
}

} // namespace withy::ui
