// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/wording.h"

#include <cmath>

namespace withy::ui {

/// What the sentences of findings are put together from. A part that is not there is an empty text or nought.
class FindingParts {
public:
    FindingParts(const plan::Finding& finding, Units units) : f_(finding), units_(units) {}

protected:
    [[nodiscard]] QString subject(std::size_t i) const {
        return i < f_.subjects.size() ? text(f_.subjects[i]) : QString();
    }

    [[nodiscard]] QString day(std::size_t i) const {
        const auto found = i < f_.subjects.size() ? Day::parse(f_.subjects[i]) : std::nullopt;
        return found ? shortDay(*found) : subject(i);
    }

    [[nodiscard]] double number(std::size_t i) const { return i < f_.numbers.size() ? f_.numbers[i] : 0; }

    [[nodiscard]] QString length(std::size_t i) const { return lengthWords(number(i), units_); }

    [[nodiscard]] int count() const { return static_cast<int>(std::lround(number(0))); }

    /// Of a plant, from the second subject on.
    [[nodiscard]] QString facts() const {
        QStringList words;
        for (std::size_t i = 1; i < f_.subjects.size(); ++i)
            words << fieldWords(f_.subjects[i]);
        return words.join(QStringLiteral(", "));
    }

    const plan::Finding& f_;
    Units units_;
};

} // namespace withy::ui
