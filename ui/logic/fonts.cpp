// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fonts.h"

#include <QDirIterator>
#include <QFontDatabase>
#include <QResource>

#include <mutex>

namespace withy::ui {

namespace {

/// From where it lies in the program, without a copy.
void add(const QString& file) {
    const QResource font(file);
    if (font.compressionAlgorithm() == QResource::NoCompression)
        QFontDatabase::addApplicationFontFromData(QByteArray::fromRawData(
            reinterpret_cast<const char*>(font.data()), static_cast<qsizetype>(font.size())));
    else
        QFontDatabase::addApplicationFont(file);
}

} // namespace

void loadFonts() {
    static std::once_flag once;
    std::call_once(once, [] {
        QFontDatabase::families(); // lists the system's too, which the first text would otherwise wait for
        QDirIterator files(QStringLiteral(":/withy/fonts"), {QStringLiteral("*.ttf")}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (files.hasNext())
            add(files.next());
    });
}

} // namespace withy::ui
