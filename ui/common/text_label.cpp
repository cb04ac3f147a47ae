// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/text_label.h"

#include "ui/common/style.h"

#include <QEvent>
#include <QStyle>

namespace withy::ui {

namespace {

constexpr std::size_t mostWidths = 8; ///< a layout asks for a few, again and again

const char* wordOf(Ink ink) {
    switch (ink) {
    case Ink::text:
        return "1";
    case Ink::second:
        return "2";
    case Ink::caption:
        return "3";
    case Ink::osier:
        return "osier";
    }
    return "1";
}

} // namespace

TextLabel::TextLabel(TypeRole type, const QString& words, Ink ink, QWidget* parent)
    : QLabel(words, parent), type_(type) {
    setTextFormat(Qt::PlainText);
    setFont(typeFont(type_));
    setProperty("ink", QLatin1String(wordOf(ink)));
}

void TextLabel::setInk(Ink ink) {
    const QLatin1String word(wordOf(ink));
    if (property("ink") == word) return;
    setProperty("ink", word);
    style()->polish(this); // which reads it
}

void TextLabel::setType(TypeRole type) {
    type_ = type;
    setFont(typeFont(type_));
}

int TextLabel::heightForWidth(int width) const {
    if (measured_.words != text() || measured_.font != font() || measured_.margins != contentsMargins() ||
        measured_.wraps != wordWrap())
        measured_ = {text(), font(), contentsMargins(), wordWrap(), {}};
    for (const auto& [at, height] : measured_.heights)
        if (at == width) return height;
    if (measured_.heights.size() >= mostWidths) measured_.heights.clear();
    return measured_.heights.emplace_back(width, QLabel::heightForWidth(width)).second;
}

void TextLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::StyleChange && font() != typeFont(type_)) setFont(typeFont(type_));
}

QString breakable(const QString& words) {
    constexpr int longest = 24;
    QString out;
    int run = 0;
    for (const QChar c : words) {
        out += c;
        run = c.isSpace() ? 0 : run + 1;
        if (run < longest || c.isHighSurrogate()) continue;
        out += QChar(0x200B);
        run = 0;
    }
    return out;
}

AnswerLabel::AnswerLabel(QWidget* parent) : TextLabel(TypeRole::answer, {}, Ink::text, parent) {
    setTextFormat(Qt::RichText);
    setWordWrap(true);
}

void AnswerLabel::setPhrases(const std::vector<Phrase>& phrases) {
    phrases_ = phrases;
    plain_.clear();
    for (const auto& phrase : phrases)
        plain_ += phrase.words;
    setAccessibleName(plain_);
    show();
}

void AnswerLabel::show() {
    QString html;
    for (const auto& phrase : phrases_) {
        const QString words = phrase.words.toHtmlEscaped();
        if (phrase.weight == Phrase::Weight::plain)
            html += words;
        else if (phrase.weight == Phrase::Weight::strong)
            html += QStringLiteral("<b>%1</b>").arg(words);
        else
            html += QStringLiteral("<b style=\"color:%1\">%2</b>")
                        .arg(currentPalette().of(Role::osier).name(), words);
    }
    setText(html);
}

void AnswerLabel::changeEvent(QEvent* event) {
    TextLabel::changeEvent(event);
    if (event->type() == QEvent::StyleChange) show(); // the colour of what asks is in the words
}

Rule::Rule(Kind kind, QWidget* parent) : QFrame(parent) {
    setProperty("look", kind == Kind::head ? QStringLiteral("rule") : QStringLiteral("hair"));
}

} // namespace withy::ui
