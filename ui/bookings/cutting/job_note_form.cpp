// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/job_note_form.h"

#include "ui/common/long_text.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/shed/return_words.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <map>
#include <utility>

namespace withy::ui {

namespace {

constexpr int plantsAcross = 3;

/// Nothing when it is blank; false in `ok` when it is no count.
std::optional<std::int64_t> countIn(const QLineEdit& field, bool& ok) {
    const QString typed = field.text().trimmed();
    if (typed.isEmpty()) return std::nullopt;
    bool sound = false;
    const int n = typed.toInt(&sound);
    ok = ok && sound && n >= 0;
    return n;
}

} // namespace

JobNoteForm::JobNoteForm(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , plants_(new QWidget)
    , plantRows_(new QGridLayout(plants_))
    , drooped_(new LongTextEdit(this))
    , nextTime_(new LongTextEdit(this))
    , minutes_(new QLineEdit)
    , ribbonHead_(new TextLabel(TypeRole::strong, tr("What is left of the ribbon?")))
    , ribbonSays_(new TextLabel(TypeRole::text, {}, Ink::second))
    , ribbonBack_(namedButton(tr("Write the &ribbon back"), "share.note.ribbon_back"))
    , says_(new TextLabel(TypeRole::caption, {}, Ink::osier)) {
    plantRows_->setContentsMargins(0, 0, 0, 0);
    plantRows_->setHorizontalSpacing(grid(2));
    drooped_->setObjectName(QStringLiteral("share.note.drooped"));
    drooped_->setAccessibleName(tr("What drooped?"));
    nextTime_->setObjectName(QStringLiteral("share.note.next"));
    nextTime_->setAccessibleName(tr("What would you do next time?"));
    minutes_->setObjectName(QStringLiteral("share.note.minutes"));
    minutes_->setAccessibleName(tr("Minutes of making, if you looked"));
    minutes_->setPlaceholderText(tr("not noted"));
    onGrid(minutes_, &QWidget::setFixedWidth, 28);
    auto* keep = namedButton(tr("Keep the note"), "share.note.keep");
    says_->hide();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(2));
    all->addWidget(new TextLabel(TypeRole::strong, tr("What was left? Blank where nobody counted.")));
    all->addWidget(plants_);
    all->addWidget(new TextLabel(TypeRole::strong, tr("What drooped?")));
    all->addWidget(drooped_);
    all->addWidget(new TextLabel(TypeRole::strong, tr("What would you do next time?")));
    all->addWidget(nextTime_);
    ribbonSays_->setObjectName(QStringLiteral("share.note.ribbon"));
    ribbonSays_->setWordWrap(true);
    all->addWidget(ribbonHead_);
    all->addWidget(ribbonSays_);
    all->addWidget(ribbonBack_, 0, Qt::AlignLeft);
    connect(ribbonBack_, &QPushButton::clicked, this, &JobNoteForm::writeBack);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(grid(2));
    foot->addWidget(new QLabel(tr("Minutes of making, if you looked")));
    foot->addWidget(minutes_);
    foot->addStretch(1);
    foot->addWidget(keep);
    all->addLayout(foot);
    all->addWidget(says_);
    connect(keep, &QPushButton::clicked, this, &JobNoteForm::keep);
}

void JobNoteForm::show(Id<model::Booking> booking, const std::vector<Id<model::Plant>>& plants) {
    std::vector<Id<model::Plant>> shown;
    for (const auto& [plant, field] : left_)
        shown.push_back(plant);
    const bool another = std::exchange(booking_, booking) != booking;
    showRibbon();
    if (!another && plants == shown) return; // what is being typed stays
    const auto note = edits::jobNoteOf(bench_.season(), booking);
    fillPlants(plants, note, another);
    if (!another) return;
    drooped_->setPlainText(note.drooped);
    nextTime_->setPlainText(note.nextTime);
    minutes_->setText(note.making ? QString::number(note.making->value) : QString());
    says_->hide();
}

/// A plant that stays in the share-out keeps the count that is being typed.
void JobNoteForm::fillPlants(const std::vector<Id<model::Plant>>& plants, const edits::JobNoteAnswers& note,
                             bool another) {
    std::map<Id<model::Plant>, QString> typed;
    for (const auto& [plant, stems] : note.left)
        if (stems) typed[plant] = QString::number(stems->value);
    for (const auto& [plant, field] : left_)
        if (!another) typed[plant] = field->text();
    layPlants(plants);
    for (const auto& [plant, field] : left_)
        field->setText(typed[plant]);
}

void JobNoteForm::layPlants(const std::vector<Id<model::Plant>>& plants) {
    clearLayout(*plantRows_);
    left_.clear();
    int place = 0;
    for (const auto plant : plants) {
        const QString name = inPassing(bench_.season(), plant);
        auto* field = new QLineEdit;
        field->setObjectName(QStringLiteral("share.note.left.%1").arg(plant.value));
        field->setAccessibleName(tr("Stems left of %1").arg(name));
        onGrid(field, &QWidget::setFixedWidth, 16);
        plantRows_->addWidget(new QLabel(name), place / plantsAcross, 2 * (place % plantsAcross),
                              Qt::AlignRight);
        plantRows_->addWidget(field, place / plantsAcross, 2 * (place % plantsAcross) + 1);
        left_.emplace_back(plant, field);
        ++place;
    }
    plantRows_->setColumnStretch(2 * plantsAcross, 1);
}

void JobNoteForm::showRibbon() {
    const auto back = ribbonBack(bench_.season(), bench_.plan().shed.get(), booking_);
    const bool any = back.state != RibbonBack::State::none;
    ribbonHead_->setVisible(any);
    ribbonSays_->setVisible(any);
    ribbonSays_->setText(breakable((QStringList{back.words} + back.lines).join(QLatin1Char('\n'))));
    ribbonBack_->setVisible(back.state == RibbonBack::State::offered && bench_.canWrite());
}

void JobNoteForm::writeBack() {
    const auto back = ribbonBack(bench_.season(), bench_.plan().shed.get(), booking_);
    if (back.state != RibbonBack::State::offered) return;
    bool written = false;
    Q_EMIT refused(writeRibbonBack(bench_, back.day, written));
    if (!written) return;
    showRibbon();
    minutes_->setFocus(); // the button is gone
    Q_EMIT said(ribbonIsBackWords());
}

void JobNoteForm::enter() {
    if (left_.empty())
        drooped_->setFocus();
    else
        left_.front().second->setFocus();
}

void JobNoteForm::keep() {
    edits::JobNoteAnswers answers;
    bool ok = true;
    for (const auto& [plant, field] : left_) {
        const auto n = countIn(*field, ok);
        answers.left.emplace_back(plant, n ? std::optional(Stems(*n)) : std::nullopt);
    }
    if (const auto n = countIn(*minutes_, ok)) answers.making = Minutes(*n);
    answers.drooped = drooped_->toPlainText();
    answers.nextTime = nextTime_->toPlainText();
    says_->setText(ok ? QString() : tr("Stems and minutes are whole numbers, or blank."));
    says_->setVisible(!ok);
    if (!ok) return;
    const QString trouble = bench_.apply(edits::noteJob(bench_.season(), booking_, answers));
    Q_EMIT refused(trouble);
    if (trouble.isEmpty()) Q_EMIT said(tr("The note is kept with the booking."));
}

} // namespace withy::ui
