// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/packing_part.h"

#include "ui/common/answer_phrases.h"
#include "ui/common/figure.h"
#include "ui/common/scene_view.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/shed/packing_scenes.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/paint/spacing.h"

#include <QBoxLayout>
#include <QScrollArea>

namespace withy::ui {

PackingPart::PackingPart(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , answer_(new AnswerLabel)
    , traysHead_(new TextLabel(TypeRole::head, tr("Trays from above")))
    , trays_(new SceneView(QStringLiteral("packing.trays"), tr("How each tray is filled")))
    , loadHead_(new TextLabel(TypeRole::head))
    , both_(new QBoxLayout(QBoxLayout::LeftToRight))
    , floor_(new SceneView(QStringLiteral("packing.floor"), tr("The load floor from above")))
    , load_(new QVBoxLayout)
    , carry_(new FigureButton)
    , working_(new WorkingPanel)
    , waterHead_(new TextLabel(TypeRole::head, tr("Water")))
    , water_(new QVBoxLayout)
    , caution_(new TextLabel(TypeRole::caption, {}, Ink::second)) {
    setObjectName(QStringLiteral("packing"));
    answer_->setObjectName(QStringLiteral("packing.answer"));
    answer_->setWordWrap(true);
    carry_->setObjectName(QStringLiteral("packing.carry"));
    caution_->setWordWrap(true);
    caution_->setText(loadCaution());
    working_->hide();
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(pageMargin(), grid(3), pageMargin(), pageMargin());
    column->setSpacing(grid(2));
    column->addWidget(answer_);
    column->addWidget(traysHead_);
    column->addWidget(trays_);
    column->addWidget(loadHead_);
    both_->setSpacing(grid(6));
    auto* list = new QWidget;
    list->setLayout(load_);
    load_->setContentsMargins(0, 0, 0, 0);
    load_->setSpacing(0);
    both_->addWidget(floor_, 1, Qt::AlignTop);
    both_->addWidget(list, 2, Qt::AlignTop);
    column->addLayout(both_);
    column->addWidget(caution_);
    column->addWidget(waterHead_);
    column->addWidget(carry_, 0, Qt::AlignLeft);
    column->addWidget(working_);
    column->addLayout(water_);
    column->addStretch(1);
    auto* scroll = scrolledPage(page);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(scroll);
    connect(carry_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &PackingPart::leadTo);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::planned, seen, &WhenSeen::ask);
}

void PackingPart::show(std::optional<Id<model::Booking>> id) {
    booking_ = id;
    refresh();
}

void PackingPart::enter() {
    if (carry_->isVisible()) carry_->setFocus(Qt::TabFocusReason);
}

void PackingPart::refresh() {
    const auto& shed = bench_.plan().shed;
    packed_ = nullptr;
    if (shed && booking_)
        if (const auto found = shed->packing.find(*booking_); found != shed->packing.end())
            packed_ = found->second;
    const bool any = packed_ && !packed_->entries.empty();
    answer_->setPhrases(phrasesOf(packingAnswer(bench_.season(), packed_.get())));
    trays_->setMaker([this](double width, const SceneLook& look) {
        return packed_ ? traysScene(bench_.season(), *packed_, width, look) : Scene();
    });
    bool trays = false;
    for (std::size_t d = 0; any && d < packed_->drops.size(); ++d)
        trays = trays || !packed_->drops[d].trays.empty();
    traysHead_->setVisible(trays);
    trays_->setVisible(trays);
    const auto* vehicle =
        any && packed_->vehicle ? bench_.season().vehicles.find(*packed_->vehicle) : nullptr;
    floor_->setVisible(vehicle && packed_->load && !packed_->load->loaded.empty());
    floor_->setMaker([this](double width, const SceneLook& look) {
        const auto* van =
            packed_ && packed_->vehicle ? bench_.season().vehicles.find(*packed_->vehicle) : nullptr;
        if (!van || !van->floorWidth || !van->floorLength || !packed_->load) return Scene();
        const double k = std::min(width / static_cast<double>(van->floorWidth->value),
                                  grid(110) / static_cast<double>(van->floorLength->value));
        return floorScene(*packed_, *van, k, look);
    });
    loadHead_->setVisible(any);
    caution_->setVisible(any);
    loadHead_->setText(loadHead(bench_.season(), packed_.get()));
    fillLoad();
    fillWater();
}

void PackingPart::fillLoad() {
    clearLayout(*load_);
    if (!packed_) return;
    for (const auto& line : loadLines(bench_.season(), *packed_)) {
        auto* row = new QWidget;
        auto* cells = new QHBoxLayout(row);
        cells->setContentsMargins(0, grid(0.75), 0, grid(0.75));
        cells->setSpacing(grid(2));
        auto* number = new TextLabel(TypeRole::strong, line.number);
        onGrid(number, &QWidget::setFixedWidth, 7);
        cells->addWidget(number);
        auto* words = new TextLabel(TypeRole::text, breakable(line.words));
        words->setWordWrap(true);
        cells->addWidget(words, 1);
        cells->addWidget(new TextLabel(TypeRole::strong, line.weight, line.asks ? Ink::osier : Ink::text));
        load_->addWidget(row);
        load_->addWidget(new Rule(Rule::Kind::hair));
    }
}

void PackingPart::fillWater() {
    clearLayout(*water_);
    const bool any = packed_ && !packed_->waters.empty();
    waterHead_->setVisible(any);
    carry_->setVisible(any);
    if (!any) {
        carry_->setChecked(false);
        return;
    }
    const FigureFacts facts{carryWords(*packed_, bench_.season()),
                            tr("of water to carry"),
                            packed_->carryWorking,
                            std::nullopt,
                            {},
                            {},
                            bench_.season().theSettings().units};
    carry_->setFacts(facts);
    working_->setFacts(facts);
    for (const auto& words : waterLines(bench_.season(), *packed_)) {
        auto* label = new TextLabel(TypeRole::text, breakable(words), Ink::second);
        label->setWordWrap(true);
        water_->addWidget(label);
    }
}

void PackingPart::resizeEvent(QResizeEvent* event) {
    BookingTab::resizeEvent(event);
    both_->setDirection(width() < grid(150) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

} // namespace withy::ui
