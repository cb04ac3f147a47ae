// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/group_head.h"
#include "ui/logic/workbench.h"

namespace withy::ui {

class QuickLine;
class RecordTable;

/// Shares of colours as one bar, which the rows below it name; for those who cannot see it, in words.
class ColourBar : public QWidget {
    Q_OBJECT

public:
    explicit ColourBar(QWidget* parent = nullptr);

    struct Part {
        QColor colour;
        double share = 0;
    };

    void setParts(const std::vector<Part>& parts, const QString& inWords);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<Part> parts_;
};

/// The colours wished for: a bar, a row for each, and a line that takes several more at once.
class BriefColours : public Group {
    Q_OBJECT

public:
    explicit BriefColours(Workbench& bench, QWidget* parent = nullptr);
    void showBooking(std::optional<Id<model::Booking>> id);

    [[nodiscard]] QuickLine* line() const { return quick_; }

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void refresh();
    QString addTyped(const QString& typed);

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;
    ColourBar* bar_;
    RecordTable* table_;
    QuickLine* quick_;
    TextLabel* sum_;
};

} // namespace withy::ui
