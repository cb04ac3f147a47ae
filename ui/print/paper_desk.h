// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"
#include "ui/print/paper_batch.h"

#include <QWidget>

#include <functional>
#include <map>
#include <set>

class QAbstractButton;
class QButtonGroup;
class QCheckBox;
class QComboBox;
class QFileDialog;
class QLayout;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class Actions;
class PaperView;
class Segments;
class TextLabel;

/// Papers to look at beside what can be chosen of them, to print, to keep as PDF or plain text; one, or all
/// of a booking or a week at once. Pages are set and written on other threads, so that typing never waits.
class PaperDesk : public QWidget {
    Q_OBJECT

public:
    PaperDesk(Workbench& bench, std::vector<PaperKind> kinds, QWidget* parent = nullptr);
    void setBooking(std::optional<Id<model::Booking>> booking);
    /// The week that papers of a week are about; blank: the booking's.
    void setDay(std::optional<Day> day);
    /// The keyboard begins at the paper that is chosen.
    void enter();
    /// "paper.print", "paper.pdf", "paper.text", "paper.booking.all", "paper.week".
    void addActions(Actions& actions);

    [[nodiscard]] PaperKind kind() const;
    void choose(PaperKind kind);

    [[nodiscard]] PaperView& view() const { return *view_; }

    void print();
    void keepPdf();
    void keepText();
    enum class All { booking, week };
    /// Each paper that is then kept or printed, with what is ticked for its own kind.
    [[nodiscard]] std::vector<PaperTask> tasksOf(All all) const;
    void keepAll(All all);
    void printAll(All all);

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);
    /// A command was given while the desk is not seen: please show it.
    void wanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeChoices();
    void addPapers(QVBoxLayout* column);
    void addParts(QVBoxLayout* column);
    void addOutputs(QLayout& row);
    void addAll(QVBoxLayout* column);
    QWidget* makePreview();
    QWidget* makeProgress();

    [[nodiscard]] std::set<PaperPart> ticked(PaperKind kind) const;
    [[nodiscard]] PaperTask taskOf(PaperKind kind, std::optional<Id<model::Booking>> booking) const;
    void ask();
    void followSize();
    void showParts();
    /// The days the chosen paper can be had for; hidden where there is nothing to choose.
    void showDays();
    [[nodiscard]] std::optional<Day> dayOf(PaperKind kind) const;
    /// The desk on screen, whichever place it belongs to; this one when there is none.
    PaperDesk& inView();
    void readyNow();
    /// Calls `then` with the paper as chosen, once it is set.
    void withPaper(std::function<void(const SetPaper&)> then);
    void chooseFile(const QString& title, const QString& ending, const QString& filter,
                    std::function<void(const QString&)> then);
    void chooseFolder(std::function<void(const QString&)> then);
    void keepFolder(const QString& folder);
    void progress(int done, int all, const QString& name);
    void finished(int written, const QString& trouble);

    Workbench& bench_;
    std::vector<PaperKind> kinds_;
    std::optional<Id<model::Booking>> booking_;
    PaperSetter setter_{this};
    PaperBatch batch_;
    QString batchFolder_;
    int batchSize_ = 0;
    std::function<void(const SetPaper&)> pending_;
    QButtonGroup* papers_ = nullptr;
    Segments* size_ = nullptr;
    bool sizeChosen_ = false;
    Segments* which_ = nullptr;
    TextLabel* partsHead_ = nullptr;
    std::vector<std::pair<PaperPart, QCheckBox*>> parts_;
    std::map<PaperKind, std::set<PaperPart>> ticked_; ///< what was chosen; the others have what is usual
    std::vector<QAbstractButton*> outputs_;
    QComboBox* days_ = nullptr;
    std::optional<Day> day_;
    PaperView* view_ = nullptr;
    TextLabel* pages_ = nullptr;
    TextLabel* empty_ = nullptr;
    QWidget* progressRow_ = nullptr;
    QProgressBar* bar_ = nullptr;
    TextLabel* progressWords_ = nullptr;
    bool stale_ = true;
};

} // namespace withy::ui
