// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/paper/layout.h"
#include "ui/logic/paper_shop.h"
#endif

#include <QImage>
#include <QObject>

#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace withy::ui {

/// A paper as it is asked for: everything it needs, so that no other thread is looked at.
struct PaperTask {
    PaperKind kind = PaperKind::prepSheet;
    std::optional<Id<model::Booking>> booking;
    paper::PaperSize size = paper::PaperSize::A4;
    std::optional<std::set<PaperPart>> parts; ///< blank: the usual ones
    model::Season season;
    plan::Plan plan;
    QDateTime printedAt;
    std::optional<Day> day = std::nullopt; ///< as in PaperOrder
    std::optional<Day> today = std::nullopt;

    /// Nothing when the booking is not there or not planned yet.
    [[nodiscard]] std::optional<papers::Document> document() const;
};

/// A paper set on its sheets, and the sheets as pictures.
struct SetPaper {
    papers::Document document;
    paper::Layout layout;
    QStringList words; ///< the paper as plain text, for who cannot see it
    std::vector<QImage> pages;
    double dotsPerMm = 0;
};

/// Sets papers on a thread of its own, the newest asked for first; what was asked for before is dropped.
class PaperSetter : public QObject {
    Q_OBJECT

public:
    explicit PaperSetter(QObject* parent = nullptr);
    ~PaperSetter() override;

    /// `dotsPerMm` is the scale of the pictures.
    void ask(PaperTask task, double dotsPerMm);
    /// Nothing is shown: an answer still on its way is thrown away.
    void forget();

    [[nodiscard]] std::shared_ptr<const SetPaper> last() const { return last_; }

    /// Why the last one failed; empty when it did not, or when there is nothing to set.
    [[nodiscard]] const QString& trouble() const { return trouble_; }

    /// An answer is still to come.
    [[nodiscard]] bool isBusy() const { return busy_; }

Q_SIGNALS:
    /// last() is what was asked for last; null when it cannot be made.
    void ready();

private:
    void work(const std::stop_token& quit);
    void take(std::uint64_t turn, std::shared_ptr<const SetPaper> set, const QString& trouble);

    std::shared_ptr<const SetPaper> last_;
    QString trouble_;
    std::uint64_t turn_ = 0;
    bool busy_ = false;
    std::mutex mutex_; // guards what follows
    std::condition_variable_any asked_;
    std::optional<PaperTask> waiting_;
    double waitingScale_ = 1;
    std::uint64_t waitingTurn_ = 0;
    std::jthread thread_; // last: it uses all the others
};

} // namespace withy::ui
