// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/copied_rows.h"

#include <QCoreApplication>
#include <QStringList>

namespace withy::ui {

namespace {

struct CopiedRowsSay {
    Q_DECLARE_TR_FUNCTIONS(CopiedRows)
};

QString plain(QString words) {
    for (const char c : {'\t', '\n', '\r'})
        words.replace(QLatin1Char(c), QLatin1Char(' '));
    return words;
}

QString cellOf(const QModelIndex& index) {
    const QString words = index.data().toString();
    if (!words.isEmpty()) return plain(words);
    const QVariant tick = index.data(Qt::CheckStateRole);
    return tick.isValid() && tick.toInt() == Qt::Checked ? CopiedRowsSay::tr("yes") : QString();
}

} // namespace

QString rowsAsText(const QAbstractItemModel& model, const std::vector<int>& rows,
                   const std::vector<int>& columns) {
    QStringList heads;
    for (const int c : columns)
        heads << plain(model.headerData(c, Qt::Horizontal).toString());
    QString out = heads.join(QLatin1Char('\t')) + QLatin1Char('\n');
    for (const int row : rows) {
        QStringList cells;
        for (const int c : columns)
            cells << cellOf(model.index(row, c));
        out += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return out;
}

QString rowsCopiedWords(int rows) {
    return CopiedRowsSay::tr("%n row(s) copied; paste (it|them) into a spreadsheet.", nullptr, rows);
}

} // namespace withy::ui
