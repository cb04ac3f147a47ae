// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_batch.h"

#include "core/papers/text_render.h"
#include "ui/logic/format.h"
#include "ui/logic/paper/painter.h"
#include "ui/logic/paper/pdf.h"
#include "ui/logic/papers/paper_names.h"
#include "ui/logic/wording.h"

#include <QDir>
#include <QPageSize>
#include <QPainter>
#include <QSaveFile>

namespace withy::ui {

namespace {

/// Counts from the next page on.
void turn(QPrinter& printer, const paper::Layout& layout) {
    printer.setPageOrientation(layout.landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
}

void paintPages(QPainter& painter, QPrinter& printer, const paper::Layout& layout, bool& first) {
    turn(printer, layout);
    for (const auto& page : layout.pages) {
        if (!first) printer.newPage();
        first = false;
        paper::drawPage(painter, page, printer.resolution() / 25.4);
    }
}

QString write(const QString& path, const std::function<bool(QIODevice&)>& put) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && put(file) && file.commit()) return {};
    return notWritten(path, file.errorString());
}

QString freePath(const QString& folder, const QString& name) {
    const QDir dir(folder);
    QString path = dir.filePath(name + QStringLiteral(".pdf"));
    for (int n = 2; QFile::exists(path); ++n)
        path = dir.filePath(QStringLiteral("%1 (%2).pdf").arg(name).arg(n));
    return path;
}

} // namespace

QString writePaperPdf(const QString& path, const SetPaper& set, const QDateTime& made) {
    const QString title = text(set.document.kind) + QStringLiteral(", ") + text(set.document.name).left(200);
    return write(path, [&](QIODevice& device) {
        return paper::writePdf(device, set.layout, {title, QStringLiteral("Withy"), made});
    });
}

QString writePaperText(const QString& path, const SetPaper& set) {
    const QByteArray words = QByteArray::fromStdString(papers::renderText(set.document));
    return write(path, [&](QIODevice& device) { return device.write(words) == words.size(); });
}

std::shared_ptr<QPrinter> printerFor(paper::PaperSize size) {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);
    printer->setPageSize(QPageSize(size == paper::PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    return printer;
}

bool printPaper(QPrinter& printer, const paper::Layout& layout) {
    QPainter painter;
    turn(printer, layout);
    if (!painter.begin(&printer)) return false;
    bool first = true;
    paintPages(painter, printer, layout, first);
    return painter.end();
}

PaperBatch::PaperBatch(QObject* parent) : QObject(parent) {}

PaperBatch::~PaperBatch() {
    thread_ = {}; // asks it to stop and waits
}

bool PaperBatch::toFolder(std::vector<PaperTask> tasks, const QString& folder) {
    return start(std::move(tasks), {folder, nullptr});
}

bool PaperBatch::toPrinter(std::vector<PaperTask> tasks, std::shared_ptr<QPrinter> printer) {
    return start(std::move(tasks), {{}, std::move(printer)});
}

bool PaperBatch::start(std::vector<PaperTask> tasks, Target target) {
    if (busy_) return false;
    busy_ = true;
    thread_ = std::jthread([this, tasks = std::move(tasks), target = std::move(target)](
                               const std::stop_token& quit) { work(quit, tasks, target); });
    return true;
}

void PaperBatch::cancel() {
    thread_.request_stop();
}

void PaperBatch::work(const std::stop_token& quit, const std::vector<PaperTask>& tasks,
                      const Target& target) {
    int written = 0;
    QString trouble;
    try {
        trouble = writeAll(quit, tasks, target, written);
    } catch (...) {
        trouble = caughtWords();
    }
    QMetaObject::invokeMethod(
        this,
        [this, written, trouble] {
            busy_ = false;
            Q_EMIT finished(written, trouble);
        },
        Qt::QueuedConnection);
}

QString PaperBatch::writeAll(const std::stop_token& quit, const std::vector<PaperTask>& tasks,
                             const Target& target, int& written) {
    QPainter painter;
    bool first = true;
    for (const auto& task : tasks) {
        if (quit.stop_requested()) break;
        const QString name = paperFileName(task.season, task.kind, task.booking, task.day);
        QMetaObject::invokeMethod(
            this,
            [this, written, all = static_cast<int>(tasks.size()), name] {
                Q_EMIT progressed(written, all, name);
            },
            Qt::QueuedConnection);
        auto document = task.document();
        if (!document) continue;
        SetPaper set;
        set.document = std::move(*document);
        set.layout = paper::layoutDocument(set.document, task.size);
        if (target.printer) {
            if (!painter.isActive()) turn(*target.printer, set.layout);
            if (!painter.isActive() && !painter.begin(target.printer.get())) return printerRefused();
            paintPages(painter, *target.printer, set.layout, first);
        } else {
            const auto trouble = writePaperPdf(freePath(target.folder, name), set, task.printedAt);
            if (!trouble.isEmpty()) return trouble;
        }
        ++written;
    }
    return painter.isActive() && !painter.end() ? printerRefused() : QString();
}

} // namespace withy::ui
