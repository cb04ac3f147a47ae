// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "core/plan/plan.h"
#include "ui/logic/paper/paper_size.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <set>
#include <string_view>
#include <vector>

/// Every paper by its kind, worded and ready to be laid out.
namespace withy::ui {

enum class PaperKind { prepSheet, bookingSummary, seasonOrders, walkSheet, cuttingList, makeUpCard };

/// "prep", "booking", "orders", "walk", "cutting", "make-up": the words the command line takes.
std::optional<PaperKind> paperKind(std::string_view word);
QString paperTitle(PaperKind kind);
bool needsBooking(PaperKind kind);

/// What may be left off a paper or put on it. Cautions are no choice: they stand wherever work can hurt.
enum class PaperPart {
    conditioning, ///< how each plant is to be treated
    writeHere,    ///< boxes for the pencil
    brief,        ///< wishes, must not, drops, open questions
    prices,       ///< money, paid and owed
    toLookAt,     ///< what the plan finds wrong
    workings,     ///< how the counts of stems came about
};

std::vector<PaperPart> allPaperParts();
/// Those a paper knows of.
std::vector<PaperPart> partsOf(PaperKind kind);
/// Those on it unless somebody chooses otherwise.
std::set<PaperPart> usualParts(PaperKind kind);
QString partWords(PaperPart part);

struct PaperOrder {
    const model::Season& season;
    const plan::Plan& plan;
    std::optional<Id<model::Booking>> booking;
    QDateTime printedAt = {}; ///< for the foot; invalid: left out, so that tests need no clock
    std::optional<std::set<PaperPart>> parts = std::nullopt; ///< blank: the usual ones
};

/// Precondition: a booking that is there, for the kinds that need one.
papers::Document paperOf(PaperKind kind, const PaperOrder& order);
paper::PaperSize paperSizeOf(const model::Season& season);

} // namespace withy::ui
