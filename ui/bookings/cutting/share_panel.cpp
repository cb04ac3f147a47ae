// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/share_panel.h"

#include "ui/bookings/cutting/client_note.h"
#include "ui/bookings/cutting/job_note_form.h"
#include "ui/bookings/cutting/made_form.h"
#include "ui/bookings/cutting/share_card.h"
#include "ui/bookings/cutting/share_group_view.h"
#include "ui/bookings/tabs/flow_row.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/wording.h"
#include "ui/logic/work_hours.h"
#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"

#include <QButtonGroup>
#include <QCoreApplication>
#include <QDialog>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>

namespace withy::ui {

namespace {

constexpr int cardsShown = 3;

TextLabel* wordsBelow(TypeRole type, Ink ink, const char* name) {
    auto* label = new TextLabel(type, {}, ink);
    label->setWordWrap(true);
    label->setObjectName(QString::fromLatin1(name));
    return label;
}

void sayBelow(TextLabel* label, const QString& words) {
    label->setText(breakable(words));
    label->setVisible(!words.isEmpty());
}

} // namespace

SharePanel::SharePanel(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , small_(wordsBelow(TypeRole::text, Ink::second, "share.small"))
    , head_(new AnswerLabel)
    , mixWords_(wordsBelow(TypeRole::text, Ink::second, "share.mixed"))
    , group_(new QButtonGroup(this))
    , cards_(new QVBoxLayout)
    , body_(new QWidget)
    , rows_(new QVBoxLayout)
    , kept_(wordsBelow(TypeRole::caption, Ink::second, "share.kept"))
    , left_(wordsBelow(TypeRole::text, Ink::text, "share.left"))
    , workings_(wordsBelow(TypeRole::caption, Ink::second, "share.working"))
    , notes_(wordsBelow(TypeRole::caption, Ink::second, "share.notes"))
    , made_(new MadeForm)
    , client_(new ClientNote(bench))
    , jobNote_(new JobNoteForm(bench)) {
    setObjectName(QStringLiteral("share"));
    pool_.setMaxThreadCount(1);
    layPage();
    connect(group_, &QButtonGroup::buttonToggled, this, [this](QAbstractButton*, bool on) {
        if (on && !filling_) showBench();
    });
    connect(made_, &MadeForm::kept, this, &SharePanel::keepMade);
    connect(client_, &ClientNote::refused, this, &SharePanel::refused);
    connect(client_, &ClientNote::said, this, &SharePanel::said);
    connect(jobNote_, &JobNoteForm::refused, this, &SharePanel::refused);
    connect(jobNote_, &JobNoteForm::said, this, &SharePanel::said);
    auto* seen = new WhenSeen(this, [this] { ask(); });
    connect(&bench, &Workbench::changed, this, [this] { mixed_.clear(); });
    connect(&bench, &Workbench::changed, seen, &WhenSeen::ask);
    connect(&bench, &Workbench::planned, seen, &WhenSeen::ask);
}

SharePanel::~SharePanel() {
    pool_.clear();
    pool_.waitForDone();
}

void SharePanel::layPage() {
    head_->setObjectName(QStringLiteral("share.answer"));
    head_->setWordWrap(true);
    cards_->setSpacing(grid(1));
    rows_->setSpacing(0);
    auto* in = new QVBoxLayout(body_);
    in->setContentsMargins(0, 0, 0, 0);
    in->setSpacing(grid(2));
    in->addWidget(mixWords_);
    in->addLayout(cards_);
    in->addWidget(kept_);
    in->addSpacing(grid(1));
    in->addWidget(new TextLabel(TypeRole::head, tr("At the bench")));
    in->addWidget(new Rule);
    in->addLayout(rows_);
    in->addWidget(left_);
    in->addWidget(makeButtons());
    in->addWidget(makeForms());
    in->addWidget(workings_);
    in->addWidget(notes_);
    others_ = linkButton({}, "share.others");
    in->insertWidget(in->indexOf(kept_), others_, 0, Qt::AlignLeft);
    connect(others_, &QPushButton::clicked, this, [this] {
        allShown_ = true;
        showCards();
    });
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(pageMargin(), grid(3), pageMargin(), grid(4));
    column->setSpacing(grid(2));
    column->addWidget(small_);
    column->addWidget(head_);
    column->addWidget(body_);
    column->addStretch(1);
    auto* area = scrolledPage(page);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(area);
    body_->hide();
}

QWidget* SharePanel::makeButtons() {
    auto* holder = new QWidget;
    make_ = namedButton({}, "share.make");
    make_->setProperty("look", QStringLiteral("main"));
    card_ = namedButton(tr("Pri&nt make-up card"), "share.card");
    mix_ = namedButton(tr("Mi&x in another way"), "share.mix");
    over_ = namedButton(tr("Begin &over"), "share.over");
    tell_ = namedButton(tr("Te&ll the client"), "share.tell");
    note_ = namedButton(tr("&Job note"), "share.note");
    auto* row = new FlowRow(holder);
    for (auto* button : {make_, card_, mix_, over_, tell_, note_}) {
        onGrid(button, &QWidget::setMinimumHeight, 12);
        row->addWidget(button);
    }
    connect(make_, &QPushButton::clicked, this, &SharePanel::make);
    connect(card_, &QPushButton::clicked, this, &SharePanel::printCard);
    connect(mix_, &QPushButton::clicked, this, &SharePanel::mix);
    connect(over_, &QPushButton::clicked, this, [this] {
        mixed_.clear();
        ask();
    });
    connect(tell_, &QPushButton::clicked, this, [this] {
        openForm(client_);
        client_->enter();
    });
    connect(note_, &QPushButton::clicked, this, [this] {
        openForm(jobNote_);
        jobNote_->enter();
    });
    return holder;
}

QWidget* SharePanel::makeForms() {
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    for (QWidget* form :
         {static_cast<QWidget*>(made_), static_cast<QWidget*>(client_), static_cast<QWidget*>(jobNote_)}) {
        column->addWidget(form);
        form->hide();
    }
    return holder;
}

void SharePanel::show(Id<model::Booking> booking) {
    if (booking_ != booking) {
        booking_ = booking;
        mixed_.clear();
        found_.reset();
        allShown_ = false;
        made_->clear();
        openForm(nullptr);
    }
    ask();
}

std::optional<Day> SharePanel::benchDay() const {
    const auto& plans = bench_.plan().bookings;
    if (plans.contains(booking_)) return workHours(bench_.season(), bench_.plan(), booking_).makeUpStart.day;
    const auto* booking = bench_.season().bookings.find(booking_);
    return booking ? std::optional(booking->eventStart.day) : std::nullopt;
}

void SharePanel::ask() {
    const auto bench = benchDay();
    if (!bench) {
        found_.reset();
        body_->hide();
        return head_->setPhrases({});
    }
    auto question = std::make_shared<const ShareQuestion>(
        ShareQuestion{bench_.season(), bench_.plan().cover, booking_, *bench, bench_.today(), mixed_});
    const auto turn = ++asked_;
    pool_.clear(); // only the newest is worth an answer
    pool_.start([this, question, turn] {
        std::shared_ptr<const ShareFound> found;
        QString trouble;
        try {
            found = std::make_shared<const ShareFound>(findShare(*question));
        } catch (...) {
            trouble = caughtWords();
        }
        QMetaObject::invokeMethod(
            this, [this, turn, found, trouble] { take(turn, found, trouble); }, Qt::QueuedConnection);
    });
}

void SharePanel::take(std::uint64_t turn, const std::shared_ptr<const ShareFound>& found,
                      const QString& trouble) {
    if (turn != asked_) return;
    if (!found) return Q_EMIT refused(trouble); // what is shown is older
    found_ = found;
    showAnswer();
}

void SharePanel::waitForAnswer() {
    bench_.waitForPlan();
    pool_.waitForDone();
    QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

ShareCard* SharePanel::chosen() const {
    return qobject_cast<ShareCard*>(group_->checkedButton());
}

const shareout::ShareOut* SharePanel::shared() const {
    if (!found_) return nullptr;
    const auto* card = chosen();
    return &shareOf(*found_, card ? card->way() : -1);
}

void SharePanel::showAnswer() {
    const auto goals = cuttingGoals(bench_.season(), bench_.plan(), booking_);
    const auto view = shareView(bench_.season(), *found_, needByPlant(goals));
    sayBelow(small_, view.small);
    head_->setPhrases({{view.head, Phrase::Weight::plain}});
    body_->setVisible(!view.empty);
    if (view.empty) return;
    QStringList mixed;
    for (std::size_t i = 0; i < mixed_.size(); ++i)
        mixed << mixedWords(bench_.season(), mixed_[i]);
    sayBelow(mixWords_, mixed.isEmpty() ? QString() : chosenAlready(mixed));
    showChoices(view);
    sayBelow(notes_, view.notes.join(QLatin1Char('\n')));
    showBench();
}

void SharePanel::showChoices(const ShareView& view) {
    const auto* before = chosen();
    const QString was = before ? before->choice().head : QString();
    const bool focused = before && before->hasFocus();
    filling_ = true;
    for (auto* old : group_->buttons())
        group_->removeButton(old);
    clearLayout(*cards_);
    ShareCard* first = nullptr;
    ShareCard* same = nullptr;
    for (const auto& choice : view.choices) {
        auto* card = new ShareCard(choice);
        group_->addButton(card);
        cards_->addWidget(card);
        connect(card, &ShareCard::taken, this, &SharePanel::make);
        if (!first) first = card;
        if (choice.head == was) same = card;
    }
    if (auto* card = same ? same : first) {
        card->setChecked(true);
        if (focused) card->setFocus();
    }
    filling_ = false;
    showCards();
}

/// The best, and the one that is chosen; the others when they are asked for.
void SharePanel::showCards() {
    int away = 0;
    for (int i = 0; i < cards_->count(); ++i) {
        auto* card = cards_->itemAt(i)->widget();
        const bool shown = allShown_ || i < cardsShown || card == chosen();
        card->setVisible(shown);
        away += shown ? 0 : 1;
    }
    others_->setVisible(away > 0);
    others_->setText(tr("%n other way(s)", nullptr, away));
}

void SharePanel::showBench() {
    const auto* share = shared();
    if (!share) return;
    const auto& season = bench_.season();
    clearLayout(*rows_);
    for (auto& group : shareGroups(season, *share))
        rows_->addWidget(new ShareGroupView(std::move(group)));
    sayBelow(left_, leftOverWords(season, talliedOf(found_->plan, found_->fromStore), *share));
    sayBelow(workings_, shareWorkings(season, *share).join(QLatin1Char('\n')));
    const auto* card = chosen();
    sayBelow(kept_, card ? card->choice().kept : QString());
    make_->setText(makeThese(*share));
    make_->setAccessibleName(QString(make_->text()).remove(QLatin1Char('&')));
    mix_->setVisible(card && card->way() >= 0 && !card->choice().whole);
    over_->setVisible(!mixed_.empty());
    const bool changed = card || !mixed_.empty();
    tell_->setVisible(changed);
    if (const auto day = benchDay())
        client_->setDraft(booking_, *day, clientDraft(season, booking_, found_->plan.share, *share));
    std::vector<Id<model::Plant>> plants;
    for (const auto& use : share->plants)
        plants.push_back(use.plant);
    jobNote_->show(booking_, plants);
}

bool SharePanel::keepWays() {
    auto ways = mixed_;
    const auto* card = chosen();
    if (card && card->way() >= 0) ways.push_back(found_->ladder.ways[static_cast<std::size_t>(card->way())]);
    const auto day = benchDay();
    if (ways.empty() || !day) return true;
    const QString trouble = bench_.apply(
        edits::takeWays(bench_.season(), {booking_, *day, found_->plan.problem, std::move(ways)}));
    Q_EMIT refused(trouble);
    return trouble.isEmpty();
}

void SharePanel::make() {
    const auto* share = shared();
    if (!found_ || !share) return;
    auto lines = share->lines; // what is asked anew below may choose another way by itself
    if (!keepWays()) return;
    madeLines_ = std::move(lines);
    openForm(made_);
    made_->enter();
}

void SharePanel::mix() {
    const auto* card = chosen();
    if (!found_ || !card || card->way() < 0) return;
    mixed_.push_back(found_->ladder.ways[static_cast<std::size_t>(card->way())]);
    ask();
}

void SharePanel::keepMade(std::optional<Minutes> minutes) {
    const QString trouble =
        bench_.apply(edits::noteMade(bench_.season(), booking_, madeLines_, minutes, made_->byWhom()));
    Q_EMIT refused(trouble);
    if (!trouble.isEmpty()) return;
    made_->clear();
    openForm(jobNote_);
    Q_EMIT said(tr("Written down as made. A job note can wait, or never come."));
}

void SharePanel::openForm(QWidget* form) {
    for (QWidget* each :
         {static_cast<QWidget*>(made_), static_cast<QWidget*>(client_), static_cast<QWidget*>(jobNote_)})
        each->setVisible(each == form);
}

void SharePanel::printCard() {
    auto* window = new QDialog(this);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->setWindowTitle(paperTitle(PaperKind::makeUpCard));
    window->resize(grid(240), grid(180));
    auto* desk = new PaperDesk(bench_, {PaperKind::makeUpCard});
    desk->setBooking(booking_);
    connect(desk, &PaperDesk::refused, this, &SharePanel::refused);
    connect(desk, &PaperDesk::said, this, &SharePanel::said);
    auto* all = new QVBoxLayout(window);
    all->addWidget(desk);
    window->open();
}

} // namespace withy::ui
