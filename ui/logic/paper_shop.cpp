// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper_shop.h"

#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"
#include "ui/logic/shed/shed_papers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

/// One kind of paper: its word for the command line, its name, and what it is about.
struct PaperFacts {
    PaperKind kind;
    std::string_view word;
    const char* title;
    bool booking;
    papers::Document (*make)(const PaperOrder&);
};

constexpr PaperFacts allPapers[] = {
    {PaperKind::prepSheet, "prep", QT_TRANSLATE_NOOP("Papers", "Prep sheet"), true, prepSheet},
    {PaperKind::bookingSummary, "booking", QT_TRANSLATE_NOOP("Papers", "Booking summary"), true,
     bookingSummary},
    {PaperKind::seasonOrders, "orders", QT_TRANSLATE_NOOP("Papers", "Season's orders"), false, ordersPaper},
    {PaperKind::walkSheet, "walk", QT_TRANSLATE_NOOP("Papers", "Walk sheet"), false, walkSheet},
    {PaperKind::cuttingList, "cutting", QT_TRANSLATE_NOOP("Papers", "Cutting list"), true, cuttingList},
    {PaperKind::makeUpCard, "make-up", QT_TRANSLATE_NOOP("Papers", "Make-up card"), true, makeUpCard},
    {PaperKind::packingSheet, "packing", QT_TRANSLATE_NOOP("Papers", "Packing sheet"), true, packingSheet},
    {PaperKind::tablePlan, "tables", QT_TRANSLATE_NOOP("Papers", "Table plan"), true, tablePlanPaper},
    {PaperKind::ribbonPlan, "ribbon", QT_TRANSLATE_NOOP("Papers", "Ribbon plan"), true, ribbonPlanPaper},
    {PaperKind::kitList, "kit", QT_TRANSLATE_NOOP("Papers", "Kit list"), true, kitListPaper},
    {PaperKind::buyingList, "buying", QT_TRANSLATE_NOOP("Papers", "Buying list"), false, buyingListPaper},
    {PaperKind::runSheet, "run", QT_TRANSLATE_NOOP("Papers", "Run sheet"), true, runSheet},
    {PaperKind::handOver, "hand-over", QT_TRANSLATE_NOOP("Papers", "Hand-over and care"), true,
     handOverSheet},
    {PaperKind::bucketLabels, "labels", QT_TRANSLATE_NOOP("Papers", "Bucket labels"), true, bucketLabels},
    {PaperKind::helperSheet, "helpers", QT_TRANSLATE_NOOP("Papers", "Helper sheet"), false, helperSheets},
    {PaperKind::weekBoard, "week", QT_TRANSLATE_NOOP("Papers", "Week board"), false, weekBoard},
};

const PaperFacts& factsOf(PaperKind kind) {
    return *std::find_if(std::begin(allPapers), std::end(allPapers),
                         [&](const auto& p) { return p.kind == kind; });
}

} // namespace

std::optional<PaperKind> paperKind(std::string_view word) {
    for (const auto& paper : allPapers)
        if (paper.word == word) return paper.kind;
    return std::nullopt;
}

std::vector<std::string_view> paperWords() {
    std::vector<std::string_view> words;
    for (const auto& paper : allPapers)
        words.push_back(paper.word);
    return words;
}

QString paperTitle(PaperKind kind) {
    return QCoreApplication::translate("Papers", factsOf(kind).title);
}

bool needsBooking(PaperKind kind) {
    return factsOf(kind).booking;
}

bool isOfWeek(PaperKind kind) {
    return kind == PaperKind::weekBoard || kind == PaperKind::helperSheet;
}

bool isLandscape(PaperKind kind) {
    return kind == PaperKind::weekBoard;
}

std::vector<PaperDay> daysOf(PaperKind kind, const PaperOrder& order) {
    if (kind != PaperKind::cuttingList || !order.booking) return {};
    return cuttingDays(order);
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
    case PaperKind::packingSheet:
    case PaperKind::tablePlan:
    case PaperKind::ribbonPlan:
    case PaperKind::kitList:
        return {PaperPart::writeHere};
    case PaperKind::runSheet:
    case PaperKind::helperSheet:
        return {PaperPart::writeHere};
    case PaperKind::makeUpCard:
        return {PaperPart::conditioning, PaperPart::writeHere};
    case PaperKind::seasonOrders:
    case PaperKind::buyingList:
    case PaperKind::handOver:
    case PaperKind::bucketLabels:
    case PaperKind::weekBoard:
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
    papers::Document d = factsOf(kind).make(order);
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
