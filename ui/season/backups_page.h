// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/store/backups.h"
#endif

class QPushButton;
class QTableView;

namespace withy::ui {

class BackupsModel;
class TextLabel;

/// The season's backups, newest first. Putting one back says what will happen first; the shell then closes
/// the season, restores it and opens it anew.
class BackupsPage : public SubPage {
    Q_OBJECT

public:
    explicit BackupsPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

public Q_SLOTS:
    /// Reads the list anew: another backup was made.
    void refresh();

Q_SIGNALS:
    void restoreWanted(const withy::store::Backup& backup);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void make();
    void ask();
    void leave();

    QString folder_;
    BackupsModel* model_;
    std::optional<store::Backup> asked_; ///< the one the question on screen is about
    QTableView* view_;
    QWidget* confirm_;
    TextLabel* words_;
    QPushButton* restore_;
    QWidget* tools_;
};

} // namespace withy::ui
