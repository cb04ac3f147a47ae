// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/text_label.h"
#include "ui/logic/answers/answer.h"

namespace withy::ui {

/// An answer as AnswerLabel shows it.
inline std::vector<Phrase> phrasesOf(const Answer& answer) {
    std::vector<Phrase> phrases;
    for (const auto& part : answer)
        phrases.push_back(
            {breakable(part.words), part.weight == AnswerPart::Weight::strong ? Phrase::Weight::strong
                                    : part.weight == AnswerPart::Weight::asks ? Phrase::Weight::asks
                                                                              : Phrase::Weight::plain});
    return phrases;
}

} // namespace withy::ui
