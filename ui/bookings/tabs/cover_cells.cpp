// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/cover_cells.h"

#include "ui/bookings/tabs/row_marks.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/jar_mark.h"
#include "ui/paint/patch_mark.h"
#include "ui/paint/reach_bar.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

namespace withy::ui {

namespace {

Cover coverOf(SheetState state) {
    switch (state) {
    case SheetState::covered:
        return Cover::covered;
    case SheetState::tight:
        return Cover::tight;
    case SheetState::missing:
        return Cover::missing;
    case SheetState::unknown:
        break;
    }
    return Cover::unknown;
}

TextLabel* noteOf(const QString& words) {
    auto* label = new TextLabel(TypeRole::text, breakable(words), Ink::second);
    label->setWordWrap(true);
    return label;
}

AnswerLabel* wordsOf(const SheetWay& way) {
    auto* label = new AnswerLabel;
    label->setType(TypeRole::text);
    label->setWordWrap(true);
    label->setPhrases(phrasesOf(way.words));
    return label;
}

} // namespace

ReachCell::ReachCell(QWidget* parent) : QWidget(parent) {
    fixedOnGrid(this, 40, 6);
    setAttribute(Qt::WA_TransparentForMouseEvents, false);
}

void ReachCell::setReach(const SheetReach& reach) {
    reach_ = reach;
    setAccessibleName(reach.inWords);
    setToolTip(reach.inWords);
    update();
}

void ReachCell::paintEvent(QPaintEvent*) {
    QPainter p(this);
    const auto& palette = currentPalette();
    ReachBar bar;
    bar.need = reach_.need;
    bar.cautious = reach_.cautious;
    bar.likely = reach_.likely;
    bar.thereCautious = reach_.thereCautious;
    bar.thereLikely = reach_.thereLikely;
    bar.thereHopeful = reach_.thereHopeful;
    bar.known = reach_.known;
    const QColor fill = reach_.colour ? Palette::bloom(*reach_.colour) : palette.of(Role::ink2);
    bar.swapped = reach_.swapped;
    const QColor swap = reach_.swapColour ? Palette::bloom(*reach_.swapColour) : palette.of(Role::ink3);
    paintReachBar(p, rect(), bar, fill, palette, swap);
}

JarCell::JarCell(QWidget* parent) : QWidget(parent) {
    fixedOnGrid(this, 4.5, 5.5);
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void JarCell::setJar(const SheetJar& jar) {
    jar_ = jar;
    update();
}

void JarCell::paintEvent(QPaintEvent*) {
    QPainter p(this);
    JarMark mark;
    mark.cover = coverOf(jar_.state);
    if (jar_.state == SheetState::missing) mark.share = jar_.share;
    paintJar(p, rect(), mark, currentPalette());
}

class SourceRow::Mark : public QWidget {
public:
    Mark() {
        fixedOnGrid(this, 5.5, 5.5);
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }

    SheetSource source;

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter p(this);
        if (source.origin == StemOrigin::patch)
            paintPatchMark(p, rect(), source.mark, currentPalette());
        else
            paintStoreMark(p, rect(), source.origin == StemOrigin::boughtIn, currentPalette());
    }
};

SourceRow::SourceRow(QWidget* parent)
    : QWidget(parent), mark_(new Mark), words_(new TextLabel(TypeRole::text)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    row->addWidget(mark_, 0, Qt::AlignTop);
    words_->setWordWrap(true);
    onGrid(words_, &QWidget::setMinimumWidth, 56);
    row->addWidget(words_, 1);
}

void SourceRow::setSource(const SheetSource& source) {
    mark_->source = source;
    mark_->update();
    words_->setText(breakable(source.words));
    setToolTip(source.detail);
    words_->setAccessibleDescription(source.detail);
}

BelowPanel::BelowPanel(const SheetBelow& below, const QString& name, QWidget* parent) : QWidget(parent) {
    setProperty("look", QStringLiteral("working"));
    auto* rows = new QGridLayout(this);
    rows->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    rows->setHorizontalSpacing(grid(2));
    rows->setVerticalSpacing(grid(1));
    rows->setColumnStretch(1, 1);
    int line = 0;
    for (const auto& note : below.notes)
        rows->addWidget(noteOf(note), line++, 0, 1, 3);
    for (const auto& way : below.ways) {
        if (way.dotted) {
            auto* dot = new RowMark;
            SheetRow plant;
            plant.dotted = true;
            plant.dot = way.dot;
            dot->showRow(plant);
            rows->addWidget(dot, line, 0);
        }
        rows->addWidget(wordsOf(way), line, 1);
        auto* button = new QPushButton(way.button);
        button->setObjectName(QStringLiteral("%1.way.%2").arg(name).arg(buttons_.size()));
        button->setAccessibleName(way.means);
        button->setAccessibleDescription(plainWords(way.words));
        if (way.main) button->setProperty("look", QStringLiteral("main"));
        rows->addWidget(button, line++, 2, Qt::AlignRight | Qt::AlignVCenter);
        connect(button, &QPushButton::clicked, this, [this, index = ways()] { Q_EMIT taken(index); });
        buttons_.push_back(button);
    }
}

QPushButton* BelowPanel::way(int index) const {
    return index >= 0 && index < ways() ? buttons_[static_cast<std::size_t>(index)] : nullptr;
}

bool operator==(const SheetBelow& a, const SheetBelow& b) {
    return a.notes == b.notes && std::equal(a.ways.begin(), a.ways.end(), b.ways.begin(), b.ways.end(),
                                            [](const SheetWay& x, const SheetWay& y) {
                                                return plainWords(x.words) == plainWords(y.words) &&
                                                       x.main == y.main && x.dot == y.dot;
                                            });
}

} // namespace withy::ui
