// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/fit_ask.h"
#include "ui/logic/workbench.h"
#endif

#include <QWidget>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace withy::ui {

class FitLineRow;
class QuickLine;
class TextLabel;

/// What is asked: when, what, where, what for. It changes nothing in the season.
class FitQuestions : public QWidget {
    Q_OBJECT

public:
    explicit FitQuestions(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] const FitDraft& draft() const { return draft_; }

    void setDay(Day day);
    /// As if nobody had rung yet.
    void clear();
    /// Takes what stands typed in What; false when it cannot be read, and says why there.
    bool takeTyped();
    /// After an edit: venues and designs may have gone.
    void refresh();
    void enter();

Q_SIGNALS:
    void changed();

private:
    QWidget* labelled(const QString& words, QWidget* field);
    void makeWhen(QVBoxLayout* rows);
    void readDayTyped();
    void readGuests();
    QString addPieces(const QString& typed);
    void setCount(std::size_t line, qint64 count);
    void leaveOut(std::size_t line);
    void showLines();
    void fillVenues();
    void showDay();
    void say(TextLabel* where, QLineEdit* field, const QString& sentence);

    Workbench& bench_;
    FitDraft draft_;
    QLineEdit* when_;
    TextLabel* whenTrouble_;
    QLineEdit* guests_;
    TextLabel* guestsTrouble_;
    QuickLine* what_;
    QVBoxLayout* lines_;
    std::vector<FitLineRow*> rows_;
    QComboBox* venue_;
    QLineEdit* title_;
};

} // namespace withy::ui
