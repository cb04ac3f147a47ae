// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QButtonGroup;

namespace withy::ui {

/// A choice of a few, side by side. Arrow keys move it, as in a group of radio buttons.
class Segments : public QWidget {
    Q_OBJECT

public:
    enum class Look { boxes, tabs };
    explicit Segments(const QString& accessibleName, const QStringList& words, Look look = Look::boxes,
                      QWidget* parent = nullptr);
    [[nodiscard]] int current() const;
    /// Never tells of a choice.
    void setCurrent(int index);
    void setWords(int index, const QString& words);
    [[nodiscard]] int count() const;

Q_SIGNALS:
    void chosen(int index);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// Tab enters at what is chosen; arrow keys go on from there.
    void tabToChosen();

    QButtonGroup* group_;
};

} // namespace withy::ui
