// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_table.h"

namespace withy::ui {

class TextLabel;

/// Why rows cannot be taken out, and the ways on, in a line above the table they are in. Hidden otherwise.
class BlockedNotice : public QWidget {
    Q_OBJECT

public:
    explicit BlockedNotice(RecordTable& table, QWidget* parent = nullptr);
    [[nodiscard]] QString sentence() const;

private:
    void ask(const QString& sentence);
    RecordTable& table_;
    TextLabel* words_;
    QWidget* blank_;
};

} // namespace withy::ui
