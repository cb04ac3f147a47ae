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

enum class PaperKind {
    prepSheet,
    bookingSummary,
    seasonOrders,
    walkSheet,
    cuttingList,
    makeUpCard,
    packingSheet,
    tablePlan,
    ribbonPlan,
    kitList,
    buyingList,
    runSheet,
    handOver,
    bucketLabels,
    helperSheet,
    weekBoard,
};

/// "prep", "booking", "make-up" ...: the words the command line takes.
std::optional<PaperKind> paperKind(std::string_view word);
/// All of those words, in order.
std::vector<std::string_view> paperWords();
QString paperTitle(PaperKind kind);
bool needsBooking(PaperKind kind);
/// About a week: that of PaperOrder::day, or of the booking's event.
bool isOfWeek(PaperKind kind);
/// Its sheets lie on their long side.
bool isLandscape(PaperKind kind);

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
    std::optional<Day> day =
        std::nullopt; ///< of cutting, or of the week; blank: every day, the booking's week
    std::optional<Day> today = std::nullopt; ///< blank: the day it is printed
};

/// One day that a paper can be asked for.
struct PaperDay {
    Day day;
    QString words; ///< "Thu 9 Sep, 136 stems"
};

/// The days to choose from, in order; empty where there is nothing to choose.
std::vector<PaperDay> daysOf(PaperKind kind, const PaperOrder& order);

/// Precondition: a booking that is there, for the kinds that need one.
papers::Document paperOf(PaperKind kind, const PaperOrder& order);
paper::PaperSize paperSizeOf(const model::Season& season);

} // namespace withy::ui
