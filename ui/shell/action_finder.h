// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QPointer>

#include <functional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace withy::ui {

class Actions;

/// Every command and every booking, design, plant and patch, found by typing. A sheet over the page,
/// not a window of its own: Esc puts it away and nothing has happened.
class ActionFinder : public QFrame {
    Q_OBJECT

public:
    struct Target {
        QString words;
        QString kind; ///< "booking", "action"
        QString keys; ///< the shortcut, as written
        std::function<void()> go;
    };

    /// `others` is asked for what may be gone to each time the sheet opens.
    ActionFinder(const Actions& actions, std::function<std::vector<Target>()> others, QWidget* over);
    void open();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void gather();
    void filter(const QString& typed);
    void take();
    void put();

    const Actions& actions_;
    std::function<std::vector<Target>()> others_;
    std::vector<Target> targets_;
    QLineEdit* field_;
    QListWidget* list_;
    QPointer<QWidget> cameFrom_;
};

} // namespace withy::ui
