// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/english_plurals.h"
#include "ui/logic/fonts.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/wording.h"
#include "ui/paint/icons.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QDate>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace {

using withy::store::SeasonFile;

/// Opens the file, or makes it when it is not there: with the demo season or an empty one.
std::optional<SeasonFile> openOrMake(const QString& path, bool demo) {
    try {
        if (QFileInfo::exists(path)) return SeasonFile::open(path, SeasonFile::Mode::write);
        auto first = demo ? withy::ui::demoSeason()
                          : withy::ui::seasonWithPlants(
                                withy::ui::emptySeason(QDate::currentDate().year()).theSettings());
        return SeasonFile::create(path, first);
    } catch (const withy::store::StoreError& e) {
        QMessageBox::warning(nullptr, QObject::tr("Not opened"), withy::ui::sentence(e));
        return std::nullopt;
    }
}

/// What to begin with, asked when the call names no file.
QString ask(bool& demo) {
    QMessageBox box(QMessageBox::NoIcon, QStringLiteral("Withy"),
                    QObject::tr("Nothing grows here yet. What shall it be?"));
    auto* open = box.addButton(QObject::tr("Open a season"), QMessageBox::ActionRole);
    auto* begin = box.addButton(QObject::tr("Begin a season"), QMessageBox::AcceptRole);
    auto* show = box.addButton(QObject::tr("Look at the demo season"), QMessageBox::ActionRole);
    box.addButton(QMessageBox::Cancel);
    box.exec();
    const QString kinds = QObject::tr("Withy seasons (*.withy)");
    if (box.clickedButton() == open)
        return QFileDialog::getOpenFileName(nullptr, QObject::tr("Open a season"), {}, kinds);
    demo = box.clickedButton() == show;
    if (!demo && box.clickedButton() != begin) return {};
    return QFileDialog::getSaveFileName(nullptr, QObject::tr("Where shall it be kept?"),
                                        QStringLiteral("season.withy"), kinds, nullptr,
                                        QFileDialog::DontConfirmOverwrite);
}

} // namespace

int main(int argc, char** argv) {
    QApplication qt(argc, argv);
    QApplication::setApplicationName(QStringLiteral("withy"));
    QApplication::setWindowIcon(withy::ui::applicationIcon());
    QApplication::setDesktopFileName(QStringLiteral("withy"));
    withy::ui::loadFonts();
    withy::ui::installEnglishPlurals();
    auto words = QApplication::arguments().mid(1);
    bool demo = words.removeAll(QStringLiteral("--demo")) > 0;
    const QString path = words.isEmpty() ? ask(demo) : words.front();
    if (path.isEmpty()) return 0;
    auto file = openOrMake(path, demo);
    if (!file) return 1;
    const QDate today = QDate::currentDate();
    withy::ui::MainWindow window(std::make_unique<withy::ui::Workbench>(
        std::move(*file), withy::Day::fromYmd(today.year(), today.month(), today.day())));
    window.show();
    return QApplication::exec();
}
