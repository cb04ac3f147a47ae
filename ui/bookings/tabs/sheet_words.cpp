// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/sheet_words.h"

namespace withy::ui {

void setName(AnswerLabel& label, const SheetRow& row) {
    const bool head = row.look == RowLook::head || row.look == RowLook::dayHead;
    const auto weight = row.look == RowLook::head ? Phrase::Weight::plain : Phrase::Weight::strong;
    std::vector<Phrase> phrases{{breakable(row.name), weight}};
    if (!row.rest.isEmpty() && !head) phrases.push_back({QStringLiteral(" ") + breakable(row.rest), {}});
    label.setPhrases(phrases);
}

} // namespace withy::ui
