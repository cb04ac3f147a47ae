// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/finding_list.h"
#endif

#include "ui/logic/workbench.h"

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class TextLabel;

/// What wants looking at: each finding in a sentence with its mend, leading to its place, and to be accepted
/// where it may stay as it is. What was accepted is folded behind one line.
class FindingRows : public QWidget {
    Q_OBJECT

public:
    FindingRows(Workbench& bench, const QString& name, QWidget* parent = nullptr);
    void setFindings(std::vector<ListedFinding> list);

    /// Where it stands: what is to be mended there needs no way to it.
    void setHere(const model::Ref& here) { here_ = here; }

    /// Says whose each is: for a list over many bookings.
    void nameBookings() { names_ = true; }

    [[nodiscard]] const std::vector<ListedFinding>& findings() const { return list_; }

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);
    void refused(const QString& sentence);

private:
    struct Row {
        QWidget* all = nullptr;
        QWidget* mark = nullptr;
        TextLabel* words = nullptr;
        QPushButton* lead = nullptr;
        QPushButton* settle = nullptr;
    };

    void show();
    void showRow(std::size_t index);
    void showFolds(int accepted, int open);
    Row makeRow(std::size_t index);
    void settle(std::size_t index);

    Workbench& bench_;
    std::vector<ListedFinding> list_;
    std::vector<Row> rows_;
    QVBoxLayout* all_;
    TextLabel* head_;
    QPushButton* more_;
    QPushButton* fold_;
    std::size_t most_ = 30; ///< rows made at once: a long list must not hold the window
    bool unfolded_ = false;
    bool names_ = false;
    std::optional<model::Ref> here_;
};

} // namespace withy::ui
