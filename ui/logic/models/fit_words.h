// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/fit_ask.h"
#include "ui/logic/models/sheet.h"

/// "13 tables, yes. All 16, no.": the answer to the telephone in words.
namespace withy::ui {

struct FitView {
    const model::Season& season;
    const FitDraft& draft;
    const plan::FitAnswer& answer;
};

/// The plain answer.
Answer fitAnswer(const FitView& view);
/// What decides it: "Stems stop you: 28 of the zinnia are short, even at the likely number."
QString fitReason(const FitView& view);
/// The words for the telephone.
QString fitToSay(const FitView& view);
/// Stems, hours, each container, buckets: yes, tight or no, the reach, the reason.
Sheet fitSheet(const FitView& view);
/// "The most that fits: 13 tables of Supper jar for sure, 15 if the likely stems come." One for each line.
QStringList fitMost(const FitView& view);
/// "Leaning on the same patches that week: Wedding, Imogen and Bryn (Sat 18 Sep)."
QString fitLeaning(const FitView& view);
/// "Sat 2 Oct, fits"
QString fitDateWords(const plan::FitDate& date);
/// How a whole answer is told in one word, for the jar.
SheetState fitState(plan::Fit fit);

/// What is wrong with what was asked, by the name of its field.
QString fitFault(const Problem& problem);
QString fitBadHour(const QString& typed);
/// While no answer can be given, what is missing.
QString fitWaiting(const FitDraft& draft);

} // namespace withy::ui
