// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"
#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/table_files.h"
#endif

class QListWidget;
class QPushButton;

namespace withy::ui {

class TextLabel;

/// Any table of the season as a CSV file, out and in. What a file would change is said before it is taken.
class TablesPage : public SubPage {
    Q_OBJECT

public:
    explicit TablesPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;

    [[nodiscard]] model::TableKind chosenTable() const;
    /// Says whether it was written.
    bool writeTo(const QString& path);
    /// Reads and shows what it would change; nothing is changed yet.
    void readFrom(const QString& path);
    /// Takes what was read.
    bool take();

private:
    void fill();
    void askAndWrite();
    void askAndRead();
    void forget();

    QListWidget* list_;
    TextLabel* what_;
    QPushButton* take_;
    QPushButton* leave_;
    std::optional<model::Edit> read_;
};

} // namespace withy::ui
