// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/paper_setter.h"

#include <QPrinter>

namespace withy::ui {

/// Writes many papers one after the other on a thread of its own, into a folder as PDF or to a printer, and
/// can be stopped between papers. Nothing in the folder is written over: a name that is taken gets a number.
class PaperBatch : public QObject {
    Q_OBJECT

public:
    explicit PaperBatch(QObject* parent = nullptr);
    /// Stops after the paper that is being written.
    ~PaperBatch() override;

    /// False while another batch goes on.
    bool toFolder(std::vector<PaperTask> tasks, const QString& folder);
    bool toPrinter(std::vector<PaperTask> tasks, std::shared_ptr<QPrinter> printer);
    void cancel();

    [[nodiscard]] bool isBusy() const { return busy_; }

Q_SIGNALS:
    /// `name` is being written; `done` of `all` are.
    void progressed(int done, int all, const QString& name);
    /// Ended: how many were written, and what stopped it (empty: nothing did).
    void finished(int written, const QString& trouble);

private:
    struct Target {
        QString folder;
        std::shared_ptr<QPrinter> printer;
    };

    bool start(std::vector<PaperTask> tasks, Target target);
    void work(const std::stop_token& quit, const std::vector<PaperTask>& tasks, const Target& target);
    /// What stopped it; empty: nothing did.
    QString writeAll(const std::stop_token& quit, const std::vector<PaperTask>& tasks, const Target& target,
                     int& written);

    bool busy_ = false;
    std::jthread thread_;
};

/// Writes one set paper; empty when it is on disk, otherwise the sentence that says why not.
QString writePaperPdf(const QString& path, const SetPaper& set, const QDateTime& made);
QString writePaperText(const QString& path, const SetPaper& set);
/// False when the printer would not take it.
bool printPaper(QPrinter& printer, const paper::Layout& layout);
/// A printer set to this size of paper, printing to its edges.
std::shared_ptr<QPrinter> printerFor(paper::PaperSize size);

} // namespace withy::ui
