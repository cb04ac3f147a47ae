// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <vector>

/// The sentence a page begins with: the answer, then the reason, then the way out.
namespace withy::ui {

/// One stretch of it.
struct AnswerPart {
    enum class Weight { plain, strong, asks };
    QString words;
    Weight weight = Weight::plain;
};

using Answer = std::vector<AnswerPart>;

/// Its words without their weights.
QString plainWords(const Answer& answer);

} // namespace withy::ui
