// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"

#include "app/cli/season_access.h"
#include "core/exchange/orders_csv.h"
#include "core/exchange/table_csv.h"
#include "core/model/schema.h"
#include "core/papers/text_render.h"
#include "core/plan/plan_json.h"
#include "ui/logic/calendar_file.h"
#include "ui/logic/format.h"
#include "ui/logic/paper/pdf.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/wording.h"
#include "ui/logic/workbench.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>
#include <QTextStream>

#include <cstdio>

namespace withy::cli {

namespace {

using store::SeasonFile;

QString say(const char* words) {
    return QCoreApplication::translate("Cli", words);
}

QTextStream& out() {
    static QTextStream stream(stdout);
    return stream;
}

const model::TableInfo* table(const std::string& name) {
    const auto* info = model::tableNamed(name);
    if (info) return info;
    QStringList names;
    for (const auto& t : model::allTables())
        names << QString::fromUtf8(t.name.data(), static_cast<qsizetype>(t.name.size()));
    complain(say("There is no table “%1”. The tables are: %2.")
                 .arg(ui::text(name), names.join(QStringLiteral(", "))));
    return nullptr;
}

bool knownBooking(const model::Season& season, std::optional<std::int64_t> booking) {
    if (!booking || season.bookings.find(Id<model::Booking>(*booking))) return true;
    complain(say("There is no booking %1. “export booking” lists them with their numbers.").arg(*booking));
    return false;
}

std::optional<Id<model::Booking>> idOf(std::optional<std::int64_t> booking) {
    return booking ? std::optional(Id<model::Booking>(*booking)) : std::nullopt;
}

void printPlan(const model::Season& season, const plan::BookingPlan& b) {
    const auto& booking = *season.bookings.find(b.booking);
    out() << booking.id.value << "  " << ui::text(booking.title) << ", "
          << ui::shortDay(booking.eventStart.day) << ": " << ui::whole(b.stemsNeeded.value) << say(" stems, ")
          << ui::whole(b.stemsToCut.value) << say(" to cut") << "\n";
    for (const auto& need : b.needs) {
        out() << "    " << ui::text(season.plants.find(need.plant)->name) << "\n";
        for (const auto& line : ui::lines(need.need.working, season.theSettings()))
            out() << "        " << line << "\n";
    }
    for (const auto& f : b.findings)
        out() << "  ! " << ui::sentence(f, season) << "\n";
}

} // namespace

int newSeason(const std::string& file, bool demo) {
    try {
        const QDate today = QDate::currentDate();
        SeasonFile::create(QString::fromStdString(file),
                           demo ? ui::demoSeason() : ui::emptySeason(today.year()));
    } catch (const store::StoreError& e) {
        complain(ui::sentence(e));
        return dataAtFault;
    }
    return done;
}

namespace {

QString paperNames() {
    QStringList words;
    for (const auto word : ui::paperWords())
        words << QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
    return words.join(QStringLiteral(", "));
}

bool readDay(const std::string& words, std::optional<Day>& day) {
    if (words.empty() || (day = Day::parse(words))) return true;
    complain(say("“%1” is not a day. Write it as 2027-09-11.").arg(ui::text(words)));
    return false;
}

} // namespace

int paper(const std::string& kindWord, const std::string& season, std::optional<std::int64_t> booking,
          const std::string& dayWords, const std::string& outFile) {
    const auto kind = ui::paperKind(kindWord);
    if (!kind) {
        complain(say("There is no paper “%1”. The papers are: %2.").arg(ui::text(kindWord), paperNames()));
        return callAtFault;
    }
    if (ui::needsBooking(*kind) && !booking) {
        complain(say("This paper is about one booking. Add --booking and its number."));
        return callAtFault;
    }
    std::optional<Day> day;
    if (!readDay(dayWords, day)) return callAtFault;
    const QString suffix = QFileInfo(QString::fromStdString(outFile)).suffix();
    if (suffix != QLatin1String("pdf") && suffix != QLatin1String("txt")) {
        complain(say("“%1” ends neither in .pdf nor in .txt. Choose one of them.").arg(ui::text(outFile)));
        return callAtFault;
    }
    auto file = open(season, SeasonFile::Mode::read);
    if (!file || !knownBooking(file->season(), booking)) return dataAtFault;
    const auto whole = plan::plan(file->season());
    const auto document =
        ui::paperOf(*kind, {file->season(), whole, idOf(booking), QDateTime::currentDateTime(), std::nullopt,
                            day, ui::demoDay(file->season())});
    QByteArray bytes;
    if (suffix == QLatin1String("txt")) {
        bytes = QByteArray::fromStdString(papers::renderText(document));
    } else {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        if (!paper::writePdf(buffer, document, ui::paperSizeOf(file->season()),
                             {{}, QStringLiteral("Withy"), QDateTime::currentDateTime()})) {
            complain(say("The PDF could not be made, so nothing was written."));
            return dataAtFault;
        }
    }
    return writeAll(outFile, bytes) ? done : dataAtFault;
}

int plan(const std::string& season, std::optional<std::int64_t> booking, const std::string& today,
         bool json) {
    plan::PlanOptions options;
    if (!readDay(today, options.today)) return callAtFault;
    auto file = open(season, SeasonFile::Mode::read);
    if (!file || !knownBooking(file->season(), booking)) return dataAtFault;
    const auto whole = plan::plan(file->season(), options);
    if (json) {
        out() << ui::text(plan::planJson(file->season(), whole, idOf(booking)));
    } else {
        for (const auto& [id, b] : whole.bookings) {
            if (!booking || id.value == *booking) printPlan(file->season(), *b);
        }
    }
    out().flush();
    return done;
}

int import(const std::string& tableName, const std::string& season, const std::string& csv) {
    const auto* info = table(tableName);
    if (!info) return callAtFault;
    const auto text = readAll(csv);
    if (!text) return callAtFault;
    auto file = open(season, SeasonFile::Mode::write);
    if (!file) return dataAtFault;
    const auto edit = exchange::importInto(file->season(), info->kind, *text);
    if (!edit.ok()) {
        complain(ui::sentences(edit.error()));
        return dataAtFault;
    }
    ui::Workbench bench(std::move(*file));
    const QString trouble = bench.apply(*edit);
    if (!trouble.isEmpty()) complain(trouble);
    return trouble.isEmpty() ? done : dataAtFault;
}

int exportTo(const std::string& tableName, const std::string& season, const std::string& csv) {
    const auto* info = table(tableName);
    if (!info) return callAtFault;
    auto file = open(season, SeasonFile::Mode::read);
    if (!file) return dataAtFault;
    const auto text = exchange::exportTable(file->season(), info->kind);
    return writeAll(csv, QByteArray::fromStdString(text)) ? done : dataAtFault;
}

namespace {

/// To the file, or to standard output for "-".
int give(const std::string& text, const std::string& path) {
    if (path != "-") return writeAll(path, QByteArray::fromStdString(text)) ? done : dataAtFault;
    return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0
               ? done
               : dataAtFault;
}

} // namespace

int orders(const std::string& season, const std::string& csv) {
    auto file = open(season, SeasonFile::Mode::read);
    if (!file) return dataAtFault;
    return give(
        exchange::ordersCsv(file->season(), review::seasonOrders(file->season(), plan::plan(file->season()))),
        csv);
}

int calendar(const std::string& season, const std::string& ics) {
    auto file = open(season, SeasonFile::Mode::read);
    if (!file) return dataAtFault;
    const auto entries =
        ui::seasonCalendar(file->season(), plan::plan(file->season()), QDateTime::currentDateTimeUtc());
    return give(exchange::calendarText(entries), ics);
}

int check(const std::string& path) {
    auto file = open(path, SeasonFile::Mode::read);
    if (!file) return dataAtFault;
    out() << say("Sound. ") << file->season().bookings.size() << say(" bookings, ")
          << file->season().plants.size() << say(" plants.") << "\n";
    out().flush();
    return done;
}

} // namespace withy::cli
