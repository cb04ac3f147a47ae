// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/start.h"

#include "ui/logic/fonts.h"
#include "ui/logic/season_opening.h"
#include "ui/shell/main_window.h"

#include <future>

namespace withy::ui {

std::unique_ptr<MainWindow> openWindow(std::optional<Day> today, const QString& path) {
    auto fonts = std::async(std::launch::async, loadFonts);
    OpenOutcome season;
    if (!path.isEmpty()) season = openSeason(path, usualBackupsFolder(), QDateTime::currentDateTimeUtc());
    fonts.get(); // before the first widget: what looked for them in vain would keep others
    auto window = std::make_unique<MainWindow>(today);
    if (!path.isEmpty()) window->door().take(std::move(season), path);
    return window;
}

} // namespace withy::ui
