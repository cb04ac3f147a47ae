// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <QTimer>

#include <vector>

namespace withy::ui {

class Workbench;

/// Nothing is on the screen that is not in the file: while an edit is still being written, what would be
/// painted waits, and the window does not. A pointer that says so comes when that takes long.
class HeldFrames : public QObject {
    Q_OBJECT

public:
    explicit HeldFrames(QObject* parent = nullptr);
    ~HeldFrames() override;

    /// The one watched before is gone by then.
    void watch(Workbench& bench);

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void hold();
    void letGo();

    std::vector<QPointer<QObject>> waiting_; ///< windows with something to paint
    QTimer slow_;
    bool holding_ = false;
    bool saidBusy_ = false;
};

} // namespace withy::ui
