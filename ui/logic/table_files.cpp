// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/table_files.h"

#include "core/exchange/orders_csv.h"
#include "core/exchange/table_csv.h"
#include "core/review/orders.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace withy::ui {

namespace {

struct Files {
    Q_DECLARE_TR_FUNCTIONS(TableFiles)
};

/// "Line 3, column 2: ..." for each of the first few.
QString placed(const Problems& problems) {
    constexpr std::size_t shown = 3;
    QStringList lines;
    for (std::size_t i = 0; i < problems.size() && i < shown; ++i) {
        const auto& p = problems[i];
        lines << (p.line > 0 ? Files::tr("Line %1: %2").arg(p.line).arg(sentence(p)) : sentence(p));
    }
    if (problems.size() > shown)
        lines << Files::tr("And %n more.", nullptr, static_cast<int>(problems.size() - shown));
    return lines.join(QLatin1Char(' '));
}

QString whatItDoes(const model::Season& season, const model::Edit& edit) {
    int added = 0;
    int changed = 0;
    for (const auto& record : edit.puts()) {
        const auto kind = model::kindOfRecord(record);
        (model::hasRecord(season, kind, model::idOf(record)) ? changed : added) += 1;
    }
    if (added == 0 && changed == 0) return Files::tr("There are no rows in it.");
    if (changed == 0) return Files::tr("%n row(s) added.", nullptr, added);
    if (added == 0) return Files::tr("%n row(s) read over those that are there.", nullptr, changed);
    return Files::tr("%n row(s) added", nullptr, added) +
           Files::tr(", %n read over those that are there.", nullptr, changed);
}

QString writeText(const std::string& text, const QString& path) {
    const auto bytes = QByteArray::fromStdString(text);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return Files::tr("%1 cannot be written: %2. Choose another folder.")
            .arg(QFileInfo(path).fileName(), file.errorString());
    return {};
}

} // namespace

QString writeTable(const model::Season& season, model::TableKind kind, const QString& path) {
    return writeText(exchange::exportTable(season, kind), path);
}

QString writeOrders(const model::Season& season, const plan::Plan& plan, const QString& path) {
    return writeText(exchange::ordersCsv(season, review::seasonOrders(season, plan)), path);
}

QString writtenWords(const QString& path) {
    return Files::tr("Written to %1.").arg(path);
}

TableReading readTableText(const model::Season& season, model::TableKind kind, const std::string& csv) {
    auto edit = exchange::importInto(season, kind, csv);
    if (!edit.ok()) return {std::nullopt, placed(edit.error())};
    const auto words = whatItDoes(season, edit.value());
    return {std::move(edit).value(), words};
}

TableReading readTable(const model::Season& season, model::TableKind kind, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {std::nullopt,
                Files::tr("%1 cannot be read: %2.").arg(QFileInfo(path).fileName(), file.errorString())};
    if (file.size() > mostCsvBytes)
        return {std::nullopt, Files::tr("%1 is too large to be one table. Take one with fewer rows.")
                                  .arg(QFileInfo(path).fileName())};
    return readTableText(season, kind, file.readAll().toStdString());
}

} // namespace withy::ui
