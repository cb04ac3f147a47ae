// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/paper_names.h"

#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace withy::ui {

namespace {

struct PaperNamesSay {
    Q_DECLARE_TR_FUNCTIONS(Papers)
};

/// Letters that one file system or another refuses become blanks, and blanks never stand at the ends.
QString safe(const QString& words) {
    static const QString refused = QStringLiteral("/\\:*?\"<>|");
    QString out;
    for (const QChar c : words)
        out += c.unicode() < 32 || refused.contains(c) ? QLatin1Char(' ') : c;
    out = out.simplified().left(120);
    if (!out.isEmpty() && out.back().isHighSurrogate()) out.chop(1);
    while (out.startsWith(QLatin1Char('.')))
        out.remove(0, 1);
    return out;
}

} // namespace

QString paperFileName(const model::Season& season, PaperKind kind, std::optional<Id<model::Booking>> booking,
                      std::optional<Day> day) {
    const QString title = paperTitle(kind);
    const auto* b = booking ? season.bookings.find(*booking) : nullptr;
    if (isOfWeek(kind) && (day || b))
        return safe(text(weekOf(day ? *day : b->eventStart.day).iso()) + QLatin1Char(' ') + title.toLower());
    if (!b || !needsBooking(kind))
        return safe(text(season.theSettings().seasonName) + QStringLiteral(", ") + title.toLower());
    const QString end = QStringLiteral(", ") + title.toLower();
    const QString name = safe(text(b->title)).left(120 - 11 - static_cast<int>(end.size()));
    return safe(text(day.value_or(b->eventStart.day).iso()) + QLatin1Char(' ') + name + end);
}

std::vector<Id<model::Booking>> bookingsOfWeek(const model::Season& season, Day day) {
    std::vector<const model::Booking*> found;
    for (const auto& b : season.bookings)
        if (b.standing != model::Standing::lost && weekOf(b.eventStart.day) == weekOf(day))
            found.push_back(&b);
    std::stable_sort(found.begin(), found.end(),
                     [](const auto* a, const auto* b) { return a->eventStart < b->eventStart; });
    std::vector<Id<model::Booking>> out;
    for (const auto* b : found)
        out.push_back(b->id);
    return out;
}

QString keptAs(const QString& path) {
    return PaperNamesSay::tr("Kept as %1.").arg(QFileInfo(path).fileName());
}

QString notWritten(const QString& path, const QString& why) {
    return PaperNamesSay::tr("%1 could not be written (%2). Choose another folder, or make room on the disk.")
        .arg(QDir::toNativeSeparators(path), why);
}

QString printerRefused() {
    return PaperNamesSay::tr(
        "The printer did not take it. See that it is on and has paper, or keep it as PDF.");
}

QString sentToPrinter() {
    return PaperNamesSay::tr("Sent to the printer.");
}

QString chooseBookingFirst() {
    return PaperNamesSay::tr("Choose a booking first.");
}

QString stillWriting() {
    return PaperNamesSay::tr("Papers are still being written. Wait for them, or stop them.");
}

QString noPlan() {
    return PaperNamesSay::tr(
        "What stands now could not be planned, so nothing was printed. Undo the last change, or "
        "change it otherwise.");
}

QString batchDone(int written, int all, const QString& folder) {
    const QString where = folder.isEmpty()
                              ? PaperNamesSay::tr("printed")
                              : PaperNamesSay::tr("kept in %1").arg(QFileInfo(folder).fileName());
    if (written < all)
        return PaperNamesSay::tr("Stopped: %1 of %2 papers %3.").arg(written).arg(all).arg(where);
    return PaperNamesSay::tr("%n paper(s) %1.", nullptr, written).arg(where);
}

QString batchProgress(int done, int all, const QString& name) {
    return PaperNamesSay::tr("%1 (%2 of %3)").arg(name).arg(done + 1).arg(all);
}

} // namespace withy::ui
