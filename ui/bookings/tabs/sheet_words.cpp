// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/sheet_words.h"

namespace withy::ui {

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

std::vector<Phrase> phrasesOf(const Answer& saying) {
    std::vector<Phrase> out;
    for (const auto& part : saying)
        out.push_back({breakable(part.words), static_cast<Phrase::Weight>(part.weight)});
    return out;
}

void setName(AnswerLabel& label, const SheetRow& row) {
    const bool head = row.look == RowLook::head || row.look == RowLook::dayHead;
    const auto weight = row.look == RowLook::head ? Phrase::Weight::plain : Phrase::Weight::strong;
    std::vector<Phrase> phrases{{breakable(row.name), weight}};
    if (!row.rest.isEmpty() && !head) phrases.push_back({QStringLiteral(" ") + breakable(row.rest), {}});
    label.setPhrases(phrases);
}

} // namespace withy::ui
