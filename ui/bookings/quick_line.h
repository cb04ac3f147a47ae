// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <functional>

class QLineEdit;

namespace withy::ui {

class TextLabel;

/// Several things said in one line: "12 trestles of 8". Enter takes them; what cannot be read stays, with the
/// sentence that says why below it.
class QuickLine : public QWidget {
    Q_OBJECT

public:
    /// Takes what was typed; the sentence that says why not, or an empty text.
    using Take = std::function<QString(const QString& typed)>;

    QuickLine(const char* objectName, const QString& accessibleName, const QString& prompt, Take take,
              QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit* field() const { return field_; }

    [[nodiscard]] QString sentence() const;
    void clear();
    /// Below the field; empty: nothing.
    void say(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLineEdit* field_;
    TextLabel* sentence_;
    Take take_;
};

} // namespace withy::ui
