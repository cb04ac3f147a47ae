// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "core/plan/plan.h"
#include "ui/logic/paper/paper_size.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <string_view>

/// Every paper by its kind, worded and ready to be laid out.
namespace withy::ui {

enum class PaperKind { prepSheet, bookingSummary, seasonOrders };

/// "prep", "booking", "orders": the words the command line takes.
std::optional<PaperKind> paperKind(std::string_view word);
QString paperTitle(PaperKind kind);
bool needsBooking(PaperKind kind);

struct PaperOrder {
    const model::Season& season;
    const plan::Plan& plan;
    std::optional<Id<model::Booking>> booking;
    QDateTime printedAt; ///< for the foot; invalid: left out, so that tests need no clock
};

/// Precondition: a booking that is there, for the kinds that need one.
papers::Document paperOf(PaperKind kind, const PaperOrder& order);
paper::PaperSize paperSizeOf(const model::Season& season);

} // namespace withy::ui
