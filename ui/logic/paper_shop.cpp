// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper_shop.h"

#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

namespace withy::ui {

std::optional<PaperKind> paperKind(std::string_view word) {
    if (word == "prep") return PaperKind::prepSheet;
    if (word == "booking") return PaperKind::bookingSummary;
    if (word == "orders") return PaperKind::seasonOrders;
    if (word == "walk") return PaperKind::walkSheet;
    if (word == "cutting") return PaperKind::cuttingList;
    if (word == "make-up") return PaperKind::makeUpCard;
    return std::nullopt;
}

QString paperTitle(PaperKind kind) {
    switch (kind) {
    case PaperKind::prepSheet:
        return QCoreApplication::translate("Papers", "Prep sheet");
    case PaperKind::bookingSummary:
        return QCoreApplication::translate("Papers", "Booking summary");
    case PaperKind::seasonOrders:
        return QCoreApplication::translate("Papers", "Season's orders");
    case PaperKind::walkSheet:
        return QCoreApplication::translate("Papers", "Walk sheet");
    case PaperKind::cuttingList:
        return QCoreApplication::translate("Papers", "Cutting list");
    case PaperKind::makeUpCard:
        return QCoreApplication::translate("Papers", "Make-up card");
    }
    return {};
}

bool needsBooking(PaperKind kind) {
    return kind == PaperKind::prepSheet || kind == PaperKind::bookingSummary ||
           kind == PaperKind::cuttingList || kind == PaperKind::makeUpCard;
}

std::vector<PaperPart> allPaperParts() {
    return {PaperPart::conditioning, PaperPart::writeHere, PaperPart::brief,
            PaperPart::prices,       PaperPart::toLookAt,  PaperPart::workings};
}

std::vector<PaperPart> partsOf(PaperKind kind) {
    switch (kind) {
    case PaperKind::prepSheet:
        return {PaperPart::conditioning, PaperPart::writeHere, PaperPart::workings};
    case PaperKind::bookingSummary:
        return {PaperPart::brief, PaperPart::prices, PaperPart::toLookAt, PaperPart::workings};
    case PaperKind::walkSheet:
    case PaperKind::cuttingList:
        return {PaperPart::writeHere};
    case PaperKind::makeUpCard:
        return {PaperPart::conditioning, PaperPart::writeHere};
    case PaperKind::seasonOrders:
        break;
    }
    return {};
}

std::set<PaperPart> usualParts(PaperKind kind) {
    const auto all = partsOf(kind);
    std::set<PaperPart> usual(all.begin(), all.end());
    usual.erase(PaperPart::workings);
    return usual;
}

QString partWords(PaperPart part) {
    switch (part) {
    case PaperPart::conditioning:
        return QCoreApplication::translate("Papers", "Conditioning notes");
    case PaperPart::writeHere:
        return QCoreApplication::translate("Papers", "Boxes to write in");
    case PaperPart::brief:
        return QCoreApplication::translate("Papers", "Wishes and open questions");
    case PaperPart::prices:
        return QCoreApplication::translate("Papers", "Prices and payments");
    case PaperPart::toLookAt:
        return QCoreApplication::translate("Papers", "What wants looking at");
    case PaperPart::workings:
        return QCoreApplication::translate("Papers", "How the stems were counted");
    }
    return {};
}

papers::Document paperOf(PaperKind kind, const PaperOrder& order) {
    papers::Document d;
    switch (kind) {
    case PaperKind::prepSheet:
        d = prepSheet(order);
        break;
    case PaperKind::bookingSummary:
        d = bookingSummary(order);
        break;
    case PaperKind::seasonOrders:
        d = ordersPaper(order);
        break;
    case PaperKind::walkSheet:
        d = walkSheet(order);
        break;
    case PaperKind::cuttingList:
        d = cuttingList(order);
        break;
    case PaperKind::makeUpCard:
        d = makeUpCard(order);
        break;
    }
    d.kind = utf8(paperTitle(kind));
    if (order.printedAt.isValid()) {
        const QDate date = order.printedAt.date();
        const auto day = Day::fromYmd(date.year(), date.month(), date.day());
        d.footPrinted = utf8(QCoreApplication::translate("Papers", "printed %1, %2")
                                 .arg(shortDay(day.value_or(Day{})),
                                      order.printedAt.time().toString(QStringLiteral("HH:mm"))));
    }
    for (auto& sheet : d.sheets) {
        sheet.kind = d.kind;
        sheet.footPrinted = d.footPrinted;
    }
    return d;
}

paper::PaperSize paperSizeOf(const model::Season& season) {
    return season.theSettings().paper == model::PaperSize::a4 ? paper::PaperSize::A4
                                                              : paper::PaperSize::Letter;
}

} // namespace withy::ui
