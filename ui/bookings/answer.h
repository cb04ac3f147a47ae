// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/text_label.h"
#include "ui/logic/models/booking_words.h"

namespace withy::ui {

/// An answer as the answer label takes it.
inline std::vector<Phrase> phrases(const Answer& answer) {
    std::vector<Phrase> list;
    for (const auto& s : answer) {
        using Weight = Phrase::Weight;
        const Weight weight = s.weight == AnswerPart::Weight::strong ? Weight::strong
                              : s.weight == AnswerPart::Weight::asks ? Weight::asks
                                                                     : Weight::plain;
        list.push_back({s.words, weight});
    }
    return list;
}

} // namespace withy::ui
