// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/fit_words.h"
#include "ui/logic/workbench.h"
#endif

#include <QWidget>

class QPushButton;

namespace withy::ui {

class AnswerLabel;
class FlowRow;
class JarCell;
class SheetTable;
class TextLabel;

/// The answer: yes, tight or no, the words to say, what decides it, the most that fits, the nearest dates,
/// and what to do with it.
class FitReply : public QWidget {
    Q_OBJECT

public:
    explicit FitReply(Workbench& bench, QWidget* parent = nullptr);
    void showAnswer(const FitView& view, const QString& holdWords);
    /// Nothing to answer yet, or why not; before a day is said, those a caller may be offered.
    void showWords(const QString& words, const std::vector<Day>& free = {});
    /// An older answer stays, quieter, while the new one is worked out.
    void setThinking(bool thinking);

Q_SIGNALS:
    void dayChosen(withy::Day day);
    void enquiryAsked();
    void holdAsked();
    void leaveAsked();
    /// From a figure to what it rests on.
    void leadTo(const withy::model::Ref& ref);
    /// What was typed into a limit that nobody had told.
    void refused(const QString& sentence);

private:
    QWidget* makeButtons();
    QWidget* makeBefore();
    void showDates(const std::vector<plan::FitDate>& dates);

    JarCell* jar_;
    AnswerLabel* head_;
    TextLabel* reason_;
    QWidget* sayBox_;
    TextLabel* say_;
    QWidget* body_;
    SheetTable* sheet_;
    TextLabel* most_;
    QWidget* datesHead_;
    QWidget* dates_;
    FlowRow* dateRow_;
    std::vector<QPushButton*> dateButtons_;
    std::vector<plan::FitDate> shownDates_;
    TextLabel* leaning_;
    QPushButton* hold_ = nullptr;
    QWidget* buttons_;
    TextLabel* freeHead_;
    FlowRow* freeRow_ = nullptr;
    QWidget* before_; ///< while nothing is asked
    std::vector<QPushButton*> freeButtons_;
    std::vector<Day> shownFree_;
};

} // namespace withy::ui
