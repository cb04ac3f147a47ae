// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_setter.h"

#include "core/papers/text_render.h"
#include "ui/logic/format.h"
#include "ui/logic/paper/painter.h"
#include "ui/logic/wording.h"

#include <QPainter>

namespace withy::ui {

namespace {

QImage pictureOf(const paper::Page& page, QSizeF sheet, double dotsPerMm) {
    QImage image((sheet * dotsPerMm).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white); // paper is white in either theme
    QPainter painter(&image);
    paper::drawPage(painter, page, dotsPerMm);
    return image;
}

std::shared_ptr<const SetPaper> setPaper(const PaperTask& task, double dotsPerMm) {
    auto document = task.document();
    if (!document) return nullptr;
    auto set = std::make_shared<SetPaper>();
    set->document = std::move(*document);
    set->layout = paper::layoutDocument(set->document, task.size);
    set->words = text(papers::renderText(set->document)).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    set->dotsPerMm = dotsPerMm;
    for (const auto& page : set->layout.pages)
        set->pages.push_back(pictureOf(page, paper::sheetOf(set->layout), dotsPerMm));
    return set;
}

} // namespace

std::optional<papers::Document> PaperTask::document() const {
    if (needsBooking(kind) &&
        (!booking || !season.bookings.find(*booking) || plan.bookings.count(*booking) == 0))
        return std::nullopt;
    return paperOf(kind, {season, plan, booking, printedAt, parts, day, today});
}

PaperSetter::PaperSetter(QObject* parent)
    : QObject(parent), thread_([this](const std::stop_token& quit) { work(quit); }) {}

PaperSetter::~PaperSetter() {
    thread_.request_stop();
    asked_.notify_all();
    thread_.join(); // before anything it uses goes
}

void PaperSetter::ask(PaperTask task, double dotsPerMm) {
    busy_ = true;
    {
        const std::lock_guard lock(mutex_);
        waiting_ = std::move(task);
        waitingScale_ = dotsPerMm;
        waitingTurn_ = ++turn_;
    }
    asked_.notify_one();
}

void PaperSetter::forget() {
    ++turn_;
    busy_ = false;
    last_.reset();
    const std::lock_guard lock(mutex_);
    waiting_.reset();
}

void PaperSetter::work(const std::stop_token& quit) {
    while (true) {
        std::unique_lock lock(mutex_);
        if (!asked_.wait(lock, quit, [this] { return waiting_.has_value(); })) return;
        if (quit.stop_requested()) return;
        const PaperTask task = std::move(*waiting_);
        waiting_.reset();
        const double scale = waitingScale_;
        const auto turn = waitingTurn_;
        lock.unlock();
        std::shared_ptr<const SetPaper> set;
        QString trouble;
        try {
            set = setPaper(task, scale);
        } catch (...) {
            trouble = caughtWords();
        }
        QMetaObject::invokeMethod(
            this, [this, turn, set = std::move(set), trouble] { take(turn, set, trouble); },
            Qt::QueuedConnection);
    }
}

void PaperSetter::take(std::uint64_t turn, std::shared_ptr<const SetPaper> set, const QString& trouble) {
    if (turn != turn_) return; // something newer was asked for
    busy_ = false;
    last_ = std::move(set);
    trouble_ = trouble;
    Q_EMIT ready();
}

} // namespace withy::ui
