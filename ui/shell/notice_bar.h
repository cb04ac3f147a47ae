// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <functional>

class QPushButton;
class QTimer;
class QToolButton;

namespace withy::ui {

class TextLabel;

/// One sentence under the page that blocks nothing. What was refused stays until something else is
/// said or it is shut; the rest goes by itself.
class NoticeBar : public QWidget {
    Q_OBJECT

public:
    explicit NoticeBar(QWidget* parent = nullptr);

    struct WayOut {
        QString words;
        std::function<void()> act;
    };

    void refuse(const QString& sentence, const WayOut& way = {});
    void say(const QString& sentence, const WayOut& way = {});
    void clear();
    [[nodiscard]] QString sentence() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void put(const QString& sentence, bool asks, const WayOut& way);

    TextLabel* words_;
    QPushButton* way_;
    QToolButton* shut_;
    QTimer* away_;
    std::function<void()> act_;
};

} // namespace withy::ui
