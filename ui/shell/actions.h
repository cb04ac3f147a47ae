// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QObject>

#include <functional>
#include <vector>

namespace withy::ui {

/// Every command of the program by its stable id ("booking.new"), for menus, keys and the list of
/// actions found by typing.
class Actions : public QObject {
    Q_OBJECT

public:
    explicit Actions(QWidget* window);

    struct What {
        const char* id;
        QString words; ///< with its mnemonic: "&New booking"
        QKeySequence keys = {};
        QString tip = {}; ///< one plain sentence; the words when empty
    };

    QAction* add(const What& what, std::function<void()> act);
    /// Null when there is no such command.
    [[nodiscard]] QAction* find(const QString& id) const;

    [[nodiscard]] const std::vector<QAction*>& all() const { return all_; }

    /// Forgets those added after the first `count` (a season was closed).
    void keepFirst(std::size_t count);

private:
    QWidget* window_;
    std::vector<QAction*> all_;
};

} // namespace withy::ui
