// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/workbench.h"
#endif

#include <QWidget>

#include <vector>

class QGridLayout;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace withy::ui {

class TextLabel;

/// What was left, what drooped, what to do next time: three questions, each of which may stay blank. A blank
/// is not a nought, and nobody is reminded of it. Beside them the ribbon that is left, to be written back.
class JobNoteForm : public QWidget {
    Q_OBJECT

public:
    explicit JobNoteForm(Workbench& bench, QWidget* parent = nullptr);
    /// The plants are those of the share-out.
    void show(Id<model::Booking> booking, const std::vector<Id<model::Plant>>& plants);
    using QWidget::show;
    void enter();

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);

private:
    void keep();
    void writeBack();
    void showRibbon();
    void layPlants(const std::vector<Id<model::Plant>>& plants);
    void fillPlants(const std::vector<Id<model::Plant>>& plants, const edits::JobNoteAnswers& note,
                    bool another);

    Workbench& bench_;
    Id<model::Booking> booking_;
    QWidget* plants_;
    QGridLayout* plantRows_;
    std::vector<std::pair<Id<model::Plant>, QLineEdit*>> left_;
    QPlainTextEdit* drooped_;
    QPlainTextEdit* nextTime_;
    QLineEdit* minutes_;
    TextLabel* ribbonHead_;
    TextLabel* ribbonSays_;
    QPushButton* ribbonBack_;
    TextLabel* says_;
};

} // namespace withy::ui
