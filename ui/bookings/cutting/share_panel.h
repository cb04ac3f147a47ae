// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/share_rows.h"
#include "ui/logic/workbench.h"
#endif

#include <QThreadPool>
#include <QWidget>

#include <memory>

class QButtonGroup;
class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class ClientNote;
class JobNoteForm;
class MadeForm;
class ShareCard;
class TextLabel;

/// What comes of the tally: the answer, the ways out as choices, equal pieces at the bench, and what is done
/// next. Nothing is written down before it is taken. Worked out on a thread of its own.
class SharePanel : public QWidget {
    Q_OBJECT

public:
    explicit SharePanel(Workbench& bench, QWidget* parent = nullptr);
    ~SharePanel() override;

    void show(Id<model::Booking> booking);
    using QWidget::show;
    /// For tests: until what is asked now is worked out and shown.
    void waitForAnswer();

    [[nodiscard]] std::shared_ptr<const ShareFound> found() const { return found_; }

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);

private:
    void layPage();
    QWidget* makeButtons();
    QWidget* makeForms();
    void ask();
    void take(std::uint64_t turn, const std::shared_ptr<const ShareFound>& found, const QString& trouble);
    void showAnswer();
    void showChoices(const ShareView& view);
    void showCards();
    void showBench();
    [[nodiscard]] ShareCard* chosen() const;
    [[nodiscard]] const shareout::ShareOut* shared() const;
    [[nodiscard]] std::optional<Day> benchDay() const;
    /// Writes down the chosen ways; false when it was refused.
    bool keepWays();
    void make();
    void mix();
    void keepMade(std::optional<Minutes> minutes);
    void openForm(QWidget* form);
    void printCard();

    Workbench& bench_;
    Id<model::Booking> booking_;
    std::shared_ptr<const ShareFound> found_;
    std::vector<shareout::Way> mixed_;
    std::vector<shareout::LineShare> madeLines_; ///< as they were when "Make these" was pressed
    std::uint64_t asked_ = 0;
    bool filling_ = false;

    TextLabel* small_;
    AnswerLabel* head_;
    TextLabel* mixWords_;
    QButtonGroup* group_;
    QVBoxLayout* cards_;
    QWidget* body_;
    QVBoxLayout* rows_;
    TextLabel* kept_;
    TextLabel* left_;
    TextLabel* workings_;
    TextLabel* notes_;
    QPushButton* make_ = nullptr;
    QPushButton* card_ = nullptr;
    QPushButton* mix_ = nullptr;
    QPushButton* over_ = nullptr;
    QPushButton* others_ = nullptr;
    bool allShown_ = false;
    QPushButton* tell_ = nullptr;
    QPushButton* note_ = nullptr;
    MadeForm* made_;
    ClientNote* client_;
    JobNoteForm* jobNote_;
    QThreadPool pool_; // last: its work looks at the others
};

} // namespace withy::ui
