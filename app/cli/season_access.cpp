// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/season_access.h"

#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QTextStream>

namespace withy::cli {

void complain(const QString& sentence) {
    QTextStream(stderr) << sentence << Qt::endl;
}

std::optional<std::string> readAll(const std::string& path) {
    const QString name = QString::fromStdString(path);
    QFile file(name);
    if (QFileInfo(name).isDir() || !file.open(QIODevice::ReadOnly)) {
        complain(QCoreApplication::translate("Cli", "%1 cannot be read. Check the name and the folder.")
                     .arg(name));
        return std::nullopt;
    }
    return file.readAll().toStdString();
}

bool writeAll(const std::string& path, const QByteArray& bytes) {
    const QString name = QString::fromStdString(path);
    QSaveFile file(name);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) return true;
    complain(
        QCoreApplication::translate("Cli", "%1 cannot be written. Check the folder and the disk.").arg(name));
    return false;
}

std::optional<store::SeasonFile> open(const std::string& path, store::SeasonFile::Mode mode) {
    try {
        return store::SeasonFile::open(QString::fromStdString(path), mode);
    } catch (const store::StoreError& e) {
        complain(ui::sentence(e));
        return std::nullopt;
    }
}

} // namespace withy::cli
