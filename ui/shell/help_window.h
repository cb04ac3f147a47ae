// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTextBrowser;

namespace withy::ui {

/// The guide, page by page, as it is compiled into the program (docs/guide). Blocks nothing.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    explicit HelpWindow(QWidget* parent);
    /// "bookings" opens docs/guide/bookings.md; the contents when there is no such page.
    void open(const QString& page);
    using QDialog::open;

private:
    QTextBrowser* page_;
};

} // namespace withy::ui
