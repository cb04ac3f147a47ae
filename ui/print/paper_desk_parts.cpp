// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/flow_row.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/logic/papers/paper_names.h"
#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"
#include "ui/print/paper_view.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSettings>
#include <QStandardPaths>
#include <QVBoxLayout>

/// What the desk is made of, and where its files go.
namespace withy::ui {

namespace {

const QString folderKey = QStringLiteral("papers/folder");

QString lastFolder() {
    const QString kept = QSettings().value(folderKey).toString();
    if (!kept.isEmpty() && QDir(kept).exists()) return kept;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

TextLabel* addHead(QVBoxLayout* column, const QString& words) {
    column->addSpacing(grid(2));
    auto* head = new TextLabel(TypeRole::head, words);
    column->addWidget(head);
    return head;
}

} // namespace

QWidget* PaperDesk::makeChoices() {
    auto* sheet = new QWidget;
    auto* column = new QVBoxLayout(sheet);
    column->setContentsMargins(0, 0, grid(2), 0);
    column->setSpacing(grid(1));
    addPapers(column);
    addParts(column);
    addAll(column);
    column->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(sheet);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setFixedWidth(grid(63));
    return scroll;
}

void PaperDesk::addPapers(QVBoxLayout* column) {
    papers_ = new QButtonGroup(this);
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
        auto* choice = new QRadioButton(paperTitle(kinds_[i]));
        choice->setObjectName(QStringLiteral("paper.kind%1").arg(i));
        choice->setAccessibleName(tr("Paper: %1").arg(choice->text()));
        choice->setChecked(i == 0);
        papers_->addButton(choice, static_cast<int>(i));
        column->addWidget(choice);
    }
    connect(papers_, &QButtonGroup::idToggled, this, [this](int, bool on) {
        if (!on) return;
        showParts();
        ask();
    });
    days_ = new QComboBox;
    days_->setObjectName(QStringLiteral("paper.day"));
    days_->setAccessibleName(tr("Day of cutting"));
    days_->hide();
    connect(days_, &QComboBox::activated, this, &PaperDesk::ask);
    column->addWidget(days_);
    column->addSpacing(grid(2));
    size_ = new Segments(tr("Size of paper"), {tr("A4"), tr("Letter")});
    size_->setObjectName(QStringLiteral("paper.size"));
    followSize();
    connect(size_, &Segments::chosen, this, [this] {
        sizeChosen_ = true;
        ask();
    });
    connect(&bench_, &Workbench::changed, this, &PaperDesk::followSize); // planned() brings the paper
    column->addWidget(size_);
}

/// The season's paper, until another is chosen here.
void PaperDesk::followSize() {
    if (!sizeChosen_) size_->setCurrent(paperSizeOf(bench_.season()) == paper::PaperSize::A4 ? 0 : 1);
}

void PaperDesk::addParts(QVBoxLayout* column) {
    partsHead_ = addHead(column, tr("On the paper"));
    for (const auto part : allPaperParts()) {
        auto* box = new QCheckBox(partWords(part));
        box->setObjectName(QStringLiteral("paper.part%1").arg(static_cast<int>(part)));
        connect(box, &QCheckBox::toggled, this, [this, part](bool on) {
            auto parts = ticked(kind());
            on ? void(parts.insert(part)) : void(parts.erase(part));
            ticked_[kind()] = std::move(parts);
            ask();
        });
        parts_.emplace_back(part, box);
        column->addWidget(box);
    }
}

void PaperDesk::showParts() {
    const auto shown = partsOf(kind());
    const auto on = ticked(kind());
    partsHead_->setVisible(!shown.empty());
    for (const auto& [part, box] : parts_) {
        const QSignalBlocker quiet(box);
        const bool there = std::find(shown.begin(), shown.end(), part) != shown.end();
        box->setVisible(there);
        box->setChecked(there && on.contains(part));
    }
}

void PaperDesk::showDays() {
    const auto choices = daysOf(kind(), {bench_.season(), bench_.plan(), booking_});
    const auto chosen = days_->currentData();
    days_->clear();
    days_->addItem(tr("Every day of cutting"));
    for (const auto& day : choices)
        days_->addItem(day.words, day.day.number);
    days_->setCurrentIndex(std::max(0, chosen.isValid() ? days_->findData(chosen) : 0));
    days_->setVisible(choices.size() > 1);
}

/// What a paper is looked at for stands over it, in sight however many papers there are to choose from.
void PaperDesk::addOutputs(QLayout& row) {
    const auto button = [&](const char* name, const QString& words, const QString& told,
                            void (PaperDesk::*act)()) {
        auto* b = new QPushButton(words);
        b->setObjectName(QString::fromLatin1(name));
        b->setAccessibleName(told);
        connect(b, &QPushButton::clicked, this, act);
        outputs_.push_back(b);
        row.addWidget(b);
        return b;
    };
    auto* printing =
        button("paper.printButton", tr("Pri&nt…"), tr("Print the paper in view"), &PaperDesk::print);
    printing->setProperty("look", QStringLiteral("main"));
    button("paper.pdfButton", tr("PD&F…"), tr("Keep the paper as PDF"), &PaperDesk::keepPdf);
    button("paper.textButton", tr("Plain te&xt…"), tr("Keep the paper as plain text"), &PaperDesk::keepText);
}

void PaperDesk::addAll(QVBoxLayout* column) {
    if (std::none_of(kinds_.begin(), kinds_.end(), needsBooking)) return;
    addHead(column, tr("All at once"));
    which_ = new Segments(tr("Papers of"), {tr("This booking"), tr("Its week")});
    which_->setObjectName(QStringLiteral("paper.which"));
    column->addWidget(which_);
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    const auto chosen = [this] { return which_->current() == 0 ? All::booking : All::week; };
    auto* folder = new QPushButton(tr("Into a folde&r…"));
    folder->setObjectName(QStringLiteral("paper.allFolder"));
    connect(folder, &QPushButton::clicked, this, [this, chosen] { keepAll(chosen()); });
    auto* printing = new QPushButton(tr("Print a&ll…"));
    printing->setObjectName(QStringLiteral("paper.allPrint"));
    connect(printing, &QPushButton::clicked, this, [this, chosen] { printAll(chosen()); });
    outputs_.push_back(folder);
    outputs_.push_back(printing);
    row->addWidget(folder);
    row->addWidget(printing);
    column->addLayout(row);
}

QWidget* PaperDesk::makePreview() {
    auto* side = new QWidget;
    auto* zoom = new Segments(tr("Size on the screen"), {tr("Whole page"), tr("Width"), tr("As printed")});
    zoom->setObjectName(QStringLiteral("paper.zoom"));
    zoom->setCurrent(1);
    view_ = new PaperView;
    pages_ = new TextLabel(TypeRole::text, {}, Ink::second);
    pages_->setObjectName(QStringLiteral("paper.pages"));
    empty_ = new TextLabel(TypeRole::name, tr("Choose a booking, and its papers are laid out here."));
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setWordWrap(true);
    empty_->hide();
    auto* over = new QWidget;
    auto* top = new FlowRow(over);
    addOutputs(*top);
    top->addWidget(zoom);
    top->addWidget(pages_);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(2));
    column->addWidget(over);
    column->addWidget(view_, 1);
    column->addWidget(empty_, 1);
    connect(zoom, &Segments::chosen, this,
            [this](int index) { view_->setZoom(static_cast<PaperView::Zoom>(index)); });
    connect(view_, &PaperView::pageChanged, this, [this](int page, int pages) {
        pages_->setText(pages == 0 ? QString() : tr("page %1 of %2").arg(page).arg(pages));
    });
    return side;
}

QWidget* PaperDesk::makeProgress() {
    progressRow_ = new QWidget;
    progressRow_->setObjectName(QStringLiteral("paper.progress"));
    bar_ = new QProgressBar;
    bar_->setTextVisible(false);
    bar_->setAccessibleName(tr("Papers written"));
    progressWords_ = new TextLabel(TypeRole::text);
    progressWords_->setWordWrap(true);
    auto* stop = new QPushButton(tr("St&op"));
    stop->setObjectName(QStringLiteral("paper.stop"));
    stop->setAccessibleName(tr("Stop writing papers"));
    connect(stop, &QPushButton::clicked, &batch_, &PaperBatch::cancel);
    auto* row = new QHBoxLayout(progressRow_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(3));
    row->addWidget(bar_, 1);
    row->addWidget(progressWords_, 2);
    row->addWidget(stop);
    progressRow_->hide();
    return progressRow_;
}

void PaperDesk::keepFolder(const QString& folder) {
    QSettings().setValue(folderKey, folder);
}

void PaperDesk::chooseFile(const QString& title, const QString& ending, const QString& filter,
                           std::function<void(const QString&)> then) {
    auto* choose = new QFileDialog(this, title, lastFolder(), filter);
    choose->setObjectName(QStringLiteral("paper.file"));
    choose->setAttribute(Qt::WA_DeleteOnClose);
    choose->setAcceptMode(QFileDialog::AcceptSave);
    choose->setDefaultSuffix(ending);
    choose->selectFile(paperFileName(bench_.season(), kind(), booking_, dayOf(kind())) + QLatin1Char('.') +
                       ending);
    connect(choose, &QFileDialog::fileSelected, this, [this, then = std::move(then)](const QString& path) {
        keepFolder(QFileInfo(path).absolutePath());
        then(path);
    });
    choose->open();
}

void PaperDesk::chooseFolder(std::function<void(const QString&)> then) {
    auto* choose = new QFileDialog(this, tr("Keep the papers in"), lastFolder());
    choose->setObjectName(QStringLiteral("paper.folder"));
    choose->setAttribute(Qt::WA_DeleteOnClose);
    choose->setFileMode(QFileDialog::Directory);
    choose->setOption(QFileDialog::ShowDirsOnly);
    connect(choose, &QFileDialog::fileSelected, this, [this, then = std::move(then)](const QString& folder) {
        keepFolder(folder);
        then(folder);
    });
    choose->open();
}

} // namespace withy::ui
