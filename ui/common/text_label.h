// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/type.h"

#include <QFont>
#include <QLabel>

#include <initializer_list>
#include <utility>
#include <vector>

/// Words on a page. Always shown as typed: nothing a grower writes is read as markup.
namespace withy::ui {

/// The ink of a label; the style knows it by the property "ink".
enum class Ink { text, second, caption, osier };

/// A plain-text label that keeps to the type scale when the size of text changes.
class TextLabel : public QLabel {
    Q_OBJECT

public:
    explicit TextLabel(TypeRole type, const QString& words = {}, Ink ink = Ink::text,
                       QWidget* parent = nullptr);
    void setInk(Ink ink);
    void setType(TypeRole type);
    /// As QLabel's, which shapes the words anew each time a layout asks.
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void changeEvent(QEvent* event) override;

private:
    /// What the heights were worked out for.
    struct Measured {
        QString words;
        QFont font;
        QMargins margins;
        bool wraps = false;
        std::vector<std::pair<int, int>> heights; ///< by width
    };

    TypeRole type_;
    mutable Measured measured_;
};

/// One stretch of an answer sentence.
struct Phrase {
    enum class Weight { plain, strong, asks };
    QString words;
    Weight weight = Weight::plain;
};

/// The answer a page begins with: "321 stems for 26 pieces. 28 zinnias are short."
class AnswerLabel : public TextLabel {
    Q_OBJECT

public:
    explicit AnswerLabel(QWidget* parent = nullptr);
    void setPhrases(const std::vector<Phrase>& phrases);

    [[nodiscard]] QString plainWords() const { return plain_; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void show();
    std::vector<Phrase> phrases_;
    QString plain_;
};

/// The same with places where a word that never ends may break, for names typed without a blank.
QString breakable(const QString& words);

/// A horizontal rule: under a group's head, or the hairline between rows.
class Rule : public QFrame {
public:
    enum class Kind { head, hair };
    explicit Rule(Kind kind = Kind::head, QWidget* parent = nullptr);
};

} // namespace withy::ui
